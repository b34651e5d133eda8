// A stopped house: what was seen, where, what opens it and who does that. No price but the visit.
import type { GateOut } from '../../estimate/output.ts'
import { usd } from '../terminal/words.ts'
import { html, type Html } from './html.ts'
import type { Paper } from './index.ts'
import { page, type House } from './page.ts'
import { figureAt, gateList, signatures } from './parts.ts'
import { codeWords, dayOf, sentence } from './say.ts'

const RANK = { stop: 0, hold: 1, mend: 2, note: 2 } as const

/** Gates that are shut, and that our own work does not open. */
export const shutGates = ({ estimate: { gates } }: House): readonly GateOut[] => gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold')).sort((a, b) => RANK[a.state] - RANK[b.state])

/** A gate in plain words: what is there, why it shuts, what opens it. */
export const gateText = (g: GateOut): { state: GateOut['state']; word: string; says: Html } => ({
  state: g.state, word: `${sentence(codeWords(g.code)).slice(0, -1)}: ${g.where}`,
  says: html`<p>${sentence(g.why)}</p><p>Opens with: ${sentence(g.clearedBy)}</p>`,
})

function body(house: House): Html {
  const { estimate: e } = house, shut = shutGates(house), visit = e.price.directCents
  return html`<p>The attic was looked at on ${dayOf(e.job.surveyedOn)}${e.job.customer !== undefined && html` for ${e.job.customer}`}. Work may not start yet. This paper says what was seen, and what opens the way.</p>
<h2>What was seen, and what opens it</h2>
${gateList(shut.map(gateText))}
<h2>What happens next</h2>
<ol>
${shut.map(g => html`<li>${sentence(`${g.where}: ${g.clearedBy}`)}</li>
`)}<li>The papers that say so come to us. The house is surveyed again where it was changed, and the work is priced.</li>
</ol>
<p>Until then: nothing in the attic is moved, swept, covered or stored on.</p>
<h2>Price</h2>
<p>${visit > 0 ? html`The visit: $${figureAt('price.directCents', usd(visit))}. Nothing else is priced.` : html`This visit costs nothing. Nothing else is priced.`}</p>
<p>This paper tells what one visit could see. Local code and the licensed trades named above decide.</p>
${signatures(['Owner: I have read this paper', 'Date', `For ${house.company.name}`, 'Date'])}`
}

export const deferral: Paper = {
  name: 'deferral', says: 'a stopped house: what was seen, what opens it, who does that',
  appliesTo: ({ estimate }) => estimate.verdict === 'stop',
  files: house => [{ ending: 'deferral.html', text: page(house, { name: 'Deferral', body: body(house) }) }],
}

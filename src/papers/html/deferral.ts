// A stopped house: what was seen, where, what opens it and who does that, and what holds until then. No price but the visit.
import { usd } from '../terminal/words.ts'
import { gateText, opensWith, shutGates } from './gate-words.ts'
import { html, type Html } from './html.ts'
import type { Paper } from './paper.ts'
import { page, type House } from './page.ts'
import { figureAt, gateList, signatures } from './parts.ts'
import { dayOf, sentence } from './say.ts'
import { untilThen } from './until-then.ts'

function body(house: House): Html {
  const { estimate: e } = house, shut = shutGates(house), stops = shut.filter(g => g.state === 'stop'), holds = shut.filter(g => g.state === 'hold'), visit = e.price.directCents
  const opened = e.gates.filter(g => !g.open)
  return html`<p>The attic was looked at on ${dayOf(e.job.surveyedOn)}${e.job.customer !== undefined && html` for ${e.job.customer}`}. Work may not start yet. This paper says what was seen, what opens the way, and who does that.</p>
<h2>What was seen</h2>
${gateList(stops.map(g => gateText(g, house)))}
${holds.length > 0 && html`<h3>Also open, and asked before any work</h3>${gateList(holds.map(g => gateText(g, house)))}`}
${opened.length > 0 && html`<h3>Already answered</h3>${gateList(opened.map(g => gateText(g, house)))}`}
<h2>What happens next</h2>
<ol>
${shut.map(g => html`<li>${sentence(`${g.where}: ${opensWith(g)}`)}</li>
`)}<li>The papers that say so come to us. The house is surveyed again where it was changed, and the work is priced.</li>
</ol>
${untilThen(house)}<h2>Price</h2>
<p>The visit: $${figureAt('price.directCents', usd(visit))}. Nothing else is priced.</p>
<p>This paper tells what one visit could see. Local code and the licensed trades named above decide.</p>
${signatures(['Owner: I have read this paper', 'Date', `For ${house.company.name}`, 'Date'])}`
}

export const deferral: Paper = {
  name: 'deferral', says: 'a stopped house: what was seen, what opens it, who does that, what holds until then',
  appliesTo: ({ estimate }) => estimate.verdict === 'stop',
  files: house => [{ ending: 'deferral.html', text: page(house, { name: 'Deferral', body: body(house) }) }],
}

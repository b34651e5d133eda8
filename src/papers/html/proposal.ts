// What a homeowner reads and signs. No cost, wage, margin or markup stands here.
import { html, type Html } from './html.ts'
import type { Paper } from './index.ts'
import { page, type House } from './page.ts'
import { coverAt, coverLine, figureAt, gateList, signatures, tableOf } from './parts.ts'
import { gateText, shutGates } from './deferral.ts'
import { sentence } from './say.ts'
import { phaseWords, usd } from '../terminal/words.ts'

function work({ estimate: { tasks } }: House): Html {
  const line = coverAt(tasks)
  const rows = (of: typeof tasks): Html => tableOf({ columns: [{ head: 'Step', figure: true }, { head: 'Work' }, { head: '' }], rows: of.map(t => [t.step, t.title, phaseWords[t.phase]]), pairs: false })
  return html`<h2>The work, in its order</h2>${line === undefined ? rows(tasks) : [rows(tasks.slice(0, line)), coverLine(), rows(tasks.slice(line))]}`
}

function body(house: House): Html {
  const { estimate: e } = house, shut = shutGates(house), total = e.price.totalCents
  return html`${work(house)}
<h2>Price</h2>
${total !== undefined && html`<p class="large">$${figureAt('price.totalCents', usd(total))}</p>`}
<ul>${e.price.excludes.map(x => html`<li>${sentence(x)}</li>
`)}</ul>
${shut.length > 0 && html`<h2>What has to happen first</h2>${gateList(shut.map(gateText))}`}
${signatures(['Owner', 'Date', `For ${house.company.name}`, 'Date'])}`
}

export const proposal: Paper = {
  name: 'proposal', says: 'for the homeowner: what was found, the work and its order, the price, places to sign',
  appliesTo: ({ estimate }) => estimate.verdict !== 'stop',
  files: house => [{ ending: 'proposal.html', text: page(house, { name: 'Proposal', body: body(house) }) }],
}

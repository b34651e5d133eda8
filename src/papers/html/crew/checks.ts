// Readings with their limits, what comes back as proof, and what to do when a hazard shows that nobody knew of.
import { hazardKinds } from '../../../scope/index.ts'
import type { OnSight } from '../../../scope/kind.ts'
import type { TestSheet, WorkOrder } from '../../crew/work-order.ts'
import { NB, plainFigure } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import type { House } from '../page.ts'
import { figureAt, tableOf, tick, writeHere } from '../parts.ts'
import { sentence } from '../say.ts'

function testSheet({ task, readings }: TestSheet): Html {
  const acts = readings.flatMap(r => r.acts)
  return html`<section class="keep"><h3>Step ${task.step}: ${task.title}</h3>
<table class="blanks"><caption class="caption">Readings of step ${task.step}</caption><thead><tr><th scope="col">What</th><th scope="col" class="figure">Before</th><th scope="col" class="figure">At most</th><th scope="col">Reading</th></tr></thead>
<tbody>
${readings.map(r => html`<tr><th scope="row">${r.of !== 'house' && html`<b>${sentence(`${r.of}, ${r.where}`).slice(0, -1)}:</b> `}${r.reads}, ${r.unit}</th><td class="figure">${r.before !== undefined && figureAt(`tests.${r.id}.before`, plainFigure(r.before))}</td><td class="figure">${r.atMost !== undefined && figureAt(`tests.${r.id}.atMost`, plainFigure(r.atMost))}</td><td class="box"></td></tr>
`)}</tbody></table>
${acts.length > 0 && html`<p class="care"><b>Carbon monoxide in the rooms:</b> ${acts.map(a => `from ${plainFigure(a.from)}${NB}ppm ${a.act}`).join('; ')}.</p>`}
<p>Read by ${writeHere('who read it')} date, hour ${writeHere('date and hour')}</p></section>
`
}

export const testSheets = ({ tests }: WorkOrder): Html | false => tests.length > 0 && html`<h2 class="new-page">Tests</h2>
<p>A reading over its limit: appliance off, nothing more is tightened, tell the lead. Limits are those of the company file or its starting values; local code and the maker’s own stand over them.</p>
${tests.map(testSheet)}`

export const proofList = ({ proofs }: WorkOrder): Html => html`<h2>Photos and forms that come back</h2>
<ul class="proofs">
${proofs.map(({ task, where }) => html`<li>${tick(`proof of step ${task.step}`)}<b>${task.step}</b><span>${sentence(task.proof)}${where.length > 0 && html` <span class="gray">${where.join(', ')}</span>`}</span></li>
`)}</ul>
`

/** As they show themselves in an attic; the survey cannot see all. */
export const onSightTable = ({ company }: House): Html => html`<h2 class="new-page">When something hidden shows</h2>
<p><b>Stop there. Tell the lead.</b> The lead calls ${company.letterhead?.callOnSite ?? company.letterhead?.phone ?? writeHere('whom the lead calls')}, then:</p>
${tableOf({ columns: [{ head: 'What you see' }, { head: 'At once' }, { head: 'Then call' }], pairs: false, rows: hazardKinds.flatMap(k => { const s = k.onSight as OnSight | undefined; return s ? [[s.sign, s.act, html`<b>${s.call}</b>`]] : [] }) })}
<p>Nobody goes on where it showed before the lead has an answer in writing. What was found is written down with a photo: the price was made without it.</p>
`

// Readings with their limits, what comes back as proof, and what to do when a hazard shows that nobody knew of.
import { hazardKinds } from '../../../scope/index.ts'
import type { TaskOut, TestOut } from '../../../estimate/output.ts'
import { callees, type OnSight } from '../../../scope/kind.ts'
import type { TestSheet, WorkOrder } from '../../crew/work-order.ts'
import { NB, plainFigure } from '../../terminal/words.ts'
import { html, type Html, type Part } from '../html.ts'
import type { House } from '../page.ts'
import { figureAt, tableOf, tick, writeHere } from '../parts.ts'
import { listed, sentence } from '../say.ts'

/** A step that is read again each day gets room for the days. */
const days = (t: TaskOut): number => (t.id === 'test-combustion-interim' ? 2 : 1)

function testSheet({ tasks, rows }: TestSheet): Html {
  const acts = [...new Map(rows.flatMap(r => r.reading.acts).map(a => [a.from, a])).values()], has = (key: 'before' | 'atMost'): boolean => rows.some(r => [...r.at.values()].some(t => t[key] !== undefined))
  const columns = tasks.flatMap(t => Array.from({ length: days(t) }, (_, i) => ({ task: t, head: i === 0 ? `step ${t.step}` : 'again' })))
  const wide = 1 + (has('before') ? 1 : 0) + (has('atMost') ? 1 : 0) + columns.length
  const shown = (at: ReadonlyMap<string, TestOut>, key: 'before' | 'atMost'): Part => { const t = [...at.values()].find(x => x[key] !== undefined); return t && figureAt(`tests.${t.id}.${key}`, plainFigure(t[key]!)) }
  return html`<section class="keep"><h3>${tasks.length === 1 ? 'Step' : 'Steps'} ${listed(tasks.map(t => String(t.step)))}</h3>
<p>${tasks.map((t, i) => [i > 0 && html`<br>`, `${t.step}: ${t.title}`])}</p>
<table class="blanks readings"><caption class="caption">Readings</caption><thead><tr><th scope="col">What</th>${has('before') && html`<th scope="col" class="figure">Before</th>`}${has('atMost') && html`<th scope="col" class="figure">At most</th>`}${columns.map(c => html`<th scope="col">${c.head}</th>`)}</tr></thead>
<tbody>
${rows.map(({ reading: r, at }, i) => html`${r.of !== 'house' && (i === 0 || rows[i - 1]!.reading.of !== r.of || rows[i - 1]!.reading.where !== r.where) && html`<tr><th scope="rowgroup" class="group" colspan="${wide}">${sentence(`${r.of}, ${r.where}`).slice(0, -1)}</th></tr>
`}<tr><th scope="row">${r.reads}, ${r.unit}</th>${has('before') && html`<td class="figure">${shown(at, 'before')}</td>`}${has('atMost') && html`<td class="figure">${shown(at, 'atMost')}</td>`}${columns.map(c => html`<td class="${at.has(c.task.id) ? 'box' : 'none'}"></td>`)}</tr>
`)}<tr><th scope="row">Read by, day and hour</th>${has('before') && html`<td class="none"></td>`}${has('atMost') && html`<td class="none"></td>`}${columns.map(() => html`<td class="box"></td>`)}</tr>
</tbody></table>
${acts.length > 0 && html`<p class="care"><b>Carbon monoxide in the rooms:</b> ${acts.map(a => `from ${plainFigure(a.from)}${NB}ppm ${a.act}`).join('; ')}.</p>`}</section>
`
}

export const testSheets = ({ tests }: WorkOrder): Html | false => tests.length > 0 && html`<h2>Tests</h2>
<p class="lead-in">A reading over its limit: appliance off, nothing more is tightened, tell the lead. Limits are those of the company file or its starting values; local code and the maker’s own stand over them.</p>
${tests.map(testSheet)}`

export const proofList = ({ proofs }: WorkOrder): Html => html`<h2>Photos and forms that come back</h2>
<ul class="proofs">
${proofs.map(({ task, where }) => html`<li>${tick(`proof of step ${task.step}`)}<b>${task.step}</b><span>${sentence(task.proof)}${where.length > 0 && html` <span class="gray">${where.join(', ')}</span>`}</span></li>
`)}</ul>
`

const signs = hazardKinds.flatMap(k => (k.onSight as OnSight | undefined) ?? []).sort((a, b) => callees.indexOf(a.call) - callees.indexOf(b.call))

/** As they show themselves in an attic; the survey cannot see all. */
export const onSightTable = ({ company }: House): Html => html`<section class="on-sight new-page"><h2>When something hidden shows</h2>
<p><b>Stop there. Tell the lead.</b> The lead calls ${company.letterhead?.callOnSite ?? company.letterhead?.phone ?? writeHere('whom the lead calls')}, then:</p>
${tableOf({ columns: [{ head: 'What you see' }, { head: 'At once' }, { head: 'Then call' }], pairs: false, rows: signs.map(s => [s.sign, s.act, html`<b>${s.call}</b>`]) })}
<p>Nobody goes on where it showed before the lead has an answer in writing. What was found is written down with a photo: the price was made without it.</p></section>
`

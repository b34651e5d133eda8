// Depth and bags: one sheet for each area, with boxes for what the machine is set to, each bag, each depth.
import type { FillPlan, WorkOrder } from '../../crew/work-order.ts'
import { depth, figure, NB, plainFigure, rowR, stepRanges } from '../../terminal/words.ts'
import { html, type Html, type Part } from '../html.ts'
import { figureAt, tick, writeHere } from '../parts.ts'
import { codeWords, sentence } from '../say.ts'

const TEN = 10
/** Probes beside each marker. */
const PROBES = 4

/** A table of boxes to write in; the first column names the row. */
export const blanks = (caption: string, heads: readonly string[], rows: readonly (readonly Part[])[], is = ''): Html => html`<table class="blanks ${is}"><caption class="caption">${caption}</caption>
<thead><tr>${heads.map(h => html`<th scope="col">${h}</th>`)}</tr></thead>
<tbody>
${rows.map(r => html`<tr><th scope="row">${r[0]}</th>${r.slice(1).map(c => (c === '' ? html`<td class="box"></td>` : html`<td>${c}</td>`))}</tr>
`)}</tbody></table>
`

/** What nobody knows before the first bag: filled in by whoever runs the hose. */
export function machineCard({ fills }: WorkOrder): Html | false {
  const blown = fills.filter(f => f.way !== 'laid')
  if (blown.length === 0) return false
  const heads = ['', ...blown.map(f => f.area.id)], row = (what: string): Part[] => [what, ...blown.map(() => '')]
  return html`<section class="keep"><h2>Machine and bags</h2>
${blanks('Fill in before the first bag, and again where it is changed', heads, ['Label: net weight of a bag, lb', 'Label: lot and date', 'Machine', 'Air', 'Feed or gate', 'Hose: length, size', 'First bag: floor it filled, ft²', 'Set by, hour'].map(row), 'halves')}
<p>The first bags tell whether the setting is right: floor, bags and depth come out together, or the gate is set again.</p></section>
`
}

const big = (shown: Part, says: Part): Html => html`<p><span class="big">${shown}</span> ${says}</p>`

function figures({ area: a, way, wayIn }: FillPlan): Html {
  const at = (name: string, shown: string): Html => figureAt(`areas.${a.id}.${name}`, shown), inches = (x: number): string => `${depth(x).replaceAll(' ', NB)}${NB}in`
  return html`<div class="fill">
${a.topOfFillInitialIn !== undefined && way === 'blown' && big(at('topOfFillInitialIn', inches(a.topOfFillInitialIn)), 'top of all fill on the ruler, blown')}
${a.wholeBags !== undefined && big(at('wholeBags', plainFigure(a.wholeBags)), way === 'packed' ? 'bags, packed, no air left' : 'bags, no fewer')}
${a.markers !== undefined && big(at('markers', plainFigure(a.markers)), `markers, facing the ${wayIn}`)}
</div>
<p>${[
    a.initialDepthIn !== undefined && ['New fill blown ', at('initialDepthIn', inches(a.initialDepthIn)), '; settled '],
    a.initialDepthIn !== undefined && a.settledDepthIn !== undefined && [at('settledDepthIn', inches(a.settledDepthIn)), ', as the label’s chart says. '],
    a.chartR !== undefined && `Row ${rowR(a.chartR, a.interpolated !== true)}${a.interpolated === true ? ', between two rows of the label' : ''}. `,
    a.packedR !== undefined && `R${NB}${plainFigure(a.packedR)} packed. `, a.battR !== undefined && `R-${plainFigure(a.battR)}. `,
    a.bagFloorFt2 !== undefined && ['One bag fills ', at('bagFloorFt2', figure(a.bagFloorFt2, 1)), `${NB}ft² of floor. `],
    `Floor: `, at('netAreaFt2', figure(a.netAreaFt2)), `${NB}ft².`,
    a.edgeStrip !== undefined && [' At the eaves the fill tapers to ', at('edgeStrip.wallDepthIn', inches(a.edgeStrip.wallDepthIn)), ' at the wall, under the baffles.'],
  ]}</p>
`
}

/** A box for each bag, ten to a row, with the count at the end. */
function tally({ area: { id, wholeBags } }: FillPlan): Html | false {
  if (wholeBags === undefined) return false
  const rows = Array.from({ length: Math.ceil(wholeBags / TEN) }, (_, r) => Math.min(TEN, wholeBags - r * TEN))
  return html`<h4>Bag tally: tick each bag as it goes in; write more below</h4>
<div class="bags">${rows.map((n, r) => html`${Array.from({ length: TEN }, (_, i) => (i < n ? tick(`bag ${r * TEN + i + 1} of ${id}`) : html`<span></span>`))}<b>${r * TEN + n}</b>`)}</div>
`
}

const grid = ({ area: a }: FillPlan): Html | false => a.markers !== undefined && a.topOfFillInitialIn !== undefined && html`<div class="whole">${blanks(
  `Depth grid: top of all fill, in; ${depth(a.topOfFillInitialIn).replaceAll(' ', NB)} or more everywhere but at the eaves`, ['No.', 'where', 'marker', ...Array.from({ length: PROBES }, (_, i) => `probe ${i + 1}`), 'topped up'],
  Array.from({ length: a.markers }, (_, i) => [i + 1, '', '', ...Array.from({ length: PROBES }, () => ''), '']))}</div>`

const sheet = (plan: FillPlan): Html => html`<section class="fill-sheet"><div class="keep"><h3>${sentence(`${plan.area.id}, ${codeWords(plan.area.kind)}`).slice(0, -1)}: ${plan.product}</h3>
${figures(plan)}<p>${plan.steps.length > 0 && sentence(`steps ${stepRanges(plan.steps)}`)}</p></div>
${tally(plan)}
${grid(plan)}
<p>Used in ${plan.area.id}: ${writeHere('bags used')} bags, by ${writeHere('who blew it')} done at ${writeHere('hour')}</p></section>
`

export const fillSheets = ({ fills }: WorkOrder): Html => html`<h2>Depth and bags, by area</h2>
${fills.map(sheet)}`

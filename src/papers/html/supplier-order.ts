// What a supplier fills without a call: how many of what, by when, where to, and what to send where it is out. No cost, wage or margin.
import { orderHead, orderLines } from '../csv.ts'
import { supplierOrderOf, type OrderLine, type SupplierGroup } from '../crew/supplier-order.ts'
import { figure, NB, plainFigure, unitWord, usd } from '../terminal/words.ts'
import { html, type Html, type Part } from './html.ts'
import type { Paper } from './paper.ts'
import { page, type House } from './page.ts'
import { figureAt, tableOf, tick, writeHere, type Column } from './parts.ts'
import { packsOf } from './say.ts'

const STYLE = `
.order .packs{font-size:16pt;line-height:24px;font-weight:700;display:inline-block;max-width:192px;overflow-wrap:anywhere}
.order .tick{vertical-align:middle}
.order .table th,.order .table td{padding:6px 12px 6px 0}
.order .table{table-layout:fixed}
.order .table td{overflow-wrap:anywhere}
.order thead th{white-space:nowrap}
.order thead th:nth-child(1){width:48px}
.order thead th:nth-child(2){width:132px}
.order .figure{white-space:normal}
.order thead th:nth-child(4){width:96px}
.delivery{display:grid;grid-template-columns:1fr 1fr;gap:0 36px;border-top:1px solid var(--hair);margin:0 0 12px}
.delivery div{padding:6px 0;border-bottom:1px solid var(--hair)}
.delivery dt{color:var(--gray);font-size:9pt;line-height:12pt}
.delivery dd{margin:0;min-height:24px}
@media screen and (max-width:600px){.delivery{grid-template-columns:1fr}}
`

function delivery({ job: { job }, company }: House): Html {
  const line = (label: string, says: Part): Html => html`<div><dt>${label}</dt><dd>${says}</dd></div>`
  return html`<dl class="delivery">
${line('Order date', writeHere('order date'))}
${line('Needed by', writeHere('needed by'))}
${line('Deliver to', job.address === undefined ? writeHere('deliver to') : [job.address, job.zip !== undefined && ` ${job.zip}`, ' or: ', writeHere('another place')])}
${line('Unload at', writeHere('unload at'))}
${line('Ordered by', [company.letterhead?.phone ?? '', ' ', writeHere('ordered by')])}
${line('Your order number', writeHere('order number'))}
</dl>
`
}

/** How many of the others; a blown product has none, since its bags are those of its own label. */
function instead({ material: m, blown }: OrderLine): Part {
  if (blown) return html`<br>No other product: bags and depth are those of this label.`
  return m.alternates.length > 0 && html`<br>Or: ${m.alternates.map((a, i) => [i > 0 && '; or ', `${packsOf(a.buy, a.buyUnit)} of ${a.name}`, html` <span class="mono gray">${a.item}</span>`])}`
}

function lines({ supplier, lines: of }: SupplierGroup, priced: boolean): Html {
  const columns: readonly Column[] = [{ head: 'Packed' }, { head: 'Send', figure: true }, { head: 'Item' }, { head: 'One holds' }, ...(priced ? [{ head: 'Price of one', unit: '$', figure: true }] : [])]
  return html`<section class="order"><h2>${supplier ?? html`Supplier ${writeHere('supplier')}`}</h2>
${tableOf({ columns, rows: of.map(l => {
    const { material: m } = l
    return [tick(`${m.name} packed`), html`<span class="packs">${figureAt(`materials.${m.item}.buy`, packsOf(m.buy, m.buyUnit))}</span>`, [html`<b>${m.name}</b> <span class="mono gray">${m.code ?? m.item}</span>`, instead(l)],
      m.unit === m.buyUnit || (m.pack === 1 && m.unit === 'each') ? '' : `${plainFigure(m.pack)}${NB}${unitWord(m.unit)}`, ...(priced ? [figureAt(`materials.${m.item}.unitPriceCents`, usd(m.unitPriceCents))] : [])]
  }) })}</section>
`
}

function body(house: House): Html {
  const groups = supplierOrderOf(house.estimate), { verdict } = house.estimate, count = groups.reduce((sum, g) => sum + g.lines.length, 0)
  return html`${delivery(house)}
${verdict === 'hold' && html`<p class="box-line"><b>Set aside, do not send yet.</b> The house has no date before its gates are open; we send the day then.</p>`}
<p>${count === 1 ? 'One item' : `${figure(count)} items`}, in whole packs. Where you are out: send what stands behind “Or”; where nothing does, send the rest, and write it on the delivery note.</p>
${groups.map(g => lines(g, house.company.orderPrices === 'yes'))}
<p>Goods are checked against this list at the door. Labels stay on every bag and box: the bag’s label is shown to the owner.</p>
<p class="keep">Received by ${writeHere('received by')} on ${writeHere('day')}</p>`
}

export const supplierOrder: Paper = {
  name: 'supplier-order', says: 'for the supplier: whole packs of each item, dates, where to, what else would do; and the same as CSV',
  appliesTo: ({ estimate }) => estimate.verdict !== 'stop' && estimate.materials.some(m => m.buy > 0),
  files: house => [
    { ending: 'supplier-order.html', text: page(house, { name: 'Supplier order', body: body(house), style: STYLE }) },
    { ending: 'supplier-order.csv', text: orderHead() + orderLines(house.estimate) },
  ],
}

// What to order, for the supplier: a table for spreadsheets and other programs. Nothing of cost, wage or margin.
import { fromStock, netOfStock } from '../calc/arithmetic.ts'
import type { EstimateOut } from '../estimate/output.ts'
import { minusExactly } from '../units/money.ts'

/** The head of the first column names the format; the column holds the job. */
export const ORDER_FORMAT = 'lidwork-order/1'

/** Tells a spreadsheet that the text is UTF-8. */
export const BOM = '\ufeff'

const END = '\r\n'

/** Text that a spreadsheet would work out as a formula (CWE-1236); the full-width signs too. */
const FORMULA = /^[=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20]/
/** A field as RFC 4180 writes it. */
const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
const cell = (value: string | number): string => (typeof value === 'number' ? String(value) : quoted(FORMULA.test(value) ? `'${value}` : value))
/** One line of a table; text that a spreadsheet would work out gets a sign before it, numbers stay. */
export const csvLine = (cells: readonly (string | number)[]): string => cells.map(cell).join(',') + END

/** The one header line of a list, however many jobs follow. */
export const orderHead = (): string => csvLine([ORDER_FORMAT, 'item', 'name', 'buy', 'unit', 'usedFor', 'supplier', 'code', 'fromStock', 'alternates', 'verdict'])

/** What is on hand, lessened from job to job by what each takes. */
export type Stock = Map<string, number>

/** What one job needs bought, in whole purchase units, and the steps of the work order that use it. What an earlier job of the list took from stock is no longer there. */
export function orderLines({ job, materials, tasks, verdict }: EstimateOut, stock: Stock = new Map()): string {
  const title = new Map(tasks.map(t => [t.id, `${t.step} ${t.title}`]))
  return materials.map(m => {
    const left = stock.get(m.item) ?? m.onHand ?? 0, taken = fromStock.fn({ packs: m.packs ?? 0, stock: left })
    if (m.onHand !== undefined) stock.set(m.item, minusExactly(left, taken))
    const buy = m.packs === undefined ? m.buy : netOfStock.fn({ packs: m.packs, stock: left })
    return buy > 0 || taken > 0 ? csvLine([job.id, m.item, m.name, buy, m.buyUnit, m.usedFor.map(id => title.get(id) ?? id).join('; '), m.supplier ?? '', m.code ?? '', taken > 0 ? taken : '', m.alternates.map(a => `${a.buy} ${a.buyUnit} of ${a.name} (${a.item})`).join('; '), verdict]) : ''
  }).join('')
}

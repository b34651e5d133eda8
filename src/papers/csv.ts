// What to order, for the supplier: a table for spreadsheets and other programs. Nothing of cost, wage or margin.
import type { EstimateOut } from '../estimate/output.ts'

/** The head of the first column names the format; the column holds the job. */
export const ORDER_FORMAT = 'lidwork-order/1'

const END = '\r\n'

/** Text that a spreadsheet would work out as a formula (CWE-1236); the full-width signs too. */
const FORMULA = /^[=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20]/
/** A field as RFC 4180 writes it. */
const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
const cell = (value: string | number): string => (typeof value === 'number' ? String(value) : quoted(FORMULA.test(value) ? `'${value}` : value))
const line = (cells: readonly (string | number)[]): string => cells.map(cell).join(',') + END

/** The one header line of a list, however many jobs follow. */
export const orderHead = (): string => line([ORDER_FORMAT, 'item', 'name', 'buy', 'unit', 'usedFor'])

/** What one job needs bought, in whole purchase units, and the steps of the work order that use it. */
export function orderLines({ job, materials, tasks }: EstimateOut): string {
  const title = new Map(tasks.map(t => [t.id, `${t.step} ${t.title}`]))
  return materials.filter(m => m.buy > 0).map(m => line([job.id, m.item, m.name, m.buy, m.buyUnit, m.usedFor.map(id => title.get(id) ?? id).join('; ')])).join('')
}

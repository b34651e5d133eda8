// What a supplier’s list changes in a price book: every row is right, or none counts.
import type { Finding } from '../findings/finding.ts'
import { nearest } from '../findings/suggest.ts'
import type { ImportMap } from './import-format.ts'
import type { Cell, ListRow } from './import-read.ts'
import { roleNames, unitNames, type BlownRow, type PriceBook, type ProductRow } from './price-book.ts'

type Break = { readonly atLeast: number; readonly price: number }
export type Changed = Readonly<Record<string, string | number | readonly Break[]>>
export interface Update { readonly list: 'products' | 'blown'; readonly index: number; readonly keys: Changed }
export interface Imported {
  readonly updates: readonly Update[]
  readonly added: readonly ProductRow[]
  /** Rows of items that the book has and that are as they were. */
  readonly unchanged: number
  readonly skipped: number
  /** Items of the book that the list has not, of those it could have. */
  readonly notListed: readonly string[]
}

type Key = keyof ImportMap['columns']
const NUMBERS: Partial<Record<Key, { readonly min: number; readonly max: number; readonly above?: boolean }>> = { price: { min: 0, max: 1000000 }, pack: { min: 0, max: 100000, above: true }, stock: { min: 0, max: 1000000 }, wastePct: { min: 0, max: 100 } }
/** 1234.5, 1,234.50, $1,234.50. */
const NUMBER = /^\$?\s*(\d{1,3}(?:,\d{3})+|\d+)?(\.\d+)?$/

function numberOf(text: string): number | undefined {
  const [, whole, part] = NUMBER.exec(text) ?? []
  return whole === undefined && part === undefined ? undefined : Number(`${(whole ?? '0').replaceAll(',', '')}${part ?? ''}`)
}

/** @param findings gets what is wrong, each at its cell; then nothing of the list may be taken */
export function importList(book: PriceBook, map: ImportMap, headings: readonly Cell[], rows: readonly ListRow[], findings: Finding[], mapFindings: Finding[]): Imported {
  const { match = 'item', columns, breaks = [], unlisted = 'error', fill = {} } = map
  const error = (at: Cell | ListRow, code: string, says: string, why: string, mend: string): void => { findings.push({ code, severity: 'error', path: '', says, why, mend, span: at.span() }) }
  const asked = [...Object.entries(columns).map(([key, heading]) => ({ at: `/columns/${key}`, heading: heading as string })), ...breaks.map((b, i) => ({ at: `/breaks/${i}/column`, heading: b.column }))]
  for (const { at, heading } of asked) {
    const n = headings.filter(h => h.text === heading).length, near = nearest(heading, headings.map(h => h.text))
    if (n === 0) mapFindings.push({ code: 'column-missing', severity: 'error', path: at, says: heading, why: 'the list has no column with that heading', mend: near ? `did you mean ${near}?` : `its headings: ${headings.map(h => h.text).join(', ')}` })
    if (n > 1) mapFindings.push({ code: 'column-twice', severity: 'error', path: at, says: heading, why: `the list has ${n} columns with that heading`, mend: 'give one of them another heading' })
  }
  if (mapFindings.length > 0) return { updates: [], added: [], unchanged: 0, skipped: 0, notListed: [] }

  const known = new Map<string, { readonly list: 'products' | 'blown'; readonly index: number; readonly row: ProductRow | BlownRow }[]>()
  for (const list of ['products', 'blown'] as const) for (const [index, row] of book[list].entries()) {
    const name = row[match]
    if (name !== undefined) known.set(name, [...known.get(name) ?? [], { list, index, row }])
  }
  const first = new Map<string, ListRow>(), updates: Update[] = [], added: ProductRow[] = []
  let unchanged = 0, skipped = 0

  /** A number of a cell, where it is one in its range. */
  function number(cell: Cell, key: Key | 'break'): number | undefined {
    const value = numberOf(cell.text), { min, max, above = false } = key === 'break' ? NUMBERS.price! : NUMBERS[key]!
    if (value === undefined) { error(cell, 'cell-not-a-number', `${key}: ${cell.text}`, 'it is no number', 'write it as 1234.5 or 1,234.50, a $ may stand before it'); return undefined }
    if (value > max || value < min || (above && value === min)) { error(cell, 'cell-out-of-range', `${key}: ${cell.text}`, `it lies ${above ? `above ${min}, up to` : `from ${min} to`} ${max}`, 'correct the cell'); return undefined }
    return value
  }
  function keysOf(row: ListRow): Record<string, string | number | readonly Break[]> {
    const keys: Record<string, string | number | readonly Break[]> = {}
    for (const [key, heading] of Object.entries(columns) as [Key, string][]) {
      const cell = row.cells.get(heading)!
      if (cell.text === '') { if (key === 'price') error(row, 'cell-empty', `no ${key} in the row`, 'a product without a price would be free', 'write its price, or take the row out'); continue }
      const value = key in NUMBERS ? number(cell, key) : cell.text
      if (value !== undefined) keys[key] = value
    }
    const steps = breaks.flatMap(({ atLeast, column }) => { const cell = row.cells.get(column)!, price = cell.text === '' ? undefined : number(cell, 'break'); return price === undefined ? [] : [{ atLeast, price, cell }] })
    let before = typeof keys['price'] === 'number' ? keys['price'] : Infinity
    for (const s of steps) { if (s.price >= before) error(s.cell, 'break-not-cheaper', `${s.price} from ${s.atLeast} on`, `without this break each costs ${before}`, 'correct the cell, or empty it where there is no such break'); before = s.price }
    if (breaks.length > 0 && steps.length > 0) keys['breaks'] = steps.map(({ atLeast, price }) => ({ atLeast, price }))
    return keys
  }
  /** A new product from a row. */
  function made(row: ListRow, keys: Readonly<Record<string, unknown>>): ProductRow | undefined {
    const all: Record<string, unknown> = { ...fill, ...keys }, at = (key: Key): Cell | ListRow => { const heading = columns[key]; return (heading === undefined ? undefined : row.cells.get(heading)) ?? row }
    let wrong = false
    const refuse = (key: Key, why: string, mend: string): void => { wrong = true; error(at(key), 'cell-not-known', `${key}: ${String(all[key] ?? 'nothing')}`, why, mend) }
    if (!/^[a-z0-9][a-z0-9-]{0,63}$/.test(String(all['item'] ?? ''))) refuse('item', 'the item of a price book is small letters, digits and hyphens', 'write such a name; the supplier’s own number may stand under code')
    if (!(roleNames as readonly string[]).includes(String(all['role'] ?? ''))) { const near = nearest(String(all['role'] ?? ''), roleNames); refuse('role', 'no role has that name', near ? `did you mean ${near}?` : 'write one under fill, or in a column') }
    if (!(unitNames as readonly string[]).includes(String(all['unit'] ?? ''))) refuse('unit', `a unit of need is ${unitNames.join(', ')}`, 'write one under fill, or in a column')
    if (all['charge'] !== 'whole' && all['charge'] !== 'used') refuse('charge', 'it is whole or used', 'write one under fill, or in a column')
    for (const key of ['name', 'buyUnit', 'price', 'pack'] as const) if (all[key] === undefined) refuse(key, 'a new product needs it', 'fill the cell')
    return wrong ? undefined : all as unknown as ProductRow
  }

  for (const row of rows) {
    const cell = row.cells.get(columns[match]!)!, name = cell.text
    if (name === '') { error(row, 'cell-empty', `no ${match} in the row`, 'nothing says which product it is', 'write it, or take the row out'); continue }
    const before = first.get(name)
    if (before !== undefined) { error(cell, 'item-twice', `${match}: ${name}`, `line ${before.span().line} has it already`, 'take one of them out'); continue }
    first.set(name, row)
    const rowsOf = known.get(name)
    if (!rowsOf && unlisted === 'skip') { skipped++; continue }
    if (!rowsOf && unlisted === 'error') {
      const near = nearest(name, [...known.keys()])
      error(cell, 'item-unlisted', `${match}: ${name}`, 'the price book has no such product', near ? `did you mean ${near}? Else write unlisted: skip or add in the mapping` : 'write unlisted: skip or add in the mapping')
      continue
    }
    const keys = keysOf(row)
    if (!rowsOf) { const product = made(row, keys); if (product) added.push(product); continue }
    // What a product is for is the book's to say.
    const { item: _, role: __, unit: ___, charge: ____, ...told } = keys
    const of = rowsOf.map(({ list, index, row: was }) => ({ list, index, keys: Object.fromEntries(Object.entries(told).filter(([k, v]) => (list === 'products' || k !== 'pack') && JSON.stringify(was[k as keyof typeof was]) !== JSON.stringify(v))) })).filter(u => Object.keys(u.keys).length > 0)
    if (of.length === 0) unchanged++; else updates.push(...of)
  }
  return { updates, added, unchanged, skipped, notListed: [...known.keys()].filter(name => !first.has(name)) }
}

// How much an opening leaks, as found and closed.
import { holeLeak, leakOf, seamPath, withinHole } from '../calc/leak.ts'
import { edge, inFeet } from '../calc/seal.ts'
import type { Books } from '../books/books.ts'
import { leakage } from '../reference/leakage.ts'
import { fromRow } from '../reference/table.ts'
import { exactly, work, type Quantity } from '../units/quantity.ts'

/** Effective leakage areas at 4 Pa: as found, with the least and the most it may be, and closed. */
export interface Leak { readonly before: Quantity<'in2'>; readonly least: Quantity<'in2'>; readonly most: Quantity<'in2'>; readonly after: Quantity<'in2'> }

const END = { bestIn2: '', minIn2: ', least', maxIn2: ', most' } as const
const rows = new Map<string, Quantity<'in2'>>()
/** A figure of the table, made once: no job changes it. */
function ofRow(item: string, end: keyof typeof END): Quantity<'in2'> {
  const key = `${item} ${end}`, made = rows.get(key)
  if (made) return made
  const r = leakage.rows.find(x => x.item === item)!
  const first = fromRow(leakage, r, r[end], 'in2', `${r.title}, ${r.per === 'ft' ? 'a foot' : r.per === 'ft2' ? 'a square foot' : 'each'}${END[end]}`)
  rows.set(key, first)
  return first
}
/** Of so many, or of so many feet. */
export const leaks = (item: string, amount: Quantity, end: keyof typeof END = 'bestIn2'): Quantity<'in2'> => work(leakOf, { eachIn2: ofRow(item, end), amount })
/** As found, by a row of the table. */
export const foundAs = (item: string, amount: Quantity): Omit<Leak, 'after'> => ({ before: leaks(item, amount), least: leaks(item, amount, 'minIn2'), most: leaks(item, amount, 'maxIn2') })
/** One kind of thing, found and closed. */
export const pairOf = (before: string, after: string, amount: Quantity): Leak => ({ before: leaks(before, amount), least: leaks(before, amount, 'minIn2'), most: leaks(before, amount, 'maxIn2'), after: leaks(after, amount) })

/** Never more than the hole that was measured. */
export function within(l: Leak, openIn2: Quantity<'in2'>): Leak {
  const at = (leakIn2: Quantity<'in2'>) => work(withinHole, { leakIn2, openIn2, tableIn2: l.before })
  return openIn2.value >= l.most.value ? l : { before: at(l.before), least: at(l.least), most: openIn2, after: at(l.after) }
}

const ONE = exactly(1, 'each', 'one opening')
const series = (books: Books) => books.start('leak-series', 0.5, 'fraction', 'share that what stands in line with a hole lets through', 'range 0.2 to 1')
const leastSeries = (books: Books) => books.start('leak-series-least', 0.2, 'fraction', 'the same, at least', 'judgment'), mostSeries = (books: Books) => books.start('leak-series-most', 1, 'fraction', 'the same, at most', 'nothing stands in line')
/** The way round a cover that closes it, as sealed edge. */
export const sealedEdge = (edgeIn: Quantity<'in'>, count: Quantity<'each'> = ONE): Quantity<'in2'> => work(leakOf, { eachIn2: leaks('board-edge', work(inFeet, { lengthIn: edgeIn })), amount: count })
/** A hole into the house, open as far as it is drawn. */
export const hole = (openIn2: Quantity<'in2'>, edgeIn: Quantity<'in'>, books: Books, count: Quantity<'each'> = ONE): Leak =>
  ({ before: work(holeLeak, { openIn2, series: series(books), count }), least: work(holeLeak, { openIn2, series: leastSeries(books), count }), most: work(holeLeak, { openIn2, series: mostSeries(books), count }), after: sealedEdge(edgeIn, count) })
/** An opening that board closes below. */
export const closedBelow = (mouthIn2: Quantity<'in2'>, sides: { readonly lengthIn: Quantity<'in'>; readonly widthIn: Quantity<'in'> }, books: Books, count: Quantity<'each'> = ONE): Leak => {
  const edgeIn = work(edge, sides)
  return hole(work(seamPath, { mouthIn2, edgeIn, seamIn: books.start('leak-seam', 1 / 4, 'in', 'seam of the finishes below an open chase or soffit', 'judgment') }), edgeIn, books, count)
}

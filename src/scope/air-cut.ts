// How much less the house leaks once its openings are closed: the sum of parts, and the end that the whole house sets.
import { above0, cfm50Of, cutCap, joinedSpread, leakageArea, lesser, upTo } from '../calc/air.ts'
import { leakLess } from '../calc/leak.ts'
import type { Books } from '../books/books.ts'
import { exactly, totalOf, work, type Quantity } from '../units/quantity.ts'
import type { Leak } from './leaks.ts'

/** From low through expected to high. */
export interface Range<U extends Quantity['unit']> { readonly low: Quantity<U>; readonly expected: Quantity<U>; readonly high: Quantity<U> }
export const ENDS = ['low', 'expected', 'high'] as const
export type End = (typeof ENDS)[number]
export const ranged = <U extends Quantity['unit']>(of: (end: End) => Quantity<U>): Range<U> => ({ low: of('low'), expected: of('expected'), high: of('high') })

export const leakExponent = (books: Books) => books.start('leak-exponent', 0.65, 'factor', 'exponent of the house’s leakage', 'usual value where none was fitted')
const ELA_PA = exactly(4, 'Pa', 'pressure of the effective leakage area'), EQUIVALENT_PA = exactly(10, 'Pa', 'pressure of the equivalent leakage area')
/** Effective, 4 Pa, coefficient 1. */
export const effectiveArea = (cfm50: Quantity<'cfm'>, books: Books): Quantity<'in2'> => work(leakageArea, { cfm50, exponent: leakExponent(books), pa: ELA_PA, coefficient: exactly(1, 'factor', 'a rounded hole') })
/** Equivalent, 10 Pa, a sharp-edged hole. */
export const equivalentArea = (cfm50: Quantity<'cfm'>, books: Books): Quantity<'in2'> => work(leakageArea, { cfm50, exponent: leakExponent(books), pa: EQUIVALENT_PA, coefficient: exactly(0.611, 'factor', 'a sharp-edged hole (CGSB 149.10)') })
export const asCfm50 = (areaIn2: Quantity<'in2'>, books: Books): Quantity<'cfm'> => work(cfm50Of, { areaIn2, exponent: leakExponent(books) })

/** Share of the house's leakage that is its ceiling. */
export const ceilingShare = (books: Books): Range<'fraction'> => ({
  low: books.start('ceiling-share-low', 0.15, 'fraction', 'share of the house’s leakage that is its ceiling, at least', 'ASHRAE: ceiling details 3 to 30 %, mean 18 %; part of ducts and flues beside it; judgment'),
  expected: books.start('ceiling-share', 0.22, 'fraction', 'share of the house’s leakage that is its ceiling', 'between the two ends'),
  high: books.start('ceiling-share-high', 0.3, 'fraction', 'share of the house’s leakage that is its ceiling, at most', 'ASHRAE: ceiling details 3 to 30 %'),
})

export interface Cut { readonly listed: { readonly before: Quantity<'in2'>; readonly after: Quantity<'in2'> }; readonly cfm50: Range<'cfm'>; /** The sum of parts ran over what a ceiling can leak. */ readonly capped: boolean }

/** Of the openings that are closed. None where nothing is, or where nobody measured the house. */
export function airCut(leaks: Readonly<Record<string, Leak>>, cfm50: Quantity<'cfm'>, books: Books): Cut | undefined {
  const entries = Object.entries(leaks)
  if (entries.length === 0) return undefined
  const sum = (of: (l: Leak) => Quantity): Quantity<'in2'> => totalOf('in2', entries, ([id, l]) => [id, of(l)])
  const before = sum(l => l.before), after = sum(l => l.after)
  const expectedIn2 = work(leakLess, { before, after })
  // Alike things of one entry err together, entries apart.
  const spread = (of: (l: Leak) => { from: Quantity<'in2'>; to: Quantity<'in2'> }): Quantity<'in2'> => entries.map(([, l]) => { const { from, to } = of(l); return work(leakLess, { before: to, after: from }) }).reduce((one, other) => work(joinedSpread, { one, other }))
  const parts: Range<'in2'> = { low: work(above0, { expected: expectedIn2, spread: spread(l => ({ from: l.least.value < l.after.value ? l.after : l.least, to: l.before })) }), expected: expectedIn2, high: work(upTo, { expected: expectedIn2, spread: spread(l => ({ from: l.before, to: l.most })) }) }
  const stopped = books.start('leak-stopped', 0.6, 'fraction', 'share of a ceiling’s leakage that sealing stops', '50 to 70 %; judgment'), share = ceilingShare(books)
  const caps = ranged(end => work(cutCap, { stopped, ceiling: share[end], cfm50 })), sums = ranged(end => asCfm50(parts[end], books))
  return { listed: { before, after }, cfm50: ranged(end => work(lesser, { sum: sums[end], cap: caps[end] })), capped: sums.expected.value > caps.expected.value }
}

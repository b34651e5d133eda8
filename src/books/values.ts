// Rates, starting values and prices of other trades: the job’s own, else the company’s, else the built-in ones, which are assumptions.
import { cents } from '../units/money.ts'
import { assumed, given, row, type Quantity, type Unit } from '../units/quantity.ts'
import type { Books, Override } from './books.ts'
import type { CompanyFile } from './company-file.ts'
import type { OwnValues } from './own-values.ts'

interface Own { readonly value: number; readonly at: string }
const own = <R>(rows: readonly R[] | undefined, list: string, name: keyof R & string, value: keyof R & string): ReadonlyMap<string, Own> =>
  new Map((rows ?? []).map((r, i) => [String(r[name]), { value: r[value] as number, at: `/choices/${list}/${i}/${value}` }]))

const NOT_ASKED = 'nothing: this house has no use for it'

/** @param choices what the job says in their place; which of it was asked for is known once the house is taken off */
export function valuesOf(company: CompanyFile, choices: OwnValues = {}): Pick<Books, 'rate' | 'start' | 'subcontract'> & { overrides(): Override[] } {
  const rates = new Map((company.rates ?? []).map(r => [r.work, r.hours])), values = new Map((company.values ?? []).map(v => [v.id, v.value])), subs = new Map((company.subcontract ?? []).map(s => [s.work, s.price]))
  const ownRates = own(choices.rates, 'rates', 'work', 'hours'), ownValues = own(choices.values, 'values', 'id', 'value'), ownSubs = own(choices.subcontract, 'subcontract', 'work', 'price')
  const knownRates = new Map<string, Quantity<'h/unit'>>(), knownValues = new Map<string, Quantity>(), before = new Map<string, number | string>()
  const kept = <Q extends Quantity>(known: Map<string, Q>, name: string, q: Q): Q => { known.set(name, q); return q }
  const instead = <U extends Unit>({ value, at }: Own, unit: U, was: number): Quantity<U> => { before.set(at, was); return given(value, unit, at) }
  return {
    rate: (work, starting, per) => knownRates.get(work) ?? kept(knownRates, work, rateOf(work, starting, per)),
    start: <U extends Unit>(id: string, value: number, unit: U, what: string, why = 'starting value') => (knownValues.get(id) ?? kept(knownValues, id, startOf(id, value, unit, what, why))) as Quantity<U>,
    subcontract(work) {
      const mine = ownSubs.get(work), theirs = subs.get(work)
      if (mine) return instead({ ...mine, value: cents(mine.value) }, 'cents', theirs ?? 0)
      return theirs === undefined ? assumed(`sub.${work}`, 0, 'cents', `price of ${work.replaceAll('-', ' ')} by another trade`, 'no price in the company file: not in the total') : row(cents(theirs), 'cents', `${company.name}: subcontract, ${work}`, 'company file')
    },
    overrides: () => [...ownRates.values(), ...ownValues.values(), ...ownSubs.values()].map(({ at, value }) => ({ path: at, value, insteadOf: before.get(at) ?? NOT_ASKED })),
  }

  function rateOf(work: string, starting: number, per: string): Quantity<'h/unit'> {
    const mine = ownRates.get(work), theirs = rates.get(work)
    if (mine) return instead(mine, 'h/unit', theirs ?? starting)
    return theirs === undefined ? assumed(`rate.${work}`, starting, 'h/unit', work.replaceAll('-', ' '), 'starting rate, not overridden by the company file', per) : row(theirs, 'h/unit', `${company.name}: rates, ${work}`, 'company file')
  }

  function startOf<U extends Unit>(id: string, value: number, unit: U, what: string, why: string): Quantity<U> {
    const mine = ownValues.get(id), theirs = values.get(id)
    if (mine) return instead(mine, unit, theirs ?? value)
    return theirs === undefined ? assumed(id, value, unit, what, why) : row(theirs, unit, `${company.name}: values, ${id}`, 'company file')
  }
}

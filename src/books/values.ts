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
  const known = new Map<string, Quantity>(), before = new Map<string, number | string>()
  const once = <U extends Unit>(key: string, make: () => Quantity<U>): Quantity<U> => { const q = known.get(key) as Quantity<U> | undefined ?? make(); known.set(key, q); return q }
  const instead = <U extends Unit>({ value, at }: Own, unit: U, was: number): Quantity<U> => { before.set(at, was); return given(value, unit, at) }
  return {
    rate: (work, starting, per) => once(`rate.${work}`, () => {
      const mine = ownRates.get(work), theirs = rates.get(work)
      if (mine) return instead(mine, 'h/unit', theirs ?? starting)
      return theirs === undefined ? assumed(`rate.${work}`, starting, 'h/unit', work.replaceAll('-', ' '), 'starting rate, not overridden by the company file', per) : row(theirs, 'h/unit', `${company.name}: rates, ${work}`, 'company file')
    }),
    start: (id, value, unit, what, why = 'starting value') => once(`start.${id}`, () => {
      const mine = ownValues.get(id), theirs = values.get(id)
      if (mine) return instead(mine, unit, theirs ?? value)
      return theirs === undefined ? assumed(id, value, unit, what, why) : row(theirs, unit, `${company.name}: values, ${id}`, 'company file')
    }),
    subcontract(work) {
      const mine = ownSubs.get(work), theirs = subs.get(work)
      if (mine) return instead({ ...mine, value: cents(mine.value) }, 'cents', theirs ?? 0)
      return theirs === undefined ? assumed(`sub.${work}`, 0, 'cents', `price of ${work.replaceAll('-', ' ')} by another trade`, 'no price in the company file: not in the total') : row(cents(theirs), 'cents', `${company.name}: subcontract, ${work}`, 'company file')
    },
    overrides: () => [...ownRates.values(), ...ownValues.values(), ...ownSubs.values()].map(({ at, value }) => ({ path: at, value, insteadOf: before.get(at) ?? NOT_ASKED })),
  }
}

// Hours to days, and back: set-up and clean-up take longer the more days there are.
import { crewDays, eachAndOnce, firstAndLater, halfDays, personDays, wholeDays } from '../../calc/price.ts'
import { netOf, taskHours, times } from '../../calc/arithmetic.ts'
import type { Books } from '../../books/books.ts'
import { exactly, total, totalOf, work, type Line, type Quantity } from '../../units/quantity.ts'
import type { Planned } from './order.ts'

export interface Days { readonly exact: Quantity<'day'>; readonly half: Quantity<'day'>; readonly whole: Quantity<'day'> }

const NONE = exactly(0, 'day', 'no crew task is left')

/** Daily hours stand in the divisor; of set-up and clean-up only what happens once counts as work. */
export function withDays(all: readonly Planned[], books: Books): { planned: Planned[]; days: Days } {
  const planned = books.company.retestEachDay ? eachDay(all, books) : all
  const crew = planned.filter(t => t.ownVisit !== true && t.personHours.value > 0)
  const visit = planned.some(t => t.id === 'set-up')
  if (crew.length === 0 && !visit) return { planned: [...planned], days: { exact: NONE, half: NONE, whole: NONE } }
  const arrival = books.rate('arrival', 1.5, 'job'), start = books.rate('day-start', 0.75, 'day'), close = books.rate('day-close', 0.75, 'day'), clean = books.rate('clean-up', 1.5, 'job')
  const once: readonly Line[] = visit ? [['firstMorning', work(netOf, { whole: arrival, leftOut: start })], ['finalClean', clean]] : []
  const hours = total('h', [...crew.map((t): Line => [t.id, t.personHours]), ...once])
  const exact = work(crewDays, { hours, crew: books.company.crew, hoursPerDay: books.company.hoursPerDay, dailyHours: total('h', { start, close }) })
  const half = work(halfDays, { days: exact }), whole = work(wholeDays, { days: half })
  const of: Readonly<Record<string, Quantity<'h'>>> = {
    'set-up': work(taskHours, { hours: work(firstAndLater, { once: arrival, each: start, days: whole }) }),
    'clean-up': work(taskHours, { hours: work(eachAndOnce, { each: close, days: whole, once: clean }) }),
  }
  const kits = work(personDays, { crew: books.company.crew, days: whole })
  return {
    days: { exact, half, whole },
    planned: planned.map(t => {
      const personHours = of[t.id]
      if (!personHours) return t
      return { ...t, personHours, title: whole.value > 1 ? `${t.title} (${whole.value} days)` : t.title, needs: t.needs.map(n => ({ ...n, quantity: kits })) }
    }),
  }
}

/** One test at the end of each day on which the house was tightened. */
function eachDay(planned: readonly Planned[], books: Books): readonly Planned[] {
  const tightening = planned.filter(t => t.phase === 'seal' || t.phase === 'ducts')
  if (tightening.length === 0) return planned
  const days = work(wholeDays, { days: work(crewDays, { hours: totalOf('h', tightening, t => [t.id, t.personHours]), crew: books.company.crew, hoursPerDay: books.company.hoursPerDay, dailyHours: total('h', { start: books.rate('day-start', 0.75, 'day'), close: books.rate('day-close', 0.75, 'day') }) }) })
  return planned.map(t => (t.id !== 'test-combustion-interim' || days.value < 2 ? t : { ...t, title: `${t.title} (${days.value} days)`, personHours: work(taskHours, { hours: { ...work(times, { amount: t.personHours, count: days }), unit: 'h' as const } }) }))
}

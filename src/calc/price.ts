import { formula } from '../units/quantity.ts'
import { halfUp, roundUp, timesToWhole } from '../units/money.ts'

const LOTS = 1e12

/** Every sum of money is whole cents; each rounding is one a person would make, half up. */

export const lineCents = formula({ id: 'line', says: 'amount · unit price, to the cent, half up', symbols: 'halfUp(amount * unitPriceCents)', source: 'price book; arithmetic in exact decimals',
  args: { amount: ['any', 0, 1e9], unitPriceCents: ['cents', 0, 1e9] }, gives: 'cents', fn: x => timesToWhole(x.amount, x.unitPriceCents) })

export const pctOf = formula({ id: 'percent-of', says: 'sum · percent ÷ 100, to the cent, half up', symbols: 'halfUp(cents * pct / 100)', source: 'definition of percent',
  args: { cents: ['cents', 0, LOTS], pct: ['pct', 0, 100] }, gives: 'cents', fn: x => timesToWhole(x.cents, x.pct, 100) })

export const sale = formula({ id: 'price-from-margin', says: 'cost ÷ (1 − margin), to the cent, half up', symbols: 'halfUp(costCents * 100 / (100 - marginPct))', source: 'definition of gross margin',
  args: { costCents: ['cents', 0, LOTS], marginPct: ['pct', 0, 95] }, gives: 'cents', fn: x => halfUp(x.costCents * 100 / (100 - x.marginPct)) })

export const floorAdded = formula({ id: 'minimum-added', says: 'minimum charge − price, not below 0', symbols: 'max(0, minimumCents - priceCents)', source: 'company file',
  args: { priceCents: ['cents', 0, LOTS], minimumCents: ['cents', 0, LOTS] }, gives: 'cents', fn: x => Math.max(0, x.minimumCents - x.priceCents) })

export const roundingAdded = formula({ id: 'rounding', says: 'price up to the next rounding step − price', symbols: 'up(priceCents / stepCents) * stepCents - priceCents', source: 'company file',
  args: { priceCents: ['cents', 0, LOTS], stepCents: ['cents', 1, LOTS] }, gives: 'cents', fn: x => roundUp(x.priceCents / x.stepCents) * x.stepCents - x.priceCents })

export const marginOf = formula({ id: 'margin', says: '(price − cost) ÷ price', symbols: '(priceCents - costCents) / priceCents * 100', source: 'definition of gross margin',
  args: { priceCents: ['cents', 1, LOTS], costCents: ['cents', 0, LOTS] }, gives: 'pct', fn: x => (x.priceCents - x.costCents) / x.priceCents * 100 })

export const markupOf = formula({ id: 'markup', says: '(price − cost) ÷ cost', symbols: '(priceCents - costCents) / costCents * 100', source: 'definition of markup',
  args: { priceCents: ['cents', 0, LOTS], costCents: ['cents', 1, LOTS] }, gives: 'pct', fn: x => (x.priceCents - x.costCents) / x.costCents * 100 })

export const riseOf = formula({ id: 'rise', says: '(after − before) ÷ before', symbols: '(after - before) / before * 100', source: 'definition of percent',
  args: { before: ['cents', 1e-6, LOTS], after: ['cents', 0, LOTS] }, gives: 'pct', fn: x => (x.after - x.before) / x.before * 100 })

/** What a change of cost does to the price, before minimum charge and rounding step; a change may be a fall. */
export const carriedOn = formula({ id: 'carried-on', says: 'change · (1 + sales tax + contingency) · (1 + overhead) ÷ (1 − margin) · (1 + customer tax), to the cent', symbols: 'halfUp(changeCents * (1 + (salesTaxPct + contingencyPct) / 100) * (1 + overheadPct / 100) / (1 - marginPct / 100) * (1 + customerTaxPct / 100))', source: 'the lines of the price, one after the other',
  args: { changeCents: ['cents', -LOTS, LOTS], salesTaxPct: ['pct', 0, 100], contingencyPct: ['pct', 0, 100], overheadPct: ['pct', 0, 100], marginPct: ['pct', 0, 95], customerTaxPct: ['pct', 0, 100] }, gives: 'cents',
  fn: x => halfUp(x.changeCents * (1 + (x.salesTaxPct + x.contingencyPct) / 100) * (1 + x.overheadPct / 100) / (1 - x.marginPct / 100) * (1 + x.customerTaxPct / 100)) })

export const depositLimit = formula({ id: 'deposit-limit', says: 'the least of the deposit wanted, the share of the total that may be asked, down to the cent, and the most in dollars', symbols: 'min(wantedCents, down(totalCents * share), mostCents)', source: 'law of the state, by the company file or a summary',
  args: { wantedCents: ['cents', 0, LOTS], totalCents: ['cents', 0, LOTS], share: ['fraction', 0, 1], mostCents: ['cents', 0, LOTS] }, gives: 'cents', fn: x => Math.min(x.wantedCents, Math.floor(x.totalCents * x.share + 1e-9), x.mostCents) })

export const netOfIncentives = formula({ id: 'net', says: 'total − incentives', symbols: 'totalCents - incentivesCents', source: 'arithmetic',
  args: { totalCents: ['cents', 0, LOTS], incentivesCents: ['cents', 0, LOTS] }, gives: 'cents', fn: x => x.totalCents - x.incentivesCents })

export const crewDays = formula({ id: 'days', says: '(work + once-only hours) ÷ (crew · hours a day − daily set-up and close-up)', symbols: 'hours / (crew * hoursPerDay - dailyHours)',
  source: 'judgment: crew-day arithmetic of the company file',
  args: { hours: ['h', 0, 1e5], crew: ['person', 1, 20], hoursPerDay: ['h', 1, 14], dailyHours: ['h', 0, 10] }, gives: 'day',
  fn: x => x.hours / (x.crew * x.hoursPerDay - x.dailyHours) })

/** Half days; a remainder of a tenth of a half day or less is worked off. */
export const halfDays = formula({ id: 'half-days', says: 'to the half day, up only where more than a tenth of a half day is left', symbols: 'halves = down(days * 2); (days * 2 - halves > 0.1 ? halves + 1 : max(halves, days > 0 ? 1 : 0)) / 2', rounds: 'up to the half day; down to it where no more than a tenth of a half day is left over', source: 'judgment: crew-day arithmetic of the company file',
  args: { days: ['day', 0, 1e4] }, gives: 'day', fn: x => {
    const halves = Math.floor(x.days * 2 + 1e-9)
    return (x.days * 2 - halves > 0.1 + 1e-9 ? halves + 1 : Math.max(halves, x.days > 0 ? 1 : 0)) / 2
  } })

export const wholeDays = formula({ id: 'whole-days', says: 'days up to a whole day', symbols: 'up(days)', source: 'a started day is a day', args: { days: ['day', 0, 1e4] }, gives: 'day', fn: x => roundUp(x.days) })

/** Starting the work takes longer on the first day. */
export const firstAndLater = formula({ id: 'first-and-later', says: 'once + each later day · (days − 1)', symbols: 'once + each * max(0, days - 1)', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { once: ['h/unit', 0, 100], each: ['h/unit', 0, 100], days: ['day', 0, 1e4] }, gives: 'h', fn: x => x.once + x.each * Math.max(0, x.days - 1) })

export const eachAndOnce = formula({ id: 'each-and-once', says: 'each day · days + once', symbols: 'each * days + once', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { each: ['h/unit', 0, 100], days: ['day', 0, 1e4], once: ['h/unit', 0, 100] }, gives: 'h', fn: x => x.each * x.days + x.once })

export const testHours = formula({ id: 'test-hours', says: 'set-up + appliances · each', symbols: 'setUp + count * each', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { setUp: ['h/unit', 0, 100], count: ['each', 0, 50], each: ['h/unit', 0, 100] }, gives: 'h', fn: x => x.setUp + x.count * x.each })

export const personDays = formula({ id: 'person-days', says: 'crew · whole days', symbols: 'crew * days', source: 'one kit for each person and day: company file', args: { crew: ['person', 1, 20], days: ['day', 0, 1e4] }, gives: 'person-day', fn: x => x.crew * x.days })

/** Not rounded: the person-hour of a task is, once it is priced. */
export const withBurden = formula({ id: 'with-burden', says: 'wage paid · (1 + burden)', symbols: 'halfUp(wageCents * (100 + burdenPct) / 100, 0.0001)', source: 'payroll arithmetic: taxes, insurance and benefits come on top of each paid hour',
  args: { wageCents: ['cents', 0, 1e5], burdenPct: ['pct', 0, 5000] }, gives: 'cents', fn: x => halfUp(x.wageCents * (100 + x.burdenPct) / 100, 0.0001) })

export const productiveWage = formula({ id: 'productive-wage', says: 'cost of a paid hour ÷ productive share, to a hundredth of a cent', symbols: 'halfUp(paidCents * 100 / productivePct, 0.01)', source: 'payroll arithmetic: hours that are paid but not worked at a house are borne by those that are',
  args: { paidCents: ['cents', 0, 1e7], productivePct: ['pct', 1, 100] }, gives: 'cents', fn: x => halfUp(x.paidCents * 100 / x.productivePct, 0.01) })

export const milesDriven = formula({ id: 'miles-driven', says: 'there and back, each day', symbols: '2 * oneWayMi * days', source: 'distance of the job', args: { oneWayMi: ['mi', 0, 1000], days: ['day', 0, 1e4] }, gives: 'mi', fn: x => 2 * x.oneWayMi * x.days })

/** What is left of the days that are billed whole. */
export const hoursLeft = formula({ id: 'hours-left', says: 'crew · hours a day · days − hours, not below 0', symbols: 'halfUp(max(0, crew * hoursPerDay * days - hours), 0.01)', source: 'company file: a started day is billed whole',
  args: { crew: ['person', 1, 20], hoursPerDay: ['h', 1, 14], days: ['day', 0, 1e4], hours: ['h', 0, 1e5] }, gives: 'h', fn: x => halfUp(Math.max(0, x.crew * x.hoursPerDay * x.days - x.hours), 0.01) })

export const difference = formula({ id: 'difference', says: 'after − before', symbols: 'after - before', source: 'arithmetic', args: { after: ['cents', -LOTS, LOTS], before: ['cents', -LOTS, LOTS] }, gives: 'cents', fn: x => x.after - x.before })

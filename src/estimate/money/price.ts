// The price, line by line; each sum is redone by hand from the lines above it.
import { floorAdded, hoursLeft, lineCents, marginOf, markupOf, milesDriven, netOfIncentives, pctOf, roundingAdded, sale } from '../../calc/price.ts'
import type { Books, Product } from '../../books/books.ts'
import { cents } from '../../units/money.ts'
import type { Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { exactly, given, total, totalOf, work, type Line, type Quantity } from '../../units/quantity.ts'
import type { Task } from '../../scope/kind.ts'
import { bill, type MaterialLine } from './bill.ts'
import { merged, type Step } from '../tasks/order.ts'
import { contingencyOf, type RiskSeen } from '../tasks/risks.ts'

type Cents = Quantity<'cents'>
/** What the price looks at in a step. */
export type BilledStep = Pick<Step, 'id' | 'personHours' | 'needs' | 'subcontractCents' | 'ownVisit'>
const sum = (lines: Readonly<Record<string, Quantity>> | readonly Line[]): Cents => total('cents', lines)
const none = (why: string): Cents => exactly(0, 'cents', why)

/** What the visit itself costs, each only where the company charges it. */
export function visitLines({ access, choices }: Pick<JobFile, 'access' | 'choices'>, steps: readonly BilledStep[], days: Quantity<'day'>, books: Books): Readonly<Record<string, Cents>> {
  const { company } = books, crewSteps = steps.filter(s => s.ownVisit !== true)
  if (days.value === 0) return {}
  const permit = choices?.permitFee === undefined ? company.permitCents : given(cents(choices.permitFee), 'cents', '/choices/permitFee')
  const hours = totalOf('h', crewSteps, s => [s.id, s.personHours])
  return {
    ...(company.travelPerMileCents && access?.driveMi !== undefined ? { travel: work(lineCents, { amount: work(milesDriven, { oneWayMi: given(access.driveMi, 'mi', '/access/driveMi'), days }), unitPriceCents: company.travelPerMileCents }) } : {}),
    ...(company.travelPerDayCents ? { travel: work(lineCents, { amount: days, unitPriceCents: company.travelPerDayCents }) } : {}),
    ...(permit ? { permit } : {}),
    ...(company.billWholeDays ? { 'rest-of-last-day': work(lineCents, { amount: work(hoursLeft, { crew: company.crew, hoursPerDay: company.hoursPerDay, days, hours }), unitPriceCents: company.wageCents }) } : {}),
  }
}

/** A rate for each mile and no miles: travel is missing from the price. */
export const driveMissing = ({ access }: Pick<JobFile, 'access'>, books: Books): Finding[] => (books.company.travelPerMileCents && access?.driveMi === undefined
  ? [{ code: 'drive-missing', severity: 'warning', path: access ? '/access' : '', on: 'key', says: 'no driveMi under access', why: `${books.company.name} charges each mile driven, and the price holds no travel`, mend: 'write driveMi: and the miles from shop to house, one way' }] : [])

type PricedStep = Pick<Step, 'id' | 'personHours' | 'subcontractCents'>

/** The lines from materials to the price at margin. */
function built(materials: readonly Pick<MaterialLine, 'product' | 'totalCents'>[], steps: readonly PricedStep[], otherLines: Readonly<Record<string, Cents>>, books: Books, contingencyPct = books.company.contingencyPct) {
  const { company } = books
  const materialsCents = totalOf('cents', materials, m => [m.product.item, m.totalCents])
  const salesTaxCents = company.salesTax === 'contractor-pays' ? work(pctOf, { cents: materialsCents, pct: company.salesTaxPct }) : none(company.salesTax === 'exempt' ? 'exempt from sales tax' : 'the customer pays sales tax, below the margin')
  const laborCents = totalOf('cents', steps, s => [s.id, work(lineCents, { amount: s.personHours, unitPriceCents: company.wageCents })])
  const subcontractCents = sum(steps.flatMap((s): Line[] => (s.subcontractCents ? [[s.id, s.subcontractCents]] : [])))
  const otherCents = sum({ ...otherLines, ...(company.subMarkupPct && subcontractCents.value > 0 ? { 'sub-markup': work(pctOf, { cents: subcontractCents, pct: company.subMarkupPct }) } : {}) })
  const directCents = sum({ materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents })
  const contingencyCents = work(pctOf, { cents: sum({ materialsCents, laborCents }), pct: contingencyPct })
  const overheadCents = company.overhead === undefined ? none('covered by the gross margin')
    : company.overhead.per === 'hour' ? work(lineCents, { amount: totalOf('h', steps, s => [s.id, s.personHours]), unitPriceCents: company.overhead.cents })
      : work(pctOf, { cents: sum({ directCents, contingencyCents }), pct: company.overhead.pct })
  const costCents = sum({ directCents, contingencyCents, overheadCents })
  const saleCents = work(sale, { costCents, marginPct: company.marginPct })
  return { materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents, directCents, contingencyCents, overheadCents, costCents, saleCents }
}

/** Work priced by itself beside the job, to the dollar: no minimum charge, the rounding step left to the job. */
export function soldAlone(tasks: readonly Task[], productOf: (item: string) => Product, books: Books, toDollar = true): Cents {
  const steps = merged(tasks), { saleCents } = built(bill(steps, productOf), steps, {}, books)
  if (!toDollar) return saleCents
  return sum({ saleCents, toTheDollar: work(roundingAdded, { priceCents: saleCents, stepCents: exactly(100, 'cents', 'a dollar') }) })
}

/** What may be granted to the owner, by the file. */
const incentivesOf = ({ choices }: Pick<JobFile, 'choices'>): Cents => {
  const all = choices?.incentives ?? []
  return all.length === 0 ? none('no incentive in the file') : totalOf('cents', all, (i, n) => [`incentive${n + 1}`, given(cents(i.amount), 'cents', `/choices/incentives/${n}/amount`)])
}

/** An incentive pays back a price; it is no income. */
export const incentivesOver = (site: Pick<JobFile, 'choices'>, totalCents: Cents | undefined): Finding[] => {
  const all = incentivesOf(site).value
  return totalCents === undefined || all <= totalCents.value ? [] : [{ code: 'incentives-over-price', severity: 'error', path: '/choices/incentives', says: `incentives of ${all / 100} on a price of ${totalCents.value / 100}`, why: 'more than the price can’t be given back', mend: 'correct the amounts' }]
}

export function price(materials: readonly MaterialLine[], steps: readonly BilledStep[], otherLines: Readonly<Record<string, Cents>>, site: Pick<JobFile, 'choices'>, books: Books, seen: readonly RiskSeen[] = []) {
  const { company } = books, { pct: contingencyPct, added: risks } = contingencyOf(seen, books)
  const { saleCents, ...lines } = built(materials, steps, otherLines, books, contingencyPct), { costCents } = lines
  const minimumAddedCents = steps.length === 0 ? none('no work, no least charge') : work(floorAdded, { priceCents: saleCents, minimumCents: company.minimumCents })
  const roundingCents = work(roundingAdded, { priceCents: sum({ saleCents, minimumAddedCents }), stepCents: company.roundingCents })
  // What is offered; a tax that the customer pays is no part of the margin.
  const offeredCents = sum({ saleCents, minimumAddedCents, roundingCents })
  const customerTaxCents = company.salesTax === 'customer-taxed' ? work(pctOf, { cents: offeredCents, pct: company.salesTaxPct }) : none(company.salesTax === 'exempt' ? 'exempt from sales tax' : 'sales tax is paid by the contractor')
  const totalCents = sum({ saleCents, minimumAddedCents, roundingCents, customerTaxCents })
  const incentivesCents = incentivesOf(site)
  return {
    ...lines,
    marginPct: offeredCents.value > 0 ? work(marginOf, { priceCents: offeredCents, costCents }) : exactly(0, 'pct', 'no price'), markupPct: costCents.value > 0 ? work(markupOf, { priceCents: offeredCents, costCents }) : exactly(0, 'pct', 'no cost'),
    minimumAddedCents, roundingCents, customerTaxCents, totalCents, incentivesCents, netCents: work(netOfIncentives, { totalCents, incentivesCents }),
    depositCents: work(pctOf, { cents: totalCents, pct: company.depositPct }), validDays: company.validDays, ...(company.contingencyByRisk.length > 0 ? { contingencyPct, risks } : {}),
  }
}

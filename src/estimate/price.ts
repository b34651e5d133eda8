// The price, line by line; each sum is redone by hand from the lines above it.
import { floorAdded, lineCents, marginOf, markupOf, netOfIncentives, pctOf, roundingAdded, sale } from '../calc/price.ts'
import type { Books } from '../books/books.ts'
import { exactly, total, work, type Quantity } from '../units/quantity.ts'
import type { MaterialLine } from './bill.ts'
import type { Step } from './order.ts'

type Cents = Quantity<'cents'>
const sum = (lines: Readonly<Record<string, Quantity>>): Cents => total('cents', lines)
const none = (why: string): Cents => exactly(0, 'cents', why)

export function price(materials: readonly MaterialLine[], steps: readonly Step[], otherLines: Readonly<Record<string, Cents>>, books: Books) {
  const { company } = books
  const materialsCents = sum(Object.fromEntries(materials.map(m => [m.product.item, m.totalCents])))
  const salesTaxCents = work(pctOf, { cents: materialsCents, pct: company.salesTaxPct })
  const laborCents = sum(Object.fromEntries(steps.map(s => [s.id, work(lineCents, { amount: s.personHours, unitPriceCents: company.wageCents })])))
  const subcontractCents = sum(Object.fromEntries(steps.flatMap(s => (s.subcontractCents ? [[s.id, s.subcontractCents]] : []))))
  const otherCents = sum(otherLines)
  const directCents = sum({ materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents })
  const contingencyCents = work(pctOf, { cents: sum({ materialsCents, laborCents }), pct: company.contingencyPct })
  const overheadCents = none('covered by the gross margin')
  const costCents = sum({ directCents, contingencyCents, overheadCents })
  const saleCents = work(sale, { costCents, marginPct: company.marginPct })
  const minimumAddedCents = work(floorAdded, { priceCents: saleCents, minimumCents: company.minimumCents })
  const roundingCents = work(roundingAdded, { priceCents: sum({ saleCents, minimumAddedCents }), stepCents: company.roundingCents })
  const customerTaxCents = none('sales tax is paid by the contractor')
  const totalCents = sum({ saleCents, minimumAddedCents, roundingCents, customerTaxCents })
  const incentivesCents = none('no incentive in the file')
  return {
    materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents, directCents, contingencyCents, overheadCents, costCents,
    marginPct: work(marginOf, { priceCents: totalCents, costCents }), markupPct: costCents.value > 0 ? work(markupOf, { priceCents: totalCents, costCents }) : exactly(0, 'pct', 'no cost'),
    minimumAddedCents, roundingCents, customerTaxCents, totalCents, incentivesCents, netCents: work(netOfIncentives, { totalCents, incentivesCents }),
    depositCents: work(pctOf, { cents: totalCents, pct: company.depositPct }), validDays: company.validDays,
  }
}

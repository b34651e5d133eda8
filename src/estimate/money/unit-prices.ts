// What one more of each costs the customer: the schedule for change orders. Taken off from the kinds themselves, one unit at a time.
import type { Books, Product } from '../../books/books.ts'
import { personHours, thousandsOf } from '../../calc/arithmetic.ts'
import { duct, ductTakeoff } from '../../scope/ducts.ts'
import { found, itself, type AreaAround, type Kind, type OpeningAround, type Task } from '../../scope/kind.ts'
import { oldFillWork } from '../../scope/old-fill.ts'
import { readLayers } from '../../scope/layers.ts'
import { openingKinds, type Opening } from '../../scope/index.ts'
import { exactly, total, work, type Quantity } from '../../units/quantity.ts'
import { soldAlone } from './price.ts'

export interface UnitPrice { readonly id: string; readonly what: string; readonly unit: string; readonly priceCents: Quantity<'cents'> }

interface More { readonly id: string; readonly what: string; readonly unit: string; readonly kind: Opening['kind']; readonly change?: object }
const ONE = { count: 1 } as const
/** Openings of which one more may turn up: the sample of its kind, one of it or a foot. */
const MORE: readonly More[] = [
  { id: 'plate-inside', what: 'top plate of an inside wall, both edges', unit: 'ft', kind: 'top-plate', change: { wall: 'inside', lengthFt: 1 } },
  { id: 'plate-outside', what: 'top plate of an outside wall', unit: 'ft', kind: 'top-plate', change: { wall: 'outside', lengthFt: 1 } },
  { id: 'wire-hole', what: 'wire hole', unit: 'each', kind: 'wire-hole', change: ONE },
  { id: 'pipe', what: 'small pipe', unit: 'each', kind: 'pipe', change: ONE },
  { id: 'plumbing-stack', what: 'plumbing stack with its collar', unit: 'each', kind: 'plumbing-stack' },
  { id: 'light-airtight', what: 'airtight IC light, trim sealed', unit: 'each', kind: 'recessed-light', change: { ...ONE, rating: 'ic-airtight' } },
  { id: 'light-ic', what: 'IC light, covered', unit: 'each', kind: 'recessed-light', change: { ...ONE, rating: 'ic' } },
  { id: 'light-box', what: 'light not rated for contact, boxed', unit: 'each', kind: 'recessed-light', change: { ...ONE, rating: 'non-ic', treatment: 'box' } },
  { id: 'light-swap', what: 'light swapped for an airtight one by an electrician', unit: 'each', kind: 'recessed-light', change: { ...ONE, rating: 'non-ic', treatment: 'swap' } },
  { id: 'ceiling-box', what: 'ceiling box, sealed and flagged', unit: 'each', kind: 'ceiling-box', change: ONE },
  { id: 'duct-boot', what: 'duct boot to the ceiling', unit: 'each', kind: 'duct-boot', change: ONE },
  { id: 'open-stud-bay', what: 'open stud bay', unit: 'each', kind: 'open-stud-bay', change: ONE },
  { id: 'dropped-soffit', what: 'dropped soffit of 8 × 2 ft', unit: 'each', kind: 'dropped-soffit' },
  { id: 'open-chase', what: 'open chase of 30 × 18 in, no flue', unit: 'each', kind: 'open-chase' },
]

/** Without access factors, by the share of a package that is used, without minimum charge; to the dollar, a foot of plate to the cent. */
export function unitPrices(books: Books, topOfFillInitialIn: Quantity<'in'>): UnitPrice[] {
  const plain = exactly(1, 'factor', 'no access factor in a unit price'), area: AreaAround = { id: 'main', topOfFillInitialIn, access: plain, filled: true }
  const share = (p: Product): Product => ({ ...p, charge: 'used' })
  const price = (tasks: readonly Task[], toDollar = true): Quantity<'cents'> => soldAlone(tasks, item => share(books.blown(item) ?? books.item(item)), books, toDollar)
  const hour: Task = { id: 'hour', title: 'one person-hour', phase: 'seal', work: 'small-hole', touches: ['main'], serves: itself, role: 'crew', personHours: work(personHours, { amount: exactly(1, 'each', 'one'), rate: exactly(1, 'h/unit', 'an hour'), access: plain }), needs: [], cautions: [], proof: '' }
  const bay: Task = { ...hour, id: 'bay', personHours: work(personHours, { amount: exactly(1, 'each', 'one bay'), rate: total('h/unit', { baffle: books.rate('baffle', 0.1, 'piece'), windBlock: books.rate('wind-block', 0.05, 'each') }), access: plain }),
    needs: [{ item: books.product('baffle-16').item, quantity: exactly(1, 'each', 'one piece') }, { item: books.product('wind-block').item, quantity: exactly(1, 'each', 'one') }] }
  const hundred = exactly(100, 'ft2', 'a hundred square feet'), layer = readLayers([{ fill: 'loose-cellulose', depthIn: [1], condition: 'failed', action: 'remove' }], '', books)
  const { fittings: _, ...rest } = duct.sample
  const joint = ductTakeoff(found({ ...rest, count: 1, joints: 1 }, '', 'duct'), books, area)
  const wrap = ductTakeoff(found({ ...rest, count: 1, lengthFt: 1, joints: 0, insulationR: 0 }, '', 'duct'), books, area)
  return [
    ...MORE.map(({ id, what, unit, kind: name, change }) => {
      const kind = openingKinds.find(k => k.kind === name)! as unknown as Kind<never, OpeningAround>
      return { id, what, unit, priceCents: price(kind.takeoff(found({ ...(kind.sample as object), ...change }, '', `${name}-main-1`) as never, books, { area, house: {} }).tasks, unit !== 'ft') }
    }),
    { id: 'vented-bay', what: 'baffle and wind block in a vented bay', unit: 'each', priceCents: price([bay]) },
    { id: 'duct-joint', what: 'duct joint, 6 in round, mastic and mesh', unit: 'each', priceCents: price(joint.tasks.filter(t => t.phase === 'ducts')) },
    { id: 'duct-wrap', what: 'duct wrap, 6 in round', unit: 'ft', priceCents: price(wrap.tasks, false) },
    { id: 'removal', what: 'loose fill vacuumed out, without bags and dump fee', unit: '100 ft2', priceCents: price(oldFillWork({ id: 'main', layers: layer, netAreaFt2: hundred, thousands: work(thousandsOf, { areaFt2: hundred }), access: plain }, books).tasks.map(t => ({ ...t, needs: [] }))) },
    { id: 'person-hour', what: 'work not listed here', unit: 'person-hour', priceCents: price([hour]) },
  ]
}

// Markers, blowing, leveling: the tasks of loose fill on one area.
import { blowFactor, personHours, wholePacks } from '../calc/arithmetic.ts'
import { lineCents } from '../calc/price.ts'
import { markers } from '../calc/fill.ts'
import type { BlownProduct, Books } from '../books/books.ts'
import { priceAt } from '../books/price-at.ts'
import { exactly, total, work, type Quantity } from '../units/quantity.ts'
import type { WayIn } from './area-kind.ts'
import { cutTo, fillOf, type Task } from './kind.ts'

export interface Blow {
  readonly id: string
  readonly wayIn: WayIn
  readonly chosen: BlownProduct
  readonly bagCount: Quantity<'bag'>
  readonly netAreaFt2: Quantity<'ft2'>
  readonly thousands: Quantity
  readonly topInitial: Quantity<'in'>
  readonly headroom: Quantity<'factor'>
  readonly access: Quantity<'factor'>
}

/** What so many bags cost, by the break they reach. */
export function bagsCents(bags: Quantity<'bag'>, { wastePct, pack, ...product }: BlownProduct): Quantity<'cents'> {
  const packs = work(wholePacks, { needed: bags, wastePct, pack })
  return work(lineCents, { amount: packs, unitPriceCents: priceAt(product, packs) })
}

/** Heights are read from the ceiling plane to the blown top. */
export function blowTasks({ id, wayIn, chosen, bagCount, netAreaFt2, thousands, topInitial, headroom, access }: Blow, books: Books): Task[] {
  const plain = exactly(1, 'factor', 'no access factor on this work')
  const hours = (amount: Quantity, rateId: string, starting: number, per: string, factor: Quantity<'factor'> = access) =>
    work(personHours, { amount, rate: books.rate(rateId, starting, per), access: factor })
  const machine = books.company.machine
  const bagRate = chosen.fill === 'cellulose'
    ? books.rate(`bag-cellulose-${machine}`, machine === 'truck' ? 0.03 : 0.085, 'bag') : books.rate(`bag-glass-${machine}`, machine === 'truck' ? 0.055 : 0.11, 'bag')
  const markerCount = work(markers, { areaFt2: netAreaFt2 })
  const top = cutTo(topInitial)
  return [{
    id: `markers-${id}`, title: `Set depth markers in ${id} at ${top} in facing the ${wayIn}, and the card`, count: markerCount.value, phase: 'contain', work: 'marker', touches: [id], serves: fillOf(id), role: 'helper',
    personHours: total('h', { markers: hours(markerCount, 'depth-marker', 0.03, 'each'), card: hours(exactly(1, 'each', 'one card to an area'), 'depth-card', 0.1, 'each') }),
    needs: [{ item: books.product('depth-marker').item, quantity: markerCount }], cautions: ['Step on framing only.'], proof: `photo toward the ${wayIn}`,
  }, {
    id: `blow-${id}`, title: `Blow ${id}, far end to ${wayIn}, to ${top} in at the markers`, phase: 'insulate', work: 'blow', touches: [id], buries: [id], serves: fillOf(id), role: 'hose',
    personHours: work(personHours, { amount: bagCount, rate: bagRate, access: work(blowFactor, { headroom }) }),
    needs: [{ item: chosen.item, quantity: bagCount }], cautions: ['Respirator and eye cover.', 'Step on framing only.', 'Heat: water, breaks, a partner.', 'Two-way signal with the feeder.'], proof: 'bag tally, photo of each marker',
  }, {
    id: `level-${id}`, title: `Level, probe and top up ${id}`, phase: 'insulate', work: 'level', touches: [id], serves: fillOf(id), role: 'hose',
    personHours: hours(thousands, 'level', 0.45, '1000 ft2', plain), needs: [], cautions: ['Respirator.', 'Step on framing only.'], proof: 'depth grid',
  }]
}

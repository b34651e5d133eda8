// Work on the fill that is there: refit, move, remove.
import { over, personHours, times, wholePacks } from '../calc/arithmetic.ts'
import { removedVolume, tons } from '../calc/fill.ts'
import { floorAdded, lineCents } from '../calc/price.ts'
import type { Books } from '../books/books.ts'
import { fills } from '../reference/fills.ts'
import { exactly, total, work, type Quantity } from '../units/quantity.ts'
import { fillOf, workOf, type Task } from './kind.ts'
import type { Layer } from './layers.ts'

export interface OldFill {
  readonly id: string
  readonly layers: readonly Layer[]
  readonly netAreaFt2: Quantity<'ft2'>
  readonly thousands: Quantity
  readonly access: Quantity<'factor'>
}

/** A task for each layer that does not just stay, and the dump fee of what goes. */
export function oldFillWork({ id, layers, netAreaFt2, thousands, access }: OldFill, books: Books): { tasks: Task[]; otherCents?: Quantity<'cents'> } {
  const tasks: Task[] = []
  const hours = (amount: Quantity, rateId: string, starting: number, per: string) => work(personHours, { amount, rate: books.rate(rateId, starting, per), access })
  const prepare = (n: number, verb: string, title: string, h: Quantity<'h'>, more: Partial<Task> = {}): void => {
    tasks.push({ id: `${verb}-${id}-${n}`, title, phase: 'prepare', work: 'old-fill', touches: [id], serves: fillOf(id), role: 'crew', personHours: h, needs: [],
      cautions: ['Respirator, gloves, long sleeves.', 'Step on framing only.'], proof: 'photo', ...more })
  }
  let otherCents: Quantity<'cents'> | undefined
  layers.forEach((l, i) => {
    const batt = books.fill(l.item.fill).form === 'batt'
    const name = fills.rows.find(r => r.fill === l.item.fill)!.title
    if (l.item.action === 'refit') prepare(i + 1, 'refit', `Straighten and refit the ${name}`, hours(thousands, 'refit-batts', 5.3, '1000 ft2'))
    if (l.item.action === 'move') {
      // The published rate of 4.0 covers both ways; half of it each.
      prepare(i + 1, 'move', `Move the ${name} aside, to be laid back after the last look`, hours(thousands, 'move-aside', 2, '1000 ft2'))
      prepare(i + 1, 'lay-back', `Lay the ${name} back as it was`, hours(thousands, 'lay-back', 2, '1000 ft2'), { phase: 'insulate', work: 'lay-back', buries: [id], serves: workOf('seal', 'ducts', 'insulate') })
    }
    if (l.item.action === 'remove') {
      const volume = work(removedVolume, { areaFt2: netAreaFt2, depthIn: l.depthIn })
      const bag = books.product(batt ? 'debris-bag' : 'vacuum-bag')
      const bagCount = work(wholePacks, { needed: volume, wastePct: exactly(0, 'pct', 'bags are counted, not wasted'), pack: books.start(batt ? 'debris-bag-ft3' : 'vacuum-bag-ft3', batt ? 4 : 75, 'ft3', batt ? 'batts in one bag' : 'loose fill in one vacuum bag') })
      const inches = work(over, { amount: l.depthIn, free: exactly(6, 'in', 'the rate for vacuuming covers the first 6 in') })
      const rateNow = batt ? books.rate('pull-batts', 7, '1000 ft2') : books.rate('vacuum', 12, '1000 ft2')
      const pull = work(personHours, { amount: thousands, rate: rateNow, access })
      const extra = batt || inches.value === 0 ? undefined : hours(work(times, { amount: thousands, count: inches }), 'vacuum-inch', 1, '1000 ft2 and inch over 6')
      const handle = hours(bagCount, 'debris-bag', 0.06, 'bag')
      const fee = work(lineCents, { amount: work(tons, { areaFt2: netAreaFt2, weightPsf: l.psf }), unitPriceCents: books.company.dumpCentsPerTon })
      const charged = total('cents', { fee, toMinimum: work(floorAdded, { priceCents: fee, minimumCents: books.company.dumpMinimumCents }) })
      prepare(i + 1, 'remove', `Remove the ${name} and bag it`, total('h', { pull, ...(extra ? { extra } : {}), handle }), {
        needs: [{ item: bag.item, quantity: bagCount }], proof: 'bag count, dump ticket', otherCents: charged,
        cautions: ['Pebble-like, gray-brown or silver-gold fill: stop, leave, close the hatch; it may hold asbestos.', 'Droppings: do not stir; stop and report.', 'Respirator, gloves, long sleeves.', 'Step on framing only.'] })
      otherCents = otherCents ? total('cents', { before: otherCents, [`layer${i + 1}`]: charged }) : charged
    }
  })
  return { tasks, ...(otherCents ? { otherCents } : {}) }
}

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, beadWidth, edge } from '../../calc/seal.ts'
import { work } from '../../units/quantity.ts'
import { CAUTION, declinable, itself, method, opening, part, seamBead, takes, timesOf, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const ductBoot = opening({
  kind: 'duct-boot', title: 'Duct boots in the ceiling',
  schema: () => f.item('duct-boot', 'Duct boots in the ceiling', {
    ...where,
    count: f.count(99, 'how many alike', { examples: [7] }),
    sizeIn: f.pairOf(f.inches(48, 'one side of the boot at the ceiling'), 'boot: length, width', { examples: [[4, 10]] }),
    gapIn: f.inches(3, 'boot to drywall', { examples: ['1/4'] }),
    ...declinable,
  }),
  sample: { kind: 'duct-boot', in: 'main', count: 7, sizeIn: [4, 10], gapIn: 0.25, at: 'all rooms' },
  wrong: { item: { kind: 'duct-boot', in: 'main', count: 7, sizeIn: [4, 10], gapIn: 4, at: 'all rooms' }, code: 'number-out-of-range' },
  leak: ({ q }) => pairOf('boot', 'boot-sealed', q('count')),
  takeoff({ item, at, id, q }, books, { area }) {
    const count = q('count'), how = method(item.gapIn)
    const runIn = timesOf(work(edge, { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }), count)
    const { needs, materials } = takes([books.product(how.role), work(bead, { runIn, beadIn: work(beadWidth, { gapIn: q('gapIn'), leastIn: seamBead(books) }) })])
    return {
      figures: { method: how.method, materials },
      tasks: [{
        id: `seal-boots-${item.in}`, title: 'Seal each duct boot to the ceiling', phase: 'seal', work: 'small-hole', size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew', count: item.count, needs,
        personHours: work(personHours, { amount: count, rate: books.rate('duct-boot', 0.25, 'each'), access: area.access }),
        cautions: ['Old white or gray wrap and tape may hold asbestos: touch nothing, tell the lead.', 'Fasten the boot before it is sealed.', CAUTION.edges, ...how.cautions], proof: 'photo of each',
      }],
    }
  },
})

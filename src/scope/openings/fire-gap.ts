import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, beadWidth } from '../../calc/seal.ts'
import { work } from '../../units/quantity.ts'
import { CAUTION, declinable, inchesOf, itself, opening, seamBead, takes, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const fireGap = opening({
  kind: 'fire-gap', title: 'Gap at a party wall or other fire separation',
  schema: () => f.item('fire-gap', 'Gap at a party wall or other fire separation', {
    ...where,
    lengthFt: f.feet(300, 'length of the gap', { examples: [28] }),
    gapIn: f.inches(1, 'width of the gap', { examples: ['3/8'] }),
    ratedHours: f.number('h', { min: 0.5, max: 4 }, 'fire rating of the wall', { examples: [1] }),
    ...declinable,
  }),
  sample: { kind: 'fire-gap', in: 'main', lengthFt: 28, gapIn: 0.375, ratedHours: 1, at: 'party wall' },
  wrong: { item: { kind: 'fire-gap', in: 'main', lengthFt: 28, gapIn: 3, ratedHours: 1, at: 'party wall' }, code: 'number-out-of-range' },
  leak: ({ q }) => pairOf('ceiling-joint', 'ceiling-joint-sealed', q('lengthFt')),
  takeoff({ item, at, id, q }, books, { area }) {
    const { needs, materials } = takes([books.product('fire-sealant'), work(bead, { runIn: inchesOf(q('lengthFt')), beadIn: work(beadWidth, { gapIn: q('gapIn'), leastIn: seamBead(books) }) })])
    return {
      figures: { method: 'listed fire sealant, to the rating of the wall', materials },
      gates: [{ code: 'fire-separation', state: 'note', where: item.at, in: item.in, path: at, why: `what closes a gap in a wall rated ${item.ratedHours} h must carry that rating`, stops: { phases: [], places: [] }, clearedBy: 'the listing of the sealant for this gap, and the code official’s word where it is asked for', clearable: [] }],
      tasks: [{ id: `firestop-${id}`, title: `Seal the gap at the fire separation with its listed sealant (${Math.round(item.lengthFt)} ft)`, phase: 'seal', work: 'small-hole', size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
        personHours: work(personHours, { amount: q('lengthFt'), rate: books.rate('fire-gap', 0.05, 'ft'), access: area.access }), cautions: ['Listed system only, packing and depth as its listing says: no ordinary foam.', CAUTION.framing], proof: 'photo, label of the sealant' }],
    }
  },
})

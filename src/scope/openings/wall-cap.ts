import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, stripMetal } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, declinable, inchesOf, itself, opening, RIGID, seamBead, takes, timesOf, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const wallCap = opening({
  kind: 'wall-cap', title: 'Wall open to the attic where the ceiling changes height',
  schema: () => f.item('wall-cap', 'Wall open to the attic where the ceiling changes height', {
    ...where,
    lengthFt: f.feet(300, 'length of the wall', { examples: [14] }),
    widthIn: f.inches(24, 'its open top, across', { examples: ['3 1/2'] }),
    ...declinable,
  }),
  sample: { kind: 'wall-cap', in: 'main', lengthFt: 14, widthIn: 3.5, at: 'living room to hall' },
  wrong: { item: { kind: 'wall-cap', in: 'main', lengthFt: 14, at: 'living room' }, code: 'key-missing' },
  leak: ({ q }) => pairOf('ceiling-joint', 'board-edge', timesOf(q('lengthFt'), exactly(2, 'each', 'both edges'))),
  takeoff({ item, id, q }, books, { area }) {
    const runIn = inchesOf(q('lengthFt'))
    const { needs, materials } = takes([books.product('rigid-cover'), work(stripMetal, { runIn, widthIn: q('widthIn') })], [books.product('seam-sealant'), work(bead, { runIn: timesOf(runIn, exactly(2, 'each', 'both edges')), beadIn: seamBead(books) })])
    return {
      figures: { method: RIGID, materials },
      tasks: [{ id: `cap-wall-${id.slice('wall-cap-'.length)}`, title: `Cap the open wall with rigid board, fastened, both edges sealed (${Math.round(item.lengthFt)} ft)`, phase: 'seal', work: 'big-hole', size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
        personHours: work(personHours, { amount: q('lengthFt'), rate: books.rate('wall-cap', 0.15, 'ft'), access: area.access }), cautions: [CAUTION.wires, 'A step in the floor: know where the ceiling below ends.', CAUTION.framing], proof: 'photo of the whole run' }],
    }
  },
})

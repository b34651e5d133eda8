import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead } from '../../calc/seal.ts'
import { work } from '../../units/quantity.ts'
import { CAUTION, declinable, inchesOf, itself, opening, seamBead, takes, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const plankCeiling = opening({
  kind: 'plank-ceiling', title: 'Plank or tongue-and-groove ceiling without an air barrier',
  schema: () => f.item('plank-ceiling', 'Plank or tongue-and-groove ceiling without an air barrier', {
    ...where,
    areaFt2: f.number('ft2', { above: 0, max: 10000 }, 'planks open to the attic', { examples: [180] }),
    edgeFt: f.feet(1000, 'its edge at the walls', { examples: [54] }),
    ...declinable,
  }),
  sample: { kind: 'plank-ceiling', in: 'main', areaFt2: 180, edgeFt: 54, at: 'sun room' },
  wrong: { item: { kind: 'plank-ceiling', in: 'main', areaFt2: 0, edgeFt: 54, at: 'sun room' }, code: 'number-out-of-range' },
  leak: ({ q }) => pairOf('ceiling-general', 'ceiling-membrane', q('areaFt2')),
  takeoff({ item, id, q }, books, { area }) {
    const { needs, materials } = takes([books.product('membrane'), q('areaFt2')], [books.product('seam-sealant'), work(bead, { runIn: inchesOf(q('edgeFt')), beadIn: seamBead(books) })])
    return { figures: { method: 'new air barrier over all of it, seams taped, edges sealed', materials }, tasks: [{ id: `membrane-${id}`, title: 'Lay an air barrier over the planks, bay by bay, seams taped, edges sealed', phase: 'seal', work: 'big-hole', size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
      personHours: work(personHours, { amount: q('areaFt2'), rate: books.rate('plank-membrane', 0.03, 'ft2'), access: area.access }), cautions: ['Planks between joists carry nobody.', 'Spot sealing does nothing here: air comes through each groove.', CAUTION.framing], proof: 'photo of each bay row' }] }
  },
})

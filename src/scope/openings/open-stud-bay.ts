import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, edge } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, declinable, itself, opening, part, RIGID, seamBead, takes, timesOf, where } from '../kind.ts'
import { closedBelow } from '../leaks.ts'
import { rectangle } from '../../calc/leak.ts'

export const openStudBay = opening({
  kind: 'open-stud-bay', title: 'Stud bays open at the top',
  schema: () => f.item('open-stud-bay', 'Stud bays open at the top', {
    ...where,
    count: f.count(99, 'how many alike', { examples: [3] }),
    sizeIn: f.pairOf(f.inches(24, 'one side of the bay'), 'bay: length, width', { examples: [['14 1/2', '3 1/2']] }),
    ...declinable,
  }),
  sample: { kind: 'open-stud-bay', in: 'main', count: 3, sizeIn: [14.5, 3.5], at: 'stair wall' },
  wrong: { item: { kind: 'open-stud-bay', in: 'main', count: 3, sizeIn: [48, 3.5], at: 'stair wall' }, code: 'number-out-of-range' },
  leak: ({ item, at, q }, books) => {
    const sides = { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }
    return closedBelow(work(rectangle, sides), sides, books, q('count'))
  },
  takeoff({ item, at, id, q }, books, { area }) {
    const count = q('count'), lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1)
    const boardFt2 = timesOf(work(boardArea, { lengthIn, widthIn, lapIn: exactly(0, 'in', 'cut to the bay') }), count)
    const sealantOz = work(bead, { runIn: timesOf(work(edge, { lengthIn, widthIn }), count), beadIn: seamBead(books) })
    const { needs, materials } = takes([books.product('rigid-cover'), boardFt2], [books.product('seam-sealant'), sealantOz])
    return {
      figures: { method: RIGID, materials },
      tasks: [{
        id: `block-bays-${item.in}`, title: 'Block the top of each open stud bay with a rigid, fastened, sealed board', phase: 'seal', work: 'big-hole', size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew', count: item.count, needs,
        personHours: work(personHours, { amount: count, rate: books.rate('open-stud-bay', 0.2, 'each'), access: area.access }),
        cautions: [CAUTION.wires, 'Loose fill and a batt alone are no block: air goes through them.', CAUTION.framing], proof: 'photo of each',
      }],
    }
  },
})

import * as f from '../../fields/index.ts'
import { hoursWithMore } from '../../calc/arithmetic.ts'
import { bead, boardArea, edge, supports } from '../../calc/seal.ts'
import { exactly, given, work } from '../../units/quantity.ts'
import { product } from '../../calc/arithmetic.ts'
import { declinable, inchesOf, itself, opening, where, seamBead } from '../kind.ts'
import { closedBelow } from '../leaks.ts'
import { rectangle } from '../../calc/leak.ts'

export const droppedSoffit = opening({
  kind: 'dropped-soffit', title: 'Dropped soffit open to the attic',
  schema: () => f.item('dropped-soffit', 'Dropped soffit open to the attic', {
    ...where,
    sizeFt: f.pairOf(f.feet(60, 'one side of the opening'), 'opening: length, width', { examples: [[8, 2]] }),
    ...declinable,
  }),
  sample: { kind: 'dropped-soffit', in: 'main', sizeFt: [8, 2], at: 'kitchen cabinets' },
  wrong: { item: { kind: 'dropped-soffit', in: 'main', sizeFt: [8, 2, 1], at: 'kitchen' }, code: 'list-too-long' },
  leak: ({ item, at }, books) => {
    const sides = { lengthIn: inchesOf(given(item.sizeFt[0], 'ft', `${at}/sizeFt/0`)), widthIn: inchesOf(given(item.sizeFt[1], 'ft', `${at}/sizeFt/1`)) }
    return closedBelow(work(rectangle, sides), sides, books)
  },
  takeoff({ item, at, id }, books, { area }) {
    const lengthIn = inchesOf(given(item.sizeFt[0], 'ft', `${at}/sizeFt/0`)), widthIn = inchesOf(given(item.sizeFt[1], 'ft', `${at}/sizeFt/1`))
    const board = books.product('rigid-cover'), sealant = books.product('seam-sealant')
    const boardFt2 = work(boardArea, { lengthIn, widthIn, lapIn: books.start('soffit-lap', 2, 'in', 'cover wider than the hole, each side') })
    const sealantOz = work(bead, { runIn: work(edge, { lengthIn, widthIn }), beadIn: seamBead(books) })
    const supportFt = work(supports, { lengthIn, widthIn, spanIn: books.start('span-unsupported', 24, 'in', 'span a cover carries without support', 'SWS 3.0101.1') })
    const lumber = supportFt.value > 0 ? [{ item: books.product('support').item, quantity: supportFt, unit: books.product('support').unit }] : []
    const materials = [{ item: board.item, quantity: boardFt2, unit: board.unit }, { item: sealant.item, quantity: sealantOz, unit: sealant.unit }, ...lumber]
    return {
      figures: { method: lumber.length > 0 ? 'rigid cover on supports, sealed edge' : 'rigid cover, sealed edge', materials },
      tasks: [{
        id: `cover-soffit-${id.slice('dropped-soffit-'.length)}`, title: 'Cover the dropped soffit with a rigid, fastened, sealed board', phase: 'seal', work: 'big-hole', size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew',
        personHours: work(hoursWithMore, { count: exactly(1, 'each', 'one soffit to an entry'), rate: books.rate('soffit', 1, 'each to 12 ft2'), upTo: exactly(12, 'ft2', 'opening the rate covers'), rateMore: books.rate('soffit-more', 0.05, 'ft2 over 12'), access: area.access,
          amount: work(product, { length: given(item.sizeFt[0], 'ft', `${at}/sizeFt/0`), width: given(item.sizeFt[1], 'ft', `${at}/sizeFt/1`) }) }),
        needs: materials, cautions: ['Open drop: not a place to stand.', 'Live wires and lights in the soffit: power off and proved off.'], proof: 'photo',
      }],
    }
  },
})

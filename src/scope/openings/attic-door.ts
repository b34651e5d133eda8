import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, edge, inFeet } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { declinable, itself, opening, part, seamBead, takes, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

/** It stands in a wall: no part of the ceiling, so no path of it. */
export const atticDoor = opening({
  kind: 'attic-door', title: 'Door to the attic in a wall',
  schema: () => f.item('attic-door', 'Door to the attic in a wall', {
    ...where,
    sizeIn: f.pairOf(f.inches(96, 'one side of the door'), 'door: height, width', { examples: [[80, 30]] }),
    panelR: f.rValue('insulation on the door now', { examples: [0] }),
    gasket: f.yesNo('a gasket and a threshold that meet all round'),
    latch: f.yesNo('a latch that pulls the door tight'),
    ...declinable,
  }),
  sample: { kind: 'attic-door', in: 'main', sizeIn: [48, 24], panelR: 0, gasket: 'no', latch: 'no', at: 'upper bedroom' },
  wrong: { item: { kind: 'attic-door', in: 'main', sizeIn: [148, 24], panelR: 0, gasket: 'no', latch: 'no', at: 'upper bedroom' }, code: 'number-out-of-range' },
  leak: ({ item }) => pairOf(item.gasket === 'yes' ? 'hatch-gasketed' : 'hatch', 'hatch-gasketed', exactly(1, 'each', 'one door to an entry')),
  takeoff({ item, at, id }, books) {
    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1), one = exactly(1, 'each', 'one door to an entry')
    const aroundIn = work(edge, { lengthIn, widthIn }), panelFt2 = work(boardArea, { lengthIn, widthIn, lapIn: exactly(0, 'in', 'cut to the door') })
    const least = books.start('door-panel', 10, 'R', 'least insulation on a door to the attic')
    const insulate = item.panelR < least.value
    const { needs, materials } = takes([books.product('seam-sealant'), work(bead, { runIn: aroundIn, beadIn: seamBead(books) })],
      ...(item.gasket === 'no' ? [[books.product('weatherstrip'), work(inFeet, { lengthIn: aroundIn })] as const] : []), ...(item.latch === 'no' ? [[books.product('latch'), one] as const] : []),
      ...(insulate ? [[books.product('panel-batt'), panelFt2] as const, [books.product('panel-tray'), panelFt2] as const] : []))
    const parts = ['frame sealed', ...(item.gasket === 'no' ? ['gasket'] : []), ...(item.latch === 'no' ? ['latch'] : []), ...(insulate ? ['insulated panel'] : [])].join(', ')
    return {
      assumes: [least], figures: { method: parts, materials },
      tasks: [{
        id: `fit-${id}`, title: `Door to the attic: ${parts}`, phase: 'seal', work: 'hatch', size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
        personHours: work(personHours, { amount: one, rate: books.rate('attic-door', 1, 'each'), access: exactly(1, 'factor', 'done from the room') }), cautions: ['The door must still open from inside.'], proof: 'photo',
      }],
    }
  },
})

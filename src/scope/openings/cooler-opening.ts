import * as f from '../../fields/index.ts'
import { exactly } from '../../units/quantity.ts'
import { coveredOpening } from '../covered-opening.ts'
import { declinable, opening, part, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const coolerOpening = opening({
  kind: 'cooler-opening', title: 'Ceiling grille of an evaporative cooler, or its relief vent',
  schema: () => f.item('cooler-opening', 'Ceiling grille of an evaporative cooler, or its relief vent', { ...where, sizeIn: f.pairOf(f.inches(72, 'one side of its opening'), 'opening: length, width', { examples: [[20, 20]] }), ...declinable }),
  sample: { kind: 'cooler-opening', in: 'main', sizeIn: [20, 20], at: 'hall' },
  wrong: { item: { kind: 'cooler-opening', in: 'main', sizeIn: [20, 20] }, code: 'key-missing' },
  leak: () => pairOf('whole-house-fan', 'stair-covered', exactly(1, 'each', 'one grille to an entry')),
  takeoff: ({ item, at, id }, books, { area }) => coveredOpening({ id, inArea: item.in, lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1), what: 'cooler grille', rate: 'cooler-opening',
    cautions: ['Water and power off at the cooler before it is covered.'] }, books, area),
})

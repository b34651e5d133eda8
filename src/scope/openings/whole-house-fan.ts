import * as f from '../../fields/index.ts'
import { exactly } from '../../units/quantity.ts'
import { coveredOpening } from '../covered-opening.ts'
import { declinable, opening, part, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const wholeHouseFan = opening({
  kind: 'whole-house-fan', title: 'Whole-house fan in the ceiling',
  schema: () => f.item('whole-house-fan', 'Whole-house fan in the ceiling', { ...where, sizeIn: f.pairOf(f.inches(72, 'one side of its opening'), 'opening: length, width', { examples: [[30, 30]] }), ...declinable }),
  sample: { kind: 'whole-house-fan', in: 'main', sizeIn: [30, 30], at: 'hall' },
  wrong: { item: { kind: 'whole-house-fan', in: 'main', sizeIn: [30], at: 'hall' }, code: 'list-too-short' },
  leak: () => pairOf('whole-house-fan', 'stair-covered', exactly(1, 'each', 'one fan to an entry')),
  takeoff: ({ item, at, id }, books, { area }) => coveredOpening({ id, inArea: item.in, lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1), what: 'whole-house fan', rate: 'whole-house-fan',
    cautions: ['Run under a cover it overheats: switch locked or fuse out while the cover is on.', 'With a tight house it needs open windows, and pulls down flues.'] }, books, area),
})

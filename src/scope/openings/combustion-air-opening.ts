import * as f from '../../fields/index.ts'
import { over, personHours } from '../../calc/arithmetic.ts'
import { edge, edgeOut, height, inFeet, stripMetal } from '../../calc/seal.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { CAUTION, cutTo, damMargin, declinable, fillOf, flagOnly, opening, part, takes, where, type Task } from '../kind.ts'

const NEVER = 'Combustion air: never close, cover or narrow this opening; carbon monoxide.'

/** It feeds a flame: never sealed, never covered. Its sleeve goes up before the fill comes. */
export const combustionAirOpening = opening({
  kind: 'combustion-air-opening', title: 'Opening that feeds a flame with air',
  schema: () => f.item('combustion-air-opening', 'Opening that feeds a flame with air', {
    ...where,
    sizeIn: f.pairOf(f.inches(60, 'one side of the opening'), 'opening: length, width', { examples: [[12, 8]] }),
    sleeveIn: f.inches(60, 'its metal sleeve above the ceiling plane, 0 where it has none', { min: 0, examples: [0] }),
    ...declinable,
  }),
  sample: { kind: 'combustion-air-opening', in: 'main', sizeIn: [12, 8], sleeveIn: 0, at: 'furnace closet' },
  wrong: { item: { kind: 'combustion-air-opening', in: 'main', sizeIn: [12, 8], at: 'furnace closet' }, code: 'key-missing' },
  takeoff({ item, at, id, q }, books, { area }) {
    if (!area.filled) return flagOnly(id, item.in, 'Flag the combustion-air opening, old fill clear of it', [NEVER], exactly(1, 'each', 'one opening to an entry'), area.access, books)
    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1)
    const topIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: books.start('combustion-air-sleeve', 6, 'in', 'combustion-air sleeve above the blown top', 'IFGC, combustion air from the attic (from memory)') })
    const raiseIn = work(over, { amount: topIn, free: q('sleeveIn') }), aroundIn = work(edge, { lengthIn, widthIn })
    const offIn = books.start('combustion-air-dam', 3, 'in', 'dam off a combustion-air sleeve')
    // The dam keeps fill from leaning on the sleeve and falling in.
    const damIn = work(edgeOut, { lengthIn, widthIn, outIn: offIn })
    const damHighIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) })
    const metal = books.product('sheet-metal')
    const { needs, materials } = takes([metal, total('ft2', { sleeve: work(stripMetal, { runIn: aroundIn, widthIn: raiseIn }), dam: work(stripMetal, { runIn: damIn, widthIn: damHighIn }) })])
    const tasks: Task[] = [{
      id: `sleeve-${id}`, title: `Raise the combustion-air sleeve in metal to ${cutTo(topIn)} in above the ceiling, dam ${cutTo(damHighIn)} in high round it, open on top`, phase: 'contain', work: 'dam', hot: true, size: 'medium', touches: [item.in], serves: fillOf(item.in), closes: id, role: 'crew', needs,
      personHours: work(personHours, { amount: work(inFeet, { lengthIn: total('in', { sleeve: aroundIn, dam: damIn }) }), rate: books.rate('dam', 0.06, 'ft'), access: area.access }),
      cautions: [NEVER, 'Its free area stays whole: no screen, no flap.', CAUTION.edges], keepOff: [{ what: 'fill off the combustion-air sleeve', distanceIn: offIn }], onCover: [NEVER, 'No hose over the combustion-air sleeve.'], proof: 'photo with ruler, looking down the open sleeve',
    }]
    return { figures: { method: 'left open: it feeds a flame; sleeve and dam', materials }, tasks }
  },
})

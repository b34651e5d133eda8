// Ceilings that get no fill: what stands on the line between them and a filled floor.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import { bead, stripMetal } from '../calc/seal.ts'
import type { Books } from '../books/books.ts'
import { exactly, work } from '../units/quantity.ts'
import { accessOf, areaId, floorSize, fromKey, headroomKey, none, NO_EAVES, rectanglesKey, websKey, type AreaMeasure, type FloorAround } from './area-kind.ts'
import { CAUTION, fillOf, inchesOf, itself, seamBead, takes, type Found, type Gate, type Task } from './kind.ts'

export const leftOutKeys = {
  id: areaId, rectanglesFt: rectanglesKey, ...fromKey,
  lineFt: f.feet(500, 'length of the line between it and the area beside', { examples: [20] }),
  joistIn: f.inches(24, 'depth of the joists along the line', { examples: [5.5] }),
  headroomIn: headroomKey, webs: websKey,
}
type LeftOut = f.Static<ReturnType<typeof keys>>
const keys = () => f.fields(leftOutKeys, 'left out')

/** The line is closed below the fill, joist bay by joist bay, and dammed above. */
export function lineTakeoff(found: Found<LeftOut>, books: Books, around: FloorAround, kind: string, line: { readonly title: string; readonly cautions: readonly string[]; readonly gates?: readonly Gate[] }): AreaMeasure {
  const { item, at, q } = found, id = item.id
  const size = floorSize(item.rectanglesFt, [], at), { access, findings } = accessOf(found, none('in', 'no fill over the line'), around.hatchIn, books)
  const runIn = inchesOf(q('lineFt'))
  const seal = takes([books.product('rigid-cover'), work(stripMetal, { runIn, widthIn: q('joistIn') })], [books.product('seam-sealant'), work(bead, { runIn, beadIn: seamBead(books) })])
  const tasks: Task[] = [
    { id: `close-line-${id}`, title: line.title, phase: 'seal', work: 'big-hole', size: 'large', touches: [id, item.beside], serves: itself, closes: `${id}-line`, role: 'crew', personHours: work(personHours, { amount: q('lineFt'), rate: books.rate('separation-line', 0.15, 'ft'), access }), needs: seal.needs, cautions: [...line.cautions, CAUTION.framing], proof: 'photo of the whole line' },
    { id: `dam-line-${id}`, title: `Dam the fill of ${item.beside} at the line to ${id}`, phase: 'contain', work: 'dam', touches: [item.beside], serves: fillOf(item.beside), role: 'crew', personHours: work(personHours, { amount: q('lineFt'), rate: books.rate('dam', 0.06, 'ft'), access }), needs: takes([books.product('rigid-dam'), q('lineFt')]).needs, cautions: [CAUTION.framing], proof: 'photo' },
  ]
  return {
    figures: { id, kind, areaFt2: size.areaFt2, netAreaFt2: exactly(0, 'ft2', 'left out of the insulation') }, tasks, gates: line.gates ?? [], findings,
    topOfFillInitialIn: none('in', 'left out'), access, filled: false, loose: false, floor: false, need: none('R', 'left out'), retarder: false, eaves: [], windBlocks: NO_EAVES, fillFigures: [],
  }
}

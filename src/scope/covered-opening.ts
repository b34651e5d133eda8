// An opening in the ceiling that is used for part of the year: an insulated cover over it, and a curb for the fill.
import { personHours } from '../calc/arithmetic.ts'
import { seriesR } from '../calc/heat.ts'
import { bead, boardArea, edge, height, inFeet } from '../calc/seal.ts'
import type { Books } from '../books/books.ts'
import { exactly, work, type Quantity } from '../units/quantity.ts'
import { baseR } from './ceiling.ts'
import { CAUTION, cutTo, damMargin, fillOf, itself, seamBead, takes, type AreaAround, type Measure, type Task } from './kind.ts'

interface Covered { readonly id: string; readonly inArea: string; readonly lengthIn: Quantity<'in'>; readonly widthIn: Quantity<'in'>; readonly what: string; readonly rate: string; readonly cautions: readonly string[] }

export function coveredOpening({ id, inArea, lengthIn, widthIn, what, rate, cautions }: Covered, books: Books, area: AreaAround): Measure {
  const one = exactly(1, 'each', 'one to an entry'), cover = books.product('seasonal-cover'), runIn = work(edge, { lengthIn, widthIn }), aroundFt = work(inFeet, { lengthIn: runIn })
  const fit = takes([cover, one], [books.product('seam-sealant'), work(bead, { runIn, beadIn: seamBead(books) })]), curb = takes([books.product('rigid-dam'), aroundFt])
  const base = { touches: [inArea], role: 'crew', size: 'medium' } as const
  const tasks: Task[] = [{ ...base, id: `cover-${id}`, title: `Fit an insulated, gasketed cover over the ${what}, a label at its switch`, phase: 'seal', work: 'hatch', serves: itself, closes: id, needs: fit.needs,
    personHours: work(personHours, { amount: one, rate: books.rate(rate, 1.25, 'each'), access: area.access }), cautions: [CAUTION.power, ...cautions, CAUTION.framing], proof: 'photo of cover and label' }]
  if (area.filled) tasks.push({ ...base, id: `curb-${id}`, title: `Rigid curb round the ${what}, ${cutTo(work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) }))} in high`, phase: 'contain', work: 'dam', serves: fillOf(inArea), needs: curb.needs,
    personHours: work(personHours, { amount: aroundFt, rate: books.rate('dam', 0.06, 'ft'), access: area.access }), cautions: [CAUTION.framing], proof: 'photo' })
  return {
    figures: { method: `insulated cover${area.filled ? ', curb' : ''}`, materials: area.filled ? [...fit.materials, ...curb.materials] : fit.materials }, tasks,
    paths: [{ areaFt2: work(boardArea, { lengthIn, widthIn, lapIn: exactly(0, 'in', 'its own opening') }), rBefore: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'louvers') }), rAfter: work(seriesR, { base: baseR(), fill: cover.rValue ?? exactly(0, 'R', 'the price book gives no R for it') }) }],
  }
}

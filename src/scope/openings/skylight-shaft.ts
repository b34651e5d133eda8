import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, edge, stripMetal } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { CAUTION, declinable, itself, opening, part, seamBead, takes, where, type Task } from '../kind.ts'
import { foundAs, sealedEdge } from '../leaks.ts'
import { inFeet } from '../../calc/seal.ts'

export const skylightShaft = opening({
  kind: 'skylight-shaft', title: 'Skylight shaft through the attic',
  schema: () => f.item('skylight-shaft', 'Skylight shaft through the attic', {
    ...where,
    sizeIn: f.pairOf(f.inches(144, 'one side of the shaft'), 'shaft at the ceiling: length, width', { examples: [[46, 24]] }),
    heightIn: f.inches(144, 'ceiling plane to the roof deck, mean', { examples: [40] }),
    wallR: f.rValue('R on its walls now', { examples: [0] }),
    ...declinable,
  }),
  sample: { kind: 'skylight-shaft', in: 'main', sizeIn: [46, 24], heightIn: 40, wallR: 0, at: 'bath' },
  wrong: { item: { kind: 'skylight-shaft', in: 'main', sizeIn: [46, 24], heightIn: 40, at: 'bath' }, code: 'key-missing' },
  leak({ item, at }) {
    const edgeIn = work(edge, { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) })
    return { ...foundAs('ceiling-joint', work(inFeet, { lengthIn: edgeIn })), after: sealedEdge(edgeIn) }
  },
  takeoff({ item, at, id, q }, books, { area }) {
    const edgeIn = work(edge, { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }), wallFt2 = work(stripMetal, { runIn: edgeIn, widthIn: q('heightIn') })
    const batt = books.product('wall-batt'), least = books.start('shaft-wall', 13, 'R', 'least insulation on the walls of a shaft', 'as an outside wall (judgment)'), insulate = item.wallR < least.value
    const sealant = [books.product('seam-sealant'), work(bead, { runIn: total('in', { foot: edgeIn, corners: work(edge, { lengthIn: q('heightIn'), widthIn: q('heightIn') }) }), beadIn: seamBead(books) })] as const
    const seal = takes(sealant), walls = takes([batt, wallFt2], [books.product('wall-board'), wallFt2])
    const base = { touches: [item.in], serves: itself, closes: id, role: 'crew', size: 'medium' } as const
    const tasks: Task[] = [{ ...base, id: `seal-${id}`, title: 'Seal the foot and the corners of the skylight shaft', phase: 'seal', work: 'small-hole', needs: seal.needs,
      personHours: work(personHours, { amount: work(inFeet, { lengthIn: edgeIn }), rate: books.rate('shaft-seal', 0.05, 'ft'), access: area.access }), cautions: [CAUTION.framing], proof: 'photo' }]
    // Its walls stand above the fill: batts, and a board that keeps the wind out of them.
    if (insulate) tasks.push({ ...base, id: `insulate-${id}`, title: 'Insulate the walls of the shaft, then board over them, all joints sealed', phase: 'contain', work: 'dam', needs: walls.needs,
      personHours: work(personHours, { amount: wallFt2, rate: books.rate('skylight-shaft', 0.05, 'ft2'), access: area.access }), cautions: ['Foam board left bare in an attic needs an ignition barrier (IRC R316.5.3): here drywall.', 'Respirator, gloves, long sleeves.', CAUTION.framing], proof: 'photo of each side' })
    return {
      figures: { method: insulate ? 'sealed, walls insulated and boarded' : 'sealed', materials: insulate ? [...seal.materials, ...walls.materials] : seal.materials }, tasks, assumes: [least],
      paths: [{ areaFt2: wallFt2, rBefore: work(seriesR, { base: baseR(), fill: q('wallR') }), rAfter: work(seriesR, { base: baseR(), fill: insulate ? batt.rValue ?? exactly(0, 'R', 'the price book gives no R for it') : q('wallR') }) }],
    }
  },
})

import * as f from '../../fields/index.ts'
import { over, personHours, product, thousandsOf } from '../../calc/arithmetic.ts'
import { joistShare } from '../../calc/fill.ts'
import { fieldU, finalR, joistPathR, needR, seriesR, shortR } from '../../calc/heat.ts'
import { bead, edge } from '../../calc/seal.ts'
import type { Books, Product } from '../../books/books.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fromRow } from '../../reference/table.ts'
import { exactly, given, work, type Quantity } from '../../units/quantity.ts'
import { accessOf, area, areaId, framingKey, goalKey, headroomKey, NO_EAVES, none, oldLayers, websKey } from '../area-kind.ts'
import { baseR, woodPerInch } from '../ceiling.ts'
import { CAUTION, fillOf, inchesOf, itself, seamBead, takes, type Task } from '../kind.ts'
import { layerSchema } from '../layers.ts'
import { oldFillWork } from '../old-fill.ts'

/** The thickest batt that fits between the studs. */
function wallBatt(depthIn: number, books: Books): Product {
  const all = [...books.products('wall-batt')].sort((a, b) => (b.rValue?.value ?? 0) - (a.rValue?.value ?? 0))
  return all.find(p => (p.thicknessIn?.value ?? 0) <= depthIn + 1e-9) ?? all.at(-1) ?? books.product('wall-batt')
}

export const kneeWall = area({
  kind: 'knee-wall', title: 'Knee wall',
  schema: () => f.item('knee-wall', 'Knee wall', {
    id: areaId,
    lengthFt: f.feet(500, 'length of the wall', { examples: [22] }),
    heightFt: f.feet(20, 'height of the wall', { examples: ["4'2"] }),
    studs: framingKey('the studs'),
    backed: f.optional(f.yesNo('a sound, sealed board on its attic side already', { default: 'no' })),
    headroomIn: headroomKey,
    webs: websKey,
    rValue: goalKey,
    beside: f.optional(f.id('floor that it stands on: its back is closed before that floor is blown, and what stops the one stops the other', { examples: ['eaves-east'] })),
    existing: f.list(layerSchema(), 'batts between the studs; [] = bare', { max: 2 }),
  }),
  sample: { kind: 'knee-wall', id: 'knee', lengthFt: 22, heightFt: 4, studs: { size: '2x4', spacingIn: 16 }, headroomIn: 44, existing: [{ fill: 'fiberglass-batt', depthIn: [3.5], condition: 'poor', action: 'remove' }] },
  wrong: { item: { kind: 'knee-wall', id: 'knee', lengthFt: 22, heightFt: 40, studs: { size: '2x4', spacingIn: 16 }, headroomIn: 44, existing: [] }, code: 'number-out-of-range' },
  takeoff(found, books, around) {
    const { item, at, q } = found, id = item.id
    const areaFt2 = work(product, { length: q('lengthFt'), width: q('heightFt') }), thousands = work(thousandsOf, { areaFt2 })
    const old = oldLayers(item.existing, `${at}/existing`, books), { access, findings } = accessOf(found, none('in', 'no fill lies over a wall'), around.hatchIn, books)
    const stud = lumber.rows.find(r => r.size === item.studs.size)!, studIn = fromRow(lumber, stud, stud.depthIn, 'in', stud.size)
    const framing = work(joistShare, { joistWidthIn: fromRow(lumber, stud, stud.widthIn, 'in', stud.size), spacingIn: given(item.studs.spacingIn, 'in', `${at}/studs/spacingIn`) })
    const batt = wallBatt(studIn.value, books), battR = batt.rValue ?? none('R', 'the price book gives no R for it')
    const targetR = item.rValue === undefined ? books.start('knee-wall-r', 13, 'R', 'R wanted in a knee wall', 'IECC wood-frame wall, zones 3 to 5 of 2009 (from memory, medium); the studs set the limit') : q('rValue')
    const addedR = work(shortR, { targetR, existingR: old.existingR }), need = work(needR, { shortR: addedR }), fills = need.value > 0 && old.keptIn.value + (batt.thicknessIn?.value ?? 0) <= studIn.value + 1e-9
    const removal = oldFillWork({ id, layers: old.layers, netAreaFt2: areaFt2, thousands, access }, books)
    const edgeIn = work(edge, { lengthIn: inchesOf(q('lengthFt')), widthIn: inchesOf(q('heightFt')) })
    const seal = takes([books.product('seam-sealant'), work(bead, { runIn: edgeIn, beadIn: seamBead(books) })])
    const board = takes([books.product('wall-board'), areaFt2], [books.product('seam-sealant'), work(bead, { runIn: edgeIn, beadIn: seamBead(books) })])
    const plain = { touches: [id], role: 'crew' } as const, stands = item.beside === undefined ? {} : { in: item.beside }
    const tasks: Task[] = [
      { ...plain, id: `seal-knee-${id}`, title: 'Seal the knee wall at its top and bottom plates', phase: 'seal', work: 'small-hole', size: 'medium', serves: itself, closes: `${id}-plates`, personHours: work(personHours, { amount: q('lengthFt'), rate: books.rate('knee-wall-plates', 0.05, 'ft'), access }), needs: seal.needs, cautions: [CAUTION.wires, CAUTION.framing], proof: 'photo' },
      ...removal.tasks,
      ...(fills ? [{ ...plain, id: `batts-${id}`, title: `Fill the stud bays with ${batt.name}, full and uncut`, phase: 'insulate', work: 'lay-batts', ...stands, buries: [id], serves: fillOf(id), personHours: work(personHours, { amount: thousands, rate: books.rate('wall-batts', 10, '1000 ft2'), access }), needs: takes([batt, areaFt2]).needs, cautions: ['Respirator, gloves, long sleeves.', CAUTION.framing], proof: 'photo before the board' } satisfies Task] : []),
      // The board over the batts is the air barrier: without it wind goes through them.
      ...(item.backed === 'yes' ? [] : [{ ...plain, id: `back-${id}`, title: 'Board over the attic side of the knee wall, fastened, all edges and joints sealed', phase: 'insulate', work: 'back-wall', size: 'large', ...stands, serves: fills ? fillOf(id) : itself, personHours: work(personHours, { amount: areaFt2, rate: books.rate('knee-wall-back', 0.04, 'ft2'), access }), needs: board.needs,
        cautions: ['Foam board left bare in an attic needs an ignition barrier (IRC R316.5.3): here drywall.', CAUTION.framing], proof: 'photo' } satisfies Task]),
    ]
    const base = baseR(), filledR = fills ? work(finalR, { existingR: old.existingR, chartR: battR }) : old.existingR
    const studR = work(joistPathR, { base, joistIn: studIn, woodPerInch: woodPerInch(), keptAboveIn: none('in', 'none'), keptPerInch: none('R/in', 'none'), newAboveIn: none('in', 'none'), newPerInch: none('R/in', 'none') })
    const u = (fill: Quantity<'R'>, gaps: Quantity<'fraction'>) => work(fieldU, { framing, gaps, cavityR: work(seriesR, { base, fill }), gapR: work(seriesR, { base, fill: exactly(0, 'R', 'open gap') }), joistR: studR })
    const nowR = old.layers.length === 0 ? old.existingR : old.layers[0]!.r
    return {
      figures: { id, kind: 'knee-wall', areaFt2, netAreaFt2: areaFt2, existingR: old.existingR, targetR, addedR, ...(fills ? { product: batt.item, battR } : {}), finalR: filledR },
      tasks, findings: need.value > 0 && filledR.value < targetR.value ? [...findings, { code: 'studs-limit-batts', severity: 'note', path: `${at}/studs`, says: `the studs hold R ${filledR.value.toFixed(0)} of ${targetR.value}`, why: 'a batt that is squeezed loses R', mend: 'take the R it reaches, or fur the wall out' }] : findings, gates: [],
      ...(removal.otherCents ? { otherCents: removal.otherCents } : {}),
      topOfFillInitialIn: none('in', 'a wall'), access, filled: fills, loose: false, floor: false, need: work(over, { amount: need, free: none('R', 'nothing free') }) as unknown as Quantity<'R'>, retarder: false, eaves: [], windBlocks: NO_EAVES,
      fabric: { netAreaFt2: areaFt2, base, uFieldBefore: u(nowR, none('fraction', 'no gaps counted')), uFieldAfter: u(filledR, none('fraction', 'full batts')) }, fillFigures: ['product', 'battR', 'finalR', 'averageR', 'uAfter'],
    }
  },
})

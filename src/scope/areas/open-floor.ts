import * as f from '../../fields/index.ts'
import { netOf, personHours } from '../../calc/arithmetic.ts'
import { bags, ceilingLoad, exposedJoist, joistShare, layerWeight, markers, topOfFill } from '../../calc/fill.ts'
import { averageR, finalR, gappedR, needR, shortR } from '../../calc/heat.ts'
import { height } from '../../calc/seal.ts'
import type { BlownProduct, Books, ChartAnswer, ChartRow, Product } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fills } from '../../reference/fills.ts'
import { asTape } from '../../units/tape.ts'
import { fromRow } from '../../reference/table.ts'
import { assumed, exactly, given, work, type Quantity } from '../../units/quantity.ts'
import { accessOf, areaId, ceilingKey, floorSize, framingKey, goalKey, headroomKey, oldLayers, rectanglesKey, websKey, type AreaMeasure, type FloorAround } from '../area-kind.ts'
import { baseR } from '../ceiling.ts'
import { bagsCents, blowTasks } from '../blow.ts'
import { ceilingLimit, loadGates } from '../ceiling-load.ts'
import { eaveWork } from '../eaves.ts'
import { fabricOf } from '../fabric.ts'
import { facingWork } from '../facings.ts'
import { damMargin, fillOf, type Found, type Gate, type Task } from '../kind.ts'
import { layerSchema } from '../layers.ts'
import { oldFillWork } from '../old-fill.ts'

/** Keys of every floor that loose fill is blown on. */
export const floorKeys = {
  id: areaId,
  rectanglesFt: rectanglesKey,
  leaveOut: f.optional(f.list(f.fields({ what: f.text('what it is', { examples: ['stair head'] }), areaFt2: f.number('ft2', { above: 0, max: 50000 }, 'area not to be filled') }, 'a part left out'), 'parts of the rectangles that are not filled')),
  unseenFt2: f.optional(f.number('ft2', { above: 0, max: 50000 }, 'floor nobody could look at: its openings are not in this file', { examples: [120] })),
  joists: framingKey('the ceiling joist or bottom chord'),
  ceiling: ceilingKey(),
  roofPitch: f.number('rise in 12', { above: 0, max: 24 }, 'roof slope over the eave', { examples: [5] }),
  heelIn: f.inches(60, 'ceiling plane to underside of the roof deck, at the outer edge of the plate', { examples: ['5 1/2'] }),
  wallIn: f.optional(f.inches(24, 'thickness of the outside wall', { default: 4.5 })),
  ventGapIn: f.optional(f.inches(6, 'air gap kept under the deck, square to it', { default: 1 })),
  headroomIn: headroomKey,
  webs: websKey,
  rValue: goalKey,
  existing: f.list(layerSchema(), 'existing fill from the ceiling up; [] = bare', { max: 10 }),
}

export const openFloorSchema = f.later(() => f.item('open-floor', 'Open attic floor', {
  ...floorKeys,
  cover: f.optional(f.word(['blow', 'batts', 'none'] as const, 'blow loose fill, lay unfaced batts over, or leave it as it is', { default: 'blow' })),
}))

export type OpenFloor = f.StaticOf<typeof openFloorSchema>
/** What all floors have, whatever their kind. */
export type Floor = f.Static<ReturnType<typeof floorFields>>
const floorFields = () => f.fields(floorKeys, 'a floor')

export function floorFaults(found: Found<Floor>): Finding[] {
  const { item, at } = found
  const out: Finding[] = []
  const gross = item.rectanglesFt.reduce((sum, [a, b]) => sum + a * b, 0)
  const left = (item.leaveOut ?? []).reduce((sum, p) => sum + p.areaFt2, 0)
  if (left >= gross) out.push({ code: 'nothing-left-to-fill', severity: 'error', path: `${at}/leaveOut`, says: `${left} ft2 is left out of ${gross} ft2`, why: 'nothing of the floor remains', mend: 'correct the rectangles, or drop the area' })
  if (item.unseenFt2 !== undefined && item.unseenFt2 >= gross) out.push({ code: 'nothing-seen', severity: 'error', path: `${at}/unseenFt2`, says: `${item.unseenFt2} ft2 unseen of ${gross} ft2`, why: 'a floor that nobody saw can be given no price', mend: 'look at part of it, or leave the area out of the job' })
  item.existing.forEach((l, i) => {
    const here = `${at}/existing/${i}`
    const form = fills.rows.find(r => r.fill === l.fill)!.form
    if (form === 'loose' && (l.condition === 'fair' || l.condition === 'poor')) {
      out.push({ code: 'loose-fill-has-no-gaps', severity: 'error', path: `${here}/condition`, says: `${l.fill} in ${l.condition} condition`, why: 'fair and poor grade the gaps between batts; loose fill takes its measured depth', mend: 'write good, or failed where it counts for nothing' })
    }
    if (l.fill === 'vermiculite' && l.action !== 'keep') out.push({ code: 'vermiculite-is-not-ours', severity: 'error', path: `${here}/action`, says: `${l.action} on vermiculite`, why: 'it may hold asbestos: only a licensed abatement firm moves or removes it', mend: 'write action: keep; once it is out, take the layer out of the file and probe again' })
    if (l.action === 'refit' && form === 'loose') out.push({ code: 'loose-fill-is-not-refitted', severity: 'error', path: `${here}/action`, says: `refit on ${l.fill}`, why: 'only batts are refitted', mend: 'write keep, move or remove' })
    if (l.condition === 'failed' && l.action !== 'remove') out.push({ code: 'failed-fill-kept', severity: 'warning', path: `${here}/action`, says: `failed ${l.fill} stays`, why: 'wet, fouled or contaminated fill is never left under new fill; here it counts R 0 and keeps its weight', mend: 'write action: remove' })
    if ((l.labelIn === undefined) !== (l.labelR === undefined)) out.push({ code: 'label-needs-both', severity: 'error', path: here, says: 'labelIn without labelR, or the other way round', why: 'squeezing is worked from both', mend: 'write both figures of the label, or neither' })
    const deep = l.depthIn.reduce((a, b) => a + b, 0) / l.depthIn.length
    if (l.labelIn !== undefined && deep < l.labelIn * 0.75) out.push({ code: 'squeezed-too-far', severity: 'error', path: `${here}/labelIn`, says: `${asTape(deep)} in of a ${asTape(l.labelIn)} in batt`, why: 'more than a quarter squeezed: the rule for compressed batts ends there', mend: 'measure its R otherwise, or write action: remove' })
    if (l.depthIn.length < 5) out.push({ code: 'few-probes', severity: 'note', path: `${here}/depthIn`, says: `${l.depthIn.length} of 5 probes`, why: 'existing R is only as good as its probes', mend: 'probe five places away from hatch and eaves' })
    for (const above of item.existing.slice(0, i)) if (above.action === 'remove' && (l.action === 'keep' || l.action === 'refit')) {
      out.push({ code: 'kept-over-removed', severity: 'error', path: `${here}/action`, says: `${l.fill} stays over ${above.fill} that goes`, why: 'what lies on a removed layer has to come out first', mend: 'write move or remove for it' })
      break
    }
  })
  return out
}

const FILL_FIGURES = ['product', 'chartR', 'battR', 'interpolated', 'settledDepthIn', 'initialDepthIn', 'topOfFillInitialIn', 'topOfFillSettledIn', 'bags', 'addedWeightPsf',
  'ceilingLoadPsf', 'finalR', 'averageR', 'uAfter', 'edgeStripFt', 'edgeStrip', 'baffleIn', 'damTopIn', 'markers', 'neighborRows', 'lighter'] as const

/** What another kind of floor says of itself. */
export interface FloorWay {
  readonly kind: string
  readonly cover?: 'blow' | 'batts' | 'none'
  /** Room for all fill above the ceiling plane, where boards come back on it. */
  readonly roomIn?: Quantity<'in'>
}

export function floorTakeoff(found: Found<Floor>, books: Books, around: FloorAround, way: FloorWay): AreaMeasure {
  const { item, at, q } = found
  const id = item.id, cover = way.cover ?? 'blow'
  const tasks: Task[] = [], gates: Gate[] = [], findings: Finding[] = [], assumes: Quantity[] = [], unknowns: string[] = []
  const { areaFt2, netAreaFt2, thousands } = floorSize(item.rectanglesFt, item.leaveOut ?? [], at)
  const { layers, kept, existingR: listedR, keptIn, keptPsf, oldDepth, gaps } = oldLayers(item.existing, `${at}/existing`, books)
  const { access, headroom, findings: reached } = accessOf(found, oldDepth, around.hatchIn, books)
  findings.push(...reached)

  const oldFillDone = oldFillWork({ id, layers, netAreaFt2, thousands, access }, books)
  tasks.push(...oldFillDone.tasks)
  if (around.eavesUnknown) unknowns.push(`Baffles, wind blocks and eave work of ${id}: no eaves in the survey.`)

  // Target and row
  const targetR = item.rValue === undefined ? books.target() : q('rValue')
  // Under batts the gaps stay empty; loose fill drops into them.
  const existingR = cover === 'batts' && gaps.value > 0 ? work(gappedR, { r: listedR, gaps, base: baseR() }) : listedR
  const addedR = work(shortR, { targetR, existingR })
  const need = work(needR, { shortR: addedR })
  const chosen = books.fillFor(around.fill, need)
  if (around.fill === undefined && chosen) assumes.push(assumed('fill', 1, 'each', `${chosen.name} for areas that name no fill`, 'no choices.fill in the file'))
  const wanted = cover === 'blow' && need.value > 0 && chosen ? chosen.answer(need) : undefined
  const answer: ChartAnswer | undefined = wanted && chosen && way.roomIn ? inRoom(wanted, chosen, need, keptIn, way.roomIn) : wanted
  const batt = cover === 'batts' && need.value > 0 ? battFor(need, books) : undefined
  const blown = answer?.is === 'row' ? answer.row : undefined, rowOf = blown ?? (batt && battRow(batt, books))
  if (answer !== wanted) findings.push({ code: 'deck-limits-fill', severity: 'note', path: `${at}/id`, says: blown ? `R ${blown.chartR} of the ${need.value} that are short fits under the boards` : `no fill of the chart fits under the boards`, why: `there are ${asTape(Math.max(0, way.roomIn!.value - keptIn.value))} in of room`, mend: 'lay the boards back on risers (riserIn), or leave them out' })
  if (need.value <= 0) findings.push({ code: 'target-met', severity: 'note', path: at, says: `R ${existingR.value.toFixed(1)} of ${targetR.value}`, why: 'what is there reaches the target', mend: 'nothing is blown; the sealing stands' })
  if (answer?.is === 'leave') findings.push({ code: 'need-under-half-row', severity: 'note', path: at, says: `${addedR.value.toFixed(1)} short, the first row is R-${answer.first.chartR}`, why: 'under half of it is left as it is; nothing is blown', mend: `a higher target blows R-${answer.first.chartR}: ${Math.ceil(netAreaFt2.value / answer.first.coverageFt2.value)} bags` })
  if (answer?.is === 'row' && answer.excess) findings.push({ code: 'first-row-over-need', severity: 'note', path: at, says: `${need.value} short, R-${answer.row.chartR} is the first row`, why: `it is ${answer.row.chartR - need.value} more than needed`, mend: 'leave the area as it is, or take the row' })
  if (answer?.is === 'beyond') findings.push({ code: 'need-above-chart', severity: 'error', path: around.fillAt ?? at, says: `${id} is R ${need.value} short; the chart of ${chosen!.item} ends at R-${answer.last.chartR}`, why: 'a chart is never extended past its last row', mend: 'choose a product whose chart reaches that far, or a lower target' })

  const joist = lumber.rows.find(r => r.size === item.joists.size)!
  const joistIn = fromRow(lumber, joist, joist.depthIn, 'in', joist.size)
  const joistWidthIn = fromRow(lumber, joist, joist.widthIn, 'in', joist.size), spacingIn = given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`)
  const framingShare = work(joistShare, { joistWidthIn, spacingIn })
  const exposedJoistIn = work(exposedJoist, { joistIn, keptIn })
  const bagsFor = (r: ChartRow) => work(bags, { netAreaFt2, framingShare, exposedJoistIn, settledDepthIn: r.settledDepthIn, coverageFt2: r.coverageFt2 })
  const loadFor = (r: ChartRow) => work(ceilingLoad, { keptPsf, addedPsf: r.weightPsf })

  const topInitial = rowOf ? work(topOfFill, { keptIn, depthIn: rowOf.initialDepthIn }) : keptIn
  const topSettled = rowOf ? work(topOfFill, { keptIn, depthIn: rowOf.settledDepthIn }) : keptIn
  const bagCount = blown && bagsFor(blown)
  const limit = ceilingLimit(found)

  const { base, uFieldBefore, uFieldAfter, ...perInch } = fabricOf({ layers, oldDepth, existingR: listedR, keptIn, gaps, joistIn, framingShare, topSettled, rowOf, gapsStay: cover === 'batts' })
  const eaves = eaveWork(found, around.eaves, books, { netAreaFt2, topInitial, headroom, base, rowOf, keptIn, topSettled, beforeDepth: oldDepth, ...perInch })
  tasks.push(...eaves.tasks)
  findings.push(...eaves.findings)

  if (batt && rowOf) tasks.push(layTask(id, batt, netAreaFt2, thousands, access, books))
  if (chosen && bagCount) tasks.push(...blowTasks({ id, wayIn: around.wayIn ?? 'hatch', chosen, bagCount, netAreaFt2, thousands, topInitial, headroom, access }, books))

  const lowShare = books.start('low-heel-share', 1 / 3, 'fraction', 'fill at the wall, of the full depth, under which a heel counts as low', 'judgment')
  if (rowOf && eaves.wallDepthIn && eaves.wallDepthIn.value < topSettled.value * lowShare.value) findings.push({ code: 'low-heel', severity: 'note', path: `${at}/heelIn`, says: `${asTape(item.heelIn)} in of heel leave ${asTape(Math.floor(eaves.wallDepthIn.value * 2) / 2)} in of fill at the wall`, why: `the middle gets ${asTape(Math.floor(topSettled.value * 2) / 2)} in`, mend: 'tell the owner; batts of more R an inch or covered foam board along the eave raise the strip, a smaller air gap does too where the code allows it' })
  const faced = facingWork({ id, layers, blown: rowOf !== undefined, thousands, access }, books)
  tasks.push(...faced.tasks)
  gates.push(...faced.gates)
  findings.push(...faced.findings)

  const load = rowOf && loadFor(rowOf)
  if (load) {
    const over = loadGates(found, load, limit, books)
    gates.push(...over.gates)
    tasks.push(...over.tasks)
  }

  const neighborRows = answer?.is === 'row' ? [answer.below, answer.above].flatMap(r => {
    if (!r || !chosen) return []
    const n = bagsFor(r)
    return [{ chartR: r.r, bags: n, bagsCents: bagsCents(n, chosen) }]
  }) : []

  return {
    figures: {
      id, kind: way.kind, areaFt2, netAreaFt2, existingR, targetR, addedR,
      ...(blown && chosen && bagCount && load ? { product: chosen.item, chartR: blown.r, interpolated: blown.interpolated, settledDepthIn: blown.settledDepthIn, initialDepthIn: blown.initialDepthIn,
        topOfFillInitialIn: topInitial, topOfFillSettledIn: topSettled, bags: bagCount, addedWeightPsf: blown.weightPsf, ceilingLoadPsf: load } : {}),
      ...(batt && rowOf && load ? { product: batt.item, battR: rowOf.r, settledDepthIn: rowOf.settledDepthIn, topOfFillSettledIn: topSettled, addedWeightPsf: rowOf.weightPsf, ceilingLoadPsf: load } : {}),
      ...(limit ? { ceilingLimitPsf: limit } : {}),
      layers: layers.map((l, i) => ({ id: `layer-${i + 1}`, fill: l.item.fill, depthIn: l.depthIn, layerR: l.r, stays: l.kept })),
      section: { heelIn: q('heelIn'), pitch: q('roofPitch'), joistIn, joistWidthIn, spacingIn, ...eaves.edge },
      ...(rowOf && eaves.baffleIn ? { baffleIn: eaves.baffleIn } : {}),
      ...(blown ? { damTopIn: work(height, { topOfFillInitialIn: topInitial, marginIn: damMargin(books) }) } : {}),
      finalR: rowOf ? work(finalR, { existingR, chartR: rowOf.r }) : existingR,
      ...(eaves.widthFt && eaves.strip && eaves.wallDepthIn ? { edgeStripFt: eaves.widthFt, edgeStrip: { widthFt: eaves.widthFt, areaFt2: eaves.strip.areaFt2, wallDepthIn: eaves.wallDepthIn, averageR: work(averageR, { u: eaves.strip.uAfter, base }) } } : {}),
      ...(blown ? { markers: work(markers, { areaFt2: netAreaFt2 }) } : {}),
      ...(neighborRows.length > 0 ? { neighborRows } : {}),
    },
    tasks, gates, findings, assumes, unknowns, ...(oldFillDone.otherCents ? { otherCents: oldFillDone.otherCents } : {}),
    topOfFillInitialIn: topInitial, access, need, filled: rowOf !== undefined, loose: rowOf !== undefined, floor: true,
    fabric: { netAreaFt2, base, uFieldBefore, uFieldAfter, ...(eaves.strip ? { strip: eaves.strip } : {}) },
    retarder: kept[0]?.item.facing === 'kraft-down' || kept[0]?.item.facing === 'foil', eaves: eaves.sides, windBlocks: eaves.windBlocks, fillFigures: FILL_FIGURES,
    ...(answer && chosen ? { chart: { product: chosen, answer, keptIn, bagsFor, loadFor } } : {}),
  }
}

/** The most of the chart that fits; the chart still says how much that is. */
function inRoom(wanted: ChartAnswer, chosen: BlownProduct, need: Quantity<'R'>, keptIn: Quantity<'in'>, roomIn: Quantity<'in'>): ChartAnswer {
  const fits = (a: ChartAnswer): boolean => a.is === 'row' && keptIn.value + a.row.initialDepthIn.value <= roomIn.value + 1e-9
  if (fits(wanted)) return wanted
  const ofR = (r: number): Quantity<'R'> => ({ ...work(netOf, { whole: need, leftOut: exactly(need.value - r, 'R', 'no room for it: the most of the chart whose blown depth fits') }), unit: 'R' })
  for (let r = Math.floor(need.value) - 1; r > 0; r--) {
    const less = chosen.answer(ofR(r))
    if (less.is === 'leave') break
    if (fits(less)) return less
  }
  const least = chosen.answer(ofR(1))
  return least.is === 'leave' ? least : { is: 'leave', first: least.is === 'row' ? least.row : least.last }
}

/** The thinnest batt that brings what is short, else the thickest. */
function battFor(need: Quantity<'R'>, books: Books): Product {
  const all = [...books.products('floor-batt')].sort((a, b) => (a.rValue?.value ?? 0) - (b.rValue?.value ?? 0))
  return all.find(p => (p.rValue?.value ?? 0) >= need.value) ?? all.at(-1) ?? books.product('floor-batt')
}

/** A batt as the rest of the area reads a row: it does not settle. */
function battRow(batt: Product, books: Books): ChartRow {
  const depth = batt.thicknessIn ?? books.start('batt-thickness', 12, 'in', 'thickness of a floor batt', 'the price book gives none'), r = batt.rValue ?? exactly(0, 'R', 'the price book gives no R for it')
  const weightPsf = work(layerWeight, { depthIn: depth, densityPcf: books.start('batt-density', 0.55, 'lb/ft3', 'density of a floor batt', 'taken as light loose fiberglass') })
  return { chartR: r.value, interpolated: false, settledDepthIn: depth, initialDepthIn: depth, weightPsf, coverageFt2: exactly(1, 'ft2/bag', 'batts are counted by area'), r }
}

const layTask = (id: string, batt: Product, netAreaFt2: Quantity<'ft2'>, thousands: Quantity, access: Quantity<'factor'>, books: Books): Task => ({
  id: `lay-batts-${id}`, title: `Lay ${batt.name} over ${id}, unfaced, across the joists, tight to each other`, phase: 'insulate', work: 'lay-batts', touches: [id], buries: [id], serves: fillOf(id), role: 'crew',
  personHours: work(personHours, { amount: thousands, rate: books.rate('lay-batts', 6, '1000 ft2'), access }), needs: [{ item: batt.item, quantity: netAreaFt2 }], cautions: ['Respirator, gloves, long sleeves.', 'Step on framing only.'], proof: 'photo of each part of the floor' })

export const openFloor = {
  kind: 'open-floor' as const, title: 'Open attic floor', schema: openFloorSchema, check: floorFaults,
  takeoff: (found: Found<OpenFloor>, books: Books, around: FloorAround): AreaMeasure => floorTakeoff(found, books, around, { kind: 'open-floor', cover: found.item.cover ?? 'blow' }),
  sample: { kind: 'open-floor', id: 'main', rectanglesFt: [[48, 28]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 5, heelIn: 5.5,
    headroomIn: 62, webs: 'open', existing: [{ fill: 'fiberglass-batt', depthIn: [3.5, 3.5, 3.75, 3.25, 3.5], condition: 'fair', action: 'keep' }] } as OpenFloor,
  wrong: { item: { kind: 'open-floor', id: 'main', rectanglesFt: [[10, 10]], leaveOut: [{ what: 'all of it', areaFt2: 100 }], joists: { size: '2x6', spacingIn: 16 },
    ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 5, heelIn: 5.5, headroomIn: 62, existing: [] }, code: 'nothing-left-to-fill' },
}

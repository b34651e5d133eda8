import * as f from '../../fields/index.ts'
import { accessFactor, netOf, product, thousandsOf, wholePacks } from '../../calc/arithmetic.ts'
import { bags, ceilingLoad, exposedJoist, joistShare, markers, topOfFill } from '../../calc/fill.ts'
import { averageR, finalR, needR, shortR } from '../../calc/heat.ts'
import { lineCents } from '../../calc/price.ts'
import type { BlownProduct, Books, ChartAnswer, ChartRow } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fills } from '../../reference/fills.ts'
import { asTape } from '../../units/tape.ts'
import { assumed, exactly, given, row, total, work, type Quantity } from '../../units/quantity.ts'
import { headroomFactor, hatchFactor, oldFillFactor, websFactor, type Webs } from '../access.ts'
import { blowTasks } from '../blow.ts'
import { ceilingLimit, loadGates } from '../ceiling-load.ts'
import { eaveWork, type Eave } from '../eaves.ts'
import { fabricOf } from '../fabric.ts'
import { facingWork } from '../facings.ts'
import { vermiculiteGate } from '../hazards/vermiculite.ts'
import type { Figures, Found, Gate, Measure, Task } from '../kind.ts'
import { layerSchema, named, readLayers } from '../layers.ts'
import { oldFillWork } from '../old-fill.ts'

const boards = ['gypsum', 'sag-resistant-gypsum', 'plaster', 'plank', 'tile'] as const

export const openFloorSchema = f.item('open-floor', 'Open attic floor', {
  id: f.id('short name that openings and eaves use', { examples: ['main'] }),
  rectanglesFt: f.list(f.pairOf(f.feet(500, 'one side, inside the walls'), 'length and width'), 'the floor as rectangles', { min: 1, max: 50 }),
  leaveOut: f.optional(f.list(f.fields({ what: f.text('what it is', { examples: ['stair head'] }), areaFt2: f.number('ft2', { above: 0, max: 50000 }, 'area not to be filled') }, 'a part left out'), 'parts of the rectangles that are not filled')),
  joists: f.fields({
    size: f.word(lumber.rows.map(r => r.size), 'nominal size of the ceiling joist or bottom chord'),
    spacingIn: f.inches(48, 'center to center', { min: 6, examples: [16, 24] }),
  }, 'what the ceiling hangs on'),
  ceiling: f.fields({
    board: f.word(boards, 'what the ceiling is'),
    thicknessIn: f.inches(3, 'thickness of the board', { examples: ['1/2', '5/8'] }),
    condition: f.word(['sound', 'sagging', 'stained'] as const, 'sagging or stained: no load on it'),
  }, 'the ceiling seen from below'),
  roofPitch: f.number('rise in 12', { above: 0, max: 24 }, 'roof slope over the eave', { examples: [5] }),
  heelIn: f.inches(60, 'ceiling plane to underside of the roof deck, at the outer edge of the plate', { examples: ['5 1/2'] }),
  wallIn: f.optional(f.inches(24, 'thickness of the outside wall', { default: 4.5 })),
  ventGapIn: f.optional(f.inches(6, 'air gap kept under the deck, square to it', { default: 1 })),
  headroomIn: f.inches(400, 'clear height where most of the work is', { examples: [62] }),
  webs: f.optional(f.word(['open', 'w', 'dense'] as const, 'roof framing in the way: open, W-trusses, dense webs', { default: 'open' })),
  rValue: f.optional(f.rValue('target of this area alone')),
  existing: f.list(layerSchema, 'existing fill from the ceiling up; [] = bare', { max: 10 }),
})

export type OpenFloor = f.Static<typeof openFloorSchema>

export interface OpenFloorAround {
  readonly eaves: readonly Found<Eave>[]
  /** Product chosen for this area, and where it was said. */
  readonly fill?: string
  readonly fillAt?: string
  /** Sides of the largest hatch of the house, shorter first. */
  readonly hatchIn?: readonly [Quantity, Quantity]
  /** The file has no list of eaves at all. */
  readonly eavesUnknown?: boolean
}

function check(found: Found<OpenFloor>): Finding[] {
  const { item, at } = found
  const out: Finding[] = []
  const gross = item.rectanglesFt.reduce((sum, [a, b]) => sum + a * b, 0)
  const left = (item.leaveOut ?? []).reduce((sum, p) => sum + p.areaFt2, 0)
  if (left >= gross) out.push({ code: 'nothing-left-to-fill', severity: 'error', path: `${at}/leaveOut`, says: `${left} ft2 is left out of ${gross} ft2`, why: 'nothing of the floor remains', mend: 'correct the rectangles, or drop the area' })
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

export interface AreaMeasure extends Measure {
  /** For the openings in it. */
  readonly topOfFillInitialIn: Quantity<'in'>
  readonly access: Quantity<'factor'>
  readonly filled: boolean
  readonly need: Quantity<'R'>
  /** The fabric away from openings, before and after. */
  readonly fabric: { readonly netAreaFt2: Quantity<'ft2'>; readonly base: Quantity<'R'>; readonly uFieldBefore: Quantity<'U'>; readonly uFieldAfter: Quantity<'U'>
    readonly strip?: { readonly areaFt2: Quantity<'ft2'>; readonly uBefore: Quantity<'U'>; readonly uAfter: Quantity<'U'> } }
  readonly eaves: readonly Figures[]
  /** The lowest layer that stays has its paper or foil toward the rooms. */
  readonly retarder: boolean
  readonly windBlocks: Quantity<'each'>
  /** What the chart said, with the rows beside it. */
  readonly chart?: { readonly product: BlownProduct; readonly answer: ChartAnswer; bagsFor(row: ChartRow): Quantity<'bag'>; loadFor(row: ChartRow): Quantity<'lb/ft2'> }
  /** Figures that stand only while the fill does. */
  readonly fillFigures: readonly string[]
}

const FILL_FIGURES = ['product', 'chartR', 'interpolated', 'settledDepthIn', 'initialDepthIn', 'topOfFillInitialIn', 'topOfFillSettledIn', 'bags', 'addedWeightPsf',
  'ceilingLoadPsf', 'finalR', 'averageR', 'uAfter', 'edgeStripFt', 'edgeStrip', 'markers', 'neighborRows', 'lighter'] as const

export function takeoff(found: Found<OpenFloor>, books: Books, around: OpenFloorAround): AreaMeasure {
  const { item, at, q } = found
  const id = item.id
  const tasks: Task[] = [], gates: Gate[] = [], findings: Finding[] = [], assumes: Quantity[] = [], unknowns: string[] = []

  // Area
  const rectangles = item.rectanglesFt.map((r, i) => work(product, { length: given(r[0], 'ft', `${at}/rectanglesFt/${i}/0`), width: given(r[1], 'ft', `${at}/rectanglesFt/${i}/1`) }))
  const areaFt2 = rectangles.length === 1 ? rectangles[0]! : total('ft2', named(rectangles, i => `rectangle${i + 1}`))
  const leftOut = (item.leaveOut ?? []).map((p, i) => given(p.areaFt2, 'ft2', `${at}/leaveOut/${i}/areaFt2`))
  const netAreaFt2 = leftOut.length === 0 ? areaFt2 : work(netOf, { whole: areaFt2, leftOut: total('ft2', leftOut) })

  // What is there
  const layers = readLayers(item.existing, `${at}/existing`, books)
  const kept = layers.filter(l => l.kept)
  const zero = <U extends Quantity['unit']>(unit: U, why: string) => exactly(0, unit, why)
  const existingR = kept.length === 0 ? zero('R', 'no fill stays') : total('R', named(kept.map(l => l.r), i => `layer${i + 1}`))
  const keptIn = kept.length === 0 ? zero('in', 'no fill stays') : total('in', named(kept.map(l => l.depthIn), i => `layer${i + 1}`))
  const keptPsf = kept.length === 0 ? zero('lb/ft2', 'no fill stays') : total('lb/ft2', named(kept.map(l => l.psf), i => `layer${i + 1}`))
  const gaps = kept.map(l => l.gaps).sort((a, b) => b.value - a.value)[0] ?? zero('fraction', 'no fill stays')

  layers.forEach(l => { if (l.item.fill === 'vermiculite') gates.push(vermiculiteGate(`${id}, old fill`, l.at)) })

  // Access
  const headroom = headroomFactor(q('headroomIn'))
  const webs = websFactor((item.webs ?? 'open') as Webs, item.webs === undefined ? undefined : `${at}/webs`)
  const oldDepth = layers.length === 0 ? zero('in', 'bare floor') : total('in', named(layers.map(l => l.depthIn), i => `layer${i + 1}`))
  const oldFill = oldFillFactor(oldDepth)
  const hatch = hatchFactor(around.hatchIn)
  const air = books.start('air-temperature-factor', 1, 'factor', 'work done neither above 110 °F nor below 20 °F', 'no work date in the file')
  const cap = books.start('access-cap', 3, 'factor', 'most the access factors may multiply to')
  const access = work(accessFactor, { headroom, oldFill, webs, hatch, air, cap })
  if (headroom.value * oldFill.value * webs.value * hatch.value * air.value > cap.value) findings.push({ code: 'access-over-cap', severity: 'warning', path: `${at}/headroomIn`, says: `access factors multiply to ${(headroom.value * oldFill.value * webs.value * hatch.value).toFixed(2)}`, why: `the rates end at ${cap.value}`, mend: 'price this area by the day, or open a new access' })
  const thousands = work(thousandsOf, { areaFt2: netAreaFt2 })

  const oldFillDone = oldFillWork({ id, layers, netAreaFt2, thousands, access }, books)
  tasks.push(...oldFillDone.tasks)
  if (around.eavesUnknown) unknowns.push(`Baffles, wind blocks and eave work of ${id}: no eaves in the survey.`)

  // Target and row
  const targetR = item.rValue === undefined ? books.target() : q('rValue')
  const addedR = work(shortR, { targetR, existingR })
  const need = work(needR, { shortR: addedR })
  const fillItem = around.fill ?? books.blownItems[0]
  const chosen = fillItem === undefined ? undefined : books.blown(fillItem)
  if (around.fill === undefined && chosen) assumes.push(assumed('fill', 1, 'each', `${chosen.name} for areas that name no fill`, 'no choices.fill in the file'))
  const answer: ChartAnswer | undefined = need.value > 0 && chosen ? chosen.answer(need) : undefined
  const rowOf = answer?.is === 'row' ? answer.row : undefined
  if (need.value <= 0) findings.push({ code: 'target-met', severity: 'note', path: at, says: `R ${existingR.value.toFixed(1)} of ${targetR.value}`, why: 'what is there reaches the target', mend: 'nothing is blown; the sealing stands' })
  if (answer?.is === 'leave') findings.push({ code: 'need-under-half-row', severity: 'note', path: at, says: `${addedR.value.toFixed(1)} short, the first row is R-${answer.first.chartR}`, why: 'under half of it is left as it is; nothing is blown', mend: `a higher target blows R-${answer.first.chartR}: ${Math.ceil(netAreaFt2.value / answer.first.coverageFt2.value)} bags` })
  if (answer?.is === 'row' && answer.excess) findings.push({ code: 'first-row-over-need', severity: 'note', path: at, says: `${need.value} short, R-${answer.row.chartR} is the first row`, why: `it is ${answer.row.chartR - need.value} more than needed`, mend: 'leave the area as it is, or take the row' })
  if (answer?.is === 'beyond') findings.push({ code: 'need-above-chart', severity: 'error', path: around.fillAt ?? at, says: `${id} is R ${need.value} short; the chart of ${chosen!.item} ends at R-${answer.last.chartR}`, why: 'a chart is never extended past its last row', mend: 'choose a product whose chart reaches that far, or a lower target' })

  const joist = lumber.rows.find(r => r.size === item.joists.size)!
  const joistIn = row(joist.depthIn, 'in', `lumber: ${joist.size}`, lumber.source)
  const framingShare = work(joistShare, { joistWidthIn: row(joist.widthIn, 'in', `lumber: ${joist.size}`, lumber.source), spacingIn: given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`) })
  const exposedJoistIn = work(exposedJoist, { joistIn, keptIn })
  const bagsFor = (r: ChartRow) => work(bags, { netAreaFt2, framingShare, exposedJoistIn, settledDepthIn: r.settledDepthIn, coverageFt2: r.coverageFt2 })
  const loadFor = (r: ChartRow) => work(ceilingLoad, { keptPsf, addedPsf: r.weightPsf })

  const topInitial = rowOf ? work(topOfFill, { keptIn, depthIn: rowOf.initialDepthIn }) : keptIn
  const topSettled = rowOf ? work(topOfFill, { keptIn, depthIn: rowOf.settledDepthIn }) : keptIn
  const bagCount = rowOf && bagsFor(rowOf)
  const limit = ceilingLimit(found)

  const { base, uFieldBefore, uFieldAfter, ...perInch } = fabricOf({ layers, oldDepth, existingR, keptIn, gaps, joistIn, framingShare, topSettled, rowOf })
  const eaves = eaveWork(found, around.eaves, books, { netAreaFt2, topInitial, headroom, base, rowOf, keptIn, topSettled, beforeDepth: oldDepth, ...perInch })
  tasks.push(...eaves.tasks)

  if (chosen && bagCount) tasks.push(...blowTasks({ id, chosen, bagCount, netAreaFt2, thousands, topInitial, headroom, access }, books))

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
    return [{ chartR: r.r, bags: n, bagsCents: work(lineCents, { amount: work(wholePacks, { needed: n, wastePct: chosen.wastePct, pack: chosen.pack }), unitPriceCents: chosen.unitPriceCents }) }]
  }) : []

  return {
    figures: {
      id, kind: 'open-floor', areaFt2, netAreaFt2, existingR, targetR, addedR,
      ...(rowOf && chosen && bagCount && load ? { product: chosen.item, chartR: rowOf.r, interpolated: rowOf.interpolated, settledDepthIn: rowOf.settledDepthIn, initialDepthIn: rowOf.initialDepthIn,
        topOfFillInitialIn: topInitial, topOfFillSettledIn: topSettled, bags: bagCount, addedWeightPsf: rowOf.weightPsf, ceilingLoadPsf: load } : {}),
      ...(limit ? { ceilingLimitPsf: limit } : {}),
      finalR: rowOf ? work(finalR, { existingR, chartR: rowOf.r }) : existingR,
      ...(eaves.widthFt && eaves.strip && eaves.wallDepthIn ? { edgeStripFt: eaves.widthFt, edgeStrip: { widthFt: eaves.widthFt, areaFt2: eaves.strip.areaFt2, wallDepthIn: eaves.wallDepthIn, averageR: work(averageR, { u: eaves.strip.uAfter, base }) } } : {}),
      ...(rowOf ? { markers: work(markers, { areaFt2: netAreaFt2 }) } : {}),
      ...(neighborRows.length > 0 ? { neighborRows } : {}),
    },
    tasks, gates, findings, assumes, unknowns, ...(oldFillDone.otherCents ? { otherCents: oldFillDone.otherCents } : {}),
    topOfFillInitialIn: topInitial, access, need, filled: rowOf !== undefined,
    fabric: { netAreaFt2, base, uFieldBefore, uFieldAfter, ...(eaves.strip ? { strip: eaves.strip } : {}) },
    retarder: kept[0]?.item.facing === 'kraft-down' || kept[0]?.item.facing === 'foil', eaves: eaves.sides, windBlocks: eaves.windBlocks, fillFigures: FILL_FIGURES,
    ...(answer && chosen ? { chart: { product: chosen, answer, bagsFor, loadFor } } : {}),
  }
}

export const openFloor = {
  kind: 'open-floor' as const, title: 'Open attic floor', schema: openFloorSchema, check, takeoff,
  sample: { kind: 'open-floor', id: 'main', rectanglesFt: [[48, 28]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 5, heelIn: 5.5,
    headroomIn: 62, webs: 'open', existing: [{ fill: 'fiberglass-batt', depthIn: [3.5, 3.5, 3.75, 3.25, 3.5], condition: 'fair', action: 'keep' }] } as OpenFloor,
  wrong: { item: { kind: 'open-floor', id: 'main', rectanglesFt: [[10, 10]], leaveOut: [{ what: 'all of it', areaFt2: 100 }], joists: { size: '2x6', spacingIn: 16 },
    ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 5, heelIn: 5.5, headroomIn: 62, existing: [] }, code: 'nothing-left-to-fill' },
}

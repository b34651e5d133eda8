// Proof of the day, area by area: the highest listed row whose bags, weight and initial depth all stand. Never an interpolated R; the settled depth is the label's.
import type { BlownProduct, ChartRow } from '../books/books.ts'
import { mean } from '../calc/arithmetic.ts'
import { markers, topOfFill } from '../calc/fill.ts'
import { bagsAsked, bagsByWeight, bagsCovered, bagsShort, blownWeight, filledArea, installedDensity, newFill, packedDensity } from '../calc/proof.ts'
import type { Estimate } from '../estimate/estimate.ts'
import type { AreaTaken } from '../estimate/tasks/takeoff.ts'
import { exactly, given, overList, work, type Quantity } from '../units/quantity.ts'
import { asTape } from '../units/tape.ts'
import type { CloseoutFile } from './format.ts'

type Entry = NonNullable<CloseoutFile['areas']>[number]
interface Given { readonly entry: Entry; readonly at: string }
type Inches = Quantity<'in'>

interface RowProof { readonly row: ChartRow; readonly bagsNeeded: Quantity<'bag'>; readonly weightPsf: Quantity<'lb/ft2'>; readonly bags: boolean; readonly weight: boolean; readonly depth: boolean }

/** How one area stands. Figures are linked; what nobody recorded is absent. */
export interface AreaProof {
  readonly id: string
  readonly area: AreaTaken
  readonly way: 'blown' | 'packed' | 'laid'
  readonly proof: 'proved' | 'short' | 'not-shown'
  readonly why: readonly string[]
  readonly product: { readonly item: string; readonly name: string }
  readonly entries: readonly Given[]
  readonly coveredFt2: Quantity<'ft2'>
  readonly certified?: ChartRow
  readonly bagsMissing?: Quantity<'bag'>
  readonly rows: readonly RowProof[]
  readonly figures: Readonly<Record<string, unknown>>
}

const reaches = (has: number, asked: number): boolean => has >= asked - 1e-9
const inches = (q: Inches): string => `${asTape(Math.ceil(q.value * 4 - 1e-9) / 4)} in`

const rowOut = (r: RowProof) => ({ chartR: r.row.r, bagsNeeded: r.bagsNeeded, weightPsf: r.weightPsf, weightNeededPsf: r.row.weightPsf, initialNeededIn: r.row.initialDepthIn, bags: r.bags, weight: r.weight, depth: r.depth })

/** The areas that get fill in this plan. */
export const filledAreas = ({ plan, out }: Estimate): AreaTaken[] => plan.taken.areas.filter(a => out.areas.some(o => String(o.id) === a.id && o.product !== undefined))

/** Whole bags are carried up; a part of one is not left out. */
const wholeBags = (q: Quantity<'bag'>): string => { const n = Math.ceil(q.value - 1e-9); return `${n} ${n === 1 ? 'bag' : 'bags'}` }

function blown(area: AreaTaken, entries: readonly Given[], estimate: Estimate, shared: Pick<AreaProof, 'id' | 'area' | 'entries' | 'coveredFt2'>): AreaProof {
  const { figures, chart } = area.measure, { books } = estimate
  const sold = chart!.answer.is === 'row' ? chart!.answer.row : undefined, surveyedFt2 = figures['netAreaFt2'] as Quantity<'ft2'>
  const products = [...new Set(entries.map(e => e.entry.product ?? chart!.product.item))], product: BlownProduct = products[0] === undefined ? chart!.product : books.blown(products[0]) ?? chart!.product
  const why: string[] = [], soldR = sold!.chartR
  // An interpolated row sizes the work; the label proves the listed row below it.
  const promised = [...product.rows].reverse().find(r => reaches(soldR, r.chartR)), other = product.item === chart!.product.item ? undefined : product.answer(sold!.r)
  const goalRow = other === undefined ? sold! : other.is === 'row' ? other.row : undefined
  // Read from the ceiling plane: what lay there before is taken off.
  const oldIn = chart!.keptIn
  const tops = entries.flatMap(({ entry, at }) => (entry.markersIn ?? []).map((v, i) => given(v, 'in', `${at}/markersIn/${i}`))), depths = tops.map(readIn => work(newFill, { readIn, oldIn }))
  const asked = work(markers, { areaFt2: shared.coveredFt2 }), enough = reaches(tops.length, asked.value)
  const counted = entries.filter(e => e.entry.bags !== undefined), used = counted.length === 0 ? undefined : counted.map(({ entry, at }) => given(entry.bags!, 'bag', `${at}/bags`)).reduce((a, b) => ({ ...a, value: a.value + b.value }))
  const least = [...depths].sort((a, b) => a.value - b.value)[0], average = depths.length === 0 ? undefined : overList(mean, 'in', depths.map((q, i) => [`marker${i + 1}`, q] as const))
  const bagsFor = (r: ChartRow): Quantity<'bag'> => { const bags = chart!.bagsFor(r); return shared.coveredFt2 === surveyedFt2 ? bags : work(bagsCovered, { bags, coveredFt2: shared.coveredFt2, surveyedFt2 }) }
  const filled = (r: ChartRow): Quantity<'ft2'> => work(filledArea, { bags: bagsFor(r), coverageFt2: r.coverageFt2 })
  const proofOf = (row: ChartRow): RowProof => {
    const filledFt2 = filled(row), bagsNeeded = work(bagsAsked, { byCoverage: bagsFor(row), byWeight: work(bagsByWeight, { weightPsf: row.weightPsf, filledFt2, bagLb: product.bagLb }) })
    const weightPsf = work(blownWeight, { bags: used ?? exactly(0, 'bag', 'no bags recorded'), bagLb: product.bagLb, filledFt2 })
    return { row, bagsNeeded, weightPsf, bags: used !== undefined && reaches(used.value, bagsFor(row).value), weight: used !== undefined && reaches(weightPsf.value, row.weightPsf.value), depth: least !== undefined && enough && reaches(least.value, row.initialDepthIn.value) }
  }
  const rows = product.rows.map(proofOf), goal = goalRow && proofOf(goalRow)

  if (entries.length === 0) why.push(`nothing is recorded for ${area.id}`)
  else {
    if (products.length > 1) why.push(`${products.join(' and ')} lie in one area: no label speaks for their mix`)
    if (used === undefined) why.push('no bags are recorded')
    if (!enough) why.push(tops.length === 0 ? 'no marker was read' : `${tops.length} of ${asked.value} markers were read (one for each 300 ft2)`)
    if (counted.length < entries.length && used !== undefined) why.push('one entry of the area has no bags')
  }
  const shown = why.length === 0
  const certified = shown ? [...rows].reverse().find(r => r.bags && r.weight && r.depth)?.row : undefined
  const bagsMissing = used && goal ? work(bagsShort, { asked: goal.bagsNeeded, used }) : undefined
  const readings = tops.map((topIn, i) => ({ marker: i + 1, topIn, newIn: depths[i]!, ...(goalRow && !reaches(depths[i]!.value, goalRow.initialDepthIn.value) ? { shortIn: { ...depths[i]!, value: goalRow.initialDepthIn.value - depths[i]!.value } } : {}) }))
  const met = goal !== undefined && goal.bags && goal.weight && goal.depth
  if (shown && goal === undefined) why.push(`the label of ${product.item} has no row for R ${soldR}`)
  else if (shown && !met && goal) {
    const missing = bagsMissing!.value > 1e-9, low = readings.filter(r => 'shortIn' in r), depth = inches(goalRow!.initialDepthIn), name = `R${goalRow!.interpolated ? ' ' : '-'}${goalRow!.chartR}`
    if (missing) why.push(`${wholeBags(bagsMissing!)} missing for ${name}: ${goal.bagsNeeded.value.toFixed(2)} asked, ${used!.value} used`)
    if (low.length > 0) why.push(`new fill under ${depth} at ${low.length === 1 ? 'marker' : 'markers'} ${low.map(r => r.marker).join(', ')}${missing ? '' : ': the bags are in, so it lies unevenly or too dense'}`)
    else if (missing) why.push('deep enough and too light: fluffed fill settles below its R')
  }
  const load = goal && used ? chart!.loadFor({ ...goalRow!, weightPsf: goal.weightPsf }) : undefined
  return {
    ...shared, way: 'blown', proof: !shown ? 'not-shown' : met ? 'proved' : 'short', why, product: { item: product.item, name: product.name }, rows, ...(certified ? { certified } : {}), ...(bagsMissing ? { bagsMissing } : {}),
    figures: {
      soldR: sold!.r, interpolated: sold!.interpolated, ...(promised ? { promisedR: promised.r } : {}), ...(certified ? { certifiedR: certified.r, settledDepthIn: certified.settledDepthIn, settledTopIn: work(topOfFill, { keptIn: oldIn, depthIn: certified.settledDepthIn }) } : {}),
      ...(used ? { bags: used } : {}), bagsPlanned: figures['bags'], ...(goal ? { bagsNeeded: goal.bagsNeeded } : {}), ...(bagsMissing ? { bagsMissing } : {}),
      oldFillIn: oldIn, markersNeeded: asked, markersRead: tops.length, readings, ...(least ? { initialDepthIn: least, meanDepthIn: average } : {}),
      ...(used && goal ? { weightPsf: goal.weightPsf } : {}), ...(used && goal && average && average.value > 0 ? { densityPcf: work(installedDensity, { bags: used, bagLb: product.bagLb, filledFt2: filled(goalRow!), depthIn: average }) } : {}),
      ...(load ? { ceilingLoadPsf: load } : {}), ...(load && figures['ceilingLimitPsf'] ? { ceilingLimitPsf: figures['ceilingLimitPsf'] } : {}),
      ...(goal ? { sold: rowOut(goal) } : {}), rows: rows.map(rowOut),
    },
  }
}

/** Packed to a density: no row of a chart, and no R per inch. */
function packed(area: AreaTaken, entries: readonly Given[], estimate: Estimate, shared: Pick<AreaProof, 'id' | 'area' | 'entries' | 'coveredFt2'>): AreaProof {
  const { figures } = area.measure, { books } = estimate, why: string[] = []
  const item = entries[0]?.entry.product ?? String(figures['product']), product = books.blown(item) ?? books.blown(String(figures['product']))!
  const planned = figures['bags'] as Quantity<'bag'>, counted = entries.find(e => e.entry.bags !== undefined), used = counted && given(counted.entry.bags!, 'bag', `${counted.at}/bags`)
  const surveyedFt2 = figures['netAreaFt2'] as Quantity<'ft2'>, asked = shared.coveredFt2 === surveyedFt2 ? planned : work(bagsCovered, { bags: planned, coveredFt2: shared.coveredFt2, surveyedFt2 })
  const densest = area.measure.packedPcf
  const bagsMissing = used && work(bagsShort, { asked, used })
  if (!used) why.push(entries.length === 0 ? `nothing is recorded for ${area.id}` : 'no bags are recorded')
  const short = bagsMissing !== undefined && bagsMissing.value > 1e-9
  if (short) why.push(`${wholeBags(bagsMissing)} missing to the least density: ${asked.value.toFixed(2)} asked, ${used!.value} used`)
  return {
    ...shared, way: 'packed', proof: !used ? 'not-shown' : short ? 'short' : 'proved', why, product: { item: product.item, name: product.name }, rows: [], ...(bagsMissing ? { bagsMissing } : {}),
    figures: { ...(used ? { bags: used } : {}), bagsPlanned: planned, bagsNeeded: asked, ...(bagsMissing ? { bagsMissing } : {}), ...(densest && used ? { densityPcf: work(packedDensity, { leastPcf: densest, used, asked }) } : {}), ...(densest ? { densityNeededPcf: densest } : {}),
      ...labelOf(entries, figures['settledDepthIn'] as Inches | undefined, undefined) },
  }
}

/** Thickness and R by the package, else by the price book, which holds the maker’s figures. */
function labelOf(entries: readonly Given[], thicknessIn: Inches | undefined, r: Quantity<'R'> | undefined): Readonly<Record<string, Quantity>> {
  const of = <K extends 'labelR' | 'thicknessIn'>(key: K): Quantity | undefined => { const e = entries.find(x => x.entry[key] !== undefined); return e && given(e.entry[key] as number, key === 'labelR' ? 'R' : 'in', `${e.at}/${key}`) }
  const thickness = of('thicknessIn') ?? thicknessIn, labelR = of('labelR') ?? r
  return { ...(thickness ? { thicknessIn: thickness } : {}), ...(labelR ? { labelR } : {}) }
}

function laid(area: AreaTaken, entries: readonly Given[], estimate: Estimate, shared: Pick<AreaProof, 'id' | 'area' | 'entries' | 'coveredFt2'>): AreaProof {
  const product = estimate.books.item(String(area.measure.figures['product']))
  return { ...shared, way: 'laid', proof: entries.length === 0 ? 'not-shown' : 'proved', why: entries.length === 0 ? [`nothing is recorded for ${area.id}`] : [], product: { item: product.item, name: product.name }, rows: [], figures: labelOf(entries, product.thicknessIn, product.rValue) }
}

/** Every area that gets fill, in the order of the job. */
export function proofs(file: CloseoutFile, estimate: Estimate): AreaProof[] {
  return filledAreas(estimate).map(area => {
    const entries = (file.areas ?? []).map((entry, i): Given => ({ entry, at: `/areas/${i}` })).filter(g => g.entry.in === area.id), { figures, chart } = area.measure
    const covered = entries.find(e => e.entry.coveredFt2 !== undefined)
    const shared = { id: area.id, area, entries, coveredFt2: covered ? given(covered.entry.coveredFt2!, 'ft2', `${covered.at}/coveredFt2`) : figures['netAreaFt2'] as Quantity<'ft2'> }
    return chart?.answer.is === 'row' ? blown(area, entries, estimate, shared) : figures['packedR'] !== undefined ? packed(area, entries, estimate, shared) : laid(area, entries, estimate, shared)
  })
}

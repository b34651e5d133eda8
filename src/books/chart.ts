// What a chart says to a need. The row, not arithmetic; between rows interpolated and marked; never past the last.
import { formula } from '../units/quantity.ts'
import { row, work, type Quantity } from '../units/quantity.ts'
import { roundUp } from '../units/money.ts'
import { coverageFromWeight } from '../calc/fill.ts'
import type { ChartAnswer, ChartRow } from './books.ts'
import type { BlownRow, ChartLine } from './price-book.ts'

const CFR = '16 CFR 460.12, chart of the product’s label'

/** Weight chords lie above the curve, so an interpolated row never has too little in it. */
const between = formula({ id: 'between-rows', says: 'lower + (upper − lower) · (R − lower R) ÷ (upper R − lower R)', symbols: 'lower + (upper - lower) * (r - lowerR) / (upperR - lowerR)', source: 'straight line between two rows of the chart; sizing only, never the receipt',
  args: { lower: ['any', 0, 1e4], upper: ['any', 0, 1e4], r: ['R', 0, 100], lowerR: ['R', 0, 100], upperR: ['R', 0.1, 100] }, gives: 'lb/ft2',
  fn: x => x.lower + (x.upper - x.lower) * (x.r - x.lowerR) / (x.upperR - x.lowerR) })
const upToQuarter = formula({ id: 'up-to-quarter', says: 'depth up to the next 1/4 in', symbols: 'up(depthIn, 0.25)', source: 'an interpolated depth is set with a tape', args: { depthIn: ['in', 0, 100] }, gives: 'in', fn: x => roundUp(x.depthIn, 0.25) })
export const chartFormulas = { between, upToQuarter }

/** A row above the need by no more than this is taken as it is. */
const slack = (need: number): number => Math.max(2, need * 0.05)

function listed(product: BlownRow, line: ChartLine, book: string, need?: Quantity<'R'>): ChartRow {
  const at = `${book}: ${product.item}, row R-${line.r}`
  return {
    chartR: line.r, interpolated: false, r: row(line.r, 'R', at, CFR, need), settledDepthIn: row(line.settledIn, 'in', at, CFR, need), initialDepthIn: row(line.blownIn, 'in', at, CFR, need),
    weightPsf: row(line.weightPsf, 'lb/ft2', at, CFR, need), coverageFt2: row(line.coverageFt2, 'ft2/bag', at, CFR, need),
  }
}

function interpolated(lower: ChartRow, upper: ChartRow, need: Quantity<'R'>, bagLb: Quantity<'lb'>): ChartRow {
  const at = (pick: (r: ChartRow) => Quantity): Quantity => work(between, { lower: pick(lower), upper: pick(upper), r: need, lowerR: lower.r, upperR: upper.r })
  const inches = (pick: (r: ChartRow) => Quantity) => work(upToQuarter, { depthIn: { ...at(pick), unit: 'in' } as Quantity<'in'> })
  const weightPsf = at(r => r.weightPsf) as Quantity<'lb/ft2'>
  return { chartR: need.value, interpolated: true, r: need, settledDepthIn: inches(r => r.settledDepthIn), initialDepthIn: inches(r => r.initialDepthIn), weightPsf, coverageFt2: work(coverageFromWeight, { bagLb, weightPsf }) }
}

/** The rows as the label lists them: what may be certified, whatever was needed. */
export const listedRows = (product: BlownRow, book: string): ChartRow[] => product.chart.map(line => listed(product, line, book))

/** @param need whole R above 0 */
export function answer(product: BlownRow, book: string, need: Quantity<'R'>): ChartAnswer {
  const rows = product.chart.map(line => listed(product, line, book, need))
  const first = rows[0]!, last = rows.at(-1)!
  if (need.value > last.chartR) return { is: 'beyond', last }
  const i = rows.findIndex(r => r.chartR >= need.value)
  const next = rows[i]!, lower = rows[i - 1]
  const beside = (below?: ChartRow, above?: ChartRow) => ({ ...(below ? { below } : {}), ...(above ? { above } : {}) })
  if (next.chartR - need.value <= slack(need.value)) return { is: 'row', row: next, ...beside(lower, rows[i + 1]) }
  if (!lower) return need.value < first.chartR / 2 ? { is: 'leave', first } : { is: 'row', row: first, excess: true, ...beside(undefined, rows[1]) }
  if (product.between === 'next-row') return { is: 'row', row: next, ...beside(lower, rows[i + 1]) }
  const bagLb = row(product.bagLb, 'lb', `${book}: ${product.item}`, CFR)
  return { is: 'row', row: interpolated(lower, next, need, bagLb), ...beside(lower, next) }
}

/** One fault of a chart: which row, and both sides of what does not hold. */
export interface ChartFault { readonly code: string; readonly row: number; readonly severity: 'error' | 'warning'; readonly says: string; readonly why: string }

const SIX = [13, 19, 22, 30, 38, 49]
const halfUnit = (x: number): number => 0.5 * 10 ** -(String(x).split('.')[1]?.length ?? 0)
const product3 = (a: number, b: number, whole: number): { off: number; most: number } =>
  ({ off: Math.abs(a * b - whole) / whole, most: halfUnit(a) / a + halfUnit(b) / b + halfUnit(whole) / whole + 0.01 })

/**
 * Whether a label's chart multiplies out: within half a unit of each figure's last printed digit plus 1 %.
 * @source 16 CFR 460.12 columns; tolerances are judgment
 */
export function chartFaults(p: BlownRow): ChartFault[] {
  const out: ChartFault[] = []
  const perInch = p.chart.map(r => r.r / r.settledIn).sort((a, b) => a - b)
  const median = perInch[Math.floor(perInch.length / 2)]!
  p.chart.forEach((r, i) => {
    const bad = (says: string, why: string, code = 'chart-row-wrong'): void => { out.push({ code, row: i, severity: 'error', says: `R-${r.r}: ${says}`, why }) }
    const thousand = product3(r.coverageFt2, r.bagsPer1000Ft2, 1000)
    if (thousand.off > thousand.most) bad(`${r.coverageFt2} ft2 × ${r.bagsPer1000Ft2} bags = ${(r.coverageFt2 * r.bagsPer1000Ft2).toFixed(1)}, not 1,000`, 'coverage × bags for 1,000 ft2 must be 1,000', 'chart-does-not-multiply')
    const bag = product3(r.coverageFt2, r.weightPsf, p.bagLb)
    if (bag.off > bag.most) bad(`${r.coverageFt2} ft2 × ${r.weightPsf} psf = ${(r.coverageFt2 * r.weightPsf).toFixed(2)} lb, not ${p.bagLb}`, 'coverage × weight must be the net weight of a bag', 'chart-does-not-multiply')
    if (r.blownIn < r.settledIn) bad(`blown ${r.blownIn} in, settled ${r.settledIn} in`, 'fill settles, it does not grow')
    const each = r.r / r.settledIn
    if (each < 2 || each > 4.5 || Math.abs(each / median - 1) > 0.15) bad(`R ${each.toFixed(2)} per settled inch`, 'a chart stays between 2.0 and 4.5 and within 15 % of its median')
    const density = r.weightPsf / r.settledIn * 12
    if (density < 0.4 || density > 3) bad(`${density.toFixed(2)} lb/ft3 settled`, 'blown attic fill weighs 0.4 to 3.0')
    const before = p.chart[i - 1]
    if (before && !(r.r > before.r && r.settledIn > before.settledIn && r.blownIn > before.blownIn && r.weightPsf > before.weightPsf && r.coverageFt2 < before.coverageFt2 && r.bagsPer1000Ft2 > before.bagsPer1000Ft2)) bad('a column turns back', 'with R every column runs one way')
  })
  for (const r of SIX) if (!p.chart.some(line => line.r === r)) out.push({ code: 'chart-row-missing', row: 0, severity: 'warning', says: `no row R-${r}`, why: '16 CFR 460.12 lists R-13, 19, 22, 30, 38 and 49' })
  return out
}

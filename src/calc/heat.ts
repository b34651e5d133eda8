import { formula } from '../units/quantity.ts'
import { halfUp } from '../units/money.ts'

// R in h·ft²·°F/Btu; U in Btu/(h·ft²·°F). Averages are taken on U, never on R.

export const layerR = formula({ id: 'layer-r', says: 'depth · R per inch · (1 − share of R lost to squeezing)', symbols: 'depthIn * perInch * (1 - squeezed)',
  source: 'definition of R: conductances of a homogeneous layer; DOE insulation fact sheet (existing R = depth × R per inch)',
  args: { depthIn: ['in', 0, 60], perInch: ['R/in', 0, 8], squeezed: ['fraction', 0, 0.125] }, gives: 'R', fn: x => x.depthIn * x.perInch * (1 - x.squeezed) })

/** NAIMA's rule for glass batts: half the share of thickness is lost as R. */
export const squeezeLoss = formula({ id: 'squeeze-loss', says: '½ · (1 − depth ÷ label thickness), not below 0', symbols: 'max(0, 1 - depthIn / labelIn) / 2',
  source: 'NAIMA rule for compressed fiber glass batts, Insulation Institute guidance for HERS raters',
  args: { depthIn: ['in', 0.1, 60], labelIn: ['in', 0.1, 60] }, gives: 'fraction',
  fn: x => Math.max(0, 1 - x.depthIn / x.labelIn) / 2 })

export const rPerInch = formula({ id: 'r-per-inch', says: 'R ÷ depth', symbols: 'r / depthIn', source: 'definition of R',
  args: { r: ['R', 0, 120], depthIn: ['in', 1e-6, 120] }, gives: 'R/in', fn: x => x.r / x.depthIn })

export const shortR = formula({ id: 'r-short', says: 'target − existing', symbols: 'targetR - existingR', source: 'IECC R402.1: insulation R alone; DOE insulation fact sheet (needed R = recommended − existing)',
  args: { targetR: ['R', 0, 100], existingR: ['R', 0, 100] }, gives: 'R', fn: x => x.targetR - x.existingR })

export const needR = formula({ id: 'r-needed', says: 'R short to a whole R, half up, not below 0', symbols: 'max(0, halfUp(shortR))', source: '16 CFR 460.11: R of 10 and more is stated as a whole number (from memory)',
  args: { shortR: ['R', -100, 100] }, gives: 'R', fn: x => Math.max(0, halfUp(x.shortR)) })

export const finalR = formula({ id: 'r-final', says: 'existing that stays + the row blown', symbols: 'existingR + chartR', source: 'IECC R402.1: layers of insulation add',
  args: { existingR: ['R', 0, 100], chartR: ['R', 0, 100] }, gives: 'R', fn: x => x.existingR + x.chartR })

/** A layer whose gaps stay empty, as one R: films and board on both paths. */
export const gappedR = formula({ id: 'r-gapped', says: '1 ÷ ((1 − gaps) ÷ (R + base) + gaps ÷ base) − base', symbols: '1 / ((1 - gaps) / (r + base) + gaps / base) - base', source: 'ASHRAE Handbook Fundamentals ch. 25, parallel paths; gaps by grade, ANSI/RESNET/ICC 301',
  args: { r: ['R', 0, 120], gaps: ['fraction', 0, 0.5], base: ['R', 0.1, 20] }, gives: 'R', fn: x => 1 / ((1 - x.gaps) / (x.r + x.base) + x.gaps / x.base) - x.base })

export const seriesR = formula({ id: 'r-series', says: 'base + fill', symbols: 'base + fill', source: 'ASHRAE Handbook Fundamentals, series resistances',
  args: { base: ['R', 0.1, 20], fill: ['R', 0, 120] }, gives: 'R', fn: x => x.base + x.fill })

/** The framing path: board to board through the joist, and what lies on top of it. */
export const joistPathR = formula({ id: 'r-joist-path', says: 'base + wood per inch · joist depth + kept above the joist + new above the joist', symbols: 'base + woodPerInch * joistIn + keptAboveIn * keptPerInch + newAboveIn * newPerInch',
  source: 'ASHRAE Handbook Fundamentals ch. 25, parallel paths; softwood R 1.25 per inch (CA JA4.5)',
  args: { base: ['R', 0.1, 20], joistIn: ['in', 0, 24], woodPerInch: ['R/in', 0.5, 2], keptAboveIn: ['in', 0, 60], keptPerInch: ['R/in', 0, 8],
    newAboveIn: ['in', 0, 60], newPerInch: ['R/in', 0, 8] }, gives: 'R',
  fn: x => x.base + x.woodPerInch * x.joistIn + x.keptAboveIn * x.keptPerInch + x.newAboveIn * x.newPerInch })

export const newAboveJoist = formula({ id: 'new-above-joist', says: 'settled top − the higher of joist and fill kept, not below 0', symbols: 'max(0, topIn - max(joistIn, keptIn))', source: 'geometry',
  args: { topIn: ['in', 0, 120], joistIn: ['in', 0, 24], keptIn: ['in', 0, 60] }, gives: 'in', fn: x => Math.max(0, x.topIn - Math.max(x.joistIn, x.keptIn)) })

/** Cavity with a share of gaps, beside joists. */
export const fieldU = formula({ id: 'u-field', says: '(1 − framing) · ((1 − gaps) ÷ cavity R + gaps ÷ gap R) + framing ÷ joist R', symbols: '(1 - framing) * ((1 - gaps) / cavityR + gaps / gapR) + framing / joistR',
  source: 'ASHRAE Handbook Fundamentals ch. 25, parallel path; ASHRAE 90.1 A2.4',
  args: { framing: ['fraction', 0, 0.5], gaps: ['fraction', 0, 0.5], cavityR: ['R', 0.1, 150], gapR: ['R', 0.1, 150], joistR: ['R', 0.1, 150] }, gives: 'U',
  fn: x => (1 - x.framing) * ((1 - x.gaps) / x.cavityR + x.gaps / x.gapR) + x.framing / x.joistR })

export const pathU = formula({ id: 'u-path', says: '1 ÷ R of the path', symbols: '1 / totalR', source: 'definition of U', args: { totalR: ['R', 0.1, 150] }, gives: 'U', fn: x => 1 / x.totalR })

/** Small areas with large openings: what is left of the field is never less than none. */
export const fieldArea = formula({ id: 'field-area', says: 'area − openings and eave strip, not below 0', symbols: 'max(0, netAreaFt2 - takenFt2)', source: 'geometry',
  args: { netAreaFt2: ['ft2', 0, 1e6], takenFt2: ['ft2', 0, 1e6] }, gives: 'ft2', fn: x => Math.max(0, x.netAreaFt2 - x.takenFt2) })

export const pathUa = formula({ id: 'ua-path', says: 'area · U', symbols: 'areaFt2 * u', source: 'definition of U',
  args: { areaFt2: ['ft2', 0, 1e6], u: ['U', 0, 10] }, gives: 'UA', fn: x => x.areaFt2 * x.u })

export const meanU = formula({ id: 'u-mean', says: 'sum of area · U ÷ area', symbols: 'ua / areaFt2', source: 'ASHRAE Handbook Fundamentals ch. 25: area-weighted U',
  args: { ua: ['UA', 0, 1e7], areaFt2: ['ft2', 1e-6, 1e6] }, gives: 'U', fn: x => x.ua / x.areaFt2 })

export const averageR = formula({ id: 'r-average', says: '1 ÷ U − base', symbols: 'max(0, 1 / u - base)', source: 'definition of U; films and board taken off again',
  args: { u: ['U', 1e-4, 10], base: ['R', 0.1, 20] }, gives: 'R', fn: x => Math.max(0, 1 / x.u - x.base) })

/** Mean of totals when R runs evenly from one end of a strip to the other. */
const logMean = (a: number, b: number): number => Math.abs(a - b) < 1e-9 ? a : (a - b) / Math.log(a / b)

const eaveLift = (gapIn: number, pitch: number): number => gapIn * Math.hypot(12, pitch) / 12

export const eaveDepth = formula({ id: 'eave-depth', says: 'heel − gap ÷ cos(roof) + rise · run from the outer plate edge, between 0 and full depth', symbols: 'min(fullIn, max(0, heelIn - gapIn * sqrt(12^2 + pitch^2) / 12 + runIn * pitch / 12))',
  source: 'geometry; vent gap square to the roof (IRC R806.3)',
  args: { heelIn: ['in', 0.1, 60], gapIn: ['in', 0, 12], pitch: ['rise/12', 0.1, 24], runIn: ['in', 0, 600], fullIn: ['in', 0, 60] }, gives: 'in',
  fn: x => Math.min(x.fullIn, Math.max(0, x.heelIn - eaveLift(x.gapIn, x.pitch) + x.runIn * x.pitch / 12)) })

/** How far in from the inside face of the wall the fill reaches its full depth. */
export const stripWidth = formula({ id: 'strip-width', says: '(full depth − heel + gap ÷ cos(roof)) ÷ slope − wall, between 0 and what the area allows', symbols: 'min(mostIn, max(0, (fullIn - heelIn + gapIn * sqrt(12^2 + pitch^2) / 12) / (pitch / 12) - wallIn))',
  source: 'geometry; vent gap square to the roof (IRC R806.3)',
  args: { heelIn: ['in', 0.1, 60], gapIn: ['in', 0, 12], pitch: ['rise/12', 0.1, 24], fullIn: ['in', 0, 60], wallIn: ['in', 0, 24], mostIn: ['in', 0, 1e6] },
  gives: 'in',
  fn: x => Math.min(x.mostIn, Math.max(0, (x.fullIn - x.heelIn + eaveLift(x.gapIn, x.pitch)) / (x.pitch / 12) - x.wallIn)) })

export const mostStrip = formula({ id: 'most-strip', says: 'area ÷ eave length · 12: strips from opposite eaves meet in the middle', symbols: 'areaFt2 / eaveFt * 12', source: 'geometry',
  args: { areaFt2: ['ft2', 0, 1e6], eaveFt: ['ft', 0.1, 5000] }, gives: 'in', fn: x => x.areaFt2 / x.eaveFt * 12 })

/** Area of strips along the eaves; where two eaves meet at a corner their strips share a square. */
export const stripArea = formula({ id: 'strip-area', says: 'eave length · width − corners · width²', symbols: 'max(0, eaveFt * widthIn / 12 - corners * (widthIn / 12)^2)', source: 'geometry',
  args: { eaveFt: ['ft', 0, 5000], widthIn: ['in', 0, 6000], corners: ['each', 0, 16] }, gives: 'ft2',
  fn: x => Math.max(0, x.eaveFt * x.widthIn / 12 - x.corners * (x.widthIn / 12) ** 2) })

/**
 * Mean U of the strip: the depth runs evenly, so within each layer 1/R integrates to a log mean of the R at its two ends.
 * Pieces break where the depth leaves zero, at the top of the kept layer and at full depth.
 */
export const stripU = formula({ id: 'u-strip', says: 'sum over pieces of width ÷ log mean of end R, ÷ width; R in each piece by layer, base included', symbols: 'lift = heelIn - gapIn * sqrt(12^2 + pitch^2) / 12; kept = min(keptIn, fullIn); far = wallIn + widthIn; at(depth) = min(far, max(wallIn, (depth - lift) * 12 / pitch)); r(run) = base + min(kept, max(0, lift + run * pitch / 12)) * keptPerInch + max(0, min(fullIn, lift + run * pitch / 12) - kept) * newPerInch; piece(a, b) = (b - a) / logMean(r(a), r(b)); (piece(wallIn, at(0)) + piece(at(0), at(kept)) + piece(at(kept), at(fullIn)) + piece(at(fullIn), far)) / widthIn',
  source: 'integral of 1/R over a linear taper; IRC R806.3 vent gap',
  args: { base: ['R', 0.1, 20], heelIn: ['in', 0.1, 60], gapIn: ['in', 0, 12], pitch: ['rise/12', 0.1, 24], wallIn: ['in', 0, 24],
    widthIn: ['in', 1e-6, 6000], keptIn: ['in', 0, 60], keptPerInch: ['R/in', 0, 8], fullIn: ['in', 0, 60], newPerInch: ['R/in', 0, 8] }, gives: 'U',
  fn: x => {
    const slope = x.pitch / 12
    const lift = x.heelIn - eaveLift(x.gapIn, x.pitch)
    const kept = Math.min(x.keptIn, x.fullIn)
    const depth = (run: number): number => Math.min(x.fullIn, Math.max(0, lift + run * slope))
    const totalR = (t: number): number => x.base + Math.min(t, kept) * x.keptPerInch + Math.max(0, t - kept) * x.newPerInch
    const from = x.wallIn, to = x.wallIn + x.widthIn
    const breaks = [0, kept, x.fullIn].map(t => (t - lift) / slope).filter(run => run > from && run < to)
    const runs = [from, ...breaks, to]
    let sum = 0
    for (let i = 1; i < runs.length; i++) {
      const a = runs[i - 1]!, b = runs[i]!
      sum += (b - a) / logMean(totalR(depth(a)), totalR(depth(b)))
    }
    return sum / x.widthIn
  } })

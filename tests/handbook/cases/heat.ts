import { byHand, digit, group } from '../case.ts'

const NAIMA = 'NAIMA (Insulation Institute), guidance for HERS raters: an R-19 batt of 6.25 in squeezed to 5.5 in'
const JLC = 'JLC, Compressing Fiberglass Batts'
const JA4 = 'California Joint Appendix JA4.5, tables 4.5.1 and 4.5.2'
const A24 = 'ASHRAE 90.1 A2.4, attic roofs with wood joists: 85 % full depth, 5 % half depth, 10 % joist; U as in IECC table C402.1.4, attic and other'
const WSU = 'WSU Extension Energy Program, inspecting attic insulation: R-38 is 10 to 12 in of cellulose, 14 to 17 in of fiberglass'
const VOIDS = 'Fine Homebuilding 2009, R-38 with voids, as quoted by a builder'
const TAPER = 'integral of 1/R over the taper, numerically and in closed form; 40 × 28 ft, 5/12, 3.6 R per inch to R-49, base 1.67'

/** A gap of 1.5 in measured upright under a 5/12 roof, taken square to it as the formula wants it. */
const UPRIGHT = 1.5 * 12 / 13
const full = 49 / 3.6
const strip = { base: 1.67, heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, wallIn: 0, keptIn: 0, keptPerInch: 0, fullIn: full, newPerInch: 3.6 }
const widthIn = (heel: number, gap: number, to = full) => (to - heel + gap) * 12 / 5
/** The strip's mean R is printed to 0.001. */
const meanR = (r: number) => ({ expected: 1 / r, tolerance: 0.00051 / r ** 2 })

export default [
  ...group({ formula: 'layer-r' }, [
    { id: 'R-30 at 3.7 per inch', inputs: { depthIn: 8.11, perInch: 3.7, squeezed: 0 }, expected: 30, tolerance: 0.02, toleranceWhy: 'depth printed to 0.01 in', source: 'commentary on IRC 2018 N1102.2.1, full height over the plate', obtained: 'published, seen in a copy' },
    { id: 'R-38 at 3.7 per inch', inputs: { depthIn: 10.27, perInch: 3.7, squeezed: 0 }, expected: 38, tolerance: 0.02, toleranceWhy: 'depth printed to 0.01 in', source: 'commentary on IRC 2018 N1102.2.1, full height over the plate', obtained: 'published, seen in a copy' },
    { id: 'softwood, 4 in', inputs: { depthIn: 4, perInch: 1.25, squeezed: 0 }, expected: 5, ...digit(0.01), source: JA4, obtained: 'published, seen', table: 'JA4.5' },
    { id: 'R-19 squeezed to 5.5 in', inputs: { depthIn: 5.5, perInch: 19 / 5.5, squeezed: 0.06 }, expected: 17.86, ...digit(0.01), source: NAIMA, obtained: 'published, seen' },
    { id: 'R-19 of 6 in squeezed to 5.5 in', inputs: { depthIn: 5.5, perInch: 19 / 5.5, squeezed: 1 / 24 }, expected: 18, ...digit(1), source: JLC, obtained: 'published, seen', table: 'JLC batts', note: 'half of 0.5 in ÷ 6 in = 1/24' },
    { id: 'old R-11 batt', inputs: { depthIn: 3.5, perInch: 3.1, squeezed: 0 }, expected: 11, ...digit(1), source: JLC, obtained: 'published, seen', table: 'JLC batts' },
    { id: 'old R-19 batt', inputs: { depthIn: 6, perInch: 3.1, squeezed: 0 }, expected: 19, ...digit(1), source: JLC, obtained: 'published, seen', table: 'JLC batts' },
    { id: 'probed batt', inputs: { depthIn: 3.5, perInch: 3.2, squeezed: 0 }, expected: 11.2, ...byHand, note: '3.5 · 3.2 = 11.2' },
  ]),
  ...group({ formula: 'squeeze-loss' }, [
    { id: 'R-19 squeezed to 5.5 in, share lost', inputs: { depthIn: 5.5, labelIn: 6.25 }, expected: 0.06, tolerance: 1e-9, toleranceWhy: '12 % squeezed, exact', source: NAIMA, obtained: 'published, seen' },
    { id: 'thicker than its label', inputs: { depthIn: 6.5, labelIn: 6.25 }, expected: 0, ...byHand, note: 'nothing is squeezed: loss = 0' },
  ]),
  ...group({ formula: 'r-per-inch' }, [
    { id: 'cellulose, thin end', inputs: { r: 38, depthIn: 10 }, expected: 3.8, ...digit(0.1), source: WSU, obtained: 'published, seen in a copy', table: 'WSU depths' },
    { id: 'R-11 batt per inch', inputs: { r: 11, depthIn: 3.5 }, expected: 3.1, ...digit(0.1), source: JLC, obtained: 'published, seen', table: 'JLC batts' },
  ]),
  ...group({ formula: 'r-per-settled-inch', source: WSU, obtained: 'published, seen in a copy', table: 'WSU depths' }, [
    { id: 'cellulose at 10 in', inputs: { chartR: 38, settledDepthIn: 10 }, expected: 3.8, ...digit(0.1) },
    { id: 'cellulose at 12 in', inputs: { chartR: 38, settledDepthIn: 12 }, expected: 3.2, ...digit(0.1) },
    { id: 'fiberglass at 14 in', inputs: { chartR: 38, settledDepthIn: 14 }, expected: 2.7, ...digit(0.1) },
    { id: 'fiberglass at 17 in', inputs: { chartR: 38, settledDepthIn: 17 }, expected: 2.2, ...digit(0.1) },
  ]),
  ...group({ formula: 'r-short', ...byHand }, [
    { id: 'R-49 over 11.2', inputs: { targetR: 49, existingR: 11.2 }, expected: 37.8, note: '49 − 11.2 = 37.8' },
    { id: 'more than asked', inputs: { targetR: 38, existingR: 41 }, expected: -3, note: '38 − 41 = −3' },
  ]),
  ...group({ formula: 'r-needed', ...byHand }, [
    { id: 'under the half', inputs: { shortR: 38.4 }, expected: 38, note: '38.4 is nearer 38: = 38' },
    { id: 'on the half', inputs: { shortR: 38.5 }, expected: 39, note: 'half up: 38.5 = 39' },
    { id: 'nothing short', inputs: { shortR: -3 }, expected: 0, note: 'not below 0: = 0' },
    { id: 'four tenths short', inputs: { shortR: 0.4 }, expected: 0, note: '0.4 is nearer 0: = 0' },
  ]),
  ...group({ formula: 'r-final', ...byHand }, [
    { id: '11.2 and R-38', inputs: { existingR: 11.2, chartR: 38 }, expected: 49.2, note: '11.2 + 38 = 49.2' },
  ]),
  ...group({ formula: 'r-series', ...byHand }, [
    { id: 'films and board of ASHRAE 90.1', inputs: { base: 0.61, fill: 0.56 + 0.46 }, expected: 1.63, note: 'layers of ASHRAE 90.1 A2.4: 0.61 + 0.56 + 0.46 = 1.63' },
    { id: 'bare lid of a light box', inputs: { base: 1.67, fill: 0.56 }, expected: 2.23, note: '1.67 + 0.56 = 2.23' },
  ]),
  ...group({ formula: 'r-joist-path', source: 'ASHRAE Handbook Fundamentals method, softwood 1.25 per inch (JA4.5), base 1.67', obtained: 'computed independently', table: 'joists in fill', ...digit(0.01) }, [
    { id: '2×6 bare on top', inputs: { base: 1.67, joistIn: 5.5, woodPerInch: 1.25, keptAboveIn: 0, keptPerInch: 3.2, newAboveIn: 0, newPerInch: 0 }, expected: 8.55 },
    { id: '2×6 under R-38 at 3.2', inputs: { base: 1.67, joistIn: 5.5, woodPerInch: 1.25, keptAboveIn: 0, keptPerInch: 0, newAboveIn: 6.375, newPerInch: 3.2 }, expected: 28.95 },
    { id: '2×4 bare on top', inputs: { base: 1.67, joistIn: 3.5, woodPerInch: 1.25, keptAboveIn: 0, keptPerInch: 2.5, newAboveIn: 0, newPerInch: 0 }, expected: 6.05 },
    { id: '2×4 under R-38 at 2.5', inputs: { base: 1.67, joistIn: 3.5, woodPerInch: 1.25, keptAboveIn: 0, keptPerInch: 0, newAboveIn: 11.7, newPerInch: 2.5 }, expected: 35.3 },
    { id: 'chord of ASHRAE 90.1 under R-38', inputs: { base: 1.63, joistIn: 3.5, woodPerInch: 1.25, keptAboveIn: 27, keptPerInch: 1, newAboveIn: 0, newPerInch: 0 }, expected: 33.01, note: 'R-11 beside the chord, R-27 over it: 1.63 + 4.38 + 27 = 33.01', table: 'A2.4 by hand' },
  ]),
  ...group({ formula: 'r-joist-path', ...byHand }, [
    { id: '2×4 under 2.5 in of old and 8.06 in of new fill', inputs: { base: 1.67, joistIn: 3.5, woodPerInch: 1.25, keptAboveIn: 2.5, keptPerInch: 2.5, newAboveIn: 8.06, newPerInch: 3.6 }, expected: 41.311, note: '1.67 + 4.375 + 6.25 + 29.016 = 41.311' },
  ]),
  ...group({ formula: 'u-field', ...byHand, tolerance: 0.000001, toleranceWhy: 'half of the last digit' }, [
    { id: 'old batts with gaps of 2 % between 2×6', inputs: { framing: 0.09375, gaps: 0.02, cavityR: 12.87, gapR: 1.67, joistR: 8.545 }, expected: 0.090832, note: '0.90625 · (0.98 ÷ 12.87 + 0.02 ÷ 1.67) + 0.09375 ÷ 8.545 = 0.079861 + 0.010971 = 0.090832' },
  ]),
  ...group({ formula: 'new-above-joist', ...byHand }, [
    { id: 'joist stands above the old fill', inputs: { topIn: 14.06, joistIn: 5.5, keptIn: 3.5 }, expected: 8.56, note: '14.06 − 5.5 = 8.56' },
    { id: 'old fill stands above the joist', inputs: { topIn: 14.06, joistIn: 3.5, keptIn: 6 }, expected: 8.06, note: '14.06 − 6 = 8.06' },
    { id: 'joist above all fill', inputs: { topIn: 5, joistIn: 7.25, keptIn: 5 }, expected: 0, note: '5 is under 7.25: = 0' },
  ]),
  // Three parallel paths of the standard by two shares: half-depth fill is the share 0.05 ÷ 0.90 beside the joists.
  ...group({ formula: 'u-field', source: A24, ...digit(0.001), table: 'ASHRAE 90.1 A2.4' }, [
    { id: 'standard frame, R-38', inputs: { framing: 0.1, gaps: 0.05 / 0.9, cavityR: 39.63, gapR: 20.63, joistR: 33.01 }, expected: 0.027, obtained: 'published, seen in a copy', note: 'that 0.027 stands for R-38 is from memory' },
    { id: 'standard frame, R-49', inputs: { framing: 0.1, gaps: 0.05 / 0.9, cavityR: 50.63, gapR: 26.13, joistR: 44.01 }, expected: 0.021, obtained: 'published, seen in a copy', note: 'that 0.021 stands for R-49 is from memory' },
    { id: 'standard frame, R-30', inputs: { framing: 0.1, gaps: 0.05 / 0.9, cavityR: 31.63, gapR: 16.63, joistR: 25.01 }, expected: 0.034, obtained: 'from memory' },
    { id: 'standard frame, R-19', inputs: { framing: 0.1, gaps: 0.05 / 0.9, cavityR: 20.63, gapR: 11.13, joistR: 14.01 }, expected: 0.053, obtained: 'from memory' },
  ]),
  ...group({ formula: 'u-field', source: VOIDS, obtained: 'published, seen in a copy', table: 'voids', toleranceWhy: 'R printed to a whole number' }, [
    { id: 'R-38 with 0.5 % bare', inputs: { framing: 0, gaps: 0.005, cavityR: 38, gapR: 1, joistR: 1 }, expected: 1 / 32, tolerance: 0.5 / 32 / 31.5, note: 'hole of R 1.0, which the quotation does not print' },
    { id: 'R-38 with 2 % bare', inputs: { framing: 0, gaps: 0.02, cavityR: 38, gapR: 1, joistR: 1 }, expected: 1 / 22, tolerance: 0.5 / 22 / 21.5, note: 'hole of R 1.0, which the quotation does not print' },
  ]),
  ...group({ formula: 'u-field', source: 'parallel path by hand: base 1.67, softwood 1.25 per inch', obtained: 'computed independently', table: 'joists in fill', tolerance: 0.00006, toleranceWhy: 'half of the last printed digit; the R of the paths are printed to 0.01' }, [
    { id: '2×6 at 16, 3.5 in at 3.2: joist exposed', inputs: { framing: 0.09375, gaps: 0, cavityR: 12.87, gapR: 1.67, joistR: 8.55 }, expected: 0.0814 },
    { id: '2×6 at 16, 5.5 in at 3.2: flush', inputs: { framing: 0.09375, gaps: 0, cavityR: 19.27, gapR: 1.67, joistR: 8.55 }, expected: 0.058 },
    { id: '2×6 at 16, 11.875 in at 3.2: buried', inputs: { framing: 0.09375, gaps: 0, cavityR: 39.67, gapR: 1.67, joistR: 28.95 }, expected: 0.0261 },
    { id: '2×4 at 24, 3.5 in at 2.5: flush', inputs: { framing: 0.0625, gaps: 0, cavityR: 10.42, gapR: 1.67, joistR: 6.05 }, expected: 0.1003 },
    { id: '2×4 at 24, 15.2 in at 2.5: buried', inputs: { framing: 0.0625, gaps: 0, cavityR: 39.67, gapR: 1.67, joistR: 35.3 }, expected: 0.0254 },
  ]),
  ...group({ formula: 'u-path', source: JA4, obtained: 'published, seen', table: 'JA4.5', ...digit(0.01) }, [
    { id: 'bare hatch', inputs: { totalR: 0.69 }, expected: 1.45 },
    { id: 'insulated hatch', inputs: { totalR: 2 }, expected: 0.5 },
  ]),
  ...group({ formula: 'ua-path', ...byHand }, [
    { id: 'nine light-box lids', inputs: { areaFt2: 12.25, u: 1 / 2.23 }, expected: 5.493, tolerance: 0.0005, toleranceWhy: 'half of the last digit', note: '12.25 ÷ 2.23 = 5.493' },
    { id: 'half of a lumpy ceiling', inputs: { areaFt2: 500, u: 0.1 }, expected: 50, note: '500 · 0.1 = 50' },
  ]),
  ...group({ formula: 'u-mean' }, [
    { id: 'half R-50, half R-10', inputs: { ua: 0.5 / 50 + 0.5 / 10, areaFt2: 1 }, expected: 1 / 16.7, tolerance: 0.05 / 16.7 / 16.6, toleranceWhy: 'R printed to 0.1', source: 'Energy Vanguard, flat or lumpy: R-50 and R-10 on half each make R-16.7', obtained: 'published, seen' },
    { id: 'bare plywood stair in R-38', inputs: { ua: 990 / 38 + 10 / 0.31, areaFt2: 1000 }, expected: 1 / 17.15, tolerance: 0.005 / 17.15 ** 2, toleranceWhy: 'R to 0.01', source: 'inputs of Home Energy, stair of 10 ft² in 1,000 ft²; averaged on U', obtained: 'computed independently', table: 'holes in a ceiling' },
    { id: 'nine bare box tops in R-49', inputs: { ua: 1331.75 / 50.67 + 12.25 / 2.23, areaFt2: 1344 }, expected: 1 / 42.3, tolerance: 0.05 / 42.3 ** 2, toleranceWhy: 'R to 0.1', source: 'nine boxes 14 × 14 in, lid R 0.56 and base 1.67', obtained: 'computed independently', table: 'holes in a ceiling' },
    { id: 'nine bare box tops in R-60', inputs: { ua: 1331.75 / 61.67 + 12.25 / 2.23, areaFt2: 1344 }, expected: 1 / 49.6, tolerance: 0.05 / 49.6 ** 2, toleranceWhy: 'R to 0.1', source: 'nine boxes 14 × 14 in, lid R 0.56 and base 1.67', obtained: 'computed independently', table: 'holes in a ceiling' },
    { id: 'hatch of R-20 in R-49', inputs: { ua: (1344 - 55 / 12) / 50.67 + 55 / 12 / 21.67, areaFt2: 1344 }, expected: 1 / (50.67 - 0.2), tolerance: 0.05 / 50.4 ** 2, toleranceWhy: 'the loss is said to 0.1 R', source: 'hatch 22 × 30 in: costs 0.2 R', obtained: 'computed independently', table: 'holes in a ceiling' },
  ]),
  ...group({ formula: 'r-average', source: 'base 1.67 on both paths and taken off again', obtained: 'computed independently', table: 'voids with base', tolerance: 0.0501, toleranceWhy: 'half of the last printed digit' }, [
    { id: 'R-38, hole of 1 % down to films and board', inputs: { u: 0.99 / 39.67 + 0.01 / 1.67, base: 1.67 }, expected: 30.6 },
    { id: 'R-49, hole of 1 % down to films and board', inputs: { u: 0.99 / 50.67 + 0.01 / 1.67, base: 1.67 }, expected: 37.5 },
    { id: 'R-38, 2 % bare', inputs: { u: 0.98 / 39.67 + 0.02 / 1.67, base: 1.67 }, expected: 25.6 },
    { id: 'R-38, 5 % bare', inputs: { u: 0.95 / 39.67 + 0.05 / 1.67, base: 1.67 }, expected: 16.9 },
    { id: 'R-49, 2 % bare', inputs: { u: 0.98 / 50.67 + 0.02 / 1.67, base: 1.67 }, expected: 30.3 },
  ]),
  ...group({ formula: 'eave-depth', ...byHand }, [
    { id: 'at the plate edge', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, runIn: 0, fullIn: full }, expected: 2, note: '3.5 − 1.5 upright = 2' },
    { id: 'a foot in', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, runIn: 12, fullIn: full }, expected: 7, note: '2 + 12 · 5/12 = 7' },
    { id: 'full', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, runIn: 40, fullIn: 13 }, expected: 13, note: '2 + 40 · 5/12 = 18.7, at most 13' },
    { id: 'no room at the plate', inputs: { heelIn: 1, gapIn: UPRIGHT, pitch: 5, runIn: 0, fullIn: 13 }, expected: 0, note: '1 − 1.5 = −0.5, not below 0' },
    { id: 'gap square to a 5/12 roof', inputs: { heelIn: 3.5, gapIn: 1.5, pitch: 5, runIn: 0, fullIn: 13 }, expected: 1.875, note: '1.5 · 13/12 = 1.625 upright; 3.5 − 1.625 = 1.875' },
    { id: 'gap square to an 8/12 roof', inputs: { heelIn: 5, gapIn: 1, pitch: 8, runIn: 0, fullIn: 13 }, expected: 3.8, tolerance: 0.005, toleranceWhy: 'the factor is taken as 1.20', note: '√(144 + 64) ÷ 12 = 1.20; 5 − 1.20 = 3.80' },
  ]),
  ...group({ formula: 'strip-width', source: TAPER, obtained: 'computed independently', table: 'taper width' }, [
    { id: 'upright gap, from the plate edge', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, fullIn: full, wallIn: 0, mostIn: 168 }, expected: 27.9, ...digit(0.1) },
    { id: 'square gap, from the plate edge', inputs: { heelIn: 3.5, gapIn: 1.5, pitch: 5, fullIn: full, wallIn: 0, mostIn: 168 }, expected: 28.1667, ...byHand, tolerance: 0.0001, note: '(13.6111 − 3.5 + 1.625) · 12/5 = 28.1667' },
    { id: 'from inside the wall', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, fullIn: full, wallIn: 4.5, mostIn: 168 }, expected: 23.4, ...digit(0.1) },
    { id: 'strips meet at mid-span', inputs: { heelIn: 3.5, gapIn: UPRIGHT, pitch: 5, fullIn: full, wallIn: 0, mostIn: 24 }, expected: 24, ...byHand, note: '27.9 is more than the half span: = 24' },
    { id: 'raised heel', inputs: { heelIn: 16, gapIn: UPRIGHT, pitch: 5, fullIn: full, wallIn: 0, mostIn: 168 }, expected: 0, ...byHand, note: '16 − 1.5 = 14.5 is over 13.6: no strip, = 0' },
  ]),
  ...group({ formula: 'most-strip', ...byHand }, [
    { id: 'two long eaves', inputs: { areaFt2: 1120, eaveFt: 80 }, expected: 168, note: 'half of 28 ft: 14 · 12 = 168' },
  ]),
  ...group({ formula: 'strip-area', obtained: 'computed independently', source: '40 × 28 ft, strips as wide as the taper runs', table: 'taper area' }, [
    { id: 'two long eaves', inputs: { eaveFt: 80, widthIn: 27.9, corners: 0 }, expected: 186, ...digit(1) },
    { id: 'four eaves, width to 0.1 in', inputs: { eaveFt: 136, widthIn: 27.9, corners: 4 }, expected: 294.6, ...digit(0.1), note: '1,120 − (40 − 4.65)(28 − 4.65) = 294.58; 294.25 with the width unrounded' },
    { id: 'four eaves, square gap', inputs: { eaveFt: 136, widthIn: 28.1667, corners: 4 }, expected: 297, ...digit(1) },
    { id: 'four eaves, corners not yet taken off', inputs: { eaveFt: 136, widthIn: 27.8667, corners: 0 }, expected: 316, ...digit(1) },
  ]),
  ...group({ formula: 'u-strip', source: TAPER, obtained: 'computed independently', table: 'taper, upright gap 1.5 in', toleranceWhy: 'mean R to 0.001' }, [
    { id: 'heel 3.5', inputs: { ...strip, widthIn: widthIn(3.5, 1.5) }, ...meanR(23.986) },
    { id: 'heel 1: no fill at the plate', inputs: { ...strip, heelIn: 1, widthIn: widthIn(1, 1.5) }, ...meanR(11.313) },
    { id: '3.5 in at 2.5 under 11.181 in at 3.6', inputs: { ...strip, keptIn: 3.5, keptPerInch: 2.5, fullIn: 14.6806, widthIn: widthIn(3.5, 1.5, 14.6806) }, ...meanR(20.526), note: 'one log mean over both layers would give 21.699' },
    { id: 'from 4.5 in further in', inputs: { ...strip, wallIn: 4.5, widthIn: widthIn(3.5, 1.5) - 4.5 }, ...meanR(29.785) },
    { id: 'heel 5.5', inputs: { ...strip, heelIn: 5.5, widthIn: widthIn(5.5, 1.5) }, ...meanR(30.129) },
    { id: 'heel 9.25', inputs: { ...strip, heelIn: 9.25, widthIn: widthIn(9.25, 1.5) }, ...meanR(39.178) },
    { id: 'glass at 2.6', inputs: { ...strip, fullIn: 49 / 2.6, newPerInch: 2.6, widthIn: widthIn(3.5, 1.5, 49 / 2.6) }, ...meanR(21.92) },
  ]),
  ...group({ formula: 'u-strip', source: TAPER, obtained: 'computed independently', table: 'taper, square gap 1.5 in', toleranceWhy: 'mean R to 0.001' }, [
    { id: 'square gap, heel 3.5', inputs: { ...strip, gapIn: 1.5, widthIn: widthIn(3.5, 1.625) }, ...meanR(23.541) },
    { id: 'square gap, heel 1', inputs: { ...strip, gapIn: 1.5, heelIn: 1, widthIn: widthIn(1, 1.625) }, ...meanR(10.767) },
    { id: 'square gap, two layers', inputs: { ...strip, gapIn: 1.5, keptIn: 3.5, keptPerInch: 2.5, fullIn: 14.6806, widthIn: widthIn(3.5, 1.625, 14.6806) }, ...meanR(20.104) },
    { id: 'square gap, from 4.5 in further in', inputs: { ...strip, gapIn: 1.5, wallIn: 4.5, widthIn: widthIn(3.5, 1.625) - 4.5 }, expected: 1 / 29.44, tolerance: 0.0051 / 29.44 ** 2, toleranceWhy: 'mean R to 0.01' },
    { id: 'square gap, heel 5.5', inputs: { ...strip, gapIn: 1.5, heelIn: 5.5, widthIn: widthIn(5.5, 1.625) }, ...meanR(29.785) },
    { id: 'square gap, heel 9.25', inputs: { ...strip, gapIn: 1.5, heelIn: 9.25, widthIn: widthIn(9.25, 1.625) }, ...meanR(38.905) },
  ]),
]

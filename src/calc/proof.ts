import { formula } from '../units/quantity.ts'

/** What lies there against what the label asks: bags, weight and depth on the day; hours against hours. */

const CFR = '16 CFR 460.12: coverage · weight = net bag weight'

/** Framing is left out of it as it was for the estimate. */
export const filledArea = formula({ id: 'filled-area', says: 'bags of the row · coverage of a bag', symbols: 'bags * coverageFt2', source: CFR, args: { bags: ['bag', 0, 1e6], coverageFt2: ['ft2/bag', 0.1, 1e4] }, gives: 'ft2', fn: x => x.bags * x.coverageFt2 })

export const blownWeight = formula({ id: 'blown-weight', says: 'bags · net bag weight ÷ filled area', symbols: 'bags * bagLb / filledFt2', source: CFR,
  args: { bags: ['bag', 0, 1e6], bagLb: ['lb', 1, 200], filledFt2: ['ft2', 0.1, 1e6] }, gives: 'lb/ft2', fn: x => x.bags * x.bagLb / x.filledFt2 })

export const bagsByWeight = formula({ id: 'bags-by-weight', says: 'weight of the row · filled area ÷ net bag weight', symbols: 'weightPsf * filledFt2 / bagLb', source: CFR,
  args: { weightPsf: ['lb/ft2', 0.01, 20], filledFt2: ['ft2', 0, 1e6], bagLb: ['lb', 1, 200] }, gives: 'bag', fn: x => x.weightPsf * x.filledFt2 / x.bagLb })

/** A label rounds each column: the one that asks for more counts. */
export const bagsAsked = formula({ id: 'bags-asked', says: 'the larger of the bags by coverage and the bags by weight', symbols: 'max(byCoverage, byWeight)', source: '16 CFR 460.12: both columns of the row are minimums',
  args: { byCoverage: ['bag', 0, 1e6], byWeight: ['bag', 0, 1e6] }, gives: 'bag', fn: x => Math.max(x.byCoverage, x.byWeight) })

export const bagsShort = formula({ id: 'bags-short', says: 'bags asked − bags used, not below 0', symbols: 'max(0, asked - used)', source: 'arithmetic', args: { asked: ['bag', 0, 1e6], used: ['bag', 0, 1e6] }, gives: 'bag', fn: x => Math.max(0, x.asked - x.used) })

export const bagsCovered = formula({ id: 'bags-covered', says: 'bags of the row · floor covered ÷ floor surveyed', symbols: 'bags * coveredFt2 / surveyedFt2', source: 'arithmetic',
  args: { bags: ['bag', 0, 1e6], coveredFt2: ['ft2', 0, 1e6], surveyedFt2: ['ft2', 0.1, 1e6] }, gives: 'bag', fn: x => x.bags * x.coveredFt2 / x.surveyedFt2 })

/** Below 0 where the reading is under the old fill. */
export const newFill = formula({ id: 'new-fill', says: 'top of fill on the marker − old fill', symbols: 'readIn - oldIn', source: 'heights are read from the ceiling plane', args: { readIn: ['in', 0, 120], oldIn: ['in', 0, 60] }, gives: 'in', fn: x => x.readIn - x.oldIn })

export const installedDensity = formula({ id: 'installed-density', says: 'bags · net bag weight ÷ (filled area · depth ÷ 12)', symbols: 'bags * bagLb / (filledFt2 * depthIn / 12)', source: 'definition of density; asked for by IECC R303.1.1',
  args: { bags: ['bag', 0, 1e6], bagLb: ['lb', 1, 200], filledFt2: ['ft2', 0.1, 1e6], depthIn: ['in', 0.1, 120] }, gives: 'lb/ft3', fn: x => x.bags * x.bagLb / (x.filledFt2 * x.depthIn / 12) })

export const packedDensity = formula({ id: 'packed-density', says: 'least density · bags used ÷ bags asked', symbols: 'leastPcf * used / asked', source: 'same cavity, same bag: density goes as the bags',
  args: { leastPcf: ['lb/ft3', 0.1, 20], used: ['bag', 0, 1e6], asked: ['bag', 0.001, 1e6] }, gives: 'lb/ft3', fn: x => x.leastPcf * x.used / x.asked })

/** Below 0 where the house leaks more than before. */
export const measuredCut = formula({ id: 'measured-cut', says: 'before − after', symbols: 'before - after', source: 'two readings with one set-up', args: { before: ['cfm', 0, 1e5], after: ['cfm', 0, 1e5] }, gives: 'cfm', fn: x => x.before - x.after })
export const cutShare = formula({ id: 'cut-share', says: '(before − after) ÷ before', symbols: '(before - after) / before * 100', source: 'two readings with one set-up', args: { before: ['cfm', 1, 1e5], after: ['cfm', 0, 1e5] }, gives: 'pct', fn: x => (x.before - x.after) / x.before * 100 })

/** Hours are rate times amount times access, so they stretch as the rate does. */
export const rateLearned = formula({ id: 'rate-learned', says: 'rate of the estimate · hours it took ÷ hours estimated ÷ (amount done ÷ amount estimated)', symbols: 'rate * tookHours / estimatedHours / amountShare', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { rate: ['h/unit', 0, 100], tookHours: ['h', 0, 1e5], estimatedHours: ['h', 0.001, 1e5], amountShare: ['factor', 0.01, 100] }, gives: 'h/unit', fn: x => x.rate * x.tookHours / x.estimatedHours / x.amountShare })

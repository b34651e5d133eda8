import { formula } from '../units/quantity.ts'

/** Effective leakage areas [in², at 4 Pa, discharge coefficient 1]. */

export const leakOf = formula({ id: 'leak-of', says: 'leakage of one · how many', symbols: 'eachIn2 * amount', source: 'ASHRAE Handbook Fundamentals, effective air leakage areas of components',
  args: { eachIn2: ['in2', 0, 100], amount: ['any', 0, 1e5] }, gives: 'in2', fn: x => x.eachIn2 * x.amount })

/** What is closed below by finishes leaks through its seams, not through its mouth. */
export const seamPath = formula({ id: 'seam-path', says: 'the smaller of mouth and way round · seam', symbols: 'min(mouthIn2, edgeIn * seamIn)', source: 'judgment: an opening closed below by board leaks through seams of a quarter inch',
  args: { mouthIn2: ['in2', 0, 1e6], edgeIn: ['in', 0, 1e5], seamIn: ['in', 0.01, 2] }, gives: 'in2', fn: x => Math.min(x.mouthIn2, x.edgeIn * x.seamIn) })

/** A table of like parts knows nothing of this one's size: no hole leaks more than it is wide. */
export const withinHole = formula({ id: 'within-hole', says: 'leakage · the smaller of 1 and hole ÷ leakage as found by the table', symbols: 'leakIn2 * min(1, openIn2 / tableIn2)', source: 'geometry: an effective leakage area is no larger than its hole',
  args: { leakIn2: ['in2', 0, 1e5], openIn2: ['in2', 0, 1e6], tableIn2: ['in2', 1e-6, 1e5] }, gives: 'in2', fn: x => x.leakIn2 * Math.min(1, x.openIn2 / x.tableIn2) })

/** A sharp-edged hole, and what stands in line with it. */
export const holeLeak = formula({ id: 'hole-leak', says: 'open area · 0.61 · share that what stands in line lets through · how many', symbols: 'openIn2 * 0.61 * series * count', source: 'sharp-edged orifice: discharge coefficient 0.61 (ASHRAE Handbook Fundamentals, flow through openings)',
  args: { openIn2: ['in2', 0, 1e6], series: ['fraction', 0.2, 1], count: ['each', 1, 500] }, gives: 'in2', fn: x => x.openIn2 * 0.61 * x.series * x.count })

export const rectangle = formula({ id: 'rectangle', says: 'length · width', symbols: 'lengthIn * widthIn', source: 'geometry', args: { lengthIn: ['in', 0, 2400], widthIn: ['in', 0, 2400] }, gives: 'in2', fn: x => x.lengthIn * x.widthIn })

export const framedGap = formula({ id: 'framed-gap', says: '(length + 2 · gap) · (width + 2 · gap) − length · width', symbols: '(lengthIn + 2 * gapIn) * (widthIn + 2 * gapIn) - lengthIn * widthIn', source: 'geometry',
  args: { lengthIn: ['in', 0, 240], widthIn: ['in', 0, 240], gapIn: ['in', 0, 24] }, gives: 'in2', fn: x => (x.lengthIn + 2 * x.gapIn) * (x.widthIn + 2 * x.gapIn) - x.lengthIn * x.widthIn })

export const roundIn = formula({ id: 'round-in', says: 'length · width − π ÷ 4 · diameter², not below 0', symbols: 'max(0, lengthIn * widthIn - pi / 4 * diameterIn^2)', source: 'geometry',
  args: { lengthIn: ['in', 0, 240], widthIn: ['in', 0, 240], diameterIn: ['in', 0, 60] }, gives: 'in2', fn: x => Math.max(0, x.lengthIn * x.widthIn - Math.PI / 4 * x.diameterIn ** 2) })

export const leakLess = formula({ id: 'leak-less', says: 'before − after, not below 0', symbols: 'max(0, before - after)', source: 'arithmetic', args: { before: ['in2', 0, 1e6], after: ['in2', 0, 1e6] }, gives: 'in2', fn: x => Math.max(0, x.before - x.after) })

export const shareIn2 = formula({ id: 'leak-share', says: 'part ÷ all', symbols: 'part / all * 100', source: 'arithmetic', args: { part: ['in2', 0, 1e6], all: ['in2', 1e-9, 1e7] }, gives: 'pct', fn: x => x.part / x.all * 100 })

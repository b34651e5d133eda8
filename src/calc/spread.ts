import { formula, listFormula } from '../units/quantity.ts'
import { halfUp, roundUp } from '../units/money.ts'

/** How far survey figures may be off, and how errors that have nothing to do with each other join. */

const GUM = 'JCGM 100:2008 (GUM)'
const LOTS = 1e12

/** Of at least two probes. */
export const deviation = listFormula({ id: 'standard-deviation', says: '√(Σ (probe − mean)² ÷ (probes − 1))', symbols: 'std', source: `${GUM}, 4.2.2`, gives: 'in',
  ofList: v => { const mean = v.reduce((a, b) => a + b, 0) / v.length; return Math.sqrt(v.reduce((sum, p) => sum + (p - mean) ** 2, 0) / (v.length - 1)) } })

export const meanOff = formula({ id: 'mean-off', says: 'standard errors that hold nine of ten · standard deviation ÷ √ probes', symbols: 'factor * deviationIn / sqrt(probes)', source: `${GUM}, 4.2.3 and G.3`,
  args: { factor: ['factor', 1, 10], deviationIn: ['in', 0, 60], probes: ['each', 2, 100] }, gives: 'in', fn: x => x.factor * x.deviationIn / Math.sqrt(x.probes) })

export const aboutOff = formula({ id: 'about-off', says: 'value · percent ÷ 100', symbols: 'value * pct / 100', source: 'definition of percent', args: { value: ['any', 0, 1e9], pct: ['pct', 0, 100] }, gives: 'each', fn: x => x.value * x.pct / 100 })

export const moved = formula({ id: 'moved', says: 'after − before', symbols: 'after - before', source: 'arithmetic', args: { after: ['any', 0, LOTS], before: ['any', 0, LOTS] }, gives: 'each', fn: x => x.after - x.before })

/** What each uncertainty moves by itself, all together. */
export const joined = listFormula({ id: 'joined', says: '√ of the sum of the squares', symbols: 'hypot', source: `${GUM}, 5.1.2: errors that have nothing to do with each other`, gives: 'each',
  ofList: v => Math.hypot(...v) })

export const lowEnd = formula({ id: 'low-end', says: 'expected − what moves it down, down to a step, not below 0', symbols: 'max(0, halfUp(down((expected - moved) / step) * step, 0.01))', source: `${GUM}, 6.2.1`, args: { expected: ['any', 0, LOTS], moved: ['any', 0, LOTS], step: ['any', 0.01, 1e9] }, gives: 'each',
  fn: x => Math.max(0, halfUp(Math.floor((x.expected - x.moved) / x.step + 1e-9) * x.step, 0.01)) })
export const highEnd = formula({ id: 'high-end', says: 'expected + what moves it up, up to a step', symbols: 'halfUp(up((expected + moved) / step) * step, 0.01)', source: `${GUM}, 6.2.1`, args: { expected: ['any', 0, LOTS], moved: ['any', 0, LOTS], step: ['any', 0.01, 1e9] }, gives: 'each',
  fn: x => halfUp(roundUp((x.expected + x.moved) / x.step) * x.step, 0.01) })

/** By how much the range narrows once one of its parts is known. */
export const narrowed = formula({ id: 'narrowed', says: 'below + above, less the same without this one: √(below² − its own²) + √(above² − its own²)', symbols: 'below + above - sqrt(max(0, below^2 - ownBelow^2)) - sqrt(max(0, above^2 - ownAbove^2))', source: `${GUM}, 5.1.2`,
  args: { below: ['any', 0, LOTS], above: ['any', 0, LOTS], ownBelow: ['any', 0, LOTS], ownAbove: ['any', 0, LOTS] }, gives: 'each',
  fn: x => x.below + x.above - Math.sqrt(Math.max(0, x.below ** 2 - x.ownBelow ** 2)) - Math.sqrt(Math.max(0, x.above ** 2 - x.ownAbove ** 2)) })

/** Floor that nobody saw may leak as the floor that somebody did. */
export const unseenMore = formula({ id: 'unseen-more', says: 'sealing of what was seen · unseen ÷ seen', symbols: 'sealing * unseenFt2 / seenFt2', source: 'judgment: at most as many openings to the square foot as where somebody looked', args: { sealing: ['any', 0, LOTS], unseenFt2: ['ft2', 0, 1e6], seenFt2: ['ft2', 1, 1e6] }, gives: 'each', fn: x => x.sealing * x.unseenFt2 / x.seenFt2 })

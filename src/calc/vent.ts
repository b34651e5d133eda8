import { formula } from '../units/quantity.ts'
import { IN2_PER_FT2 } from '../units/convert.ts'

/** Net free area of attic vents. */

export const soffitFree = formula({ id: 'soffit-free', says: 'length · net free area of a foot', symbols: 'lengthFt * perFt', source: 'net free area as marked on the vent',
  args: { lengthFt: ['ft', 0, 5000], perFt: ['in2/ft', 0, 200] }, gives: 'in2', fn: x => x.lengthFt * x.perFt })

export const ventsFree = formula({ id: 'vents-free', says: 'how many · net free area of one', symbols: 'count * eachIn2', source: 'net free area as marked on the vent',
  args: { count: ['each', 0, 500], eachIn2: ['in2', 0, 5000] }, gives: 'in2', fn: x => x.count * x.eachIn2 })

export const freeNeeded = formula({ id: 'free-needed', says: 'attic floor · 144 ÷ ratio', symbols: 'areaFt2 * 144 / ratio', source: 'IRC R806.2: net free area of 1/150 of the vented space, 1/300 under conditions',
  args: { areaFt2: ['ft2', 0, 1e6], ratio: ['factor', 100, 400] }, gives: 'in2', fn: x => x.areaFt2 * IN2_PER_FT2 / x.ratio })

export const ventRatio = formula({ id: 'vent-ratio', says: 'attic floor · 144 ÷ net free area', symbols: 'areaFt2 * 144 / freeIn2', source: 'definition: one part of vent to so many parts of floor',
  args: { areaFt2: ['ft2', 0, 1e6], freeIn2: ['in2', 1, 1e6] }, gives: 'factor', fn: x => x.areaFt2 * IN2_PER_FT2 / x.freeIn2 })

export const shareOf = formula({ id: 'share-of-needed', says: 'share · needed', symbols: 'needed * share', source: 'IRC R806.2: shares of the required area, high and at the eaves',
  args: { needed: ['in2', 0, 1e6], share: ['fraction', 0, 1] }, gives: 'in2', fn: x => x.needed * x.share })

export const ventsToAdd = formula({ id: 'vents-to-add', says: '(needed − there, not below 0) ÷ net free area of one, up', symbols: 'up(max(0, needed - there) / eachIn2)', source: 'whole vents',
  args: { needed: ['in2', 0, 1e6], there: ['in2', 0, 1e6], eachIn2: ['in2', 1, 5000] }, gives: 'each', fn: x => Math.ceil(Math.max(0, x.needed - x.there) / x.eachIn2 - 1e-9) })

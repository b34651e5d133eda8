import { formula, listFormula } from '../units/quantity.ts'
import { halfUp, roundUp } from '../units/money.ts'

const LOTS = 1e9

/** The arithmetic of a list of work: amounts times rates, factors, roundings. */
export const product = formula({ id: 'product', says: 'length · width', symbols: 'length * width', source: 'geometry',
  args: { length: ['any', 0, LOTS], width: ['any', 0, LOTS] }, gives: 'ft2', fn: x => x.length * x.width })

export const times = formula({ id: 'times', says: 'amount · how many', symbols: 'amount * count', source: 'arithmetic',
  args: { amount: ['any', 0, LOTS], count: ['any', 0, LOTS] }, gives: 'each', fn: x => x.amount * x.count })

export const share = formula({ id: 'share', says: 'part ÷ whole', symbols: 'part / whole', source: 'arithmetic',
  args: { part: ['any', 0, LOTS], whole: ['any', 1e-9, LOTS] }, gives: 'fraction', fn: x => x.part / x.whole })

export const netOf = formula({ id: 'net-of', says: 'whole − left out', symbols: 'whole - leftOut', source: 'arithmetic',
  args: { whole: ['any', 0, LOTS], leftOut: ['any', 0, LOTS] }, gives: 'ft2', fn: x => x.whole - x.leftOut })

export const mean = listFormula({ id: 'mean', says: 'mean of the probes', symbols: 'mean', source: 'arithmetic', gives: 'in', ofList: v => v.reduce((a, b) => a + b, 0) / v.length })

export const personHours = formula({ id: 'person-hours', says: 'amount · rate · access factor', symbols: 'amount * rate * access', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { amount: ['any', 0, LOTS], rate: ['h/unit', 0, 100], access: ['factor', 1, 3] }, gives: 'h', fn: x => x.amount * x.rate * x.access })

export const hoursWithMore = formula({ id: 'hours-with-more', says: '(count · rate + amount over the first · rate for more) · access factor', symbols: '(count * rate + max(0, amount - upTo) * rateMore) * access',
  source: 'trade arithmetic: person-hours are quantity times rate',
  args: { count: ['any', 0, LOTS], rate: ['h/unit', 0, 100], amount: ['any', 0, LOTS], upTo: ['any', 0, LOTS], rateMore: ['h/unit', 0, 100], access: ['factor', 1, 3] },
  gives: 'h', fn: x => (x.count * x.rate + Math.max(0, x.amount - x.upTo) * x.rateMore) * x.access })

export const taskHours = formula({ id: 'task-hours', says: 'hours of the task, to 0.01 h, half up, before they are priced or summed', symbols: 'halfUp(hours, 0.01)', source: 'rounding rule of the estimate',
  args: { hours: ['h', 0, LOTS] }, gives: 'h', fn: x => halfUp(x.hours, 0.01) })

/** The access factors multiply; over the cap the work is priced by the day or a new access is opened. */
export const accessFactor = formula({ id: 'access-factor', says: 'headroom · old fill · webs · hatch · air temperature, at most the cap', symbols: 'min(cap, headroom * oldFill * webs * hatch * air)',
  source: 'judgment: starting access factors of the company file',
  args: { headroom: ['factor', 1, 3], oldFill: ['factor', 1, 3], webs: ['factor', 1, 3], hatch: ['factor', 1, 3], air: ['factor', 1, 3], cap: ['factor', 1, 3] },
  gives: 'factor', fn: x => Math.min(x.cap, x.headroom * x.oldFill * x.webs * x.hatch * x.air) })

export const blowFactor = formula({ id: 'blow-factor', says: '√ headroom factor', symbols: 'sqrt(headroom)', source: 'judgment: only the headroom slows the hose',
  args: { headroom: ['factor', 1, 3] }, gives: 'factor', fn: x => Math.sqrt(x.headroom) })

export const wholePacks = formula({ id: 'whole-packs', says: 'needed · (1 + waste) ÷ pack, up to whole packs', symbols: 'up(needed * (1 + wastePct / 100) / pack)', source: 'purchase unit of the price book',
  args: { needed: ['any', 0, LOTS], wastePct: ['pct', 0, 100], pack: ['any', 1e-6, LOTS] }, gives: 'each',
  fn: x => roundUp(x.needed * (1 + x.wastePct / 100) / x.pack) })

export const usedPacks = formula({ id: 'used-packs', says: 'needed · (1 + waste) ÷ pack, up to 0.01 pack', symbols: 'up(needed * (1 + wastePct / 100) / pack, 0.01)', source: 'purchase unit of the price book, charged as used',
  args: { needed: ['any', 0, LOTS], wastePct: ['pct', 0, 100], pack: ['any', 1e-6, LOTS] }, gives: 'each',
  fn: x => roundUp(x.needed * (1 + x.wastePct / 100) / x.pack, 0.01) })

export const netOfStock = formula({ id: 'net-of-stock', says: 'purchase units taken − on hand, not below 0, up to whole ones', symbols: 'up(max(0, packs - stock))', source: 'order of the company: what is on hand is used first',
  args: { packs: ['each', 0, LOTS], stock: ['each', 0, LOTS] }, gives: 'each', fn: x => roundUp(Math.max(0, x.packs - x.stock)) })

export const fromStock = formula({ id: 'from-stock', says: 'the lesser of purchase units taken and on hand', symbols: 'min(packs, stock)', source: 'order of the company: what is on hand is used first',
  args: { packs: ['each', 0, LOTS], stock: ['each', 0, LOTS] }, gives: 'each', fn: x => Math.min(x.packs, x.stock) })

export const thousandsOf = formula({ id: 'thousands', says: 'area ÷ 1,000', symbols: 'areaFt2 / 1000', source: 'unit of the rate table',
  args: { areaFt2: ['ft2', 0, 1e6] }, gives: 'factor', fn: x => x.areaFt2 / 1000 })

export const over = formula({ id: 'over', says: 'amount − what is free, not below 0', symbols: 'max(0, amount - free)', source: 'arithmetic',
  args: { amount: ['any', 0, LOTS], free: ['any', 0, LOTS] }, gives: 'in', fn: x => Math.max(0, x.amount - x.free) })

/** Beyond what the rate of setting a machine covers. */
export const hoseSteps = formula({ id: 'hose-steps', says: '(hose − what the rate covers) ÷ 50, up, not below 0, + stories − 1, up', symbols: 'max(0, up((hoseFt - freeFt) / stepFt)) + up(stories - 1)', source: 'judgment: each 50 ft of hose or story more',
  args: { hoseFt: ['ft', 0, 1000], freeFt: ['ft', 0, 1000], stepFt: ['ft', 1, 1000], stories: ['each', 1, 5] }, gives: 'each', fn: x => Math.max(0, Math.ceil((x.hoseFt - x.freeFt) / x.stepFt - 1e-9)) + Math.ceil(x.stories - 1 - 1e-9) })

export const capped = formula({ id: 'capped', says: 'factor, at most the cap', symbols: 'min(factor, most)', source: 'judgment: starting access factors of the company file',
  args: { factor: ['factor', 1, 3], most: ['factor', 1, 3] }, gives: 'factor', fn: x => Math.min(x.factor, x.most) })

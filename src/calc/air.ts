import { formula } from '../units/quantity.ts'
import { CFM_PER_M3_S, IN2_PER_M2, M_PER_FT } from '../units/convert.ts'

/** How the whole house leaks: areas, flows at 50 Pa, natural flow, stack pressure, and the air that people need. */

const LBL = 'power law of building leakage (ASTM E779) and its leakage area (ASHRAE Handbook Fundamentals, infiltration)'
/** Standard air [kg/m³]. */
const DENSITY = 1.2046
/** Flow through a square inch at a pressure [cfm/in²]. */
const flowOfIn2 = (pa: number, coefficient: number): number => coefficient * Math.sqrt(2 * pa / DENSITY) / IN2_PER_M2 * CFM_PER_M3_S

export const leakageArea = formula({ id: 'leakage-area', says: 'CFM50 · (pressure ÷ 50) ^ exponent ÷ (coefficient · √(2 · pressure ÷ density of air))', symbols: 'cfm50 * (pa / 50)^exponent / (coefficient * sqrt(2 * pa / 1.2046) * 0.0254^2 * 60 / 0.3048^3)', source: LBL,
  args: { cfm50: ['cfm', 0, 50000], exponent: ['factor', 0.5, 1], pa: ['Pa', 1, 50], coefficient: ['factor', 0.5, 1] }, gives: 'in2', fn: x => x.cfm50 * (x.pa / 50) ** x.exponent / flowOfIn2(x.pa, x.coefficient) })

/** The flow at 50 Pa of an effective leakage area at 4 Pa, coefficient 1. */
export const cfm50Of = formula({ id: 'cfm50-of', says: 'area · √(2 · 4 ÷ density of air) · (50 ÷ 4) ^ exponent', symbols: 'areaIn2 * sqrt(2 * 4 / 1.2046) * 0.0254^2 * 60 / 0.3048^3 * (50 / 4)^exponent', source: LBL,
  args: { areaIn2: ['in2', 0, 1e5], exponent: ['factor', 0.5, 1] }, gives: 'cfm', fn: x => x.areaIn2 * flowOfIn2(4, 1) * (50 / 4) ** x.exponent })

export const airChanges = formula({ id: 'air-changes', says: 'flow · 60 ÷ volume', symbols: 'cfm * 60 / volumeFt3', source: 'definition of air changes an hour',
  args: { cfm: ['cfm', 0, 50000], volumeFt3: ['ft3', 100, 1e6] }, gives: 'ACH', fn: x => x.cfm * 60 / x.volumeFt3 })

/** Two entries whose errors have nothing to do with each other. */
export const joinedSpread = formula({ id: 'joined-spread', says: '√(one² + other²)', symbols: 'sqrt(one^2 + other^2)', source: 'propagation of independent errors (JCGM 100, 5.1.2)',
  args: { one: ['in2', 0, 1e5], other: ['in2', 0, 1e5] }, gives: 'in2', fn: x => Math.hypot(x.one, x.other) })

export const above0 = formula({ id: 'above-0', says: 'expected − how far it may be off, not below 0', symbols: 'max(0, expected - spread)', source: 'arithmetic', args: { expected: ['in2', 0, 1e5], spread: ['in2', 0, 1e5] }, gives: 'in2', fn: x => Math.max(0, x.expected - x.spread) })
export const upTo = formula({ id: 'up-to', says: 'expected + how far it may be off', symbols: 'expected + spread', source: 'arithmetic', args: { expected: ['in2', 0, 1e5], spread: ['in2', 0, 1e5] }, gives: 'in2', fn: x => x.expected + x.spread })

/** The sum of parts runs over what a ceiling can leak: the whole house sets the end. */
export const cutCap = formula({ id: 'cut-cap', says: 'share that sealing stops · share of the ceiling · CFM50', symbols: 'stopped * ceiling * cfm50', source: 'shares of leakage by part of the house: ASHRAE Handbook Fundamentals (ceiling details 3 to 30 %, mean 18 %); judgment',
  args: { stopped: ['fraction', 0, 1], ceiling: ['fraction', 0, 1], cfm50: ['cfm', 0, 50000] }, gives: 'cfm', fn: x => x.stopped * x.ceiling * x.cfm50 })

export const lesser = formula({ id: 'lesser', says: 'the smaller of the two', symbols: 'min(sum, cap)', source: 'arithmetic', args: { sum: ['cfm', 0, 1e6], cap: ['cfm', 0, 1e6] }, gives: 'cfm', fn: x => Math.min(x.sum, x.cap) })
export const lessCut = formula({ id: 'less-cut', says: 'before − cut', symbols: 'before - cut', source: 'arithmetic', args: { before: ['cfm', 0, 1e6], cut: ['cfm', 0, 1e6] }, gives: 'cfm', fn: x => x.before - x.cut })

export const nFactor = formula({ id: 'n-factor', says: 'climate · height · shelter', symbols: 'climate * height * shelter', source: 'Sherman 1987 (LBL-21040); cracks of ordinary size',
  args: { climate: ['factor', 10, 30], height: ['factor', 0.5, 1], shelter: ['factor', 0.8, 1.3] }, gives: 'factor', fn: x => x.climate * x.height * x.shelter })
export const naturalByN = formula({ id: 'natural-by-n', says: 'CFM50 ÷ N', symbols: 'cfm50 / n', source: 'Sherman 1987 (LBL-21040)', args: { cfm50: ['cfm', 0, 50000], n: ['factor', 5, 40] }, gives: 'cfm', fn: x => x.cfm50 / x.n })

export const infiltration = formula({ id: 'infiltration', says: 'leakage area · √(stack · |inside − outside| + wind · speed²)', symbols: 'areaIn2 * sqrt(stack * deltaF + wind * speedMph^2)', source: 'ASHRAE Handbook Fundamentals 2001 ch. 26, basic model',
  args: { areaIn2: ['in2', 0, 5000], stack: ['factor', 0.01, 0.05], deltaF: ['°F', 0, 130], wind: ['factor', 0.001, 0.02], speedMph: ['mph', 0, 60] }, gives: 'cfm', fn: x => x.areaIn2 * Math.sqrt(x.stack * x.deltaF + x.wind * x.speedMph ** 2) })

/** Between the ends of the warm column. */
export const stackPressure = formula({ id: 'stack-pressure', says: '3465 · height [m] · (1 ÷ outside − 1 ÷ inside), in kelvin', symbols: '3465 * heightFt * 0.3048 * (1.8 / (outsideF + 459.67) - 1.8 / (insideF + 459.67))', source: 'ideal gas at 101.325 kPa; ASHRAE Handbook Fundamentals, airflow around and through buildings',
  args: { heightFt: ['ft', 0, 100], insideF: ['°F', 40, 100], outsideF: ['°F', -60, 120] }, gives: 'Pa', fn: x => 3465 * x.heightFt * M_PER_FT * (1 / kelvin(x.outsideF) - 1 / kelvin(x.insideF)) })
const kelvin = (f: number): number => (f + 459.67) / 1.8

/** Where inside and outside press alike: leaks joined at the top and at the bottom. */
export const neutralLevel = formula({ id: 'neutral-level', says: 'height · r ÷ (1 + r), r = (top ÷ bottom) ^ (1 ÷ exponent)', symbols: 'r = (top / bottom)^(1 / exponent); heightFt * r / (1 + r)', source: 'continuity: what leaves above enters below, power law in both',
  args: { heightFt: ['ft', 1, 100], top: ['fraction', 0.01, 1], bottom: ['fraction', 0.01, 1], exponent: ['factor', 0.5, 1] }, gives: 'ft', fn: x => { const r = (x.top / x.bottom) ** (1 / x.exponent); return x.heightFt * r / (1 + r) } })
/** Of what leaks besides the ceiling, half sits high and half low. */
export const leaksHigh = formula({ id: 'leaks-high', says: 'ceiling + (1 − ceiling) ÷ 2', symbols: 'ceiling + (1 - ceiling) / 2', source: 'judgment: what leaks besides the ceiling lies evenly over the height', args: { ceiling: ['fraction', 0, 0.95] }, gives: 'fraction', fn: x => x.ceiling + (1 - x.ceiling) / 2 })
export const leaksLow = formula({ id: 'leaks-low', says: '(1 − ceiling) ÷ 2', symbols: '(1 - ceiling) / 2', source: 'judgment: what leaks besides the ceiling lies evenly over the height', args: { ceiling: ['fraction', 0, 0.95] }, gives: 'fraction', fn: x => (1 - x.ceiling) / 2 })
export const ceilingShareAfter = formula({ id: 'ceiling-share-after', says: '(share · CFM50 − cut) ÷ (CFM50 − cut), not below 0', symbols: 'max(0, (share * cfm50 - cut) / (cfm50 - cut))', source: 'arithmetic', args: { share: ['fraction', 0, 1], cfm50: ['cfm', 1, 50000], cut: ['cfm', 0, 50000] }, gives: 'fraction', fn: x => Math.max(0, (x.share * x.cfm50 - x.cut) / (x.cfm50 - x.cut)) })
export const pressureAt = formula({ id: 'pressure-at', says: 'stack · (height − neutral level) ÷ height', symbols: 'stackPa * (heightFt - neutralFt) / heightFt', source: 'hydrostatics: pressure grows evenly with height', args: { stackPa: ['Pa', -50, 50], heightFt: ['ft', 1, 100], neutralFt: ['ft', 0, 100] }, gives: 'Pa', fn: x => x.stackPa * (x.heightFt - x.neutralFt) / x.heightFt })

/** Air for people, the whole house. */
export const ventilationTotal = formula({ id: 'ventilation-total', says: '0.03 · floor + 7.5 · (bedrooms + 1)', symbols: '0.03 * floorFt2 + 7.5 * (bedrooms + 1)', source: 'ASHRAE 62.2-2013 to 2019, equation 4-1 (from memory, high)', args: { floorFt2: ['ft2', 100, 1e5], bedrooms: ['each', 0, 30] }, gives: 'cfm', fn: x => 0.03 * x.floorFt2 + 7.5 * (x.bedrooms + 1) })
export const infiltrationCredit = formula({ id: 'infiltration-credit', says: '0.052 · CFM50 · weather factor · (height ÷ 8.2) ^ 0.4', symbols: '0.052 * cfm50 * wsf * (heightFt / 8.2)^0.4', source: 'ASHRAE 62.2, equations 4-2 and 4-3; Standard Work Specifications, calculation of the infiltration credit',
  args: { cfm50: ['cfm', 0, 50000], wsf: ['factor', 0.2, 1.5], heightFt: ['ft', 6, 60] }, gives: 'cfm', fn: x => 0.052 * x.cfm50 * x.wsf * (x.heightFt / 8.2) ** 0.4 })
/** 2013 and 2016, and where the fan is balanced: the credit in full. */
export const fanFull = formula({ id: 'fan-full', says: 'total + a quarter of the local deficit − credit · exterior share, not below 0', symbols: 'max(0, totalCfm + deficitCfm / 4 - creditCfm * exterior)', source: 'ASHRAE 62.2-2013 and 2016, existing houses (from memory, high)', args: { totalCfm: ['cfm', 0, 5000], deficitCfm: ['cfm', 0, 2000], creditCfm: ['cfm', 0, 5000], exterior: ['fraction', 0.1, 1] }, gives: 'cfm', fn: x => Math.max(0, x.totalCfm + x.deficitCfm / 4 - x.creditCfm * x.exterior) })
/** 2019, a fan that only blows out: it and the leaks share their air. */
export const fanShared = formula({ id: 'fan-shared', says: 'total + a quarter of the local deficit − (credit ÷ total) · credit · exterior share, not below 0', symbols: 'max(0, totalCfm + deficitCfm / 4 - min(1, creditCfm / totalCfm) * creditCfm * exterior)', source: 'ASHRAE 62.2-2019, equation 4-5; infiltration credit of an unbalanced fan', args: { totalCfm: ['cfm', 1, 5000], deficitCfm: ['cfm', 0, 2000], creditCfm: ['cfm', 0, 5000], exterior: ['fraction', 0.1, 1] }, gives: 'cfm',
  fn: x => Math.max(0, x.totalCfm + x.deficitCfm / 4 - Math.min(1, x.creditCfm / x.totalCfm) * x.creditCfm * x.exterior) })
export const localDeficit = formula({ id: 'local-deficit', says: 'air asked for − what the fan moves − 20 where a window opens, not below 0', symbols: 'max(0, askedCfm - fanCfm - 20 * window)', source: 'ASHRAE 62.2, existing houses: bath 50, kitchen 100 cfm on demand; the window’s 20 from memory, high', args: { askedCfm: ['cfm', 0, 500], fanCfm: ['cfm', 0, 5000], window: ['each', 0, 1] }, gives: 'cfm', fn: x => Math.max(0, x.askedCfm - x.fanCfm - 20 * x.window) })

export const inStories = formula({ id: 'in-stories', says: 'stories · height of one', symbols: 'stories * each', source: 'geometry', args: { stories: ['each', 1, 5], each: ['ft', 6, 15] }, gives: 'ft', fn: x => x.stories * x.each })
export const lessF = formula({ id: 'less-f', says: 'warm − cold, not below 0', symbols: 'max(0, warm - cold)', source: 'arithmetic', args: { warm: ['°F', -60, 140], cold: ['°F', -60, 140] }, gives: '°F', fn: x => Math.max(0, x.warm - x.cold) })
export const winterMean = formula({ id: 'winter-mean', says: '65 − degree days ÷ days of the heating season', symbols: '65 - degreeDays / days', source: 'definition of degree days, base 65 °F', args: { degreeDays: ['°F·day', 0, 20000], days: ['day', 160, 365] }, gives: '°F', fn: x => 65 - x.degreeDays / x.days })

import { formula } from '../units/quantity.ts'
import { HOURS_PER_DAY } from '../units/convert.ts'

/** What a better ceiling, tighter house and better ducts save in a year. Ranges come from the share that is realized, never from these formulas. */

const DEGREE_DAYS = 'degree-day method: heat = 24 · UA · degree days (DOE, state energy offices; ASHRAE Handbook Fundamentals)'
const DD = ['°F·day', 0, 20000] as const
const LOTS = 1e12

export const uaSaved = formula({ id: 'ua-saved', says: 'area · (U before − U after)', symbols: 'areaFt2 * (uBefore - uAfter)', source: 'definition of U', args: { areaFt2: ['ft2', 0, 1e6], uBefore: ['U', 0, 10], uAfter: ['U', 0, 10] }, gives: 'UA', fn: x => x.areaFt2 * (x.uBefore - x.uAfter) })

export const heatThrough = formula({ id: 'heat-through', says: '24 · UA · degree days', symbols: '24 * ua * degreeDays', source: DEGREE_DAYS, args: { ua: ['UA', 0, 1e6], degreeDays: DD }, gives: 'Btu', fn: x => HOURS_PER_DAY * x.ua * x.degreeDays })

/** 1.08 = 60 · 0.075 lb/ft³ · 0.24 Btu/lb·°F. */
export const heatOfAir = formula({ id: 'heat-of-air', says: '1.08 · cfm · 24 · degree days', symbols: '1.08 * cfm * 24 * degreeDays', source: 'sensible heat of standard air: ASHRAE Handbook Fundamentals', args: { cfm: ['cfm', 0, 1e5], degreeDays: DD }, gives: 'Btu', fn: x => 1.08 * x.cfm * HOURS_PER_DAY * x.degreeDays })

/** Gains warm the house below its set point, people turn it down: of the degree days only a share is paid for. */
export const realized = formula({ id: 'realized', says: 'by degree days · share that is realized', symbols: 'btu * share', source: 'judgment: NREL TP-253-2435 shows that the old correction factor is not the one for savings', args: { btu: ['Btu', 0, LOTS], share: ['fraction', 0, 1.5] }, gives: 'Btu', fn: x => x.btu * x.share })

export const burned = formula({ id: 'burned', says: 'heat ÷ (efficiency · delivery of the ducts)', symbols: 'btu / (efficiency * delivery)', source: 'definition of efficiency', args: { btu: ['Btu', 0, LOTS], efficiency: ['fraction', 0.2, 6], delivery: ['fraction', 0.05, 1] }, gives: 'Btu', fn: x => x.btu / (x.efficiency * x.delivery) })

/** What better ducts save of what is burned, once ceiling and air are better. */
export const ductsSave = formula({ id: 'ducts-save', says: 'what is burned · (1 − delivery before ÷ delivery after)', symbols: 'max(0, burnedBtu * (1 - before / after))', source: 'ASHRAE Standard 152 (from memory): delivery effectiveness; saving = 1 − old ÷ new', args: { burnedBtu: ['Btu', 0, LOTS], before: ['fraction', 0.05, 1], after: ['fraction', 0.05, 1] }, gives: 'Btu', fn: x => Math.max(0, x.burnedBtu * (1 - x.before / x.after)) })

export const leftToBurn = formula({ id: 'left-to-burn', says: 'a year’s fuel − what ceiling and air save, not below 0', symbols: 'max(0, yearBtu - savedBtu)', source: 'arithmetic', args: { yearBtu: ['Btu', 0, LOTS], savedBtu: ['Btu', 0, LOTS] }, gives: 'Btu', fn: x => Math.max(0, x.yearBtu - x.savedBtu) })

export const yearByBill = formula({ id: 'year-by-bill', says: 'bill ÷ price of a unit · heat of a unit', symbols: 'billCents / unitCents * unitBtu', source: 'arithmetic', args: { billCents: ['cents', 0, 1e8], unitCents: ['cents', 0.1, 1e6], unitBtu: ['Btu', 1, 1e8] }, gives: 'Btu', fn: x => x.billCents / x.unitCents * x.unitBtu })
export const yearByFloor = formula({ id: 'year-by-floor', says: 'floor · Btu for a square foot and degree day · degree days ÷ efficiency', symbols: 'floorFt2 * index * degreeDays / efficiency', source: 'judgment: heating index of older houses', args: { floorFt2: ['ft2', 100, 1e5], index: ['Btu/ft2·DD', 1, 30], degreeDays: DD, efficiency: ['fraction', 0.2, 6] }, gives: 'Btu', fn: x => x.floorFt2 * x.index * x.degreeDays / x.efficiency })
export const mostSaved = formula({ id: 'most-saved', says: 'a year’s fuel · share that may be claimed', symbols: 'yearBtu * share', source: 'judgment: a cap keeps parts that are right each from adding up to what no house saves', args: { yearBtu: ['Btu', 0, LOTS], share: ['fraction', 0, 1] }, gives: 'Btu', fn: x => x.yearBtu * x.share })
export const capped = formula({ id: 'saving-capped', says: 'the smaller of the two', symbols: 'min(saved, cap)', source: 'arithmetic', args: { saved: ['Btu', 0, LOTS], cap: ['Btu', 0, LOTS] }, gives: 'Btu', fn: x => Math.min(x.saved, x.cap) })
/** Of what the cap leaves, each part keeps its proportion. */
export const inProportion = formula({ id: 'in-proportion', says: 'part · capped ÷ uncapped', symbols: 'uncapped == 0 ? 0 : part * capped / uncapped', source: 'arithmetic', args: { part: ['Btu', 0, LOTS], capped: ['Btu', 0, LOTS], uncapped: ['Btu', 0, LOTS] }, gives: 'Btu', fn: x => (x.uncapped === 0 ? 0 : x.part * x.capped / x.uncapped) })

export const units = formula({ id: 'fuel-units', says: 'heat ÷ heat of a unit', symbols: 'btu / unitBtu', source: 'heat content of fuels (EIA)', args: { btu: ['Btu', 0, LOTS], unitBtu: ['Btu', 1, 1e8] }, gives: 'each', fn: x => x.btu / x.unitBtu })
export const worth = formula({ id: 'worth', says: 'units · price of a unit', symbols: 'amount * unitCents', source: 'arithmetic', args: { amount: ['any', 0, 1e9], unitCents: ['cents', 0, 1e6] }, gives: 'cents', fn: x => x.amount * x.unitCents })
export const gasOf = formula({ id: 'co2', says: 'units · CO2 of a unit', symbols: 'amount * lbEach', source: 'emission coefficients of fuels (EIA)', args: { amount: ['any', 0, 1e9], lbEach: ['lb', 0, 100] }, gives: 'lb', fn: x => x.amount * x.lbEach })

/** The attic is hotter than the air outdoors: low for dark roofs. */
export const cooled = formula({ id: 'cooled', says: 'heat kept out ÷ (1000 · SEER)', symbols: 'btu / (1000 * seer)', source: 'regulatory savings manuals (from memory): cooling by degree days', args: { btu: ['Btu', 0, LOTS], seer: ['factor', 5, 40] }, gives: 'kWh', fn: x => x.btu / (1000 * x.seer) })

export const heatByFloor = formula({ id: 'heat-by-floor', says: 'floor · Btu for a square foot and degree day · degree days', symbols: 'floorFt2 * index * degreeDays', source: 'judgment: heat that older houses take in', args: { floorFt2: ['ft2', 100, 1e5], index: ['Btu/ft2·DD', 1, 30], degreeDays: DD }, gives: 'Btu', fn: x => x.floorFt2 * x.index * x.degreeDays })
/** The cap shrinks with what is realized: a range stays one. */
export const kwhRealized = formula({ id: 'kwh-realized', says: 'a year’s kWh · share that is realized', symbols: 'kwh * share', source: 'arithmetic', args: { kwh: ['kWh', 0, 1e6], share: ['fraction', 0, 1.5] }, gives: 'kWh', fn: x => x.kwh * x.share })
export const kwhByBill = formula({ id: 'kwh-by-bill', says: 'bill ÷ price of a kWh', symbols: 'billCents / unitCents', source: 'arithmetic', args: { billCents: ['cents', 0, 1e8], unitCents: ['cents', 0.1, 1e4] }, gives: 'kWh', fn: x => x.billCents / x.unitCents })
export const kwhCapped = formula({ id: 'kwh-capped', says: 'the smaller of what is saved and a share of the year', symbols: 'min(saved, yearKwh * share)', source: 'judgment: a cap keeps parts that are right each from adding up to what no house saves', args: { saved: ['kWh', 0, 1e6], yearKwh: ['kWh', 0, 1e6], share: ['fraction', 0, 1] }, gives: 'kWh', fn: x => Math.min(x.saved, x.yearKwh * x.share) })

export const payback = formula({ id: 'payback', says: 'price ÷ saving of a year', symbols: 'priceCents / yearCents', source: 'simple payback: DOE, insulation fact sheet', args: { priceCents: ['cents', 0, LOTS], yearCents: ['cents', 1e-6, LOTS] }, gives: 'year', fn: x => x.priceCents / x.yearCents })
export const shareOf = formula({ id: 'share-of', says: 'price · direct cost of the part ÷ direct cost of all parts', symbols: 'priceCents * part / all', source: 'judgment: what serves the whole visit is spread over its parts by their direct cost', args: { priceCents: ['cents', 0, LOTS], part: ['cents', 0, LOTS], all: ['cents', 1e-6, LOTS] }, gives: 'cents', fn: x => x.priceCents * x.part / x.all })

// Ducts through the attic

export const leakAt = formula({ id: 'duct-leak-at', says: 'CFM25 · (pressure ÷ 25) ^ 0.6', symbols: 'cfm25 * (pa / 25)^0.6', source: 'power law of duct leakage, exponent 0.6 (from memory, high)', args: { cfm25: ['cfm', 0, 10000], pa: ['Pa', 1, 250] }, gives: 'cfm', fn: x => x.cfm25 * (x.pa / 25) ** 0.6 })
export const leakLeft = formula({ id: 'duct-leak-left', says: 'leak · (1 − share that sealing stops)', symbols: 'cfm * (1 - stopped)', source: 'arithmetic', args: { cfm: ['cfm', 0, 10000], stopped: ['fraction', 0, 1] }, gives: 'cfm', fn: x => x.cfm * (1 - x.stopped) })
export const tempRise = formula({ id: 'temp-rise', says: 'output ÷ (1.08 · air)', symbols: 'outputBtuh / (1.08 * cfm)', source: 'sensible heat of standard air: ASHRAE Handbook Fundamentals', args: { outputBtuh: ['Btu/h', 1000, 1e6], cfm: ['cfm', 50, 20000] }, gives: '°F', fn: x => x.outputBtuh / (1.08 * x.cfm) })
/** Share of its heat that air keeps on its way. */
export const kept = formula({ id: 'duct-kept', says: 'e ^ (−UA ÷ (1.08 · air))', symbols: 'exp(-ua / (1.08 * cfm))', source: 'ASHRAE Standard 152 (from memory): conduction fraction', args: { ua: ['UA', 0, 1e4], cfm: ['cfm', 50, 20000] }, gives: 'fraction', fn: x => Math.exp(-x.ua / (1.08 * x.cfm)) })
export const deliveryEffectiveness = formula({ id: 'delivery', says: 'a · B − a · B · (1 − b · C) · (inside − attic) ÷ rise − a · (1 − B) · (inside − attic) ÷ rise; a, b what reaches the rooms and comes back, B, C what supply and return keep', symbols: 'a = (cfm - supplyLeak) / cfm; b = (cfm - returnLeak) / cfm; pull = (insideF - atticF) / riseF; min(1, max(0.05, a * supplyKept - a * supplyKept * (1 - returnKept * b) * pull - a * (1 - supplyKept) * pull))', source: 'ASHRAE Standard 152, delivery effectiveness in heating (from memory, high)',
  args: { supplyLeak: ['cfm', 0, 10000], returnLeak: ['cfm', 0, 10000], cfm: ['cfm', 50, 20000], supplyKept: ['fraction', 0.01, 1], returnKept: ['fraction', 0.01, 1], insideF: ['°F', 40, 90], atticF: ['°F', -60, 140], riseF: ['°F', 10, 150] }, gives: 'fraction',
  fn: x => {
    const a = (x.cfm - x.supplyLeak) / x.cfm, b = (x.cfm - x.returnLeak) / x.cfm, pull = (x.insideF - x.atticF) / x.riseF
    return Math.min(1, Math.max(0.05, a * x.supplyKept - a * x.supplyKept * (1 - x.returnKept * b) * pull - a * (1 - x.supplyKept) * pull))
  } })

/** Magnus form over water. */
export const dewPoint = formula({ id: 'dew-point', says: '243.04 · g ÷ (17.625 − g), g = ln(humidity) + 17.625 · t ÷ (243.04 + t), in °C', symbols: 't = (airF - 32) / 1.8; g = log(humidity) + 17.625 * t / (243.04 + t); 243.04 * g / (17.625 - g) * 1.8 + 32', source: 'Alduchov and Eskridge 1996, improved Magnus form (from memory, high)', args: { airF: ['°F', -20, 110], humidity: ['fraction', 0.01, 1] }, gives: '°F',
  fn: x => { const t = (x.airF - 32) / 1.8, g = Math.log(x.humidity) + 17.625 * t / (243.04 + t); return 243.04 * g / (17.625 - g) * 1.8 + 32 } })

export const fanByFloor = formula({ id: 'fan-by-floor', says: 'floor · air for a square foot', symbols: 'floorFt2 * perFt2', source: 'judgment', args: { floorFt2: ['ft2', 100, 1e5], perFt2: ['factor', 0.1, 3] }, gives: 'cfm', fn: x => x.floorFt2 * x.perFt2 })
export const outputByFloor = formula({ id: 'output-by-floor', says: 'floor · output for a square foot', symbols: 'floorFt2 * perFt2', source: 'judgment', args: { floorFt2: ['ft2', 100, 1e5], perFt2: ['factor', 5, 100] }, gives: 'Btu/h', fn: x => x.floorFt2 * x.perFt2 })
/** Not all of a system lies up there. */
export const ductsUp = formula({ id: 'ducts-up', says: 'ducts listed ÷ (floor · duct for a square foot), at most 1', symbols: 'min(1, skinFt2 / (floorFt2 * perFt2))', source: 'ASHRAE Standard 152, default duct surface (from memory, medium)', args: { skinFt2: ['ft2', 0, 1e5], floorFt2: ['ft2', 100, 1e5], perFt2: ['factor', 0.01, 1] }, gives: 'fraction', fn: x => Math.min(1, x.skinFt2 / (x.floorFt2 * x.perFt2)) })
export const ductLeakUp = formula({ id: 'duct-leak-up', says: 'leak · share of the ducts that lies there', symbols: 'cfm * share', source: 'judgment: ducts leak alike along their length', args: { cfm: ['cfm', 0, 10000], share: ['fraction', 0, 1] }, gives: 'cfm', fn: x => x.cfm * x.share })

export const defaultLeak = formula({ id: 'duct-leak-default', says: 'air moved · share that leaks', symbols: 'cfm * share', source: 'ASHRAE Standard 152, default leakage (from memory, medium)', args: { cfm: ['cfm', 50, 20000], share: ['fraction', 0, 0.5] }, gives: 'cfm', fn: x => x.cfm * x.share })

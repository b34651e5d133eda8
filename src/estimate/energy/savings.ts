// What the plan saves in a year: ceiling, air and ducts together, as ranges, with what they leave out. Nothing is guessed where the file is silent.
import { burned, capped, ductLeakUp, ductsUp, kwhRealized, cooled, deliveryEffectiveness, dewPoint, ductsSave, gasOf, heatByFloor, heatOfAir, heatThrough, inProportion, kept, kwhByBill, kwhCapped, leakAt, leakLeft, leftToBurn, mostSaved, outputByFloor, payback, realized, tempRise, uaSaved, units, worth, yearByBill, yearByFloor, fanByFloor, defaultLeak } from '../../calc/energy.ts'
import { ductU, suppliedUa } from '../../calc/duct.ts'
import type { Books } from '../../books/books.ts'
import { cents } from '../../units/money.ts'
import type { JobFile } from '../../job/job-file.ts'
import { degreeDaysOf } from '../../reference/climate.ts'
import { energyPrices } from '../../reference/energy-prices.ts'
import { carbon, fuels } from '../../reference/fuels.ts'
import { fromRow, sourceOf } from '../../reference/table.ts'
import { ENDS, ranged, type End, type Range } from '../../scope/air-cut.ts'
import { assumed, exactly, given, row, total, totalOf, work, type Quantity } from '../../units/quantity.ts'
import type { Step } from '../tasks/order.ts'
import { partIds, type PartId } from '../money/part-prices.ts'
import type { Taken } from '../tasks/takeoff.ts'
import { roomsF, winterMeanF } from './winter.ts'

type Figures = Readonly<Record<string, unknown>>
interface Plan { readonly taken: Taken; readonly steps: readonly Step[]; readonly uas: readonly { readonly id: string; readonly areaFt2: Quantity<'ft2'>; readonly uBefore: Quantity<'U'>; readonly uAfter: Quantity<'U'> }[]
  readonly naturalCut?: Range<'cfm'>; readonly prices: Partial<Record<PartId, Quantity<'cents'>>>; readonly totalCents?: Quantity<'cents'> }
export interface Savings { readonly savings?: Figures; readonly ductDelivery?: Figures; readonly moisture?: Figures }

// Ducts

interface Delivery { readonly before: Quantity<'fraction'>; readonly after: Range<'fraction'> }

/** Four cases through the attic, in heating: why ducts are sealed before they are wrapped. */
function duct(job: JobFile, { taken, steps }: Plan, books: Books): { figures: Figures; average: Delivery } | undefined {
  const { energy, house, tests } = job
  if (taken.ducts.length === 0) return undefined
  const heating = energy?.heating, floorFt2 = house.floorAreaFt2 === undefined ? undefined : given(house.floorAreaFt2, 'ft2', '/house/floorAreaFt2')
  const cfm = heating?.fanCfm !== undefined ? given(heating.fanCfm, 'cfm', '/energy/heating/fanCfm') : floorFt2 && work(fanByFloor, { floorFt2, perFt2: books.start('fan-flow', 0.55, 'factor', 'cfm that an air handler moves for a square foot of floor', 'judgment; its flow was not measured') })
  const output = heating?.outputBtuh !== undefined ? given(heating.outputBtuh, 'Btu/h', '/energy/heating/outputBtuh') : floorFt2 && work(outputByFloor, { floorFt2, perFt2: books.start('heat-output', 33, 'factor', 'Btu/h of heat output for a square foot of floor', 'judgment; not in the file') })
  if (!cfm || !output) return undefined
  const films = books.start('duct-films', 0.85, 'R', 'films inside and outside a duct', 'a trade association’s duct guide after ASHRAE 2009; a handbook chart for bare metal gives U 0.73, R 1.37')
  const done = (d: Taken['ducts'][number], phase: 'ducts' | 'wrap'): boolean => steps.some(s => s.phase === phase && s.parts.some(p => d.measure.tasks.includes(p)))
  const uaOf = (use: 'supply' | 'return', wrapped: boolean) => totalOf('UA', taken.ducts.filter(d => d.found.item.use === use), d => {
    const after = wrapped && done(d, 'wrap') ? d.measure.wrapFigures['rAfter'] as Quantity<'R'> | undefined : undefined
    return [d.found.id, work(suppliedUa, { skinFt2: d.measure.figures['surfaceFt2'] as Quantity<'ft2'>, u: work(ductU, { insulationR: after ?? d.measure.figures['rBefore'] as Quantity<'R'>, films }) })]
  })
  const q25 = tests?.cfm25Outside !== undefined ? given(tests.cfm25Outside, 'cfm', '/tests/cfm25Outside')
    : tests?.cfm25Total !== undefined ? work(leakLeft, { cfm: given(tests.cfm25Total, 'cfm', '/tests/cfm25Total'), stopped: books.start('duct-leak-inside', 0.2, 'fraction', 'share of duct leakage that stays in the house', 'judgment; only all leakage was measured') }) : undefined
  const pa = books.start('duct-pressure', 25, 'Pa', 'pressure at which ducts leak in use', 'judgment')
  const uses = (['supply', 'return'] as const).filter(use => taken.ducts.some(d => d.found.item.use === use)), perFt2 = { supply: books.start('supply-surface', 0.27, 'factor', 'supply duct of a whole system, for a square foot of floor', 'ASHRAE 152 default (from memory, medium)'), return: books.start('return-surface', 0.05, 'factor', 'return duct of a whole system, for a square foot of floor', 'ASHRAE 152 default for one return (from memory, medium)') }
  // A side that has no duct up there leaks nothing into the attic. Measured to the outside it is all of it, on the sides that are there.
  const found = (use: 'supply' | 'return'): Quantity<'cfm'> => {
    if (!uses.includes(use)) return exactly(0, 'cfm', `no ${use} duct in the attic`)
    if (q25) return work(leakLeft, { cfm: work(leakAt, { cfm25: q25, pa }), stopped: exactly(1 - 1 / uses.length, 'fraction', uses.length === 1 ? 'all of it on the side that is there' : 'half of it on each side') })
    const whole = work(defaultLeak, { cfm, share: books.start('duct-leak-default', 0.11, 'fraction', 'duct leakage on each side where nobody measured it, of the air moved', 'ASHRAE 152 default (from memory, medium)') })
    return floorFt2 ? work(ductLeakUp, { cfm: whole, share: work(ductsUp, { skinFt2: totalOf('ft2', taken.ducts.filter(d => d.found.item.use === use), d => [d.found.id, d.measure.figures['surfaceFt2'] as Quantity<'ft2'>]), floorFt2, perFt2: perFt2[use] }) }) : whole
  }
  const asFound = { supply: found('supply'), return: found('return') }
  const stops: Range<'fraction'> = { low: books.start('duct-sealing-low', 0.25, 'fraction', 'share of duct leakage that sealing stops, at least', 'LBNL: median of weatherization programs'), expected: books.start('duct-sealing', 0.59, 'fraction', 'share of duct leakage that sealing stops', 'NREL, Raleigh: 40 units sealed by hand, leakage to outside less by 59 %'), high: books.start('duct-sealing-high', 0.75, 'fraction', 'share of duct leakage that sealing stops, at most', 'LBNL: median of efficiency programs in California') }
  const sealing = taken.ducts.some(d => done(d, 'ducts')), wrapping = taken.ducts.some(d => done(d, 'wrap') || (done(d, 'ducts') && d.measure.wrapFigures['rAfter'] !== undefined))
  const leak = (use: 'supply' | 'return', end: End | undefined): Quantity<'cfm'> => (end === undefined || !sealing ? asFound[use] : work(leakLeft, { cfm: asFound[use], stopped: stops[end] }))
  const bothSides = (end: End | undefined) => total('cfm', { supply: leak('supply', end), return: leak('return', end) })
  const insideF = roomsF(books), riseF = work(tempRise, { outputBtuh: output, cfm })
  const of = (end: End | undefined, wrapped: boolean, atticF: Quantity<'°F'>) => work(deliveryEffectiveness, { supplyLeak: leak('supply', end), returnLeak: leak('return', end), cfm, supplyKept: work(kept, { ua: uaOf('supply', wrapped), cfm }), returnKept: work(kept, { ua: uaOf('return', wrapped), cfm }), insideF, atticF, riseF })
  const design = energy?.winterDesignF === undefined ? books.start('duct-attic', 20, '°F', 'attic around ducts in heating') : given(energy.winterDesignF, '°F', '/energy/winterDesignF'), mean = winterMeanF(job, books)
  const cases = [{ id: 'as-found', end: undefined, wrapped: false }, ...(wrapping ? [{ id: 'wrap-only', end: undefined, wrapped: true }] : []), ...(sealing ? [{ id: 'seal-only', end: 'expected' as const, wrapped: false }] : []), ...(sealing && wrapping ? [{ id: 'both', end: 'expected' as const, wrapped: true }] : [])]
  return {
    average: { before: of(undefined, false, mean), after: ranged(end => of(end, wrapping, mean)) },
    figures: { airCfm: cfm, leakCfmBefore: bothSides(undefined), ...(sealing ? { leakCfmAfter: bothSides('expected') } : {}), cases: cases.map(c => ({ id: c.id, designShare: of(c.end, c.wrapped, design), averageShare: of(c.end, c.wrapped, mean) })) },
  }
}

// Fuel

const PRICED_BY_STATE = ['gas', 'oil', 'electric', 'heat-pump'] as const

/** Given, else the state's dated mean, marked. */
function unitCents(fuel: string, price: number | undefined, at: string, state: string): Quantity<'cents'> | undefined {
  if (price !== undefined) return given(cents(price), 'cents', at)
  const r = energyPrices.rows.find(x => x.state === state)
  if (!r || !(PRICED_BY_STATE as readonly string[]).includes(fuel)) return undefined
  const value = fuel === 'gas' ? r.gasUsdPerTherm === undefined ? undefined : cents(r.gasUsdPerTherm) : fuel === 'oil' ? cents(r.oilUsdPerGal) : r.electricCentsPerKwh
  return value === undefined ? undefined : assumed(`price-${fuel === 'heat-pump' ? 'electric' : fuel}`, value, 'cents', `price of a ${fuel === 'gas' ? 'therm of gas' : fuel === 'oil' ? 'gallon of oil' : 'kWh'} in ${state}`, `${energyPrices.source}; the file gives none`)
}

/** A bill bounds a saving better than a year that is computed from the floor. */
const mostShare = (bill: number | undefined, books: Books): Quantity<'fraction'> => (bill === undefined ? books.start('saving-cap', 0.25, 'fraction', 'most of a computed year that is claimed as saved', 'judgment')
  : books.start('saving-cap-bill', 0.35, 'fraction', 'most of the yearly bill that is claimed as saved', 'judgment'))

export function yearlySavings(job: JobFile, plan: Plan, books: Books): Savings {
  const { energy, house } = job
  const ducts = duct(job, plan, books), heatLeft = moisture(job, books)
  const beside = { ...(ducts ? { ductDelivery: ducts.figures } : {}), ...(heatLeft ? { moisture: heatLeft } : {}) }
  if (!energy) return beside
  const missing: string[] = []
  const days = degreeDaysOf(energy, house.state)
  if (!energy.heating) missing.push('energy.heating: what heats the house')
  if (days.hdd65 === undefined) missing.push(`energy.degreeDays or energy.station: no mean of ${house.state} is at hand (lidwork tables stations lists the stations)`)
  const heating = energy.heating, fuel = heating && fuels.rows.find(r => r.fuel === heating.fuel)!
  const price = heating && unitCents(heating.fuel, heating.price, '/energy/heating/price', house.state)
  if (heating && !price) missing.push(`energy.heating.price: no price of ${heating.fuel} is at hand`)
  if (heating && heating.yearlyBill === undefined && house.floorAreaFt2 === undefined) missing.push('house.floorAreaFt2 or energy.heating.yearlyBill: without them nothing bounds the saving')
  if (!plan.naturalCut) missing.push('tests.cfm50 and house.stories: what sealing saves is not in these figures')
  if (!heating || !fuel || !price || days.hdd65 === undefined || (heating.yearlyBill === undefined && house.floorAreaFt2 === undefined)) return { ...beside, savings: { missing } }

  const hdd = days.hdd65, efficiency = given(heating.efficiency, 'fraction', '/energy/heating/efficiency'), unitBtu = fromRow(fuels, fuel, fuel.btu, 'Btu', fuel.fuel)
  const share: Range<'fraction'> = {
    low: books.start('realization-low', 0.6, 'fraction', 'share of the degree-day saving that is realized, at least', 'judgment, by what field studies find'), expected: books.start('realization', 0.8, 'fraction', 'share of the degree-day saving that is realized', 'judgment, by what field studies find'),
    high: books.start('realization-high', 1, 'fraction', 'share of the degree-day saving that is realized, at most', 'judgment, by what field studies find'),
  }
  const ua = totalOf('UA', plan.uas, a => [a.id, work(uaSaved, { areaFt2: a.areaFt2, uBefore: a.uBefore, uAfter: a.uAfter.value > a.uBefore.value ? a.uBefore : a.uAfter })])
  const nothing = exactly(1, 'fraction', 'no ducts in the attic'), before = ducts?.average.before ?? nothing, after = (end: End) => ducts?.average.after[end] ?? nothing
  const yearBtu = heating.yearlyBill === undefined ? work(yearByFloor, { floorFt2: given(house.floorAreaFt2!, 'ft2', '/house/floorAreaFt2'), index: books.start('heating-index', 8, 'Btu/ft2·DD', 'heat of an older house for a square foot and degree day', 'judgment; no bill in the file'), degreeDays: hdd, efficiency })
    : work(yearByBill, { billCents: given(cents(heating.yearlyBill), 'cents', '/energy/heating/yearlyBill'), unitCents: price, unitBtu })
  const most = work(mostSaved, { yearBtu, share: mostShare(heating.yearlyBill, books) })

  /** In the order of the plan: what air saves first, then ducts on what is left, then the ceiling through better ducts. */
  const parts = (end: End): Record<PartId, Quantity<'Btu'>> => {
    const air = plan.naturalCut ? work(burned, { btu: work(realized, { btu: work(heatOfAir, { cfm: plan.naturalCut[end], degreeDays: hdd }), share: share[end] }), efficiency, delivery: before }) : exactly(0, 'Btu', 'nobody measured how the house leaks')
    const duct = ducts ? work(ductsSave, { burnedBtu: work(leftToBurn, { yearBtu, savedBtu: air }), before, after: after(end) }) : exactly(0, 'Btu', 'no ducts in the attic')
    return { air, ducts: duct, ceiling: work(burned, { btu: work(realized, { btu: work(heatThrough, { ua, degreeDays: hdd }), share: share[end] }), efficiency, delivery: after(end) }) }
  }
  const uncapped = Object.fromEntries(ENDS.map(end => { const p = parts(end); return [end, { parts: p, sum: total('Btu', p) }] })) as Record<End, { parts: Record<PartId, Quantity<'Btu'>>; sum: Quantity<'Btu'> }>
  const capAt = (end: End) => work(capped, { saved: work(realized, { btu: most, share: share[end] }), cap: most })
  const heating3 = ranged(end => work(capped, { saved: uncapped[end].sum, cap: capAt(end) })), unitsOf = (btu: Quantity<'Btu'>) => work(units, { btu, unitBtu })
  const billOf = (btu: Quantity<'Btu'>) => work(worth, { amount: unitsOf(btu), unitCents: price })

  // Summer
  const seer = energy.cooling && given(energy.cooling.seer, 'factor', '/energy/cooling/seer'), kwhCents = energy.cooling && unitCents('electric', energy.cooling.price, '/energy/cooling/price', house.state), cdd = days.cdd65
  const summerShare = mostShare(energy.cooling?.yearlyBill, books)
  const bought = energy.cooling?.yearlyBill
  const summer = seer && kwhCents && cdd && (bought !== undefined ? work(kwhByBill, { billCents: given(cents(bought), 'cents', '/energy/cooling/yearlyBill'), unitCents: kwhCents })
    : house.floorAreaFt2 === undefined ? undefined : work(cooled, { btu: work(heatByFloor, { floorFt2: given(house.floorAreaFt2, 'ft2', '/house/floorAreaFt2'), index: books.start('cooling-index', 8, 'Btu/ft2·DD', 'heat that an older house takes in for a square foot and cooling degree day', 'judgment; no bill in the file'), degreeDays: cdd }), seer }))
  const cool = seer && kwhCents && cdd && summer ? ranged(end => work(kwhCapped, { saved: work(cooled, { btu: work(realized, { btu: total('Btu', { ceiling: work(heatThrough, { ua, degreeDays: cdd }), ...(plan.naturalCut ? { air: work(heatOfAir, { cfm: plan.naturalCut[end], degreeDays: cdd }) } : {}) }), share: share[end] }), seer }), yearKwh: work(kwhRealized, { kwh: summer, share: share[end] }), share: summerShare })) : undefined
  if (energy.cooling && !cool) missing.push(!cdd ? 'energy.degreeDays.cdd65: summer is not in these figures' : !kwhCents ? 'energy.cooling.price: no price of a kWh is at hand' : 'house.floorAreaFt2 or energy.cooling.yearlyBill: summer is not in these figures')
  const bill = ranged(end => total('cents', { heating: billOf(heating3[end]), ...(cool && kwhCents ? { cooling: work(worth, { amount: cool[end], unitCents: kwhCents }) } : {}) }))
  const gas = carbon.rows.find(r => r.fuel === fuel.fuel), co2 = gas && ranged(end => work(gasOf, { amount: unitsOf(heating3[end]), lbEach: row(gas.co2Lb, 'lb', `carbon-dioxide: ${gas.fuel}`, sourceOf(carbon, gas)) }))

  const years = (priceCents: Quantity<'cents'> | undefined, yearCents: Quantity<'cents'>): Quantity<'year'> | undefined => {
    if (!priceCents || yearCents.value <= 0) return undefined
    const y = work(payback, { priceCents, yearCents })
    return y.value > books.start('payback-most', 50, 'year', 'payback beyond which no number is printed', 'judgment').value ? undefined : y
  }
  const named = <K extends string>(key: K, q: Quantity | undefined) => (q ? { [key]: q } : {})
  const shown = (id: PartId) => ({ id, heatingBtu: work(inProportion, { part: uncapped.expected.parts[id], capped: heating3.expected, uncapped: uncapped.expected.sum }) })
  return {
    ...beside,
    savings: {
      fuel: heating.fuel, fuelUnit: fuel.unit, hdd65: hdd, ...(cdd ? { cdd65: cdd } : {}), degreeDaysFrom: days.from,
      heatingBtuLow: heating3.low, heatingBtuExpected: heating3.expected, heatingBtuHigh: heating3.high, fuelUnitsLow: unitsOf(heating3.low), fuelUnitsExpected: unitsOf(heating3.expected), fuelUnitsHigh: unitsOf(heating3.high),
      ...(cool ? { coolingKwhLow: cool.low, coolingKwhExpected: cool.expected, coolingKwhHigh: cool.high } : {}),
      billCentsLow: bill.low, billCentsExpected: bill.expected, billCentsHigh: bill.high, ...(co2 ? { co2LbLow: co2.low, co2LbExpected: co2.expected, co2LbHigh: co2.high } : {}),
      capped: ENDS.some(end => heating3[end].value < uncapped[end].sum.value), ...named('paybackYearsLow', years(plan.totalCents, bill.high)), ...named('paybackYearsExpected', years(plan.totalCents, bill.expected)), ...named('paybackYearsHigh', years(plan.totalCents, bill.low)),
      parts: partIds.filter(id => uncapped.expected.parts[id].value > 0 || plan.prices[id]).map(id => {
        const { heatingBtu } = shown(id), billCents = billOf(heatingBtu), priceCents = plan.prices[id]
        return { id, heatingBtu, billCents, ...named('priceCents', priceCents), ...named('paybackYears', years(priceCents, billCents)) }
      }),
      missing,
    },
  }
}

/** Indoor air against a cold roof deck: air that still leaks up there gives off its water. */
function moisture(job: JobFile, books: Books): Figures | undefined {
  if (!job.energy) return undefined
  const dewPointF = work(dewPoint, { airF: roomsF(books), humidity: books.start('inside-humidity', 0.4, 'fraction', 'relative humidity of the rooms in winter', 'judgment; not measured') })
  const deckF = winterMeanF(job, books)
  return { dewPointF, deckF }
}

// Units, air and money against libraries that were made for them by others.
import { Decimal } from 'decimal.js'
// @ts-expect-error a library without types
import Qty from 'js-quantities'
// @ts-expect-error a library without types
import psychrometrics from 'psychrolib'
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { airCarried, airLeaving, heatLost, onDuct } from '../../src/calc/duct.ts'
import { cfm50Of, leakageArea, stackPressure } from '../../src/calc/air.ts'
import { dewPoint, heatOfAir, heatThrough, tempRise } from '../../src/calc/energy.ts'
import { plug } from '../../src/calc/seal.ts'
import { infiltrationHeights, shelters } from '../../src/reference/infiltration.ts'
import { fuels } from '../../src/reference/fuels.ts'
import * as convert from '../../src/units/convert.ts'
import { readNumber } from '../../src/units/tape.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { lidwork } from '../cli/test-io.ts'
import { onHouses } from '../property/job.ts'

interface Quantity { to(unit: string): Quantity; mul(other: Quantity | number): Quantity; div(other: Quantity | number): Quantity; add(other: Quantity): Quantity; readonly scalar: number }
const q = (text: string): Quantity => (Qty as (text: string) => Quantity)(text)
const inUnits = (text: string, unit: string): number => q(text).to(unit).scalar
/** The library's own constants carry eight digits. */
const close = (a: number, b: number, part = 1e-8): void => { expect(Math.abs(a / b - 1), `${a} against ${b}`).toBeLessThan(part) }

describe('units, against js-quantities', () => {
  test.each([
    ['IN_PER_FT', '1 ft', 'in'], ['IN2_PER_FT2', '1 ft2', 'in2'], ['IN3_PER_FLOZ', '1 floz', 'in3'], ['IN3_PER_GAL', '1 gal', 'in3'], ['LB_PER_TON', '1 ton', 'lbs'], ['M_PER_FT', '1 ft', 'm'], ['IN2_PER_M2', '1 m2', 'in2'], ['CFM_PER_M3_S', '1 m3/s', 'ft3/min'], ['HOURS_PER_DAY', '1 day', 'hour'],
  ] as const)('%s: %s in %s', (name, from, to) => close(convert[name], inUnits(from, to)))
  test('no conversion is left out', () => expect(Object.keys(convert).sort()).toEqual(['CFM_PER_M3_S', 'FT2_PER_THOUSAND', 'HOURS_PER_DAY', 'IN2_PER_FT2', 'IN2_PER_M2', 'IN3_PER_FLOZ', 'IN3_PER_GAL', 'IN_PER_FT', 'LB_PER_TON', 'M_PER_FT']))
  test.each([["14'7", 14, 7], ["14' 7 1/2\"", 14, 7.5], ["9'6", 9, 6], ["0'11 3/4", 0, 11.75], ["38'", 38, 0]] as const)('the tape reads %s', (text, feet, inches) => {
    close(readNumber(text, 'feet')!.value, q(`${feet} ft`).add(q(`${inches} in`)).to('ft').scalar)
  })
  test('foam in a hole: square inches and an inch of depth, in fluid ounces', () => close(plug.fn({ areaIn2: 12.37, depthIn: 1 }), q('12.37 in2').mul(q('1 in')).to('floz').scalar))
  test('air in a duct: square inches and feet a minute, in cubic feet a minute', () => close(airCarried.fn({ boreIn2: 28.27, speedFpm: 500 }), q('28.27 in2').mul(q('500 ft/min')).to('ft3/min').scalar))
  test('leakage area: 2,000 cfm at 50 Pa in SI, at 4 Pa, back in square inches', () => {
    const flow = inUnits('2000 ft3/min', 'm3/s') * (4 / 50) ** 0.65, m2 = flow / Math.sqrt(2 * 4 / 1.2046)
    close(leakageArea.fn({ cfm50: 2000, exponent: 0.65, pa: 4, coefficient: 1 }), inUnits(`${m2} m2`, 'in2'))
    close(cfm50Of.fn({ areaIn2: inUnits(`${m2} m2`, 'in2'), exponent: 0.65 }), 2000)
  })
  test('heat through a ceiling for a year, in SI: W/K · K·day', () => {
    // UA 30 Btu/(h·°F) and 7,000 °F·day: in watts, kelvins and seconds, back in Btu.
    const wattsPerK = inUnits('30 btu/h', 'W') * 1.8, kelvinSeconds = 7000 / 1.8 * inUnits('1 day', 's')
    close(heatThrough.fn({ ua: 30, degreeDays: 7000 }), inUnits(`${wattsPerK * kelvinSeconds} J`, 'btu'))
  })
  test('heat of a unit of fuel: electricity by definition; a US therm is 100,000 Btu, another therm 0.02 % off', () => {
    const btu = (fuel: string): number => fuels.rows.find(f => f.fuel === fuel)!.btu
    close(btu('electric'), inUnits('1 kWh', 'btu'), 1e-4)
    close(btu('gas'), inUnits('1 therm', 'btu'), 5e-4)
  })
  test('coefficients of the basic model: those of the handbook in liters, centimeters and kelvins, turned', () => {
    // (L/s)²/(cm⁴·K) by stories, (L/s)²/(cm⁴·(m/s)²) by stories and shelter: ASHRAE Handbook Fundamentals, as the EnergyPlus engineering reference prints them (seen); both sets are rounded.
    const STACK = [0.000145, 0.00029, 0.000435], WIND = [[0.000319, 0.000246, 0.000174, 0.000104, 0.000032], [0.00042, 0.000325, 0.000231, 0.000137, 0.000042], [0.000494, 0.000382, 0.000271, 0.000161, 0.000049]]
    const square = (inUnits('0.001 m3/s', 'ft3/min') / inUnits('1 cm2', 'in2')) ** 2, mph = inUnits('1 m/s', 'mph')
    infiltrationHeights.rows.forEach((r, i) => {
      close(r.stack, STACK[i]! * square / 1.8, 0.01)
      shelters.forEach((s, n) => { expect(Math.abs(r.wind[s] - WIND[i]![n]! * square / mph ** 2), `${r.stories} stories, ${s}`).toBeLessThan(0.00008) })
    })
  })
})

interface Air { readonly IP: number; readonly SI: number; SetUnitSystem(s: number): void; GetTDewPointFromRelHum(t: number, rh: number): number; GetDryAirDensity(t: number, p: number): number; GetMoistAirDensity(t: number, w: number, p: number): number; GetHumRatioFromRelHum(t: number, rh: number, p: number): number; GetDryAirEnthalpy(t: number): number }
const air = psychrometrics as Air
/** Standard pressure at sea level. */
const PSI = 14.696, PASCAL = 101325

describe('air, against psychrolib', () => {
  test.each([[70, 0.4], [70, 0.25], [70, 0.6], [68, 0.5], [75, 0.9], [60, 0.5], [100, 0.5]])('dew point of %f °F at %f', (airF, humidity) => {
    air.SetUnitSystem(air.IP)
    // The Magnus form runs over water. The library's below 32 °F is over ice, and is not compared.
    const there = air.GetTDewPointFromRelHum(airF, humidity)
    expect(there).toBeGreaterThan(32)
    expect(Math.abs(dewPoint.fn({ airF, humidity }) - there)).toBeLessThan(0.15)
  })
  test('saturated air is at its dew point', () => { for (const airF of [35, 50, 70, 90, 110]) expect(dewPoint.fn({ airF, humidity: 1 })).toBeCloseTo(airF, 6) })
  test('1.08 Btu/(h·cfm·°F): 60 minutes of standard air, its density and its heat', () => {
    air.SetUnitSystem(air.IP)
    const per = 60 * air.GetDryAirDensity(70, PSI) * (air.GetDryAirEnthalpy(71) - air.GetDryAirEnthalpy(70))
    close(heatOfAir.fn({ cfm: 1, degreeDays: 1 }) / 24, per, 0.002)
    close(heatLost.fn({ cfm: 1, enteringF: 71, leavingF: 70, runs: 1 }), per, 0.002)
    close(1 / tempRise.fn({ outputBtuh: 1000, cfm: 1000 }), per, 0.002)
    // Air loses to the attic what its duct passes: 1.08 again, where the duct is short.
    const cooled = 100 - airLeaving.fn({ enteringF: 100, atticF: 0, u: 1, skinFt2: 0.01, cfm: 100 })
    close(cooled * 100 * per, 1, 0.003)
  })
  test('air of leakage areas: 1.2046 kg/m³ is dry air at 20 °C and sea level', () => {
    air.SetUnitSystem(air.SI)
    close(1.2046, air.GetDryAirDensity(20, PASCAL), 0.0006)
    // As the formula has it: √(2 · Δp ÷ density) from the flow of a square meter.
    const speed = inUnits(`${cfm50Of.fn({ areaIn2: inUnits('1 m2', 'in2'), exponent: 0.5 })} ft3/min`, 'm3/s')
    close(speed, Math.sqrt(2 * 50 / air.GetDryAirDensity(20, PASCAL)), 0.0006)
  })
  test.each([[8.5, 70, -12], [17, 70, 11], [25, 68, 0], [8.5, 70, 60], [10, 70, 100]])('stack pressure of %f ft, %f °F in and %f °F out, from the weight of both airs', (heightFt, insideF, outsideF) => {
    air.SetUnitSystem(air.SI)
    const density = (f: number): number => air.GetDryAirDensity((f - 32) / 1.8, PASCAL)
    const pa = 9.80665 * heightFt * 0.3048 * (density(outsideF) - density(insideF))
    close(stackPressure.fn({ heightFt, insideF, outsideF }), pa, 0.003)
  })
  test('R per inch is thickness, not air: the same at any pressure', () => expect(onDuct.fn({ insulationR: 7.4, perInch: 3.7 })).toBe(2))
})

describe('money, against decimal.js', () => {
  const D = (x: number | string): Decimal => new Decimal(x)
  const cent = (x: Decimal): number => x.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber()
  const sum = (list: readonly number[]): Decimal => list.reduce((a, b) => a.plus(b), D(0))
  /** Every line of a price from the lines above it, at the demo company: 48.00 an hour, tax and contingency 7 %, margin as the job says, steps of $5, least charge $850. */
  function redone({ price: p, materials, tasks, labor, verdict }: EstimateOut, marginPct: number): void {
    if (verdict === 'stop') return
    for (const m of materials) {
      // Whole packs, or packs to 0.01, up, of what is needed and its waste.
      const packs = D(m.needed).times(D(100).plus(m.wastePct)).div(100).div(m.pack)
      expect(Math.abs(packs.minus(m.charged).toNumber()), m.item).toBeLessThan((m.charge === 'whole' ? 1 : 0.01) + 0.01)
      expect(cent(D(m.charged).times(m.unitPriceCents)), m.item).toBe(m.totalCents)
    }
    const material = sum(materials.map(m => m.totalCents)), work = sum(tasks.map(t => cent(D(t.personHours).times(labor.wageCents))))
    expect([material.toNumber(), work.toNumber()]).toEqual([p.materialsCents, p.laborCents])
    expect(cent(material.times(7).div(100))).toBe(p.salesTaxCents)
    expect(cent(material.plus(work).times(7).div(100))).toBe(p.contingencyCents)
    const direct = sum([p.materialsCents!, p.salesTaxCents!, p.laborCents!, p.subcontractCents!, p.otherCents]), cost = direct.plus(p.contingencyCents!).plus(p.overheadCents!)
    expect([direct.toNumber(), cost.toNumber()]).toEqual([p.directCents, p.costCents])
    const sale = cent(cost.div(D(100).minus(marginPct)).times(100)), least = tasks.length === 0 ? 0 : Math.max(0, 85000 - sale), offered = D(sale).plus(least).div(500).ceil().times(500)
    expect([least, offered.minus(sale).minus(least).toNumber(), offered.toNumber()]).toEqual([p.minimumAddedCents, p.roundingCents, p.totalCents! - p.customerTaxCents!])
    expect(p.netCents).toBe(p.totalCents! - p.incentivesCents!)
    if (offered.gt(0)) expect(p.marginPct).toBe(offered.minus(cost).div(offered).times(1000).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).div(10).toNumber())
  }
  test('every line of the price of each example', async () => {
    const folder = new URL('../../examples/', import.meta.url)
    for (const file of readdirSync(folder).filter(f => f.endsWith('.job.yaml'))) redone(JSON.parse((await lidwork(`estimate ${file} --json`, { files: { [file]: readFileSync(new URL(file, folder), 'utf8') } })).out) as EstimateOut, 40)
  })
  test('and of generated houses', () => { onHouses(({ data, json }) => { redone(json, data.choices?.marginPct ?? 40) }) })
})

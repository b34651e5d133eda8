import { table } from './table.ts'

/** How far the zone of an appliance may be pulled down, by how it vents. The strictest row that fits counts; unknown as the strictest. */
export const draftLimits = table<{ vent: string; limitPa: number; title: string }>({
  name: 'draft-limits', title: 'Depressurization that a vent bears in a worst-case test', use: 'gives the limit of a worst-case draft test, by vent', source: 'home performance standard for building analysts, 2005 to 2012', obtained: 'from memory, high', units: { limitPa: 'Pa' },
  rows: [
    { vent: 'orphan', limitPa: 2, title: 'natural-draft water heater alone on its flue, or unknown' },
    { vent: 'common', limitPa: 3, title: 'natural-draft boiler or furnace with a water heater on one flue' },
    { vent: 'natural-draft', limitPa: 5, title: 'natural-draft boiler or furnace alone; fan-assisted with a water heater on one flue' },
    { vent: 'fan-assisted', limitPa: 15, title: 'fan-assisted alone' },
  ],
})

/** Air of fans whose flow nobody gave. */
export const fanFlows = table<{ kind: string; cfm: number }>({
  name: 'fan-flows', title: 'Air that fans draw where nobody measured it', use: 'gives the air of a fan that nobody measured', source: 'national oilheat training text (NORA), ranges; the value inside is judgment', obtained: 'judgment', units: { cfm: 'cfm' },
  rows: [{ kind: 'dryer', cfm: 200 }, { kind: 'hood', cfm: 400 }, { kind: 'bath-fan', cfm: 50 }, { kind: 'central-vacuum', cfm: 100, source: 'judgment: a central vacuum that blows outdoors', obtained: 'judgment' }],
})

/** Carbon monoxide in undiluted flue gas, air free, by what burns. The oven's is as measured: a meter shows one or the other. */
export const flueGas = table<{ kind: string; ppm: number; basis: 'air free' | 'as measured' }>({
  name: 'flue-gas', title: 'Carbon monoxide that the flue gas of an appliance may hold', use: 'gives the most carbon monoxide that a flue may hold in a test', source: 'home performance standard of 2015 and 2017 (ANSI/BPI-1200)', obtained: 'from memory, medium', units: { ppm: 'ppm' },
  rows: [
    { kind: 'water-heater', ppm: 200, basis: 'air free' }, { kind: 'furnace', ppm: 400, basis: 'air free' }, { kind: 'boiler', ppm: 400, basis: 'air free' },
    { kind: 'room-heater', ppm: 200, basis: 'air free' }, { kind: 'dryer', ppm: 400, basis: 'air free' }, { kind: 'oven', ppm: 225, basis: 'as measured' },
  ],
})

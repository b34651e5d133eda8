// What a unit of fuel holds and gives off.
import { table } from './table.ts'

export const fuelNames = ['gas', 'oil', 'propane', 'electric', 'heat-pump', 'wood'] as const
export type FuelName = (typeof fuelNames)[number]

const EIA = 'US Energy Information Administration, heat contents and emission coefficients of fuels (2 Feb 2016)'

export const fuels = table<{ fuel: FuelName; unit: string; btu: number }>({
  name: 'fuels', title: 'Heat of a unit of fuel', source: EIA, obtained: 'published, seen in a copy', units: { btu: 'Btu' },
  rows: [
    { fuel: 'gas', unit: 'therm', btu: 100000 },
    { fuel: 'oil', unit: 'gal', btu: 138500 },
    { fuel: 'propane', unit: 'gal', btu: 91452 },
    { fuel: 'electric', unit: 'kWh', btu: 3412 },
    { fuel: 'heat-pump', unit: 'kWh', btu: 3412 },
    { fuel: 'wood', unit: 'cord', btu: 20000000, source: 'usual figure of a cord of mixed hardwood', obtained: 'from memory, medium' },
  ],
})

const GRID = 'US Energy Information Administration, frequently asked question 74: US mean of 2023'
/** What wood gives off grew shortly before: it has no row. */
export const carbon = table<{ fuel: FuelName; co2Lb: number }>({
  name: 'carbon-dioxide', title: 'Carbon dioxide of a unit of fuel', use: 'gives co2Lb of a saving, where the fuel has a row', source: EIA, obtained: 'published, seen in a copy', units: { co2Lb: 'lb' },
  rows: [
    { fuel: 'gas', co2Lb: 11.7 },
    { fuel: 'oil', co2Lb: 22.4 },
    { fuel: 'propane', co2Lb: 12.7 },
    { fuel: 'electric', co2Lb: 0.81, source: GRID, obtained: 'published, seen' },
    { fuel: 'heat-pump', co2Lb: 0.81, source: GRID, obtained: 'published, seen' },
  ],
})

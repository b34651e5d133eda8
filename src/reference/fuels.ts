// What a unit of fuel holds and gives off.
import { table } from './table.ts'

export const fuelNames = ['gas', 'oil', 'propane', 'electric', 'heat-pump', 'wood'] as const
export type FuelName = (typeof fuelNames)[number]

const EIA = 'US Energy Information Administration, heat contents and emission coefficients of fuels (2 Feb 2016)'

export const fuels = table<{ fuel: FuelName; unit: string; btu: number; co2Lb?: number }>({
  name: 'fuels', title: 'Heat and carbon dioxide of a unit of fuel', source: EIA, obtained: 'published, seen in a copy', units: { btu: 'Btu/unit', co2Lb: 'lb/unit' },
  rows: [
    { fuel: 'gas', unit: 'therm', btu: 100000, co2Lb: 11.7 },
    { fuel: 'oil', unit: 'gal', btu: 138500, co2Lb: 22.4 },
    { fuel: 'propane', unit: 'gal', btu: 91452, co2Lb: 12.7 },
    { fuel: 'electric', unit: 'kWh', btu: 3412, co2Lb: 0.81, source: 'US Energy Information Administration, frequently asked question 74: US mean of 2023' },
    { fuel: 'heat-pump', unit: 'kWh', btu: 3412, co2Lb: 0.81, source: 'US Energy Information Administration, frequently asked question 74: US mean of 2023' },
    // What wood gives off grew shortly before: no figure is printed for it.
    { fuel: 'wood', unit: 'cord', btu: 20000000, source: 'usual figure of a cord of mixed hardwood', obtained: 'from memory, medium' },
  ],
})

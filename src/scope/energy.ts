// What a job file may say of climate, fuel and fresh air: what sealing and insulating are worth is printed only where it does.
import * as f from '../fields/index.ts'
import { fuelNames } from '../reference/fuels.ts'
import { shelters } from '../reference/infiltration.ts'

const usd = (description: string, ...examples: readonly number[]) => f.number('USD', { min: 0, max: 1000000 }, description, { examples })

export const energySchema = f.later(() => f.fields({
  heating: f.optional(f.fields({
    fuel: f.word(fuelNames, 'what heats the house'),
    efficiency: f.number('fraction', { min: 0.2, max: 6 }, 'heat out over fuel in: AFUE 80 % is 0.8; a heat pump its seasonal COP, HSPF ÷ 3.412', { examples: [0.8, 2.4] }),
    price: f.optional(usd('price of a therm of gas, a gallon of oil or propane, a kWh, a cord', 1.48)),
    yearlyBill: f.optional(usd('what heating cost in a year', 1250)),
    fanCfm: f.optional(f.number('cfm', { min: 50, max: 20000 }, 'air that the air handler moves', { examples: [1000] })),
    outputBtuh: f.optional(f.number('Btu/h', { min: 1000, max: 1000000 }, 'heat output of the furnace', { examples: [60000] })),
  }, 'heating')),
  cooling: f.optional(f.fields({
    seer: f.number('factor', { min: 5, max: 40 }, 'seasonal efficiency, SEER', { examples: [13] }),
    price: f.optional(usd('price of a kWh', 0.16)),
    yearlyBill: f.optional(usd('what cooling cost in a year', 240)),
  }, 'cooling; without it nothing is counted for summer')),
  degreeDays: f.optional(f.fields({
    hdd65: f.number('°F·day', { min: 0, max: 20000 }, 'heating degree days of a year, base 65 °F', { examples: [7200] }),
    cdd65: f.optional(f.number('°F·day', { min: 0, max: 10000 }, 'cooling degree days of a year, base 65 °F', { examples: [600] })),
    from: f.text('where these stand', { examples: ['NOAA 1991-2020, the airport'] }),
  }, 'degree days of your own; or a station')),
  station: f.optional(f.pattern('^US[A-Z0-9]{9}$', 'station', 'weather station by its NOAA id; else the state’s mean', { examples: ['USW00014837'] })),
  shelter: f.optional(f.word(shelters, 'what stands against the wind: nothing; a rural house alone; houses across the street; a town with larger lots; houses close on all sides', { default: 'suburban' })),
  windMph: f.optional(f.number('mph', { min: 0, max: 40 }, 'mean wind of the heating season', { examples: [8] })),
  winterMeanF: f.optional(f.number('°F', { min: -30, max: 64 }, 'mean outdoor temperature of the heating season', { examples: [33] })),
  winterDesignF: f.optional(f.number('°F', { min: -60, max: 60 }, 'winter design temperature', { examples: [-4] })),
  infiltrationZone: f.optional(f.number('zone', { min: 1, max: 4, whole: true }, 'zone of the N-factor map of 1987; a second method is printed beside the first', { examples: [2] })),
}, 'climate and fuel: what a year’s saving is worth'))

export const ventilationSchema = f.later(() => f.fields({
  standard: f.word(['62.2-2013', '62.2-2016', '62.2-2019'] as const, 'edition of ASHRAE 62.2'),
  wsf: f.number('factor', { min: 0.2, max: 1.5 }, 'weather and shielding factor of the nearest station, from the standard', { examples: [0.6] }),
  fan: f.optional(f.word(['exhaust', 'balanced'] as const, 'how the house would be ventilated', { default: 'exhaust' })),
  existingCfm: f.optional(f.number('cfm', { min: 0, max: 1000 }, 'a whole-house fan that runs, as measured')),
  exteriorShare: f.optional(f.number('fraction', { min: 0.1, max: 1 }, 'share of the envelope that is outdoors; a detached house 1', { examples: [0.75], default: 1 })),
  baths: f.optional(f.list(f.fields({ fanCfm: f.optional(f.number('cfm', { min: 0, max: 1000 }, 'its fan, measured; 0 none', { default: 0 })), window: f.optional(f.yesNo('a window that opens', { default: 'no' })) }, 'one bath with tub or shower'), 'baths, for the deficit of local exhaust', { max: 20 })),
  kitchen: f.optional(f.fields({ fanCfm: f.optional(f.number('cfm', { min: 0, max: 2000 }, 'hood that blows outdoors, measured; 0 none', { default: 0 })), window: f.optional(f.yesNo('a window that opens', { default: 'no' })) }, 'kitchen')),
}, 'fresh air after sealing, by ASHRAE 62.2'))

export type Energy = f.StaticOf<typeof energySchema>
export type Ventilation = f.StaticOf<typeof ventilationSchema>

/** Invented, for a new job file. */
export const energy = { sample: { heating: { fuel: 'gas', efficiency: 0.8, price: 1.12 }, cooling: { seer: 13 }, station: 'USW00014933' } satisfies Energy }
export const ventilation = { sample: { standard: '62.2-2016', wsf: 0.6, baths: [{ fanCfm: 45, window: 'yes' }], kitchen: { fanCfm: 160 } } satisfies Ventilation }

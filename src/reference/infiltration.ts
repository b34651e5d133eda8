// Air that leaks in by itself: coefficients of the basic model and of the N-factor.
import { table } from './table.ts'

const ASHRAE = 'ASHRAE Handbook Fundamentals 2001 ch. 26 and 2005 ch. 27, basic model of infiltration'
const N = 'Sherman 1987 (LBL-21040), estimation of infiltration from leakage and climate'

export const shelters = ['none', 'rural', 'suburban', 'urban', 'crowded'] as const
export type Shelter = (typeof shelters)[number]

/** Stack [cfm²/(in⁴·°F)] and wind [cfm²/(in⁴·mph²)] coefficients by height; the published cm² and K turned into in², °F and mph, to the digits of the handbook. */
export const infiltrationHeights = table<{ stories: number; stack: number; wind: Readonly<Record<Shelter, number>> }>({
  name: 'infiltration', title: 'Coefficients of the basic infiltration model', source: ASHRAE, obtained: 'published, seen in a copy', units: { stories: 'stories', stack: 'coefficient', wind: 'coefficient' },
  rows: [
    { stories: 1, stack: 0.015, wind: { none: 0.0119, rural: 0.0092, suburban: 0.0065, urban: 0.0039, crowded: 0.0012 } },
    { stories: 2, stack: 0.0299, wind: { none: 0.0157, rural: 0.0121, suburban: 0.0086, urban: 0.0051, crowded: 0.0016 } },
    { stories: 3, stack: 0.0449, wind: { none: 0.0184, rural: 0.0143, suburban: 0.0101, urban: 0.006, crowded: 0.0018 } },
  ],
})

/** CFM50 over natural flow, by the zone of its map. */
export const nClimates = table<{ zone: number; n: number }>({
  name: 'n-climate', title: 'N-factor: climate', use: 'gives the N-factor, where the file names its zone', source: N, obtained: 'from memory, high', units: { zone: 'zone', n: 'N' },
  rows: [{ zone: 1, n: 15.5 }, { zone: 2, n: 18.5 }, { zone: 3, n: 21.5 }, { zone: 4, n: 24.5 }],
})
export const nHeights = table<{ stories: number; factor: number }>({
  name: 'n-height', title: 'N-factor: height', use: 'gives the N-factor, where the file names its zone', source: N, obtained: 'from memory, high', units: { stories: 'stories', factor: 'N' },
  rows: [{ stories: 1, factor: 1 }, { stories: 1.5, factor: 0.9 }, { stories: 2, factor: 0.8 }, { stories: 3, factor: 0.7 }],
})
/** Five classes of shelter onto the three of the factor: the two ends join the class beside them. */
export const nShelters = table<{ shelter: Shelter; factor: number }>({
  name: 'n-shelter', title: 'N-factor: shelter', use: 'gives the N-factor, where the file names its zone', source: N, obtained: 'from memory, high', units: { factor: 'N' },
  rows: [{ shelter: 'none', factor: 0.9 }, { shelter: 'rural', factor: 0.9 }, { shelter: 'suburban', factor: 1 }, { shelter: 'urban', factor: 1.2 }, { shelter: 'crowded', factor: 1.2 }],
})

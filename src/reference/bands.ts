import { table } from './table.ts'

/** What a sold job of sealing and blowing usually comes to; outside it the survey or the books are looked at again, nothing is refused. */
export const bands = table<{ figure: string; low: number; high: number; unit: string; fromFt2: number; toFt2: number }>({
  name: 'bands', title: 'Usual range of a job’s figures', use: 'says where a job lies outside the usual range', source: 'a ranch of 1,344 ft² priced line by line at demo figures of 2025, with and without hard access', obtained: 'judgment',
  units: { low: 'as its row says', high: 'as its row says', fromFt2: 'ft2', toFt2: 'ft2' },
  rows: [
    { figure: 'price', low: 2.5, high: 9, unit: 'dollars for each ft²', fromFt2: 900, toFt2: 2500 },
    { figure: 'materials', low: 20, high: 40, unit: '% of the price', fromFt2: 600, toFt2: 100000 },
    { figure: 'sealing', low: 25, high: 60, unit: '% of the hours', fromFt2: 600, toFt2: 100000 },
    { figure: 'hours', low: 1, high: 4.5, unit: 'person-hours for each 100 ft²', fromFt2: 600, toFt2: 100000 },
  ],
})

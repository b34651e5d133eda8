import { table } from './table.ts'

/** Student's t: a mean of few probes is wide of the mark more often than the normal law says. Between two rows the upper one counts, the wider. */
export const studentT = table<{ freedom: number; factor: number }>({
  name: 'student-t', title: 'How many standard errors hold nine means of ten, by probes less one', use: 'widens the mean of few probes', source: 'JCGM 100:2008 (GUM), table G.2, column of 90 %', obtained: 'from memory, high', units: { freedom: 'probes less one', factor: 'standard errors' },
  rows: [
    { freedom: 1, factor: 6.31 }, { freedom: 2, factor: 2.92 }, { freedom: 3, factor: 2.35 }, { freedom: 4, factor: 2.13 }, { freedom: 5, factor: 2.02 }, { freedom: 6, factor: 1.94 }, { freedom: 7, factor: 1.89 }, { freedom: 8, factor: 1.86 },
    { freedom: 9, factor: 1.83 }, { freedom: 10, factor: 1.81 }, { freedom: 12, factor: 1.78 }, { freedom: 15, factor: 1.75 }, { freedom: 20, factor: 1.72 }, { freedom: 30, factor: 1.7 }, { freedom: 50, factor: 1.68 }, { freedom: 100, factor: 1.66 },
  ],
})

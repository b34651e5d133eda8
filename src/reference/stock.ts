// What attics of a house's age usually hold: a hint that a figure is worth a second look, never a figure of the estimate.
//
// Origin: NREL ResStock, housing characteristics of the national project, "Insulation Ceiling" (BSD-3-Clause license), vented attics of ten regions by year built, seen at commit 0091bbd.
// Derived here: the regions added up by the source's own sampling weights. Each row sums to 1 within the rounding of the source.
import { table } from './table.ts'

/** R levels of the survey behind the table, as it names them; bare is R 0. */
export const STOCK_LEVELS = [0, 7, 13, 19, 30, 38, 49] as const
type Level = (typeof STOCK_LEVELS)[number]

export const atticStock = table<{ built: string; from: number; to: number; r: Readonly<Record<Level, number>> }>({
  name: 'attic-stock', title: 'Share of vented attics by the R they hold and the year of the house', source: 'NREL ResStock, national housing characteristics, Insulation Ceiling (commit 0091bbd, BSD-3-Clause); regions added up by sampling weight', obtained: 'derived',
  use: 'says when an R that was found is rare for the year of the house',
  units: { from: 'year built', to: 'year built', r: 'share of attics' },
  rows: [
    { built: 'before 1940', from: 1600, to: 1939, r: { 0: 0.062, 7: 0.132, 13: 0.179, 19: 0.237, 30: 0.16, 38: 0.175, 49: 0.054 } },
    { built: '1940s', from: 1940, to: 1949, r: { 0: 0.083, 7: 0.139, 13: 0.196, 19: 0.221, 30: 0.167, 38: 0.154, 49: 0.04 } },
    { built: '1950s', from: 1950, to: 1959, r: { 0: 0.057, 7: 0.099, 13: 0.17, 19: 0.198, 30: 0.203, 38: 0.203, 49: 0.069 } },
    { built: '1960s', from: 1960, to: 1969, r: { 0: 0.023, 7: 0.091, 13: 0.242, 19: 0.234, 30: 0.178, 38: 0.174, 49: 0.058 } },
    { built: '1970s', from: 1970, to: 1979, r: { 0: 0.042, 7: 0.09, 13: 0.164, 19: 0.201, 30: 0.248, 38: 0.196, 49: 0.059 } },
    { built: '1980s', from: 1980, to: 1989, r: { 0: 0.005, 7: 0.046, 13: 0.177, 19: 0.33, 30: 0.299, 38: 0.123, 49: 0.019 } },
    { built: '1990s', from: 1990, to: 1999, r: { 0: 0, 7: 0, 13: 0, 19: 0.152, 30: 0.573, 38: 0.2, 49: 0.074 } },
    { built: '2000s', from: 2000, to: 2009, r: { 0: 0, 7: 0, 13: 0, 19: 0.082, 30: 0.556, 38: 0.268, 49: 0.094 } },
    { built: '2010 and later', from: 2010, to: 2100, r: { 0: 0, 7: 0, 13: 0, 19: 0.087, 30: 0.569, 38: 0.256, 49: 0.088 } },
  ],
})

/** Share of attics of houses built that year that hold no more than this R, and no less: levels on either side of it count by the nearer one. */
export function stockShares(year: number, r: number): { readonly built: string; readonly upTo: number; readonly from: number } | undefined {
  const row = atticStock.rows.find(x => year >= x.from && year <= x.to)
  if (!row) return undefined
  const level = [...STOCK_LEVELS].sort((a, b) => Math.abs(a - r) - Math.abs(b - r))[0]!
  const sum = (fits: (l: number) => boolean): number => STOCK_LEVELS.filter(fits).reduce((all: number, l) => all + row.r[l], 0)
  return { built: row.built, upTo: sum(l => l <= level), from: sum(l => l >= level) }
}

import { table } from './table.ts'

export const editions = ['iecc-2009', 'iecc-2012', 'iecc-2015', 'iecc-2018', 'iecc-2021'] as const
export type Edition = (typeof editions)[number]
export const zones = ['1', '2', '3', '4', '4C', '5', '6', '7', '8'] as const
export type Zone = (typeof zones)[number]

const BASC = 'BASC, 2009–2021 IECC and IRC minimum insulation requirements for new homes'

/** Least ceiling R by edition and zone: IECC tables 402.1.1 (2009), R402.1.1 (2012), R402.1.2 (2015, 2018), R402.1.3 (2021). */
export const targets = table<{ edition: Edition; section: string; r: Readonly<Record<Zone, number>> }>({
  name: 'targets', title: 'Ceiling R by IECC edition and climate zone', source: BASC, obtained: 'published, seen', units: { r: 'R' },
  rows: [
    { edition: 'iecc-2009', section: '402.1.1', r: { '1': 30, '2': 30, '3': 30, '4': 38, '4C': 38, '5': 38, '6': 49, '7': 49, '8': 49 } },
    { edition: 'iecc-2012', section: 'R402.1.1', r: { '1': 30, '2': 38, '3': 38, '4': 49, '4C': 49, '5': 49, '6': 49, '7': 49, '8': 49 } },
    { edition: 'iecc-2015', section: 'R402.1.2', r: { '1': 30, '2': 38, '3': 38, '4': 49, '4C': 49, '5': 49, '6': 49, '7': 49, '8': 49 } },
    { edition: 'iecc-2018', section: 'R402.1.2', r: { '1': 30, '2': 38, '3': 38, '4': 49, '4C': 49, '5': 49, '6': 49, '7': 49, '8': 49 } },
    { edition: 'iecc-2021', section: 'R402.1.3', r: { '1': 30, '2': 49, '3': 49, '4': 60, '4C': 60, '5': 60, '6': 60, '7': 60, '8': 60 } },
  ],
})

/** R of what lies between house and attic air besides insulation. */
export const surfaces = table<{ what: string; r: number }>({
  name: 'surfaces', title: 'Films and boards of a ceiling', source: 'ASHRAE Handbook Fundamentals ch. 26: 0.61 film heat up + 0.45 gypsum 1/2 in + 0.61 film', obtained: 'from memory, high',
  units: { r: 'R' },
  rows: [
    { what: 'base', r: 1.67 },
    { what: 'box-lid', r: 0.56, source: 'ASHRAE 90.1 A2.4, gypsum 5/8 in', obtained: 'published, seen in a copy' },
    { what: 'softwood-per-inch', r: 1.25, source: 'CA Joint Appendix JA4.5, softwood', obtained: 'published, seen in a copy' },
  ],
})

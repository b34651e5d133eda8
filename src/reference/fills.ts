import { table } from './table.ts'

export interface Fill {
  readonly fill: string
  readonly title: string
  readonly form: 'batt' | 'loose'
  readonly rPerIn: number
  readonly densityPcf: number
}

const DOE = 'DOE/CE-0180 Insulation Fact Sheet, R per inch including aging and settling'

/** R per inch and density of fill that is already there. */
export const fills = table<Fill>({
  name: 'fills', title: 'Existing fill: R per inch and density', source: DOE, obtained: 'published, seen in a copy',
  units: { rPerIn: 'R/in', densityPcf: 'lb/ft3' },
  rows: [
    { fill: 'fiberglass-batt', title: 'fiberglass batt', form: 'batt', rPerIn: 3.2, densityPcf: 0.55 },
    { fill: 'mineral-wool-batt', title: 'mineral-wool batt', form: 'batt', rPerIn: 3.4, densityPcf: 1.7, source: 'NRCan, Keeping the Heat In, table 3-1' },
    { fill: 'loose-fiberglass', title: 'loose fiberglass', form: 'loose', rPerIn: 2.5, densityPcf: 0.55 },
    { fill: 'loose-rock-wool', title: 'loose rock or slag wool', form: 'loose', rPerIn: 2.8, densityPcf: 1.7 },
    { fill: 'loose-cellulose', title: 'loose cellulose', form: 'loose', rPerIn: 3.5, densityPcf: 1.6 },
    { fill: 'old-cellulose', title: 'old dense cellulose', form: 'loose', rPerIn: 3.5, densityPcf: 2.5 },
    { fill: 'vermiculite', title: 'vermiculite', form: 'loose', rPerIn: 2.1, densityPcf: 6, source: 'ASHRAE Handbook Fundamentals, vermiculite rows', obtained: 'from memory, high' },
    { fill: 'wood-shavings', title: 'wood shavings or sawdust', form: 'loose', rPerIn: 2.22, densityPcf: 10, source: 'ASHRAE Handbook Fundamentals, sawdust row', obtained: 'from memory, high' },
  ],
})

/** Share of a batt layer that is gaps, by its condition. */
export const conditions = table<{ condition: string; gaps: number; title: string }>({
  name: 'conditions', title: 'Gaps in a batt layer by condition', source: 'ANSI/RESNET/ICC 301, insulation grades I to III', obtained: 'from memory, high',
  units: { gaps: 'fraction' },
  rows: [
    { condition: 'good', gaps: 0, title: 'no gaps' },
    { condition: 'fair', gaps: 0.02, title: 'some gaps, to 2 %' },
    { condition: 'poor', gaps: 0.05, title: 'many gaps, to 5 %' },
  ],
})

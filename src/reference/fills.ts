import { table } from './table.ts'

export interface Fill {
  readonly fill: string
  readonly title: string
  readonly form: 'batt' | 'loose'
  readonly rPerIn: number
}

const DOE = 'DOE/CE-0180 Insulation Fact Sheet, R per inch including aging and settling'

/** R per inch of fill that is already there. */
export const fills = table<Fill>({
  name: 'fills', title: 'Existing fill: R per inch', source: DOE, obtained: 'published, seen in a copy',
  units: { rPerIn: 'R/in' },
  rows: [
    { fill: 'fiberglass-batt', title: 'fiberglass batt', form: 'batt', rPerIn: 3.2 },
    { fill: 'mineral-wool-batt', title: 'mineral-wool batt', form: 'batt', rPerIn: 3.4, source: 'NRCan, Keeping the Heat In, table 3-1' },
    { fill: 'loose-fiberglass', title: 'loose fiberglass', form: 'loose', rPerIn: 2.5 },
    { fill: 'loose-rock-wool', title: 'loose rock or slag wool', form: 'loose', rPerIn: 2.8 },
    { fill: 'loose-cellulose', title: 'loose cellulose', form: 'loose', rPerIn: 3.5 },
    { fill: 'old-cellulose', title: 'old dense cellulose', form: 'loose', rPerIn: 3.5 },
    { fill: 'vermiculite', title: 'vermiculite', form: 'loose', rPerIn: 2.1, source: 'ASHRAE Handbook Fundamentals, vermiculite rows', obtained: 'from memory, high' },
    { fill: 'wood-shavings', title: 'wood shavings or sawdust', form: 'loose', rPerIn: 2.22, source: 'ASHRAE Handbook Fundamentals, sawdust row', obtained: 'from memory, high' },
  ],
})

/** Density of fill that is already there: a value chosen inside the published range. */
export const densities = table<{ fill: string; densityPcf: number }>({
  name: 'densities', title: 'Existing fill: density', source: 'DOE loose-fill table: cellulose 1.5 to 2.0, fiberglass 0.5 to 1.0; the value inside the range is judgment', obtained: 'judgment', units: { densityPcf: 'lb/ft3' },
  rows: [
    { fill: 'fiberglass-batt', densityPcf: 0.55, source: 'taken as light loose fiberglass', obtained: 'judgment' },
    { fill: 'mineral-wool-batt', densityPcf: 1.7, source: 'taken as loose rock wool, 1.7', obtained: 'judgment' },
    { fill: 'loose-fiberglass', densityPcf: 0.55 },
    { fill: 'loose-rock-wool', densityPcf: 1.7, source: 'DOE loose-fill table: rock wool 1.7', obtained: 'published, seen in a copy' },
    { fill: 'loose-cellulose', densityPcf: 1.6 },
    { fill: 'old-cellulose', densityPcf: 2.5, source: 'older hammermilled cellulose 2.2 to 3.0, trade text', obtained: 'published, seen in a copy' },
    { fill: 'vermiculite', densityPcf: 6, source: 'ASHRAE Handbook Fundamentals, vermiculite 4 to 8.2', obtained: 'from memory, medium' },
    { fill: 'wood-shavings', densityPcf: 10, source: 'ASHRAE Handbook Fundamentals, sawdust 8 to 15', obtained: 'from memory, high' },
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

import { table } from './table.ts'

const ASHRAE = 'ASHRAE Handbook Fundamentals (1993 to 2005), table of effective air leakage areas of low-rise residential components'
const NIST = 'NIST, component leakage of typical and tight houses (contaminant model library)'

/** Effective leakage area of one, or of a foot: best estimate, least and most. */
export const leakage = table<{ item: string; title: string; per: 'each' | 'ft' | 'ft2'; bestIn2: number; minIn2: number; maxIn2: number }>({
  name: 'leakage', title: 'Effective leakage area of parts of a ceiling, at 4 Pa', source: ASHRAE, obtained: 'from memory, high', units: { bestIn2: 'in2', minIn2: 'in2', maxIn2: 'in2' },
  rows: [
    { item: 'recessed-light', title: 'recessed light', per: 'each', bestIn2: 1.6, minIn2: 0.23, maxIn2: 3.3 },
    { item: 'recessed-light-tight', title: 'recessed light, as tight as the best measured', per: 'each', bestIn2: 0.23, minIn2: 0.13, maxIn2: 0.23 },
    { item: 'surface-light', title: 'surface light on its box', per: 'each', bestIn2: 0.13, minIn2: 0.13, maxIn2: 0.13, source: ASHRAE, obtained: 'from memory, medium' },
    { item: 'box-gasketed', title: 'box, gasketed', per: 'each', bestIn2: 0.023, minIn2: 0.012, maxIn2: 0.54 },
    { item: 'penetration', title: 'pipe or wire through the ceiling, not sealed', per: 'each', bestIn2: 0.93, minIn2: 0.31, maxIn2: 3.7 },
    { item: 'penetration-sealed', title: 'the same, sealed', per: 'each', bestIn2: 0.31, minIn2: 0.16, maxIn2: 0.31 },
    { item: 'boot', title: 'duct boot in the ceiling', per: 'each', bestIn2: 0.78, minIn2: 0.16, maxIn2: 0.78, source: NIST, obtained: 'published, seen' },
    { item: 'boot-sealed', title: 'the same, tight', per: 'each', bestIn2: 0.16, minIn2: 0.16, maxIn2: 0.16, source: NIST, obtained: 'published, seen' },
    { item: 'hatch', title: 'attic hatch or door without gasket', per: 'each', bestIn2: 4.6, minIn2: 1.6, maxIn2: 5.7, source: NIST, obtained: 'published, seen' },
    { item: 'hatch-gasketed', title: 'the same, with gasket', per: 'each', bestIn2: 2.8, minIn2: 1.2, maxIn2: 2.9, source: NIST, obtained: 'published, seen' },
    { item: 'stair', title: 'pull-down stair without gasket', per: 'each', bestIn2: 6.8, minIn2: 3.6, maxIn2: 13 },
    { item: 'stair-gasketed', title: 'the same, with gasket', per: 'each', bestIn2: 3.4, minIn2: 2.2, maxIn2: 6.7 },
    { item: 'stair-covered', title: 'the same, under an insulated cover', per: 'each', bestIn2: 0.62, minIn2: 0.62, maxIn2: 0.62 },
    { item: 'bath-fan', title: 'bath fan, damper closed', per: 'each', bestIn2: 1.6, minIn2: 0.39, maxIn2: 3.1 },
    { item: 'bath-fan-sealed', title: 'the same, as tight as the best measured', per: 'each', bestIn2: 0.39, minIn2: 0.39, maxIn2: 0.39 },
    { item: 'kitchen-fan', title: 'kitchen fan, damper closed', per: 'each', bestIn2: 0.78, minIn2: 0.16, maxIn2: 1.1 },
    { item: 'kitchen-fan-sealed', title: 'the same, tight gasket', per: 'each', bestIn2: 0.16, minIn2: 0.16, maxIn2: 0.16 },
    { item: 'dryer', title: 'dryer vent with damper', per: 'each', bestIn2: 0.46, minIn2: 0.45, maxIn2: 1.1 },
    { item: 'ceiling-joint', title: 'joint of ceiling and wall', per: 'ft', bestIn2: 0.071, minIn2: 0.0076, maxIn2: 0.12 },
    { item: 'ceiling-joint-sealed', title: 'the same, tight', per: 'ft', bestIn2: 0.0236, minIn2: 0.0076, maxIn2: 0.0236, source: NIST, obtained: 'published, seen' },
    { item: 'whole-house-fan', title: 'whole-house fan, louvers closed', per: 'each', bestIn2: 3.1, minIn2: 0.25, maxIn2: 3.3 },
    { item: 'ceiling-general', title: 'ceiling, general, fixtures and joints included', per: 'ft2', bestIn2: 0.026, minIn2: 0.011, maxIn2: 0.04, source: NIST, obtained: 'published, seen' },
    { item: 'ceiling-membrane', title: 'ceiling below an unbroken sheet, taken as a dropped ceiling', per: 'ft2', bestIn2: 0.0027, minIn2: 0.0007, maxIn2: 0.0027, source: ASHRAE, obtained: 'from memory, medium' },
    { item: 'board-edge', title: 'edge of a fastened, sealed cover, taken as a plate joint', per: 'ft', bestIn2: 0.0047, minIn2: 0.0035, maxIn2: 0.018 },
  ],
})

import { table } from './table.ts'

const EREC = 'DOE/EREC loose-fill insulation sheet (one gypsum maker’s figures, as reprinted)'

/** Weight a gypsum ceiling carries without sagging. A board or spacing without a row has no published limit. */
export const ceilingLimits = table<{ board: string; thicknessIn: number; spacingIn: number; limitPsf: number }>({
  name: 'ceiling-limits', title: 'Weight on a gypsum ceiling', source: EREC, obtained: 'published, seen in a copy',
  units: { thicknessIn: 'in', spacingIn: 'in', limitPsf: 'lb/ft2' },
  rows: [
    { board: 'gypsum', thicknessIn: 0.5, spacingIn: 16, limitPsf: 2.2 },
    { board: 'gypsum', thicknessIn: 0.5, spacingIn: 24, limitPsf: 1.3 },
    { board: 'gypsum', thicknessIn: 0.625, spacingIn: 16, limitPsf: 2.2, source: 'not closer than the published row at 24 in', obtained: 'judgment' },
    { board: 'gypsum', thicknessIn: 0.625, spacingIn: 24, limitPsf: 2.2 },
    { board: 'sag-resistant-gypsum', thicknessIn: 0.5, spacingIn: 16, limitPsf: 2.2, source: 'not closer than the row at 24 in', obtained: 'judgment' },
    { board: 'sag-resistant-gypsum', thicknessIn: 0.5, spacingIn: 24, limitPsf: 2.2, source: 'trade handbook, sag-resistant board', obtained: 'from memory, medium' },
  ],
})

/** Above this no listed ceiling may be loaded, looked at or not. */
export const MOST_PSF_ROW = { limitPsf: 2.2, source: EREC }

/** Softwood framing as milled. */
export const lumber = table<{ size: string; depthIn: number; widthIn: number }>({
  name: 'lumber', title: 'Joist sizes as milled', source: 'PS 20-20 American Softwood Lumber Standard, table 3', obtained: 'from memory, high',
  units: { depthIn: 'in', widthIn: 'in' },
  rows: [
    { size: '2x4', depthIn: 3.5, widthIn: 1.5 },
    { size: '2x6', depthIn: 5.5, widthIn: 1.5 },
    { size: '2x8', depthIn: 7.25, widthIn: 1.5 },
    { size: '2x10', depthIn: 9.25, widthIn: 1.5 },
    { size: '2x12', depthIn: 11.25, widthIn: 1.5 },
  ],
})

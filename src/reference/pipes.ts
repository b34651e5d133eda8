import { type Quantity } from '../units/quantity.ts'
import { fromRow, table } from './table.ts'

export const pipeMaterials = ['pvc', 'copper', 'steel', 'cast-iron', 'cpvc'] as const
export type PipeMaterial = (typeof pipeMaterials)[number]

/** Outside of a pipe by its nominal size: schedule 40, copper tube size, hubless cast iron. */
export const pipes = table<{ series: 'schedule-40' | 'copper' | 'hubless'; nominalIn: number; outsideIn: number }>({
  name: 'pipes', title: 'Outside diameter of pipes by nominal size', source: 'ASTM D1785 and ASME B36.10, schedule 40; ASTM B88 and D2846, copper tube size', obtained: 'published, seen in a copy', units: { nominalIn: 'in', outsideIn: 'in' },
  rows: [
    { series: 'schedule-40', nominalIn: 0.5, outsideIn: 0.84 }, { series: 'schedule-40', nominalIn: 0.75, outsideIn: 1.05 }, { series: 'schedule-40', nominalIn: 1, outsideIn: 1.315 },
    { series: 'schedule-40', nominalIn: 1.25, outsideIn: 1.66 }, { series: 'schedule-40', nominalIn: 1.5, outsideIn: 1.9 }, { series: 'schedule-40', nominalIn: 2, outsideIn: 2.375 },
    { series: 'schedule-40', nominalIn: 3, outsideIn: 3.5 }, { series: 'schedule-40', nominalIn: 4, outsideIn: 4.5 },
    { series: 'copper', nominalIn: 0.5, outsideIn: 0.625 }, { series: 'copper', nominalIn: 0.75, outsideIn: 0.875 }, { series: 'copper', nominalIn: 1, outsideIn: 1.125 },
    { series: 'copper', nominalIn: 1.25, outsideIn: 1.375 }, { series: 'copper', nominalIn: 1.5, outsideIn: 1.625 }, { series: 'copper', nominalIn: 2, outsideIn: 2.125 },
    { series: 'copper', nominalIn: 3, outsideIn: 3.125, source: 'ASTM B306, drainage tube', obtained: 'from memory, medium' }, { series: 'copper', nominalIn: 4, outsideIn: 4.125, source: 'ASTM B306, drainage tube', obtained: 'from memory, medium' },
    { series: 'hubless', nominalIn: 1.5, outsideIn: 1.9, source: 'CISPI 301, hubless cast iron', obtained: 'from memory, high' }, { series: 'hubless', nominalIn: 2, outsideIn: 2.35, source: 'CISPI 301, hubless cast iron', obtained: 'from memory, high' },
    { series: 'hubless', nominalIn: 3, outsideIn: 3.35, source: 'CISPI 301, hubless cast iron', obtained: 'from memory, high' }, { series: 'hubless', nominalIn: 4, outsideIn: 4.38, source: 'CISPI 301, hubless cast iron', obtained: 'from memory, high' },
  ],
})

const SERIES: Readonly<Record<PipeMaterial, (typeof pipes.rows)[number]['series']>> = { pvc: 'schedule-40', steel: 'schedule-40', copper: 'copper', cpvc: 'copper', 'cast-iron': 'hubless' }
const rowsOf = (material: PipeMaterial) => pipes.rows.filter(r => r.series === SERIES[material])

/** Outside of a pipe; undefined where the table has no such size. */
export function outsideOf(material: PipeMaterial, nominal: Quantity<'in'>): Quantity<'in'> | undefined {
  const r = rowsOf(material).find(x => x.nominalIn === nominal.value)
  return r && fromRow(pipes, r, r.outsideIn, 'in', `${r.series} ${r.nominalIn}`, nominal)
}
export const sizesOf = (material: PipeMaterial): number[] => rowsOf(material).map(r => r.nominalIn)

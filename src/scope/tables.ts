// Every table that is shipped, for who reads them: published figures, and choices of the trade by a threshold.
import { bands } from '../reference/bands.ts'
import { ceilingLimits, lumber } from '../reference/ceilings.ts'
import { stationTable } from '../reference/climate.ts'
import { certificateFields, receiptFields } from '../reference/closeout-rules.ts'
import { studentT } from '../reference/coverage.ts'
import { coolingDays, heatingDays } from '../reference/degree-days.ts'
import { depositLimits } from '../reference/deposits.ts'
import { draftLimits, fanFlows, flueGas } from '../reference/draft.ts'
import { ductGaps, ductTargets, stretchOut } from '../reference/ducts.ts'
import { energyPrices } from '../reference/energy-prices.ts'
import { conditions, densities, fills } from '../reference/fills.ts'
import { carbon, fuels } from '../reference/fuels.ts'
import { infiltrationHeights, nClimates, nHeights, nShelters } from '../reference/infiltration.ts'
import { leakage } from '../reference/leakage.ts'
import { pipes } from '../reference/pipes.ts'
import { atticStock } from '../reference/stock.ts'
import type { Table } from '../reference/table.ts'
import { surfaces, targets } from '../reference/targets.ts'
import { ventRules } from '../reference/ventilation.ts'
import { countyTable } from '../reference/zones.ts'
import { accessClasses, hatchRows, headroomSteps, oldFillSteps, websRows } from './access.ts'
import { gapMethods } from './kind.ts'

export type AnyTable = Table<Record<string, unknown>>

const listed = [
  accessClasses, hatchRows, headroomSteps, oldFillSteps, websRows, atticStock, bands, carbon, ceilingLimits, certificateFields, conditions, coolingDays, densities, depositLimits, draftLimits, ductGaps, ductTargets, energyPrices, fanFlows, fills, flueGas, fuels,
  gapMethods, heatingDays, infiltrationHeights, leakage, lumber, nClimates, nHeights, nShelters, pipes, receiptFields, stretchOut, studentT, surfaces, targets, ventRules,
] as unknown as readonly AnyTable[]

/** By name; the two long ones are made when they are asked for. */
export const allTables = (): AnyTable[] => [...listed, countyTable() as unknown as AnyTable, stationTable() as unknown as AnyTable].sort((a, b) => (a.name < b.name ? -1 : 1))

// The ceiling away from openings and eaves, before and after: cavity with its gaps, beside joists.
import { exposedJoist, settledPerInch } from '../calc/fill.ts'
import { fieldU, joistPathR, layerR, newAboveJoist, rPerInch, seriesR } from '../calc/heat.ts'
import type { ChartRow } from '../books/books.ts'
import { exactly, total, work, type Quantity } from '../units/quantity.ts'
import { baseR, woodPerInch } from './ceiling.ts'
import { gapNow, named, type Layer } from './layers.ts'

export interface FabricInput {
  readonly layers: readonly Layer[]
  readonly oldDepth: Quantity<'in'>
  readonly existingR: Quantity<'R'>
  readonly keptIn: Quantity<'in'>
  readonly gaps: Quantity<'fraction'>
  readonly joistIn: Quantity<'in'>
  readonly framingShare: Quantity<'fraction'>
  readonly topSettled: Quantity<'in'>
  readonly rowOf: ChartRow | undefined
  /** What comes on top leaves the gaps below it empty. */
  readonly gapsStay?: boolean
}

/** New fill drops into the gaps between batts, so the gap path is new fill from the board up. */
export function fabricOf({ layers, oldDepth, existingR, keptIn, gaps, joistIn, framingShare, topSettled, rowOf, gapsStay = false }: FabricInput) {
  const base = baseR()
  const keptPerInch = keptIn.value === 0 ? exactly(0, 'R/in', 'no fill stays') : work(rPerInch, { r: existingR, depthIn: keptIn })
  const newPerInch = rowOf ? work(settledPerInch, { chartR: rowOf.r, settledDepthIn: rowOf.settledDepthIn }) : exactly(0, 'R/in', 'nothing is blown')
  const before = { r: layers.length === 0 ? exactly(0, 'R', 'bare floor') : total('R', named(layers.map(l => l.r), i => `layer${i + 1}`)), depth: oldDepth,
    gaps: layers.map(gapNow).sort((a, b) => b.value - a.value)[0] ?? exactly(0, 'fraction', 'bare floor') }
  const beforePerInch = before.depth.value === 0 ? exactly(0, 'R/in', 'bare floor') : work(rPerInch, { r: before.r, depthIn: before.depth })
  const aboveJoist = (depth: Quantity<'in'>) => work(exposedJoist, { joistIn: depth, keptIn: joistIn })
  const uFieldBefore = work(fieldU, { framing: framingShare, gaps: before.gaps, cavityR: work(seriesR, { base, fill: before.r }), gapR: work(seriesR, { base, fill: exactly(0, 'R', 'open gap') }),
    joistR: work(joistPathR, { base, joistIn, woodPerInch: woodPerInch(), keptAboveIn: aboveJoist(before.depth), keptPerInch: beforePerInch, newAboveIn: exactly(0, 'in', 'nothing blown yet'), newPerInch: exactly(0, 'R/in', 'nothing blown yet') }) })
  const filledR = rowOf ? total('R', { existing: existingR, chart: rowOf.r }) : existingR
  const newAbove = rowOf ? work(newAboveJoist, { topIn: topSettled, joistIn, keptIn }) : exactly(0, 'in', 'nothing is blown')
  const gapFill = rowOf && gapsStay ? rowOf.r : rowOf ? total('R', { filled: work(layerR, { depthIn: keptIn, perInch: newPerInch, squeezed: exactly(0, 'fraction', 'loose fill') }), chart: rowOf.r }) : exactly(0, 'R', 'open gap')
  const uFieldAfter = work(fieldU, { framing: framingShare, gaps, cavityR: work(seriesR, { base, fill: filledR }), gapR: work(seriesR, { base, fill: gapFill }),
    joistR: work(joistPathR, { base, joistIn, woodPerInch: woodPerInch(), keptAboveIn: aboveJoist(keptIn), keptPerInch, newAboveIn: newAbove, newPerInch }) })
  return { base, keptPerInch, newPerInch, beforePerInch, uFieldBefore, uFieldAfter }
}

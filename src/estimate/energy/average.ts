// What the ceiling of an area really averages: every path by its own U, never by R.
import { averageR, fieldArea, meanU, pathU, pathUa } from '../../calc/heat.ts'
import type { AreaMeasure } from '../../scope/area-kind.ts'
import type { HeatPath } from '../../scope/kind.ts'
import { total, work, type Quantity } from '../../units/quantity.ts'

export interface Average { readonly uBefore: Quantity<'U'>; readonly uAfter: Quantity<'U'>; readonly averageR: Quantity<'R'>; /** Without the bare tops of light boxes. */ readonly withoutBareTops?: Quantity<'R'> }

type Fabric = NonNullable<AreaMeasure['fabric']>

function average(fabric: Fabric, paths: readonly { areaFt2: Quantity<'ft2'>; r: Quantity<'R'> }[], field: Quantity<'U'>, strip: Quantity<'U'> | undefined): Quantity<'U'> {
  const taken: Record<string, Quantity> = {}, ua: Record<string, Quantity> = {}
  paths.forEach((p, i) => { taken[`opening${i + 1}`] = p.areaFt2; ua[`opening${i + 1}`] = work(pathUa, { areaFt2: p.areaFt2, u: work(pathU, { totalR: p.r }) }) })
  if (fabric.strip && strip) { taken.eaveStrip = fabric.strip.areaFt2; ua.eaveStrip = work(pathUa, { areaFt2: fabric.strip.areaFt2, u: strip }) }
  const fieldFt2 = work(fieldArea, { netAreaFt2: fabric.netAreaFt2, takenFt2: total('ft2', taken) })
  return work(meanU, { ua: total('UA', { field: work(pathUa, { areaFt2: fieldFt2, u: field }), ...ua }), areaFt2: fabric.netAreaFt2 })
}

/** None for what is left out of the insulation. */
export function averages({ fabric }: AreaMeasure, paths: readonly HeatPath[]): Average | undefined {
  if (!fabric) return undefined
  const before = paths.flatMap(p => (p.rBefore ? [{ areaFt2: p.areaFt2, r: p.rBefore }] : []))
  const after = paths.map(p => ({ areaFt2: p.areaFt2, r: p.rAfter }))
  const uAfter = average(fabric, after, fabric.uFieldAfter, fabric.strip?.uAfter)
  const nominal = (u: Quantity<'U'>) => work(averageR, { u, base: fabric.base })
  const bare = paths.some(p => p.bareTops)
  return {
    uBefore: average(fabric, before, fabric.uFieldBefore, fabric.strip?.uBefore), uAfter, averageR: nominal(uAfter),
    ...(bare ? { withoutBareTops: nominal(average(fabric, paths.filter(p => !p.bareTops).map(p => ({ areaFt2: p.areaFt2, r: p.rAfter })), fabric.uFieldAfter, fabric.strip?.uAfter)) } : {}),
  }
}

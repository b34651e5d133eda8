// Existing fill, from the ceiling up.
import * as f from '../fields/index.ts'
import { mean } from '../calc/arithmetic.ts'
import { layerWeight } from '../calc/fill.ts'
import { layerR, rPerInch, squeezeLoss } from '../calc/heat.ts'
import type { Books } from '../books/books.ts'
import { conditions, densities, fills } from '../reference/fills.ts'
import { fromRow } from '../reference/table.ts'
import { exactly, given, overList, work, type Line, type Quantity } from '../units/quantity.ts'
import { part } from './kind.ts'

export const layerSchema = f.later(() => f.fields({
  fill: f.word(fills.rows.map(r => r.fill), 'what the layer is', { examples: ['fiberglass-batt'] }),
  depthIn: f.list(f.inches(60, 'one probe, ruler to the ceiling plane, away from hatch and eaves', { min: 0 }), 'probes, five or more', { min: 1, max: 100 }),
  condition: f.word(['good', 'fair', 'poor', 'failed'] as const, 'batts: good, fair or poor by their gaps; loose fill: good; failed = counts for nothing'),
  action: f.word(['keep', 'refit', 'move', 'remove'] as const, 'keep as it lies, refit the batts, move aside and lay back, or remove'),
  facing: f.optional(f.word(['none', 'kraft-down', 'kraft-up', 'poly', 'foil'] as const, 'paper, foil or plastic on it: kraft-down faces the rooms; poly is a plastic sheet on top of this layer', { default: 'none' })),
  labelIn: f.optional(f.inches(24, 'thickness on the batt’s label, where it is squeezed')),
  labelR: f.optional(f.rValue('R on the batt’s label, where it is squeezed')),
}, 'one layer of existing fill'))

export type LayerItem = f.StaticOf<typeof layerSchema>

/** One layer as figures. */
export interface Layer {
  readonly depthIn: Quantity<'in'>
  readonly r: Quantity<'R'>
  readonly psf: Quantity<'lb/ft2'>
  readonly gaps: Quantity<'fraction'>
  readonly kept: boolean
  readonly item: LayerItem
  readonly perInch: Quantity<'R/in'>
  readonly at: string
}

export const named = (lines: readonly Quantity[], key: (i: number) => string): Line[] => lines.map((q, i) => [key(i), q])

export function readLayers(items: readonly LayerItem[], listAt: string, books: Books): Layer[] {
  return items.map((item, i) => {
    const at = `${listAt}/${i}`
    const probes = item.depthIn.map((_, n) => part(at, 'depthIn', item.depthIn, n))
    const depthIn = probes.length === 1 ? probes[0] as Quantity<'in'> : overList(mean, 'in', named(probes, n => `probe${n + 1}`))
    const fill = books.fill(item.fill)
    const source = fills.rows.find(r => r.fill === item.fill)!
    const perInch = fromRow(fills, source, fill.rPerIn, 'R/in', item.fill)
    const dense = densities.rows.find(r => r.fill === item.fill)!
    const density = fromRow(densities, dense, dense.densityPcf, 'lb/ft3', item.fill)
    const squeezed = item.labelIn === undefined || item.labelR === undefined ? exactly(0, 'fraction', 'not squeezed, or no label')
      : work(squeezeLoss, { depthIn, labelIn: given(item.labelIn, 'in', `${at}/labelIn`) })
    const perInchHere = item.labelIn === undefined || item.labelR === undefined ? perInch
      : work(rPerInch, { r: given(item.labelR, 'R', `${at}/labelR`), depthIn })
    const failed = item.condition === 'failed'
    const grade = conditions.rows.find(c => c.condition === item.condition)
    const kept = item.action !== 'remove'
    return {
      item, at, depthIn, kept, perInch: perInchHere,
      r: failed ? exactly(0, 'R', 'failed fill counts for nothing') : work(layerR, { depthIn, perInch: perInchHere, squeezed }),
      psf: work(layerWeight, { depthIn, densityPcf: density }),
      // A refitted batt has no gaps left; loose fill has no gap grade.
      gaps: fill.form === 'loose' || item.action === 'refit' || !grade ? exactly(0, 'fraction', 'no gaps counted')
        : fromRow(conditions, grade, grade.gaps, 'fraction', item.condition),
    }
  })
}


/** Before the work a batt that will be refitted still has its gaps. */
export function gapNow(l: Layer): Quantity<'fraction'> {
  const grade = fills.rows.find(r => r.fill === l.item.fill)!.form === 'batt' ? conditions.rows.find(c => c.condition === l.item.condition) : undefined
  return grade ? fromRow(conditions, grade, grade.gaps, 'fraction', grade.condition) : exactly(0, 'fraction', 'no gaps counted')
}



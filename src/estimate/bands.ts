// Whether a priced job lies where such jobs lie. A figure outside is a note: something may be counted twice, or left out.
import type { Finding } from '../findings/finding.ts'
import { bands } from '../reference/bands.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Phase } from '../scope/kind.ts'

interface Priced {
  /** Floor that is blown. */
  readonly areaFt2: number
  readonly price: { readonly directCents: Quantity<'cents'>; readonly materialsCents?: Quantity<'cents'>; readonly totalCents?: Quantity<'cents'>; readonly customerTaxCents?: Quantity<'cents'> }
  readonly byPhase: Readonly<Partial<Record<Phase, Quantity<'h'>>>>
  /** Of the direct cost what such jobs do not hold: ducts, tests, other trades; and of the materials. */
  readonly besideCents: number
  readonly besideMaterialsCents: number
}

const LOOK: Readonly<Record<string, readonly [below: string, above: string]>> = {
  price: ['sealing or baffles may be missing, or an area counted twice', 'labor may be counted twice, or a whole pack bought for a little of it'],
  materials: ['a product may be missing, or hours counted twice', 'a whole pack may be bought for a little of it'],
  sealing: ['openings may be missing', 'an opening may be counted twice'],
  hours: ['openings may be missing, or an area counted twice', 'clock hours of a crew may stand as person-hours in the rates'],
}

/** Notes on figures outside their band; none for a job that blows nothing, or one so small that the minimum charge sets its price. */
export function outOfBand({ areaFt2, price, byPhase, besideCents, besideMaterialsCents }: Priced): Finding[] {
  const { totalCents, materialsCents, customerTaxCents } = price
  if (!totalCents || !materialsCents || totalCents.value === 0 || areaFt2 === 0 || !byPhase.insulate) return []
  // Ducts, tests and other trades come on top of the sealing and blowing that the bands are of.
  const sold = (totalCents.value - (customerTaxCents?.value ?? 0)) * (besideCents === 0 ? 1 : 1 - besideCents / price.directCents.value)
  const sealing = byPhase.seal?.value ?? 0, all = Object.entries(byPhase).reduce((sum, [p, h]) => (p === 'ducts' || p === 'wrap' ? sum : sum + h.value), 0)
  const figures: Readonly<Record<string, number>> = {
    price: sold / 100 / areaFt2, materials: (materialsCents.value - besideMaterialsCents) / sold * 100, sealing: sealing / all * 100, hours: (sealing + byPhase.insulate.value) / areaFt2 * 100,
  }
  return bands.rows.flatMap(({ figure, low, high, unit, fromFt2, toFt2 }): Finding[] => {
    const value = figures[figure]!
    if (areaFt2 < fromFt2 || areaFt2 > toFt2 || (value >= low && value <= high)) return []
    return [{ code: `${figure}-out-of-band`, severity: 'note', path: '/areas', on: 'key', says: `${figure}: ${value.toFixed(2)} ${unit}${besideCents > 0 && ['price', 'materials'].includes(figure) ? ', without ducts, tests and other trades' : ''}`, why: `such jobs come to ${low} to ${high}`, mend: `look again: ${LOOK[figure]![value < low ? 0 : 1]}` }]
  })
}

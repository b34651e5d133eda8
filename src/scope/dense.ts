// Fill packed into closed cavities: under a deck, in a slope.
import { personHours } from '../calc/arithmetic.ts'
import { cavityVolume, packedBags } from '../calc/dense.ts'
import { layerWeight } from '../calc/fill.ts'
import { layerR } from '../calc/heat.ts'
import type { BlownProduct, Books } from '../books/books.ts'
import { exactly, work, type Quantity } from '../units/quantity.ts'
import { fillOf, type Task } from './kind.ts'

export interface Packed { readonly bags: Quantity<'bag'>; readonly r: Quantity<'R'>; readonly psf: Quantity<'lb/ft2'>; readonly perInch: Quantity<'R/in'>; readonly densityPcf: Quantity<'lb/ft3'> }

/** Density and R per inch of a packed product: its own, else a starting value of its kind. */
function packing(p: BlownProduct, books: Books): { densityPcf: Quantity<'lb/ft3'>; rPerIn: Quantity<'R/in'> } {
  if (p.dense) return p.dense
  return p.fill === 'cellulose' ? { densityPcf: books.start('dense-cellulose-density', 3.5, 'lb/ft3', 'density of dense-packed cellulose', 'SWS 4.1001.5 (from memory, high)'), rPerIn: books.start('dense-cellulose-r', 3.7, 'R/in', 'R per inch of dense-packed cellulose', 'trade texts (from memory, medium)') }
    : { densityPcf: books.start('dense-glass-density', 1.6, 'lb/ft3', 'density of dense-packed fiberglass', 'trade texts (from memory, medium): 1.5 and more'), rPerIn: books.start('dense-glass-r', 4, 'R/in', 'R per inch of dense-packed fiberglass', 'trade texts (from memory, medium)') }
}

export function packed(p: BlownProduct, netAreaFt2: Quantity<'ft2'>, framing: Quantity<'fraction'>, depthIn: Quantity<'in'>, books: Books): Packed {
  const { densityPcf, rPerIn } = packing(p, books)
  return {
    bags: work(packedBags, { volumeFt3: work(cavityVolume, { areaFt2: netAreaFt2, framing, depthIn }), densityPcf, bagLb: p.bagLb }),
    r: work(layerR, { depthIn, perInch: rPerIn, squeezed: exactly(0, 'fraction', 'packed, not squeezed batts') }), psf: work(layerWeight, { depthIn, densityPcf }), perInch: rPerIn, densityPcf,
  }
}

export const packTask = (id: string, what: string, p: BlownProduct, bags: Quantity<'bag'>, access: Quantity<'factor'>, books: Books): Task => ({
  id: `pack-${id}`, title: `Dense-pack ${what}, to the bags and no air left`, phase: 'insulate', work: 'pack', touches: [id], buries: [id], serves: fillOf(id), role: 'hose',
  personHours: work(personHours, { amount: bags, rate: books.rate('dense-pack', 0.2, 'bag'), access }), needs: [{ item: p.item, quantity: bags }],
  cautions: ['Pressure can push a thin ceiling off: watch it from below, stop at a bulge.', 'Respirator and eye cover.', 'Two-way signal with the feeder.'], proof: 'bag count, photo of each row of holes' })

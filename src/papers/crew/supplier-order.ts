// What stands on the supplier order, as plain data: by supplier, in whole purchase units, with what else would do.
import type { EstimateOut, MaterialOut } from '../../estimate/output.ts'

export interface OrderLine {
  readonly material: MaterialOut
  /** Bags, depth and weight follow from its own label: nothing stands for it. */
  readonly blown: boolean
}
export interface SupplierGroup { readonly supplier: string | undefined; readonly lines: readonly OrderLine[] }

/** What has to be ordered; own stock is taken off before. Suppliers in the order in which they are first met. */
export function supplierOrderOf({ materials, areas }: EstimateOut): SupplierGroup[] {
  const blown = new Set(areas.flatMap(a => (a.bags === undefined ? [] : a.product ?? [])))
  const lines = materials.filter(m => m.buy > 0).map((material): OrderLine => ({ material, blown: blown.has(material.item) }))
  return [...new Set(lines.map(l => l.material.supplier))].map(supplier => ({ supplier, lines: lines.filter(l => l.material.supplier === supplier) }))
}

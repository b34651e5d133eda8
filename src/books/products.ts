// The products of a price book, as the kinds ask for them: by role, by item, blown ones by name.
import { cents } from '../units/money.ts'
import { row, type Quantity, type Unit } from '../units/quantity.ts'
import type { BlownProduct, Books, InsteadOf, Product } from './books.ts'
import { answer, listedRows } from './chart.ts'
import type { BlownRow, PriceBook, ProductRow } from './price-book.ts'

/** A role that no product of the price book fills; or one whose product can’t be had, and nothing in its place. */
export class NoProduct extends Error {
  constructor(readonly role: string, readonly book: string, readonly missing?: { readonly item: string; readonly substitutes: readonly string[] }) {
    super(missing ? `${missing.item} of ${book} can't be had, and nothing in its place` : `no product of ${book} fills the role ${role}`)
  }
}

/** A row of a book, and whether it can be had. */
interface Row { readonly available: boolean; readonly substitutes: readonly string[]; readonly book: string }
type Stocked<P extends Product> = P & Row

function productOf(p: ProductRow | BlownRow, { name: book, supplier }: PriceBook): Stocked<Product> {
  const at = `${book}: ${p.item}${p.dated === undefined ? '' : `, ${p.dated}`}`
  const q = <U extends Unit>(value: number, unit: U, of = at) => row(value, unit, of, 'price book')
  const blown = 'chart' in p, seller = p.supplier ?? supplier
  return {
    item: p.item, name: p.name, role: blown ? 'blown' : p.role, unit: blown ? 'bag' : p.unit, buyUnit: p.buyUnit, charge: blown ? 'whole' : p.charge,
    pack: blown ? q(1, 'bag') : q(p.pack, p.unit as Unit), wastePct: q(p.wastePct ?? 0, 'pct'), unitPriceCents: q(cents(p.price), 'cents'),
    ...(p.breaks ? { breaks: p.breaks.map(b => ({ from: b.from, unitPriceCents: q(cents(b.price), 'cents', `${at}, from ${b.from}`) })) } : {}),
    ...(p.stock === undefined ? {} : { stock: q(p.stock, 'each', `${at}, stock`) }), ...(seller === undefined ? {} : { supplier: seller }), ...(p.code === undefined ? {} : { code: p.code }),
    noncombustible: !blown && p.noncombustible === 'yes',
    ...(!blown && p.ratedFor ? { ratedFor: p.ratedFor } : {}), ...(!blown && p.heightIn !== undefined ? { heightIn: q(p.heightIn, 'in') } : {}),
    ...(!blown && p.sizeIn ? { sizeIn: [q(p.sizeIn[0], 'in'), q(p.sizeIn[1], 'in')] as const } : {}), ...(!blown && p.rValue !== undefined ? { rValue: q(p.rValue, 'R') } : {}), ...(!blown && p.thicknessIn !== undefined ? { thicknessIn: q(p.thicknessIn, 'in') } : {}),
    available: p.available !== 'no', substitutes: p.substitutes ?? [], book,
  }
}

function blownOf(p: BlownRow, book: PriceBook): Stocked<BlownProduct> {
  const q = <U extends Unit>(value: number, unit: U, of = '') => row(value, unit, `${book.name}: ${p.item}${of}`, 'price book')
  return { ...productOf(p, book), fill: p.fill, bagLb: q(p.bagLb, 'lb'), answer: need => answer(p, book.name, need), rows: listedRows(p, book.name),
    ...(p.dense ? { dense: { densityPcf: q(p.dense.densityPcf, 'lb/ft3', ', dense'), rPerIn: q(p.dense.rPerIn, 'R/in', ', dense') } } : {}) }
}

type ForJob = Pick<Books, 'product' | 'products' | 'has' | 'item' | 'blown' | 'fillFor' | 'blownItems'>

/** Rows of a book by what asks for them; each job then looks at them by itself, since what stands for another is told by job. */
export function goodsOf(prices: PriceBook): { forJob(): ForJob } {
  const byRole = new Map<string, Stocked<Product>[]>(), byItem = new Map<string, Stocked<Product>>(), blown = new Map<string, Stocked<BlownProduct>>()
  for (const p of prices.products) {
    const product = productOf(p, prices), same = byRole.get(p.role)
    if (same) same.push(product); else byRole.set(p.role, [product])
    if (!byItem.has(p.item)) byItem.set(p.item, product)
  }
  for (const p of prices.blown) if (!blown.has(p.item)) blown.set(p.item, blownOf(p, prices))
  const firstBlown = [...blown.values()][0], blownItems = [...blown.values()].filter(p => p.available).map(p => p.item)

  return {
    forJob() {
      const instead = new Map<string, InsteadOf>()
      const told = <P extends Product>(p: P): P => { const why = instead.get(p.item); return why ? { ...p, insteadOf: why } : p }
      /** The product itself, or what may take its place. */
      function had<P extends Product>(p: Stocked<P>, among: (item: string) => Stocked<P> | undefined, meets: (p: P) => boolean = () => true): Stocked<P> | undefined {
        if (p.available) return p
        const others = p.substitutes.flatMap(s => among(s) ?? []).filter(o => o.available), other = others.find(meets) ?? others[0]
        if (other) instead.set(other.item, { item: p.item, name: p.name, why: 'it can’t be had now' })
        return other
      }
      const inRole = (role: string) => (item: string) => byRole.get(role)?.find(p => p.item === item)
      const forNeed = (need: Quantity<'R'> | undefined) => (p: BlownProduct): boolean => need === undefined || need.value <= 0 || p.answer(need).is !== 'beyond'
      return {
        product(role) {
          const p = byRole.get(role)?.[0]
          if (!p) throw new NoProduct(role, prices.name)
          const used = had(p, inRole(role))
          if (!used) throw new NoProduct(role, prices.name, p)
          return told(used)
        },
        products(role) {
          const all = byRole.get(role) ?? [], used = all.filter(p => p.available)
          if (used.length === 0 && all[0]) throw new NoProduct(role, prices.name, all[0])
          return used
        },
        has: item => byItem.has(item) || blown.has(item),
        item: item => told(byItem.get(item)!),
        blown: item => { const p = blown.get(item); return p && told(p) },
        blownItems,
        fillFor(item, need) {
          const p = item === undefined ? firstBlown : blown.get(item)
          const used = p && had(p, i => blown.get(i), forNeed(need))
          if (p && !used) throw new NoProduct(p.item, prices.name, p)
          return used && told(used)
        },
      }
    },
  }
}

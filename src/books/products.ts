// The products of a price book, as the kinds ask for them: by role, by item, blown ones by name.
import { cents } from '../units/money.ts'
import { given, row, type Quantity, type Unit } from '../units/quantity.ts'
import type { BlownProduct, Books, InsteadOf, Product } from './books.ts'
import { answer, listedRows } from './chart.ts'
import type { OwnValues } from './own-values.ts'
import type { BlownRow, PriceBook, ProductRow } from './price-book.ts'
import { standsFor } from './stands.ts'

/** A role that no product of the price book fills; or one whose product can’t be had, and nothing in its place. */
export class NoProduct extends Error {
  constructor(readonly role: string, readonly book: string, readonly missing?: { readonly item: string; readonly substitutes: readonly string[] }) {
    super(missing ? `${missing.item} of ${book} can't be had, and nothing in its place` : `no product of ${book} fills the role ${role}`)
  }
}

/** A row of a book, and whether it can be had. */
interface Row { readonly available: boolean; readonly substitutes: readonly string[]; readonly book: string; /** Which of the books. */ readonly nth: number }
type Stocked<P extends Product> = P & Row

function productOf(p: ProductRow | BlownRow, { name: book, supplier }: PriceBook, nth: number): Stocked<Product> {
  const at = `${book}: ${p.item}${p.dated === undefined ? '' : `, ${p.dated}`}`
  const q = <U extends Unit>(value: number, unit: U, of = at) => row(value, unit, of, 'price book')
  const blown = 'chart' in p, seller = p.supplier ?? supplier
  return {
    item: p.item, name: p.name, role: blown ? 'blown' : p.role, unit: blown ? 'bag' : p.unit, buyUnit: p.buyUnit, charge: blown ? 'whole' : p.charge,
    pack: blown ? q(1, 'bag') : q(p.pack, p.unit as Unit), wastePct: q(p.wastePct ?? 0, 'pct'), unitPriceCents: q(cents(p.price), 'cents'),
    ...(p.breaks ? { breaks: p.breaks.map(b => ({ from: b.atLeast, unitPriceCents: q(cents(b.price), 'cents', `${at}, from ${b.atLeast}`) })) } : {}),
    ...(p.stock === undefined ? {} : { stock: q(p.stock, 'each', `${at}, stock`) }), ...(seller === undefined ? {} : { supplier: seller }), ...(p.code === undefined ? {} : { code: p.code }),
    noncombustible: !blown && p.noncombustible === 'yes',
    ...(!blown && p.ratedFor ? { ratedFor: p.ratedFor } : {}), ...(!blown && p.heightIn !== undefined ? { heightIn: q(p.heightIn, 'in') } : {}),
    ...(!blown && p.sizeIn ? { sizeIn: [q(p.sizeIn[0], 'in'), q(p.sizeIn[1], 'in')] as const } : {}), ...(!blown && p.rValue !== undefined ? { rValue: q(p.rValue, 'R') } : {}), ...(!blown && p.thicknessIn !== undefined ? { thicknessIn: q(p.thicknessIn, 'in') } : {}),
    available: p.available !== 'no', substitutes: p.substitutes ?? [], book, nth,
  }
}

function blownOf(p: BlownRow, book: PriceBook, nth: number): Stocked<BlownProduct> {
  const q = <U extends Unit>(value: number, unit: U, of = '') => row(value, unit, `${book.name}: ${p.item}${of}`, 'price book')
  return { ...productOf(p, book, nth), fill: p.fill, bagLb: q(p.bagLb, 'lb'), answer: need => answer(p, book.name, need), rows: listedRows(p, book.name),
    ...(p.dense ? { dense: { densityPcf: q(p.dense.densityPcf, 'lb/ft3', ', dense'), rPerIn: q(p.dense.rPerIn, 'R/in', ', dense') } } : {}) }
}

/** What a job asks of the products: those named for a role, the supplier named, and its own prices. */
export type Wish = Pick<OwnValues, 'products' | 'supplier' | 'prices'>
/** What was decided for a job, by item: the offer taken in place of it. */
export type TakenOffers = ReadonlyMap<string, Product>
type ForJob = Pick<Books, 'product' | 'products' | 'has' | 'item' | 'blown' | 'fillFor' | 'blownItems' | 'offers'>

const into = <V>(map: Map<string, V[]>, key: string, value: V): void => { const same = map.get(key); if (same) same.push(value); else map.set(key, [value]) }

/** Rows of the books by what asks for them; each job then looks at them by itself, since what stands for another is told by job. */
export function goodsOf(books: readonly PriceBook[]): { /** All can be had, of one supplier: no job makes anything of them that another would see. */ readonly steady: boolean; forJob(wish: Wish, taken?: TakenOffers): ForJob } {
  const several = books.length > 1, names = books.map(b => b.name).join(' and ')
  const byRole = new Map<string, Stocked<Product>[]>(), byItem = new Map<string, Stocked<Product>[]>(), blown = new Map<string, Stocked<BlownProduct>[]>()
  const sold = <P extends Product>(p: Stocked<P>): Stocked<P> => (several && p.supplier === undefined ? { ...p, supplier: p.book } : p)
  for (const [nth, book] of books.entries()) {
    for (const p of book.products) { const product = sold(productOf(p, book, nth)); into(byRole, p.role, product); into(byItem, p.item, product) }
    for (const p of book.blown) into(blown, p.item, sold(blownOf(p, book, nth)))
  }

  return {
    steady: !several && [...byItem.values(), ...blown.values()].flat().every(p => p.available),
    forJob({ products: named = {}, supplier, prices = [] }, taken) {
      const instead = new Map<string, InsteadOf>(), handed = new Map<string, Product>(), own = new Map(prices.map((p, i) => [p.item, { ...p, at: `/choices/prices/${i}` }]))
      const plainly = !several && taken === undefined && own.size === 0 && supplier === undefined
      const theirs = <P extends Stocked<Product>>(of: readonly P[]): P | undefined => of.find(p => p.supplier === supplier && p.available) ?? of.find(p => p.available) ?? of[0]
      const blownOnes = [...blown.values()].map(of => theirs(of)!), blownItem = (item: string): Stocked<BlownProduct> | undefined => theirs(blown.get(item) ?? [])
      const firstBlown = (supplier === undefined ? undefined : blownOnes.find(p => p.supplier === supplier && p.available)) ?? blownOnes[0]
      /** One row of each item, in the order of the books. */
      const inRole = (role: string): readonly Stocked<Product>[] => { const all = byRole.get(role) ?? []; return several ? [...new Set(all.map(p => p.item))].map(item => theirs(all.filter(p => p.item === item))!) : all }

      /** As the job has it: the offer taken, its own price, and what it stands for. */
      function told<P extends Product>(p: P): P {
        if (plainly && instead.size === 0) return p
        const offer = (taken?.get(p.item) ?? p) as P, why = instead.get(p.item), mine = own.get(offer.item)
        const q = <U extends Unit>(key: string, value: number, unit: U) => given(value, unit, `${mine!.at}/${key}`)
        const { breaks: _, ...plain } = offer
        const priced = mine === undefined ? offer : {
          ...(mine.price === undefined && mine.breaks === undefined ? offer : plain), ...(mine.price === undefined ? {} : { unitPriceCents: q('price', cents(mine.price), 'cents') }), ...(mine.wastePct === undefined ? {} : { wastePct: q('wastePct', mine.wastePct, 'pct') }),
          ...(mine.breaks === undefined ? {} : { breaks: mine.breaks.map((b, i) => ({ from: b.atLeast, unitPriceCents: q(`breaks/${i}/price`, cents(b.price), 'cents') })) }), ...(mine.stock === undefined ? {} : { stock: q('stock', mine.stock, 'each') }),
        } as unknown as P
        const made = why ? { ...priced, insteadOf: why } : priced
        handed.set(made.item, made)
        return made
      }
      /** The product itself, or what may take its place. */
      function had<P extends Product>(p: Stocked<P>, among: (item: string) => Stocked<P> | undefined, meets: (p: P) => boolean = () => true): Stocked<P> | undefined {
        if (p.available) return p
        const others = p.substitutes.flatMap(s => among(s) ?? []).filter(o => o.available), other = others.find(meets) ?? others[0]
        if (other) instead.set(other.item, { item: p.item, name: p.name, why: 'it can’t be had now' })
        return other
      }
      const forNeed = (need: Quantity<'R'> | undefined) => (p: BlownProduct): boolean => need === undefined || need.value <= 0 || p.answer(need).is !== 'beyond'
      return {
        product(role) {
          const all = inRole(role), p = all.find(x => x.item === named[role]) ?? (supplier === undefined ? undefined : all.find(x => x.supplier === supplier && x.available)) ?? all[0]
          if (!p) throw new NoProduct(role, names)
          const used = had(p, item => all.find(x => x.item === item))
          if (!used) throw new NoProduct(role, p.book, p)
          return told(used)
        },
        products(role) {
          const all = inRole(role), used = all.filter(p => p.available)
          if (used.length === 0 && all[0]) throw new NoProduct(role, all[0].book, all[0])
          // What the job names, else what the supplier named has, comes before the others.
          const rank = (p: Product): number => (p.item === named[role] ? 0 : supplier !== undefined && p.supplier === supplier ? 1 : 2)
          return (named[role] === undefined && supplier === undefined ? used : [...used].sort((a, b) => rank(a) - rank(b))).map(p => told(p))
        },
        has: item => byItem.has(item) || blown.has(item),
        item: item => handed.get(item) ?? told(theirs(byItem.get(item)!)!),
        blown: item => { const p = blownItem(item); return p && told(p) },
        blownItems: blownOnes.filter(p => p.available).map(p => p.item),
        fillFor(item, need) {
          const p = item === undefined ? firstBlown : blownItem(item), used = p && had(p, blownItem, forNeed(need))
          if (p && !used) throw new NoProduct(p.item, p.book, p)
          return used && told(used)
        },
        offers(p) {
          if (!several || (supplier !== undefined && p.supplier === supplier)) return []
          const same = (p.role === 'blown' ? blown : byItem).get(p.item) ?? []
          // Of each other book the same item, else its first in the role that does no less.
          const others = p.role === 'blown' || named[p.role] === p.item ? [] : books.flatMap((_, nth) => (same.some(s => s.nth === nth) ? [] : (byRole.get(p.role) ?? []).find(o => o.nth === nth && o.available && standsFor(o, p)) ?? []))
          return [...same.filter(s => s.available && (s.role === 'blown' || standsFor(s, p))), ...others].filter((o, i, all) => (o.supplier !== p.supplier || o.item !== p.item) && all.findIndex(x => x.nth === o.nth && x.item === o.item) === i)
        },
      }
    },
  }
}

// What a job sets for itself: whether the books can take it, and what each figure stands in place of.
import type { Finding } from '../findings/finding.ts'
import { nearest } from '../findings/suggest.ts'
import type { Override } from './books.ts'
import { companyChecks, gather, listChecks, wholeCents, breakChecks } from './checks.ts'
import type { CompanyFile } from './company-file.ts'
import { companyFor, type OwnValues } from './own-values.ts'
import { roleNames, type PriceBook } from './price-book.ts'

type Choices = OwnValues & { readonly marginPct?: number; readonly permitFee?: number }

const told = (value: unknown, unset: string): number | string => (value === undefined ? unset : typeof value === 'number' || typeof value === 'string' ? value : JSON.stringify(value))
const rowsOf = (books: readonly PriceBook[]) => books.flatMap(b => [...b.products, ...b.blown])

/** Each figure of the price book and the company file that the job has its own for. Rates and values are known once the house is taken off. */
export function overridesOf(own: Choices, books: readonly PriceBook[], company: CompanyFile): Override[] {
  const out: Override[] = [], say = (path: string, value: unknown, insteadOf: number | string): void => { if (value !== undefined) out.push({ path: `/choices/${path}`, value: told(value, ''), insteadOf }) }
  say('marginPct', own.marginPct, company.grossMarginPct ?? `overhead and net profit of ${company.netProfitPct ?? 0} %`)
  say('permitFee', own.permitFee, told(company.permitFee, 'none'))
  for (const [role, item] of Object.entries(own.products ?? {})) say(`products/${role}`, item, books.flatMap(b => b.products).find(p => p.role === role)?.item ?? 'none')
  say('supplier', own.supplier, company.supplier ?? (books.length > 1 ? 'the cheapest' : 'the order of the price book'))
  for (const [i, { item, ...changes }] of (own.prices ?? []).entries()) {
    const row = rowsOf(books).find(p => p.item === item)
    for (const key of ['price', 'wastePct', 'breaks', 'stock'] as const) say(`prices/${i}/${key}`, changes[key], told(row?.[key], key === 'wastePct' || key === 'stock' ? '0' : 'none'))
  }
  for (const [key, value] of Object.entries(own.company ?? {})) say(`company/${key}`, value, told(company[key as keyof CompanyFile], 'nothing'))
  return out
}

/** What of it names nothing, stands twice, or leaves the company file with two answers. */
export const ownFaults = (own: Choices, books: readonly PriceBook[], company: CompanyFile): Finding[] => gather(say => {
  const items = rowsOf(books).map(p => p.item), at = '/choices'
  for (const [i, p] of (own.prices ?? []).entries()) {
    const path = `${at}/prices/${i}`
    if (!items.includes(p.item)) {
      const near = nearest(p.item, items)
      say('item-unknown', `${path}/item`, `item: ${p.item}`, 'the price book has no such product', near ? `did you mean ${near}?` : 'write an item of the price book')
    } else if (own.prices!.findIndex(o => o.item === p.item) < i) say('item-twice', `${path}/item`, `item: ${p.item}`, 'prices has it already', 'take one of them out')
    const price = p.price ?? rowsOf(books).find(r => r.item === p.item)?.price
    if (price !== undefined) breakChecks(say, path, p.breaks ?? [], price)
  }
  for (const [role, item] of Object.entries(own.products ?? {})) {
    const path = `${at}/products/${role}`, known = (roleNames as readonly string[]).includes(role), inRole = books.flatMap(b => b.products).filter(p => p.role === role).map(p => p.item)
    if (!known) { const near = nearest(role, roleNames); say('role-unknown', path, role, 'no role has that name', near ? `did you mean ${near}?` : 'the roles stand in the file that lidwork prices new writes', { on: 'key' }) }
    else if (!inRole.includes(item)) { const near = nearest(item, inRole); say('item-unknown', path, `${role}: ${item}`, `no product of the price book in that role has that name`, near ? `did you mean ${near}?` : `write one of: ${[...new Set(inRole)].join(', ')}`) }
  }
  const sellers = [...new Set(books.flatMap(b => [b.supplier ?? (books.length > 1 ? b.name : undefined), ...[...b.products, ...b.blown].map(p => p.supplier)]))].filter(s => s !== undefined)
  if (own.supplier !== undefined && !sellers.includes(own.supplier)) {
    const near = nearest(own.supplier, sellers)
    say('supplier-unknown', `${at}/supplier`, `supplier: ${own.supplier}`, 'nothing in the price books is sold by one of that name', near ? `did you mean ${near}?` : sellers.length === 0 ? 'write supplier: in the price book too' : `write one of: ${sellers.join(', ')}`)
  }
  if (own.permitFee !== undefined) wholeCents(say, `${at}/permitFee`, own.permitFee)
  listChecks(own, say, at)
  if (!own.company) return
  const { netProfitPct, overheadPerHour, overheadPct, grossMarginPct } = own.company
  if (own.marginPct !== undefined && [netProfitPct, overheadPerHour, overheadPct, grossMarginPct].some(v => v !== undefined)) say('overhead-twice', `${at}/marginPct`, 'marginPct beside a margin or overhead under company', 'the price would follow from two', 'take one of them out', { on: 'key' })
  // What the company file by itself has right can only be wrong through what the job says.
  for (const f of companyChecks(companyFor(company, own.company))) {
    const key = f.path.split('/')[1] ?? ''
    say(f.code, `${at}/company${key in own.company ? f.path : ''}`, f.says, f.why, f.mend, { ...(f.on ? { on: f.on } : {}), severity: f.severity })
  }
})

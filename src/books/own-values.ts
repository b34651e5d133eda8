// What a job may set for itself in place of the books: any figure of the company file, any rate, starting value and price.
import * as f from '../fields/index.ts'
import { companySchema, type CompanyFile } from './company-file.ts'
import { productSchema, roleNames } from './price-book.ts'

/** What names a company file, and what stands beside `company` in a job. */
const APART = ['format', 'name', 'dated', 'demo', 'subcontract', 'rates', 'values', 'supplier', 'letterhead', 'terms'] as const
type Apart = (typeof APART)[number]
export type OwnCompany = Partial<Omit<CompanyFile, Apart>>

/** Keys under `choices` of a job. */
export function ownValues() {
  const { subcontract, rates, values, supplier } = companySchema().properties, { item, price, wastePct, breaks, stock } = productSchema().properties
  return {
  products: f.optional(f.byName(f.id('item of the price book'), `product for a role (${roleNames.slice(0, 3).join(', ')} and the others), in place of the first that fills it`)),
  supplier,
  prices: f.optional(f.list(f.fields({ item, price: f.optional(price), wastePct, breaks, stock }, 'one product'), 'what this job pays for a product, in place of the price book', { max: 200 })),
  company: f.optional(f.fields(Object.fromEntries(Object.entries(companySchema().properties).filter(([key]) => !(APART as readonly string[]).includes(key)).map(([key, of]) => [key, f.optional(of)])), 'any figure of the company file, for this job alone') as unknown as f.TObject),
  rates, values, subcontract,
  }
}

/** The same as data. */
export interface OwnValues {
  readonly products?: Readonly<Record<string, string>>
  readonly supplier?: string
  readonly prices?: readonly { readonly item: string; readonly price?: number; readonly wastePct?: number; readonly breaks?: readonly { readonly atLeast: number; readonly price: number }[]; readonly stock?: number }[]
  readonly company?: OwnCompany
  readonly rates?: readonly { readonly work: string; readonly hours: number }[]
  readonly values?: readonly { readonly id: string; readonly value: number }[]
  readonly subcontract?: readonly { readonly work: string; readonly price: number }[]
}

/** Keys that say one thing in different ways: one of them in a job takes the company's others away. */
const ONE_OF: readonly (readonly (keyof OwnCompany)[])[] = [['wage', 'builtUpWage'], ['grossMarginPct', 'overheadPerHour', 'overheadPct', 'netProfitPct'], ['travelPerMile', 'travelPerDay']]

/** The company file as one job has it. */
export function companyFor(file: CompanyFile, own: OwnCompany | undefined): CompanyFile {
  if (!own) return file
  const gone = new Set<string>(ONE_OF.filter(group => group.some(k => own[k] !== undefined)).flat())
  return { ...Object.fromEntries(Object.entries(file).filter(([k]) => !gone.has(k))) as unknown as CompanyFile, ...own }
}

// What a kind may ask: a rate, a product by role, a chart row, a target, a table row. Every answer carries its row.
import type { Quantity } from '../units/quantity.ts'
import type { Fill } from '../reference/fills.ts'
import type { Risk } from './company-file.ts'

export interface Product {
  readonly item: string
  readonly name: string
  readonly role: string
  readonly unit: string
  readonly buyUnit: string
  readonly pack: Quantity
  readonly wastePct: Quantity<'pct'>
  /** Of one, before any break. */
  readonly unitPriceCents: Quantity<'cents'>
  /** Prices of each from so many on, in one job; the quantity rises. */
  readonly breaks?: readonly PriceBreak[]
  /** On hand. */
  readonly stock?: Quantity<'each'>
  readonly supplier?: string
  /** The supplier’s own number. */
  readonly code?: string
  /** It stands for another, and why. */
  readonly insteadOf?: InsteadOf
  readonly offers?: readonly Offer[]
  readonly charge: 'whole' | 'used'
  readonly ratedFor?: 'ic' | 'non-ic'
  readonly noncombustible: boolean
  readonly heightIn?: Quantity<'in'>
  readonly sizeIn?: readonly [Quantity<'in'>, Quantity<'in'>]
  readonly rValue?: Quantity<'R'>
  readonly thicknessIn?: Quantity<'in'>
}

export interface PriceBreak { readonly from: number; readonly unitPriceCents: Quantity<'cents'> }
/** What another supplier would have charged for the same need. */
export interface Offer { readonly supplier: string; readonly item: string; readonly name: string; readonly totalCents: Quantity<'cents'> }
export interface InsteadOf { readonly item: string; readonly name: string; readonly why: string }

export interface ChartRow {
  readonly chartR: number
  readonly interpolated: boolean
  readonly settledDepthIn: Quantity<'in'>
  readonly initialDepthIn: Quantity<'in'>
  readonly weightPsf: Quantity<'lb/ft2'>
  readonly coverageFt2: Quantity<'ft2/bag'>
  readonly r: Quantity<'R'>
}

/** What the chart says to a need. */
export type ChartAnswer =
  | { readonly is: 'row'; readonly row: ChartRow; readonly excess?: boolean; readonly below?: ChartRow; readonly above?: ChartRow }
  /** Less than half the first row: not worth blowing. */
  | { readonly is: 'leave'; readonly first: ChartRow }
  | { readonly is: 'beyond'; readonly last: ChartRow }

export interface BlownProduct extends Product {
  readonly fill: string
  readonly bagLb: Quantity<'lb'>
  /** Packed into closed cavities, where its maker says. */
  readonly dense?: { readonly densityPcf: Quantity<'lb/ft3'>; readonly rPerIn: Quantity<'R/in'> }
  answer(need: Quantity<'R'>): ChartAnswer
  /** The listed rows of its label, R rising. */
  readonly rows: readonly ChartRow[]
}

export interface Books {
  /** Person-hours for each unit of a kind of work: the company's own, else the starting value, listed as an assumption. */
  rate(work: string, starting: number, per: string): Quantity<'h/unit'>
  /** A starting value that the company file may replace. */
  start<U extends Quantity['unit']>(id: string, value: number, unit: U, what: string, why?: string): Quantity<U>
  /** The product that fills a role. */
  product(role: string): Product
  /** All that fill a role, in the order of the price book. */
  products(role: string): readonly Product[]
  /** Whether the price book holds it at all, blown or not. */
  has(item: string): boolean
  item(item: string): Product
  blown(item: string): BlownProduct | undefined
  /** The blown product of an area: the one named, else the first; where it can’t be had, the first of its substitutes whose chart reaches the need. */
  fillFor(item: string | undefined, need?: Quantity<'R'>): BlownProduct | undefined
  readonly blownItems: readonly string[]
  /** With several price books side by side: who else sells what does the same work. */
  offers(product: Product): readonly Product[]
  /** Several price books lie side by side. */
  readonly sideBySide: boolean
  /** The same books for the same job, once it is decided from whom each item comes. */
  taking(offers: ReadonlyMap<string, Product>): Books
  fill(name: string): Fill
  target(): Quantity<'R'>
  /** R that the job's edition asks of a duct in an attic; a starting value where the goal is an R of its own. */
  ductTarget(use: 'supply' | 'return', acrossIn: number): Quantity<'R'>
  /** A subcontractor's price for one piece of work. */
  subcontract(work: string): Quantity<'cents'>
  /** Which of several ways the company takes, where the job is silent. */
  choice(name: string): string | undefined
  readonly company: Company
  /** What the job set in place of the books, as far as the house asked for it. */
  overrides(): Override[]
  readonly basis: { readonly priceBook: Named; readonly priceBooks?: readonly Named[]; readonly company: Named }
}

/** A figure that the job sets for itself, by its place in the job file. */
export interface Override { readonly path: string; readonly value: number | string; readonly insteadOf: number | string }

export interface Step { readonly upTo: number; readonly factor: Quantity<'factor'> }
/** Access factors of the company’s own. */
export interface AccessFactors {
  readonly headroom?: readonly Step[]; readonly oldFill?: readonly Step[]
  readonly webs?: readonly { readonly webs: string; readonly factor: Quantity<'factor'> }[]
  readonly hatch?: readonly { readonly sides: readonly [number, number]; readonly factor: Quantity<'factor'> }[]
}

/** Which book, of which day, and whether its figures are invented. */
export interface Named { readonly name: string; readonly dated: string; readonly demo: boolean }

export interface Company {
  readonly name: string
  readonly crew: Quantity<'person'>
  readonly hoursPerDay: Quantity<'h'>
  readonly wageCents: Quantity<'cents'>
  readonly machine: 'truck' | 'rental'
  /** Gross, or net of an overhead that is given. */
  readonly marginPct: Quantity<'pct'>
  readonly overhead?: { readonly per: 'hour'; readonly cents: Quantity<'cents'> } | { readonly per: 'cost'; readonly pct: Quantity<'pct'> }
  readonly salesTax: 'contractor-pays' | 'customer-taxed' | 'exempt'
  readonly subMarkupPct?: Quantity<'pct'>
  readonly travelPerMileCents?: Quantity<'cents'>
  readonly travelPerDayCents?: Quantity<'cents'>
  readonly permitCents?: Quantity<'cents'>
  readonly billWholeDays: boolean
  readonly retestEachDay: boolean
  readonly contingencyPct: Quantity<'pct'>
  readonly contingencyByRisk: readonly { readonly risk: Risk; readonly pct: Quantity<'pct'> }[]
  readonly accessFactors?: AccessFactors
  readonly minimumCents: Quantity<'cents'>
  readonly salesTaxPct: Quantity<'pct'>
  readonly roundingCents: Quantity<'cents'>
  readonly visitFeeCents: Quantity<'cents'>
  readonly depositPct: Quantity<'pct'>
  readonly depositRules: readonly { readonly state: string; readonly maxPct?: number; readonly maxUsd?: number; readonly aboveUsd?: number }[]
  readonly validDays: Quantity<'day'>
  readonly dumpCentsPerTon: Quantity<'cents'>
  readonly dumpMinimumCents: Quantity<'cents'>
  readonly reprice: Thresholds
}

/** What a company does with open quotes when prices move. */
export interface Thresholds {
  readonly honorUpToPct: Quantity<'pct'>
  readonly reissueAbovePct: Quantity<'pct'>
  readonly leastMarginPct?: Quantity<'pct'>
  readonly reissueWithinDays: Quantity<'day'>
}

// The figures of a company as one job has them: each a row of the company file, or given in the job.
import { productiveWage, withBurden } from '../calc/price.ts'
import { cents } from '../units/money.ts'
import { assumed, given, row, totalOf, work, type Quantity, type Unit } from '../units/quantity.ts'
import type { Company, Thresholds } from './books.ts'
import type { CompanyFile } from './company-file.ts'
import { companyFor, type OwnCompany } from './own-values.ts'

/** A figure by its path in the company file, from there or from the job. */
type Said = <U extends Unit>(path: string, value: number, unit: U) => Quantity<U>

/** The wage of a productive hour: given, or from its parts. */
function wageOf(c: CompanyFile, said: Said): Quantity<'cents'> {
  const { builtUpWage: parts } = c
  if (!parts) return said('wage', cents(c.wage ?? 0), 'cents')
  const burdenPct = totalOf('pct', parts.burden, (b, i) => [b.what, said(`builtUpWage/burden/${i}/pct`, b.pct, 'pct')])
  const paidCents = work(withBurden, { wageCents: said('builtUpWage/basePerHour', cents(parts.basePerHour), 'cents'), burdenPct })
  return work(productiveWage, { paidCents, productivePct: said('builtUpWage/productivePct', parts.productivePct, 'pct') })
}

function overheadOf(c: CompanyFile, said: Said): Pick<Company, 'overhead'> {
  if (c.overheadPerHour !== undefined) return { overhead: { per: 'hour', cents: said('overheadPerHour', cents(c.overheadPerHour), 'cents') } }
  return c.overheadPct === undefined ? {} : { overhead: { per: 'cost', pct: said('overheadPct', c.overheadPct, 'pct') } }
}

/** Access factors of the company’s own; a table that is not there is the built-in one. */
function accessOf(c: CompanyFile, said: Said): Pick<Company, 'accessFactors'> {
  const { headroom, oldFill, webs, hatch } = c.accessFactors ?? {}
  const factor = (table: string, i: number, value: number): Quantity<'factor'> => said(`accessFactors/${table}/${i}/factor`, value, 'factor')
  const steps = (table: string, rows: typeof headroom) => rows?.map((r, i) => ({ upTo: r.upToIn ?? Infinity, factor: factor(table, i, r.factor) }))
  return c.accessFactors === undefined ? {} : {
    accessFactors: {
      ...(headroom ? { headroom: steps('headroom', headroom)! } : {}), ...(oldFill ? { oldFill: steps('oldFill', oldFill)! } : {}),
      ...(webs ? { webs: webs.map((r, i) => ({ webs: r.webs, factor: factor('webs', i, r.factor) })) } : {}),
      ...(hatch ? { hatch: hatch.map((r, i) => ({ sides: r.sidesIn ?? [0, 0] as const, factor: factor('hatch', i, r.factor) })) } : {}),
    },
  }
}

/** Starting thresholds are a judgment: a rise of 2 % is lost in a job's own spread, one of 5 % eats an eighth of a margin of 40 %. */
function thresholdsOf({ reprice = {} }: CompanyFile, said: Said): Thresholds {
  const of = <U extends Unit>(key: keyof typeof reprice, unit: U, start: () => Quantity<U>): Quantity<U> => { const value = reprice[key]; return value === undefined ? start() : said(`reprice/${key}`, value, unit) }
  const why = 'judgment, not in the company file'
  return {
    honorUpToPct: of('honorUpToPct', 'pct', () => assumed('honor-up-to', 2, 'pct', 'rise of the price up to which a sent quote is honored', why)),
    reissueAbovePct: of('reissueAbovePct', 'pct', () => assumed('reissue-above', 5, 'pct', 'rise of the price above which a sent quote is issued anew', why)),
    ...(reprice.leastMarginPct === undefined ? {} : { leastMarginPct: said('reprice/leastMarginPct', reprice.leastMarginPct, 'pct') }),
    reissueWithinDays: of('reissueWithinDays', 'day', () => assumed('reissue-within', 30, 'day', 'days after its last one that an expired quote is issued anew', why)),
  }
}

/** @param own what the job says in its place */
export function companyOf(file: CompanyFile, own?: OwnCompany): Company {
  const c = companyFor(file, own)
  const said: Said = (path, value, unit) => own !== undefined && path.split('/')[0]! in own ? given(value, unit, `/choices/company/${path}`) : row(value, unit, `${file.name}: ${path.replaceAll('/', ', ')}`, 'company file')
  const usd = (key: keyof CompanyFile, value: number) => said(key, cents(value), 'cents')
  const or = <U extends Unit>(key: keyof CompanyFile, value: number | undefined, unit: U, id: string, what: string, why: string) => value === undefined ? assumed(id, 0, unit, what, why) : said(key, value, unit)
  return {
    name: c.name, machine: c.machine, crew: said('crew', c.crew, 'person'), hoursPerDay: said('hoursPerDay', c.hoursPerDay, 'h'), wageCents: wageOf(c, said), billWholeDays: c.billWholeDays === 'yes', retestEachDay: c.retestEachDay === 'yes', salesTax: c.salesTax ?? 'contractor-pays',
    marginPct: c.grossMarginPct === undefined ? said('netProfitPct', c.netProfitPct ?? 0, 'pct') : said('grossMarginPct', c.grossMarginPct, 'pct'), ...overheadOf(c, said),
    ...(c.subMarkupPct === undefined ? {} : { subMarkupPct: said('subMarkupPct', c.subMarkupPct, 'pct') }), ...(c.travelPerMile === undefined ? {} : { travelPerMileCents: usd('travelPerMile', c.travelPerMile) }),
    ...(c.travelPerDay === undefined ? {} : { travelPerDayCents: usd('travelPerDay', c.travelPerDay) }), ...(c.permitFee === undefined ? {} : { permitCents: usd('permitFee', c.permitFee) }),
    contingencyPct: said('contingencyPct', c.contingencyPct, 'pct'), contingencyByRisk: (c.contingencyByRisk ?? []).map((r, i) => ({ risk: r.risk, pct: said(`contingencyByRisk/${i}/addPct`, r.addPct, 'pct') })),
    minimumCents: usd('minimumCharge', c.minimumCharge), salesTaxPct: said('salesTaxPct', c.salesTaxPct, 'pct'), roundingCents: usd('roundUpTo', c.roundUpTo),
    validDays: said('validDays', c.validDays, 'day'), depositPct: or('depositPct', c.depositPct, 'pct', 'deposit', 'deposit', 'no deposit rule in the company file'), depositRules: c.depositRules ?? [], ...accessOf(c, said),
    visitFeeCents: or('visitFee', c.visitFee === undefined ? undefined : cents(c.visitFee), 'cents', 'visit-fee', 'fee for a visit to a house that may not start', 'none in the company file'),
    dumpCentsPerTon: or('dumpFeePerTon', c.dumpFeePerTon === undefined ? undefined : cents(c.dumpFeePerTon), 'cents', 'dump-fee', 'dump fee', 'none in the company file'),
    reprice: thresholdsOf(c, said),
    dumpMinimumCents: or('dumpFeeMinimum', c.dumpFeeMinimum === undefined ? undefined : cents(c.dumpFeeMinimum), 'cents', 'dump-minimum', 'least dump fee', 'none in the company file'),
  }
}

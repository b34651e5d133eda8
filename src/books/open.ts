// Opens a price book and a company file for one job. Each answer carries its row.
import type { JobTarget } from './job-target.ts'
import { fills, type Fill } from '../reference/fills.ts'
import { ductTargets } from '../reference/ducts.ts'
import { fromRow } from '../reference/table.ts'
import { targets } from '../reference/targets.ts'
import { zoneOf } from '../reference/zones.ts'
import { assumed, given, row, total, work, type Quantity, type Unit } from '../units/quantity.ts'
import { cents } from '../units/money.ts'
import { productiveWage, withBurden } from '../calc/price.ts'
import type { Books, Company, Thresholds } from './books.ts'
import type { CompanyFile } from './company-file.ts'
import type { PriceBook } from './price-book.ts'
import { goodsOf } from './products.ts'

/** The wage of a productive hour: given, or from its parts. */
function wageOf(c: CompanyFile): Quantity<'cents'> {
  const { builtUpWage: parts } = c, at = `${c.name}: builtUpWage`
  if (!parts) return row(cents(c.wage ?? 0), 'cents', `${c.name}: wage`, 'company file')
  const burdenPct = total('pct', Object.fromEntries(parts.burden.map(b => [b.what, row(b.pct, 'pct', `${at}, ${b.what}`, 'company file')])))
  const paidCents = work(withBurden, { wageCents: row(cents(parts.basePerHour), 'cents', `${at}, basePerHour`, 'company file'), burdenPct })
  return work(productiveWage, { paidCents, productivePct: row(parts.productivePct, 'pct', `${at}, productivePct`, 'company file') })
}

function overheadOf(c: CompanyFile): Pick<Company, 'overhead'> {
  if (c.overheadPerHour !== undefined) return { overhead: { per: 'hour', cents: row(cents(c.overheadPerHour), 'cents', `${c.name}: overheadPerHour`, 'company file') } }
  return c.overheadPct === undefined ? {} : { overhead: { per: 'cost', pct: row(c.overheadPct, 'pct', `${c.name}: overheadPct`, 'company file') } }
}

/** Starting thresholds are a judgment: a rise of 2 % is lost in a job's own spread, one of 5 % eats an eighth of a margin of 40 %. */
function thresholdsOf({ name, reprice = {} }: CompanyFile): Thresholds {
  const of = <U extends Unit>(key: keyof typeof reprice, unit: U, start: () => Quantity<U>): Quantity<U> => { const value = reprice[key]; return value === undefined ? start() : row(value, unit, `${name}: reprice, ${key}`, 'company file') }
  const why = 'judgment, not in the company file'
  return {
    honorUpToPct: of('honorUpToPct', 'pct', () => assumed('honor-up-to', 2, 'pct', 'rise of the price up to which a sent quote is honored', why)),
    reissueAbovePct: of('reissueAbovePct', 'pct', () => assumed('reissue-above', 5, 'pct', 'rise of the price above which a sent quote is issued anew', why)),
    ...(reprice.leastMarginPct === undefined ? {} : { leastMarginPct: row(reprice.leastMarginPct, 'pct', `${name}: reprice, leastMarginPct`, 'company file') }),
    reissueWithinDays: of('reissueWithinDays', 'day', () => assumed('reissue-within', 30, 'day', 'days after its last one that an expired quote is issued anew', why)),
  }
}

function companyOf(c: CompanyFile): Company {
  const q = <U extends Unit>(key: keyof CompanyFile, value: number, unit: U) => row(value, unit, `${c.name}: ${key}`, 'company file')
  const usd = (key: keyof CompanyFile, value: number) => q(key, cents(value), 'cents')
  const or = <U extends Unit>(key: keyof CompanyFile, value: number | undefined, unit: U, id: string, what: string, why: string) => value === undefined ? assumed(id, 0, unit, what, why) : q(key, value, unit)
  return {
    name: c.name, machine: c.machine, crew: q('crew', c.crew, 'person'), hoursPerDay: q('hoursPerDay', c.hoursPerDay, 'h'), wageCents: wageOf(c), billWholeDays: c.billWholeDays === 'yes', retestEachDay: c.retestEachDay === 'yes', salesTax: c.salesTax ?? 'contractor-pays',
    marginPct: c.grossMarginPct === undefined ? q('netProfitPct', c.netProfitPct ?? 0, 'pct') : q('grossMarginPct', c.grossMarginPct, 'pct'), ...overheadOf(c),
    ...(c.subMarkupPct === undefined ? {} : { subMarkupPct: q('subMarkupPct', c.subMarkupPct, 'pct') }), ...(c.travelPerMile === undefined ? {} : { travelPerMileCents: usd('travelPerMile', c.travelPerMile) }),
    ...(c.travelPerDay === undefined ? {} : { travelPerDayCents: usd('travelPerDay', c.travelPerDay) }), ...(c.permitFee === undefined ? {} : { permitCents: usd('permitFee', c.permitFee) }),
    contingencyPct: q('contingencyPct', c.contingencyPct, 'pct'), minimumCents: usd('minimumCharge', c.minimumCharge), salesTaxPct: q('salesTaxPct', c.salesTaxPct, 'pct'), roundingCents: usd('roundUpTo', c.roundUpTo),
    validDays: q('validDays', c.validDays, 'day'), depositPct: or('depositPct', c.depositPct, 'pct', 'deposit', 'deposit', 'no deposit rule in the company file'),
    visitFeeCents: or('visitFee', c.visitFee === undefined ? undefined : cents(c.visitFee), 'cents', 'visit-fee', 'fee for a visit to a house that may not start', 'none in the company file'),
    dumpCentsPerTon: or('dumpFeePerTon', c.dumpFeePerTon === undefined ? undefined : cents(c.dumpFeePerTon), 'cents', 'dump-fee', 'dump fee', 'none in the company file'),
    reprice: thresholdsOf(c),
    dumpMinimumCents: or('dumpFeeMinimum', c.dumpFeeMinimum === undefined ? undefined : cents(c.dumpFeeMinimum), 'cents', 'dump-minimum', 'least dump fee', 'none in the company file'),
  }
}

/** Books on the desk: opened once, then turned to each job. */
export interface Shelf {
  readonly prices: PriceBook
  readonly companyFile: CompanyFile
  for(job: JobTarget): Books
}

export function shelf(prices: PriceBook, companyFile: CompanyFile): Shelf {
  const goods = goodsOf(prices)
  const rates = new Map((companyFile.rates ?? []).map(r => [r.work, r.hours])), values = new Map((companyFile.values ?? []).map(v => [v.id, v.value]))
  const subs = new Map((companyFile.subcontract ?? []).map(s => [s.work, s.price]))
  const company = companyOf(companyFile), { overhead: _, ...gross } = company
  const fillRows = new Map<string, Fill>(fills.rows.map(r => [r.fill, r]))
  const known = new Map<string, Quantity>()
  const once = (key: string, make: () => Quantity): Quantity => { const q = known.get(key) ?? make(); known.set(key, q); return q }
  const named = (b: PriceBook | CompanyFile) => ({ name: b.name, dated: b.dated, demo: b.demo === 'yes' })
  const steady = {
    basis: { priceBook: named(prices), company: named(companyFile) }, companyMarginPct: companyFile.grossMarginPct ?? `overhead and net profit of ${companyFile.netProfitPct ?? 0} %`,
    rate: (work: string, starting: number, per: string) => once(`rate.${work}`, () => rates.has(work) ? row(rates.get(work)!, 'h/unit', `${companyFile.name}: rates, ${work}`, 'company file')
      : assumed(`rate.${work}`, starting, 'h/unit', work.replaceAll('-', ' '), 'starting rate, not overridden by the company file', per)) as Quantity<'h/unit'>,
    start: <U extends Unit>(id: string, value: number, unit: U, what: string, why = 'starting value') => once(`start.${id}`, () => values.has(id) ? row(values.get(id)!, unit, `${companyFile.name}: values, ${id}`, 'company file')
      : assumed(id, value, unit, what, why)) as Quantity<U>,
    fill: (name: string) => fillRows.get(name)!,
    subcontract: (work: string) => subs.has(work) ? row(cents(subs.get(work)!), 'cents', `${companyFile.name}: subcontract, ${work}`, 'company file') : assumed(`sub.${work}`, 0, 'cents', `price of ${work.replaceAll('-', ' ')} by another trade`, 'no price in the company file: not in the total'),
    choice: (name: string) => name === 'lightTreatment' ? companyFile.lightTreatment : undefined,
  }
  return {
    prices, companyFile,
    for: job => ({
      ...steady, ...goods.forJob(),
      // A gross margin of the job covers overhead too.
      company: job.marginPct === undefined ? company : { ...gross, marginPct: given(job.marginPct, 'pct', '/choices/marginPct') },
      ductTarget(use, acrossIn) {
        const t = job.rValue === undefined ? ductTargets.rows.find(r => r.edition === job.code) : undefined
        if (!t) return steady.start('duct-r', 8, 'R', 'R wanted on ducts in the attic', 'the goal of the job is no code edition')
        const narrow = acrossIn < t.narrowIn, r = narrow ? t.narrowR : use === 'supply' ? t.supplyR : t.returnR
        return fromRow(ductTargets, t, r, 'R', `${t.edition}, ${t.section}, ${narrow ? `under ${t.narrowIn} in across` : use}`)
      },
      target() {
        if (job.rValue !== undefined) return given(job.rValue, 'R', '/target/rValue')
        const t = targets.rows.find(r => r.edition === job.code)!
        const { zone, map, counties, at, as } = zoneOf(job, job.code)!
        const from = `${t.edition}, table ${t.section}, zone ${zone}`, picked = given(Number.parseInt(zone), 'each', at, as)
        return map ? fromRow(targets, { source: `${targets.source}; ${map.source}` }, t.r[zone], 'R', `${from}; ${map.title}: ${counties}`, picked) : fromRow(targets, t, t.r[zone], 'R', from, picked)
      },
    }),
  }
}

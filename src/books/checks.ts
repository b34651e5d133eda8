// What is wrong in a price book or company file that has the right form: what no single value shows.
import type { Finding } from '../findings/finding.ts'
import { nearest } from '../findings/suggest.ts'
import { dateFault } from '../files/dates.ts'
import { decimal } from '../units/money.ts'
import { chartFaults } from './chart.ts'
import type { CompanyFile } from './company-file.ts'
import { subcontractNames, valueIds, workNames } from './names.ts'
import type { OwnValues } from './own-values.ts'
import { roleNames, type BlownRow, type PriceBook, type ProductRow } from './price-book.ts'

export type Say = (code: string, path: string, says: string, why: string, mend: string, more?: Partial<Finding>) => void

/** Collects what a rule says. */
export const gather = (rule: (say: Say) => void): Finding[] => {
  const out: Finding[] = []
  rule((code, path, says, why, mend, more = {}) => { out.push({ code, severity: 'error', path, says, why, mend, ...more }) })
  return out
}

const dated = (date: string, say: Say, path = '/dated'): void => {
  const fault = dateFault(date)
  if (fault) say(fault.code, path, fault.says, fault.why, fault.mend)
}

/** What two rows of one item may differ in: what each is for, and how a role asks for it. */
const sameGoods = (a: ProductRow, b: ProductRow): boolean => (['name', 'price', 'buyUnit', 'unit', 'pack', 'charge', 'wastePct', 'supplier', 'code', 'breaks', 'stock', 'available', 'heightIn', 'ratedFor', 'noncombustible', 'rValue', 'sizeIn'] as const).every(k => JSON.stringify(a[k]) === JSON.stringify(b[k]))

/** What is wrong in a price book. */
export const priceChecks = (book: PriceBook): Finding[] => gather(say => {
  dated(book.dated, say)
  const rows = new Map<string, { readonly row: ProductRow; readonly roles: Set<string> }>()
  for (const [i, p] of book.products.entries()) {
    const at = `/products/${i}/item`, before = rows.get(p.item)
    if (!before) { rows.set(p.item, { row: p, roles: new Set([p.role]) }); continue }
    if (before.roles.has(p.role)) say('item-twice', at, `item: ${p.item}`, `it stands in the role ${p.role} already`, 'take one of them out, or give it a name of its own')
    else if (!sameGoods(before.row, p)) say('item-differs', at, `item: ${p.item}`, `as ${before.row.role} the same item has another price, pack or name`, 'make both rows the same but for the role, or give one a name of its own')
    before.roles.add(p.role)
  }
  const byRole = new Map<string, ProductRow[]>()
  for (const p of book.products) { const same = byRole.get(p.role); if (same) same.push(p); else byRole.set(p.role, [p]) }
  for (const [i, p] of book.products.entries()) if (special(p)) buying(say, `/products/${i}`, p, byRole.get(p.role)!)
  for (const [i, p] of book.blown.entries()) if (special(p)) buying(say, `/blown/${i}`, p, book.blown)
  const empty = roleNames.filter(r => !book.products.some(p => p.role === r))
  if (empty.length > 0) say('role-unfilled', '/products', `no product in the ${empty.length === 1 ? 'role' : 'roles'} ${empty.join(', ')}`, 'a house that needs one cannot be priced', 'add one for each that you use', { severity: 'note', on: 'key' })
  const blown = new Set<string>()
  for (const [i, p] of book.blown.entries()) {
    if (blown.has(p.item) || rows.has(p.item)) say('item-twice', `/blown/${i}/item`, `item: ${p.item}`, 'another product has that name already', 'give one of them a name of its own')
    blown.add(p.item)
    for (const f of chartFaults(p)) {
      if (f.severity === 'error') say(f.code, `/blown/${i}/chart/${f.row}`, `${p.item}, row ${f.says}`, f.why, 'copy the row from the label again; a chart that is wrong in one row is used for none')
      else say(f.code, `/blown/${i}/chart`, `${p.item}: ${f.says}`, f.why, 'copy the row from the label', { severity: 'warning', on: 'key' })
    }
  }
})

/** Breaks rise in amount and fall in price. @param price of one without any */
export function breakChecks(say: Say, at: string, breaks: readonly { readonly atLeast: number; readonly price: number }[], price: number): void {
  for (const [n, b] of breaks.entries()) {
    const before = breaks[n - 1], path = `${at}/breaks/${n}`
    if (before && b.atLeast <= before.atLeast) say('breaks-out-of-order', `${path}/atLeast`, `atLeast: ${b.atLeast}`, `the break before begins at ${before.atLeast}`, 'write the breaks from few to many, each once')
    if (b.price >= (before?.price ?? price)) say('break-not-cheaper', `${path}/price`, `price: ${b.price}`, `without this break each costs ${before?.price ?? price}`, 'more bought at once costs less each: correct the one or the other')
  }
}

/** What a row says of its price, its order and what may stand for it. */
function buying(say: Say, at: string, p: ProductRow | BlownRow, others: readonly (ProductRow | BlownRow)[]): void {
  if (p.dated !== undefined) dated(p.dated, say, `${at}/dated`)
  breakChecks(say, at, p.breaks ?? [], p.price)
  for (const [n, item] of (p.substitutes ?? []).entries()) {
    const path = `${at}/substitutes/${n}`, other = others.find(o => o.item === item)
    if (item === p.item) say('substitute-itself', path, item, 'a product is no substitute for itself', 'take it out')
    else if (p.substitutes!.indexOf(item) < n) say('name-twice', path, item, 'substitutes has it already', 'take one of them out')
    else if (!other) {
      const near = nearest(item, others.map(o => o.item))
      say('substitute-unknown', path, item, `no product ${'role' in p ? `in the role ${p.role}` : 'under blown'} has that name`, near ? `did you mean ${near}?` : 'write an item that is for the same')
    } else if ('role' in p && 'role' in other) {
      const lacks = lacking(p, other)
      if (lacks !== undefined) say('substitute-falls-short', path, item, `${p.item} ${lacks}`, 'name one that does all that the other does')
    }
  }
  if (p.available === 'no' && (p.substitutes ?? []).length === 0) say('no-substitute', `${at}/available`, `${p.item} can’t be had`, 'and names no substitute: a house that needs it can’t be priced', 'write substitutes: and the items that may take its place', { severity: 'warning' })
}

const special = (p: ProductRow | BlownRow): boolean => p.dated !== undefined || p.breaks !== undefined || p.substitutes !== undefined || p.available !== undefined

/** What one product has that another, which is to stand for it, lacks. */
function lacking(p: ProductRow, other: ProductRow): string | undefined {
  if (p.unit !== other.unit) return `is counted in ${p.unit}, this in ${other.unit}`
  if (p.noncombustible === 'yes' && other.noncombustible !== 'yes') return 'is noncombustible, this is not'
  if (p.ratedFor !== undefined && p.ratedFor !== other.ratedFor) return `is rated for ${p.ratedFor} lights, this is not`
  if (p.rValue !== undefined && (other.rValue ?? 0) < p.rValue) return `has R ${p.rValue}, this ${other.rValue === undefined ? 'none' : `R ${other.rValue}`}`
  if (p.heightIn !== undefined && p.ratedFor === 'non-ic' && (other.heightIn ?? 0) < p.heightIn) return `stands ${p.heightIn} in high, this is lower`
  return undefined
}

/** Money that is charged, not a unit price, has no third decimal. */
export const wholeCents = (say: Say, path: string, usd: number | undefined): void => {
  if (usd !== undefined && decimal(usd)[1] > 2) say('part-of-a-cent', path, `${path.split('/').at(-1)!}: ${usd}`, 'a third decimal is part of a cent', `write ${Math.floor(usd * 100 + 0.5) / 100}`)
}

/** Set-up and close-up of each day [h], where the company has no rate of its own; and the most that the sum of days takes. */
const DAILY = 0.75
const MOST_DAILY = 10

/** What is wrong in a company file. */
export const companyChecks = (file: CompanyFile): Finding[] => gather(say => {
  dated(file.dated, say)
  const { wage, builtUpWage, grossMarginPct, overheadPerHour, overheadPct, netProfitPct } = file
  if (wage !== undefined && builtUpWage) say('wage-twice', '/builtUpWage', 'both wage and builtUpWage', 'the wage would be two figures', 'take one of them out', { on: 'key' })
  if (wage === undefined && !builtUpWage) say('wage-missing', '', 'neither wage nor builtUpWage', 'labor is priced by it', 'write wage: 48, or its parts under builtUpWage:')
  const overhead = overheadPerHour ?? overheadPct
  if (grossMarginPct !== undefined && (overhead !== undefined || netProfitPct !== undefined)) {
    const key = overheadPerHour !== undefined ? 'overheadPerHour' : overheadPct !== undefined ? 'overheadPct' : 'netProfitPct'
    say('overhead-twice', `/${key}`, `both grossMarginPct and ${key}`, 'a gross margin covers overhead and profit: it would be charged twice', `take grossMarginPct out, or ${key}`, { on: 'key' })
  } else if (grossMarginPct === undefined) {
    if (overheadPerHour !== undefined && overheadPct !== undefined) say('overhead-twice', '/overheadPct', 'both overheadPerHour and overheadPct', 'overhead would be charged twice', 'take one of them out', { on: 'key' })
    if (overhead === undefined) say('margin-missing', '', 'neither a gross margin nor overhead', 'the price would be the bare cost', 'write grossMarginPct: 40, or overheadPerHour: or overheadPct: with netProfitPct:')
    else if (netProfitPct === undefined) say('margin-missing', overheadPerHour === undefined ? '/overheadPct' : '/overheadPerHour', 'overhead without netProfitPct', 'the price would hold no profit', 'write netProfitPct: 8, or 0 where that is meant', { on: 'key' })
  }
  if (file.travelPerMile !== undefined && file.travelPerDay !== undefined) say('travel-twice', '/travelPerDay', 'both travelPerMile and travelPerDay', 'travel would be charged twice', 'take one of them out', { on: 'key' })
  const { honorUpToPct, reissueAbovePct } = file.reprice ?? {}
  if (honorUpToPct !== undefined && reissueAbovePct !== undefined && honorUpToPct > reissueAbovePct) say('thresholds-crossed', '/reprice/honorUpToPct', `honorUpToPct: ${honorUpToPct}`, `reissueAbovePct is ${reissueAbovePct}: between the two a quote would be honored and issued anew`, 'write the smaller one as honorUpToPct')
  wholeCents(say, '/builtUpWage/basePerHour', builtUpWage?.basePerHour)
  const parts = (builtUpWage?.burden ?? []).map(b => b.what)
  for (const [i, what] of parts.entries()) if (parts.indexOf(what) < i) say('name-twice', `/builtUpWage/burden/${i}/what`, `what: ${what}`, 'burden has it already', 'take one of them out')
  const daily = ['day-start', 'day-close'].reduce((sum, work) => sum + (file.rates?.find(r => r.work === work)?.hours ?? DAILY), 0)
  if (daily > MOST_DAILY) say('day-too-short', '/rates', `${daily} person-hours of set-up and close-up each day`, `at most ${MOST_DAILY} are set off against a day`, 'correct the rates day-start and day-close', { on: 'key' })
  else if (file.crew * file.hoursPerDay <= daily) say('day-too-short', '/hoursPerDay', `hoursPerDay: ${file.hoursPerDay}`, `a crew of ${file.crew} spends ${daily} person-hours of each day on set-up and close-up: no time is left for work`, 'write the hours on site')
  for (const key of ['wage', 'minimumCharge', 'roundUpTo', 'visitFee', 'dumpFeePerTon', 'dumpFeeMinimum', 'overheadPerHour', 'travelPerDay', 'permitFee'] as const) wholeCents(say, `/${key}`, file[key])
  listChecks(file, say, '')
  riskChecks(file, say)
  factorChecks(file, say)
  depositChecks(file, say)
})

/** Rates, starting values and prices of other trades, of a company or of one job: each name once, and one that is asked for. */
export function listChecks(file: Pick<OwnValues, 'rates' | 'values' | 'subcontract'>, say: Say, at: string): void {
  for (const [i, s] of (file.subcontract ?? []).entries()) wholeCents(say, `${at}/subcontract/${i}/price`, s.price)
  const named = (list: 'rates' | 'values' | 'subcontract', key: 'work' | 'id', names: readonly string[], used: readonly string[], code: string, what: string): void => {
    for (const [i, name] of used.entries()) {
      const path = `${at}/${list}/${i}/${key}`
      if (used.indexOf(name) < i) { say('name-twice', path, `${key}: ${name}`, `${list} has it already`, 'take one of them out'); continue }
      if (names.includes(name)) continue
      const near = nearest(name, names)
      say(code, path, `${key}: ${name}`, `no ${what} has that name`, near ? `did you mean ${near}?` : names.length < 5 ? `write ${names.join(' or ')}` : `the names stand in the file that lidwork company new writes`)
    }
  }
  named('rates', 'work', workNames, (file.rates ?? []).map(r => r.work), 'rate-unknown', 'kind of work')
  named('values', 'id', valueIds, (file.values ?? []).map(v => v.id), 'value-unknown', 'starting value')
  named('subcontract', 'work', subcontractNames, (file.subcontract ?? []).map(s => s.work), 'subcontract-unknown', 'work of another trade')
}

function riskChecks({ contingencyPct, contingencyByRisk = [] }: CompanyFile, say: Say): void {
  for (const [i, r] of contingencyByRisk.entries()) if (contingencyByRisk.findIndex(o => o.risk === r.risk) < i) say('name-twice', `/contingencyByRisk/${i}/risk`, `risk: ${r.risk}`, 'contingencyByRisk has it already', 'take one of them out')
  const most = contingencyByRisk.reduce((sum, r) => sum + r.addPct, contingencyPct)
  if (most > 100) say('contingency-too-high', '/contingencyByRisk', `a house with all risks would carry ${most} %`, 'contingency is a share of materials and labor, at most all of it', 'correct the percentages', { on: 'key' })
}

function factorChecks({ accessFactors: { headroom = [], oldFill = [], webs = [], hatch = [] } = {} }: CompanyFile, say: Say): void {
  for (const [name, steps] of [['headroom', headroom], ['oldFill', oldFill]] as const) for (const [i, s] of steps.entries()) {
    const at = `/accessFactors/${name}/${i}`, before = steps[i - 1], last = i === steps.length - 1
    if (last && s.upToIn !== undefined) say('factors-have-no-end', `${at}/upToIn`, `upToIn: ${s.upToIn}`, 'the last row is for all beyond the one before it', 'add a row without upToIn')
    if (!last && s.upToIn === undefined) say('factors-out-of-order', at, 'a row without upToIn', 'it holds for all beyond: no row behind it would ever be taken', 'write it last')
    if (before?.upToIn !== undefined && s.upToIn !== undefined && s.upToIn <= before.upToIn) say('factors-out-of-order', `${at}/upToIn`, `upToIn: ${s.upToIn}`, `the row before ends at ${before.upToIn}`, 'write the rows from low to high')
  }
  for (const [i, r] of webs.entries()) if (webs.findIndex(o => o.webs === r.webs) < i) say('name-twice', `/accessFactors/webs/${i}/webs`, `webs: ${r.webs}`, 'webs has it already', 'take one of them out')
  const missing = webs.length === 0 ? [] : ['open', 'w', 'dense'].filter(w => !webs.some(r => r.webs === w))
  if (missing.length > 0) say('factors-have-no-end', '/accessFactors/webs', `no row for ${missing.join(', ')}`, 'a list takes the place of the whole built-in one', 'add the rows', { on: 'key' })
  for (const [i, r] of hatch.entries()) {
    const at = `/accessFactors/hatch/${i}`, before = hatch[i - 1], last = i === hatch.length - 1
    if (last && r.sidesIn) say('factors-have-no-end', `${at}/sidesIn`, `sidesIn: ${r.sidesIn.join(', ')}`, 'the last row is for any hatch', 'add a row without sidesIn')
    if (!last && !r.sidesIn) say('factors-out-of-order', at, 'a row without sidesIn', 'it holds for any hatch: no row behind it would ever be taken', 'write it last')
    if (r.sidesIn && r.sidesIn[0] > r.sidesIn[1]) say('factors-out-of-order', `${at}/sidesIn`, `sidesIn: ${r.sidesIn.join(', ')}`, 'the shorter side comes first', `write [${r.sidesIn[1]}, ${r.sidesIn[0]}]`)
    if (before?.sidesIn && r.sidesIn && (r.sidesIn[0] > before.sidesIn[0] || r.sidesIn[1] > before.sidesIn[1])) say('factors-out-of-order', `${at}/sidesIn`, `sidesIn: ${r.sidesIn.join(', ')}`, 'the row before is for a smaller hatch', 'write the rows from large to small')
  }
}

function depositChecks({ depositRules = [] }: CompanyFile, say: Say): void {
  for (const [i, r] of depositRules.entries()) {
    if (depositRules.findIndex(o => o.state === r.state) < i) say('name-twice', `/depositRules/${i}/state`, `state: ${r.state}`, 'depositRules has it already', 'take one of them out')
    wholeCents(say, `/depositRules/${i}/maxUsd`, r.maxUsd)
    wholeCents(say, `/depositRules/${i}/aboveUsd`, r.aboveUsd)
  }
}

// One open quote under two price books: what it cost and costs, what moved it, and what to do.
import type { Books } from '../../books/books.ts'
import { carriedOn, lineCents, marginOf, riseOf } from '../../calc/price.ts'
import { byText, type Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { cents } from '../../units/money.ts'
import { exactly, work, type Quantity } from '../../units/quantity.ts'
import type { Verdict } from '../output.ts'
import { billed, pricedWork, standingWork, type Billed } from '../plan.ts'
import { actionOn, lastDay, needsDay, quoteFacts, statusOn, type Action, type QuoteFacts, type Status } from './quote-action.ts'
import { printed } from '../to-json.ts'

export const REPRICE_JOB_FORMAT = 'lidwork-reprice-job/1'

export interface RepriceGate { id: string; code: string; state: 'stop' | 'hold'; where: string; why: string }
export interface ItemEffect { item: string; name: string; /** What the job is charged more for it. */ costCents: number; /** What that moves the price. */ priceCents: number }
/** What moved the price. All of it adds up to `changeCents`, to the cent. */
export interface Effects {
  items: ItemEffect[]
  /** Labor moves only where charts differ. */
  laborCents: number
  /** Other trades, travel, disposal. */
  otherCents: number
  minimumCents: number
  /** The rounding step of the company, and the parts of cents of the lines above. */
  roundingCents: number
}
export interface ClauseOut { item: string; basePriceCents: number; unitPriceCents: number; charged: number; passedOnCents: number }

/** One job as re-priced. */
export interface RepricedOut {
  format: typeof REPRICE_JOB_FORMAT
  file: string
  id: string; title: string; customer?: string
  /** On the day asked. */
  status: Status
  sentOn?: string; signedOn?: string
  /** Last day it holds. */
  expiresOn?: string
  action: Action
  why: string
  verdictOld: Verdict; verdictNew: Verdict
  /** Prices are absent where work may not start. */
  oldCents?: number; newCents?: number; changeCents?: number; changePct?: number
  oldCostCents?: number; newCostCents?: number
  /** What honoring the old price costs: the rise of the cost. */
  lossCents?: number
  marginPct?: number
  /** At the old price, with the new cost. */
  honoredMarginPct?: number
  /** What an escalation clause passes on to the owner. */
  clauses: ClauseOut[]
  /** Shut under the new book, open under the old. */
  gates: RepriceGate[]
  effects?: Effects
}

/** One house under one book: what a price is made of, and which gates are shut. Plain enough to be kept. */
export interface Stand { readonly billed: Billed; readonly gates: readonly RepriceGate[]; readonly errors: readonly Finding[] }

/** Takes one house off under one book. */
export function standOf(data: JobFile, books: Books): Stand {
  const made = standingWork(data, books)
  return {
    billed: billed(made, made.planned), errors: [...made.taken.findings, ...made.gates.findings].filter(f => f.severity === 'error'),
    gates: made.gates.gates.flatMap(({ id, code, state, open, where, why }) => (open && (state === 'stop' || state === 'hold') ? [{ id, code, state, where, why }] : [])),
  }
}

/** What re-pricing reads of a job file beside its work. */
export type Quoted = Pick<JobFile, 'job' | 'quote'>

export interface Side { readonly stand: Stand; readonly books: Books }

type Priced = ReturnType<typeof pricedWork>
type Lines = Extract<Priced['prices'], { totalCents: unknown }>
const linesOf = ({ prices }: Priced): Lines | undefined => ('totalCents' in prices ? prices : undefined)

/** A job whose quote has dates, and no day to judge it by. */
export class DayMissing extends Error { override readonly name: string = 'DayMissing'; constructor() { super('its quote has dates: the day to judge it by is needed') } }

/**
 * Prices one job under two books. Only the price stage runs for each side; where the books differ in prices alone both sides share one stand.
 * @throws DayMissing when the quote has dates and `on` is absent
 */
export function repriced(file: string, { job, quote }: Quoted, from: Side, to: Side, on: string | undefined): RepricedOut {
  const facts = quoteFacts({ job, ...(quote === undefined ? {} : { quote }) })
  if (on === undefined && needsDay(facts)) throw new DayMissing()
  const { company } = to.books, validDays = company.validDays.value
  const before = pricedWork(from.stand.billed, from.books), after = pricedWork(to.stand.billed, to.books)
  const old = linesOf(before), now = linesOf(after)
  const status = statusOn(facts, validDays, on), last = lastDay(facts, validDays)
  const turned = to.stand.gates.filter(g => !from.stand.gates.some(o => o.id === g.id && o.state === g.state))
  const clauses = status === 'signed' ? clausesOf(quote, after, to.books) : []
  const offered = old && old.totalCents.value - old.customerTaxCents.value
  const honoredMarginPct = old && now && offered! > 0 ? work(marginOf, { priceCents: exactly(offered!, 'cents', 'old price without customer tax'), costCents: now.costCents }).value : undefined
  const risePct = old && now && old.totalCents.value > 0 ? work(riseOf, { before: old.totalCents, after: now.totalCents }).value : undefined
  const passedOn = clauses.reduce((sum, c) => sum + c.passedOnCents, 0)
  const { action, why } = actionOn({
    status, on, lastDay: last, later: laterThan(facts, on), risePct, honoredMarginPct,
    shut: turned[0] ? `${turned[0].where}: ${turned[0].why}` : shutBy(from.stand.billed.verdict, to.stand.billed.verdict),
    clause: passedOn > 0 ? `its clause passes on ${clauses.map(c => c.item).join(', ')}` : undefined,
  }, company.reprice)
  return {
    format: REPRICE_JOB_FORMAT, file, id: job.id, title: job.title, ...(job.customer === undefined ? {} : { customer: job.customer }),
    status, ...dates(facts, last), action, why, verdictOld: from.stand.billed.verdict, verdictNew: to.stand.billed.verdict,
    ...(old ? { oldCents: old.totalCents.value } : {}), ...(now ? { newCents: now.totalCents.value } : {}),
    ...(old && now ? { changeCents: now.totalCents.value - old.totalCents.value, ...(risePct === undefined ? {} : { changePct: printed('changePct', risePct) }) } : {}),
    ...(old ? { oldCostCents: old.costCents.value } : {}), ...(now ? { newCostCents: now.costCents.value } : {}),
    ...(old && now ? { lossCents: now.costCents.value - old.costCents.value } : {}),
    ...(old ? { marginPct: printed('marginPct', old.marginPct.value) } : {}), ...(honoredMarginPct === undefined ? {} : { honoredMarginPct: printed('marginPct', honoredMarginPct) }),
    clauses, gates: turned,
    ...(old && now ? { effects: effectsOf({ materials: before.materials, lines: old, hours: hoursOf(from.stand) }, { materials: after.materials, lines: now, hours: hoursOf(to.stand) }, to.books) } : {}),
  }
}

/** What the file says was done after the day asked: the dates or the day are wrong, or it is looked at from before. */
const laterThan = ({ status, sentOn, signedOn }: QuoteFacts, on: string | undefined): string | undefined =>
  on !== undefined && signedOn !== undefined && signedOn > on ? `signed ${signedOn}` : on !== undefined && status === 'sent' && sentOn !== undefined && sentOn > on ? `sent ${sentOn}` : undefined

const dates = ({ sentOn, signedOn }: QuoteFacts, last: string | undefined) =>
  ({ ...(sentOn === undefined ? {} : { sentOn }), ...(signedOn === undefined ? {} : { signedOn }), ...(last === undefined ? {} : { expiresOn: last }) })

/** Held or stopped under either book: no price binds before the gate is open. */
function shutBy(old: Verdict, now: Verdict): string | undefined {
  const worst = [now, old].find(v => v === 'stop') ?? [now, old].find(v => v === 'hold')
  return worst === undefined ? undefined : worst === 'stop' ? 'work may not start in this house' : 'the work is held'
}

const hoursOf = ({ billed: { steps } }: Stand): number => steps.reduce((sum, s) => sum + s.personHours.value, 0)

/** What a signed contract passes on: the rise over the price it names, where the new book is of a later day and the rise is more than the clause bears. */
function clausesOf(quote: Quoted['quote'], { materials }: Pick<Priced, 'materials'>, books: Books): ClauseOut[] {
  return (quote?.escalation ?? []).flatMap(({ item, basePrice, on, abovePct = 0 }) => {
    const line = materials.find(m => m.product.item === item), basePriceCents = cents(basePrice)
    if (!line || books.basis.priceBook.dated <= on) return []
    const { unitPriceCents } = line
    if (unitPriceCents.value <= basePriceCents || work(riseOf, { before: exactly(basePriceCents, 'cents', 'the clause'), after: unitPriceCents }).value <= abovePct + 1e-9) return []
    const atBase = work(lineCents, { amount: line.charged, unitPriceCents: exactly(basePriceCents, 'cents', 'the clause') })
    return [{ item, basePriceCents, unitPriceCents: unitPriceCents.value, charged: line.charged.value, passedOnCents: line.totalCents.value - atBase.value }]
  })
}

interface Whole { readonly materials: Priced['materials']; readonly lines: Lines; readonly hours: number }

/** The change of the price, item by item. */
function effectsOf(before: Whole, after: Whole, { company }: Books): Effects {
  const pct = (value: number, why: string): Quantity<'pct'> => exactly(value, 'pct', why)
  const none = pct(0, 'bears none')
  const shares = {
    overheadPct: company.overhead?.per === 'cost' ? company.overhead.pct : none, marginPct: company.marginPct,
    customerTaxPct: company.salesTax === 'customer-taxed' ? company.salesTaxPct : none,
  }
  const carried = (changeCents: number, salesTaxPct: Quantity<'pct'>, contingencyPct: Quantity<'pct'>): number =>
    work(carriedOn, { changeCents: exactly(changeCents, 'cents', 'change of a line'), salesTaxPct, contingencyPct, ...shares }).value
  const taxPct = company.salesTax === 'contractor-pays' ? company.salesTaxPct : none
  const contingencyPct = 'contingencyPct' in after.lines ? after.lines.contingencyPct ?? company.contingencyPct : company.contingencyPct
  const names = new Map<string, string>(), costs = new Map<string, number>()
  for (const [side, sign] of [[before, -1], [after, 1]] as const) for (const m of side.materials) {
    names.set(m.product.item, m.product.name)
    costs.set(m.product.item, (costs.get(m.product.item) ?? 0) + sign * m.totalCents.value)
  }
  const items = [...costs].filter(([, c]) => c !== 0).sort(([a], [b]) => byText(a, b)).map(([item, costCents]): ItemEffect => ({ item, name: names.get(item)!, costCents, priceCents: carried(costCents, taxPct, contingencyPct) }))
  const moved = (key: keyof Lines): number => (after.lines[key] as Quantity).value - (before.lines[key] as Quantity).value
  const perHour = company.overhead?.per === 'hour' ? Math.round((after.hours - before.hours) * company.overhead.cents.value) : 0
  const laborCents = carried(moved('laborCents'), none, contingencyPct) + (perHour === 0 ? 0 : carried(perHour, none, none))
  const otherCents = carried(moved('subcontractCents') + moved('otherCents'), none, none)
  // A customer's tax comes on top of it.
  const minimumCents = Math.round(moved('minimumAddedCents') * (1 + shares.customerTaxPct.value / 100))
  const known = items.reduce((sum, i) => sum + i.priceCents, 0) + laborCents + otherCents + minimumCents
  return { items, laborCents, otherCents, minimumCents, roundingCents: moved('totalCents') - known }
}

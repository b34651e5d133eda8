// The pure core for scripts: text in, plain data out. It reads no file, asks no clock, prints nothing, ends no process and keeps nothing.
import type { CompanyFile } from '../books/company-file.ts'
import { demoCompany, demoPrices } from '../books/demo.ts'
import { shelf, type Shelf } from '../books/open.ts'
import type { PriceBook } from '../books/price-book.ts'
import { readCompany, readPrices, type BookRead } from '../books/read.ts'
import { shapeOf } from '../books/shape.ts'
import { estimate as estimated } from '../estimate/estimate.ts'
import type { EstimateOut } from '../estimate/output.ts'
import { DayMissing, repriced, standOf, type RepricedOut } from '../estimate/quotes/reprice.ts'
import { estimateJson } from '../estimate/to-json.ts'
import { isDay } from '../files/dates.ts'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { findingJson, type FindingJson } from '../findings/render.ts'
import type { Job as ReadJob } from '../job/job.ts'
import { targetOf } from '../job/target.ts'
import { readJob as read } from '../job/read.ts'

export { DayMissing }
export type { EstimateOut, FindingJson, RepricedOut }

/** A job that was read and is valid. */
export interface Job { readonly id: string; readonly title: string; readonly status: 'draft' | 'sent' | 'signed' | 'expired'; readonly file: string; /** What the functions here need of it, and nobody else. */ readonly inner: unknown }
/** A price book and a company file, opened for any number of jobs. */
export interface Books { readonly prices: { readonly name: string; readonly dated: string }; readonly company: { readonly name: string; readonly dated: string }; /** What the functions here need of them, and nobody else. */ readonly inner: unknown }

/** What was asked for, with what is worth saying of it; or what is wrong. */
export type Result<T> = { readonly ok: true; readonly value: T; readonly findings: readonly FindingJson[] } | { readonly ok: false; readonly findings: readonly FindingJson[] }

const houseOf = (job: Job): ReadJob => job.inner as ReadJob
const shelfOf = (books: Books): Shelf => books.inner as Shelf
const told = (findings: readonly Finding[], places: Places, file: string): FindingJson[] => findings.map(f => findingJson(f, places, file))

/** Reads a job file. @param file the name that findings give it */
export function readJob(text: string | Uint8Array, file = 'job.yaml'): Result<Job> {
  const made = read(text, file)
  if (!made.ok) return { ok: false, findings: told(made.findings, made.places, file) }
  const { id, title, status } = made.job.data.job
  return { ok: true, value: { id, title, status, file, inner: made.job }, findings: told(made.findings, made.job.places, file) }
}

/** Reads a price book and a company file; the built-in ones stand for what is not given. */
export function readBooks({ prices, company }: { readonly prices?: string | Uint8Array; readonly company?: string | Uint8Array } = {}): Result<Books> {
  const book = prices === undefined ? undefined : readPrices(prices), firm = company === undefined ? undefined : readCompany(company)
  const of = (b: BookRead<unknown> | undefined, file: string): FindingJson[] => (b ? told(b.findings, b.places, file) : [])
  const findings = [...of(book, 'prices'), ...of(firm, 'company')]
  if ((book && !book.ok) || (firm && !firm.ok)) return { ok: false, findings }
  const opened = shelf(book?.ok ? book.book : demoPrices, firm?.ok ? firm.book : demoCompany)
  const named = ({ name, dated }: PriceBook | CompanyFile) => ({ name, dated })
  return { ok: true, value: { prices: named(opened.prices), company: named(opened.companyFile), inner: opened }, findings }
}

/** Estimates one house, as `lidwork estimate --json` prints it. */
export function estimate(job: Job, books: Books): Result<EstimateOut> {
  const house = houseOf(job), shelves = shelfOf(books), target = targetOf(house.data), troubles = shelves.troubles(target)
  if (troubles.length > 0) return { ok: false, findings: told(sorted(troubles, house.places), house.places, job.file) }
  const made = estimated(house, shelves.for(target))
  const findings = told(sorted(made.findings, house.places), house.places, job.file)
  return findings.some(f => f.severity === 'error') ? { ok: false, findings } : { ok: true, value: estimateJson(made, house), findings }
}

/** Prices one job under an old and a new price book, as a line of `lidwork reprice --ndjson`. @param on the day its quote is judged by @throws DayMissing where its quote has dates and there is no day @throws RangeError where `on` is no day of the calendar */
export function reprice(job: Job, { from, to, on }: { readonly from: Books; readonly to: Books; readonly on?: string }): Result<RepricedOut> {
  if (on !== undefined && (typeof on !== 'string' || !isDay(on))) throw new RangeError(`on: ${String(on)} is no day; write it as 2026-04-01`)
  const { data, places } = houseOf(job), old = shelfOf(from), now = shelfOf(to)
  const target = targetOf(data), troubles = [...old.troubles(target), ...now.troubles(target)]
  if (troubles.length > 0) return { ok: false, findings: told(sorted(troubles, places), places, job.file) }
  const before = old.for(target), after = now.for(target), stand = standOf(data, before)
  const same = old.companyFile === now.companyFile && shapeOf(old.prices) === shapeOf(now.prices), other = same ? stand : standOf(data, after)
  const errors = [...new Set([...stand.errors, ...other.errors])]
  if (errors.length > 0) return { ok: false, findings: told(sorted(errors, places), places, job.file) }
  return { ok: true, value: repriced(job.file, data, { stand, books: before }, { stand: other, books: after }, on), findings: [] }
}

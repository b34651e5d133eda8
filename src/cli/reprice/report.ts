// `reprice` from the words of the command line to its output: jobs as they are done, in the order they came, then the totals.
import { REPRICE_JOB_FORMAT, type RepricedOut } from '../../estimate/quotes/reprice.ts'
import { REPRICE_FORMAT, Totals, type RepriceOut } from '../../estimate/quotes/reprice-totals.ts'
import { dateFault } from '../../files/dates.ts'
import { printable } from '../../findings/printable.ts'
import { repricedHead, repricedLine, rowOf, terminalRepriced, type RepriceRow } from '../../papers/reprice.ts'
import { tell } from '../book-files.ts'
import type { Io } from '../io.ts'
import { copied, JobIds } from '../job-ids.ts'
import { exit, type Run } from '../run.ts'
import { workersFor } from './workers.ts'
import { hold, withHeld } from './held.ts'
import { cacheFolder, keeper } from './keeper.ts'
import { pricer, type Terms } from './pricer.ts'
import { progress } from './progress.ts'
import { done, type Workers, type Done } from './run-jobs.ts'
import { sources, type Sources } from './sources.ts'

/** What the command line says, but for the jobs. */
export interface RepriceOptions {
  readonly from: string; readonly to: string; readonly company?: string; readonly on?: string; readonly list?: string
  readonly json?: boolean; readonly ndjson?: boolean; readonly csv?: boolean; readonly top?: number
  readonly failIfMarginBelow?: number; readonly workers?: number; readonly cache: boolean
}

interface Skip { readonly file: string; readonly why: string }
const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`

/** Runs the command. */
export async function report(run: Run, words: readonly string[], options: RepriceOptions): Promise<void> {
  const { from, to, company, on, list } = options
  if (words.length === 0 && list === undefined) { await run.fail(exit.wrongUse, 'say which jobs: files, folders, - or --list FILE'); return }
  const fault = on === undefined ? undefined : dateFault(on)
  if (fault) { await run.fail(exit.wrongUse, `--on: ${fault.says}, but ${fault.why}`); return }
  const cache = options.cache ? cacheFolder(run.io) : undefined
  const terms: Terms = { from, to, ...(company === undefined ? {} : { company }), ...(on === undefined ? {} : { on }), ...(cache === undefined ? {} : { cache }) }
  const held = hold(run.io, [from, to, ...(company === undefined ? [] : [company])])
  const jobs = await sources(run, words, list)
  if (!jobs) return
  const workers = await workersFor(run.io, { terms, held }, jobs.count, options.workers) // its threads load while this one opens its books
  try { await priceAll(run, { terms, io: withHeld(run.io, held), jobs, workers }, options) } finally { await workers.end() }
}

interface Given { readonly terms: Terms; /** With the books as they were read. */ readonly io: Io; readonly jobs: Sources; readonly workers: Workers }

async function priceAll(run: Run, { terms, io, jobs, workers }: Given, { json = false, ndjson = false, csv = false, top, failIfMarginBelow }: RepriceOptions): Promise<void> {
  const { from, to, on, cache } = terms, priced = pricer(io, terms)
  if (priced.troubles.length > 0) { await tell(run, priced.troubles); return }

  const totals = new Totals(), rows: RepriceRow[] = [], lines: string[] = [], skipped: Skip[] = [], below: string[] = [], ids = new JobIds(), clashes: string[] = []
  const counts = { read: 0, unread: 0, fresh: 0, judged: 0 }
  const bar = progress(run, jobs.count, (ndjson || csv) && run.io.stdout.isTTY)
  if (csv) await run.print(repricedHead())

  async function take(d: Done): Promise<void> {
    await bar.step()
    if (d.is !== 'priced') await bar.end()
    if (d.is === 'fault') { const e = new Error(d.message); if (d.stack !== undefined) e.stack = d.stack; await run.fault(e, `at ${d.file}`); skipped.push({ file: d.file, why: 'a fault in lidwork' }); return }
    if (d.is === 'day-missing') throw new NoDay(d.file)
    if (d.is === 'skipped') {
      run.met(d.code)
      if (d.code === exit.unreadable) counts.unread++; else counts.read++
      await run.say(d.report)
      skipped.push({ file: d.file, why: d.why })
      if (ndjson) await run.print(`${JSON.stringify({ format: REPRICE_JOB_FORMAT, file: d.file, skipped: d.why })}\n`)
      return
    }
    counts.read++
    if (d.fresh) counts.fresh++
    const job = d.job ?? JSON.parse(d.line) as RepricedOut
    totals.add(job)
    const first = ids.taken(job.id, job.file)
    if (first !== undefined) { clashes.push(copied(job.id)); await bar.end(); await run.say(`lidwork: ${printable(job.file)} and ${printable(first)} are both the job ${job.id}; both are counted\n`) }
    if (failIfMarginBelow !== undefined && (job.status === 'sent' || job.status === 'signed') && job.honoredMarginPct !== undefined) {
      counts.judged++
      if (job.honoredMarginPct < failIfMarginBelow) below.push(copied(job.id))
    }
    if (ndjson) await run.print(`${d.line}\n`)
    else if (csv) await run.print(repricedLine(job))
    else if (json) lines.push(d.line)
    else rows.push(rowOf(copied(job)))
  }

  try { for await (const d of workers.price(unit => done(io, priced, unit), jobs.units)) await take(d) } catch (error) {
    await bar.end()
    if (!(error instanceof NoDay)) throw error
    await run.fail(exit.wrongUse, `${error.file}: its quote has dates; say --on and the day to judge it by, such as --on 2026-04-01`)
    return
  }
  await bar.end()
  priced.keep()
  if (counts.fresh > 0 && cache !== undefined) keeper(run.io, cache).trim()
  const all = totals.out()
  if (json) await run.print(asJson({ format: REPRICE_FORMAT, from, to, ...(on === undefined ? {} : { on }), read: counts.read, priced: all.jobs, skipped, clashes: [...new Set(clashes)], totals: all }, lines))
  else if (!ndjson && !csv && all.jobs > 0) await run.print(terminalRepriced({ from, to, ...(on === undefined ? {} : { on }) }, rows, all, run.look(), top))
  // Said also where nothing failed: of no job at all it could not.
  if (failIfMarginBelow !== undefined) await run.say(`lidwork: ${counted(counts.judged, 'sent or signed job')} judged against ${failIfMarginBelow} %\n`)
  if (below.length > 0) {
    run.met(exit.findings)
    await run.say(`lidwork: ${counted(below.length, 'open quote')} would keep less than ${failIfMarginBelow} % at the old price: ${below.slice(0, MOST_NAMED).join(', ')}${below.length > MOST_NAMED ? ', …' : ''}\n`)
  }
  await run.say(`${summary(counts, all.jobs, skipped)}\n`)
}

const MOST_NAMED = 10
/** A quote with dates and no day to judge it by ends the run. */
class NoDay extends Error { constructor(readonly file: string) { super() } }

function summary({ read, unread }: { readonly read: number; readonly unread: number }, priced: number, skipped: readonly Skip[]): string {
  const faulty = skipped.length - unread
  return [`${counted(read + unread, 'job')}: ${priced} priced`, ...(skipped.length === 0 ? [] : [`${skipped.length} skipped (${[...(faulty > 0 ? [`${faulty} with errors`] : []), ...(unread > 0 ? [`${unread} not read`] : [])].join(', ')})`])].join(', ')
}

/** One object; the jobs stand in it as they were printed, so that none is read again. */
function asJson(head: Omit<RepriceOut, 'jobs'>, lines: readonly string[]): string {
  const text = JSON.stringify(head, undefined, 2)
  return `${text.slice(0, -2)},\n  "jobs": [${lines.map(l => `\n    ${l}`).join(',')}${lines.length > 0 ? '\n  ' : ''}]\n}\n`
}

// One job file after the other, under two price books: from its bytes to the line that is printed. It holds no job; a worker thread runs one of these.
import { demoCompany, demoPrices } from '../../books/demo.ts'
import { shelf, type Shelf } from '../../books/open.ts'
import { shapeOf } from '../../books/shape.ts'
import { DayMissing, repriced, standOf, type Stand } from '../../estimate/reprice.ts'
import { sorted, type Finding, type Places } from '../../findings/finding.ts'
import { renderFinding } from '../../findings/render.ts'
import type { Job } from '../../job/job.ts'
import { readJob } from '../../job/read.ts'
import { OutOfRange } from '../../units/quantity.ts'
import { desk } from '../book-files.ts'
import type { Io } from '../io.ts'
import { targetOf } from '../jobs.ts'
import { exit, type Exit } from '../run.ts'

/** What the command line says of the books and the day. */
export interface Terms { readonly from: string; readonly to: string; readonly company?: string; readonly on?: string }

/** What came of one job file: a line of the output; or why there is none, and the report for people. */
export type Outcome =
  | { readonly is: 'priced'; readonly line: string }
  | { readonly is: 'skipped'; readonly file: string; readonly code: Exit; readonly why: string; readonly report: string }
  /** Its quote has dates, and no day was given. */
  | { readonly is: 'day-missing'; readonly file: string }

type Shelves = { readonly from: Shelf; readonly to: Shelf }

const counted = (n: number): string => `${n} ${n === 1 ? 'error' : 'errors'}`

/** Opens the books of the command line once. */
export function pricer(io: Io, { from, to, company, on }: Terms) {
  const { beside, findingOf, shelfOf, troublesOf } = desk(io, { prices: demoPrices, company: demoCompany }, shelf(demoPrices, demoCompany))
  const shapes = new Map<Shelf, string>()
  const shape = (s: Shelf): string => { const made = shapes.get(s) ?? shapeOf(s.prices); shapes.set(s, made); return made }

  const skipped = (file: string, findings: readonly Finding[], places: Places, source: string, code: Exit = exit.findings): Outcome => ({
    is: 'skipped', file, code, why: `${counted(findings.filter(f => f.severity === 'error').length)} in it: ${[...new Set(findings.filter(f => f.severity === 'error').map(f => f.code))].join(', ')}`,
    report: findings.filter(f => f.severity === 'error').map(f => renderFinding(f, places, source, file)).join(''),
  })

  function stands(job: Job, { from, to }: Shelves): { readonly old: Stand; readonly now: Stand } {
    const old = standOf(job.data, from.for(targetOf(job)))
    return { old, now: shape(from) === shape(to) ? old : standOf(job.data, to.for(targetOf(job))) }
  }

  return {
    /** What is wrong with the books of the command line. */
    troubles: troublesOf([{ prices: from, ...(company === undefined ? {} : { company }) }, { prices: to }]),
    /** Prices one file. */
    price(bytes: Uint8Array, file: string): Outcome {
      const read = readJob(bytes, file)
      if (!read.ok) return skipped(file, read.findings, read.places, read.source)
      const { job, source } = read
      const own = company === undefined ? beside({ ...(job.data.books?.company === undefined ? {} : { company: job.data.books.company }) }, file) : { company }
      const olds = shelfOf({ ...own, prices: from }), news = shelfOf({ ...own, prices: to })
      if ('troubles' in olds || 'troubles' in news) {
        const troubles = 'troubles' in olds ? olds.troubles : 'troubles' in news ? news.troubles : []
        return skipped(file, sorted(troubles.map(t => findingOf(t)), job.places), job.places, source, troubles.reduce<Exit>((worst, t) => (t.code > worst ? t.code : worst), exit.findings))
      }
      const target = targetOf(job), faults = [...olds.shelf.troubles(target), ...news.shelf.troubles(target)]
      if (faults.length > 0) return skipped(file, sorted(faults, job.places), job.places, source)
      const shelves = { from: olds.shelf, to: news.shelf }, { old, now } = stands(job, shelves)
      const errors = [...old.errors, ...now === old ? [] : now.errors]
      if (errors.length > 0) return skipped(file, sorted(errors, job.places), job.places, source)
      try {
        return { is: 'priced', line: JSON.stringify(repriced(file, job.data, { stand: old, books: shelves.from.for(targetOf(job)) }, { stand: now, books: shelves.to.for(targetOf(job)) }, on)) }
      } catch (error) {
        if (error instanceof DayMissing) return { is: 'day-missing', file }
        if (!(error instanceof OutOfRange)) throw error
        return { is: 'skipped', file, code: exit.findings, why: `a figure beyond what can be priced: ${error.message}`, report: `${file}: ${error.message}\n` }
      }
    },
  }
}
export type Pricer = ReturnType<typeof pricer>

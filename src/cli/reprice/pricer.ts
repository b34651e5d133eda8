// One job file after the other, under two price books: from its bytes to the line that is printed. It holds no job; a worker thread runs one of these.
import { demoCompany, demoPrices } from '../../books/demo.ts'
import { shelf, type Shelf } from '../../books/open.ts'
import { shapeOf } from '../../books/shape.ts'
import { keptStand, standKept } from '../../estimate/quotes/kept-stand.ts'
import { DayMissing, repriced, standOf, type RepricedOut, type Stand } from '../../estimate/quotes/reprice.ts'
import { sorted, type Finding, type Places } from '../../findings/finding.ts'
import { renderFinding } from '../../findings/render.ts'
import type { Job } from '../../job/job.ts'
import { readJob } from '../../job/read.ts'
import { targetOf } from '../../job/target.ts'
import { OutOfRange } from '../../units/quantity.ts'
import { desk } from '../book-files.ts'
import type { Io } from '../io.ts'
import { exit, type Exit } from '../run.ts'
import { keeper, sum, type Asked, type Kept } from './keeper.ts'

/** What the command line says of the books and the day, and where read files are kept. */
export interface Terms { readonly from: string; readonly to: string; readonly company?: string; readonly on?: string; readonly cache?: string }

/** What came of one job file: a line of the output; or why there is none, and the report for people. */
export type Outcome =
  /** `fresh` where something new is kept of it. */
  | { readonly is: 'priced'; readonly line: string; /** What stands in the line, where no thread lies between. */ readonly job?: RepricedOut; readonly fresh: boolean }
  | { readonly is: 'skipped'; readonly file: string; readonly code: Exit; readonly why: string; readonly report: string }
  /** Its quote has dates, and no day was given. */
  | { readonly is: 'day-missing'; readonly file: string }

interface Side { readonly shelf: Shelf; readonly shape: string }

const counted = (n: number): string => `${n} ${n === 1 ? 'error' : 'errors'}`

const askedOf = (job: Job): Asked => ({ job: job.data.job, target: targetOf(job.data), ...(job.data.quote === undefined ? {} : { quote: job.data.quote }), ...(job.data.books?.company === undefined ? {} : { company: job.data.books.company }) })

/** Opens the books of the command line once. */
export function pricer(io: Io, { from, to, company, on, cache }: Terms) {
  const { beside, findingOf, shelfOf, troublesOf } = desk(io, { prices: demoPrices, company: demoCompany }, shelf(demoPrices, demoCompany))
  const shapes = new Map<Shelf, string>(), kept = cache === undefined ? undefined : keeper(io, cache)
  const shape = (s: Shelf): string => { const made = shapes.get(s) ?? sum(shapeOf(s.prices), '\n', JSON.stringify(s.companyFile)); shapes.set(s, made); return made }

  const skipped = (file: string, all: readonly Finding[], places: Places, source: string, code: Exit = exit.findings): Outcome => {
    const errors = all.filter(f => f.severity === 'error')
    return { is: 'skipped', file, code, why: `${counted(errors.length)} in it: ${[...new Set(errors.map(f => f.code))].join(', ')}`, report: errors.map(f => renderFinding(f, places, source, file)).join('') }
  }

  /** The books of one side for a job that may have a company file of its own. */
  function sideOf(prices: string, own: string | undefined, file: string): Side | { readonly troubles: Parameters<typeof findingOf>[0][] } {
    const books = shelfOf({ ...(company !== undefined ? { company } : own === undefined ? {} : beside({ company: own }, file)), prices })
    return 'troubles' in books ? { troubles: [...books.troubles] } : { shelf: books.shelf, shape: shape(books.shelf) }
  }

  return {
    /** What is wrong with the books of the command line. */
    troubles: troublesOf([{ prices: from, ...(company === undefined ? {} : { company }) }, { prices: to }]),
    /** Writes what is kept of the files so far. */
    keep(): void { kept?.flush() },
    /** Prices one file. */
    price(bytes: Uint8Array, file: string): Outcome {
      const key = kept?.keyOf(bytes), before: Kept | undefined = key === undefined ? undefined : kept!.get(key)
      let read: { readonly job: Job; readonly source: string } | undefined
      if (!before) {
        const result = readJob(bytes, file)
        if (!result.ok) return skipped(file, result.findings, result.places, result.source)
        read = result
      }
      /** The file itself: for books of a shape that nothing is kept of, and for the places of findings. */
      const again = (): { readonly job: Job; readonly source: string } => { const r = read ?? readJob(bytes, file); if ('ok' in r && !r.ok) throw new Error('a file that was valid is no longer'); return read = r as { job: Job; source: string } }
      const asked = before?.asked ?? askedOf(read!.job)
      const old = sideOf(from, asked.company, file), now = sideOf(to, asked.company, file)
      if ('troubles' in old || 'troubles' in now) {
        const troubles = 'troubles' in old ? old.troubles : 'troubles' in now ? now.troubles : [], { job, source } = again()
        return skipped(file, sorted(troubles.map(t => findingOf(t)), job.places), job.places, source, troubles.reduce<Exit>((worst, t) => (t.code > worst ? t.code : worst), exit.findings))
      }
      const faults = [old.shelf, now.shelf].flatMap(s => s.troubles(asked.target))
      if (faults.length > 0) { const { job, source } = again(); return skipped(file, sorted(faults, job.places), job.places, source) }
      const made = new Map<string, Stand>()
      const standFor = ({ shelf, shape }: Side): Stand => {
        const known = before?.stands[shape]
        const stand = made.get(shape) ?? (known ? standKept(known) : standOf(again().job.data, shelf.for(asked.target)))
        made.set(shape, stand)
        return stand
      }
      const sides = [old, now].map(side => ({ stand: standFor(side), books: side.shelf.for(asked.target) })) as [Parameters<typeof repriced>[2], Parameters<typeof repriced>[3]]
      const errors = [...made.values()].flatMap(s => s.errors)
      if (errors.length > 0) { const { job, source } = again(); return skipped(file, sorted(errors, job.places), job.places, source) }
      try {
        const job = repriced(file, asked, ...sides, on), line = JSON.stringify(job)
        const fresh = key !== undefined && [...made.keys()].some(s => !before?.stands[s])
        if (fresh) kept!.put(key, { asked, stands: { ...before?.stands, ...Object.fromEntries([...made].map(([s, stand]) => [s, before?.stands[s] ?? keptStand(stand)])) } })
        return { is: 'priced', line, job, fresh }
      } catch (error) {
        if (error instanceof DayMissing) return { is: 'day-missing', file }
        if (!(error instanceof OutOfRange)) throw error
        return { is: 'skipped', file, code: exit.findings, why: `a figure beyond what can be priced: ${error.message}`, report: `${file}: ${error.message}\n` }
      }
    },
  }
}
export type Pricer = ReturnType<typeof pricer>

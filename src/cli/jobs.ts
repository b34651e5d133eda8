// From the bytes of a job file to its findings and, where nothing is wrong, its estimate.
import { demoCompany, demoPrices } from '../books/demo.ts'
import { shelf, type Shelf } from '../books/open.ts'
import { estimate, type Estimate } from '../estimate/estimate.ts'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { renderFinding } from '../findings/render.ts'
import type { Job } from '../job/job.ts'
import { readJob, type ReadResult } from '../job/read.ts'
import { targetOf } from '../job/target.ts'
import type { BookFiles } from './book-files.ts'
import type { Run } from './run.ts'

interface Read { readonly file: string; readonly source: string; readonly places: Places; readonly findings: readonly Finding[] }
export type Opened = Read & ({ readonly sound: true; readonly job: Job; readonly estimate: Estimate; readonly books: Shelf } | { readonly sound: false })

/** The embedded books, opened once for all files. */
const demo = shelf(demoPrices, demoCompany)

const refused = (file: string, read: ReadResult, places: Places, findings: readonly Finding[]): Opened => ({ file, source: read.source, places, findings, sound: false })

function takenOff(file: string, read: ReadResult, books: Shelf): Opened {
  if (!read.ok) return refused(file, read, read.places, read.findings)
  const { job, source } = read
  const target = targetOf(job.data), troubles = books.troubles(target)
  if (troubles.length > 0) return refused(file, read, job.places, sorted(troubles, job.places))
  const made = estimate(job, books.for(target))
  const findings = sorted(made.findings, job.places)
  const shared = { file, source, places: job.places, findings }
  return findings.some(f => f.severity === 'error') ? { ...shared, sound: false } : { ...shared, sound: true, job, estimate: made, books }
}

/** Reads a job file and takes it off: an error of the takeoff is a finding like any other. */
export const openJob = (bytes: Uint8Array, file: string, books: Shelf = demo): Opened => takenOff(file, readJob(bytes, file), books)

/** Opens one job after the other, each with the books that the command line, else the job itself names. */
export type OpenJob = (bytes: Uint8Array, file: string) => Promise<Opened>

/** @returns undefined where a book of the command line cannot be used, which has then been said */
export async function jobOpener(run: Run, flags: BookFiles): Promise<OpenJob | undefined> {
  const desk = async () => (await import('./book-files.ts')).desk(run.io, { prices: demoPrices, company: demoCompany }, demo)
  let opened: ReturnType<typeof desk> | undefined
  if (flags.prices !== undefined || flags.company !== undefined) {
    const { shelfOf, tell } = await (opened ??= desk())
    const books = shelfOf(flags)
    if ('troubles' in books) { await tell(run, books.troubles); return undefined }
  }
  return async (bytes, file) => {
    const read = readJob(bytes, file)
    const own = read.ok ? read.job.data.books : undefined
    if (!read.ok || (own === undefined && opened === undefined)) return takenOff(file, read, demo)
    const { beside, findingOf, shelfOf } = await (opened ??= desk())
    const books = shelfOf({ ...beside(own ?? {}, file), ...flags })
    if (!('troubles' in books)) return takenOff(file, read, books.shelf)
    for (const t of books.troubles) run.met(t.code)
    return refused(file, read, read.job.places, sorted(books.troubles.map(t => findingOf(t, own, file)), read.job.places))
  }
}

/** The findings as text. */
export const reportOf = ({ findings, places, source, file }: Opened): string => findings.map(f => renderFinding(f, places, source, file)).join('')

// From a close-out to what was built: its job file, by path from its own folder, and the estimate of that.
import { posix } from 'node:path'
import type { Shelf } from '../books/open.ts'
import { asBuilt, type AsBuilt } from '../closeout/as-built.ts'
import type { CloseoutFile } from '../closeout/format.ts'
import { readCloseout } from '../closeout/read.ts'
import type { Estimate } from '../estimate/estimate.ts'
import type { Finding } from '../findings/finding.ts'
import { renderFinding } from '../findings/render.ts'
import type { Job } from '../job/job.ts'
import type { BookFiles } from './book-files.ts'
import { failed } from './io.ts'
import { jobOpener, reportOf } from './jobs.ts'
import { exit, type Run } from './run.ts'

export const CLOSEOUT_ENDING = '.closeout.yaml'

export interface Closed { readonly file: string; readonly data: CloseoutFile; readonly job: Job; readonly books: Shelf; readonly estimate: Estimate; readonly built: AsBuilt; /** Its findings as text. */ readonly report: string }

/** The path of a file that another names, which goes from the other's folder. */
export const besideFile = (path: string, file: string): string => (posix.isAbsolute(path) || /^([A-Za-z]:|\\\\)/.test(path) ? path : posix.join(file === '-' ? '.' : posix.dirname(file.replaceAll('\\', '/')), path.replaceAll('\\', '/')))

/** `NAME.closeout.yaml` beside `NAME.job.yaml`. */
export const closeoutName = (job: string): string => `${job.replace(/(\.job)?\.ya?ml$/, '')}${CLOSEOUT_ENDING}`

/** A path as it is written in a file that stands elsewhere. */
export function fromFolder(path: string, file: string): string {
  const plain = path.replaceAll('\\', '/')
  return posix.isAbsolute(plain) || /^[A-Za-z]:/.test(plain) || file === '-' ? plain : posix.relative(posix.dirname(file.replaceAll('\\', '/')), plain)
}

/** Opens close-outs one after the other; what is wrong in one is said, and counted. @returns undefined where a book of the command line cannot be used */
export async function closeoutOpener(run: Run, flags: BookFiles): Promise<((bytes: Uint8Array, file: string) => Promise<Closed | undefined>) | undefined> {
  const openJob = await jobOpener(run, flags)
  if (!openJob) return undefined
  return async (bytes, file) => {
    const read = readCloseout(bytes)
    const told = (findings: readonly Finding[]): string => findings.map(f => renderFinding(f, read.places, read.source, file)).join('')
    const refuse = async (findings: readonly Finding[]): Promise<undefined> => { run.met(exit.findings); await run.say(told(findings)); return undefined }
    if (!read.ok) return refuse(read.findings)
    const jobFile = besideFile(read.data.job, file), found = run.io.readFile(jobFile)
    const unsound = (code: string, why: string, mend: string): Promise<undefined> => refuse([{ code, severity: 'error', path: '/job', says: `job: ${read.data.job}`, why, mend }])
    if (failed(found)) { run.met(exit.unreadable); return unsound('job-unread', found.message, 'write the path from the folder of the close-out') }
    const job = await openJob(found.bytes, jobFile)
    if (!job.sound) { await run.say(reportOf(job)); return unsound('job-faulty', 'it can’t be estimated', `see lidwork check ${jobFile}`) }
    const built = asBuilt(read.data, read.findings, read.places, job.job, job.estimate)
    return 'out' in built ? { file, data: read.data, job: job.job, books: job.books, estimate: job.estimate, built, report: told(built.findings) } : refuse(built.findings)
  }
}

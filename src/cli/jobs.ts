// From the bytes of a job file to its findings and, where nothing is wrong, its estimate.
import { demoCompany, demoPrices } from '../books/demo.ts'
import type { JobTarget } from '../books/job-target.ts'
import { shelf } from '../books/open.ts'
import { estimate, type Estimate } from '../estimate/estimate.ts'
import { placed, sorted, type Finding, type Places } from '../findings/finding.ts'
import { renderFinding } from '../findings/render.ts'
import type { Job } from '../job/job.ts'
import { readJob } from '../job/read.ts'

interface Read { readonly file: string; readonly source: string; readonly places: Places; readonly findings: readonly Finding[] }
export type Opened = Read & ({ readonly sound: true; readonly job: Job; readonly estimate: Estimate } | { readonly sound: false })

/** The embedded books, opened once for all files. */
const demo = shelf(demoPrices, demoCompany)

const targetOf = ({ data: { target, house: { climateZone }, choices } }: Job): JobTarget =>
  ({ ...target, ...(climateZone === undefined ? {} : { climateZone }), ...(choices?.marginPct === undefined ? {} : { marginPct: choices.marginPct }) })

/** Reads a job file and takes it off: an error of the takeoff is a finding like any other. */
export function openJob(bytes: Uint8Array, file: string): Opened {
  const read = readJob(bytes, file)
  if (!read.ok) return { file, source: read.source, places: read.places, findings: read.findings, sound: false }
  const { job, source } = read
  const made = estimate(job, demo.for(targetOf(job)))
  const findings = sorted(made.findings, job.places)
  const shared = { file, source, places: job.places, findings }
  return findings.some(f => f.severity === 'error') ? { ...shared, sound: false } : { ...shared, sound: true, job, estimate: made }
}

/** The findings as text. */
export const reportOf = ({ findings, places, source, file }: Opened): string => findings.map(f => renderFinding(f, places, source, file)).join('')

/** Where a pointer of the job file stands, as `file:line`. */
export const lookup = ({ file, places }: Opened) => (path: string): string =>
  `${file}:${placed({ path, code: '', severity: 'note', says: '', why: '', mend: '' }, places).line}`

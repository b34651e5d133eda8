// From the bytes of a job file to a job, in three gates: YAML, the format, the rules of the trade. The first that finds a fault ends the reading.
import { readsJob, validateJob } from '../../dist/validators.mjs'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { few, readFormat } from '../files/read.ts'
import type { FileKind } from '../files/schema.ts'
import { checks } from './checks.ts'
import type { Job } from './job.ts'
import { JOB_FORMAT, type JobFile } from './job-file.ts'
import { jobFormat } from './schemas.ts'

export type ReadResult =
  | { readonly ok: true; readonly job: Job; readonly findings: Finding[]; readonly source: string }
  | { readonly ok: false; readonly findings: Finding[]; readonly places: Places; readonly source: string }

const jobKind: FileKind = {
  format: JOB_FORMAT, name: 'a job file', holds: 'one surveyed house', start: 'begin with the file that lidwork new house.job.yaml writes',
  one: ['a file is one job', 'put the second house in a file of its own'], mostBytes: 1_000_000, usual: 'some thousand',
}

/** Reads one job file. @param file its name as the user wrote it */
export function readJob(bytes: Uint8Array | string, file: string): ReadResult {
  const read = readFormat<JobFile>(bytes, { kind: jobKind, validate: validateJob, reads: readsJob, schema: jobFormat })
  if (!read.ok) return read
  const { data, places, about, source } = read
  const found = checks(data)
  if (found.some(f => f.severity === 'error')) return { ok: false, findings: few(sorted(found, places), places), places, source }
  return new SoundRead({ data, file, places, about, findings: found }, source)
}

/** A batch asks for no notes: they are put in order for those who do. (A class: a getter of its own in each object costs the engine a shape of its own.) */
class SoundRead {
  readonly ok = true
  private inOrder: Finding[] | undefined
  constructor(readonly job: Job, readonly source: string) {}
  get findings(): Finding[] { return this.inOrder ??= sorted([...this.job.findings], this.job.places) }
}

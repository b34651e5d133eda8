// From the bytes of a job file to a job, in three gates: YAML, the format, the rules of the trade. The first that finds a fault ends the reading.
import { readsJob, validateJob } from '../../dist/validators.mjs'
import { placed, sorted, type Finding, type Places } from '../findings/finding.ts'
import { checks } from './checks.ts'
import type { Job } from './job.ts'
import { JOB_FORMAT, type JobFile } from './job-file.ts'
import { schemaFindings, type Fault } from './messages.ts'
import { normalize } from './normalize.ts'
import { jobFormat } from './schemas.ts'
import { readYaml } from './yaml.ts'

export type ReadResult =
  | { readonly ok: true; readonly job: Job; readonly findings: Finding[]; readonly source: string }
  | { readonly ok: false; readonly findings: Finding[]; readonly places: Places; readonly source: string }

const MOST_FINDINGS = 50

/** The first findings, and one that says how many more there are. */
function few(findings: Finding[], places: Places): Finding[] {
  if (findings.length <= MOST_FINDINGS) return findings
  const shown = findings.slice(0, MOST_FINDINGS)
  return [...shown, { code: 'more-findings', severity: 'note', path: shown.at(-1)!.path, span: placed(shown.at(-1)!, places),
    says: `${findings.length - MOST_FINDINGS} more findings`, why: `the first ${MOST_FINDINGS} are shown`, mend: 'mend those and check again' }]
}

/** Reads one job file. @param file its name as the user wrote it */
export function readJob(bytes: Uint8Array | string, file: string): ReadResult {
  const yaml = readYaml(bytes)
  const { places } = yaml
  const { source } = places
  const refused = (findings: readonly Finding[]): ReadResult => ({ ok: false, findings: few(sorted(findings, places), places), places, source })
  if (yaml.findings.length > 0) return refused(yaml.findings)
  const { about, unread } = normalize(yaml.data, readsJob)
  const faults: Fault[] = validateJob(yaml.data) ? [] : [...validateJob.errors ?? []]
  for (const path of unread) if (!faults.some(f => f.instancePath === path)) faults.push({ instancePath: path, keyword: 'unread', params: {} })
  if (faults.length > 0) return refused(schemaFindings(faults, yaml, jobFormat(), JOB_FORMAT))
  const data = yaml.data as JobFile
  const findings = sorted(checks(data), places)
  if (findings.some(f => f.severity === 'error')) return refused(findings)
  return { ok: true, job: { data, file, places, about, findings }, findings, source }
}

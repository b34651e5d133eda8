import type { Finding, Places } from '../findings/finding.ts'
import type { JobFile } from './job-file.ts'

/** A valid job file: its data with every number read, and where each value stands. */
export interface Job {
  readonly data: JobFile
  /** The name it was read under, as the user wrote it. */
  readonly file: string
  readonly places: Places
  /** Pointers of numbers written `~22`: about 22. */
  readonly about: readonly string[]
  /** What the reading found worth saying: warnings and notes, as they were met. */
  readonly findings: readonly Finding[]
}

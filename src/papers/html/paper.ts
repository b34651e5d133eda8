// What every paper of a house has.
import type { House } from './page.ts'

export interface PaperFile {
  /** Behind the job's id and a dot: `proposal.html`. */
  readonly ending: string
  readonly text: string
}

export interface Paper {
  /** As the command line knows it. */
  readonly name: string
  /** For whom it is, for the help. */
  readonly says: string
  /** Whether this house has such a paper at all; a stopped house has no proposal. */
  appliesTo(house: House): boolean
  files(house: House): readonly PaperFile[]
}

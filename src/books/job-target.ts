import type { Edition } from '../reference/targets.ts'
import type { OwnValues } from './own-values.ts'

/** What the books need to know of a job before they can answer. */
export interface JobTarget {
  readonly code?: Edition
  readonly state?: string
  readonly county?: string
  readonly climateZone?: string
  readonly rValue?: number
  /** What the job sets in place of the books. */
  readonly choices?: OwnValues & { readonly marginPct?: number; readonly permitFee?: number }
}

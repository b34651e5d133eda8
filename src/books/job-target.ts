import type { Edition } from '../reference/targets.ts'

/** What the books need to know of a job before they can answer. */
export interface JobTarget {
  readonly code?: Edition
  readonly state?: string
  readonly county?: string
  readonly climateZone?: string
  readonly rValue?: number
  readonly marginPct?: number
}

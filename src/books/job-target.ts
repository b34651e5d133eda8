/** What the books need to know of a job before they can answer. */
export interface JobTarget {
  readonly code?: string
  readonly climateZone?: string
  readonly rValue?: number
  readonly marginPct?: number
}

// The options as other programs read them; more names may be added.
import type { EstimateOut, Verdict } from '../output.ts'

export const OPTIONS_FORMAT = 'lidwork-options/1'

/** Beyond another row: the step under it, or the file as written; without `step` beyond doing nothing. */
export interface OverOut {
  step?: string
  moreCents: number
  /** The same before minimum charge, rounding and tax of the customer: paybacks and inches go by it. */
  moreBeforeFloorCents: number
  moreHours: number; moreBags: number
  /** Settled, a mean over the floor. */
  moreInches: number
  moreBillCentsLow?: number; moreBillCentsExpected?: number; moreBillCentsHigh?: number
  /** Absent beyond fifty years. */
  paybackYearsLow?: number; paybackYearsExpected?: number; paybackYearsHigh?: number
  /** Price and yearly saving of an inch of this step. */
  inchCents?: number; inchBillCents?: number
}

export interface OptionOut {
  id: string; what: string; targetR?: number; product?: string
  /** The job file as it is. */
  asWritten: boolean
  /** Less than the goal of the file. */
  underTarget: boolean
  verdict: Verdict; totalCents?: number
  /** Price before minimum charge, rounding and tax of the customer. */
  beforeFloorCents?: number
  /** The minimum charge sets the price. */
  floored: boolean
  personHours: number; sealingHours: number; days: number; bags: number; averageR?: number
  /** The most that any ceiling bears. */
  ceilingLoadPsf?: number
  areas: { id: string; product?: string; chartR?: number; finalR?: number; averageR?: number; bags?: number; settledDepthIn?: number; initialDepthIn?: number; ceilingLoadPsf?: number; stoppedBy: string[] }[]
  cfm50CutLow?: number; cfm50CutExpected?: number; cfm50CutHigh?: number
  billCentsLow?: number; billCentsExpected?: number; billCentsHigh?: number
  /** Gates that are open here and not in the file as written. */
  newGates: string[]
  over?: OverOut
}

export interface OptionsOut {
  format: typeof OPTIONS_FORMAT
  job: EstimateOut['job']; basis: EstimateOut['basis']; verdict: Verdict
  targetR: number
  /** Goals, cheapest first; each over the one before. */
  ladder: OptionOut[]
  /** The same goal with each blown product, and what may be chosen: over the file as written. */
  products: OptionOut[]; choices: OptionOut[]
  /** Priced by itself, to be added. */
  offers: EstimateOut['offers']
  /** Where more depth stops paying: the last step that pays back within the years, and the first above it that does not. */
  nextInch?: { paysWithinYears: number; lastThatPays?: string; firstThatDoesNot?: string }
  /** Ways that have no estimate, and why. */
  left: { id: string; what: string; why: string }[]
  /** What is not known for savings. */
  missing: string[]
}

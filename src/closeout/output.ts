// A close-out as other programs read it: plain data, rounded on the way out. These names are frozen as lidwork-as-built/1; more may be added.
import type { EstimateOut } from '../estimate/output.ts'

export const AS_BUILT_FORMAT = 'lidwork-as-built/1'

/** proved: nothing is left to do. open: something is, and it is named. stop: nobody may be left alone with it. */
export type State = 'proved' | 'open' | 'stop'

/** What has to be done, and the place of the close-out it is read from. */
export interface DueOut { code: string; what: string; why: string; mend: string; of?: string }

export interface RowOut { chartR: number; bagsNeeded: number; weightPsf: number; weightNeededPsf: number; initialNeededIn: number; bags: boolean; weight: boolean; depth: boolean }

export interface AreaBuiltOut {
  id: string; kind: string
  /** blown: by the chart of its label. packed: by density. laid: batts. */
  way: 'blown' | 'packed' | 'laid'
  proof: 'proved' | 'short' | 'not-shown'
  why: string[]
  product: string; productName: string; maker?: string; machine?: string
  coveredFt2: number
  /** R of the row that was sold, and whether it was interpolated; then the label proves the listed row below it. */
  soldR?: number; interpolated?: boolean; promisedR?: number
  /** The highest listed row that bags, weight and depth all meet. */
  certifiedR?: number; settledDepthIn?: number
  /** Of all fill above the ceiling plane, once the new fill has settled by its label. */
  settledTopIn?: number
  bags?: number; bagsPlanned?: number; bagsNeeded?: number; bagsMissing?: number
  oldFillIn?: number; markersNeeded?: number; markersRead?: number
  readings?: { marker: number; topIn: number; newIn: number; shortIn?: number }[]
  initialDepthIn?: number; meanDepthIn?: number; weightPsf?: number; densityPcf?: number; densityNeededPcf?: number
  ceilingLoadPsf?: number; ceilingLimitPsf?: number
  thicknessIn?: number; labelR?: number
  /** What was sold, as this product brings it; then the listed rows of its label. */
  sold?: RowOut; rows?: RowOut[]
}

/** One part of the house on the receipt; a figure that nobody has shown is absent, and `missing` names it. */
export interface PartOut {
  id: string; part: string; material: string; maker?: string; kind: 'loose-fill' | 'other'
  coverageFt2?: number; initialIn?: number; settledIn?: number; thicknessIn?: number; rValue?: number; bags?: number; densityPcf?: number
}

export interface PaperOut { rule: string; parts: PartOut[]; company?: string; name?: string; license?: string; signedOn?: string; missing: MissingOut[] }
/** A field that the rule asks for and nobody has shown; of the paper itself where no part is named. */
export interface MissingOut { part?: string; field: string; title: string }

export interface TestOut { in?: number; out?: number; less?: number; lessPct?: number }

export interface AirBuiltOut {
  on?: string; by?: string; sameSetUp?: boolean
  cfm50?: TestOut; ach50?: TestOut; cfm25Total?: TestOut; cfm25Outside?: TestOut; zonePa?: TestOut
  /** What the estimate expected to be gone. */
  predicted?: { cfm50CutLow: number; cfm50CutExpected: number; cfm50CutHigh: number }
  against?: 'within' | 'less' | 'more'
  ductCfm25Target?: number
}

export interface ApplianceBuiltOut {
  id: string; what: string; at: string
  /** What the readings may be at most. */
  atMost: { pulledDownPa?: number; spillageSeconds?: number; flueCoPpm?: number }
  before?: { result: string; on: string; by: string }
  during: CombustionOut[]; after?: CombustionOut
}
export interface CombustionOut { on?: string; by?: string; result?: string; pulledDownPa?: number; spillageSeconds?: number; vent?: string; flueCoPpm?: number; roomCoPpm?: number }

export interface TaskBuiltOut { id: string; title: string; phase: string; estimatedHours: number; personHours?: number; overHours?: number }
export interface MaterialBuiltOut { item: string; name: string; buyUnit: string; estimated: number; used: number; asEstimated: boolean; unitPriceCents: number; estimatedCents: number; totalCents: number }
export interface SumsOut { materialsCents: number; salesTaxCents: number; laborCents: number; subcontractCents: number; otherCents: number; overheadCents: number; contingencyCents: number; costCents: number; soldCents: number; marginPct: number }
export interface CostOut {
  tasks: TaskBuiltOut[]; unplanned: { what: string; personHours?: number }[]; estimatedHours: number; personHours: number; wageCents: number
  materials: MaterialBuiltOut[]; changesCents: number
  estimate: SumsOut
  /** Absent while hours are missing. */
  job?: SumsOut
  marginKeptPct?: number
  missing: string[]; asEstimated: string[]
}

export interface AsBuiltOut {
  format: typeof AS_BUILT_FORMAT
  job: EstimateOut['job'] & { file: string; address?: string }
  basis: EstimateOut['basis']
  state: State
  stops: DueOut[]
  open: DueOut[]
  days: string[]
  installer: { company?: string; name?: string; license?: string; phone?: string; signedOn?: string }
  areas: AreaBuiltOut[]
  mends: { id: string; code: string; where: string; why: string; on?: string; by?: string; proof?: string }[]
  air?: AirBuiltOut
  ventilation?: { standard: string; totalCfm: number; infiltrationCreditCfm: number; localDeficitCfm?: number; fanCfm: number; fanNeeded: boolean; fanCfmPredicted?: number; measured: boolean; /** Where the owner’s signed choice is kept. */ choice?: string }
  combustion: ApplianceBuiltOut[]
  receipt: PaperOut
  certificate: PaperOut
  card: { flags?: number; keepClear: { what: string; where: string }[]; markers: number }
  cost: CostOut
  findings: EstimateOut['findings']
}

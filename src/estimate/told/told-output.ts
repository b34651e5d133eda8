// What `explain --json` prints. These names are frozen as lidwork-explain/1; more may be added.

export type ExplainFormat = 'lidwork-explain/1'

/** Where a figure comes from; only what applies is there. */
export interface OriginTold {
  readonly is: 'given' | 'row' | 'assumed' | 'worked'
  /** Given: a pointer into the job file, its file and line, the word that stands there where it is no number, and whether it was written as about. */
  readonly at?: string; readonly file?: string; readonly line?: number; readonly as?: string; readonly about?: boolean
  /** Row: which one, of which table, its source, how it was obtained, and the figure that picked it. */
  readonly row?: string; readonly table?: string; readonly source?: string; readonly obtained?: string; readonly pickedBy?: { readonly value: number; readonly unit: string; readonly as?: string }
  /** Assumed: by which name a company file replaces it, what it is, and why. */
  readonly id?: string; readonly what?: string; readonly why?: string; readonly replacedBy?: string
  /** Worked. */
  readonly formula?: { readonly id: string; readonly says: string; readonly symbols: string; readonly source: string }
}
export interface NamedTold { readonly path: string; readonly value: number; readonly unit: string }
/** `lines` of the file that went straight into an input that was worked out. */
export interface InputTold extends NamedTold, OriginTold { readonly name: string; readonly lines?: readonly number[] }
/** How the formula rounds, in words, and how the output does. */
export interface StepTold extends NamedTold, OriginTold {
  /** As the output has it, and the step to which it is rounded there. */
  readonly printed?: number; readonly roundedTo?: number
  /** Significant digits of the inputs with which the step comes out, roundings included: six, seldom more. */
  readonly digits: number
  readonly roundings: readonly string[]
  readonly inputs: readonly InputTold[]
  /** What nobody measured and this figure rests on, through whatever stands between; of the first step alone, as `usedBy`. */
  readonly assumptions: readonly (NamedTold & { readonly why: string })[]
  readonly usedBy: readonly NamedTold[]
}
/** `figures` are what the words fit; `steps` are there where they fit one. */
export interface ExplainOut { readonly format: ExplainFormat; readonly job: string; readonly file: string; readonly asked?: string; readonly figures: readonly NamedTold[]; readonly steps: readonly StepTold[] }

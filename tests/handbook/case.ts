// One check of one formula by a figure from outside the program: printed somewhere, or worked out without it.
export const obtained = ['published, seen', 'published, seen in a copy', 'computed independently', 'from memory', 'hand arithmetic'] as const
export type Obtained = (typeof obtained)[number]

export interface Case {
  readonly id: string
  /** Id of the formula. */
  readonly formula: string
  readonly inputs: Readonly<Record<string, number>>
  readonly expected: number
  readonly tolerance: number
  readonly toleranceWhy: string
  readonly source: string
  readonly obtained: Obtained
  /** Printed or worked out together with others; of one table at most five count. */
  readonly table?: string
  readonly note?: string
}

type Shared = Partial<Omit<Case, 'id' | 'inputs' | 'expected'>>
type Own = Pick<Case, 'id' | 'inputs' | 'expected'> & Shared

/** Cases of one source; what a case says itself stands over what its group says. */
export const group = (shared: Shared, cases: readonly Own[]): Case[] => cases.map(c => ({ ...shared, ...c }) as Case)

export const EXACT = { tolerance: 1e-9, toleranceWhy: 'exact but for binary fractions' } as const
export const digit = (step: number, more = '') => ({ tolerance: step / 2 + 1e-9, toleranceWhy: `half of the last printed digit${more}` })
/** Done by hand; the note holds the arithmetic. */
export const byHand = { source: 'worked by hand', obtained: 'hand arithmetic', ...EXACT } as const

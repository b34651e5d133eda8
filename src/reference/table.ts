import type { Quantity, Unit } from '../units/quantity.ts'

/** How a published value came to stand here. */
export type Obtained = 'published, seen' | 'published, seen in a copy' | 'from memory, high' | 'from memory, medium' | 'from memory, low' | 'judgment' | 'common practice, no source' | 'derived' | 'company default'

/** Rows of data with where they come from; a row may name its own source where it differs from the table's. */
export interface Table<R extends object> {
  readonly name: string
  readonly title: string
  readonly source: string
  readonly obtained: Obtained
  /** What it decides, where it chooses and gives no figure of its own. */
  readonly use?: string
  /** Unit of each numeric column. */
  readonly units: Readonly<Record<string, string>>
  readonly rows: readonly (R & { readonly source?: string; readonly obtained?: Obtained })[]
}

export const table = <R extends object>(t: Table<R>): Table<R> => t

/** A figure of a row, linked to it. @param which says which row, and which of its figures where that is not plain */
export const fromRow = <R extends object, U extends Unit>(t: Table<R>, r: { readonly source?: string; readonly obtained?: Obtained }, value: number, unit: U, which: string, pickedBy?: Quantity): Quantity<U> => {
  const from = { is: 'row', at: `${t.name}: ${which}`, source: r.source ?? t.source, table: t.name, obtained: r.obtained ?? t.obtained } as const
  return { value, unit, from: (pickedBy ? { ...from, pickedBy } : from) as Quantity['from'] }
}
export const sourceOf = <R extends object>(t: Table<R>, r: { readonly source?: string }): string => r.source ?? t.source

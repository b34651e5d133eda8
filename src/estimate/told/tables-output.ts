// What `tables --json` prints. These names are frozen as lidwork-tables/1; more may be added.

/** One figure or word of a row; a figure has a unit where it is one. `howSure` is how a value held from memory was remembered. */
export interface TableFigure { readonly row: string; readonly figure: string; readonly value: number | string; readonly unit: string; readonly source: string; readonly obtained: string }
/** What uses a table: the formulas that take a row of it, and the figures of estimates that a row went into, by the examples that are shipped; `*` stands for any name. */
export interface TableUses { readonly formulas: readonly string[]; readonly figures: readonly string[] }
export interface TableOut {
  readonly name: string; readonly title: string; readonly source: string; readonly obtained: string
  /** What it decides, where it gives no figure of its own. */
  readonly use?: string
  readonly usedBy: TableUses
  readonly rows: number; readonly figures: readonly TableFigure[]
}
/** One document, and what rests on it. */
export interface SourceOut { readonly source: string; readonly obtained: readonly string[]; readonly tables: readonly string[]; readonly formulas: readonly string[]; readonly values: readonly string[] }
export interface MemoryOut extends TableFigure { readonly table: string; readonly howSure: string }
export interface TablesOut { readonly format: 'lidwork-tables/1'; readonly tables?: readonly TableOut[]; readonly bibliography?: readonly SourceOut[]; readonly fromMemory?: readonly MemoryOut[] }

/** The index that the build makes: what the shipped examples used, and the starting values and rates that they asked for. */
export interface Uses {
  readonly tables: Readonly<Record<string, TableUses>>
  readonly formulas: Readonly<Record<string, readonly string[]>>
  readonly starting: Readonly<Record<string, { readonly value: number; readonly unit: string; readonly what: string; readonly why: string; readonly figures: readonly string[] }>>
}

// A quantity is a number, its unit, and a link to what made it. The links are the explanation; there is no second one.

export type Unit =
  | 'in' | 'in2' | 'ft' | 'mi' | 'ft2' | 'ft3' | 'each' | 'pair' | 'bag' | 'fl oz' | 'lb' | 'person-day' | 'day'
  | 'R' | 'R/in' | 'U' | 'UA' | 'lb/ft2' | 'lb/ft3' | 'ft2/bag' | 'rise/12'
  | 'in2/ft' | 'Pa' | 's' | 'pCi/L' | 'gal' | 'ppm' | 'cfm' | 'fpm' | '°F' | 'Btu/h' | 'Btu' | 'Btu/ft2·DD' | '°F·day' | 'kWh' | 'mph' | 'ACH' | 'year' | 'fraction' | 'pct' | 'factor' | 'h' | 'h/unit' | 'cents' | 'cents/ton' | 'ton' | 'person' | 'per ft2'

export interface Quantity<U extends Unit = Unit> {
  readonly value: number
  readonly unit: U
  readonly from: Origin
}

export type Origin =
  /** Written in the job file: a JSON pointer, whose line is looked up when someone asks. */
  | { readonly is: 'given'; readonly at: string; readonly as?: string }
  /** A row of a book or table, and the figure that picked it; of a reference table with its name, and how the value came to stand there. */
  | { readonly is: 'row'; readonly at: string; readonly source: string; readonly pickedBy?: Quantity; readonly table?: string; readonly obtained?: string }
  /** Nobody said it: a starting value that the company file or the job may replace. */
  | { readonly is: 'assumed'; readonly id: string; readonly what: string; readonly why: string; readonly per?: string }
  | { readonly is: 'worked'; readonly by: Formula; readonly inputs: Readonly<Record<string, Quantity>> }

export type Args = Readonly<Record<string, readonly [unit: Unit | 'any', min: number, max: number]>>
export type Numbers<A> = { readonly [K in keyof A]: number }
export type Inputs<A extends Args> = { readonly [K in keyof A]: Quantity<A[K][0] extends Unit ? A[K][0] : Unit> }

/** Plain numbers in, one number out, with its words, units, ranges and source beside it. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export interface Formula<A extends Args = any, U extends Unit = Unit> {
  readonly id: string
  /** The formula in words, in the order of `fn`. */
  readonly says: string
  /**
   * The same in symbols: names of the arguments with + - * / ^, min, max, sqrt, abs, exp, log, pi, `test ? then : else`; steps and functions of its own before the result, each with a semicolon.
   * `up`, `down` and `halfUp` round to a whole, or to a multiple of a second argument; `logMean` of two numbers. `sum`, `mean`, `hypot` and `std` alone take every input.
   */
  readonly symbols: string
  /** How it rounds, where `up`, `down` and `halfUp` one by one do not say it. */
  readonly rounds?: string
  readonly args: A
  readonly gives: U
  readonly source: string
  fn(x: Numbers<A>): number
  /** The same of a list of figures, where it takes any number of them. */
  readonly ofList?: (values: readonly number[]) => number
  /** What `work` makes at its first call, since most of a formula's cost is looking up names. */
  call?: Call
}
/** The arguments in a row, and where the numbers of one call are put: a new object for each would cost as much as the formula. */
interface Call { readonly names: readonly string[]; readonly limits: readonly Args[string][]; readonly numbers: Record<string, number> }
const callOf = ({ args }: Formula): Call => ({ names: Object.keys(args as Args), limits: Object.values(args as Args), numbers: {} })

export const formula = <const A extends Args, const U extends Unit>(f: Formula<A, U>): Formula<A, U> => f

/** A formula over a list of figures, however many: its arguments have no names of their own. */
export const listFormula = <const U extends Unit>(f: Omit<Formula<Record<never, never>, U>, 'args' | 'fn'> & { ofList(values: readonly number[]): number }): Formula =>
  ({ ...f, args: {}, fn: x => f.ofList(Object.values(x as Record<string, number>)) })

/** A figure outside what a formula was published for. The file's owner reads it as a finding. */
export class OutOfRange extends RangeError {
  constructor(readonly formulaId: string, readonly arg: string, readonly value: number, readonly unit: string,
    readonly min: number, readonly max: number) {
    super(`${formulaId}: ${arg} is ${value} ${unit}, outside ${min} to ${max}`)
  }
}

const inRange = (x: number, min: number, max: number): boolean => x >= min && x <= max // false for NaN

/** What a formula gives must be a figure: inputs that are good each by itself may leave nothing to divide by. */
export const RESULT = 'what it gives'

/**
 * Applies a formula: the only way to make a figure from figures.
 * @throws OutOfRange when an input is NaN or outside the formula's stated range, or where no figure comes out
 */
export function work<A extends Args, U extends Unit>(by: Formula<A, U>, inputs: Inputs<A>): Quantity<U> {
  const { names, limits, numbers } = by.call ??= callOf(by)
  for (let i = 0; i < names.length; i++) {
    const name = names[i]!, arg = limits[i]!, { value } = inputs[name] as Quantity
    if (!inRange(value, arg[1], arg[2])) throw new OutOfRange(by.id, name, value, arg[0], arg[1], arg[2])
    numbers[name] = value
  }
  const value = by.fn(numbers as Numbers<A>)
  if (!Number.isFinite(value)) throw new OutOfRange(by.id, RESULT, value, by.gives, -Number.MAX_VALUE, Number.MAX_VALUE)
  return { value, unit: by.gives, from: { is: 'worked', by, inputs: inputs as Record<string, Quantity> } }
}

export const sum = listFormula({ id: 'sum', says: 'sum of the lines', symbols: 'sum', gives: 'each', source: 'arithmetic', ofList: v => { let all = 0; for (const x of v) all += x; return all } })

/** A figure of a list, and what the explanation calls it. */
export type Line = readonly [name: string, figure: Quantity]

const isLine = (l: Line | Quantity): l is Line => Array.isArray(l)

/** What a list of figures was made from: by name only for those who ask. */
class FromList {
  readonly is = 'worked'
  constructor(readonly by: Formula, readonly lines: readonly Line[] | readonly Quantity[]) {}
  get inputs(): Readonly<Record<string, Quantity>> { return Object.fromEntries(this.lines.map((l, i) => (isLine(l) ? l : [String(i + 1), l]))) }
}

/** A list formula over figures that have names, or are numbered. */
export function overList<U extends Unit>(by: Formula, unit: U, lines: readonly Line[] | readonly Quantity[]): Quantity<U> {
  return { value: by.ofList!(lines.map(l => (isLine(l) ? l[1] : l).value)), unit, from: new FromList(by, lines) }
}

/** The sum of a figure of each item, in one unit. */
export const totalOf = <U extends Unit, T>(unit: U, items: readonly T[], line: (item: T, i: number) => Line): Quantity<U> => overList(sum, unit, items.map(line))

/** The sum of figures in one unit. */
export const total = <U extends Unit>(unit: U, lines: Readonly<Record<string, Quantity>> | readonly Line[] | readonly Quantity[]): Quantity<U> =>
  overList(sum, unit, Array.isArray(lines) ? lines as readonly Line[] : Object.entries(lines))

export const given = <U extends Unit>(value: number, unit: U, at: string, as?: string): Quantity<U> =>
  ({ value, unit, from: as === undefined ? { is: 'given', at } : { is: 'given', at, as } })

export const row = <U extends Unit>(value: number, unit: U, at: string, source: string, pickedBy?: Quantity): Quantity<U> =>
  ({ value, unit, from: pickedBy ? { is: 'row', at, source, pickedBy } : { is: 'row', at, source } })

export const assumed = <U extends Unit>(id: string, value: number, unit: U, what: string, why: string, per?: string): Quantity<U> =>
  ({ value, unit, from: per === undefined ? { is: 'assumed', id, what, why } : { is: 'assumed', id, what, why, per } })

/** A number that is part of a definition (one chimney to an entry, two seams to an inside wall). */
export const exactly = <U extends Unit>(value: number, unit: U, why: string): Quantity<U> =>
  ({ value, unit, from: { is: 'row', at: why, source: 'definition' } })

export const isQuantity = (v: unknown): v is Quantity =>
  typeof v === 'object' && v !== null && 'value' in v && 'unit' in v && 'from' in v

/** The figures a figure was made from, by name. */
export const inputsOf = (q: Quantity): Readonly<Record<string, Quantity>> =>
  q.from.is === 'worked' ? q.from.inputs
    : q.from.is === 'row' && q.from.pickedBy ? { pickedBy: q.from.pickedBy } : {}

/** Visits each figure once, with all that it was made from. */
export function walk(roots: Iterable<Quantity>, visit: (q: Quantity) => void): void {
  const seen = new Set<Quantity>()
  const stack = [...roots]
  while (stack.length > 0) {
    const q = stack.pop()!
    if (seen.has(q)) continue
    seen.add(q)
    visit(q)
    stack.push(...Object.values(inputsOf(q)))
  }
}

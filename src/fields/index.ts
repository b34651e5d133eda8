// The words in which file formats are written. The only file that imports the schema library.
// A field's keys (title, description, examples, default) are what an editor shows; `x-unit` is its unit.
import { Array as ListOf, Object as Mapping, Optional, Unsafe, type Static, type TObject, type TProperties, type TSchema, type TUnsafe } from '@sinclair/typebox'
import { grammar, type Grammar } from '../units/tape.ts'
import { DAY_PATTERN } from '../units/words.ts'

export type { Static, TObject, TSchema, TProperties }

interface Help { readonly examples?: readonly unknown[]; readonly default?: unknown; readonly title?: string }

interface Limits { readonly min?: number; readonly above?: number; readonly max: number; readonly whole?: boolean }

const unsafe = <V>(schema: object): TUnsafe<V> => Unsafe<V>(schema)

/** What an editor heads a field with, and says where its text is no such number. */
const TITLES: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', each: 'how many', ft2: 'square feet', ft3: 'cubic feet', R: 'R-value', pct: 'percent', USD: 'dollars', h: 'hours', lb: 'pounds' }
const NUMBER_HINTS: Readonly<Record<Grammar, string>> = { number: 'a number without a unit: 12, or ~12 for about 12', inches: "inches as the tape reads: 5.5, 5 1/2, 3/8, or ~5", feet: "feet as the tape reads: 14.5, 14'7, 14' 7 1/2\", or ~14" }

const measured = (unit: string, as: Grammar, limits: Limits, description: string, help: Help = {}): TUnsafe<number> => unsafe<number>({
  type: ['number', 'string'],
  ...(limits.above === undefined ? { minimum: limits.min ?? 0 } : { exclusiveMinimum: limits.above }),
  maximum: limits.max,
  ...(limits.whole ? { multipleOf: 1 } : {}),
  pattern: grammar[as],
  patternErrorMessage: NUMBER_HINTS[as],
  title: help.title ?? TITLES[unit] ?? unit,
  description: `${description} [${unit}]`,
  ...(help.examples ? { examples: help.examples } : {}),
  ...(help.default === undefined ? {} : { default: help.default }),
  'x-unit': unit,
  'x-reads': as,
})

/** Inches, as a number or as the tape reads. */
export const inches = (max: number, description: string, help: Help & { min?: number } = {}) =>
  measured('in', 'inches', help.min === undefined ? { above: 0, max } : { min: help.min, max }, description, help)
/** Feet, as a number or as the tape reads. */
export const feet = (max: number, description: string, help: Help & { min?: number } = {}) =>
  measured('ft', 'feet', help.min === undefined ? { above: 0, max } : { min: help.min, max }, description, help)
/** How many. */
export const count = (max: number, description: string, help: Help & { min?: number } = {}) =>
  measured('each', 'number', { min: help.min ?? 1, max, whole: true }, description, help)
/** A plain number in a stated unit. */
export const number = (unit: string, limits: Limits, description: string, help: Help = {}) => measured(unit, 'number', limits, description, help)
/** R-value of insulation [h·ft²·°F/Btu]. */
export const rValue = (description: string, help: Help = {}) => measured('R', 'number', { min: 0, max: 100 }, description, help)

/** One of a list of words. */
export const word = <const W extends readonly string[]>(words: W, description: string, help: Help = {}) =>
  unsafe<W[number]>({ type: 'string', enum: words, description, ...help })
export const yesNo = (description: string, help: Help = {}) => word(['yes', 'no'] as const, description, help)
export const yesNoUnknown = (description: string, help: Help = {}) => word(['yes', 'no', 'unknown'] as const, description, help)
/** Free text for people. */
export const text = (description: string, { most = 10000, ...help }: Help & { /** Letters at most. */ readonly most?: number } = {}) => unsafe<string>({ type: 'string', minLength: 1, maxLength: most, description, ...help })
/** A name that other parts of the file use. */
export const id = (description: string, help: Help = {}) =>
  unsafe<string>({ type: 'string', pattern: '^[a-z0-9][a-z0-9-]{0,63}$', description, 'x-reads': 'id', ...help })
export const date = (description: string, help: Help = {}) =>
  unsafe<string>({ type: 'string', pattern: DAY_PATTERN, description, 'x-reads': 'date', examples: ['2026-03-03'], ...help })
/** Text that must match a pattern; `reads` names it for the findings. */
export const pattern = (source: string, reads: string, description: string, help: Help = {}) =>
  unsafe<string>({ type: 'string', pattern: source, description, 'x-reads': reads, ...help })
/** A short name that YAML may read as a number: `5` and `4C`. The reader makes it text. */
export const nameOrNumber = (source: string, reads: string, description: string, help: Help = {}) =>
  unsafe<string>({ type: ['string', 'number'], pattern: source, description, 'x-reads': reads, ...help })
export const literal = <const V extends string>(value: V, description = 'file format and version') => unsafe<V>({ type: 'string', const: value, description })

export const list = <S extends TSchema>(of: S, description: string, limits: { min?: number; max?: number } = {}) =>
  ListOf(of, { description, maxItems: limits.max ?? 500, ...(limits.min === undefined ? {} : { minItems: limits.min }) })
/** Two numbers in one field word: [length, width]. */
export const pairOf = (of: TUnsafe<number>, description: string, help: Help = {}) =>
  unsafe<readonly [number, number]>({ type: 'array', items: of, minItems: 2, maxItems: 2, description, ...help })
/** A part of a format that is made when it is first asked for: a start that only estimates asks for none. */
export const later = <S extends TSchema>(make: () => S): (() => S) => {
  let made: S | undefined
  return () => made ??= make()
}
/** What data of such a part looks like. */
export type StaticOf<L extends () => TSchema> = Static<ReturnType<L>>
export const optional = <S extends TSchema>(of: S) => Optional(of)

/** A mapping with these keys and no others. */
export const fields = <P extends TProperties>(properties: P, description: string, help: Help = {}) =>
  Mapping(properties, { additionalProperties: false, description, ...help })
/** A mapping from names of the file's own to one kind of value. */
export const byName = <S extends TSchema>(of: S, description: string) =>
  unsafe<Readonly<Record<string, Static<S>>>>({ type: 'object', additionalProperties: of, maxProperties: 200, description })
/** An item of a list of kinds: `kind` picks which. */
export const item = <K extends string, P extends TProperties>(kind: K, title: string, properties: P) =>
  Mapping({ kind: Unsafe<K>({ type: 'string', const: kind, description: title }), ...properties }, { additionalProperties: false, title })
/** One of the named kinds; each is an entry of `$defs`. */
export const oneOfKinds = <V>(names: readonly string[], description: string) => unsafe<V>({
  type: 'object', discriminator: { propertyName: 'kind' }, oneOf: names.map(n => ({ $ref: `#/$defs/${n}` })), required: ['kind'], description,
})
/** A file format: the root schema with its `$id` and the kinds it refers to. Plain JSON, without the library's marks. */
export const format = (id: string, title: string, root: TSchema, defs: Readonly<Record<string, TSchema>> = {}): object =>
  JSON.parse(JSON.stringify({ $schema: 'http://json-schema.org/draft-07/schema#', $id: id, title, ...root, ...(Object.keys(defs).length ? { $defs: defs } : {}) })) as object


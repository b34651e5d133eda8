// A commented file of a format: a key, its value as a person types it, and what the key means, from the schema.
import type { TSchema } from '../fields/index.ts'
import { asFeet, asTape, readNumber } from '../units/tape.ts'

export interface Node {
  readonly description?: string; readonly default?: unknown; readonly examples?: readonly unknown[]; readonly enum?: readonly string[]; readonly 'x-reads'?: string; readonly const?: unknown
  readonly properties?: Readonly<Record<string, Node>>; readonly required?: readonly string[]; readonly items?: Node
}
export const node = (schema: TSchema): Node => schema as Node

export type Value = string | number | readonly Value[] | { readonly [key: string]: Value }

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** The lines by which editors find the schema. */
export const head = (schema: string): readonly string[] => [`# yaml-language-server: $schema=./${schema}`, `# $schema: ./${schema}`]

const NUMBERS = ['number', 'inches', 'feet', 'date']
const PLAIN = /^[A-Za-z0-9~][\w.'/-]*( [\w.'()&/-]+)*$/
/** Text that YAML would read as something else. */
const OTHER_MEANING = /^(true|false|null|[\d.+-]+([eE][\d+-]+)?|0[xo][\da-fA-F]+)$/i

/** A value as a person types it: figures as the tape reads, quotes only where YAML needs them. */
export function typed(value: Value, at: Node = {}): string {
  if (typeof value === 'number') {
    if (at['x-reads'] === 'inches' && readNumber(asTape(value), 'inches')?.value === value) return asTape(value)
    return at['x-reads'] === 'feet' && !Number.isInteger(value) ? asFeet(value).slice(0, -1) : String(value)
  }
  if (typeof value === 'string') return PLAIN.test(value) && (NUMBERS.includes(at['x-reads'] ?? '') || !OTHER_MEANING.test(value)) ? value : JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(v => typed(v as Value, at.items)).join(', ')}]`
  return `{${Object.entries(value).map(([k, v]) => `${k}: ${typed(v as Value, at.properties?.[k])}`).join(', ')}}`
}

const MOST_WORDS = 12

/** What a key means: its words and its unit, and what holds without it. */
export function meaning(at: Node, required: boolean): string {
  const words = at.enum ?? at.items?.enum
  const listed = words && words.length <= MOST_WORDS ? ` (${words.join(', ')})` : ''
  return `${(at.description ?? '').replace(' [each]', '')}${listed}${at.default === undefined ? required ? '' : '; may be left out' : `; without it: ${typed(at.default as Value, at)}`}`
}

export const BESIDE = 46
const WIDTH = 118
/** A line with what it means behind it, or above it where there is no room. */
export function beside(line: string, comment: string, indent: string): string[] {
  const padded = `${line.padEnd(BESIDE - 2)}  # ${comment}`
  return padded.length <= WIDTH ? [padded] : [...wrapped(comment, indent), line]
}
export function wrapped(text: string, indent: string): string[] {
  const lines = ['']
  for (const word of text.split(' ')) {
    if (lines.at(-1)!.length + word.length > WIDTH - indent.length - 4) lines.push('')
    lines[lines.length - 1] += ` ${word}`
  }
  return lines.map(l => `${indent}#${l}`)
}

/** Examples for keys that the schema shows none for. */
export type Examples = Readonly<Record<string, Value>>

const example = (key: string, at: Node, examples: Examples): string => {
  const value = (examples[key] ?? at.examples?.[0] ?? at.default ?? at.enum?.[0]) as Value | undefined
  return value === undefined ? '' : ` ${typed(value, at)}`
}

/** A mapping, a key to a line; keys without a value stand as comments with an example. */
export function mapping(schema: Node, values: Readonly<Record<string, Value>>, indent: string, examples: Examples = {}): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, at]) => {
    const required = schema.required?.includes(key) ?? false
    const value = values[key]
    const line = value === undefined ? `${indent}# ${key}:${example(key, at, examples)}` : `${indent}${key}: ${typed(value, at)}`
    return beside(line, meaning(at, required), indent)
  })
}

/** A list with an item in one line, under what its keys mean. */
const KEY_WIDTH = 14
export const keys = (schema: Node, indent: string, except: readonly string[] = []): string[] => Object.entries(schema.properties ?? {})
  .filter(([key, at]) => at.const === undefined && !except.includes(key))
  .flatMap(([key, at]) => {
    const [first = '', ...more] = wrapped(meaning(at, schema.required?.includes(key) ?? false), indent + ' '.repeat(KEY_WIDTH + 2))
    return [`${indent}#   ${key.padEnd(Math.max(KEY_WIDTH, key.length + 1))}${first.replace(/^ *# /, '')}`, ...more.map(l => `${indent}#   ${' '.repeat(KEY_WIDTH)}${l.replace(/^ *# /, '')}`)]
  })
export const item = (value: Value, schema: Node, indent: string, live: boolean): string => `${indent}${live ? '' : '# '}- ${typed(value, schema)}`

export const section = (title: string, lines: readonly string[]): string => [`# ---- ${title}`, ...lines, ''].join('\n')

// The job file that `new` writes. Keys, words, units and the items come from the schema and the kinds; only the invented house is said here.
import type { TSchema } from '../fields/index.ts'
import { jobSchema, JOB_FORMAT } from '../job/job-file.ts'
import { areaKinds, hazardKinds, openingKinds } from '../scope/index.ts'
import { asFeet, asTape } from '../units/tape.ts'

/** The name under which a job file finds its schema: beside it. */
export const SCHEMA_BESIDE = 'lidwork-job.schema.json'

interface Node {
  readonly description?: string; readonly default?: unknown; readonly examples?: readonly unknown[]; readonly enum?: readonly string[]; readonly 'x-reads'?: string; readonly const?: unknown
  readonly properties?: Readonly<Record<string, Node>>; readonly required?: readonly string[]; readonly items?: Node
}
const node = (schema: TSchema): Node => schema as Node

type Value = string | number | readonly Value[] | { readonly [key: string]: Value }

/** What is invented; every key that is not here stands in the file as a comment. */
const HOUSE: Readonly<Record<string, Readonly<Record<string, Value>>>> = {
  job: { id: 'bramble-court-8', title: '8 Bramble Court, seal and blow', customer: 'The Bramble Household (invented)', surveyedOn: '2026-03-03', surveyedBy: 'T. Vole (invented)', status: 'draft' },
  house: { state: 'IA', county: 'Poweshiek', climateZone: 5, yearBuilt: 1962, stories: 1, floorAreaFt2: 1344 },
  target: { code: 'iecc-2018' },
  access: {},
  choices: {},
}
/** Examples for keys that the schema shows none for. */
const EXAMPLES: Readonly<Record<string, Value>> = { fill: { main: 'demo-loose-cellulose' } }
const HEATER: Value = { id: 'heater', kind: 'water-heater', fuel: 'gas', vent: 'natural-draft', at: 'utility closet' }
const PAPER: Value = { gate: 'combustion-untested', of: 'heater', kind: 'combustion-test', by: 'Invented Testing LLC', on: '2026-03-05', paper: 'letters/heater.pdf' }
const EAVES: readonly Value[] = ['north', 'south'].map(at => ({ in: 'main', at, lengthFt: 48, ventedBays: 36, goodBaffles: 0 }))
/** Openings that stand in the file; the other kinds stand beside them as comments. */
const SEEN = ['top-plate', 'recessed-light', 'hatch']

const NUMBERS = ['number', 'inches', 'feet', 'date']
const PLAIN = /^[A-Za-z0-9~][\w.'/-]*( [\w.'()&/-]+)*$/
/** Text that YAML would read as something else. */
const OTHER_MEANING = /^(true|false|null|[\d.+-]+([eE][\d+-]+)?|0[xo][\da-fA-F]+)$/i

/** A value as a person types it: figures as the tape reads, quotes only where YAML needs them. */
function typed(value: Value, at: Node = {}): string {
  if (typeof value === 'number') {
    if (at['x-reads'] === 'inches') return asTape(value)
    return at['x-reads'] === 'feet' && !Number.isInteger(value) ? asFeet(value).slice(0, -1) : String(value)
  }
  if (typeof value === 'string') return PLAIN.test(value) && (NUMBERS.includes(at['x-reads'] ?? '') || !OTHER_MEANING.test(value)) ? value : JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(v => typed(v as Value, at.items)).join(', ')}]`
  return `{${Object.entries(value).map(([k, v]) => `${k}: ${typed(v as Value, at.properties?.[k])}`).join(', ')}}`
}

const MOST_WORDS = 12

/** What a key means: its words and its unit, and what holds without it. */
function meaning(at: Node, required: boolean): string {
  const words = at.enum ?? at.items?.enum
  const listed = words && words.length <= MOST_WORDS ? ` (${words.join(', ')})` : ''
  return `${(at.description ?? '').replace(' [each]', '')}${listed}${at.default === undefined ? required ? '' : '; may be left out' : `; without it: ${typed(at.default as Value, at)}`}`
}

const BESIDE = 46
const WIDTH = 118
/** A line with what it means behind it, or above it where there is no room. */
function beside(line: string, comment: string, indent: string): string[] {
  const padded = `${line.padEnd(BESIDE - 2)}  # ${comment}`
  return padded.length <= WIDTH ? [padded] : [...wrapped(comment, indent), line]
}
function wrapped(text: string, indent: string): string[] {
  const lines = ['']
  for (const word of text.split(' ')) {
    if (lines.at(-1)!.length + word.length > WIDTH - indent.length - 4) lines.push('')
    lines[lines.length - 1] += ` ${word}`
  }
  return lines.map(l => `${indent}#${l}`)
}

const example = (key: string, at: Node): string => {
  const value = (EXAMPLES[key] ?? at.examples?.[0] ?? at.default ?? at.enum?.[0]) as Value | undefined
  return value === undefined ? '' : ` ${typed(value, at)}`
}

/** A mapping, a key to a line; keys without a value stand as comments with an example. */
function mapping(schema: Node, values: Readonly<Record<string, Value>>, indent: string): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, at]) => {
    const required = schema.required?.includes(key) ?? false
    const value = values[key]
    const line = value === undefined ? `${indent}# ${key}:${example(key, at)}` : `${indent}${key}: ${typed(value, at)}`
    return beside(line, meaning(at, required), indent)
  })
}

/** A list with an item in one line, under what its keys mean. */
const KEY_WIDTH = 14
const keys = (schema: Node, indent: string, except: readonly string[] = []): string[] => Object.entries(schema.properties ?? {})
  .filter(([key, at]) => at.const === undefined && !except.includes(key))
  .flatMap(([key, at]) => {
    const [first = '', ...more] = wrapped(meaning(at, schema.required?.includes(key) ?? false), indent + ' '.repeat(KEY_WIDTH + 2))
    return [`${indent}#   ${key.padEnd(KEY_WIDTH)}${first.replace(/^ *# /, '')}`, ...more.map(l => `${indent}#   ${' '.repeat(KEY_WIDTH)}${l.replace(/^ *# /, '')}`)]
  })
const item = (value: Value, schema: Node, indent: string, live: boolean): string => `${indent}${live ? '' : '# '}- ${typed(value, schema)}`

const section = (title: string, lines: readonly string[]): string => [`# ---- ${title}`, ...lines, ''].join('\n')

/** Keys that every opening has are explained once. */
const SHARED = ['in', 'at', 'decline']

/** Each kind with its keys and a valid item, live or as a comment. */
const kindLines = (kinds: readonly { kind: string; title: string; schema: TSchema; sample: unknown }[], live: readonly string[], except: readonly string[]): string[] =>
  kinds.flatMap(k => [`  # ${k.kind}: ${k.title}`, ...keys(node(k.schema), '  ', except), item(k.sample as Value, node(k.schema), '  ', live.includes(k.kind))])

/** A commented job file of an invented house: it passes `check` and can be estimated, and each part is there to be written over. */
export function newJob(): string {
  const at = (key: string): Node => node(jobSchema).properties![key]!
  const of = (key: string): Node => at(key).items!
  const block = (key: string): string => section(capital(at(key).description!), [Object.keys(HOUSE[key]!).length === 0 ? `# ${key}:` : `${key}:`, ...mapping(at(key), HOUSE[key]!, '  ')])
  const everyOpening = node(openingKinds[0].schema)
  const area = areaKinds[0]
  return [
    `# yaml-language-server: $schema=./${SCHEMA_BESIDE}`,
    `# $schema: ./${SCHEMA_BESIDE}`,
    '# One surveyed house, in the order of the walk. House and people are invented: write over them.',
    '# Numbers as the tape reads: 14\'7 or 14\' 7 1/2" where a key ends in Ft; 3/8 or 3 1/2 where it ends in In; ~22 means "about 22".',
    '# in = which area (an id below); at = where, in your own words. A line behind # is an example: take the # away to use it.',
    `format: ${JOB_FORMAT}`,
    '',
    block('job'), block('house'), block('target'), block('access'),
    section('Hazards: what you looked for and did not find, and what you saw. The rest counts as not looked at, and holds the work', [
      ...beside('notFound: []', `after a look: [${hazardKinds.map(k => k.kind).join(', ')}]`, ''),
      ...beside('hazards: []', 'or a list, as below', ''),
      ...kindLines(hazardKinds, [], [])]),
    section('Appliances: everything that burns fuel; [] = none does. One that takes room air holds the work until it has passed its test', [
      ...keys(of('appliances'), ''), 'appliances:', item(HEATER, of('appliances'), '  ', true)]),
    section(`Areas: ${at('areas').description!}`, ['areas:', ...areaBlock(area.kind, area.title, node(area.schema), area.sample as unknown as Readonly<Record<string, Value>>)]),
    section(`Eaves: ${at('eaves').description!}`, [...keys(of('eaves'), ''), 'eaves:', ...EAVES.map(e => item(e, of('eaves'), '  ', true))]),
    section(capital(at('openings').description!), [
      ...keys({ ...everyOpening, properties: Object.fromEntries(SHARED.map(key => [key, everyOpening.properties![key]!])) }, ''),
      'openings:', ...kindLines(openingKinds, SEEN, SHARED)]),
    section(`Papers: ${at('clearances').description!}`, [...keys(of('clearances'), ''), '# clearances:', `  # - ${typed(PAPER, of('clearances'))}`]),
    block('choices'),
  ].join('\n').trimEnd() + '\n'
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** An area has too much to say for one line. */
function areaBlock(kind: string, title: string, schema: Node, sample: Readonly<Record<string, Value>>): string[] {
  return [`  - kind: ${kind}`.padEnd(BESIDE - 2) + `  # ${title.toLowerCase()}`, ...Object.entries(schema.properties ?? {}).filter(([, at]) => at.const === undefined).flatMap(([key, at]) => {
    const value = sample[key], required = schema.required?.includes(key) ?? false
    const indent = '    '
    if (value !== undefined && key === 'existing') return [...wrapped(meaning(at, required), indent), ...keys(at.items!, indent), `${indent}${key}:`, ...(value as Value[]).map(v => item(v, at.items!, `${indent}  `, true))]
    if (value !== undefined && at.properties) return [`${indent}${key}:`.padEnd(BESIDE - 2) + `  # ${at.description}`, ...mapping(at, value as Record<string, Value>, `${indent}  `)]
    return mapping({ properties: { [key]: at }, required: required ? [key] : [] }, value === undefined ? {} : { [key]: value }, indent)
  })]
}

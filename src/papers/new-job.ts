// The job file that `new` writes. Keys, words, units and the items come from the schema and the kinds; only the invented house is said here.
import type { TSchema } from '../fields/index.ts'
import { jobSchema, JOB_FORMAT } from '../job/job-file.ts'
import { areaKinds, hazardKinds, openingKinds } from '../scope/index.ts'
import { duct } from '../scope/ducts.ts'
import { energy, ventilation } from '../scope/energy.ts'
import { beside, BESIDE, capital, head, item, keys, mapping, meaning, node, section, typed, wrapped, type Node, type Value } from './commented.ts'

/** The name under which a job file finds its schema: beside it. */
export const SCHEMA_BESIDE = 'lidwork-job.schema.json'

/** What is invented; every key that is not here stands in the file as a comment. */
const HOUSE: Readonly<Record<string, Readonly<Record<string, Value>>>> = {
  job: { id: 'bramble-court-8', title: '8 Bramble Court, seal and blow', customer: 'The Bramble Household (invented)', surveyedOn: '2026-03-03', surveyedBy: 'T. Vole (invented)', status: 'draft' },
  house: { state: 'IA', county: 'Poweshiek', climateZone: 5, yearBuilt: 1962, stories: 1, floorAreaFt2: 1344 },
  target: { code: 'iecc-2018' },
  access: {},
  tests: {},
  quote: {},
  choices: {},
  books: {},
}
/** Examples for keys that the schema shows none for. */
const EXAMPLES: Readonly<Record<string, Value>> = { fill: { main: 'demo-loose-cellulose' }, escalation: [{ item: 'demo-loose-cellulose', basePrice: 14, on: '2026-03-03', abovePct: 5 }] }
const HEATER: Value = { id: 'heater', kind: 'water-heater', fuel: 'gas', vent: 'natural-draft', at: 'utility closet' }
const HIGH: readonly Value[] = [{ kind: 'ridge', lengthFt: 30, netFreeIn2PerFt: 18 }, { kind: 'roof-vent', count: 4, netFreeIn2: 50 }]
const HANDLER: Value = { id: 'air-handler', in: 'main', at: 'over the hall', sealed: 'no', pan: 'yes' }
const HOOD: Value = { id: 'hood', kind: 'hood', at: 'kitchen', cfm: 300 }
const PAPER: Value = { gate: 'combustion-untested', of: 'heater', kind: 'combustion-test', by: 'Invented Testing LLC', on: '2026-03-05', paper: 'letters/heater.pdf' }
const EAVES: readonly Value[] = ['north', 'south'].map(at => ({ in: 'main', at, lengthFt: 48, ventedBays: 36, goodBaffles: 0 }))
const DUCTS: readonly Value[] = [
  { id: 'trunk', in: 'main', use: 'supply', position: 'hung', material: 'metal', shape: 'rectangular', sizeIn: [14, 8], lengthFt: 24, joints: 7, gapIn: 0.25, insulationR: 0 },
  duct.sample as unknown as Value,
]
/** Openings that stand in the file; the other kinds stand beside them as comments. */
const SEEN = ['top-plate', 'recessed-light', 'dropped-soffit', 'hatch']

/** Keys that every opening has are explained once. */
const SHARED = ['in', 'at', 'decline']

/** Each kind with its keys and a valid item, live or as a comment. */
const kindLines = (kinds: readonly { kind: string; title: string; schema: () => TSchema; sample: unknown }[], live: readonly string[], except: readonly string[]): string[] =>
  kinds.flatMap(k => [`  # ${k.kind}: ${k.title}`, ...keys(node(k.schema()), '  ', except), item(k.sample as Value, node(k.schema()), '  ', live.includes(k.kind))])

/** A commented job file of an invented house: it passes `check` and can be estimated, and each part is there to be written over. */
export function newJob(): string {
  const at = (key: string): Node => node(jobSchema()).properties![key]!
  const of = (key: string): Node => at(key).items!
  const block = (key: string): string => section(capital(at(key).description!), [Object.keys(HOUSE[key]!).length === 0 ? `# ${key}:` : `${key}:`, ...mapping(at(key), HOUSE[key]!, '  ', EXAMPLES)])
  const everyOpening = node(openingKinds[0].schema())
  const area = areaKinds[0]
  return [
    ...head(SCHEMA_BESIDE),
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
    section(capital(at('exhausts').description!), [...keys(of('exhausts'), ''), '# exhausts:', `  # - ${typed(HOOD, of('exhausts'))}`]),
    block('tests'),
    section(`Areas: ${at('areas').description!}`, ['areas:', ...areaBlock(area.kind, area.title, node(area.schema()), area.sample as unknown as Readonly<Record<string, Value>>),
      ...areaKinds.slice(1).flatMap(k => [`  # ${k.kind}: ${k.title}`, item(k.sample as unknown as Value, node(k.schema() as TSchema), '  ', false)])]),
    section(`Eaves: ${at('eaves').description!}`, [...keys(of('eaves'), ''), 'eaves:', ...EAVES.map(e => item(e, of('eaves'), '  ', true))]),
    section(capital(at('highVents').description!), [...keys(of('highVents'), ''), '# highVents:', ...HIGH.map(v => `  # - ${typed(v, of('highVents'))}`)]),
    section(capital(at('openings').description!), [
      ...keys({ ...everyOpening, properties: Object.fromEntries(SHARED.map(key => [key, everyOpening.properties![key]!])) }, ''),
      'openings:', ...kindLines(openingKinds, SEEN, SHARED)]),
    section(capital(at('ducts').description!), [...keys(of('ducts'), ''), '# ducts:', ...DUCTS.map(d => `  # - ${typed(d, of('ducts'))}`)]),
    section(capital(at('airHandlers').description!), [...keys(of('airHandlers'), ''), '# airHandlers:', `  # - ${typed(HANDLER, of('airHandlers'))}`]),
    asked(at('energy'), 'energy', energy.sample), asked(at('ventilation'), 'ventilation', ventilation.sample),
    section(`Papers: ${at('clearances').description!}`, [...keys(of('clearances'), ''), '# clearances:', `  # - ${typed(PAPER, of('clearances'))}`]),
    block('quote'), block('choices'), block('books'),
  ].join('\n').trimEnd() + '\n'
}

/** A block that a job may do without: what its keys mean, theirs below them, and an example. */
const asked = (at: Node, key: string, sample: Value): string => section(capital(at.description!), [
  ...Object.entries(at.properties!).flatMap(([name, sub]) => [...keys({ properties: { [name]: sub }, required: at.required ?? [] }, ''), ...keys(sub.items ?? sub, '').map(l => l.replace('#', '#  '))]),
  `# ${key}: ${typed(sample, at)}`])

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

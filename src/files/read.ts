// From bytes to data of one format, in two gates: YAML, then the format. The first that finds a fault ends the reading.
import { placed, sorted, type Finding, type Places } from '../findings/finding.ts'
import { schemaFindings, type Fault } from './messages.ts'
import { pointer } from '../findings/places.ts'
import { normalize, type Reads } from './normalize.ts'
import { keysNamed, type FileKind } from './schema.ts'
import { readYaml } from './yaml.ts'

/** What reads one format: its words, the validator and the table that the build made, and the schema, asked for only where there are faults. */
export interface Reader {
  readonly kind: FileKind
  readonly validate: { (data: unknown): boolean; errors?: readonly Fault[] | null }
  readonly reads: Reads
  /** A value that stands for one not filled in yet: it is taken out, and its place told. */
  readonly blank?: string
  schema(): object
}

export type FormatRead<V> =
  | { readonly ok: true; readonly data: V; readonly places: Places; readonly about: readonly string[]; /** Places not filled in. */ readonly blanks: readonly string[]; readonly source: string }
  | { readonly ok: false; readonly findings: Finding[]; readonly places: Places; readonly source: string }

const MOST_FINDINGS = 50

/** The first findings, and one that says how many more there are. */
export function few(findings: Finding[], places: Places): Finding[] {
  if (findings.length <= MOST_FINDINGS) return findings
  const shown = findings.slice(0, MOST_FINDINGS)
  return [...shown, { code: 'more-findings', severity: 'note', path: shown.at(-1)!.path, span: placed(shown.at(-1)!, places),
    says: `${findings.length - MOST_FINDINGS} more findings`, why: `the first ${MOST_FINDINGS} are shown`, mend: 'mend those and check again' }]
}

const keySets = new WeakMap<Reader['schema'], ReadonlySet<string>>()
/** The keys of a format, looked up once. */
function keysOf(schema: Reader['schema']): ReadonlySet<string> {
  const keys = keySets.get(schema) ?? keysNamed(schema())
  keySets.set(schema, keys)
  return keys
}

/** Takes every blank out of lists and mappings. @returns where they stood */
function takenOut(data: unknown, blank: string, path = ''): string[] {
  if (typeof data !== 'object' || data === null) return []
  const out: string[] = [], holder = data as Record<string, unknown>
  for (const key of Object.keys(holder)) {
    const at = `${path}/${pointer(key)}`
    if (holder[key] !== blank) out.push(...takenOut(holder[key], blank, at))
    else { out.push(at); if (!Array.isArray(data)) delete holder[key] }
  }
  if (Array.isArray(data)) data.splice(0, data.length, ...data.filter(v => v !== blank))
  return out
}

/** Reads a file of one format, every number as the tape reads it. @param quick by the quicker reading first */
export function readFormat<V>(bytes: Uint8Array | string, reader: Reader, quick = true): FormatRead<V> {
  const { kind, validate, reads, blank, schema } = reader, yaml = readYaml(bytes, kind, quick, key => keysOf(schema).has(key))
  const { places } = yaml, { source } = places
  const refused = (findings: readonly Finding[]): FormatRead<V> => ({ ok: false, findings: few(sorted(findings, places), places), places, source })
  if (yaml.findings.length > 0) return refused(yaml.findings)
  const blanks = blank === undefined ? [] : takenOut(yaml.data, blank)
  const { about, unread } = normalize(yaml.data, reads)
  const faults: Fault[] = validate(yaml.data) ? [] : [...validate.errors ?? []]
  for (const path of unread) if (!faults.some(f => f.instancePath === path)) faults.push({ instancePath: path, keyword: 'unread', params: {} })
  // What is wrong is worded by the reading that keeps more of the text.
  if (faults.length > 0 && quick) return readFormat(bytes, reader, false)
  if (faults.length > 0) return refused(schemaFindings(faults, yaml, schema(), kind))
  return { ok: true, data: yaml.data as V, places, about, blanks, source }
}

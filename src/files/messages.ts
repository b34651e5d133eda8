// What a schema fault means to the person who typed the file. The validator says where; the text comes from the schema and from what stands there.
import type { Finding } from '../findings/finding.ts'
import { keysOf, pointer, type SourcePlaces } from '../findings/places.ts'
import { printable } from '../findings/printable.ts'
import { nearest } from '../findings/suggest.ts'
import { colonWithoutSpace } from './yaml.ts'
import { asNumberText, notANumber, ranged, unitWords } from './number-texts.ts'
import { a } from '../units/words.ts'
import { isRecord, ofKind, own, placeIn, type FileKind, type Node, type Place } from './schema.ts'

/** A fault as the validator reports it. */
export interface Fault { readonly instancePath: string; readonly keyword: string; readonly params: Readonly<Record<string, unknown>> }

/** What was read: the data and where it stands. */
export interface Typed { readonly data: unknown; readonly places: SourcePlaces; readonly bare: ReadonlyMap<string, string | undefined> }

const MOST_SHOWN = 40
/** Keys that a sentence would take for words of its own. */
const SMALL_WORDS = ['in', 'at', 'of', 'on', 'by', 'was']
/** A floor as an example. */
const PAIR = '[48, 28]'
const MOST_WORDS = 12

const listed = (words: readonly string[], last = 'or'): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)!}`)
const short = (text: string): string => {
  const line = printable(text.split('\n', 1)[0]!.trim())
  return line.length > MOST_SHOWN ? `${line.slice(0, MOST_SHOWN - 3)}...` : line
}
const wordsFor = (words: readonly string[], key: string): string =>
  words.length === 1 ? `the only word for ${key} is ${words[0]!}` : `the words for ${key} are ${words.length > MOST_WORDS ? words.join(' ') : listed(words, 'and')}`
const kindsOf = (node: Node): string[] => (node.oneOf ?? []).map(({ $ref }) => $ref.slice('#/$defs/'.length))
const without = (description: string | undefined): string => (description ?? '').replace(/ \[[^\]]*\]$/, '').split(';')[0]!

/** Findings for schema faults: one for each fault of the file, however many the validator reports for it. */
export function schemaFindings(faults: readonly Fault[], typed: Typed, format: object, kind: FileKind): Finding[] {
  return new Messages(typed, format as Node, kind).all(faults)
}

class Messages {
  constructor(private readonly typed: Typed, private readonly root: Node, private readonly kind: FileKind) {}

  all(faults: readonly Fault[]): Finding[] {
    const byPath = new Map<string, Fault[]>()
    for (const f of faults) {
      const here = byPath.get(f.instancePath)
      if (here) here.push(f)
      else byPath.set(f.instancePath, [f])
    }
    const foreign = this.foreign()
    if (foreign) return [foreign]
    const out: Finding[] = []
    for (const [path, here] of byPath) {
      const missing = here.filter(f => f.keyword === 'required').map(f => String(f.params['missingProperty']))
      const unknown = here.filter(f => f.keyword === 'additionalProperties').map(f => String(f.params['additionalProperty']))
      out.push(...this.keys(path, missing, unknown))
      const tag = here.find(f => f.keyword === 'discriminator')
      if (tag) { if (!missing.includes('kind')) out.push(this.kindUnknown(path)) } else if (here.some(f => f.keyword !== 'required' && f.keyword !== 'additionalProperties')) {
        const finding = this.value(path)
        if (finding) out.push(finding)
      }
    }
    return out
  }

  /** Another program's file, or another version's: what else is in it does not matter. */
  private foreign(): Finding | undefined {
    const { data } = this.typed
    const format = isRecord(data) ? data['format'] : undefined
    return typeof format === 'string' && format !== this.kind.format && /^lidwork-[a-z]+\/\d+$/.test(format) ? this.formatUnknown(format) : undefined
  }

  private formatUnknown(format: string): Finding {
    const [name, version] = format.split('/'), [ours] = this.kind.format.split('/')
    return this.finding('format-unknown', '/format', `format: ${short(format)}`,
      version !== undefined && name === ours ? `this program reads ${this.kind.format}; another version has other keys` : name !== ours && name?.startsWith('lidwork-') && version !== undefined ? `that is another kind of file; ${this.kind.name} is ${this.kind.format}` : 'the first line says what kind of file this is',
      version !== undefined && name === ours ? 'use the program of that version' : version !== undefined && name?.startsWith('lidwork-') ? `name ${this.kind.name} instead` : `write format: ${this.kind.format}`)
  }

  private finding(code: string, path: string, says: string, why: string, mend: string, on?: 'key'): Finding {
    return { code, severity: 'error', path, says, why, mend, ...(on ? { on } : {}) }
  }

  private at(path: string): Place { return placeIn(this.root, this.typed.data, path) }

  private kindNode(node: Node | undefined, value: unknown): Node | undefined { return ofKind(this.root, node, value) }

  // ---- Keys

  private keys(path: string, missing: readonly string[], unknown: readonly string[]): Finding[] {
    if (missing.length === 0 && unknown.length === 0) return []
    const { node: plain, value } = this.at(path)
    const glued = plain?.oneOf && isRecord(value) ? Object.keys(value).find(k => k.startsWith('kind:')) : undefined
    if (glued !== undefined) return [this.comma(path, glued)]
    if (plain?.oneOf && missing.includes('kind')) return [this.kindMissing(path, plain, value)]
    const node = this.kindNode(plain, value) ?? {}
    const holder = this.holder(path, node, value)
    const allowed = Object.keys(node.properties ?? {})
    const present = isRecord(value) ? Object.keys(value) : []
    const open = allowed.filter(k => !present.includes(k))
    const taken = new Set<string>()
    const out: Finding[] = []
    for (const key of unknown) {
      const at = `${path}/${pointer(key)}`
      if (this.typed.bare.has(at)) {
        const before = this.typed.bare.get(at)
        if (before === undefined || !this.typed.bare.has(`${path}/${pointer(before)}`)) out.push(this.comma(path, key))
        const glued = /^([A-Za-z]\w*):\S/.exec(key)
        if (glued && allowed.includes(glued[1]!)) taken.add(glued[1]!)
        continue
      }
      const near = nearest(key, open.filter(k => !taken.has(k))) ?? this.byUnit(key, open)
      if (near) taken.add(near)
      const moved = near ? undefined : this.movedTo(key, path)
      out.push(this.finding('key-unknown', at, `the key ${short(key)}`, `the keys of ${holder} are ${listed(allowed, 'and')}`,
        near ? `did you mean ${near}${this.otherUnit(key, near, node)}?` : allowed.includes(key.trim()) ? `write ${key.trim()}` : moved ?? 'take it out, or write one of those keys', 'key'))
    }
    for (const key of missing) {
      if (taken.has(key)) continue
      const child = own(node.properties, key)
      const { path: _, ...shared } = this.finding('key-missing', path, `no ${key}${SMALL_WORDS.includes(key) ? ':' : ''} in ${path === '' ? 'the file' : holder}`, `needed here; it stands for ${without(child?.description) || key}`, this.lineToAdd(key, child ?? {}))
      out.push({ ...shared, path, ...this.pointAt(path, value) })
    }
    return out
  }

  /** Where a missing key is shown: at the kind of the item, the key that holds the mapping, or its first key. */
  private pointAt(path: string, value: unknown): Partial<Finding> {
    const { places } = this.typed
    if (isRecord(value) && typeof value['kind'] === 'string') return { span: places.value(`${path}/kind`)! }
    if (places.key(path)) return { on: 'key' }
    const first = isRecord(value) ? Object.keys(value)[0] : undefined
    const span = first === undefined ? undefined : places.key(`${path}/${pointer(first)}`)
    return span ? { span } : {}
  }

  /** What the keys belong to, in words: a chimney, house, one roof edge. */
  private holder(path: string, node: Node, value: unknown): string {
    if (path === '') return this.kind.name
    if (isRecord(value) && node.properties?.['kind']?.const !== undefined) return a(String(value['kind']))
    const { key, index } = this.at(path)
    return index ? without(node.description).replace(/^one /, 'a ') : key
  }

  /** lengthFt for length, and sizeIn for size. */
  private byUnit(key: string, open: readonly string[]): string | undefined {
    const stem = (k: string): string => k.replace(/(Ft2|Ft3|In2|Ft|In|Pct|Psf)$/, '').toLowerCase()
    const fits = open.filter(k => stem(k) === stem(key))
    return fits.length === 1 ? fits[0] : undefined
  }

  private otherUnit(key: string, near: string, node: Node): string {
    const unit = own(node.properties, near)?.['x-unit'] ?? own(node.properties, near)?.items?.['x-unit']
    const ending = /(Ft2|Ft3|In2|Ft|In)$/
    const [mine] = ending.exec(key) ?? [], [theirs] = ending.exec(near) ?? []
    return unit !== undefined && mine !== theirs && theirs !== undefined ? `, in ${unitWords(unit)}` : ''
  }

  /** A key that stands one level too deep or too high. */
  private movedTo(key: string, path: string): string | undefined {
    if (path !== '' && own(this.root.properties, key)) return `begin its line in the first column: ${key} is a section of its own`
    if (path === '') for (const [section, node] of Object.entries(this.root.properties ?? {})) if (own(node.properties, key)) return `move it under ${section}:`
    return undefined
  }

  /** `at: hall, north end` inside { }. */
  private comma(path: string, key: string): Finding {
    const at = `${path}/${pointer(key)}`
    const glued = /^([A-Za-z]\w*):\S/.exec(key)
    if (glued) return { ...colonWithoutSpace(glued[1]!, this.typed.places.key(at)!), path: at }
    const { bare } = this.typed
    const before = bare.get(at)
    const rest = [key]
    for (const [next, last] of bare) if (next === `${path}/${pointer(keysOf(next).at(-1)!)}` && last === rest.at(-1)) rest.push(keysOf(next).at(-1)!)
    const says = `the key ${short(key)} without a value`, why = 'a comma inside { } starts a new key'
    if (before === undefined) return this.finding('comma-in-braces', at, says, 'a key inside { } has a colon and a value', `write ${short(key)}: and its value`, 'key')
    const { node } = this.at(`${path}/${pointer(before)}`)
    const raw = this.typed.places.raw(`${path}/${pointer(before)}`) ?? ''
    const unquoted = raw.replace(/^(["'])(.*)\1$/s, '$2')
    const mend = node?.['x-unit'] && /^\d{1,3}$/.test(raw) && rest.every(r => /^\d{3}$/.test(r)) ? `write ${before}: ${raw}${rest.join('')}`
      : node?.type === 'array' ? `put the list in brackets: ${before}: [${[raw, ...rest].map(short).join(', ')}]`
        : `put quotes round the text: ${before}: "${short([unquoted, ...rest].join(', ').replaceAll('"', "'"))}"`
    return this.finding('comma-in-braces', at, says, why, mend, 'key')
  }

  private kindMissing(path: string, node: Node, value: unknown): Finding {
    const kinds = kindsOf(node)
    const bare = isRecord(value) ? Object.keys(value).find(k => kinds.includes(k) && this.typed.bare.has(`${path}/${pointer(k)}`)) : undefined
    if (bare !== undefined) return this.finding('key-missing', `${path}/${pointer(bare)}`, 'no kind in this entry', 'each entry says its kind', `write kind: ${bare}`, 'key')
    const typo = isRecord(value) ? Object.keys(value).find(k => k !== 'kind' && nearest(k, ['kind']) && !['in', 'id'].includes(k)) : undefined
    if (typo !== undefined) return this.finding('key-unknown', `${path}/${pointer(typo)}`, `the key ${short(typo)}`, 'each entry says its kind', 'did you mean kind?', 'key')
    return { ...this.finding('key-missing', path, 'no kind in this entry', 'needed here; the other keys depend on it', `write kind: ${listed(kinds)}`), ...this.pointAt(path, value) }
  }

  private kindUnknown(path: string): Finding {
    const { node, value } = this.at(path)
    const kinds = kindsOf(node ?? {}), kind = isRecord(value) ? value['kind'] : undefined
    const shown = short(this.typed.places.raw(`${path}/kind`) ?? '')
    const [, section = ''] = path.split('/')
    const elsewhere = typeof kind === 'string' ? Object.entries(this.root.properties ?? {}).find(([name, n]) => name !== section && n.items?.oneOf && kindsOf(n.items).includes(kind)) : undefined
    const near = typeof kind === 'string' ? nearest(kind, kinds) : undefined
    return this.finding('kind-unknown', `${path}/kind`, `kind: ${shown}`, kinds.length === 1 ? `the only kind here is ${kinds[0]!}` : `the kinds here are ${listed(kinds, 'and')}`, elsewhere ? `move the entry under ${elsewhere[0]}:` : near ? `did you mean ${near}?` : kinds.length === 1 ? `write kind: ${kinds[0]!}` : 'write one of them')
  }

  // ---- Values

  private value(path: string): Finding | undefined {
    const { node, value, key, index, required } = this.at(path)
    if (!node || this.cut(path, node)) return undefined
    const { places } = this.typed
    const raw = places.raw(path)
    const shown = short(raw ?? '')
    const says = path === '' ? shown : index ? `in ${key}: ${shown}` : `${key}: ${shown}`
    const say = (code: string, why: string, mend: string, as = says): Finding => this.finding(code, path, as, why, mend)
    if (value === null || value === '') return this.empty(path, node, key, index, required, raw)
    if (node['x-unit'] !== undefined) {
      const { node: holder, value: list } = this.at(path.slice(0, path.lastIndexOf('/')))
      return index && this.asParts(holder, list) ? undefined : this.number(node, value, key, say) // told of the list as a whole
    }
    if (node.type === 'array') {
      if (Array.isArray(value)) return this.listLength(node, value, key, index, say)
      return this.notAList(path, node, value, key, say)
    }
    if (node.type === 'object') return this.notAMapping(path, node, value, key, index, say)
    if (path === '/format') return typeof value === 'string' ? this.formatUnknown(value) : say('format-unknown', 'the first line says what kind of file this is', `write format: ${this.kind.format}`)
    if (Array.isArray(value) || isRecord(value)) {
      return say('text-expected', `${Array.isArray(value) ? 'a list' : 'keys with values'} where one ${node.enum ? 'word' : 'text'} belongs`, node.enum && node.enum.length <= MOST_WORDS ? `write ${listed(node.enum)}` : 'write one text, in quotes if it begins with [ or {')
    }
    if (node.enum) return this.word(node.enum, node, value, key, say)
    return this.textual(node, value, key, raw ?? '', say)
  }

  /** A comma took the rest of this value away, and that is the finding. */
  private cut(path: string, node: Node): boolean {
    const up = path.slice(0, path.lastIndexOf('/')), key = keysOf(path).at(-1)
    return (node.type === 'array' || node['x-unit'] !== undefined) && [...this.typed.bare].some(([at, before]) => before === key && at.slice(0, at.lastIndexOf('/')) === up)
  }

  private empty(path: string, node: Node, key: string, index: boolean, required: boolean, raw: string | undefined): Finding {
    const tilde = raw === '~' && node['x-unit'] !== undefined
    const example = this.example(node)
    const mend = tilde ? `write ~${example?.replace('~', '') ?? ' and the number'}` : this.lineToAdd(key, node)
    const span = this.typed.places.value(path) ?? this.typed.places.key(path)
    const comment = raw === undefined && node['x-unit'] === undefined && span && /:\s*#/.test(this.typed.places.source.split('\n')[span.line - 1] ?? '')
    return this.finding('value-missing', path, tilde ? `${index ? 'in ' : ''}${key}: ~ without a number` : index ? `an empty entry in ${key}` : `nothing behind ${key}:`,
      tilde ? '~ means about: about how much?' : comment ? 'what stands behind # is a comment' : without(node.description) === key ? 'a key has a value' : `it stands for ${without(node.description) || key}`,
      index ? tilde ? mend : 'take the entry out, or write its value' : comment ? `put quotes round a text that begins with #` : required ? mend : `${mend}, or take the key out`, index || raw !== undefined ? undefined : 'key')
  }

  private number(node: Node, value: unknown, key: string, say: (code: string, why: string, mend: string) => Finding): Finding {
    if (typeof value === 'number') {
      const { code, why, mend } = ranged(value, node, key)
      return say(code, why, mend)
    }
    if (typeof value === 'string') {
      const { code, why, mend } = notANumber(value, node, key, this.example(node))
      return say(code, why, mend)
    }
    if (Array.isArray(value)) return say('not-a-number', 'a list where one number belongs', value.length === 1 ? `write ${key}: ${short(String(value[0]))}` : 'write one number')
    return say('not-a-number', 'a number belongs here', `write for example ${key}: ${this.example(node) ?? 1}`)
  }

  private word(words: readonly string[], node: Node, value: unknown, key: string, say: (code: string, why: string, mend: string) => Finding): Finding {
    if (typeof value === 'boolean' && words.includes('yes')) return say('boolean-not-word', wordsFor(words, key), words.includes(value ? 'yes' : 'no') ? `write ${value ? 'yes' : 'no'}` : 'write yes, or take the key out')
    const near = nearest(String(value), words)
    return say('word-unknown', words.length > MOST_WORDS && near ? `it stands for ${without(node.description)}` : wordsFor(words, key), near ? `did you mean ${near}?` : words.length === 1 ? `write ${words[0]!}` : 'write one of them')
  }

  private textual(node: Node, value: unknown, key: string, raw: string, say: (code: string, why: string, mend: string) => Finding): Finding {
    const reads = node['x-reads'], text = typeof value === 'string' ? value : raw
    if (reads === 'zip') return typeof value === 'number' && /^\d{5}$/.test(raw) ? say('zip-not-quoted', 'YAML reads a number and drops a 0 in front', `put quotes round it: ${key}: "${raw}"`)
      : say('text-not-plain', 'a zip code has 5 digits, or 5, a dash and 4', `write for example ${key}: "${this.example(node) ?? ''}"`)
    if (reads === 'station') return say('station-not-id', 'a station goes by its NOAA id, US and nine letters or digits', `write for example ${this.example(node) ?? ''}; lidwork tables stations lists them`)
    if (reads === 'date') return say('date-not-plain', 'a date is year-month-day', `write ${plainDate(text) ?? `for example ${this.example(node) ?? ''}`}`)
    if (reads === 'id') return typeof value === 'string' ? say('id-not-plain', 'a short name has small letters, digits and dashes only', `write ${slug(text) || 'main'}`)
      : say('id-not-plain', 'YAML reads a number here, and a name belongs here', `put quotes round it, or write a name such as ${this.example(node) ?? 'main'}`)
    if (typeof value !== 'string' && !Array.isArray(node.type)) return say('text-expected', `YAML reads ${typeof value === 'boolean' ? 'true or false' : 'a number'} here, and a text belongs here`, `put quotes round it: ${key}: "${short(raw)}"`)
    if (node.maxLength !== undefined && text.length > node.maxLength) return say('text-too-long', `${text.length} letters; there is room for ${node.maxLength}`, 'write less')
    if (reads === 'zone') {
      const words = /\(([^)]*)\)/.exec(node.pattern ?? '')?.[1]?.split('|') ?? []
      const digit = /^\d/.exec(text)?.[0]
      return say('word-unknown', wordsFor(words, key), digit !== undefined && words.includes(digit) && /^\d\s*[abAB]$/.test(text) ? `write ${digit}: the letter for moisture does not count here` : /^4\s*c$/.test(text) ? 'write 4C' : 'write one of them')
    }
    return say('text-not-plain', `it stands for ${without(node.description)}`, `write for example ${this.example(node) ?? ''}`)
  }

  private listLength(node: Node, value: readonly unknown[], key: string, index: boolean, say: (code: string, why: string, mend: string, as?: string) => Finding): Finding {
    const least = node.minItems ?? 0, most = node.maxItems ?? Infinity
    const few = value.length < least
    const parts = this.asParts(node, value)
    if (parts) return say('not-a-list', `one text where ${least} numbers belong: ${without(node.description)}`, `write [${parts.join(', ')}]`)
    const needed = least === most ? `${least} belong here: ${without(node.description)}` : few ? `at least ${least} belongs here: ${without(node.description)}` : `at most ${most} fit here`
    return say(few ? 'list-too-short' : 'list-too-long', needed, this.example(node) !== undefined ? `write for example ${key}: ${this.example(node)}` : few ? index && node.items?.['x-unit'] !== undefined ? `write for example ${PAIR}` : this.lineToAdd(key, node) : 'look whether the entries belong elsewhere')
  }

  /** `[22 x 30]` where two numbers belong. */
  private asParts(node: Node | undefined, value: unknown): readonly string[] | undefined {
    return Array.isArray(value) && value.length === 1 && typeof value[0] === 'string' && node?.type === 'array' && value.length < (node.minItems ?? 0) ? numbersIn(node, value[0]) : undefined
  }

  private notAList(path: string, node: Node, value: unknown, key: string, say: (code: string, why: string, mend: string, as?: string) => Finding): Finding | undefined {
    // [48, 28] where a list of such pairs belongs: the pair as a whole is the fault.
    const up = path.slice(0, path.lastIndexOf('/'))
    const parent = this.at(up)
    if (Array.isArray(parent.value) && parent.value.every(v => typeof v === 'number' || typeof v === 'string')) {
      if (!path.endsWith('/0')) return undefined
      const raw = short(this.typed.places.raw(up) ?? '')
      const pairs = parent.value.map(v => numbersIn(node, v))
      if (pairs.every(p => p !== undefined)) return this.finding('not-a-list', up, `${key}: ${raw}`, `a list of lists belongs here: ${without(parent.node?.description)}`, `write ${key}: [${pairs.map(p => `[${p.join(', ')}]`).join(', ')}]`)
      return this.finding('not-a-list', up, `${key}: ${raw}`, `a list of lists belongs here: ${without(parent.node?.description)}`, `write ${key}: [${raw}]`)
    }
    const none = typeof value === 'string' && /^(none|no|nothing|n\/a|0|-)$/i.test(value)
    if (none && !node.minItems) return say('not-a-list', 'a list belongs here; an empty one says none', `write ${key}: []`)
    if (isRecord(value)) return say('not-a-list', `keys with values where a list belongs: ${without(node.description)}`, 'begin each entry with a dash and a space')
    const text = typeof value === 'number' ? this.typed.places.raw(path) ?? String(value) : value
    const parts = partsOf(text)
    const pair = node.items?.items ? numbersIn(node.items, text) : undefined
    if (pair) return say('not-a-list', `a list of lists belongs here: ${without(node.description)}`, `write ${key}: [[${pair.join(', ')}]]`)
    const entries = node.items?.['x-unit'] !== undefined ? numbersIn(node, text) !== undefined : node.items?.enum !== undefined || node.items?.['x-reads'] === 'id'
    return say('not-a-list', `one ${typeof value === 'number' ? 'number' : 'text'} where a list belongs: ${without(node.description)}`,
      entries ? `write ${key}: [${parts.map(short).join(', ')}]` : this.example(node) !== undefined ? `write for example ${key}: ${this.example(node)}` : `write ${key}: [] or begin each entry with a dash and a space`)
  }

  private notAMapping(path: string, node: Node, value: unknown, key: string, index: boolean, say: (code: string, why: string, mend: string, as?: string) => Finding): Finding {
    if (path === '') return say('not-a-mapping', `${this.kind.name} is a list of keys, each with a colon and what belongs to it`, this.kind.start, Array.isArray(value) ? 'a list as the whole file' : 'one text as the whole file')
    const kinds = kindsOf(node)
    if (kinds.length > 0) return say('not-a-mapping', 'an entry needs its keys: kind and what that kind asks for', typeof value === 'string' && kinds.includes(value) ? `write - {kind: ${value}, ...}` : `write - {kind: ${listed(kinds)}, ...}`)
    const keys = node.required ?? Object.keys(node.properties ?? {})
    if (node.additionalProperties) return say('not-a-mapping', `it stands for ${without(node.description)}, by name`, `write for example ${key}: {main: ${short(String(value))}}`)
    const what = Array.isArray(value) ? 'a list' : `one ${typeof value === 'number' ? 'number' : 'text'}`
    const filled = keys.map(k => `${k}: ${own(node.properties, k)?.enum?.includes(String(value)) ? String(value) : '...'}`).join(', ')
    return say('not-a-mapping', `${what} where the keys ${listed(keys, 'and')} belong`, index ? `write - {${filled}}` : `write ${key}: {${filled}}`)
  }

  // ---- Examples

  private example(node: Node): string | undefined {
    const one = node.examples?.[0] ?? node.default
    if (one !== undefined) return Array.isArray(one) ? `[${one.join(', ')}]` : String(one)
    return node.type === 'array' && node.items?.['x-unit'] !== undefined ? undefined : node.const
  }

  /** The very line to add. */
  private lineToAdd(key: string, node: Node): string {
    const example = this.example(node)
    if (node.const !== undefined) return `write ${key}: ${node.const}`
    if (node.enum && node.enum.length <= MOST_WORDS) return `write ${key}: ${listed(node.enum)}`
    if (node.type === 'array' && !node.minItems) return `write ${key}: [] or list them`
    if (example !== undefined) return `write for example ${key}: ${node['x-reads'] === 'zip' ? `"${example}"` : example}`
    if (node.type === 'array') return node.items?.['x-unit'] ? `write for example ${key}: [${Array.from({ length: Math.max(1, node.minItems ?? 1) }, (_, i) => 3 + i).join(', ')}]` : node.items?.items ? `write for example ${key}: [${PAIR}]` : `write ${key}: and under it each entry, begun with a dash and a space`
    if (node.type === 'object') return `write ${key}: {${(node.required ?? Object.keys(node.properties ?? {}).slice(0, 1)).map(k => `${k}: ...`).join(', ')}}`
    if (node['x-unit'] !== undefined) return `write ${key}: and a number in ${unitWords(node['x-unit'])}`
    return `write ${key}: and ${without(node.description) || 'the words'}`
  }
}

/** What stands between commas, an x or by: 22 x 30. */
const partsOf = (text: unknown): readonly string[] => (typeof text === 'string' ? text.trim().split(/\s*(?:,|\bx\b|(?<=[\d'"\u2019\u201d\u2032\u2033])x(?=\d)|\bby\b|\u00d7)\s*/i) : [String(text)])

/** The numbers in one text, as many as the list takes; undefined where they are others. */
function numbersIn(list: Node, text: unknown): readonly string[] | undefined {
  const parts = partsOf(text)
  const fits = parts.every(p => asNumberText(p, list.items?.['x-reads']) !== undefined) && (list.minItems ?? 1) <= parts.length && parts.length <= (list.maxItems ?? Infinity)
  return fits ? parts : undefined
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']
const two = (n: string | number): string => String(n).padStart(2, '0')

/** A date in the usual other spellings, as year-month-day. */
function plainDate(text: string): string | undefined {
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(text)
  const us = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/.exec(text)
  const worded = /^([A-Za-z]{3})[a-z]*\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/.exec(text)
  const [year, month, day] = iso ? iso.slice(1) : us ? [us[3], us[1], us[2]] : worded ? [worded[3], String(MONTHS.indexOf(worded[1]!.toLowerCase()) + 1), worded[2]] : []
  return year !== undefined && Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= 31 ? `${year}-${two(month!)}-${two(day!)}` : undefined
}

const slug = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 64)

// From bytes to plain data, and where each value of it stands. One document of plain YAML 1.2: no anchors, tags, directives or merge keys,
// so that what a person reads in the file is what the program reads.
import { isUtf8 } from 'node:buffer'
import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, type Document, type Node, type Pair, type YAMLMap, type YAMLSeq } from 'yaml'
import type { Finding, Span } from '../findings/finding.ts'
import { pointer, SourcePlaces, type Range } from '../findings/places.ts'
import { printable, steering } from '../findings/printable.ts'
import { openEnd, type OpenEnd } from './open-ends.ts'
import { quickYaml } from './quick-yaml.ts'
import type { FileKind } from './schema.ts'
import { utf8 } from './utf8.ts'

const MOST_DEPTH = 20

export interface Yaml {
  readonly data: unknown
  readonly places: SourcePlaces
  /** Keys inside { } that have neither a colon nor a value, what a comma left behind; each with the key typed before it. */
  readonly bare: ReadonlyMap<string, string | undefined>
  readonly findings: readonly Finding[]
}

const error = (code: string, says: string, why: string, mend: string, span: Span, path = ''): Finding => ({ code, severity: 'error', path, says, why, mend, span })

const TOP: Span = { line: 1, column: 1, length: 1 }

/**
 * Reads one YAML document. @returns its data, or undefined with the findings that say why there is none
 * @param quick where a document is plain, by the quicker library; its data and places are the same, and it finds no fault
 * @param known whether the format has a key of that name, asked only where there are faults
 */
export function readYaml(given: Uint8Array | string, kind: FileKind, quick = true, known: (key: string) => boolean = () => false): Yaml {
  const text = typeof given === 'string' ? { source: withLines(given.replace(/^\ufeff/, '')) } : decodeText(given, kind)
  const places = new SourcePlaces(text.source)
  const none = (...findings: Finding[]): Yaml => ({ data: undefined, places, bare: new Map(), findings })
  if (text.wrong) return none(text.wrong)
  const open = unclosed(text.source)
  if (open !== undefined) return none(tooDeep(places.span([open, open + 1]), kind))
  if (quick) {
    const read = quickYaml(places, MOST_DEPTH)
    if (read) return { data: read.data, places, bare: new Map(), findings: [] }
  }
  let doc: Document.Parsed
  try {
    doc = parseDocument(text.source, {
      lineCounter: new LineCounter(), version: '1.2', schema: 'core', strict: true, stringKeys: true, merge: false, resolveKnownTags: false, prettyErrors: false, logLevel: 'error',
      uniqueKeys: false, // quadratic in the library: the walk below looks for a key that stands twice
    })
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown
    return none(tooDeep(TOP, kind)) // nested beyond what the parser's own calls can follow
  }
  const directive = /^%.*$/m.exec(text.source)
  if (directive && (doc.directives.yaml.explicit || Object.keys(doc.directives.tags).length > 1 || doc.warnings.some(w => w.code === 'BAD_DIRECTIVE') || doc.errors.some(e => e.code === 'BAD_DIRECTIVE'))) {
    return none(error('yaml-directive', `${printable(directive[0])} at the head of the file`, 'another version of YAML reads no, 010 and 12:30 as something else', 'take the line out', places.span([directive.index, directive.index + directive[0].length])))
  }
  const broken = syntax(doc, places, kind, known)
  if (broken.length > 0) return none(...broken)
  if (doc.contents === null || (isScalar(doc.contents) && doc.contents.source === '')) {
    const inside = text.source.trim() === '' ? 'nothing' : 'nothing but comments'
    return none(error('file-empty', `${inside} in the file`, `${kind.name} holds ${kind.holds}`, kind.start, TOP))
  }
  const walk = new Walk(places, kind)
  const data = walk.value(doc.contents, '', 0)
  return { data: walk.findings.length === 0 ? data : undefined, places, bare: walk.bare, findings: walk.findings }
}

/** No text of whatever older code has bytes under the tab. */
const LEAST_IN_TEXT = 9

/** UTF-8 with or without a byte order mark, and UTF-16 with one. */
export function decodeText(bytes: Uint8Array, kind: FileKind): { source: string; wrong?: Finding } {
  if (bytes.length > kind.mostBytes) return { source: '', wrong: error('file-too-large', `${(bytes.length / 1e6).toFixed(1)} million bytes`, `${kind.name} has ${kind.usual}; ${kind.mostBytes / 1e6} million are read at most`, `check that this is ${kind.name}`, TOP) }
  const notText = error('not-text', 'this is not a text file', `${kind.name} is plain text, not a spreadsheet, a PDF or a word processor file`, 'name the file you meant, or save it as plain text in UTF-8', TOP)
  const utf16 = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined
  const as = utf16 ?? 'utf-8'
  if (as === 'utf-8' && bytes.includes(0)) return { source: '', wrong: notText }
  if (as === 'utf-8' && isUtf8(bytes)) return { source: withLines(utf8(bytes).replace(/^\ufeff/, '')) }
  const read = (part: Uint8Array, fatal: boolean) => new TextDecoder(as, { fatal }).decode(part)
  try {
    const source = read(bytes, true)
    return source.includes('\0') ? { source: '', wrong: notText } : { source: withLines(source) }
  } catch {
    if (as === 'utf-8' && bytes.some(b => b < LEAST_IN_TEXT)) return { source: '', wrong: notText }
    // The first byte that is no UTF-8: the longest head that decodes, found by halving.
    let good = 0, bad = bytes.length
    while (bad - good > 1) {
      const middle = (good + bad) >> 1
      try { new TextDecoder(as, { fatal: true }).decode(bytes.subarray(0, middle), { stream: true }); good = middle } catch { bad = middle }
    }
    const before = new TextDecoder(as).decode(bytes.subarray(0, good), { stream: true })
    const source = read(bytes, false)
    const wrong = error('not-utf-8', 'a character that is not UTF-8', 'an editor or spreadsheet saved the file in an older code; signs such as \u00bd or a curly quote come out wrong', 'save the file as UTF-8', new SourcePlaces(source).span([before.length, before.length + 1]))
    return { source, wrong }
  }
}

/** Line ends of a lone carriage return, which old programs write, as the others: a place keeps its offset. */
const withLines = (source: string): string => (source.includes('\n') ? source : source.replaceAll('\r', '\n'))

const MOST_OPEN = 200

/** Where brackets are open beyond all sense, also in texts: the parser would need all memory for them. */
function unclosed(source: string): number | undefined {
  let open = 0
  for (const { 0: bracket, index } of source.matchAll(/[[\]{}]/g)) {
    if (bracket === '[' || bracket === '{') { if (++open > MOST_OPEN) return index } else if (open > 0) open--
  }
  return undefined
}

const tooDeep = (span: Span, kind: FileKind): Finding => error('nested-too-deep', `more than ${MOST_DEPTH} levels of nesting`, `no part of ${kind.name} goes that deep`, 'look for brackets that are never closed', span)

/** Faults that stand alone. After any other, what follows is noise: only the first is told. */
const ALONE = new Set(['BAD_SCALAR_START', 'BAD_DQ_ESCAPE'])

function syntax(doc: Document.Parsed, places: SourcePlaces, kind: FileKind, known: (key: string) => boolean): Finding[] {
  const all = [...doc.errors].sort((a, b) => a.pos[0] - b.pos[0])
  const deep = all.find(e => e.code === 'RESOURCE_EXHAUSTION')
  if (deep) return [tooDeep(places.span(deep.pos), kind)]
  // An unclosed bracket makes the library see lists as keys: that comes from the other fault.
  const first = all.find(e => !ALONE.has(e.code) && e.code !== 'NON_STRING_KEY') ?? all.find(e => e.code === 'NON_STRING_KEY')
  const open = first && openEnd(places.source, known)
  // A quote that swallows all up to the end of the file swallows the brackets too.
  const quoteFirst = open?.what === 'bracket' && open.ends === 'file' && /closing ["']quote/.test(first!.message)
  const ends = open && !quoteFirst && open.at <= first.pos[0] ? endFinding(open, places) : undefined
  return [...all.filter(e => (e === first && !ends) || (ALONE.has(e.code) && (!first || e.pos[0] < first.pos[0]))).map(e => syntaxFinding(e.code, e.message, e.pos, doc, places, kind, known)), ...ends ? [ends] : []]
}

const sayOne = (name: string, says: string, why: string, mend: string, at: number, places: SourcePlaces): Finding => error(name, says, why, mend, places.span([at, at + 1]))

/** A bracket or a quote whose other end is missing, at the place where it opens. */
function endFinding(open: OpenEnd, places: SourcePlaces): Finding {
  const sign = places.source[open.at]!
  if (open.what === 'closer') return closesNothing(printable(sign), places.span([open.at, open.at + 1]))
  if (open.what === 'quote') {
    const { key, ends } = open.over ?? {}
    return key === undefined || ends === undefined ? neverClosed(sign, places.span([open.at, open.at + 1]))
      : sayOne('quote-not-closed', `the ${sign} that opens here runs on over ${key}:`, 'all up to the next such quote is read as one text', `write ${sign} at the end of the text, before ${places.source[ends] === ',' ? `the comma in front of ${key}:` : `the line of ${key}:`}`, open.at, places)
  }
  const closes = sign === '[' ? ']' : '}', by = open.by === undefined ? undefined : places.span([open.by, open.by + 1]), here = places.span([open.at, open.at + 1])
  const says = by ? `the ${sign} that opens here is not closed before the ${places.source[open.by!]!} ${by.line === here.line ? '' : `on line ${by.line} `}in column ${by.column}` : open.ends === 'line' ? `the ${sign} that opens here is not closed before the next line begins further left` : `the ${sign} that opens here is never closed`
  return sayOne('bracket-not-closed', says, 'what opens with a bracket ends with its own', open.key !== undefined ? `write ${closes} before the comma in front of ${open.key}:` : open.ends === 'line' ? `write ${closes} at its end, or indent the lines that go on` : `write ${closes} at its end`, open.at, places)
}

const TAG = ['a text that begins with ! tells YAML how to read what follows', 'take it out, or put quotes round the text'] as const
const QUOTES = 'put quotes round the whole text'

function syntaxFinding(code: string, message: string, pos: Range, doc: Document.Parsed, places: SourcePlaces, kind: FileKind, known: (key: string) => boolean): Finding {
  const { source } = places
  const lineStart = source.lastIndexOf('\n', pos[0] - 1) + 1
  const line = source.slice(lineStart, (source.indexOf('\n', lineStart) + 1 || source.length + 1) - 1)
  const say = (name: string, says: string, why: string, mend: string, range: Range = pos): Finding => error(name, says, why, mend, places.span(range))
  const character = printable(source[pos[0]] ?? '')

  if (code === 'MULTIPLE_DOCS') return say('two-documents', 'a second document begins', kind.one[0], `${kind.one[1]}; a line of --- alone begins a new document`)
  if (/closing ["']quote/.test(message)) {
    const open = lastNode(doc, n => isScalar(n) && (n.type === 'QUOTE_DOUBLE' || n.type === 'QUOTE_SINGLE'))
    const at = open?.range?.[0] ?? pos[0]
    return neverClosed(source[at] === "'" ? "'" : '"', places.span([at, at + 1]))
  }
  if (/Flow (map|sequence) in block/.test(message)) {
    const open = lastNode(doc, n => (isMap(n) || isSeq(n)) && n.flow === true && (n.range?.[0] ?? 0) < pos[0] && !'}]'.includes(source[(n.range?.[1] ?? 1) - 1] ?? ' '))
    const at = open?.range?.[0] ?? pos[0]
    if (!'[{'.includes(source[at]!)) return closesNothing(printable(source[at]!), places.span([at, at + 1]))
    const [opens, closes] = source[at] === '[' ? ['[', ']'] : ['{', '}']
    return say('bracket-not-closed', `the ${opens} that opens here is not closed before the next line begins further left`, 'what opens with a bracket ends with its own', `write ${closes} at its end, or indent the lines that go on`, [at, at + 1])
  }
  if (code === 'TAB_AS_INDENT' || /^[ ]*\t/.test(line) && code === 'BAD_INDENT') return say('tab-in-indent', 'a tab at the start of the line', 'YAML counts spaces; a tab has no width in it', 'use spaces')
  if (/^\s*-[^\s-]/.test(line) && (code === 'BAD_INDENT' || /at node end|without - indicator/.test(message))) return say('dash-without-space', 'a dash without a space behind it', 'each entry of a list begins with a dash and a space', 'write a space behind the dash', textOf(line, lineStart))
  const glued = /^\s*(?:- +)?([A-Za-z]\w*):(?=[^\s:/])/.exec(line)
  if (glued && (code === 'MULTILINE_IMPLICIT_KEY' || code === 'MISSING_CHAR' || code === 'BAD_INDENT' || code === 'UNEXPECTED_TOKEN')) return colonWithoutSpace(glued[1]!, places.span([lineStart + glued[0].length - 1, lineStart + glued[0].length]))
  const startsWith = (sign: string): boolean => line.trimStart().startsWith(sign)
  if (code === 'BAD_SCALAR_START') return say('text-needs-quotes', `a text that begins with ${character}`, 'YAML keeps that sign for itself', QUOTES)
  if (code === 'BAD_DQ_ESCAPE') return say('backslash-in-quotes', `${printable(source.slice(pos[0], pos[0] + 2))} inside " "`, 'a \\ in double quotes begins a code', "use single quotes ' ' round the text, or write \\\\")
  const next = /^[ ]*(?=- )/.exec(source.slice(lineStart + line.length + 1))
  if (code === 'BLOCK_AS_IMPLICIT_KEY' && next && next[0].length > line.length - line.trimStart().length) return swallowed(places.span([lineStart + line.length + 1 + next[0].length, lineStart + line.length + 2 + next[0].length]))
  if (code === 'BLOCK_AS_IMPLICIT_KEY' && !startsWith('- ')) return say('text-needs-quotes', 'a second colon in the line', 'a colon and a space inside a text begin a new key', QUOTES)
  if (/at node end/.test(message)) {
    const before = source[pos[0] - 1] === ' ' ? source.slice(lineStart, pos[0]).trimEnd() : source.slice(lineStart, pos[0])
    if (/["']$/.test(before)) return say('text-needs-quotes', 'more text behind a closing quote', 'a text that begins with a quote ends with the next one', `put quotes round the whole text: '12" duct' or "5' 3"`)
    if (/[}\]]$/.test(before)) return say('not-yaml', 'more text behind a closing bracket', 'the closing bracket ends the entry', 'put a comma or a new line between, or take it out')
    return say('indent-uneven', 'a key where the list above goes on', 'entries of one list begin in the same column with -', 'begin the line with -, or move it to the column of the keys it belongs to')
  }
  if (/Unexpected flow-(map|seq)-end/.test(message)) return closesNothing(character, places.span(pos))
  if (code === 'BAD_INDENT' || /Sequence item without/.test(message)) return say('indent-uneven', 'this line begins in a column of its own', 'the keys of one entry begin in the same column', 'move it under the first letter of the other keys', textOf(line, lineStart))
  if (/Unexpected block-seq-ind|Implicit map keys need|single line|Nested mappings|sequence may not be/.test(message)) {
    return startsWith('- ') ? say('indent-uneven', 'a list entry where a key belongs', 'the entries of a list stand under the key that holds them', 'move the - under its key, or write a key', textOf(line, lineStart))
      : say('colon-missing', 'a line without a key', 'each line is a key, a colon, a space, and what belongs to it', 'write key: value; a text over several lines goes in quotes')
  }
  if (code === 'NON_STRING_KEY') return say('key-not-text', 'a list, or keys with values, as a key', 'a key is a plain word', 'write a word before the colon')
  if (code === 'BLOCK_IN_FLOW') {
    const [, inner = ''] = /^([^:]*):/.exec(source.slice(pos[0])) ?? [], last = /\S+$/.exec(inner)?.[0] ?? ''
    if (known(last)) return say('comma-missing', 'two keys without a comma between them', 'inside { } a comma stands between two keys', `put a comma before ${last}:`)
    const whole = /^[^,}\n]*/.exec(source.slice(pos[0]))![0].trimEnd()
    return say('text-needs-quotes', 'a second colon in the text', 'a colon and a space inside a text begin a new key', whole.includes('"') ? QUOTES : `put quotes round the text: "${printable(whole)}"`, [pos[0], pos[0] + whole.length])
  }
  if (/Unexpected , in flow/.test(message)) return say('comma-twice', 'a comma with nothing before it', 'one comma stands between two entries', 'take it out')
  if (code === 'BAD_ALIAS' || code === 'MULTIPLE_ANCHORS') return say('anchor-used', `the sign ${character}`, 'a text that begins with * or & refers to another place of the file', QUOTES)
  if (code === 'TAG_RESOLVE_FAILED') return say('tag-used', `the tag ${printable(source.slice(...pos))}`, TAG[0], TAG[1])
  const block = /[|>]\S*\s*$/.exec(source.slice(lineStart, pos[0]))
  if (/Not a YAML token|Block scalar header/.test(message) && block) return say('text-needs-quotes', `a text that begins with ${block[0].charAt(0)}`, 'that sign alone begins a text over several lines', QUOTES, [lineStart + block.index, lineStart + block.index + 1])
  return say('not-yaml', 'this is not YAML from here on', printable(message.charAt(0).toLowerCase() + message.slice(1)), 'look at the line above as well: a bracket, a quote or a colon may be missing')
}

const closesNothing = (bracket: string, span: Span): Finding => error('bracket-not-opened', `a ${bracket} that closes nothing`, 'each bracket that closes has one that opens', 'take it out, or open a bracket before', span)

const neverClosed = (quote: string, span: Span): Finding => error('quote-not-closed', `the ${quote} that opens here is never closed`, 'everything behind it is read as one text', 'write the same quote at the end of the text', span)

/** A line without its indentation. */
const textOf = (line: string, start: number): Range => [start + line.length - line.trimStart().length, start + line.length]

/** An entry indented too far: YAML takes it, without a word, for more of the text above. */
const swallowed = (span: Span): Finding => error('indent-uneven', 'a list entry that the text above swallows', 'a line further right goes on with the text above', 'move the - under the others of its list, or put quotes round the text', span)

/** `kind:hatch` is one word to YAML. */
export const colonWithoutSpace = (key: string, span: Span, path = ''): Finding =>
  ({ ...error('colon-without-space', `a colon without a space behind ${key}`, 'YAML then reads key and value as one word', `write ${key}: with a space behind the colon`, span, path) })

function lastNode(doc: Document.Parsed, fits: (n: Node) => boolean): Node | undefined {
  let found: Node | undefined
  const look = (n: unknown): void => {
    if (isMap(n)) for (const p of n.items) { look(p.key); look(p.value) }
    else if (isSeq(n)) n.items.forEach(look)
    if ((isMap(n) || isSeq(n) || isScalar(n)) && fits(n as Node) && (!found || (n.range?.[0] ?? 0) > (found.range?.[0] ?? 0))) found = n as Node
  }
  look(doc.contents)
  return found
}

/** Turns nodes into data, keeping where each stands, and refusing what a person would not see in the file. */
class Walk {
  readonly findings: Finding[] = []
  readonly bare = new Map<string, string | undefined>()
  constructor(private readonly places: SourcePlaces, private readonly kind: FileKind) {}

  value(node: unknown, path: string, depth: number): unknown {
    if (node === null || node === undefined) return null
    const { range, anchor, tag } = node as { range?: [number, number, number]; anchor?: string; tag?: string }
    const here: Range = range ? [range[0], range[1]] : [0, 1]
    if (here[1] > here[0]) this.places.values.set(path, here)
    const name = '&' + anchor
    if (isAlias(node)) return this.refuse(path, 'anchor-used', `the reference *${printable(node.source)}`, `a text that begins with * refers to another place of the file; ${this.kind.name} says everything where it stands`, 'write it out, or put quotes round the text', here)
    if (anchor !== undefined) this.refuse(path, 'anchor-used', `the name ${printable(name)}`, `a text that begins with & names a place of the file to refer to; ${this.kind.name} says everything where it stands`, 'take it out, or put quotes round the text', this.before(name, here))
    if (tag !== undefined) this.tagged(path, tag, here)
    if (isScalar(node)) {
      if (typeof node.value !== 'string') return node.value
      const dash = node.type === 'PLAIN' ? /\n\s*(?=-\s)/.exec(this.places.source.slice(...here)) : null
      if (dash) this.findings.push({ ...swallowed(this.places.span([here[0] + dash.index + dash[0].length, here[0] + dash.index + dash[0].length + 1])), path })
      return this.text(node.value, path, here)
    }
    if (depth >= MOST_DEPTH) { this.findings.push({ ...tooDeep(this.places.span(here), this.kind), path }); return null }
    return isMap(node) ? this.mapping(node, path, depth) : isSeq(node) ? this.list(node, path, depth) : null
  }

  private list(node: YAMLSeq, path: string, depth: number): unknown[] {
    return node.items.map((item, i) => this.value(item, `${path}/${i}`, depth + 1))
  }

  private mapping(node: YAMLMap, path: string, depth: number): object {
    const out: Record<string, unknown> = {}
    let before: string | undefined
    for (const pair of node.items as Pair[]) {
      const key = isScalar(pair.key) ? String(pair.key.value ?? '') : ''
      const range = (pair.key as Node | null)?.range
      const here: Range = range ? [range[0], range[1]] : [0, 1]
      if (isAlias(pair.key) || (isScalar(pair.key) && (pair.key.anchor !== undefined || pair.key.tag !== undefined))) { this.refuse(path, 'key-not-text', 'a key with a mark before it', 'a key is a plain word', 'write the word alone', here); continue }
      if (key === '<<') { this.refuse(path, 'anchor-used', 'the key <<', `it copies another part of the file; ${this.kind.name} says everything where it stands`, 'write the keys out', here); continue }
      if (key === '') { this.refuse(path, 'key-not-text', 'a colon without a key', 'nothing says what the value is for', 'write a word before the colon', here); continue }
      const at = `${path}/${pointer(key)}`
      this.text(key, at, here)
      if (Object.hasOwn(out, key)) {
        const first = this.places.key(at)!
        this.refuse(at, 'key-twice', `${printable(key)} for the second time`, `it stands already on line ${first.line}; only one can hold`, 'keep one of the two', here)
        continue
      }
      this.places.keys.set(at, here)
      if (node.flow && pair.value === null) this.bare.set(at, before)
      const value = pair.value as Node | null
      if (before === undefined) this.places.heads.set(path, [node.range?.[0] ?? here[0], Math.max(here[1], value?.range?.[1] ?? 0)])
      before = key
      // `__proto__` is a key like any other: an assignment would set the object's prototype.
      Object.defineProperty(out, key, { value: this.value(value, at, depth + 1), enumerable: true, writable: true, configurable: true })
    }
    return out
  }

  private text(value: string, path: string, here: Range): string {
    const sign = steering(value)
    if (sign !== undefined) this.refuse(path, 'control-character', `the character ${sign} in the text`, 'it is not seen on paper and may steer a terminal', 'delete it and type the text again', here)
    return value
  }

  private tagged(path: string, tag: string, here: Range): void {
    const head = this.places.source.slice(this.places.source.lastIndexOf('\n', here[0] - 1) + 1, here[0])
    const typed = /!\S*(?=\s*$)/.exec(head)?.[0] ?? tag
    this.refuse(path, 'tag-used', `the tag ${printable(typed)}`, TAG[0], TAG[1], this.before(typed, here))
  }

  /** Where a mark stands that comes before a node. */
  private before(mark: string, here: Range): Range {
    const at = this.places.source.lastIndexOf(mark, here[0])
    return at === -1 ? here : [at, at + mark.length]
  }

  private refuse(path: string, code: string, says: string, why: string, mend: string, at: Range): null {
    this.findings.push(error(code, says, why, mend, this.places.span(at), path))
    return null
  }
}

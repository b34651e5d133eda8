// Plain YAML read by a quicker library: what people write in these files nearly always is. Whatever is not surely read the same by both is left to
// the other one, which also words every finding; tests hold the two against each other.
import { FAILSAFE_SCHEMA, load } from 'js-yaml'
import { pointer, type Range, type SourcePlaces } from '../findings/places.ts'
import { steering } from '../findings/printable.ts'

/** A node as it was read: where it begins and ends, and what it holds. */
interface Node { readonly start: number; end: number; readonly children: Node[]; kind: string | null; result: unknown }

/** Anchors, references, tags, texts over several lines, keys with a question mark, tabs, escapes, marks of documents and directives, rare line ends, remarks without a blank before them. */
const UNUSUAL = /(?:^|[\s[{,])(?:[&*!][^\s,\]}]|[|>?](?:\s|[-+0-9]))|(?:^|[[{,])\s*:|[\t\\]|^(?:---|\.\.\.|%)|\r(?!\n)|[\u0085\u2028\u2029\ufeff]|<<|__proto__|["'}\],:]#/m
const NUMBER = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?$/
/** Words and numbers of other forms that YAML reads as something else than text. */
const OTHER = /^(?:true|false|null|~|yes|no|[-+]?(?:0[xob]|\.inf|\.nan).*)$/i
const WORDS = /^(?:yes|no)$/i
/** Names that an object would put first, whatever their order in the file. */
const INDEX = /^\d+$/

/** Where a node begins: behind blanks, line ends and comments. */
function begins(source: string, from: number): number {
  for (let i = from; ; i++) {
    const c = source.charCodeAt(i)
    if (c === 0x20 || c === 0x0a || c === 0x0d) continue
    if (c !== 0x23 || (i > 0 && !/\s/.test(source[i - 1]!))) return i
    const line = source.indexOf('\n', i)
    if (line === -1) return source.length
    i = line
  }
}

/** The nodes of a document. @returns undefined where the library refuses it */
function nodes(source: string): Node | undefined {
  const open: Node[] = []
  let root: Node | undefined
  try {
    load(source, {
      schema: FAILSAFE_SCHEMA,
      listener(event, state) {
        const { position, kind, result } = state as unknown as { position: number; kind: string | null; result: unknown }
        if (event === 'open') { open.push({ start: position, end: position, children: [], kind: null, result: null }); return }
        const node = open.pop()!
        node.kind = kind; node.result = result; node.end = position
        if (kind === null) return
        // A value is tried as a key first: then it stands in itself.
        const only = node.children.length === 1 ? node.children[0]! : undefined
        const made = only && only.kind === kind && (kind === 'scalar' || only.result === result) ? only : node
        const holder = open.at(-1)
        if (holder) holder.children.push(made); else root = made
      },
    })
  } catch { return undefined }
  return root
}

/** A document that this reading cannot be sure of. */
class Unsure extends Error {}

/** Lines of a bracket that goes on stand further right than the line it opens in. */
function indented(source: string, start: number, end: number): boolean {
  const text = source.slice(start, end)
  if (!text.includes('\n')) return true
  const line = source.slice(source.lastIndexOf('\n', start) + 1)
  const own = line.length - line.trimStart().length
  return text.split('\n').slice(1).every(l => l.trim() === '' || l.length - l.trimStart().length > own)
}

/** Reads plain YAML, and fills in where each value stands. @returns undefined where the other reading has to decide */
export function quickYaml(places: SourcePlaces, mostDepth: number): { readonly data: unknown } | undefined {
  const { source } = places
  if (UNUSUAL.test(source)) return undefined
  const root = nodes(source)
  if (!root || root.kind !== 'mapping') return undefined
  try { return { data: value(root, '', 0) } } catch (error) {
    if (!(error instanceof Unsure)) throw error
    places.clear()
    return undefined
  }

  function value(node: Node, path: string, depth: number): unknown {
    const start = begins(source, node.start)
    if (node.kind === 'scalar') return scalar(node, start, path)
    const flow = source[start] === '[' || source[start] === '{'
    if (depth >= mostDepth || (flow && !indented(source, start, node.end))) throw new Unsure()
    const read = node.kind === 'sequence' ? list(node, path, depth) : mapping(node, start, path, depth)
    // A block ends with the line of what stands last in it, a remark behind that included.
    let last = node
    while (!flow && last.kind !== 'scalar' && (last === node || !isFlow(last))) last = last.children.at(-1)!
    const content = last.kind === 'scalar' ? range(last)[1] : last.end, end = flow ? content : source.indexOf('\n', content) + 1 || source.length
    places.values.set(path, [start, end])
    return read
  }

  function isFlow(node: Node): boolean { const c = source[begins(source, node.start)]; return c === '[' || c === '{' }

  function list(node: Node, path: string, depth: number): unknown[] {
    const made = node.result as unknown[]
    if (made.length !== node.children.length || node.children.some((child, i) => child.result !== made[i])) throw new Unsure()
    return node.children.map((child, i) => value(child, `${path}/${i}`, depth + 1))
  }

  function mapping(node: Node, start: number, path: string, depth: number): object {
    const out: Record<string, unknown> = {}, count = Object.keys(node.result as object).length
    if (count * 2 !== node.children.length) throw new Unsure()
    for (let i = 0; i < node.children.length; i += 2) {
      const name = node.children[i]!, held = node.children[i + 1]!
      if (name.kind !== 'scalar') throw new Unsure()
      const here = range(name), key = String(name.result)
      if (key === '' || (node.result as Record<string, unknown>)[key] !== held.result || INDEX.test(key) || source.slice(...here) !== key) throw new Unsure()
      const at = `${path}/${pointer(key)}`
      plain(key)
      places.keys.set(at, here)
      out[key] = value(held, at, depth + 1)
      if (i === 0) places.heads.set(path, [start, Math.max(here[1], places.values.get(at)![1])])
    }
    return out
  }

  function scalar(node: Node, start: number, path: string): unknown {
    const here = range(node), text = String(node.result), quote = source[start]
    places.values.set(path, here)
    plain(text)
    if (source.slice(...here).includes('\n')) throw new Unsure()
    if (quote === '"' || quote === "'") return text
    if (source.slice(...here) !== text) throw new Unsure()
    if (NUMBER.test(text)) return Number(text)
    if (text === '' || (OTHER.test(text) && !WORDS.test(text))) throw new Unsure()
    return text
  }

  /** Where a word or text stands: a plain one without the blanks behind it. */
  function range(node: Node): Range {
    const start = begins(source, node.start), quote = source[start]
    return [start, quote === '"' || quote === "'" ? node.end : start + String(node.result).length]
  }

  function plain(text: string): void { if (steering(text) !== undefined) throw new Unsure() }
}

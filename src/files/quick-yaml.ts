// Plain YAML read by a quicker library: what people write in these files nearly always is. Whatever is not surely read the same by both is left to
// the other one, which also words every finding; tests hold the two against each other.
import { FAILSAFE_SCHEMA, load } from 'js-yaml'
import { pointer, type Range, type SourcePlaces } from '../findings/places.ts'
import { STEERING_IN_LINES } from '../findings/printable.ts'

/** A node as it was read: where it begins and ends, and what it holds. */
interface Node { readonly start: number; end: number; readonly children: Node[]; kind: string | null; result: unknown }

/**
 * Anchors, references, tags; texts over several lines and keys with a question mark; a value without a key; tabs and escapes; directives and marks of documents; rare line ends;
 * merged keys and names of the language; remarks without a blank before them. What stands before is looked at last: a letter that begins none of them is passed over at once.
 */
const UNUSUAL = /[&*!](?<=(?:^|[\s[{,]).)[^\s,\]}]|[|>?](?<=(?:^|[\s[{,]).)[\s\-+0-9]|:(?<=(?:^|[[{,])\s*:)|[\t\\]|%(?<=^%)|-(?<=^-)--|\.(?<=^\.)\.\.|\r(?!\n)|[\u0085\u2028\u2029\ufeff]|<<|__proto__|#(?<=["'}\],:]#)/m
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

/** Reads plain YAML. Where each value stands is looked up when somebody asks. @returns undefined where the other reading has to decide */
export function quickYaml(places: SourcePlaces, mostDepth: number): { readonly data: unknown } | undefined {
  const { source } = places
  if (UNUSUAL.test(source) || STEERING_IN_LINES.test(source)) return undefined
  const root = nodes(source)
  if (!root || root.kind !== 'mapping') return undefined
  try {
    const data = value(root, 0)
    places.later(() => { place(root, '') })
    return { data }
  } catch (error) {
    if (!(error instanceof Unsure)) throw error
    return undefined
  }

  function value(node: Node, depth: number): unknown {
    const start = begins(source, node.start)
    if (node.kind === 'scalar') return scalar(node, start)
    if (depth >= mostDepth || (isFlow(start) && !indented(source, start, node.end))) throw new Unsure()
    return node.kind === 'sequence' ? list(node, depth) : mapping(node, depth)
  }

  // What the library made is filled in where it stands: most of it is text already, and stays.
  function list(node: Node, depth: number): unknown[] {
    const { children } = node, made = node.result as unknown[]
    if (made.length !== children.length) throw new Unsure()
    children.forEach((child, i) => {
      if (child.result !== made[i]) throw new Unsure()
      const read = value(child, depth + 1)
      if (read !== child.result) made[i] = read
    })
    return made
  }

  function mapping(node: Node, depth: number): object {
    const { children } = node, made = node.result as Record<string, unknown>
    if (Object.keys(made).length * 2 !== children.length) throw new Unsure()
    for (let i = 0; i < children.length; i += 2) {
      const name = children[i]!, held = children[i + 1]!
      if (name.kind !== 'scalar') throw new Unsure()
      const key = String(name.result)
      if (key === '' || made[key] !== held.result || INDEX.test(key) || !source.startsWith(key, begins(source, name.start))) throw new Unsure()
      const read = value(held, depth + 1)
      if (read !== held.result) made[key] = read
    }
    return made
  }

  function scalar(node: Node, start: number): unknown {
    const text = String(node.result)
    if (isQuoted(start)) {
      if (source.slice(start, node.end).includes('\n')) throw new Unsure()
      return text
    }
    if (!source.startsWith(text, start) || text.includes('\n')) throw new Unsure()
    if (NUMBER.test(text)) return Number(text)
    if (text === '' || (OTHER.test(text) && !WORDS.test(text))) throw new Unsure()
    return text
  }

  function isFlow(start: number): boolean { return source[start] === '[' || source[start] === '{' }
  function isQuoted(start: number): boolean { return source[start] === '"' || source[start] === "'" }

  /** Where a word or text stands: a plain one without the blanks behind it. */
  function range(node: Node): Range {
    const start = begins(source, node.start)
    return [start, isQuoted(start) ? node.end : start + String(node.result).length]
  }

  /** Fills in where a value and all in it stand. @returns its own range */
  function place(node: Node, path: string): Range {
    const here = node.kind === 'scalar' ? range(node) : placeAll(node, path)
    places.values.set(path, here)
    return here
  }

  function placeAll(node: Node, path: string): Range {
    const start = begins(source, node.start), { children } = node
    if (node.kind === 'sequence') children.forEach((child, i) => { place(child, `${path}/${i}`) })
    else for (let i = 0; i < children.length; i += 2) {
      const key = range(children[i]!), at = `${path}/${pointer(String(children[i]!.result))}`, held = place(children[i + 1]!, at)
      places.keys.set(at, key)
      if (i === 0) places.heads.set(path, [start, Math.max(key[1], held[1])])
    }
    if (isFlow(start)) return [start, node.end]
    // A block ends with the line of what stands last in it, a remark behind that included.
    let last = node
    while (last.kind !== 'scalar' && (last === node || !isFlow(begins(source, last.start)))) last = last.children.at(-1)!
    const content = last.kind === 'scalar' ? range(last)[1] : last.end
    return [start, source.indexOf('\n', content) + 1 || source.length]
  }
}

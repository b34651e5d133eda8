// Values put into a YAML file where they stand: all else of it, comments and layout, stays as it was typed.
import { isMap, isSeq, parseDocument, type Node, type Pair, type YAMLMap } from 'yaml'

export interface Edit { readonly at: readonly (string | number)[]; readonly key: string; /** As it is typed. */ readonly text: string; /** An existing key, behind whose line a new one goes in a mapping of several lines. */ readonly behind: string }
/** An entry added to the end of a list, as it is typed. */
export interface Append { readonly to: readonly (string | number)[]; readonly text: string }

interface Splice { readonly from: number; readonly to: number; readonly text: string }
const rangeOf = (node: unknown): readonly [number, number] => { const [start, end] = (node as Node).range!; return [start, end] }
const keyed = (map: YAMLMap, key: string): Pair | undefined => (map.items as Pair[]).find(p => String((p.key as { value?: unknown } | null)?.value ?? '') === key)
const lineEnd = (source: string, at: number): number => { const n = source.indexOf('\n', at); return n === -1 ? source.length : n }
const columnOf = (source: string, at: number): number => at - (source.lastIndexOf('\n', at - 1) + 1)

/**
 * @param source one document that was read without a fault
 * @throws Error where a place is no mapping or list
 */
export function edited(source: string, edits: readonly Edit[], appends: readonly Append[] = []): string {
  const doc = parseDocument(source, { uniqueKeys: false, logLevel: 'silent' }), out: Splice[] = []
  const newLine = source.includes('\r\n') ? '\r\n' : '\n'
  for (const { at, key, text, behind } of edits) {
    const map = at.length === 0 ? doc.contents : doc.getIn(at, true)
    if (!isMap(map)) throw new Error(`no mapping at ${at.join('/')}`)
    const pair = keyed(map, key)
    if (pair) { const [from, to] = rangeOf(pair.value); out.push({ from, to, text }); continue }
    if (map.flow) { const [, end] = rangeOf((map.items.at(-1) as Pair).value); out.push({ from: end, to: end, text: `, ${key}: ${text}` }); continue }
    const beside = keyed(map, behind)
    if (!beside) throw new Error(`no ${behind} at ${at.join('/')}`)
    const end = lineEnd(source, rangeOf(beside.value)[1] - 1), from = source[end - 1] === '\r' ? end - 1 : end
    out.push({ from, to: from, text: `${newLine}${' '.repeat(columnOf(source, rangeOf(beside.key)[0]))}${key}: ${text}` })
  }
  for (const { to, text } of appends) {
    const list = doc.getIn(to, true)
    if (!isSeq(list) || list.items.length === 0) throw new Error(`no list at ${to.join('/')}`)
    const last = rangeOf(list.items.at(-1))
    if (list.flow) { out.push({ from: last[1], to: last[1], text: `, ${text}` }); continue }
    const dash = source.lastIndexOf('-', rangeOf(list.items[0])[0] - 1), end = lineEnd(source, last[1] - 1), from = source[end - 1] === '\r' ? end - 1 : end
    out.push({ from, to: from, text: `${newLine}${' '.repeat(columnOf(source, dash))}- ${text}` })
  }
  // From the end, so that places before stay where they are; of two at one place the first stays first.
  return out.map((s, n) => ({ ...s, n })).sort((a, b) => b.from - a.from || b.n - a.n).reduce((text, s) => text.slice(0, s.from) + s.text + text.slice(s.to), source)
}

// Names of the entries of a list: `areas.main.bags` is said of `areas[0].bags`.
import { isQuantity } from '../../units/quantity.ts'

export type Fields = Readonly<Record<string, unknown>>
export const isFields = (v: unknown): v is Fields => typeof v === 'object' && v !== null && !Array.isArray(v)

/** What names an entry of a list, the first that there is. */
const NAMES = ['id', 'item', 'task', 'code', 'path', 'chartR', 'phase'] as const

/** The entries of a list by their names; the second of one name is `name-2`. Undefined where they have none: a list of plain values is one figure. */
export function byName(list: readonly unknown[]): ReadonlyMap<string, unknown> | undefined {
  const out = new Map<string, unknown>()
  for (const entry of list) {
    const key = isFields(entry) ? NAMES.find(n => n in entry) : undefined
    if (key === undefined) return undefined
    const word = (entry as Fields)[key], name = String(isQuantity(word) ? word.value : word)
    let n = 1
    while (out.has(n === 1 ? name : `${name}-${n}`)) n++
    out.set(n === 1 ? name : `${name}-${n}`, entry)
  }
  return out
}

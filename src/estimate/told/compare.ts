// Two estimates figure by figure, by the paths that `explain` uses.
import { minusExactly } from '../../units/money.ts'
import { byName, isFields } from './named.ts'

/** One figure that is not as recorded. `recorded` is absent for what is new, `now` for what has gone. */
export interface Difference { readonly path: string; readonly recorded?: unknown; readonly now?: unknown; /** now − recorded, for numbers, exact. */ readonly difference?: number }

/** How far a figure may be off: as an amount, or in percent of what was recorded. `of` is a figure’s name or how it ends; without it every number is meant. */
export interface Tolerance { readonly of?: string; readonly amount?: number; readonly pct?: number }

export interface Compared { readonly differences: readonly Difference[]; /** Numbers that differ, within a tolerance. */ readonly within: number }

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/**
 * Every figure in which an estimate is not as recorded, in the order of the estimate. An entry that is new or gone is one difference, or one for each of its items where it holds a list of them; so is another order of the same entries.
 * @param recorded,now plain data as `estimate --json` prints it
 */
export function compare(recorded: unknown, now: unknown, tolerances: readonly Tolerance[] = []): Compared {
  const differences: Difference[] = []
  let within = 0
  const allowed = (name: string, was: number, off: number): boolean => tolerances.some(t => (t.of === undefined || name.endsWith(t.of)) && Math.abs(off) <= (t.amount ?? Math.abs(was) * t.pct! / 100))
  const at = (path: string, name: string): string => (path === '' ? name : `${path}.${name}`)
  function entries(path: string, was: ReadonlyMap<string, unknown>, is: ReadonlyMap<string, unknown>): void {
    for (const [name, entry] of was) if (!is.has(name)) each(at(path, name), entry, one => ({ recorded: one }))
    for (const [name, entry] of is) if (was.has(name)) visit(at(path, name), name, was.get(name), entry); else each(at(path, name), entry, one => ({ now: one }))
  }
  /** What is new or gone. */
  function each(path: string, entry: unknown, side: (one: unknown) => Omit<Difference, 'path'>): void {
    const items = isFields(entry) && Array.isArray(entry['items']) && entry['items'].length > 0 ? byName(entry['items']) : undefined
    if (items) for (const [name, one] of items) differences.push({ path: at(at(path, 'items'), name), ...side(one) })
    else differences.push({ path, ...side(entry) })
  }
  function visit(path: string, name: string, was: unknown, is: unknown): void {
    if (isFields(was) && isFields(is)) { entries(path, new Map(Object.entries(was)), new Map(Object.entries(is))); return }
    if (Array.isArray(was) && Array.isArray(is)) {
      const before = byName(was), after = byName(is)
      if (before && after) {
        const common = [...before.keys()].filter(k => after.has(k)), order = [...after.keys()].filter(k => before.has(k))
        if (!same(common, order)) differences.push({ path, recorded: common, now: order })
        entries(path, before, after)
        return
      }
    }
    if (typeof was === 'number' && typeof is === 'number') {
      const difference = minusExactly(is, was)
      if (difference === 0) return
      if (allowed(name, was, difference)) within++
      else differences.push({ path, recorded: was, now: is, difference })
    } else if (!same(was, is)) differences.push({ path, recorded: was, now: is })
  }
  visit('', '', recorded, now)
  return { differences, within }
}

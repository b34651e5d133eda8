// What uses what, from estimates as they are made: run by the build over the shipped examples, and kept as data.
import type { Uses } from '../estimate/told/tables-output.ts'
import { figures } from '../estimate/told/figures.ts'
import { demoCompany, demoPrices } from '../books/demo.ts'
import { shelf } from '../books/open.ts'
import { inputsOf, walk, type Quantity } from '../units/quantity.ts'
import { unitOf } from '../estimate/told/told.ts'
import { openJob } from './jobs.ts'

/** A path with `*` for what the house named: `areas.*.bags`. */
const pattern = (path: string, names: ReadonlySet<string>): string => path.split('.').map(p => (names.has(p) || /^\d+$/.test(p) ? '*' : p)).join('.')

/** @param jobs job files of the examples @returns the index, each list sorted */
export function usesOf(jobs: readonly { readonly name: string; readonly bytes: Uint8Array }[]): Uses {
  const tables = new Map<string, { formulas: Set<string>; figures: Set<string> }>(), formulas = new Map<string, Set<string>>(), starting = new Map<string, { q: Quantity; figures: Set<string> }>()
  const base = shelf(demoPrices, demoCompany)
  const asked = <Q extends Quantity>(q: Q): Q => { if (q.from.is === 'assumed' && !starting.has(q.from.id)) starting.set(q.from.id, { q, figures: new Set() }); return q }
  const recording: typeof base = { ...base, for: job => { const b = base.for(job); return { ...b, start: (...a) => asked(b.start(...a)), rate: (...a) => asked(b.rate(...a)) } } }
  for (const { name, bytes } of jobs) {
    const made = openJob(bytes, name, recording)
    if (!made.sound) continue
    const figs = figures(made.estimate, made.job), above = new Map<Quantity, Quantity[]>()
    walk(figs.all.values(), q => { for (const i of Object.values(inputsOf(q))) above.set(i, [...above.get(i) ?? [], q]) })
    const names = new Set<string>()
    for (const path of figs.all.keys()) for (const p of path.split('.')) if (!/^[a-z][A-Za-z0-9]*$/.test(p) || made.job.data.areas.some(a => a.id === p)) names.add(p)
    for (const a of [...made.job.data.areas, ...made.job.data.ducts ?? [], ...made.job.data.appliances ?? []]) if (a.id !== undefined) names.add(a.id)
    const nearest = (q: Quantity): string[] => {
      const found: string[] = [], seen = new Set([q]), queue = [q]
      for (let next = queue.shift(); next; next = queue.shift()) {
        const here = next === q ? undefined : figs.names.get(next)
        if (here !== undefined) { found.push(pattern(here, names)); continue }
        for (const other of above.get(next) ?? []) if (!seen.has(other)) { seen.add(other); queue.push(other) }
      }
      const own = figs.names.get(q)
      return own === undefined || q.from.is === 'assumed' ? found : [pattern(own, names), ...found]
    }
    walk(figs.all.values(), q => {
      const { from } = q
      if (from.is === 'row' && from.table !== undefined) {
        const t = tables.get(from.table) ?? { formulas: new Set(), figures: new Set() }
        tables.set(from.table, t)
        for (const other of above.get(q) ?? []) if (other.from.is === 'worked') t.formulas.add(other.from.by.id)
        for (const f of nearest(q)) t.figures.add(f)
      } else if (from.is === 'worked') {
        const f = formulas.get(from.by.id) ?? new Set()
        formulas.set(from.by.id, f)
        const own = figs.names.get(q)
        for (const n of own === undefined ? nearest(q) : [pattern(own, names)]) f.add(n)
      } else if (from.is === 'assumed') { const s = starting.get(from.id); if (s) for (const f of nearest(q)) s.figures.add(f) }
    })
  }
  const sorted = (s: ReadonlySet<string>): string[] => [...s].sort()
  const byKey = <V, W>(m: ReadonlyMap<string, V>, of: (v: V) => W): Record<string, W> => Object.fromEntries([...m].sort(([a], [b]) => (a < b ? -1 : 1)).map(([k, v]) => [k, of(v)]))
  return {
    tables: byKey(tables, t => ({ formulas: sorted(t.formulas), figures: sorted(t.figures) })), formulas: byKey(formulas, sorted),
    starting: byKey(starting, ({ q, figures }) => { const f = q.from as Extract<Quantity['from'], { is: 'assumed' }>; return { value: q.value, unit: unitOf(q), what: f.what, why: f.why, figures: sorted(figures) } }),
  }
}

// One figure and the step that made it, as plain data: what `explain --json` prints and `explain` lays out.
import { valueIds, workNames } from '../../books/names.ts'
import { placed, type Finding } from '../../findings/finding.ts'
import type { Job } from '../../job/job.ts'
import { exactly, inputsOf, walk, type Quantity } from '../../units/quantity.ts'
import type { Figures } from './figures.ts'
import type { NamedTold, OriginTold, StepTold } from './told-output.ts'
import { stepOf, printed } from '../to-json.ts'

/** The unit as people read it; a count has none. */
export const unitOf = (q: Quantity): string => q.unit === 'each' ? '' : q.from.is === 'assumed' && q.from.per !== undefined ? `h/${q.from.per}` : q.unit

function origin(q: Quantity, job: Job): OriginTold {
  const { from } = q
  switch (from.is) {
    case 'given': return {
      is: 'given', at: from.at, file: job.file, line: placed({ path: from.at } as Finding, job.places).line,
      ...(from.as === undefined ? {} : { as: from.as }), ...(job.about.includes(from.at) ? { about: true } : {}),
    }
    case 'row': {
      const by = from.pickedBy
      return {
        is: 'row', row: from.at, source: from.source, ...(from.table === undefined ? {} : { table: from.table }), ...(from.obtained === undefined ? {} : { obtained: from.obtained }),
        ...(by ? { pickedBy: { value: by.value, unit: unitOf(by), ...(by.from.is === 'given' && by.from.as !== undefined ? { as: by.from.as } : {}) } } : {}),
      }
    }
    case 'assumed': {
      const work = from.id.startsWith('rate.') ? from.id.slice('rate.'.length) : undefined
      const replacedBy = work !== undefined && workNames.includes(work) ? `rates, work ${work}` : valueIds.includes(from.id) ? `values, id ${from.id}` : undefined
      return { is: 'assumed', id: from.id, what: from.what, why: from.why, ...(replacedBy === undefined ? {} : { replacedBy }) }
    }
    case 'worked': return { is: 'worked', formula: { id: from.by.id, says: from.by.says, symbols: from.by.symbols, source: from.by.source } }
  }
}

const ROUNDS: Readonly<Record<string, readonly [whole: string, step: string]>> = { up: ['up to a whole', 'up to the next'], down: ['down to a whole', 'down to'], halfUp: ['half up to a whole', 'half up to'] }

/** Each rounding in the symbols of a formula, and which way it goes. */
const roundingsIn = (symbols: string): string[] => [...new Set([...symbols.matchAll(/\b(up|down|halfUp)\(/g)].map(m => {
  let deep = 1, at = m.index + m[0].length, comma = -1
  for (; deep > 0; at++) { const c = symbols[at]; if (c === '(') deep++; else if (c === ')') deep--; else if (c === ',' && deep === 1) comma = at }
  const [whole, step] = ROUNDS[m[1]!]!
  return comma < 0 ? whole : `${step} ${symbols.slice(comma + 1, at - 1).trim()}`
}))]

/** What was made from each figure, straight. */
const madeFrom = new WeakMap<Figures, Map<Quantity, Quantity[]>>()
function above(figs: Figures): Map<Quantity, Quantity[]> {
  let by = madeFrom.get(figs)
  if (by !== undefined) return by
  madeFrom.set(figs, by = new Map<Quantity, Quantity[]>())
  walk(figs.all.values(), other => { for (const i of Object.values(inputsOf(other))) { const list = by.get(i); if (list) list.push(other); else by.set(i, [other]) } })
  return by
}

/** The figures of the output that were made from this one, through whatever stands between. */
function usedBy(figs: Figures, q: Quantity): NamedTold[] {
  const found: NamedTold[] = [], seen = new Set<Quantity>([q]), queue = [q]
  for (let next = queue.shift(); next; next = queue.shift()) for (const other of above(figs).get(next) ?? []) {
    if (seen.has(other)) continue
    seen.add(other)
    const name = figs.names.get(other)
    if (name === undefined) queue.push(other); else found.push({ path: name, value: other.value, unit: unitOf(other) })
  }
  return found
}

/** What a figure is printed as in the output: undefined for what stands there as it is. */
function outputOf({ all }: Figures, path: string, q: Quantity): { readonly printed: number; readonly roundedTo?: number } | undefined {
  if (!all.has(path) || q.from.is === 'assumed') return undefined
  const name = path.startsWith('labor.byPhase.') ? 'personHours' : path.slice(path.lastIndexOf('.') + 1), value = printed(name, q.value)
  return { printed: value, ...(Math.abs(value - q.value) < 1e-9 ? {} : { roundedTo: stepOf(name) }) }
}

/** Digits that six are in print; no number has more than seventeen. */
const SIX = exactly(6, 'each', 'significant digits of a printed input').value, MOST = exactly(17, 'each', 'digits that tell any two numbers apart').value

/** A number to so many significant digits; a whole one in full. */
export const toDigits = (x: number, digits: number): number => (Number.isInteger(x) ? x : Number(x.toPrecision(digits)))

/** With six digits a rounding may fall on the other side: then as many more as the step needs. */
function digitsOf(q: Quantity): number {
  if (q.from.is !== 'worked' || roundingsIn(q.from.by.symbols).length === 0) return SIX
  const { by, inputs } = q.from
  for (let digits = SIX; digits < MOST; digits++) if (by.fn(Object.fromEntries(Object.entries(inputs).map(([name, i]) => [name, toDigits(i.value, digits)]))) === q.value) return digits
  return MOST
}

function linesOf(q: Quantity, job: Job): { readonly lines?: readonly number[] } {
  if (q.from.is !== 'worked') return {}
  const lines = new Set(Object.values(q.from.inputs).flatMap(i => (i.from.is === 'given' ? [placed({ path: i.from.at } as Finding, job.places).line] : [])))
  return lines.size === 0 ? {} : { lines: [...lines] }
}

/** One step: the figure at a path, and what made it. @param whole with what it rests on and what uses it */
function step(figs: Figures, job: Job, path: string, q: Quantity, whole: boolean): StepTold {
  const told = origin(q, job), out = outputOf(figs, path, q), assumptions: Quantity[] = []
  if (whole) walk([q], i => { if (i.from.is === 'assumed' && i !== q) assumptions.push(i) })
  return {
    path, value: q.value, unit: unitOf(q), ...out, ...told, digits: digitsOf(q),
    roundings: [...(q.from.is !== 'worked' ? [] : q.from.by.rounds === undefined ? roundingsIn(q.from.by.symbols) : [q.from.by.rounds]), ...(out?.roundedTo === undefined ? [] : [`on the way out half up to ${out.roundedTo}`])],
    inputs: Object.entries(inputsOf(q)).map(([name, i]) => ({ name, path: figs.names.get(i) ?? `${path}.${name}`, value: i.value, unit: unitOf(i), ...origin(i, job), ...linesOf(i, job) })),
    assumptions: [...new Map(assumptions.map(a => [(a.from as { id: string }).id, a]))].map(([id, a]) => ({ path: id, value: a.value, unit: unitOf(a), why: (a.from as { why: string }).why })),
    usedBy: whole ? usedBy(figs, q) : [],
  }
}

/** The step of one figure; with `deep` every step below it too, each once, from the figure down. */
export function steps(figs: Figures, job: Job, path: string, q: Quantity, deep: boolean): StepTold[] {
  const out: StepTold[] = [], seen = new Set<Quantity>()
  const visit = (at: string, figure: Quantity): void => {
    if (seen.has(figure)) return
    seen.add(figure)
    out.push(step(figs, job, at, figure, out.length === 0))
    if (deep) for (const [name, i] of Object.entries(inputsOf(figure))) if (i.from.is === 'worked' || i.from.is === 'row' && i.from.pickedBy) visit(figs.names.get(i) ?? `${at}.${name}`, i)
  }
  visit(path, q)
  return out
}

/** What can be asked: each figure with its value. */
export const listed = ({ all }: Figures, paths: Iterable<string> = all.keys()): NamedTold[] => [...paths].map(path => { const q = all.get(path)!; return { path, value: q.value, unit: unitOf(q) } })

// How a figure came about: a walk over its links, one level deep.
import type { Estimate } from '../estimate/estimate.ts'
import { printed } from '../estimate/to-json.ts'
import type { Job } from '../job/job.ts'
import { nearest } from '../findings/suggest.ts'
import { printable } from '../findings/printable.ts'
import { inputsOf, isQuantity, walk, type Quantity } from '../units/quantity.ts'

export type Told = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly candidates: readonly string[] }

/** Every figure of the estimate by its path: `list.id.name` or `object.name`. */
export function figures(made: Estimate): Map<string, Quantity> {
  const by = new Map<string, Quantity>()
  const visit = (value: unknown, path: string): void => {
    if (isQuantity(value)) by.set(path, value)
    else if (Array.isArray(value)) value.forEach((v, i) => {
      const named = typeof v === 'object' && v !== null ? (v as { id?: unknown; item?: unknown }).id ?? (v as { item?: unknown }).item : undefined
      visit(v, `${path}.${typeof named === 'string' ? named : i + 1}`)
    })
    else if (typeof value === 'object' && value !== null) for (const [k, v] of Object.entries(value)) visit(v, path === '' ? k : `${path}.${k}`)
  }
  const { gates: _, ...out } = made.out
  visit(out, '')
  for (const q of made.assumed) if (q.from.is === 'assumed') by.set(q.from.id, q)
  // What the company file says in place of a starting value goes by the same name.
  walk([...by.values()], q => {
    const own = q.from.is === 'row' ? /: (rates|values), (.+)$/.exec(q.from.at) : null
    if (own) by.set(own[1] === 'rates' ? `rate.${own[2]}` : own[2]!, q)
  })
  return by
}

/** What can be asked, with its value: the figures first, then the starting values and rates. */
export function listFigures(made: Estimate): string {
  const all = [...figures(made)], wide = Math.max(...all.map(([name]) => name.length)) + 2
  return `${all.map(([name, q]) => printable(`${name.padEnd(wide)}${shown(q)}${q.from.is === 'assumed' ? `   ${q.from.what}` : ''}`)).join('\n')}\n`
}

/** An input's path is its figure's path and its name. */
function find(all: ReadonlyMap<string, Quantity>, path: string): Quantity | undefined {
  const here = all.get(path)
  if (here) return here
  const cut = path.lastIndexOf('.')
  if (cut < 0) return undefined
  const above = find(all, path.slice(0, cut))
  return above && inputsOf(above)[path.slice(cut + 1)]
}

const digits = (q: Quantity): string => String(Number(q.value.toPrecision(6)))
const unit = (q: Quantity): string => q.unit === 'each' ? '' : q.from.is === 'assumed' && q.from.per !== undefined ? `h/${q.from.per}` : q.unit
/** A word of the file stands for itself: zone 4C is picked as 4C. */
const shown = (q: Quantity): string => (q.from.is === 'given' && q.from.as !== undefined ? q.from.as : `${digits(q)} ${unit(q)}`.trim())

function origin(q: Quantity, lookup: (path: string) => string): string {
  const { from } = q
  switch (from.is) {
    case 'given': return lookup(from.at)
    case 'row': return from.at + (from.pickedBy ? `, picked by ${shown(from.pickedBy)}` : '')
    case 'assumed': return `assumed: ${from.why}`
    case 'worked': {
      const lines = [...new Set(Object.values(from.inputs).flatMap(i => (i.from.is === 'given' ? [lookup(i.from.at)] : [])))]
      return `= ${from.by.says}${lines.length > 0 ? `, ${lines.join(', ')}` : ''}`
    }
  }
}

/** The figures of the output that were made from this one, through whatever stands between. */
function usedBy(all: ReadonlyMap<string, Quantity>, q: Quantity): string[] {
  const names = new Map<Quantity, string>(), above = new Map<Quantity, Quantity[]>()
  for (const [name, other] of all) if (!names.has(other)) names.set(other, name)
  walk(all.values(), other => { for (const i of Object.values(inputsOf(other))) { const list = above.get(i); if (list) list.push(other); else above.set(i, [other]) } })
  const found: string[] = [], seen = new Set<Quantity>([q])
  const queue = [q]
  for (let next = queue.shift(); next; next = queue.shift()) for (const other of above.get(next) ?? []) {
    if (seen.has(other)) continue
    seen.add(other)
    const name = names.get(other)
    if (name === undefined) queue.push(other); else found.push(`${name} ${shown(other)}`)
  }
  return found
}

const NAME = 20, VALUE = 20

/**
 * One figure, one level: formula, inputs with their lines, source, and what uses it.
 * @param lookup where a pointer of the job file stands, as `file:line`
 */
export function explainFigure(made: Estimate, _job: Job, path: string, lookup: (path: string) => string): Told {
  const all = figures(made)
  const q = find(all, path)
  if (!q) {
    const names = [...all.keys()]
    const ending = names.filter(n => n.endsWith(`.${path}`) || n.startsWith(`${path}.`) || n.toLowerCase().includes(path.toLowerCase())), near = nearest(path, names)
    return { ok: false, candidates: ending.length > 0 ? ending.slice(0, 12) : near === undefined ? [] : [near] }
  }
  const { from } = q
  const inputs = Object.entries(inputsOf(q))
  const wide = Math.max(NAME, ...inputs.map(([n]) => n.length + 2)), value = Math.max(VALUE, ...inputs.map(([, i]) => shown(i).length + 2))
  const name = path.slice(path.lastIndexOf('.') + 1), rounded = all.has(path) ? printed(path.startsWith('labor.byPhase.') ? 'personHours' : name, q.value) : q.value
  const exact = Math.abs(rounded - q.value) < 1e-9
  const lines = [`${path} = ${exact ? shown(q) : `${rounded} ${unit(q)}`.trim() + `, from ${digits(q)}`}`]
  if (from.is === 'worked') lines.push(`  = ${from.by.says}`)
  else if (from.is === 'assumed') lines.push(`  ${from.what}`, `  assumed: ${from.why}`)
  else lines.push(`  ${origin(q, lookup)}`)
  for (const [name, i] of inputs) lines.push(`   ${name.padEnd(wide)}${shown(i).padEnd(value)}${origin(i, lookup)}`)
  const used = usedBy(all, q)
  if (used.length > 0) lines.push(`  used by: ${used.slice(0, 6).join(' · ')}${used.length > 6 ? ` · and ${used.length - 6} more` : ''}`)
  if (from.is === 'worked') lines.push(`  [${from.by.id}: ${from.by.source}]`)
  else if (from.is === 'row') lines.push(`  [${from.source}]`)
  return { ok: true, text: `${lines.map(printable).join('\n')}\n` }
}

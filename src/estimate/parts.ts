// The parts of the output, each from what was taken off and what of it stands.
import type { Finding } from '../findings/finding.ts'
import type { Task } from '../scope/kind.ts'
import { sizeOf } from '../scope/size.ts'
import { exactly, total, totalOf, type Quantity } from '../units/quantity.ts'
import type { Product } from '../books/books.ts'
import { averages } from './energy/average.ts'
import { closes, merged, type Step } from './tasks/order.ts'
import type { EstimateOut } from './output.ts'
import type { Standing } from './tasks/standing.ts'
import type { Taken } from './tasks/takeoff.ts'

export const titled = (t: { readonly title: string; readonly count?: number | undefined }): string => (t.count === undefined ? t.title : `${t.title} (${t.count})`)

/** What the office does, in its order. */
export const OFFICE = [
  { id: 'contract', what: 'Contract signed, cancellation notice given, fact sheet of the insulation shown before signing (16 CFR 460.15)' },
  { id: 'permit', what: 'Permit, utility approval or rebate reserved, where they are asked for before the work' },
  { id: 'papers', what: 'Papers that open gates in hand, by trade' },
  { id: 'order', what: 'Material ordered, stock and delivery checked, bags gated against the chart' },
  { id: 'heat-plan', what: 'Day and start set by the heat: early, water, breaks, a partner, the limit at which work stops' },
  { id: 'occupants', what: 'Occupants told: who stays out and how long, lights, heating and cooling off, way to the hatch clear' },
  { id: 'job-cost', what: 'After the work: hours and material against this estimate, certificate and receipt handed over' },
] as const

/** What is stopped, by task; a part of a task that stands otherwise goes by the name of its opening. */
export function stoppedOut({ open, stopped }: Standing): EstimateOut['stopped'] {
  const standing = new Set(open.map(t => t.id))
  return merged(stopped.map(s => (standing.has(s.task.id) ? { ...s.task, id: s.task.closes ?? `${s.task.id}-part` } : s.task))).map(t => {
    const s = stopped.find(x => x.task.id === t.id || x.task.closes === t.id)!
    return { id: t.id, title: titled(t), phase: t.phase, gate: s.gate, why: s.why }
  })
}

export function areaOut(a: Taken['areas'][number], taken: Taken, stands: Standing) {
  const { measure, id } = a
  const buried = stands.open.some(t => t.buries?.includes(id) && t.work !== 'lay-back')
  const lost = measure.filled && !buried
  const stoppedBy = [...new Set(stands.stopped.filter(s => s.task.buries?.includes(id) && s.task.work !== 'lay-back').map(s => s.gate))]
  const avg = averages(measure, taken.openings.filter(o => o.found.item.in === id).flatMap(o => o.measure.paths ?? []))
  const figures = { ...measure.figures, ...(avg ? { uBefore: avg.uBefore, uAfter: avg.uAfter, averageR: avg.averageR } : {}) }
  const shown = Object.fromEntries(Object.entries(figures).filter(([name]) => !lost || !measure.fillFigures.includes(name)))
  const findings: Finding[] = []
  const bare = taken.openings.filter(o => o.found.item.in === id && o.measure.paths?.some(p => p.bareTops))
  if (!lost && avg?.withoutBareTops) {
    const n = bare.flatMap(o => o.measure.paths ?? []).reduce((sum, p) => sum + (p.bareTops?.value ?? 0), 0)
    const cost = avg.withoutBareTops.value - avg.averageR.value
    findings.push({ code: 'bare-box-tops', severity: 'note', path: bare[0]!.found.at, says: `${n} bare box ${n === 1 ? 'top costs' : 'tops cost'} R ${cost.toFixed(1)} of ${avg.withoutBareTops.value.toFixed(1)}`,
      why: 'nothing may lie on the box over a light that is not rated for contact', mend: 'an airtight IC light put in by an electrician gives it back: write treatment: swap' })
  }
  return { findings, out: { ...shown, stoppedBy } }
}

export function eavesOut(taken: Taken, stands: Standing) {
  const sides = taken.areas.flatMap(a => {
    const fitted = stands.open.some(t => t.id === `baffles-${a.id}`)
    return a.measure.eaves.map(e => (fitted ? e : { ...e, baffles: exactly(0, 'each', 'no fill comes here') }))
  })
  const sum = (key: 'bays' | 'ventedBays' | 'baffles') => totalOf('each', sides, s => [String(s.id), s[key] as Quantity])
  const blocks = taken.areas.filter(a => stands.open.some(t => t.id === `baffles-${a.id}`)).map(a => [a.id, a.measure.windBlocks] as const)
  return { bays: sum('bays'), ventedBays: sum('ventedBays'), baffles: sum('baffles'), windBlocks: total('each', blocks), sides }
}

/** @param about pointers of what was written with ~ */
export function sealingOut(opening: Taken['openings'][number], steps: readonly Step[], about: readonly string[]) {
  const { found, measure, leak } = opening
  const mine = (t: Task): boolean => measure.tasks.includes(t)
  const of = steps.filter(s => s.parts.some(mine))
  const hours = Object.fromEntries(of.map(s => [s.id, s.parts.filter(mine).length === s.parts.length ? s.personHours : total('h', s.parts.filter(mine).map(p => p.personHours))]))
  const { item } = found, size = sizeOf(item, key => about.some(a => a === `${found.at}/${key}` || a.startsWith(`${found.at}/${key}/`)))
  const closing = closes(opening, steps)
  return {
    id: found.id, kind: item.kind, area: item.in, where: item.at, count: 'count' in item ? (found as { q(k: string): Quantity }).q('count') : 1, ...(size === undefined ? {} : { size }),
    method: item.decline === 'yes' ? 'kept open by the owner' : String(measure.figures.method), materials: closing ? measure.figures.materials : [],
    ...(leak ? { leakageAreaIn2Before: leak.before, leakageAreaIn2After: closing ? leak.after : leak.before } : {}), personHours: total('h', hours), tasks: of.map(s => s.id),
  }
}

/** Figures after the work only where it is in the plan. */
export function ductOut({ found, measure }: Taken['ducts'][number], steps: readonly Step[]) {
  const mine = (t: Task): boolean => measure.tasks.includes(t)
  const of = steps.filter(s => s.parts.some(mine)), wrapped = of.some(s => s.parts.some(p => mine(p) && p.phase === 'wrap'))
  const hours = Object.fromEntries(of.map(s => [s.id, s.parts.every(mine) ? s.personHours : total('h', s.parts.filter(mine).map(p => p.personHours))]))
  const { method, masticGal, materials, ...figures } = measure.figures, sealed = of.some(s => s.phase === 'ducts')
  return {
    ...figures, method: found.item.decline === 'yes' ? 'left alone by the owner' : method, ...(sealed ? { masticGal } : {}), ...(wrapped ? measure.wrapFigures : {}),
    materials: of.length > 0 ? materials : [], personHours: total('h', hours), tasks: of.map(s => s.id),
  }
}

/** What a step takes, without waste, one line an item. */
export function carried(s: Pick<Step, 'needs'>, productOf: (item: string) => Product): { item: string; quantity: Quantity; unit: string }[] {
  const items = [...new Set(s.needs.map(n => n.item))]
  return items.map(item => {
    const all = s.needs.filter(n => n.item === item).map(n => n.quantity)
    return { item, quantity: all.length === 1 ? all[0]! : total(all[0]!.unit, all), unit: productOf(item).unit }
  })
}

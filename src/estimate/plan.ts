// From a job to the work that stands: taken off, gated, in order, with its days. What it costs comes after.
import type { Books, Product } from '../books/books.ts'
import { ductAllowance } from '../calc/duct.ts'
import { defaultLeak } from '../calc/energy.ts'
import type { JobFile } from '../job/job-file.ts'
import { zoneOf } from '../reference/zones.ts'
import { COVERING, opensHold, type Gate, type Measure, type Task } from '../scope/kind.ts'
import { given, work, type Quantity } from '../units/quantity.ts'
import { bill, type MaterialLine } from './money/bill.ts'
import { withDays, type Days } from './tasks/days.ts'
import { opened, type NamedGate } from './tasks/gates.ts'
import { merged, ordered, type Planned, type Step } from './tasks/order.ts'
import type { Verdict } from './output.ts'
import { price, visitLines, type BilledStep } from './money/price.ts'
import { idle, standing, wanted, type Declined, type Standing } from './tasks/standing.ts'
import { risksOf, type RiskSeen } from './tasks/risks.ts'
import { measuresOf, takeoff, type Taken } from './tasks/takeoff.ts'
import { verdictOf } from './tasks/verdict.ts'
import { visitTasks } from './tasks/visit.ts'

/** What one house needs, before anything is priced. */
export interface Plan {
  readonly data: JobFile
  readonly zone: ReturnType<typeof zoneOf>
  readonly taken: Taken
  readonly measures: readonly Measure[]
  readonly declined: readonly Declined[]
  readonly gates: ReturnType<typeof opened>
  readonly standing: Standing
  readonly verdict: Verdict
  /** The work order. */
  readonly steps: readonly Step[]
  readonly days: Days
  readonly ductTarget: Quantity<'cfm'> | undefined
  /** Dust that may hold asbestos lies open: no fan may run. */
  readonly noFan: boolean
  readonly risks: readonly RiskSeen[]
}

/** Takes a house off and leaves what its gates let stand, in the order that the law and the survey ask for. */
export function plan(data: JobFile, books: Books): Plan {
  const { planned, ...work } = standingWork(data, books)
  return { ...work, steps: ordered(planned, data.areas.map(a => a.id)) }
}

/** The same without its order, which no price depends on. */
export function standingWork(data: JobFile, books: Books): Omit<Plan, 'steps'> & { readonly planned: readonly Planned[] } {
  const zone = zoneOf(data.house, data.target.code)
  const found = takeoff(data, books)
  const measures = measuresOf(found)
  const declined = found.openings.filter(o => o.found.item.decline === 'yes').map((o): Declined => ({ id: o.found.id, area: o.found.item.in, where: o.found.item.at }))
  for (const { found: { id, item }, measure } of found.ducts) if (item.decline === 'yes') declined.push({ id, area: measure.buries, where: item.at ?? `the ducts ${id}` })
  const foundTasks = wanted(tasksOf(found)), planless = foundTasks.every(opensHold)
  // Where an opening stays open nothing is covered: what only shuts the cover is about nothing.
  const aboutNothing = (g: Gate): boolean => (g.state === 'hold' || g.state === 'mend') && (planless || declined.some(d => d.area === g.in) && g.stops.phases.every(p => COVERING.includes(p)))
  const gates = opened(measures.flatMap(m => m.gates ?? []).filter(g => !aboutNothing(g)), data.clearances ?? [], data.job.surveyedOn, books.company.name)

  // Tasks, and what the gates leave of them
  const taken = told(found, gates.gates)
  const needed = (taken === found ? foundTasks : wanted(tasksOf(taken))).filter(t => !opensHold(t) || gates.gates.some(g => g.clearedByTask === t.id && g.open))
  const appliances = data.appliances ?? []
  const untested = appliances.filter(a => gates.gates.some(g => g.open && g.of === a.id && g.clearedByTask === 'test-combustion-in'))
  const ductTarget = (data.tests?.ductTest ?? 'none') === 'none' ? undefined : wantedOfDucts(data, books)
  const noFan = gates.gates.some(g => g.open && g.state === 'stop' && (g.code === 'vermiculite' || g.code === 'suspect-duct-wrap'))
  const listed = !gates.gates.some(g => g.open && g.clearedByTask === 'look-appliances')
  const scope = needed.filter(t => !opensHold(t))
  const all = scope.length === 0 ? [] : [...needed, ...visitTasks({ appliances, untested, listed, scope, tests: { blowerDoor: data.tests?.blowerDoor ?? 'none', ductTest: data.tests?.ductTest ?? 'none' }, noFan, ...(ductTarget ? { ductTarget } : {}), access: data.access ?? {}, ...(data.house.stories === undefined ? {} : { stories: data.house.stories }) }, books)]
  const left = withoutIdleSteps(standing(all, gates.gates, declined), gates.gates)
  const verdict = verdictOf(gates.gates, left, measures.flatMap(m => m.unknowns ?? []))
  const stands = verdict === 'stop' ? nothingStands(left, gates.gates) : left
  const { planned, days } = withDays(merged(stands.open), books)
  return { data, zone, taken, measures, declined, gates, standing: stands, verdict, planned, days, ductTarget, noFan, risks: risksOf(data, measures.flatMap(m => m.unknowns ?? []), books) }
}

/** Advice for a duct test: by the floor, else by the air that is moved. */
function wantedOfDucts({ house: { floorAreaFt2 }, energy }: JobFile, books: Books): Quantity<'cfm'> | undefined {
  if (floorAreaFt2 !== undefined) return work(ductAllowance, { floorFt2: given(floorAreaFt2, 'ft2', '/house/floorAreaFt2'), perHundred: books.start('duct-leakage', 4, 'cfm', 'duct leakage wanted at 25 Pa for 100 ft² of floor', 'IECC R403.3.4 of 2012 to 2021 for new houses (from memory, high); an existing house is bound by none') })
  const fanCfm = energy?.heating?.fanCfm
  return fanCfm === undefined ? undefined : work(defaultLeak, { cfm: given(fanCfm, 'cfm', '/energy/heating/fanCfm'), share: books.start('duct-leakage-fan', 0.1, 'fraction', 'duct leakage wanted at 25 Pa, of the air that is moved', 'programs for existing houses ask for 10 to 15 % (from memory, low)') })
}

/** A product by its name, blown or not. */
export const productOf = (books: Books) => (item: string): Product => books.blown(item) ?? books.item(item)

/** What a price is made of: the work that stands, and what the visit brings with it. */
export interface Billed {
  readonly verdict: Verdict
  readonly site: Pick<JobFile, 'access' | 'choices'>
  readonly steps: readonly BilledStep[]
  readonly disposal: Readonly<Record<string, Quantity<'cents'>>>
  readonly wholeDays: Quantity<'day'>
  /** What adds to the contingency. */
  readonly risks: readonly RiskSeen[]
}

/** The part of a plan that is priced. */
export const billed = ({ data, taken, days, verdict, risks }: Pick<Plan, 'data' | 'taken' | 'days' | 'verdict' | 'risks'>, steps: readonly Planned[]): Billed => ({
  verdict, site: data, steps, wholeDays: days.whole, risks,
  disposal: Object.fromEntries(taken.areas.flatMap(a => (a.measure.otherCents && steps.some(t => t.parts.some(p => p.otherCents && a.measure.tasks.includes(p))) ? [[`disposal-${a.id}`, a.measure.otherCents] as const] : []))),
})

/** What the standing work costs: its bill, and the lines of the price. Under a stop there is the visit's fee alone. */
export function pricedWork({ verdict, site, steps, disposal, wholeDays, risks }: Billed, books: Books) {
  const materials: readonly MaterialLine[] = bill(steps, productOf(books))
  const fee = books.company.visitFeeCents
  if (verdict === 'stop') return { materials, prices: { otherCents: fee, directCents: fee } }
  return { materials, prices: price(materials, steps, { ...disposal, ...visitLines(site, steps, wholeDays, books) }, site, books, risks) }
}

/** What a plan costs. */
export const priced = (planned: Plan, books: Books) => pricedWork(billed(planned, planned.steps), books)

const tasksOf = (taken: Taken): Task[] => measuresOf(taken).flatMap(m => m.tasks)

/** Tasks in the words that the gates ask for, in all that was taken off: a figure finds its own tasks in the plan. */
function told(taken: Taken, gates: readonly NamedGate[]): Taken {
  const live = gates.filter(g => g.open && g.code === 'knob-and-tube'), papers = gates.filter(g => g.clearance && g.clearedByTask !== undefined)
  if (live.length === 0 && papers.length === 0) return taken
  const of = <M extends Measure>(m: M): M => ({ ...m, tasks: m.tasks.map(t => done(beware(t, live), papers)) })
  return { ...taken, areas: taken.areas.map(a => ({ ...a, measure: of(a.measure) })), openings: taken.openings.map(o => ({ ...o, measure: of(o.measure) })), ducts: taken.ducts.map(d => ({ ...d, measure: of(d.measure) })), house: taken.house.map(of) }
}

/** Open wiring that may be live shuts the cover of its area; whoever seals there must not let foam or sealant near it either. */
const beware = (t: Task, live: readonly NamedGate[]): Task => (t.phase === 'seal' && live.some(g => g.stops.places.length === 0 || t.touches === 'house' || g.stops.places.some(p => t.touches.includes(p)))
  ? { ...t, cautions: ['Old open wiring, perhaps live: no foam, no sealant and no hand within 3 in of it; tell the lead.', ...t.cautions] } : t)

/** Others' work that a paper says is done: it stays in the price, and the order says so. */
function done(t: Task, papers: readonly NamedGate[]): Task {
  const paper = t.closes === undefined || !t.ownVisit ? undefined : papers.find(g => g.path === t.from && g.clearedByTask === t.id)?.clearance
  return paper ? { ...t, title: `${t.title}: done ${paper.on}, ${paper.paper}` } : t
}

function withoutIdleSteps(left: Standing, gates: readonly NamedGate[]): Standing {
  const steps = new Set(gates.filter(g => idle(g, left.open)).flatMap(g => g.clearedByTask ?? [])), busy = new Set(gates.filter(g => g.open && !idle(g, left.open)).flatMap(g => g.clearedByTask ?? []))
  return { ...left, open: left.open.filter(t => !opensHold(t) || !steps.has(t.id) || busy.has(t.id)) }
}

/** Under a stop the house has no work at all: what the gates left goes as well. */
function nothingStands(left: Standing, gates: readonly NamedGate[]): Standing {
  const gate = gates.find(g => g.open && g.state === 'stop')?.id ?? left.stopped[0]!.gate
  return { ...left, open: [], stopped: [...left.stopped, ...left.open.map(task => ({ task, gate, why: 'nothing may start in this house' }))] }
}

// One house, from takeoff to price. Read this file to know the way through the program.
import type { Books, Product } from '../books/books.ts'
import { byText, type Finding } from '../findings/finding.ts'
import type { Job } from '../job/job.ts'
import { walk, isQuantity, given, total, work, exactly, type Quantity } from '../units/quantity.ts'
import { ductAllowance } from '../calc/duct.ts'
import { difference } from '../calc/price.ts'
import { COVERING, opensHold, type Gate, type Phase, type Task } from '../scope/kind.ts'
import { zoneOf } from '../reference/zones.ts'
import { outOfBand } from './bands.ts'
import { bill, type MaterialLine } from './bill.ts'
import { withDays } from './days.ts'
import { opened, type NamedGate } from './gates.ts'
import { excluded, onlyTheVisit } from './leaves-out.ts'
import { merged, ordered, type Step } from './order.ts'
import { ESTIMATE_FORMAT, type EstimateOut } from './output.ts'
import { airLeakage, areaOut, ductOut, eavesOut, OFFICE, sealingOut, stoppedOut, titled } from './parts.ts'
import { driveMissing, price, soldAlone, visitLines } from './price.ts'
import { idle, standing, wanted, type Declined, type Standing } from './standing.ts'
import { takeoff, type Taken } from './takeoff.ts'
import { verdictOf } from './verdict.ts'
import { visitTasks } from './visit.ts'

/** The output with every figure still linked to what made it. */
export type Linked<T> = T extends number ? number | Quantity : T extends readonly (infer V)[] ? readonly Linked<V>[] : T extends object ? { readonly [K in keyof T]: Linked<T[K]> } : T

export interface Estimate {
  readonly out: Linked<Omit<EstimateOut, 'findings' | 'assumptions' | 'gates'>> & { readonly gates: readonly NamedGate[] }
  readonly findings: readonly Finding[]
  readonly assumed: readonly Quantity[]
  /** The plan as it stands, for those who ask what closes and what buries. */
  readonly steps: readonly Step[]
  readonly standing: Standing
  readonly books: Books
  /** The highest blown top of the house, for what is built up to it. */
  readonly topOfFillInitialIn: Quantity<'in'>
}

export function estimate(job: Job, books: Books, again = true): Estimate {
  const { data } = job
  const zone = zoneOf(data.house, data.target.code)
  const taken = takeoff(data, books)
  const measures = [...taken.areas.map(a => a.measure), ...taken.openings.map(o => o.measure), ...taken.ducts.map(d => d.measure), ...taken.house]
  const declined = taken.openings.filter(o => o.found.item.decline === 'yes').map((o): Declined => ({ id: o.found.id, area: o.found.item.in, where: o.found.item.at }))
  for (const { found: { id, item }, measure } of taken.ducts) if (item.decline === 'yes') declined.push({ id, area: measure.buries, where: item.at ?? `the ducts ${id}` })
  const planless = wanted(measures.flatMap(m => m.tasks)).every(opensHold)
  // Where an opening stays open nothing is covered: what only shuts the cover is about nothing.
  const aboutNothing = (g: Gate): boolean => (g.state === 'hold' || g.state === 'mend') && (planless || declined.some(d => d.area === g.in) && g.stops.phases.every(p => COVERING.includes(p)))
  const gates = opened(measures.flatMap(m => m.gates ?? []).filter(g => !aboutNothing(g)), data.clearances ?? [], data.job.surveyedOn, books.company.name)

  // Tasks, and what the gates leave of them
  const needed = wanted(measures.flatMap(m => m.tasks.map(t => done(beware(t, gates.gates), gates.gates)))).filter(t => !opensHold(t) || gates.gates.some(g => g.clearedByTask === t.id && g.open))
  const appliances = data.appliances ?? []
  const untested = appliances.filter(a => gates.gates.some(g => g.open && g.of === a.id && g.clearedByTask === 'test-combustion-in'))
  const ductTarget = data.house.floorAreaFt2 === undefined || (data.tests?.ductTest ?? 'none') === 'none' ? undefined : work(ductAllowance, { floorFt2: given(data.house.floorAreaFt2, 'ft2', '/house/floorAreaFt2'), perHundred: books.start('duct-leakage', 4, 'cfm', 'duct leakage wanted at 25 Pa for 100 ft² of floor', 'IECC R403.3.4 of 2012 to 2021 for new houses (from memory, high); an existing house is bound by none') })
  const noFan = gates.gates.some(g => g.open && g.state === 'stop' && (g.code === 'vermiculite' || g.code === 'suspect-duct-wrap'))
  const listed = !gates.gates.some(g => g.open && g.clearedByTask === 'look-appliances')
  const scope = needed.filter(t => !opensHold(t))
  const all = scope.length === 0 ? [] : [...needed, ...visitTasks({ appliances, untested, listed, scope, tests: { blowerDoor: data.tests?.blowerDoor ?? 'none', ductTest: data.tests?.ductTest ?? 'none' }, noFan, ...(ductTarget ? { ductTarget } : {}), access: data.access ?? {}, ...(data.house.stories === undefined ? {} : { stories: data.house.stories }) }, books)]
  const left = withoutIdleSteps(standing(all, gates.gates, declined), gates.gates)
  const verdict = verdictOf(gates.gates, left, measures.flatMap(m => m.unknowns ?? []))
  const stands = verdict === 'stop' ? nothingStands(left, gates.gates) : left
  const { planned, days } = withDays(merged(stands.open), books)
  const areaIds = data.areas.map(a => a.id)
  const steps = ordered(planned, areaIds)

  // Materials and price
  const materials = bill(steps, productFinder(books))
  const noTests = noFan && [data.tests?.blowerDoor, data.tests?.ductTest].some(t => t !== undefined && t !== 'none') ? ['Not in this price: the tests that were asked for; no fan runs while dust that may hold asbestos lies open.'] : []
  const excludes = verdict === 'stop' ? onlyTheVisit(gates.gates) : [...excluded(gates.gates, stands, measures.flatMap(m => m.unknowns ?? []), declined, data.areas.length), ...noTests]
  const disposal = taken.areas.flatMap(a => (a.measure.otherCents && steps.some(t => t.parts.some(p => p.otherCents && a.measure.tasks.includes(p))) ? [[`disposal-${a.id}`, a.measure.otherCents] as const] : []))
  const fee = books.company.visitFeeCents
  const prices = verdict === 'stop' ? { otherCents: fee, directCents: fee } : price(materials, steps, { ...Object.fromEntries(disposal), ...visitLines(data, steps, days.whole, books) }, books)
  const byPhase = hoursByPhase(steps)

  const areas = taken.areas.map(a => areaOut(a, taken, stands))
  const findings = [...job.findings, ...taken.findings, ...gates.findings, ...areas.flatMap(a => a.findings), ...shortLastDay(days.exact), ...driveMissing(data, books), ...(taken.findings.some(f => f.severity === 'error') ? [] : outOfBand({ areaFt2: blownFt2(taken, stands), price: prices, byPhase, ...beside(steps, materials, books) }))]
  const out: Estimate['out'] = {
    format: ESTIMATE_FORMAT,
    job: { id: data.job.id, title: data.job.title, status: data.job.status, surveyedOn: data.job.surveyedOn, ...(data.job.customer === undefined ? {} : { customer: data.job.customer }) },
    basis: {
      ...books.basis, ...(data.target.code === undefined ? {} : { codeEdition: data.target.code }), ...(zone === undefined ? {} : { climateZone: zone.zone, ...(zone.map === undefined ? {} : { climateZoneMap: zone.map.name }) }),
      state: data.house.state, ...(data.house.county === undefined ? {} : { county: data.house.county }),
    },
    verdict,
    gates: gates.gates,
    stopped: stoppedOut(stands),
    areas: areas.map(a => a.out) as never,
    ...(data.eaves === undefined ? {} : { eaves: eavesOut(taken, stands) as never }),
    ...(taken.vents && Object.keys(taken.vents.figures).length > 0 ? { atticVents: taken.vents.figures as never } : {}),
    offers: (taken.vents?.offers ?? []).map(o => ({ id: o.id, what: o.what, priceCents: soldAlone(o.tasks, productFinder(books), books) })),
    sealing: taken.openings.map(o => sealingOut(o, steps)) as never,
    ducts: taken.ducts.map(d => ductOut(d, steps)) as never,
    ...airLeakage(data.tests, ductTarget),
    tasks: steps.map(s => ({
      step: s.step, id: s.id, title: titled(s), phase: s.phase, areas: s.areas, after: s.after.map(e => e.task), because: s.after, role: s.role, personHours: s.personHours,
      cautions: s.cautions, proof: s.proof, clears: gates.gates.filter(g => g.open && g.clearedByTask === s.id).map(g => g.id),
    })),
    office: steps.length === 0 ? [] : OFFICE,
    materials: materials.map(m => ({
      item: m.product.item, name: m.product.name, needed: m.needed, unit: m.product.unit, wastePct: m.product.wastePct, buy: m.buy, buyUnit: m.product.buyUnit, charge: m.product.charge, charged: m.charged,
      unitPriceCents: m.product.unitPriceCents, totalCents: m.totalCents, usedFor: m.usedFor,
    })),
    labor: { personHours: total('h', Object.fromEntries(Object.entries(byPhase))), wageCents: books.company.wageCents, byPhase, crewSize: books.company.crew, days: verdict === 'stop' ? exactly(0, 'day', 'nothing may be done') : days.half },
    price: { ...prices, excludes },
    overrides: data.choices?.marginPct === undefined ? [] : [{ path: '/choices/marginPct', value: data.choices.marginPct, insteadOf: books.companyMarginPct }],
  }
  const tops = taken.areas.map(a => a.measure.topOfFillInitialIn).sort((a, b) => b.value - a.value)
  const made: Estimate = { out, findings, assumed: assumptions(out, [...measures.flatMap(m => m.assumes ?? [])]), steps, standing: stands, books, topOfFillInitialIn: tops[0] ?? exactly(0, 'in', 'no area') }
  return again ? withLighter(made, job, books, taken, gates.gates) : made
}

/** Open wiring that may be live shuts the cover of its area; whoever seals there must not let foam or sealant near it either. */
const beware = (t: Task, gates: readonly NamedGate[]): Task => (t.phase === 'seal' && gates.some(g => g.open && g.code === 'knob-and-tube' && (g.stops.places.length === 0 || t.touches === 'house' || g.stops.places.some(p => t.touches.includes(p))))
  ? { ...t, cautions: ['Old open wiring, perhaps live: no foam, no sealant and no hand within 3 in of it; tell the lead.', ...t.cautions] } : t)

/** Others' work that a paper says is done: it stays in the price, and the order says so. */
function done(t: Task, gates: readonly NamedGate[]): Task {
  const paper = t.closes === undefined || !t.ownVisit ? undefined : gates.find(g => g.path === t.from && g.clearedByTask === t.id)?.clearance
  return paper ? { ...t, title: `${t.title}: done ${paper.on}, ${paper.paper}` } : t
}

function productFinder(books: Books): (item: string) => Product {
  return item => books.blown(item) ?? books.item(item)
}

function hoursByPhase(steps: readonly Step[]): Partial<Record<Phase, Quantity<'h'>>> {
  const by: Partial<Record<Phase, Record<string, Quantity>>> = {}
  for (const s of steps) (by[s.phase] ??= {})[s.id] = s.personHours
  return Object.fromEntries(Object.entries(by).map(([p, lines]) => [p, total('h', lines)]))
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

/** Direct cost of ducts, tests and other trades, which no band holds. */
function beside(steps: readonly Step[], materials: readonly MaterialLine[], books: Books): { besideCents: number; besideMaterialsCents: number } {
  const extra = steps.filter(s => s.phase === 'ducts' || s.phase === 'wrap' || s.role === 'tester'), ids = new Set(extra.map(s => s.id))
  const besideMaterialsCents = materials.filter(m => m.usedFor.every(id => ids.has(id))).reduce((sum, m) => sum + m.totalCents.value, 0)
  return { besideMaterialsCents, besideCents: besideMaterialsCents + extra.reduce((sum, s) => sum + s.personHours.value, 0) * books.company.wageCents.value + steps.reduce((sum, s) => sum + (s.subcontractCents?.value ?? 0), 0) }
}

/** Floor that gets fill. */
const blownFt2 = (taken: Taken, stands: Standing): number => taken.areas.filter(a => stands.open.some(t => t.buries?.includes(a.id))).reduce((sum, a) => sum + (a.measure.figures.netAreaFt2 as Quantity).value, 0)

function shortLastDay(days: Quantity<'day'>): Finding[] {
  const last = days.value - Math.floor(days.value + 1e-9)
  return days.value > 1 && last > 1e-9 && last < 1 / 4
    ? [{ code: 'short-last-day', severity: 'note', path: '/job', says: `the last day holds ${last.toFixed(2)} of a day`, why: 'a started day costs its set-up and travel all the same', mend: 'a third person or a longer day' }] : []
}

/** Every starting value and assumption that a figure of the output leads back to: one entry for each id. */
function assumptions(out: Estimate['out'], extra: readonly Quantity[]): Quantity[] {
  const roots: Quantity[] = [...extra]
  const collect = (v: unknown): void => {
    if (isQuantity(v)) roots.push(v)
    else if (Array.isArray(v)) v.forEach(collect)
    else if (typeof v === 'object' && v !== null) Object.values(v).forEach(collect)
  }
  collect({ ...out, gates: [] })
  const by = new Map<string, Quantity>()
  walk(roots, q => { if (q.from.is === 'assumed' && !by.has(q.from.id)) by.set(q.from.id, q) })
  return [...by].sort(([a], [b]) => byText(a, b)).map(([, q]) => q)
}

/** Where a ceiling is loaded over its limit: the whole house once more with the lightest product that meets R within it. */
function withLighter(made: Estimate, job: Job, books: Books, taken: Taken, gates: readonly NamedGate[]): Estimate {
  const over = taken.areas.filter(a => gates.some(g => g.in === a.id && (g.code === 'ceiling-over-limit' || g.code === 'ceiling-overloaded')))
  if (over.length === 0) return made
  const lighter = new Map(over.flatMap(a => {
    const chart = a.measure.chart, limit = a.measure.figures.ceilingLimitPsf as Quantity<'lb/ft2'> | undefined
    if (!chart || !limit) return []
    const choices = books.blownItems.flatMap(item => {
      const product = books.blown(item)!, answer = product.answer(a.measure.need)
      return answer.is === 'row' && item !== chart.product.item ? [{ item, answer, load: chart.loadFor(answer.row) }] : []
    }).filter(c => c.load.value <= limit.value + 1e-9).sort((x, y) => x.load.value - y.load.value || byText(x.item, y.item))
    const best = choices[0]
    if (!best) return []
    const other = estimate({ ...job, data: { ...job.data, choices: { ...job.data.choices, fill: { ...job.data.choices?.fill, [a.id]: best.item } } } }, books, false)
    const totalCents = other.out.price.totalCents as Quantity<'cents'> | undefined, now = made.out.price.totalCents as Quantity<'cents'> | undefined
    // Stopped by something else, another product opens nothing.
    if (!totalCents || (made.out.areas.find(x => x.id === a.id)?.stoppedBy ?? []).some(id => !id.startsWith('ceiling-over'))) return []
    const filled = made.steps.some(s => s.buries?.includes(a.id))
    return [[a.id, { product: best.item, chartR: best.answer.row.r, interpolated: best.answer.row.interpolated, bags: chart.bagsFor(best.answer.row), ceilingLoadPsf: best.load, totalCents,
      ...(filled && now ? { moreCents: work(difference, { after: totalCents, before: now }) } : {}) }] as const]
  }))
  return { ...made, out: { ...made.out, areas: made.out.areas.map(a => { const l = lighter.get(String(a.id)); return l ? { ...a, lighter: l as never } : a }) } }
}

// One house, from its plan to all that is told about it. Read plan.ts and this file to know the way through the program.
import type { Books } from '../books/books.ts'
import { byText, type Finding } from '../findings/finding.ts'
import type { Job } from '../job/job.ts'
import { walk, isQuantity, total, work, exactly, type Quantity } from '../units/quantity.ts'
import { share } from '../calc/arithmetic.ts'
import { difference } from '../calc/price.ts'
import type { Phase } from '../scope/kind.ts'
import { fanOffer, houseAir, type HouseAir } from './energy/air.ts'
import { outOfBand } from './bands.ts'
import type { MaterialLine } from './money/bill.ts'
import { clausesUnknown } from './money/clauses.ts'
import { carry } from './tasks/carry.ts'
import { bought } from './cheapest.ts'
import { coldNotes } from './tasks/cold-notes.ts'
import { depositOf } from './money/deposit.ts'
import { guarded } from './tasks/guarded.ts'
import type { NamedGate } from './tasks/gates.ts'
import { excluded, onlyTheVisit } from './leaves-out.ts'
import { materialOut, orderNotes } from './money/materials.ts'
import type { Step } from './tasks/order.ts'
import { ESTIMATE_FORMAT, type EstimateOut } from './output.ts'
import { areaOut, carried, ductOut, eavesOut, OFFICE, sealingOut, stoppedOut, titled } from './parts.ts'
import { partPrices } from './money/part-prices.ts'
import { plan, priced, productOf, type Plan } from './plan.ts'
import { revisionsOf } from './revisions.ts'
import { driveMissing, incentivesOver, soldAlone } from './money/price.ts'
import { yearlySavings, type Savings } from './energy/savings.ts'
import type { Standing } from './tasks/standing.ts'
import { stockNotes } from './tasks/stock-note.ts'
import { readingsOf } from './tasks/tests.ts'
import { wholeBagsOf } from './money/whole-bags.ts'
import type { Taken } from './tasks/takeoff.ts'

/** The output with every figure still linked to what made it. */
export type Linked<T> = T extends number ? number | Quantity : T extends readonly (infer V)[] ? readonly Linked<V>[] : T extends object ? { readonly [K in keyof T]: Linked<T[K]> } : T

export interface Estimate {
  readonly out: Linked<Omit<EstimateOut, 'findings' | 'assumptions' | 'gates'>> & { readonly gates: readonly NamedGate[] }
  readonly findings: readonly Finding[]
  readonly assumed: readonly Quantity[]
  /** The plan as it stands, for those who ask what closes and what buries. */
  readonly steps: readonly Step[]
  readonly standing: Standing
  readonly plan: Plan
  /** What is bought and charged, line by line. */
  readonly materials: readonly MaterialLine[]
  readonly books: Books
  /** The highest blown top of the house, for what is built up to it. */
  readonly topOfFillInitialIn: Quantity<'in'>
}

/** Estimates one house. @param again once more with a lighter product where a ceiling is loaded over its limit */
export function estimate(job: Job, shelved: Books, again = true): Estimate {
  const { data, books, assumes } = bought(job.data, shelved)
  const planned = plan(data, books), { taken, measures, gates, standing: stands, verdict, steps, days, zone, ductTarget } = planned
  const { materials, prices } = priced(planned, books), byPhase = hoursByPhase(steps)
  const noTests = planned.noFan && [data.tests?.blowerDoor, data.tests?.ductTest].some(t => t !== undefined && t !== 'none') ? ['Not in this price: the tests that were asked for; no fan runs while dust that may hold asbestos lies open.'] : []
  const excludes = verdict === 'stop' ? onlyTheVisit(gates.gates) : [...excluded(gates.gates, stands, measures.flatMap(m => m.unknowns ?? []), planned.declined, data.areas.length), ...noTests]

  const areas = taken.areas.map(a => areaOut(a, taken, stands))
  const whole = wholeBagsOf(areas.flatMap(({ out: a }) => { const { id, product, bags } = a as { id?: string; product?: string; bags?: Quantity<'bag'> }; return id !== undefined && product !== undefined && bags ? [{ id, product, bags }] : [] }))
  // Air, energy and health
  const refused: Finding[] = []
  const air: Partial<HouseAir> = guarded('/tests', refused, () => houseAir(data, taken, steps, ductTarget, books)) ?? {}
  const uas = areas.flatMap(({ out }, i) => { const { uBefore, uAfter, netAreaFt2 } = out as unknown as Record<string, Quantity | undefined>; return uBefore && uAfter && netAreaFt2 ? [{ id: taken.areas[i]!.id, areaFt2: netAreaFt2 as Quantity<'ft2'>, uBefore: uBefore as Quantity<'U'>, uAfter: uAfter as Quantity<'U'> }] : [] })
  const totalCents = (prices as { totalCents?: Quantity<'cents'> }).totalCents
  const revisions = data.quote && revisionsOf(data.quote, totalCents)
  const deposit = totalCents && depositOf(totalCents, data.house.state, books)
  const year: Savings = (verdict === 'stop' ? undefined : guarded('/energy', refused, () => yearlySavings(data, { taken, steps, uas, ...(air.naturalCut ? { naturalCut: air.naturalCut } : {}), ...(totalCents ? { totalCents, prices: partPrices(steps, materials, totalCents, books) } : { prices: {} }) }, books))) ?? {}
  const findings = [...job.findings, ...taken.findings, ...gates.findings, ...refused, ...air.findings ?? [], ...coldNotes(taken, zone?.zone, books), ...stockNotes(data, taken, books), ...areas.flatMap(a => a.findings), ...shortLastDay(days.exact), ...retestOnce(steps, days.whole, books), ...orderNotes(materials), ...deposit?.findings ?? [], ...revisions?.findings ?? [], ...driveMissing(data, books), ...clausesUnknown(data, materials, books), ...incentivesOver(data, totalCents), ...(taken.findings.some(f => f.severity === 'error') ? [] : outOfBand({ areaFt2: blownFt2(taken, stands), price: prices, byPhase, ...beside(steps, materials, books) }))]
  const out: Estimate['out'] = {
    format: ESTIMATE_FORMAT,
    job: { id: data.job.id, title: data.job.title, status: data.job.status, surveyedOn: data.job.surveyedOn, ...(data.job.customer === undefined ? {} : { customer: data.job.customer }), ...(data.job.notes === undefined ? {} : { notes: data.job.notes }) },
    basis: {
      ...books.basis, ...(data.target.code === undefined ? {} : { codeEdition: data.target.code }), ...(zone === undefined ? {} : { climateZone: zone.zone, ...(zone.map === undefined ? {} : { climateZoneMap: zone.map.name }) }),
      state: data.house.state, ...(data.house.county === undefined ? {} : { county: data.house.county }),
    },
    ...(revisions && revisions.out.length > 0 ? { revisions: revisions.out as never } : {}),
    verdict,
    gates: gates.gates,
    stopped: stoppedOut(stands),
    areas: areas.map(({ out: a }) => { const n = whole.get(String((a as { id?: string }).id)); return n ? { ...a, wholeBags: n, ...paceOf(a) } : a }) as never,
    ...(data.eaves === undefined ? {} : { eaves: eavesOut(taken, stands) as never }),
    ...(taken.vents && Object.keys(taken.vents.figures).length > 0 ? { atticVents: taken.vents.figures as never } : {}),
    offers: [...taken.vents?.offers ?? [], ...(air.fanCfm && verdict !== 'stop' ? [fanOffer(air.fanCfm, books)] : [])].map(o => ({ id: o.id, what: o.what, priceCents: soldAlone(o.tasks, productOf(books), books) })),
    sealing: taken.openings.map(o => sealingOut(o, steps, job.about)) as never,
    ducts: taken.ducts.map(d => ductOut(d, steps)) as never,
    ...({ ...(air.figures ? { airLeakage: air.figures } : {}), ...(air.ventilation ? { ventilation: air.ventilation } : {}), ...(year.ductDelivery ? { ductDelivery: year.ductDelivery } : {}), ...(year.savings ? { savings: year.savings } : {}), ...(year.moisture ? { moisture: year.moisture } : {}) } as object),
    tasks: steps.map(s => ({
      step: s.step, id: s.id, title: titled(s), phase: s.phase, areas: s.areas, after: s.after.map(e => e.task), because: s.after, role: s.role, personHours: s.personHours,
      cautions: s.cautions, keepOff: s.keepOff ?? [], materials: carried(s, productOf(books)), proof: s.proof, clears: gates.gates.filter(g => g.open && g.clearedByTask === s.id).map(g => g.id),
    })),
    tests: readingsOf(data, steps, { ductTarget, noFan: planned.noFan }, books) as never,
    office: steps.length === 0 ? [] : OFFICE,
    materials: materials.map(m => materialOut(m, books)),
    carry: carry(steps, productOf(books)) as never,
    labor: { personHours: total('h', Object.fromEntries(Object.entries(byPhase))), wageCents: books.company.wageCents, byPhase, crewSize: books.company.crew, days: verdict === 'stop' ? exactly(0, 'day', 'nothing may be done') : days.half },
    price: { ...prices, ...(deposit ? { depositCents: deposit.depositCents } : {}), excludes },
    overrides: books.overrides(),
  }
  const tops = taken.areas.map(a => a.measure.topOfFillInitialIn).sort((a, b) => b.value - a.value)
  const made: Estimate = { out, findings, assumed: assumptions(out, [...measures.flatMap(m => m.assumes ?? []), ...assumes]), steps, standing: stands, plan: planned, materials, books, topOfFillInitialIn: tops[0] ?? exactly(0, 'in', 'no area') }
  return again ? withLighter(made, job, shelved, taken, gates.gates) : made
}

/** How much floor a bag fills, where it lies open. */
function paceOf(area: object): { bagFloorFt2?: Quantity<'ft2/bag'> } {
  const { bags, netAreaFt2, initialDepthIn } = area as { bags?: Quantity<'bag'>; netAreaFt2?: Quantity<'ft2'>; initialDepthIn?: Quantity<'in'> }
  return bags && netAreaFt2 && initialDepthIn ? { bagFloorFt2: { ...work(share, { part: netAreaFt2, whole: bags }), unit: 'ft2/bag' } } : {}
}

function hoursByPhase(steps: readonly Step[]): Partial<Record<Phase, Quantity<'h'>>> {
  const by: Partial<Record<Phase, Record<string, Quantity>>> = {}
  for (const s of steps) (by[s.phase] ??= {})[s.id] = s.personHours
  return Object.fromEntries(Object.entries(by).map(([p, lines]) => [p, total('h', lines)]))
}

/** Direct cost of ducts, tests and other trades, which no band holds. */
function beside(steps: readonly Step[], materials: readonly MaterialLine[], books: Books): { besideCents: number; besideMaterialsCents: number } {
  const extra = steps.filter(s => s.phase === 'ducts' || s.phase === 'wrap' || s.role === 'tester'), ids = new Set(extra.map(s => s.id))
  const besideMaterialsCents = materials.filter(m => m.usedFor.every(id => ids.has(id))).reduce((sum, m) => sum + m.totalCents.value, 0)
  return { besideMaterialsCents, besideCents: besideMaterialsCents + extra.reduce((sum, s) => sum + s.personHours.value, 0) * books.company.wageCents.value + steps.reduce((sum, s) => sum + (s.subcontractCents?.value ?? 0), 0) }
}

/** Floor that gets fill. */
const blownFt2 = (taken: Taken, stands: Standing): number => taken.areas.filter(a => stands.open.some(t => t.buries?.includes(a.id))).reduce((sum, a) => sum + (a.measure.figures.netAreaFt2 as Quantity).value, 0)

/** No house is left overnight tightened and untested: the price holds one test on the way unless the company wants one each evening. */
function retestOnce(steps: readonly Step[], days: Quantity<'day'>, books: Books): Finding[] {
  return books.company.retestEachDay || days.value < 2 || !steps.some(s => s.id === 'test-combustion-interim') ? []
    : [{ code: 'retest-each-day', severity: 'note', path: '/appliances', says: `${days.value} days of work, and one combustion test on the way in the price`, why: 'no house is left overnight tightened and untested', mend: 'write retestEachDay: yes in the company file, or plan the tightening into one day' }]
}

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

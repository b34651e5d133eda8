// The same house, done otherwise: up a ladder of goals, with each product, and with what may be chosen. Every row is a whole estimate: nothing is scaled from another.
// No row leaves out what would lie buried, and none leaves out safety: an opening, a baffle, a dam, a duct under the fill and a test are in all of them or in none.
import type { Books } from '../../books/books.ts'
import type { Job } from '../../job/job.ts'
import type { JobFile } from '../../job/job-file.ts'
import { targets as editionTargets } from '../../reference/targets.ts'
import { hasCeilingGoal } from '../../scope/index.ts'
import { estimate, type Estimate } from '../estimate.ts'
import type { EstimateOut } from '../output.ts'
import { OPTIONS_FORMAT, type OptionOut, type OptionsOut, type OverOut } from './options-output.ts'
import { estimateJson, printed } from '../to-json.ts'

export interface Asked {
  /** Goals of the ladder [R]; without them those that code editions have asked for. */
  readonly targets?: readonly number[]
  /** Blown products by their item; without them all of the price book. */
  readonly products?: readonly string[]
}

interface Way { readonly id: string; readonly what: string; readonly targetR?: number; readonly product?: string; readonly asWritten?: true; readonly data: JobFile }

/** Goals that an edition of the IECC has asked of a ceiling. */
const codeTargets = (): number[] => [...new Set(editionTargets.rows.flatMap(t => Object.values(t.r)))].sort((a, b) => a - b)

const withTarget = (data: JobFile, targetR: number): JobFile => ({ ...data, areas: data.areas.map(a => (hasCeilingGoal(a) ? { ...a, rValue: targetR } : a)) })
const withProduct = (data: JobFile, item: string): JobFile => ({ ...data, choices: { ...data.choices, fill: Object.fromEntries(data.areas.filter(hasCeilingGoal).map(a => [a.id, item])) } })

/** All the rest with nothing laid over it: sealing, ducts, tests; what it costs to do the part that can't be done later. Only where every ceiling is an open floor. */
const uncovered = (data: JobFile): JobFile | undefined => (data.areas.some(a => hasCeilingGoal(a)) && data.areas.every(a => !hasCeilingGoal(a) || a.kind === 'open-floor')
  ? { ...data, areas: data.areas.map(a => (a.kind === 'open-floor' ? { ...a, cover: 'none' as const } : a)) } : undefined)

/** What may be left out or done otherwise without burying anything. */
function choices(data: JobFile, now: EstimateOut): Way[] {
  const ways: Way[] = [], hung = (data.ducts ?? []).filter(d => d.position === 'hung' && d.decline !== 'yes' && d.wrap !== 'no')
  if (hung.length > 0 && now.ducts.some(d => hung.some(h => h.id === d.id) && d.wrapFt2 !== undefined)) ways.push({ id: 'hung-ducts-unwrapped', what: 'hung ducts sealed, not wrapped', data: { ...data, ducts: data.ducts!.map(d => (hung.includes(d) ? { ...d, wrap: 'no' as const } : d)) } })
  const flex = (data.ducts ?? []).filter(d => d.shape === 'round' && d.material === 'flex' && d.decline !== 'yes' && d.replace !== 'yes' && now.ducts.some(x => x.id === d.id && x.wrapFt2 !== undefined))
  if (flex.length > 0) ways.push({ id: 'flex-replaced', what: 'new insulated flex in place of wrapped', data: { ...data, ducts: data.ducts!.map(d => (flex.includes(d) ? { ...d, replace: 'yes' as const } : d)) } })
  const boxed = now.tasks.some(t => t.id.startsWith('box-lights'))
  if (boxed) ways.push({ id: 'lights-swapped', what: 'airtight lights in place of boxes', data: { ...data, openings: data.openings.map(o => (o.kind === 'recessed-light' ? { ...o, treatment: 'swap' as const } : o)) } })
  return ways
}

/** Mean settled depth of what is put in, by floor [in]. */
function depthOf(e: EstimateOut): number {
  const filled = e.areas.filter(a => a.stoppedBy.length === 0 && a.settledDepthIn !== undefined), floor = e.areas.reduce((sum, a) => sum + (a.targetR === undefined ? 0 : a.netAreaFt2), 0)
  return floor === 0 ? 0 : filled.reduce((sum, a) => sum + a.settledDepthIn! * a.netAreaFt2, 0) / floor
}

/** Mean of a figure over the floor of the areas that have it: R through U, never R by itself. */
function averageR(e: EstimateOut): number | undefined {
  const there = e.areas.filter(a => a.averageR !== undefined && a.averageR > 0), floor = there.reduce((sum, a) => sum + a.netAreaFt2, 0)
  return there.length === 0 || there.length < e.areas.filter(a => a.targetR !== undefined && a.stoppedBy.length === 0).length ? undefined : printed('averageR', floor / there.reduce((sum, a) => sum + a.netAreaFt2 / a.averageR!, 0))
}

const MOST_YEARS = 'payback-most'

function payback(cents: number, yearCents: number | undefined, most: number): number | undefined {
  if (yearCents === undefined || yearCents <= 0 || cents <= 0) return undefined
  const years = cents / yearCents
  return years > most ? undefined : printed('paybackYears', years)
}

const named = <K extends string>(key: K, value: number | undefined): { readonly [_ in K]?: number } => (value === undefined ? {} : { [key]: value }) as { readonly [_ in K]?: number }

/** Where the minimum charge sets the price, more work costs the owner nothing more: a step is judged without it. */
const beforeFloor = ({ price: p }: EstimateOut): number => (p.totalCents ?? 0) - (p.customerTaxCents ?? 0) - (p.roundingCents ?? 0) - (p.minimumAddedCents ?? 0)

/** What a row costs and brings beyond another one. */
function over(e: EstimateOut, before: { readonly id: string; readonly e: EstimateOut } | undefined, most: number): OverOut | undefined {
  const now = e.price.totalCents, then = before ? before.e.price.totalCents : 0
  if (now === undefined || then === undefined) return undefined
  const moreCents = now - then, moreBeforeFloorCents = beforeFloor(e) - (before ? beforeFloor(before.e) : 0), less = (key: 'billCentsLow' | 'billCentsExpected' | 'billCentsHigh'): number | undefined => { const at = e.savings?.[key]; return at === undefined ? undefined : at - (before?.e.savings?.[key] ?? 0) }
  // Ends of one range stand against the same ends of the other: what makes a house save little makes it so in both.
  const low = less('billCentsLow'), expected = less('billCentsExpected'), high = less('billCentsHigh')
  const moreInches = printed('depthIn', depthOf(e) - (before ? depthOf(before.e) : 0))
  return {
    ...(before ? { step: before.id } : {}), moreCents, moreBeforeFloorCents, moreHours: printed('personHours', e.labor.personHours - (before?.e.labor.personHours ?? 0)), moreBags: printed('bags', bagsOf(e) - (before ? bagsOf(before.e) : 0)), moreInches,
    ...named('moreBillCentsLow', low), ...named('moreBillCentsExpected', expected), ...named('moreBillCentsHigh', high),
    ...named('paybackYearsLow', payback(moreBeforeFloorCents, high, most)), ...named('paybackYearsExpected', payback(moreBeforeFloorCents, expected, most)), ...named('paybackYearsHigh', payback(moreBeforeFloorCents, low, most)),
    ...(moreInches > 0 && before ? { inchCents: printed('inchCents', moreBeforeFloorCents / moreInches), ...named('inchBillCents', expected === undefined ? undefined : printed('inchBillCents', expected / moreInches)) } : {}),
  }
}
const bagsOf = (e: EstimateOut): number => e.areas.reduce((sum, a) => sum + (a.stoppedBy.length === 0 ? a.bags ?? 0 : 0), 0)

interface Row { readonly way: Way; readonly e: EstimateOut }

function rowOut({ way, e }: Row, base: EstimateOut, targetR: number, beyond: OverOut | undefined): OptionOut {
  const known = new Set(base.gates.map(g => g.id)), a = e.airLeakage, s = e.savings
  const loads = e.areas.flatMap(x => (x.stoppedBy.length === 0 && x.ceilingLoadPsf !== undefined ? [x.ceilingLoadPsf] : []))
  return {
    id: way.id, what: way.what, ...named('targetR', way.targetR), ...(way.product === undefined ? {} : { product: way.product }), asWritten: way.asWritten === true, underTarget: way.targetR !== undefined && way.targetR < targetR,
    verdict: e.verdict, ...named('totalCents', e.price.totalCents), ...named('beforeFloorCents', e.price.totalCents === undefined ? undefined : beforeFloor(e)), floored: (e.price.minimumAddedCents ?? 0) > 0, personHours: e.labor.personHours, sealingHours: e.labor.byPhase.seal ?? 0, days: e.labor.days, bags: printed('bags', bagsOf(e)), ...named('averageR', averageR(e)), ...(loads.length === 0 ? {} : { ceilingLoadPsf: Math.max(...loads) }),
    areas: e.areas.filter(x => x.targetR !== undefined).map(x => ({ id: x.id, ...(x.product === undefined ? {} : { product: x.product }), ...named('chartR', x.chartR), ...named('finalR', x.finalR), ...named('averageR', x.averageR), ...named('bags', x.bags), ...named('settledDepthIn', x.settledDepthIn), ...named('initialDepthIn', x.initialDepthIn), ...named('ceilingLoadPsf', x.ceilingLoadPsf), stoppedBy: x.stoppedBy })),
    ...named('cfm50CutLow', a?.cfm50CutLow), ...named('cfm50CutExpected', a?.cfm50CutExpected), ...named('cfm50CutHigh', a?.cfm50CutHigh),
    ...named('billCentsLow', s?.billCentsLow), ...named('billCentsExpected', s?.billCentsExpected), ...named('billCentsHigh', s?.billCentsHigh),
    newGates: e.gates.filter(g => g.open && !known.has(g.id)).map(g => g.id), ...(beyond ? { over: beyond } : {}),
  }
}

/** The options of one house.
 *  @param as the house as it is written, estimated
 *  @param books those it was estimated with
 *  @returns rows whose estimate has an error are named in `left`, with what is wrong */
export function options(job: Job, as: Estimate, books: Books, asked: Asked = {}): OptionsOut {
  const { data } = job, base = estimateJson(as, job), left: OptionsOut['left'] = [], targetR = books.target().value
  const most = books.start(MOST_YEARS, 50, 'year', 'payback beyond which no number is printed', 'judgment').value, within = books.start('step-pays-within', 30, 'year', 'payback within which a step is said to pay', 'judgment: about as long as a mortgage runs')
  const row = (way: Way): Row[] => {
    const made = way.asWritten ? as : estimate({ ...job, data: way.data }, books), wrong = made.findings.find(f => f.severity === 'error')
    if (wrong) { left.push({ id: way.id, what: way.what, why: wrong.says }); return [] }
    const e = way.asWritten ? base : estimateJson(made, job)
    if (e.verdict === 'stop') { left.push({ id: way.id, what: way.what, why: 'nothing of the work is left' }); return [] }
    return [{ way, e }]
  }
  const written: Row = { way: { id: 'as-written', what: 'as the file is written', asWritten: true, targetR, data }, e: base }

  // The ladder. A goal that buys nothing beyond the one under it is no step.
  const sealing = uncovered(data), oneGoal = data.areas.filter(hasCeilingGoal).every(a => !('rValue' in a) || a.rValue === undefined)
  const goals = [...new Set([...asked.targets ?? codeTargets(), ...(oneGoal && asked.targets === undefined ? [targetR] : [])])].sort((a, b) => a - b)
  const rungs = base.verdict === 'stop' ? [] : [
    ...(sealing ? row({ id: 'no-fill', what: 'all but the fill', data: sealing }) : []),
    ...goals.flatMap(g => (oneGoal && g === targetR ? [{ ...written, way: { ...written.way, id: `r-${g}`, what: `R-${g}` } }] : row({ id: `r-${g}`, what: `R-${g}`, targetR: g, data: withTarget(data, g) }))),
  ]
  const ladder = rungs.filter((r, i) => i === 0 || r.way.asWritten || bagsOf(r.e) !== bagsOf(rungs[i - 1]!.e) || r.e.price.totalCents !== rungs[i - 1]!.e.price.totalCents)
  const steps = ladder.map((r, i) => rowOut(r, base, targetR, over(r.e, i === 0 ? undefined : { id: ladder[i - 1]!.way.id, e: ladder[i - 1]!.e }, most)))

  // Beside the file as written
  const beside = (ways: readonly Way[]): OptionOut[] => ways.flatMap(row).map(r => rowOut(r, base, targetR, r.way.asWritten ? undefined : over(r.e, { id: 'as-written', e: base }, most)))
  const used = new Set(base.areas.flatMap(a => (a.product === undefined ? [] : [a.product])))
  const items = base.verdict === 'stop' || !data.areas.some(hasCeilingGoal) ? [] : asked.products ?? books.blownItems
  const products = beside(items.map(item => (used.size === 1 && used.has(item) ? { ...written.way, id: item, what: books.blown(item)!.name, product: item } : { id: item, what: books.blown(item)!.name, product: item, targetR, data: withProduct(data, item) })))
    .sort((a, b) => (a.totalCents ?? Infinity) - (b.totalCents ?? Infinity))
  const chosen = base.verdict === 'stop' ? [] : beside(choices(data, base))

  // Where the next inch stops paying: the first step up that does not pay within the years, and none above it does.
  const stepUps = steps.filter(s => s.over?.step !== undefined && s.over.moreBillCentsExpected !== undefined && s.over.moreInches > 0), pays = (o: OptionOut): boolean => o.over?.paybackYearsExpected !== undefined && o.over.paybackYearsExpected <= within.value
  const last = stepUps.filter(pays).at(-1), first = stepUps.find(s => !pays(s) && (last === undefined || stepUps.indexOf(s) > stepUps.indexOf(last)))
  return {
    format: OPTIONS_FORMAT, job: base.job, basis: base.basis, verdict: base.verdict, targetR, ladder: steps, products, choices: chosen, offers: base.offers,
    ...(stepUps.length > 0 ? { nextInch: { paysWithinYears: within.value, ...(last ? { lastThatPays: last.id } : {}), ...(first ? { firstThatDoesNot: first.id } : {}) } } : {}),
    left, missing: base.savings?.missing ?? (data.energy === undefined ? ['energy: what a year saves'] : []),
  }
}

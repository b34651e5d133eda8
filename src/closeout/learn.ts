// Production rates from finished jobs: what each hour written says of the rate behind it, by work and by access. It proposes; nothing is applied.
import { workNames } from '../books/names.ts'
import { rateLearned } from '../calc/proof.ts'
import type { Estimate } from '../estimate/estimate.ts'
import type { Step } from '../estimate/tasks/order.ts'
import { byText } from '../findings/finding.ts'
import { accessClass } from '../scope/access.ts'
import { exactly, given, inputsOf, work, type Quantity } from '../units/quantity.ts'
import type { CloseoutFile } from './format.ts'

export const LEARNED_FORMAT = 'lidwork-learned/1'

/** What one task of one job says of one rate, at access 1.0. */
export interface Observed { readonly job: string; readonly task: string; readonly work: string; readonly access: string; readonly factor: number; readonly perUnit: number; readonly estimatedHours: number; readonly tookHours: number
  /** Other rates share the hours of the task: what is said holds of all of them together. */
  readonly shared: boolean
  readonly now: number; readonly ofCompany: boolean }

export interface Spread { readonly jobs: number; readonly median: number; readonly low: number; readonly high: number }
export interface LearnedRate extends Spread { readonly work: string; /** The rate that holds now, and whether the company has set it. */ readonly now: number; readonly ofCompany: boolean; readonly shared: boolean; readonly proposed: boolean; readonly classes: readonly (Spread & { readonly access: string })[]; readonly observed: readonly Observed[] }
export interface LearnedOut { format: typeof LEARNED_FORMAT; jobs: string[]; least: number; rates: LearnedRate[]; leftOut: { job: string; task: string; why: string }[] }

interface Rate { readonly work: string; readonly rate: Quantity<'h/unit'> }

/** The rates that the hours of a task go by, and the access of its work. Days are left alone: they follow from all the work of the house. */
function behind(hours: Quantity): { readonly rates: readonly Rate[]; readonly access: number } {
  const rates = new Map<string, Rate>(), seen = new Set<Quantity>()
  let access = 1
  const visit = (q: Quantity): void => {
    if (seen.has(q)) return
    seen.add(q)
    if (q.unit === 'h/unit') {
      const name = q.from.is === 'assumed' ? q.from.id.replace(/^rate\./, '') : q.from.is === 'row' ? q.from.at.split(', ').at(-1)! : ''
      if (workNames.includes(name) && q.value > 0) rates.set(name, { work: name, rate: q as Quantity<'h/unit'> })
      return
    }
    for (const [name, input] of Object.entries(inputsOf(q))) {
      if (name === 'access') access = Math.max(access, input.value)
      else if (input.unit === 'h' || input.unit === 'h/unit') visit(input)
    }
  }
  visit(hours)
  return { rates: [...rates.values()], access }
}

/** Hours before they were rounded to the hundredth. */
const exactHours = (s: Step): Quantity<'h'> => (s.personHours.from.is === 'worked' && s.personHours.from.by.id === 'task-hours' ? s.personHours.from.inputs['hours'] as Quantity<'h'> : s.personHours)

/** How much of the planned amount was done: bags as used, where they are what the rate counts. */
function amountDone(s: Step, file: CloseoutFile, estimate: Estimate): Quantity<'factor'> {
  const area = s.work === 'blow' ? s.buries?.[0] : undefined, planned = area === undefined ? undefined : estimate.out.areas.find(o => String(o.id) === area)?.bags as Quantity | undefined
  const used = (file.areas ?? []).filter(a => a.in === area && a.bags !== undefined).reduce((sum, a) => sum + a.bags!, 0)
  return planned && used > 0 ? exactly(used / planned.value, 'factor', 'bags used ÷ bags planned') : exactly(1, 'factor', 'as planned')
}

export interface Lesson { readonly observed: readonly Observed[]; readonly leftOut: LearnedOut['leftOut'] }

/** All that one finished job says. */
export function lesson(file: CloseoutFile, estimate: Estimate): Lesson {
  const job = String(estimate.out.job.id), observed: Observed[] = [], leftOut: LearnedOut['leftOut'] = []
  const planned = estimate.plan.days.whole.value
  for (const [i, h] of (file.hours ?? []).entries()) {
    const s = estimate.steps.find(x => x.id === h.task)
    if (!s || h.personHours === undefined) continue
    const skip = (why: string): void => { leftOut.push({ job, task: s.id, why }) }
    if (h.personHours === 0) { skip('it was not done'); continue }
    const estimated = exactHours(s), { rates, access } = behind(estimated)
    if (rates.length === 0 || estimated.value <= 0) { skip('no rate stands behind its hours'); continue }
    if ((s.id === 'set-up' || s.id === 'clean-up') && file.days !== undefined && file.days.length !== planned) { skip(`${file.days.length} days in place of ${planned}: what happens once and what happens daily can’t be told apart`); continue }
    const amountShare = amountDone(s, file, estimate), tookHours = given(h.personHours, 'h', `/hours/${i}/personHours`)
    for (const { work: of, rate } of rates) {
      observed.push({ job, task: s.id, work: of, access: accessClass(access), factor: access, perUnit: work(rateLearned, { rate, tookHours, estimatedHours: estimated, amountShare }).value, estimatedHours: estimated.value, tookHours: h.personHours, shared: rates.length > 1, now: rate.value, ofCompany: rate.from.is === 'row' })
    }
  }
  return { observed, leftOut }
}

/** One value for each job: its tasks weigh by the hours that were estimated. */
function byJob(observed: readonly Observed[]): number[] {
  const jobs = new Map<string, Observed[]>()
  for (const o of observed) jobs.set(o.job, [...jobs.get(o.job) ?? [], o])
  return [...jobs.values()].map(list => list.reduce((sum, o) => sum + o.perUnit * o.estimatedHours, 0) / list.reduce((sum, o) => sum + o.estimatedHours, 0))
}

function spread(observed: readonly Observed[]): Spread {
  const v = byJob(observed).sort((a, b) => a - b), half = Math.floor(v.length / 2)
  return { jobs: v.length, median: v.length % 2 === 1 ? v[half]! : (v[half - 1]! + v[half]!) / 2, low: v[0]!, high: v.at(-1)! }
}

/** Rates by work, with median, count and spread. @param least jobs that a proposal stands on */
export function learned(lessons: readonly Lesson[], jobs: readonly string[], least: number): LearnedOut {
  const all = lessons.flatMap(l => l.observed), works = [...new Set(all.map(o => o.work))].sort(byText)
  return {
    format: LEARNED_FORMAT, jobs: [...jobs], least,
    rates: works.map(name => {
      const observed = all.filter(o => o.work === name), over = spread(observed), last = observed.at(-1)!, classes = [...new Set(observed.map(o => o.access))]
      return { work: name, ...over, now: last.now, ofCompany: last.ofCompany, shared: observed.every(o => o.shared), proposed: over.jobs >= least, classes: classes.map(access => ({ access, ...spread(observed.filter(o => o.access === access)) })).sort((a, b) => byText(a.access, b.access)), observed }
    }),
    leftOut: lessons.flatMap(l => l.leftOut),
  }
}

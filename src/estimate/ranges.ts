// How far price and hours may be off: each stated uncertainty of the survey at both its ends, one at a time, the whole house taken off anew; what that moves is joined by squares.
import type { Books } from '../books/books.ts'
import { mean, netOf } from '../calc/arithmetic.ts'
import { difference } from '../calc/price.ts'
import { aboutOff, deviation, highEnd, joined, lowEnd, meanOff, moved, narrowed, unseenMore } from '../calc/spread.ts'
import { byText, placed, sentence, type Finding } from '../findings/finding.ts'
import { keysOf } from '../findings/places.ts'
import { placeIn, type Node } from '../files/schema.ts'
import { jobFormat } from '../job/schemas.ts'
import type { Job } from '../job/job.ts'
import type { JobFile } from '../job/job-file.ts'
import { sourceOf } from '../reference/table.ts'
import { studentT } from '../reference/coverage.ts'
import { asTape } from '../units/tape.ts'
import { exactly, given, overList, row, total, totalOf, work, type Quantity, type Unit } from '../units/quantity.ts'
import type { Linked } from './estimate.ts'
import { guarded } from './tasks/guarded.ts'
import type { RangesOut, UncertainOut } from './output.ts'
import { plan, priced, productOf, type Plan } from './plan.ts'
import { soldAlone } from './money/price.ts'

type Cents = Quantity<'cents'>
type Hours = Quantity<'h'>
/** A formula of any unit, with the unit of what it was given. */
const inUnit = <U extends Unit>(unit: U, q: Quantity): Quantity<U> => ({ ...q, unit })

/** A house as it would be priced: before the rounding step, so that small moves are seen. */
interface Priced { readonly cents: Cents; readonly totalCents: Cents; readonly hours: Hours; readonly planned: Plan }
/** What may be off, and the survey at each of its ends. */
interface Doubt { readonly path: string; readonly why: UncertainOut['why']; readonly stands: string; readonly better: string; readonly ends: readonly End[]; readonly more?: { readonly cents: Cents; readonly hours: Hours } }
interface End { readonly says: number | string; readonly data: JobFile }

const none = <U extends Unit>(unit: U): Quantity<U> => exactly(0, unit, 'it moves nothing that way')

/** @returns undefined for a house that has no price at all */
export function ranges(job: Job, books: Books): Linked<RangesOut> | undefined {
  const now = pricedOnce(job.data, books)
  if (!('cents' in now)) return undefined
  const doubts = allDoubts(job, now, books), line = (path: string): number => placed({ path } as Finding, job.places).line
  const outside: RangesOut['outside'] = [], moves: { doubt: Doubt; down: Cents; up: Cents; lessH: Hours; moreH: Hours }[] = []
  for (const doubt of doubts) {
    const at = doubt.ends.flatMap(end => {
      const there = pricedOnce(end.data, books)
      const why = 'cents' in there ? otherScope(now.planned, there.planned) : there.refused
      if (why !== undefined) outside.push({ path: doubt.path, line: line(doubt.path), where: whereOf(job.data, doubt.path), says: String(end.says), why })
      return 'cents' in there && why === undefined ? [there] : []
    })
    const far = <U extends Unit>(unit: U, of: (p: Priced) => Quantity<U>, more: Quantity<U> | undefined, from: (there: Quantity<U>) => { after: Quantity; before: Quantity }): Quantity<U> =>
      [...at.map(p => inUnit(unit, work(moved, from(of(p))))), ...(more ? [more] : []), none(unit)].reduce((a, b) => (b.value > a.value ? b : a))
    const up = <U extends Unit>(unit: U, of: (p: Priced) => Quantity<U>, more?: Quantity<U>) => far(unit, of, more, there => ({ after: there, before: of(now) }))
    const down = <U extends Unit>(unit: U, of: (p: Priced) => Quantity<U>) => far(unit, of, undefined, there => ({ after: of(now), before: there }))
    const move = { doubt, down: down('cents', p => p.cents), up: up('cents', p => p.cents, doubt.more?.cents), lessH: down('h', p => p.hours), moreH: up('h', p => p.hours, doubt.more?.hours) }
    if ([move.down, move.up, move.lessH, move.moreH].some(q => q.value > 0)) moves.push(move)
  }
  const join = <U extends Unit>(unit: U, of: (m: (typeof moves)[number]) => Quantity): Quantity<U> => overList(joined, unit, moves.map(m => [m.doubt.path, of(m)] as const))
  const down = join('cents', m => m.down), up = join('cents', m => m.up), step = books.company.roundingCents, hundredth = exactly(0.01, 'h', 'hours are told to 0.01'), cent = exactly(1, 'cents', 'cents are whole')
  const { totalCents } = now
  // Ends are what would be offered: in the steps of the company. Where nothing moves it, the price is its own end.
  const ends = (far: Cents, of: typeof lowEnd): Cents => far.value === 0 ? totalCents : inUnit('cents', work(of, { expected: now.cents, moved: far, step: step.value > 0 ? step : cent }))
  const uncertain = moves.map(m => ({ ...m, narrows: inUnit('cents', work(narrowed, { below: down, above: up, ownBelow: m.down, ownAbove: m.up })) }))
    .sort((a, b) => b.narrows.value - a.narrows.value || b.moreH.value + b.lessH.value - a.moreH.value - a.lessH.value || byText(a.doubt.path, b.doubt.path))
  return {
    method: methodOf(books), totalCentsLow: ends(down, lowEnd), totalCentsExpected: totalCents, totalCentsHigh: ends(up, highEnd),
    personHoursLow: inUnit('h', work(lowEnd, { expected: now.hours, moved: join('h', m => m.lessH), step: hundredth })), personHoursExpected: now.hours, personHoursHigh: inUnit('h', work(highEnd, { expected: now.hours, moved: join('h', m => m.moreH), step: hundredth })),
    // What moves it by less than half a dollar is not worth the ladder.
    measureAgain: uncertain.filter(m => m.narrows.value >= 100 / 2).slice(0, MOST_AGAIN).map(m => m.doubt.path),
    uncertain: uncertain.map(({ doubt: d, ...m }) => ({ path: d.path, line: line(d.path), where: whereOf(job.data, d.path), why: d.why, stands: d.stands, ends: d.ends.map(e => e.says), better: d.better, downCents: m.down, upCents: m.up, downHours: m.lessH, upHours: m.moreH, narrowsCents: m.narrows })),
    outside,
  }
}

const MOST_AGAIN = exactly(3, 'each', 'measurements asked for again').value
const methodOf = (books: Books): string => `Each uncertain figure of the survey at both its ends, one at a time, the whole house taken off anew; what that moves is joined by squares, as errors that have nothing to do with each other (JCGM 100, 5.1.2); no random numbers. A figure written ~ may be off by ${aboutPct(books).value} %; the mean of probes by its standard errors, to hold nine of ten (Student’s t). Rates, wages, prices and what the price leaves out are taken as they are.`

function pricedOnce(data: JobFile, books: Books): Priced | { readonly refused: string } {
  const refused: Finding[] = []
  const taken = guarded('', refused, () => { const planned = plan(data, books); return { planned, prices: priced(planned, books).prices as { totalCents?: Cents; roundingCents?: Cents } } })
  const error = [...refused, ...taken?.planned.taken.findings ?? []].find(f => f.severity === 'error')
  if (error) return { refused: sentence(error) }
  const { planned, prices: { totalCents, roundingCents } } = taken!
  if (!totalCents || !roundingCents) return { refused: 'nothing may start in this house' }
  return { planned, totalCents, cents: work(difference, { after: totalCents, before: roundingCents }), hours: totalOf('h', planned.steps, s => [s.id, s.personHours]) }
}

/** Two prices of different work are no range. */
function otherScope(now: Plan, there: Plan): string | undefined {
  const shut = (p: Plan): string[] => [...new Set(p.standing.stopped.map(s => s.gate))].sort(byText)
  const before = shut(now), after = shut(there), more = after.filter(g => !before.includes(g)), less = before.filter(g => !after.includes(g))
  return more.length > 0 ? `work would stop at ${more.join(', ')}` : less.length > 0 ? `${less.join(', ')} would stop no work` : undefined
}

// ---- What the survey itself says is uncertain

function allDoubts(job: Job, now: Priced, books: Books): Doubt[] {
  const format = jobFormat() as Node, { data } = job, layers: { path: string; item: { readonly depthIn: readonly number[] } }[] = []
  data.areas.forEach((a, i) => { if ('existing' in a) a.existing.forEach((item, n) => { layers.push({ path: `/areas/${i}/existing/${n}/depthIn`, item }) }) })
  const probed = new Set(layers.flatMap(l => l.item.depthIn.map((_, n) => `${l.path}/${n}`)))
  return [
    ...layers.flatMap(l => probes(job, l.path, l.item.depthIn, books)),
    ...job.about.filter(path => !probed.has(path)).flatMap(path => about(data, format, path, books)),
    ...unknowns(data, format, '', data), ...unseen(data, now, books),
  ]
}

/** The mean of the probes is no better than their spread and number make it. */
function probes(job: Job, path: string, depthIn: readonly number[], books: Books): Doubt[] {
  const at = depthIn.map((x, n) => given(x, 'in', `${path}/${n}`)), count = exactly(depthIn.length, 'each', 'probes'), meanIn = at.length === 1 ? at[0]! : overList(mean, 'in', at)
  const parts: Quantity[] = job.about.filter(p => p.startsWith(`${path}/`)).map(p => work(aboutOff, { value: given(depthIn[Number(keysOf(p).at(-1))]! / depthIn.length, 'in', p), pct: aboutPct(books) }))
  const t = [...studentT.rows].reverse().find(r => r.freedom < depthIn.length)
  parts.push(t === undefined ? work(aboutOff, { value: meanIn, pct: books.start('one-probe-off', 30, 'pct', 'how far a depth of one probe may be off', 'judgment: fill lies uneven') })
    : work(meanOff, { factor: row(t.factor, 'factor', `student-t: ${t.freedom}`, sourceOf(studentT, t)), deviationIn: overList(deviation, 'in', at), probes: count }))
  const off = overList(joined, 'in', parts)
  if (off.value === 0 || meanIn.value === 0) return []
  const low = Math.max(0, meanIn.value - off.value), high = meanIn.value + off.value, to = (x: number): End => ({ says: Number(x.toFixed(2)), data: changed(job.data, path, depthIn.map(d => d * x / meanIn.value)) })
  const least = Math.min(...depthIn), most = Math.max(...depthIn)
  return [{ path, why: 'probes', stands: depthIn.length === 1 ? `1 probe, ${asTape(least)} in` : `${depthIn.length} probes from ${asTape(least)} to ${asTape(most)} in`, better: depthIn.length === 1 ? 'probe five places, away from hatch and eaves' : `probe ${depthIn.length} places more, away from hatch and eaves`, ends: [to(low), to(high)] }]
}

const aboutPct = (books: Books) => books.start('about-off', 10, 'pct', 'how far a figure written ~ may be off', 'judgment: paced or guessed')

function about(data: JobFile, format: Node, path: string, books: Books): Doubt[] {
  const { node, value } = placeIn(format, data, path)
  if (typeof value !== 'number' || value === 0) return []
  const off = work(aboutOff, { value: given(value, 'each', path), pct: aboutPct(books) }).value, whole = node?.multipleOf === 1
  const least = node?.minimum ?? node?.exclusiveMinimum ?? 0, most = node?.maximum ?? Infinity
  const low = Math.max(least, whole ? Math.floor(value - off) : value - off), high = Math.min(most, whole ? Math.ceil(value + off) : value + off)
  const ends = [low, high].filter(x => x !== value && x > 0).map((x): End => ({ says: Number(x.toFixed(2)), data: changed(data, path, x) }))
  return [{ path, why: 'about', stands: `~${Number(value.toFixed(2))}`, better: whole ? 'count it' : 'measure it', ends }]
}

/** What nobody read or found out may be any of its other words. */
function unknowns(data: JobFile, format: Node, path: string, here: unknown): Doubt[] {
  if (here === 'unknown') {
    const { node } = placeIn(format, data, path), words = node?.enum ?? []
    return words.includes('unknown') ? [{ path, why: 'unknown', stands: 'unknown', better: 'find out', ends: words.filter(w => w !== 'unknown').map(w => ({ says: w, data: changed(data, path, w) })) }] : []
  }
  return typeof here === 'object' && here !== null ? Object.entries(here).flatMap(([k, v]) => unknowns(data, format, `${path}/${k}`, v)) : []
}

/** Floor that nobody saw: from none to as many openings as where somebody looked. */
function unseen(data: JobFile, { planned }: Priced, books: Books): Doubt[] {
  return data.areas.flatMap((area, i): Doubt[] => {
    if (!('unseenFt2' in area) || area.unseenFt2 === undefined) return []
    const path = `/areas/${i}/unseenFt2`, unseenFt2 = given(area.unseenFt2, 'ft2', path), gross = planned.taken.areas.find(a => a.id === area.id)!.measure.figures['areaFt2'] as Quantity<'ft2'>
    const tasks = planned.steps.flatMap(s => s.parts).filter(t => t.phase === 'seal' && t.touches !== 'house' && t.touches.includes(area.id))
    const seenFt2 = work(netOf, { whole: gross, leftOut: unseenFt2 }), more = <U extends Unit>(unit: U, sealing: Quantity): Quantity<U> => inUnit(unit, work(unseenMore, { sealing, unseenFt2, seenFt2 }))
    return [{ path, why: 'unseen', stands: `${area.unseenFt2} ft2`, better: 'look there', ends: [], more: { cents: more('cents', soldAlone(tasks, productOf(books), books, false)), hours: more('h', total('h', tasks.map(t => t.personHours))) } }]
  })
}

// ---- Places of the file

/** The survey with another value in one place. */
function changed(data: JobFile, path: string, value: unknown): JobFile {
  const copy = structuredClone(data), keys = keysOf(path)
  const holder = keys.slice(0, -1).reduce<unknown>((at, k) => (at as Record<string, unknown>)[k], copy) as Record<string, unknown>
  holder[keys.at(-1)!] = value
  return copy
}

/** The entry that a place belongs to, as people know it, and its key. */
function whereOf(data: JobFile, path: string): string {
  const keys = keysOf(path), names: string[] = []
  let at: unknown = data
  for (const k of keys) {
    at = (at as Record<string, unknown>)[k]
    if (typeof at !== 'object' || at === null || Array.isArray(at)) continue
    const { id, kind, in: area, at: place, fill } = at as Record<string, unknown>
    const name = [id ?? fill ?? (kind === undefined ? undefined : `${String(kind)} in ${String(area)}`), place].filter(x => typeof x === 'string')
    if (name.length > 0 && k !== 'job') names.push(name.join(', '))
  }
  const key = [...keys].reverse().find(k => !/^\d+$/.test(k))!
  return `${names.length > 0 ? names.join(', ') : keys[0]!}: ${key}`
}

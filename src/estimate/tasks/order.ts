// The order of work. The law: in each place, every task of an earlier phase comes before every task of a later one.
import { taskHours } from '../../calc/arithmetic.ts'
import { phases, sizes, type KeepOff, type Phase, type Task, type Work } from '../../scope/kind.ts'
import { total, work, type Quantity } from '../../units/quantity.ts'
import type { Taken } from './takeoff.ts'

/** One line of the work order: tasks with one id are one. */
export interface Planned extends Omit<Task, 'closes'> {
  readonly closes: readonly string[]
  /** The openings and areas whose tasks it joins, with the hours each brought. */
  readonly parts: readonly Task[]
}

export interface Step extends Planned {
  readonly step: number
  readonly areas: readonly string[]
  readonly after: readonly { readonly task: string; readonly why: string }[]
}

export const rank: Readonly<Record<Phase, number>> = Object.fromEntries(phases.map((p, i) => [p, i])) as Record<Phase, number>

/** Why a later phase waits for an earlier one, by the later one. */
const LAW: Readonly<Record<Phase, string>> = {
  clear: 'the way is cleared first', prepare: 'set up before old fill is moved', seal: 'cleared and set up before sealing', ducts: 'large and hot leaks before ducts are sealed',
  check: 'the last look comes after everything that leaks is sealed', wrap: 'a duct is wrapped only once it is sealed and checked', ventilate: 'leaks at the plates are sealed and seen before baffles hide them',
  contain: 'nothing is dammed for fill before the last look', insulate: 'nothing is covered before dams, curbs and markers stand', close: 'shut only once the fill is in', prove: 'proved when all is closed',
}

/** `anywhere`: also between different areas. */
interface EdgeRow { readonly earlier: Work; readonly later: Work; readonly why: string; readonly source: string; readonly anywhere?: true }
const PRACTICE = 'common practice, no source'
/** The order inside a phase. */
export const edgeRows: readonly EdgeRow[] = [
  { earlier: 'hazard-look', later: 'clearing', why: 'nobody enters, opens a ceiling or runs a fan before the hazard is looked for', source: 'EPA vermiculite guidance: do not disturb' },
  { earlier: 'hazard-look', later: 'set-up', why: 'nobody enters, opens a ceiling or runs a fan before the hazard is looked for', source: 'EPA vermiculite guidance: do not disturb' },
  { earlier: 'hazard-look', later: 'swap', why: 'nobody enters, opens a ceiling or runs a fan before the hazard is looked for', source: 'EPA vermiculite guidance: do not disturb' },
  { earlier: 'hazard-look', later: 'test-in', why: 'nobody enters, opens a ceiling or runs a fan before the hazard is looked for', source: 'EPA vermiculite guidance: do not disturb' },
  { earlier: 'test-in', later: 'set-up', why: 'a test before the work measures the house as it was', source: PRACTICE },
  { earlier: 'clearing', later: 'swap', why: 'an airtight light tightens the house: what burns fuel is tested first', source: 'Alaska program combustion rules; SWS 2.0100 series (from memory, medium)' },
  { earlier: 'swap', later: 'set-up', why: 'other trades are done before the crew comes', source: PRACTICE },
  { earlier: 'clearing', later: 'set-up', why: 'nothing is scheduled before its clearing step', source: 'Alaska program combustion rules; SWS 2.0100 series (from memory, medium)' },
  { earlier: 'set-up', later: 'lift-deck', why: 'floors are protected before anything is carried', source: PRACTICE },
  { earlier: 'storage', later: 'lift-deck', why: 'boards are lifted once nothing stands on them', source: PRACTICE },
  { earlier: 'dam', later: 'drill', why: 'plugs stand before a bay is packed', source: PRACTICE },
  { earlier: 'set-up', later: 'storage', why: 'floors are protected before anything is carried', source: PRACTICE },
  { earlier: 'hot-seal', later: 'small-hole', why: 'hot and big holes before small ones', source: 'DOE air-sealing guidance: large leaks first' },
  { earlier: 'big-hole', later: 'small-hole', why: 'hot and big holes before small ones', source: 'DOE air-sealing guidance: large leaks first' },
  { earlier: 'roof-cut', later: 'fan-duct', why: 'the cap is in the roof before the duct is joined to it', source: PRACTICE },
  { earlier: 'duct-fix', later: 'duct-seal', why: 'ducts are put together and hung before their joints are sealed', source: 'SWS 5.0106.1: fasten before sealing' },
  { earlier: 'look', later: 'test', why: 'the last look may add sealing; the test comes after it', source: PRACTICE },
  { earlier: 'dam', later: 'marker', why: 'markers stand when dams and curbs do', source: PRACTICE },
  { earlier: 'lay-back', later: 'blow', why: 'old fill lies where it lay before new fill comes on it', source: PRACTICE },
  { earlier: 'lay-batts', later: 'back-wall', why: 'the back of a wall is closed once its bays are full', source: PRACTICE },
  { earlier: 'back-wall', later: 'blow', why: 'fill at the foot of a wall would lie over the edge that is sealed', source: PRACTICE },
  { earlier: 'pack', later: 'blow', why: 'slopes and closed floors are packed from the open floor, before fill lies on it', source: PRACTICE, anywhere: true },
  { earlier: 'machine', later: 'pack', why: 'the machine is set and checked first', source: PRACTICE },
  { earlier: 'machine', later: 'blow', why: 'the machine is set and checked first', source: PRACTICE },
  { earlier: 'blow', later: 'level', why: 'leveled after it is blown', source: PRACTICE },
  { earlier: 'shut', later: 'shut-exit', why: 'the way out is shut last', source: PRACTICE },
  { earlier: 'shut-exit', later: 'clean-up', why: 'the way out is shut before the last cleaning', source: PRACTICE },
  { earlier: 'shut', later: 'clean-up', why: 'the way out is shut before the last cleaning', source: PRACTICE },
]

/** Of what is said more than once, the farther distance. */
const strictest = (all: readonly KeepOff[]): readonly KeepOff[] => [...new Set(all.map(k => k.what))].map(what => all.filter(k => k.what === what).sort((a, b) => b.distanceIn.value - a.distanceIn.value)[0]!)

/** What those who cover a place are told of what stands in it. */
const onCover = (parts: readonly Task[], warned: readonly Task[]): readonly string[] => {
  const buries = parts.flatMap(p => p.buries ?? [])
  return buries.length === 0 ? [] : warned.filter(w => (w.touches as readonly string[]).some(place => buries.includes(place))).flatMap(w => w.onCover!)
}

/** Each once. */
const each = <T>(list: readonly T[]): readonly T[] => (list.length < 2 ? list : [...new Set(list)])

/** Joins tasks with one id, and rounds their hours to the hundredth before anything prices or sums them. */
export function merged(tasks: readonly Task[]): Planned[] {
  const by = new Map<string, Task[]>()
  for (const t of tasks) { const same = by.get(t.id); if (same) same.push(t); else by.set(t.id, [t]) }
  const warned = tasks.filter(t => t.onCover !== undefined && t.touches !== 'house')
  return [...by.values()].map((parts): Planned => {
    const first = parts[0]!
    // Nearly all stand alone.
    if (parts.length === 1) {
      const { closes, touches, buries, keepOff } = first
      return joined(first, parts, {
        title: first.title, closes: closes === undefined ? [] : [closes], hours: first.personHours, touches: touches === 'house' ? 'house' : each(touches), needs: first.needs,
        cautions: each([...first.cautions, ...onCover(parts, warned)]), keepOff: strictest(keepOff ?? []), buries: buries && each(buries), count: first.count, subcontractCents: first.subcontractCents,
      })
    }
    const tallest = [...parts].sort((a, b) => (b.heightIn?.value ?? 0) - (a.heightIn?.value ?? 0))[0]!
    const subs = parts.flatMap(p => p.subcontractCents ?? []), count = parts.reduce((sum, p) => sum + (p.count ?? 0), 0)
    return joined(first, parts, {
      title: tallest.title, closes: parts.flatMap(p => p.closes ?? []), hours: total('h', parts.map(p => p.personHours)),
      touches: parts.some(p => p.touches === 'house') ? 'house' : [...new Set(parts.flatMap(p => p.touches as readonly string[]))],
      needs: parts.flatMap(p => p.needs), cautions: [...new Set([...parts.flatMap(p => p.cautions), ...onCover(parts, warned)])], keepOff: strictest(parts.flatMap(p => p.keepOff ?? [])),
      buries: parts.some(p => p.buries) ? [...new Set(parts.flatMap(p => p.buries ?? []))] : undefined, count: count > 0 ? count : first.count,
      subcontractCents: subs.length < 2 ? subs[0] : total('cents', subs) as Quantity<'cents'>,
    })
  })
}

type Together = Pick<Planned, 'title' | 'closes' | 'touches' | 'needs' | 'cautions' | 'keepOff' | 'buries' | 'count' | 'subcontractCents'> & { readonly hours: Quantity<'h'> }

/** All have the same keys in the same order: lists of them are gone through often, and quicker so. */
const joined = (t: Task, parts: readonly Task[], { title, closes, hours, touches, needs, cautions, keepOff, buries, count, subcontractCents }: Together): Planned => ({
  id: t.id, title, phase: t.phase, work: t.work, touches, in: t.in, buries, serves: t.serves, closes, hot: t.hot, size: t.size, role: t.role, personHours: work(taskHours, { hours }), needs, otherCents: t.otherCents, subcontractCents,
  cautions, keepOff, onCover: t.onCover, proof: t.proof, heightIn: t.heightIn, count, from: t.from, ownVisit: t.ownVisit, parts,
} satisfies Record<keyof Planned, unknown>)

/** Where the crew stands for it. */
const places = (t: Planned): Planned['touches'] => (t.touches === 'house' ? 'house' : [...new Set([...t.touches, ...t.parts.flatMap(p => p.in ?? [])])])
const share = (a: Planned['touches'], b: Planned['touches']): boolean => a === 'house' || b === 'house' || a.some(p => b.includes(p))

/** Areas that people leave by a hatch or stair of their own. */
const exits = (tasks: readonly Planned[]): ReadonlySet<string> => new Set(tasks.filter(t => t.work === 'shut-exit').flatMap(t => (t.touches === 'house' ? [] : t.touches)))

/** Every pair that must stand in order, and why: the law between phases, the rows inside one. */
function edges(tasks: readonly Planned[]): Map<number, string>[] {
  const before: Map<number, string>[] = tasks.map(() => new Map())
  const at = tasks.map(places)
  const rowsBy = new Map(edgeRows.map(r => [`${r.earlier} ${r.later}`, r])), ways = exits(tasks)
  for (let i = 0; i < tasks.length; i++) for (let j = 0; j < tasks.length; j++) {
    const a = tasks[i]!, b = tasks[j]!
    if (i === j) continue
    const row = a.phase === b.phase ? rowsBy.get(`${a.work} ${b.work}`) : undefined
    if (row?.anywhere) before[j]!.set(i, row.why)
    const here = at[i]!
    if (b.work === 'shut-exit' && a.phase === 'insulate' && here !== 'house' && here.every(p => !ways.has(p))) before[j]!.set(i, 'who works in an area without a way out of its own goes out here')
    if (!share(at[i]!, at[j]!)) continue
    if (rank[a.phase] < rank[b.phase]) before[j]!.set(i, LAW[b.phase])
    else if (row) before[j]!.set(i, row.why)
  }
  return before
}

/** Inside covering, what leans on nothing that is blown comes first. */
const COVER_ORDER: readonly Work[] = ['lay-back', 'lay-batts', 'back-wall', 'machine', 'pack', 'blow']

/** Phase, hot before combustible, size class, areas without a way out of their own first, then the order of the file: the surveyor walks from the far end. */
function inOrder(tasks: readonly Planned[], areas: readonly string[]): Planned[] {
  const ways = exits(tasks), walked = [...areas.filter(a => !ways.has(a)), ...areas.filter(a => ways.has(a))]
  const place = (t: Planned): number => { const at = places(t); return at === 'house' ? -1 : Math.min(...at.map(a => walked.indexOf(a)).filter(n => n >= 0)) }
  const key = tasks.map((t, i) => [rank[t.phase], t.hot ? 0 : 1, t.phase === 'insulate' ? COVER_ORDER.indexOf(t.work === 'level' ? 'blow' : t.work) : t.size ? sizes.indexOf(t.size) : sizes.length, place(t), i])
  const less = (a: number[], b: number[]): number => { for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!; return 0 }
  return tasks.map((t, i) => ({ t, k: key[i]! })).sort((a, b) => less(a.k, b.k)).map(x => x.t)
}

/**
 * Numbers the tasks and keeps only the edges that say something new: one that follows from others is left out.
 * @throws Error when the edges run in a circle, which names it
 */
export function ordered(planned: readonly Planned[], areas: readonly string[]): Step[] {
  const tasks = inOrder(planned, areas)
  const before = edges(tasks)
  // Kahn's algorithm; the first ready task in reading order comes next.
  const left = before.map(b => b.size), done: number[] = [], placed = new Set<number>()
  while (done.length < tasks.length) {
    const next = tasks.findIndex((_, i) => !placed.has(i) && left[i] === 0)
    if (next < 0) throw new Error(`the order of work runs in a circle: ${tasks.filter((_, i) => !placed.has(i)).map(t => t.id).join(', ')}`)
    placed.add(next)
    done.push(next)
    before.forEach((b, i) => { if (b.has(next)) left[i]!-- })
  }
  const position = new Map(done.map((i, n) => [i, n]))
  const reach: Set<number>[] = []
  return done.map((i, n) => {
    const direct = [...before[i]!.keys()].sort((a, b) => position.get(b)! - position.get(a)!)
    const mine = new Set<number>(), kept: number[] = []
    for (const b of direct) if (!mine.has(b)) { kept.push(b); mine.add(b); for (const r of reach[b]!) mine.add(r) }
    reach[i] = mine
    const t = tasks[i]!
    return { ...t, step: n + 1, areas: t.touches === 'house' ? areas : areas.filter(a => places(t).includes(a)), after: kept.sort((a, b) => position.get(a)! - position.get(b)!).map(b => ({ task: tasks[b]!.id, why: before[i]!.get(b)! })) }
  })
}

/** Whether an opening’s closing, all of it, is among the steps. */
export function closes({ found, measure }: Taken['openings'][number], steps: readonly Step[]): boolean {
  const closers = measure.tasks.filter(t => t.closes === found.id)
  return closers.length > 0 && closers.every(t => steps.some(s => s.parts.includes(t)))
}

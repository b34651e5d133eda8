// What the gates leave, proved on tasks and gates made at random: no house reaches every way in which stops can spread.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { NamedGate } from '../../src/estimate/tasks/gates.ts'
import { standing, type Declined } from '../../src/estimate/tasks/standing.ts'
import { phases, works, type Phase, type Serves, type Task } from '../../src/scope/kind.ts'
import { exactly } from '../../src/units/quantity.ts'
import { seed } from './job.ts'

const PLACES = ['p1', 'p2', 'p3', 'p4'], OPENINGS = ['o1', 'o2', 'o3', 'o4']
const places = fc.subarray(PLACES, { minLength: 1, maxLength: 2 }), somePhases = fc.subarray([...phases], { minLength: 1, maxLength: 4 })

const serves: fc.Arbitrary<Serves> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Serves>({ is: 'itself' }) },
  { weight: 2, arbitrary: places.map((of): Serves => ({ is: 'fill', of })) },
  { weight: 1, arbitrary: somePhases.map((of): Serves => ({ is: 'work', of })) })

const task: fc.Arbitrary<Task> = fc.record({
  n: fc.integer({ min: 1, max: 9 }), phase: fc.constantFrom(...phases), work: fc.constantFrom(...works), touches: fc.oneof({ weight: 5, arbitrary: places }, { weight: 1, arbitrary: fc.constant('house' as const) }),
  covers: fc.boolean(), serves, closes: fc.option(fc.constantFrom(...OPENINGS), { nil: undefined }),
}).map(({ n, phase, work, touches, covers, serves, closes }): Task => ({
  id: `t${n}`, title: 'work', phase, work, touches, serves, role: 'crew', personHours: exactly(1, 'h', 'made'), needs: [], cautions: [], proof: '',
  ...(covers && (phase === 'insulate' || phase === 'wrap') ? { buries: touches === 'house' ? PLACES : touches } : {}), ...(closes === undefined ? {} : { closes }),
}))

const gate = fc.record({
  state: fc.constantFrom('stop', 'hold', 'mend', 'note', 'mend'), open: fc.constantFrom(true, true, true, false), stopsPhases: fc.subarray([...phases], { maxLength: 4 }),
  stopsPlaces: fc.oneof({ weight: 4, arbitrary: places }, { weight: 1, arbitrary: fc.constant<string[]>([]) }), by: fc.integer({ min: 1, max: 11 }),
})
const gates: fc.Arbitrary<NamedGate[]> = fc.array(gate, { maxLength: 4 }).map(list => list.map(({ state, open, stopsPhases, stopsPlaces, by }, i): NamedGate => ({
  id: `g${i}`, code: 'made', state: state as NamedGate['state'], open, why: 'made', where: 'there', in: 'p1', path: '', stops: { phases: stopsPhases, places: stopsPlaces }, clearedBy: 'paper',
  ...(state === 'mend' || state === 'hold' ? { clearedByTask: `t${by}` } : {}),
})))
const declines: fc.Arbitrary<Declined[]> = fc.subarray(OPENINGS, { maxLength: 2 }).chain(ids => fc.tuple(...ids.map(id => fc.constantFrom(...PLACES).map(area => ({ id, area, where: 'there' })))))

/** Work in a place of the gate, or any work where the gate is of the whole attic. */
const meets = (g: NamedGate, t: Task): boolean => g.stops.phases.includes(t.phase) && (g.stops.places.length === 0 || (t.touches !== 'house' && t.touches.some(p => g.stops.places.includes(p))))
/** The same, work of the whole visit included. */
const mayMeet = (g: NamedGate, t: Task): boolean => meets(g, t) || (g.stops.phases.includes(t.phase) && t.touches === 'house')
const served = (t: Task, open: readonly Task[]): boolean => {
  const { serves } = t
  if (serves.is === 'itself') return true
  return serves.is === 'fill' ? open.some(o => o.buries?.some(p => serves.of.includes(p))) : open.some(o => o.serves.is !== 'work' && serves.of.includes(o.phase))
}

const always = (check: (tasks: Task[], gates: NamedGate[], declined: Declined[]) => void): void =>
  fc.assert(fc.property(fc.array(task, { maxLength: 14 }), gates, declines, check), { seed, numRuns: 1500 })

describe('standing, on tasks and gates made at random', () => {
  test('every task is open or stopped, once, and the reason is a gate that is open or an owner', () => {
    always((tasks, gates, declined) => {
      const { open, stopped } = standing(tasks, gates, declined)
      expect(new Set([...open, ...stopped.map(s => s.task)]).size).toBe(tasks.length)
      expect(open.length + stopped.length).toBe(tasks.length)
      for (const s of stopped) expect(s.gate === 'declined' ? declined.length > 0 : gates.some(g => g.id === s.gate && g.open && (g.state === 'stop' || g.state === 'mend')), s.gate).toBe(true)
    })
  })

  test('no open task meets an open stop, nor an open mend whose own task is away', () => {
    always((tasks, gates, declined) => {
      const { open, lostMends } = standing(tasks, gates, declined)
      for (const g of gates) {
        if (!g.open) { expect(lostMends).not.toContain(g.id); continue }
        const lost = g.state === 'mend' && !open.some(t => t.id === g.clearedByTask)
        expect(lostMends.includes(g.id)).toBe(lost)
        if (g.state === 'stop' || lost) expect(open.filter(t => meets(g, t)).map(t => t.id), g.id).toEqual([])
      }
    })
  })

  test('nothing buries what a stopped or declined task touches', () => {
    always((tasks, gates, declined) => {
      const { open, stopped } = standing(tasks, gates, declined)
      for (const t of open) {
        for (const { task } of stopped) expect(t.buries?.some(p => task.touches === 'house' || task.touches.includes(p)) ?? false, `${t.id} over ${task.id}`).toBe(false)
        for (const d of declined) { expect(t.buries?.includes(d.area) ?? false, `${t.id} over ${d.id}`).toBe(false); expect(t.closes).not.toBe(d.id) }
      }
    })
  })

  test('where something was stopped, every task left still has something that it serves', () => {
    always((tasks, gates, declined) => {
      const { open, stopped } = standing(tasks, gates, declined)
      if (stopped.length > 0) for (const t of open) expect(served(t, open), t.id).toBe(true)
    })
  })

  test('it is at rest: the same gates take nothing more from what is left', () => {
    always((tasks, gates, declined) => {
      const { open } = standing(tasks, gates, declined)
      const again = standing(open, gates, declined)
      expect(again.open).toEqual(open)
      expect(again.stopped).toEqual([])
    })
  })

  test('nothing is taken without cause: each stopped task meets a gate, is declined, would bury, or serves nothing', () => {
    always((tasks, gates, declined) => {
      const { open, stopped, lostMends } = standing(tasks, gates, declined)
      for (const { task: t } of stopped) {
        const cause = gates.some(g => g.open && (g.state === 'stop' || lostMends.includes(g.id)) && mayMeet(g, t)) || declined.some(d => d.id === t.closes || t.buries?.includes(d.area))
          || stopped.some(s => s.task !== t && t.buries?.some(p => s.task.touches === 'house' || s.task.touches.includes(p))) || !served(t, open)
        expect(cause, t.id).toBe(true)
      }
    })
  })

  test('without open stops, lost mends and declines nothing is stopped', () => {
    always((tasks, gates) => {
      const quiet = gates.filter(g => g.state !== 'stop' && (g.state !== 'mend' || tasks.some(t => t.id === g.clearedByTask)))
      expect(standing(tasks, quiet, []).stopped).toEqual([])
    })
  })

  test('the runs reach partial stops, lost mends, declines and holds', () => {
    const seen = { partial: 0, lost: 0, declined: 0, whole: 0, buried: 0, unserved: 0 }
    always((tasks, gates, declined) => {
      const { open, stopped, lostMends } = standing(tasks, gates, declined)
      if (open.length > 0 && stopped.length > 0) seen.partial++
      if (lostMends.length > 0) seen.lost++
      if (tasks.length > 3 && open.length === 0) seen.whole++
      for (const s of stopped) { if (s.gate === 'declined') seen.declined++; if (s.why.startsWith('would bury')) seen.buried++; if (s.why.startsWith('nothing is left')) seen.unserved++ }
    })
    for (const [what, n] of Object.entries(seen)) expect(n, what).toBeGreaterThan(15)
  })
})

test('phases of the random tasks are all phases', () => {
  const seen = new Set<Phase>()
  fc.assert(fc.property(task, t => { seen.add(t.phase) }), { seed, numRuns: 300 })
  expect([...seen].sort()).toEqual([...phases].sort())
})

// The law of the order, proved through the edges of the output alone.
import { describe, expect, test } from 'vitest'
import { ordered } from '../../src/estimate/tasks/order.ts'
import type { NamedGate } from '../../src/estimate/tasks/gates.ts'
import { opensHold, type Task } from '../../src/scope/kind.ts'
import { ancestors, make, onHouses, rank, sound, type Made } from './job.ts'

interface Line { readonly id: string; readonly phase: Task['phase']; readonly areas: readonly string[]; readonly after: readonly string[] }

/** In each place, every task of an earlier phase is done before every task of a later one. */
function expectLaw(tasks: readonly Line[]): void {
  const before = ancestors(tasks), at = new Map(tasks.map((t, i) => [t.id, i]))
  for (const t of tasks) {
    expect(before.get(t.id)!.has(t.id), `${t.id} waits for itself`).toBe(false)
    for (const b of before.get(t.id)!) expect(at.get(b)!, `${b} stands before ${t.id} on paper`).toBeLessThan(at.get(t.id)!)
    for (const u of tasks) if (rank[u.phase] < rank[t.phase] && u.areas.some(a => t.areas.includes(a))) expect(before.get(t.id)!.has(u.id), `${u.id} (${u.phase}) before ${t.id} (${t.phase})`).toBe(true)
  }
}

const lines = (steps: readonly { id: string; phase: Task['phase']; areas: readonly string[]; after: readonly { task: string }[] }[]): Line[] => steps.map(s => ({ ...s, after: s.after.map(e => e.task) }))

/** A gate with places is met by the work in these places; work of the whole visit is met by a gate of the whole attic alone. */
const meets = (g: NamedGate, t: { phase: Task['phase']; touches: Task['touches'] }): boolean =>
  g.stops.phases.includes(t.phase) && (g.stops.places.length === 0 || (t.touches !== 'house' && g.stops.places.some(p => t.touches.includes(p))))

describe('order of work', () => {
  test('no step in the attic is without its cautions, another trade’s neither', () => {
    const bare = new Set<string>()
    onHouses(({ json }) => { for (const t of json.tasks) if (t.cautions.length === 0) bare.add(t.title) })
    expect([...bare].sort()).toEqual([])
  })
  test('earlier phases come first in each place, by the edges and on paper', () => {
    onHouses(({ json }) => {
      expectLaw(json.tasks)
      expect(json.tasks.map(t => t.step)).toEqual(json.tasks.map((_, i) => i + 1))
      for (const t of json.tasks) expect(t.because.map(b => b.task)).toEqual(t.after)
    })
  })

  test('it holds for the rest when any one task is away', () => {
    onHouses(({ data, made }) => {
      const areas = data.areas.map(a => a.id)
      for (const away of made.steps) expectLaw(lines(ordered(made.steps.filter(s => s !== away), areas)))
    }, 60)
  })

  test('each surveyed opening is closed before anything covers its area, or nothing covers it', () => {
    onHouses(({ data, made }) => {
      const before = ancestors(lines(made.steps))
      made.out.sealing.forEach((s, i) => {
        const closing = made.steps.filter(t => t.closes.includes(String(s.id)))
        for (const cover of made.steps.filter(t => t.buries?.includes(data.openings[i]!.in))) {
          expect(closing.length, `${String(s.id)} is open under ${cover.id}`).toBeGreaterThan(0)
          for (const c of closing) expect(before.get(cover.id)!.has(c.id), `${c.id} before ${cover.id}`).toBe(true)
        }
      })
      expect(made.out.sealing.length).toBe(data.openings.length)
    })
  })

  test('a mend is done before everything its gate stops, and in an earlier phase', () => {
    onHouses(({ made }) => {
      const before = ancestors(lines(made.steps))
      for (const g of made.out.gates) if (g.open && g.state === 'mend') {
        const mend = made.steps.find(s => s.id === g.clearedByTask)
        for (const t of made.steps) if (t !== mend && meets(g, t)) {
          expect(mend, `${g.id}: ${t.id} stands without its mend`).toBeDefined()
          expect(rank[mend!.phase]).toBeLessThan(rank[t.phase])
          expect(before.get(t.id)!.has(mend!.id), `${mend!.id} before ${t.id}`).toBe(true)
        }
      }
    })
  })

  test('the clearing step of a hold comes before all work that it stops; a look for a hazard comes before all other steps', () => {
    onHouses(({ made }) => {
      const before = ancestors(lines(made.steps))
      for (const g of made.out.gates) if (g.open && g.state === 'hold') {
        const look = made.steps.find(s => s.id === g.clearedByTask)
        for (const t of made.steps) if (t !== look && (look?.work === 'hazard-look' || !opensHold(t)) && meets(g, t)) {
          expect(look, `${g.id}: ${t.id} stands without a clearing step`).toBeDefined()
          expect(before.get(t.id)!.has(look!.id), `${look!.id} before ${t.id}`).toBe(true)
        }
      }
    })
  })
})

describe('what a stop takes', () => {
  const covers = (m: Made) => m.made.steps.filter(t => t.buries)
  test('no task of the plan would bury a place that a stopped or declined task works in', () => {
    onHouses(m => {
      for (const cover of covers(m)) for (const { task } of m.made.standing.stopped) expect(task.touches !== 'house' && !cover.buries!.some(p => task.touches.includes(p)), `${cover.id} would bury ${task.id}`).toBe(true)
      for (const o of m.data.openings) if (o.decline) expect(covers(m).filter(t => t.buries!.includes(o.in)).map(t => t.id)).toEqual([])
    })
  })

  test('no open stop stands over a task of the plan', () => {
    onHouses(({ made }) => {
      for (const g of made.out.gates) if (g.open && g.state === 'stop') expect(made.steps.filter(t => meets(g, t)).map(t => t.id)).toEqual([])
    })
  })

  test('what is stopped is in no step, no material and no hours', () => {
    onHouses(({ made, json }) => {
      const gone = new Set(made.standing.stopped.map(s => s.task))
      for (const s of made.steps) expect(s.parts.filter(p => gone.has(p)), s.id).toEqual([])
      const parts = new Map(made.steps.map(s => [s.id, s.parts]))
      for (const m of json.materials) for (const id of m.usedFor) expect(parts.get(id)!.some(p => p.needs.some(n => n.item === m.item)), `${m.item} for ${id}`).toBe(true)
      for (const s of made.steps) if (s.id !== 'set-up' && s.id !== 'clean-up') expect(Math.abs(s.personHours.value - s.parts.reduce((sum, p) => sum + p.personHours.value, 0)), s.id).toBeLessThan(0.005 + 1e-9)
    })
  })

  test('no ceiling is loaded over its limit, and none that sags is loaded, without a gate that says so', () => {
    onHouses(({ data, json }) => {
      json.areas.forEach((a, i) => {
        const gates = json.gates.filter(g => g.code.startsWith('ceiling-') && g.path === `/areas/${i}/ceiling`).map(g => g.code)
        if (a.ceilingLoadPsf === undefined) return
        if (a.ceilingLoadPsf > (a.ceilingLimitPsf ?? Infinity) + 0.0005) expect(gates.some(c => c === 'ceiling-over-limit' || c === 'ceiling-overloaded'), `${a.id}: ${a.ceilingLoadPsf} psf`).toBe(true)
        if (a.ceilingLoadPsf > 2.2005) expect(gates, a.id).toContain('ceiling-overloaded')
        const area = data.areas[i]!
        if ('ceiling' in area && area.ceiling.condition !== 'sound') expect(gates, a.id).toContain('ceiling-sagging')
        if (a.ceilingLimitPsf === undefined) expect(gates.length, a.id).toBeGreaterThan(0)
      })
    })
  })

  test('vermiculite in the survey, as a hazard or as a layer, shuts the attic until its paper is there', () => {
    onHouses(({ data, json }) => {
      const there = data.hazards.some(h => h.kind === 'vermiculite') || data.areas.some(a => 'existing' in a && a.existing.some(l => l.fill === 'vermiculite'))
      if (there && !data.clearances?.some(c => c.gate === 'vermiculite')) { expect(json.verdict).toBe('stop'); expect(json.tasks).toEqual([]) }
    })
  })

  test('an area without its fill shows no depth and no bags', () => {
    onHouses(({ made, json }) => {
      for (const a of json.areas) if (a.stoppedBy.length > 0 && !made.steps.some(t => t.buries?.includes(a.id))) {
        for (const key of ['bags', 'initialDepthIn', 'settledDepthIn', 'topOfFillInitialIn', 'markers', 'finalR'] as const) expect(a[key], `${a.id}.${key}`).toBeUndefined()
      }
    })
  })
})

test('a sound house stays sound: the sample of the properties is one', () => {
  onHouses(m => expect(sound(make(m.data))).toBe(true), 20)
})

// What the gates leave. A stop takes work away, and then all work that would bury what was taken.
import { opensHold, type Phase, type Serves, type Task } from '../../scope/kind.ts'
import type { NamedGate } from './gates.ts'

export interface Stopped { readonly task: Task; readonly gate: string; readonly why: string }
export interface Standing { readonly open: readonly Task[]; readonly stopped: readonly Stopped[]; /** Mends whose own task is stopped: open stops now. */ readonly lostMends: readonly string[] }

/** An opening whose owner keeps it open. */
export interface Declined { readonly id: string; readonly area: string; readonly where: string }

/** A task of the whole house goes with the last thing it serves, not with a stop in one place. */
const meets = (places: readonly string[], touches: Task['touches']): boolean => places.length === 0 || (touches !== 'house' && places.some(p => touches.includes(p)))
/** Whether a gate shuts a task, by phase and place. */
export const shuts = (g: NamedGate, t: Task): boolean => g.stops.phases.includes(t.phase) && meets(g.stops.places, t.touches)

const serving = (serves: Serves, open: readonly Task[], phaseOf: ReadonlyMap<Phase, number>, buried: ReadonlySet<string>): boolean =>
  serves.is === 'itself' || (serves.is === 'fill' ? serves.of.some(a => buried.has(a)) : serves.of.some(p => (phaseOf.get(p) ?? 0) > 0) && open.length > 0)

/** Without the tasks that serve nothing from the start: old batts are moved only where something is sealed or blown. */
export function wanted(tasks: readonly Task[]): readonly Task[] {
  const buried = new Set(tasks.flatMap(t => t.buries ?? [])), phaseOf = new Map<Phase, number>()
  for (const t of tasks) if (t.serves.is !== 'work') phaseOf.set(t.phase, (phaseOf.get(t.phase) ?? 0) + 1)
  const kept = tasks.filter(t => serving(t.serves, tasks, phaseOf, buried))
  return kept.length === tasks.length ? kept : wanted(kept)
}

/**
 * Takes away stopped and declined tasks, what would bury their places, and what serves only them, until nothing changes.
 * A mend shuts nothing while its own task stands; without it, it is a stop.
 */
export function standing(tasks: readonly Task[], gates: readonly NamedGate[], declined: readonly Declined[]): Standing {
  const stopped: Stopped[] = [], lost = new Set<string>()
  let open = tasks
  const drop = (why: (t: Task) => { gate: string; why: string } | undefined): boolean => {
    const gone = new Set<Task>()
    for (const task of open) {
      const reason = why(task)
      if (reason) { stopped.push({ task, ...reason }); gone.add(task) }
    }
    if (gone.size > 0) open = open.filter(t => !gone.has(t))
    return gone.size > 0
  }
  const declinedIds = new Map(declined.map(d => [d.id, d]))
  drop(t => {
    const d = t.closes === undefined ? undefined : declinedIds.get(t.closes)
    return d && { gate: 'declined', why: `owner keeps it open: ${d.where}` }
  })
  const stopGates = gates.filter(g => g.open && g.state === 'stop')
  drop(t => { const g = stopGates.find(s => shuts(s, t)); return g && { gate: g.id, why: g.why } })
  for (let changed = true; changed;) {
    changed = false
    for (const g of gates) if (g.open && g.state === 'mend' && !lost.has(g.id) && !open.some(t => t.id === g.clearedByTask)) {
      lost.add(g.id)
      changed = drop(t => shuts(g, t) ? { gate: g.id, why: `its own mend, ${g.clearedByTask}, is not done: ${g.why}` } : undefined) || changed
    }
    // Work is never dropped and then covered.
    for (const d of declined) changed = drop(t => t.buries?.includes(d.area) ? { gate: 'declined', why: `would bury what the owner keeps open: ${d.where}` } : undefined) || changed
    for (const s of [...stopped]) changed = drop(t => t.buries?.some(p => s.task.touches === 'house' || s.task.touches.includes(p)) ? { gate: s.gate, why: `would bury ${s.task.id}, which is stopped` } : undefined) || changed
    const buried = new Set(open.flatMap(t => t.buries ?? [])), phaseOf = new Map<Phase, number>()
    for (const t of open) if (t.serves.is !== 'work') phaseOf.set(t.phase, (phaseOf.get(t.phase) ?? 0) + 1)
    const first = stopped[0]
    changed = drop(t => first && !serving(t.serves, open, phaseOf, buried) ? { gate: stoppedBy(t, stopped) ?? first.gate, why: 'nothing is left that it serves' } : undefined) || changed
  }
  return { open, stopped, lostMends: [...lost] }
}

/** The gate of the stopped task this one served. */
function stoppedBy(t: Task, stopped: readonly Stopped[]): string | undefined {
  const areas = t.serves.is === 'fill' ? t.serves.of : undefined
  return stopped.find(s => areas ? s.task.buries?.some(p => areas.includes(p)) : true)?.gate
}

/** A hold that shuts nothing which still stands needs no step to open it now. */
export const idle = (g: NamedGate, open: readonly Task[]): boolean => g.open && g.state === 'hold' && !open.some(t => !opensHold(t) && (g.stops.places.length === 0 ? g.stops.phases.includes(t.phase) : shuts(g, t)))

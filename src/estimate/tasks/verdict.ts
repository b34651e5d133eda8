import type { NamedGate } from './gates.ts'
import type { Verdict } from '../output.ts'
import { idle, type Standing } from './standing.ts'

const COVER = ['wrap', 'insulate'] as const

/** Worst first. Notes and mends of our own plan do not count; a hold keeps its price but may not be scheduled. */
export function verdictOf(gates: readonly NamedGate[], stands: Standing, unknowns: readonly string[]): Verdict {
  const open = gates.filter(g => g.open)
  const whole = open.some(g => g.state === 'stop' && g.stops.places.length === 0 && (g.stops.phases.includes('seal') || g.stops.phases.includes('insulate')))
  const left = stands.open.some(t => t.phase === 'seal' || COVER.some(p => p === t.phase))
  if (whole || (stands.stopped.some(s => s.gate !== 'declined') && !left)) return 'stop'
  if (open.some(g => g.state === 'hold' && !idle(g, stands.open))) return 'hold'
  return stands.stopped.length > 0 || unknowns.length > 0 ? 'conditional' : 'go'
}

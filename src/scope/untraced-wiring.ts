// Open wiring seen in one part of a house may run on in bays that are closed.
import { wiringPapers } from './hazards/knob-and-tube.ts'
import type { Area, Hazard } from './index.ts'
import { COVERING, type Gate } from './kind.ts'

/** Closed bays that fill is packed into: nobody has looked in there. */
const closed = (a: Area): boolean => a.kind === 'slope' || (a.kind === 'decked-floor' && a.way === 'under')

/** Where it runs in one part of the house, closed bays of any other part wait until somebody has traced it. */
export const untracedWiring = ({ hazards, areas }: { readonly hazards: readonly Hazard[]; readonly areas: readonly Area[] }): Gate[] => {
  const seen = hazards.filter(h => h.kind === 'knob-and-tube')
  if (seen.length === 0 || seen.some(h => h.in === undefined)) return []
  return areas.flatMap((a, i): Gate[] => (!closed(a) || seen.some(h => h.in === a.id) ? [] : [{
    code: 'wiring-not-traced', state: 'hold', where: a.id, in: a.id, path: `/areas/${i}`, why: 'knob-and-tube wiring runs elsewhere in this house, and nobody can look into these bays: packed round open wiring, fill can start a fire', stops: { phases: COVERING, places: [a.id] },
    clearedBy: 'a licensed electrician’s letter that none of it runs here, or that it is dead', clearable: wiringPapers, condition: `The price holds only if an electrician finds no live knob-and-tube wiring in ${a.id} before work starts.`,
  }]))
}

// What a household does while a house is stopped, by what was found in it: the usual public advice, and no more.
import type { GateOut } from '../../estimate/output.ts'
import { html, type Html } from './html.ts'
import type { House } from './page.ts'
import { writeHere } from './parts.ts'

interface Advice { readonly of: readonly string[]; readonly says: readonly string[] }

const ASBESTOS = ['vermiculite', 'vermiculite-not-checked', 'suspect-duct-wrap', 'suspect-duct-wrap-not-checked', 'transite-vent']
const FLAMES = ['carbon-monoxide', 'carbon-monoxide-low', 'combustion-failed', 'combustion-untested', 'unvented-main-heat', 'damaged-flue', 'single-wall-through-ceiling', 'solid-fuel', 'hood-make-up-air', 'power-attic-fan', 'appliances-not-listed', 'combustion-air-unclear']

/** The most urgent first. */
const ADVICE: readonly Advice[] = [
  // Advice of gas utilities and of PHMSA to the public (from memory, high).
  { of: ['gas-leak'], says: ['Gas: everybody stays out, no switch is touched and nothing is lit, until the gas utility says that it is safe. Call it, or 911, from outdoors.'] },
  // What failed stays off until it is mended: CPSC to the public (from memory, high).
  { of: ['carbon-monoxide', 'combustion-failed'], says: ['What failed its test, or may have given off carbon monoxide, stays off until it is repaired and has passed.'] },
  // CPSC and EPA to the public: an alarm on each level, outside the bedrooms; when it sounds, fresh air first, then the call, and back in only when told (from memory, high).
  { of: FLAMES, says: ['A carbon monoxide alarm on each floor near the bedrooms, now: do not wait for our work.', 'If one sounds, or people have headaches, are dizzy or feel sick: everybody goes outdoors at once and calls 911 from there. Nobody goes back in until the responders say so.'] },
  // EPA and ATSDR on vermiculite (seen as relayed by others): leave it, store nothing there, no children, trained firms alone. EPA, asbestos in the home: debris is not dusted, swept or vacuumed (from memory, high).
  { of: ASBESTOS, says: ['What may hold asbestos: nobody goes up, children least of all. Nothing there is stirred, moved or stored, and nobody takes a sample.', 'If pieces have fallen into the rooms: nothing is swept, dusted or vacuumed. Keep away from it, shut the door, and call an accredited asbestos inspector or a licensed abatement firm.'] },
  // CDC, droppings of rodents: not swept or vacuumed dry (from memory, high).
  { of: ['animals', 'animals-few'], says: ['Droppings are not swept or vacuumed: their dust can make people sick.'] },
  // Common practice, no source.
  { of: ['knob-and-tube', 'wiring-not-traced', 'open-splice'], says: ['Old or open wiring: nothing is laid on it. Lights that flicker, a fuse or breaker that trips, a smell of burning: switch it off there, and call a licensed electrician; if it smokes, get out and call 911.'] },
]

/** The part of a deferral that holds from today on. */
export function untilThen({ estimate: { gates }, company }: House): Html {
  const open = gates.filter((g: GateOut) => g.open).map(g => g.code), says = ADVICE.filter(a => a.of.some(code => open.includes(code))).flatMap(a => a.says), phone = company.letterhead?.phone
  return html`<h2>Until then</h2>
<ul>${says.map(s => html`<li>${s}</li>
`)}<li>Nothing in the attic is moved, swept, covered or stored on, and nobody goes up without need${open.some(code => ASBESTOS.includes(code)) && ', nor at all before the word on asbestos is in'}.</li>
<li>Questions, or something changes: ${company.name},${' '}${phone ?? writeHere('phone of the company')}. In danger, 911 comes first.</li>
</ul>
`
}

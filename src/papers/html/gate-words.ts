// Gates as an owner reads them: a title for each, what opens it and who does that, without a word about files.
import type { EstimateOut, GateOut } from '../../estimate/output.ts'
import { html, type Html } from './html.ts'
import type { House } from './page.ts'
import type { Sign } from './parts.ts'
import { codeWords, dayOf, sentence } from './say.ts'

interface Words { readonly title: string; /** Where the program's own words speak to the one who types the file. */ readonly opens?: string }

const LOOK = 'a look by us, before any work'
/** By the code of the gate; a test holds this list to the gates of the program. */
export const gateWords: Readonly<Record<string, Words>> = {
  vermiculite: { title: 'Vermiculite, which may hold asbestos' },
  'vermiculite-not-checked': { title: 'Nobody has looked for vermiculite yet', opens: LOOK },
  'knob-and-tube': { title: 'Old open wiring', opens: 'a licensed electrician’s letter that it is dead or gone' },
  'knob-and-tube-not-checked': { title: 'Nobody has looked for old open wiring yet', opens: LOOK },
  'wiring-not-traced': { title: 'Closed bays that may hold old open wiring', opens: 'a licensed electrician’s letter that none of it runs there, or that it is dead' },
  'open-splice': { title: 'Open wiring boxes or damaged cable' },
  'wet-wood': { title: 'Wet wood' },
  mold: { title: 'Mold' }, 'mold-small': { title: 'A little mold' },
  animals: { title: 'Animals in the attic' }, 'animals-few': { title: 'A few droppings' },
  'suspect-duct-wrap': { title: 'Wrap on ducts that may hold asbestos' },
  'suspect-duct-wrap-not-checked': { title: 'Nobody has looked at the wrap on the ducts yet', opens: LOOK },
  'damaged-flue': { title: 'A damaged flue' }, 'damaged-framing': { title: 'Damaged framing' },
  'recalled-item': { title: 'A recalled item' }, 'solar-wiring': { title: 'Solar wiring', opens: 'a word with the firm that put it up' },
  radon: { title: 'Radon' }, 'sensitive-occupant': { title: 'Someone in the household needs care' },
  'unvented-roof': { title: 'A roof made without an attic’s air' },
  'gas-leak': { title: 'A gas leak' },
  'carbon-monoxide': { title: 'Carbon monoxide' }, 'carbon-monoxide-low': { title: 'A trace of carbon monoxide' },
  'lead-paint': { title: 'Paint of the years when it held lead' }, 'lead-paint-small': { title: 'Paint of the years when it held lead' }, 'lead-paint-question': { title: 'Paint of the years when it may hold lead', opens: 'a word with us on what the work cuts' },
  'combustion-untested': { title: 'A flame that has not been tested', opens: 'a passed combustion test by a certified tester' },
  'combustion-failed': { title: 'A combustion test that failed', opens: 'repair by a licensed HVAC contractor, then a passed test' },
  'solid-fuel': { title: 'A fire of wood in the house' },
  'unvented-main-heat': { title: 'A heater without a vent is the main heat', opens: 'a vented heater in its place' },
  depressurization: { title: 'Fans can pull air down a flue' },
  'hood-make-up-air': { title: 'A strong kitchen hood' }, 'power-attic-fan': { title: 'A powered attic fan beside a flame' },
  'appliances-not-listed': { title: 'What burns fuel is not known yet', opens: LOOK },
  'ceiling-sagging': { title: 'A ceiling that sags or is stained' }, 'ceiling-overloaded': { title: 'A ceiling that can’t carry the fill' },
  'ceiling-over-limit': { title: 'More weight than the ceiling is listed for' }, 'ceiling-no-limit': { title: 'A ceiling without a listed limit' },
  'slope-wet-room': { title: 'A slope over a wet room', opens: 'a designer’s letter, or a vent chute in it' }, 'slope-unvented': { title: 'A slope without a vent chute' },
  'opening-not-proved': { title: 'An old opening that may still be in use', opens: LOOK },
  'fire-separation': { title: 'A gap in a fire separation' }, 'drain-pan': { title: 'No safe drain under the air handler' },
  'facing-up': { title: 'Paper facing up on the old fill' }, 'attic-vents-short': { title: 'Less vent area than the code asks of a new roof' },
  'framing-near-chimney': { title: 'Wood close to the chimney' }, 'framing-near-flue': { title: 'Wood close to a flue' },
  'chimney-use-unknown': { title: 'A chimney that may be in use', opens: LOOK },
  'light-not-ic': { title: 'Lights that fill may not touch' },
  'box-open': { title: 'Wiring boxes without covers' }, 'box-cover-unknown': { title: 'Wiring boxes nobody could see', opens: LOOK },
  'chase-flue-unknown': { title: 'A shaft that may hold a flue', opens: LOOK },
  'combustion-air-unclear': { title: 'An opening that may feed a flame', opens: 'an HVAC contractor’s statement' },
  'fan-into-attic': { title: 'A fan that blows into the attic' },
  'chimney-model-unknown': { title: 'A metal chimney without a label', opens: 'maker and model, from the label or a chimney firm' },
  'single-wall-through-ceiling': { title: 'A single-wall vent through the ceiling' }, 'transite-vent': { title: 'A vent that may hold asbestos' },
  'device-not-moved': { title: 'A warm device in the way' }, 'water-line-freeze': { title: 'A water line that may freeze' },
}

/** Gates that are shut, and that our own work does not open: stops first. */
export const shutGates = ({ estimate: { gates } }: House): readonly GateOut[] => gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold')).sort((a, b) => (a.state === b.state ? 0 : a.state === 'stop' ? -1 : 1))

/** What a gate shuts is in the price, or some of it: a stop never is, and a hold or mend is not where all it touches is left out for another reason. */
export function isPriced(g: GateOut, { areas, ducts, sealing, tasks }: EstimateOut): boolean {
  if (g.state === 'stop' || g.stops.places.length === 0) return g.state !== 'stop'
  const areaOf = (place: string): string | undefined => [...ducts, ...sealing].find(x => x.id === place)?.area ?? areas.find(a => a.id === place)?.id
  // What is done once for the whole house says nothing of one of its areas.
  const done = (area: string): boolean => tasks.some(t => t.areas.includes(area) && g.stops.phases.includes(t.phase) && (areas.length === 1 || t.areas.length < areas.length))
  return tasks.some(t => t.id === g.clearedByTask) || g.stops.places.some(p => { const area = areaOf(p); return area === undefined || done(area) })
}

/** What a gate is called, in words for an owner. */
export const gateTitle = (code: string): string => gateWords[code]?.title ?? sentence(codeWords(code)).slice(0, -1)

/** What opens a gate, in words for an owner. */
export const opensWith = (g: GateOut): string => gateWords[g.code]?.opens ?? g.clearedBy

/** Which of our steps looks at it, tests it or has it done. */
const ourStep = (g: GateOut, house: House | undefined): number | undefined => house?.estimate.tasks.find(t => t.id === g.clearedByTask)?.step

/** A gate in plain words: what is there, why it shuts, what opens it. @param house names the step of ours that has to do with it */
export function gateText(g: GateOut, house?: House): { readonly state: Sign; readonly word: string; readonly says: Html } {
  const title = gateTitle(g.code), step = ourStep(g, house)
  const opens = g.clearance && !g.open
    ? html`<p>Opened by ${g.clearance.by} on ${dayOf(g.clearance.on)}: ${g.clearance.paper}.</p>`
    : html`<p>Opens with: ${g.state === 'mend' && step !== undefined ? `our own work, step ${step}, with a photo.` : sentence(opensWith(g))}${g.state === 'hold' && step !== undefined && ` Step ${step} is in this price.`}</p>`
  return { state: g.open ? g.state : 'opened', word: `${title}: ${g.where}`, says: html`<p>${sentence(g.why)}</p>${g.state !== 'note' && opens}` }
}

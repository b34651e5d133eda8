// What burns fuel in the house. Anything not sealed or electric is tested before the house is tightened.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import type { Books } from '../books/books.ts'
import { dayNumber } from '../files/dates.ts'
import { exactly, work } from '../units/quantity.ts'
import { a as withArticle } from '../units/words.ts'
import { itself, TIGHTENING, type Clearable, type Found, type Gate, type Measure, type Task } from './kind.ts'

export const applianceSchema = f.later(() => f.fields({
  id: f.id('short name', { examples: ['heater'] }),
  kind: f.word(['water-heater', 'furnace', 'boiler', 'room-heater', 'oven', 'fireplace', 'dryer', 'other'] as const, 'what it is'),
  fuel: f.word(['gas', 'propane', 'oil', 'wood', 'electric'] as const, 'what it burns'),
  vent: f.word(['natural-draft', 'fan-assisted', 'sealed', 'unvented', 'none', 'unknown'] as const, 'how it vents; sealed takes its air from outdoors; none for electric'),
  at: f.text('where it stands', { examples: ['utility closet'] }),
  mainHeat: f.optional(f.yesNo('an unvented heater that is the main heat of the house', { default: 'no' })),
  test: f.optional(f.fields({
    result: f.word(['pass', 'fail'] as const, 'draft, spillage and carbon monoxide, worst case'),
    on: f.date('day of the test'),
    by: f.text('who tested'),
  }, 'combustion test before the work')),
}, 'one fuel-burning or electric appliance'))
export type Appliance = f.StaticOf<typeof applianceSchema>

export const combustionClearable: readonly Clearable[] = [{ kind: 'combustion-test', outside: true }]

const NAMES: Readonly<Record<Appliance['kind'], string>> = { 'water-heater': 'water heater', furnace: 'furnace', boiler: 'boiler', 'room-heater': 'room heater', oven: 'oven', fireplace: 'fireplace', dryer: 'dryer', other: 'appliance' }

export const applianceName = (a: Appliance): string => NAMES[a.kind]
/** Its flame shares air with the rooms. */
export const takesRoomAir = (a: Appliance): boolean => a.fuel !== 'electric' && a.vent !== 'sealed'

/** A fire that no draft test can prove: it draws as it pleases. */
const solidFuel = (a: Appliance): boolean => a.fuel === 'wood' && a.vent !== 'sealed'
/** A combustion test proves it, by draft or by its carbon monoxide. */
export const drafts = (a: Appliance): boolean => takesRoomAir(a) && !solidFuel(a)

/** Its gases go up a vent that draws; an oven and a dryer have none that a draft test could read. */
export const hasVent = ({ kind, vent }: Appliance): boolean => vent !== 'unvented' && kind !== 'oven' && kind !== 'dryer'
/** Its gases go into the rooms by design: what a test reads is their carbon monoxide. */
const intoRooms = ({ kind, vent }: Appliance): boolean => vent === 'unvented' || kind === 'oven'
/** What it is: an unvented gas oven; a vent that nobody looked at is said behind it. */
const described = (a: Appliance): string => withArticle([a.vent === 'none' || a.vent === 'unknown' ? '' : a.vent, a.fuel, applianceName(a)].filter(Boolean).join(' ')) + (a.vent === 'unknown' ? ' (vent not looked at)' : '')

/** A pass in the file opens nothing that was never shut; no test is a hold, a failed test is a stop. */
export function applianceGate({ item, at }: Found<Appliance>, stale?: string): Gate | undefined {
  if (!takesRoomAir(item)) return undefined
  const name = applianceName(item)
  const shared = { where: item.at, in: 'house', of: item.id, stops: { phases: TIGHTENING, places: [] }, clearable: combustionClearable }
  if (item.vent === 'unvented' && item.mainHeat === 'yes') return { ...shared, code: 'unvented-main-heat', state: 'stop', path: `${at}/mainHeat`, why: `the ${name} heats the house and gives all its gases and water to the rooms: a tighter house keeps them`, clearedBy: 'a vented heater in its place: list that', clearable: [{ kind: 'heater-removed', license: true, outside: true }] }
  if (item.test?.result === 'fail') return { ...shared, code: 'combustion-failed', state: 'stop', path: `${at}/test`, since: item.test.on, why: `the ${name} failed its combustion test: ${intoRooms(item) ? 'a tighter house keeps its gases' : 'sealing may bring its gases into the rooms'}`, clearedBy: 'repair by a licensed HVAC contractor, then a passed test (appliances[].test)' }
  if (solidFuel(item)) return { ...shared, code: 'solid-fuel', state: 'hold', path: at, why: `a draft test proves nothing for ${withArticle(name)} that burns wood: a tighter house may pull its smoke into the rooms`, clearedByTask: `ready-${item.id}`,
    clearedBy: 'air of its own from outdoors or tight doors, a carbon monoxide alarm beside it, and the owner’s signed instruction', clearable: [{ kind: 'owner-instruction' }], condition: `The price holds only if the ${name} (${item.at}) has its own air or tight doors, and the owner is instructed, before work starts.` }
  if (item.test?.result === 'pass' && stale === undefined) return undefined
  return { ...shared, code: 'combustion-untested', state: 'hold', path: at, why: stale ?? (intoRooms(item) ? `${described(item)} gives its gases to the rooms, and nobody has tested its carbon monoxide: a tighter house keeps them longer` : `${described(item)} that nobody has tested may spill once the house is tighter`), clearedBy: 'a passed combustion test by a certified tester (appliances[].test)',
    clearedByTask: 'test-combustion-in', condition: `The price holds only if the ${name} (${item.at}) passes its combustion test before work starts.` }
}

/** The gate of an appliance, and the step that opens it where that is not the test of the visit. */
export function applianceMeasure(found: Found<Appliance>, surveyedOn: string, books: Books): Measure {
  const { test } = found.item, most = books.start('combustion-test-days', 90, 'day', 'age at the survey up to which a combustion test counts', 'judgment: a season; flues rust, block and come apart')
  const old = test?.result === 'pass' && dayNumber(surveyedOn) - dayNumber(test.on) > most.value
  const gate = applianceGate(found, old ? `the test of the ${applianceName(found.item)} is of ${test.on}, more than ${most.value} days before the survey: it says nothing of today` : undefined)
  const tasks: Task[] = gate?.code !== 'solid-fuel' ? [] : [{
    id: `ready-${found.item.id}`, title: `Instruct the owner on the ${applianceName(found.item)}: its own air or tight doors, an alarm; signed`, phase: 'clear', work: 'clearing', touches: 'house', serves: itself, role: 'lead', ownVisit: true,
    personHours: work(personHours, { amount: exactly(1, 'each', 'one talk'), rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'in the rooms') }), needs: [], cautions: ['No fire during the work and the tests; ash covered.'], proof: 'signed instruction' }]
  return { figures: {}, tasks, gates: gate ? [gate] : [], ...(test?.result === 'pass' ? { assumes: [most] } : {}) }
}

/** A flue in use, or air for a flame, with nothing on the list that burns: the list is not whole. */
export const flueWithoutAppliance = (where: string, path: string): Gate => ({
  ...appliancesNotListed(path), where, why: 'the survey has a flue in use or air for a flame, and lists nothing that burns fuel; an untested flame may spill once the house is tighter',
  clearedBy: 'a look at what it serves: list that under `appliances:`, or take the opening out where it serves nothing',
})

/** No list at all: nobody said whether anything burns fuel. */
export const appliancesNotListed = (path: string): Gate => ({
  code: 'appliances-not-listed', state: 'hold', where: 'house', in: 'house', path, why: 'nobody said what burns fuel in this house; an untested flame may spill once the house is tighter', stops: { phases: TIGHTENING, places: [] },
  clearedBy: 'a look by the estimator, written as `appliances:` ([] says that none burns fuel)', clearedByTask: 'look-appliances', clearable: [], condition: 'The price holds only if a look finds no fuel-burning appliance, or its combustion test is passed, before work starts.',
})

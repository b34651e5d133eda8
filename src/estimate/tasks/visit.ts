// The tasks of the visit: one row each. All touch the house.
import { exactly, given, total, work, type Quantity } from '../../units/quantity.ts'
import { hoseSteps, personHours } from '../../calc/arithmetic.ts'
import { testHours } from '../../calc/price.ts'
import type { Books } from '../../books/books.ts'
import { applianceName, drafts, type Appliance } from '../../scope/appliances.ts'
import { fillOf, itself, workOf, type Phase, type Task } from '../../scope/kind.ts'

const HANDS: readonly Phase[] = ['prepare', 'seal', 'ducts', 'wrap', 'ventilate', 'contain', 'insulate', 'close']
const LEAKS_AND_COVER: readonly Phase[] = ['seal', 'ducts', 'wrap', 'insulate']

const FAN = 'A fan draws on flues and hearths: appliances off, fireplaces cold and ash covered.'
const CO = 'Carbon monoxide: monitor worn and on; over the limit, shut off, air out, leave, call the utility.'

export interface VisitAround {
  readonly appliances: readonly Appliance[]
  /** Appliances whose gate is an open hold. */
  readonly untested: readonly Appliance[]
  readonly listed: boolean
  readonly scope: readonly Task[]
  /** What the job asks for. */
  readonly tests: { readonly blowerDoor: 'none' | 'out' | 'in-and-out'; readonly ductTest: 'none' | 'out' | 'in-and-out' }
  /** Dust that no fan may stir is there: nothing is tested with one. */
  readonly noFan: boolean
  readonly access: { readonly hoseFt?: number; readonly storageFt2?: number }
  readonly stories?: number
  /** What the ducts may leak once they are sealed, as advice. */
  readonly ductTarget?: Quantity<'cfm'>
}

/** Hours of set-up and clean-up follow from the days, and are put in when these are known. */
export function visitTasks({ appliances, untested, listed, scope, tests, noFan, access, stories, ductTarget }: VisitAround, books: Books): Task[] {
  if (scope.length === 0) return []
  const plain = exactly(1, 'factor', 'no access factor on this work')
  const once = (rate: Quantity<'h/unit'>) => work(personHours, { amount: exactly(1, 'each', 'once'), rate, access: plain })
  const later = exactly(0, 'h', 'follows from the days')
  const fired = appliances.filter(drafts)
  const names = (list: readonly Appliance[]): string => list.map(a => `the ${applianceName(a)}`).join(', ').replace(/, (?=[^,]*$)/, ' and ')
  const test = (list: readonly Appliance[]) => work(testHours, { setUp: books.rate('combustion-set-up', 1, 'visit'), count: exactly(list.length, 'each', 'appliances tested'), each: books.rate('combustion-appliance', 0.5, 'each') })
  const filled = [...new Set(scope.filter(t => t.work === 'blow' || t.work === 'pack').flatMap(t => t.buries ?? []))]
  const kit = books.product('protection-kit').item
  const has = (...of: readonly Phase[]): boolean => scope.some(t => of.includes(t.phase))
  const more = work(hoseSteps, { hoseFt: access.hoseFt === undefined ? exactly(0, 'ft', 'no hose length in the file') : given(access.hoseFt, 'ft', '/access/hoseFt'), freeFt: exactly(100, 'ft', 'hose that the rate covers'), stepFt: exactly(50, 'ft', 'a length of hose'), stories: stories === undefined ? exactly(1, 'each', 'no stories in the file') : given(stories, 'each', '/house/stories') })
  const machine = more.value === 0 ? once(books.rate('machine-set', 1.5, 'job')) : total('h', { set: once(books.rate('machine-set', 1.5, 'job')), more: work(personHours, { amount: more, rate: books.rate('machine-more', 0.25, '50 ft of hose or story more'), access: plain }) })
  const still = noFan ? ['Dust that may hold asbestos lies open: no blower and no exhaust fan runs for this test; draft and carbon monoxide without them, the worst case once the inspector or abatement firm has written.'] : []
  const door = noFan ? 'none' : tests.blowerDoor, ducts = noFan || !has('ducts') ? 'none' : tests.ductTest
  const rows: (Omit<Task, 'touches'> | false)[] = [
    door === 'in-and-out' && has(...LEAKS_AND_COVER) && { id: 'blower-door-in', title: 'Blower door before the work: CFM50, attic against house', phase: 'clear', work: 'test-in', serves: workOf(...LEAKS_AND_COVER), role: 'tester', ownVisit: true,
      personHours: once(books.rate('blower-door', 1.5, 'each')), needs: [], cautions: [FAN], proof: 'gauge photos' },
    ducts === 'in-and-out' && { id: 'duct-test-in', title: 'Duct test before the work: CFM25', phase: 'clear', work: 'test-in', serves: workOf('ducts'), role: 'tester', ownVisit: true,
      personHours: once(books.rate('duct-test', 1.5, 'each')), needs: [], cautions: [FAN], proof: 'gauge photo' },
    untested.length > 0 && { id: 'test-combustion-in', title: `Test ${names(untested)} before anything is tightened`, phase: 'clear', work: 'clearing', serves: itself, role: 'tester', ownVisit: true,
      personHours: test(untested), needs: [], cautions: [CO, ...still], proof: 'test form with readings' },
    !listed && { id: 'look-appliances', title: 'Look for everything that burns fuel and list it', phase: 'clear', work: 'clearing', serves: itself, role: 'lead', ownVisit: true,
      personHours: once(books.rate('look-at-hazard', 0.25, 'each')), needs: [], cautions: [CO, ...still], proof: 'list with photos' },
    has(...HANDS) && { id: 'set-up', title: 'Arrive, walk round, protect, light, heating and cooling off', phase: 'clear', work: 'set-up', serves: workOf(...HANDS), role: 'lead', personHours: later, needs: [{ item: kit, quantity: exactly(0, 'person-day', 'follows from the days') }],
      cautions: ['Falls through the ceiling: step on framing only.', 'Heat: water, breaks, a partner.', 'Dust: respirator.', 'Power: find and mark live wiring; lights and cords on a protected circuit.'], proof: 'photos of the rooms before' },
    (access.storageFt2 ?? 0) > 0 && has(...HANDS) && { id: 'move-storage', title: 'Move stored things out of the way and back', phase: 'clear', work: 'storage', serves: workOf(...HANDS), role: 'helper',
      personHours: work(personHours, { amount: given(access.storageFt2!, 'ft2', '/access/storageFt2'), rate: books.rate('move-storage', 0.006, 'ft2'), access: plain }), needs: [], cautions: ['Lift with two.', 'Step on framing only.'], proof: 'photo before and after' },
    has(...LEAKS_AND_COVER) && { id: 'look', phase: 'check', work: 'look', serves: workOf(...LEAKS_AND_COVER), role: 'lead', needs: [],
      ...(door === 'none' ? { title: 'Last look before cover: smoke pencil and flashlight, a photo of each opening', personHours: once(books.rate('look', 0.75, 'job')), cautions: ['Step on framing only.'], proof: 'photo of each opening' }
        : { title: 'Last look before cover: blower door on, smoke pencil and flashlight, a photo of each opening', personHours: once(books.rate('look-blower-door', 1.5, 'job')), cautions: [FAN, 'Step on framing only.'], proof: 'CFM50, photo of each opening' }) },
    ducts !== 'none' && { id: 'duct-test', title: `Duct test: CFM25 of the sealed ducts${ductTarget ? `, ${Math.round(ductTarget.value)} wanted at most` : ''}`, phase: 'check', work: 'test', serves: workOf('ducts'), role: 'tester',
      personHours: once(books.rate('duct-test', 1.5, 'each')), needs: [], cautions: [FAN], proof: 'gauge photo' },
    fired.length > 0 && has(...LEAKS_AND_COVER) && { id: 'test-combustion-interim', title: `Test ${names(fired)} again: the house was tightened`, phase: 'check', work: 'test', serves: workOf(...LEAKS_AND_COVER), role: 'tester',
      personHours: test(fired), needs: [], cautions: [CO, ...still, 'Again at the end of each day that changed shell, ducts or fans: no house is left overnight tightened and untested.', 'A failed test: appliance off.'], proof: 'test form' },
    filled.length > 0 && { id: 'set-machine', title: 'Set the machine, lay the hose, check bags and gate against the chart', phase: 'insulate', work: 'machine', serves: fillOf(...filled), role: 'hose',
      personHours: machine, needs: [], cautions: ['Engine outdoors: exhaust.', 'Hose and cord trips.', 'Hands out of the hopper while it runs.'], proof: 'setting card' },
    has(...HANDS) && { id: 'clean-up', title: 'Close up each evening; at the end clean, load, haul away', phase: 'close', work: 'clean-up', serves: workOf(...HANDS), role: 'helper', personHours: later, needs: [],
      cautions: ['Leave no opening uncovered overnight.'], proof: 'photos of the rooms after' },
    door !== 'none' && has(...LEAKS_AND_COVER) && { id: 'blower-door-out', title: 'Blower door after the work: CFM50, attic against house', phase: 'prove', work: 'prove', serves: workOf(...LEAKS_AND_COVER), role: 'tester',
      personHours: once(books.rate('blower-door', 1.5, 'each')), needs: [], cautions: [FAN], proof: 'gauge photos' },
    fired.length > 0 && has(...LEAKS_AND_COVER) && { id: 'test-combustion-out', title: `Test ${names(fired)} after the work`, phase: 'prove', work: 'prove', serves: workOf(...LEAKS_AND_COVER), role: 'tester',
      personHours: test(fired), needs: [], cautions: [CO, ...still, 'A failed test: appliance off, utility or HVAC contractor called.'], proof: 'test form' },
  ]
  return rows.filter(r => r !== false).map(r => ({ ...r, touches: 'house' as const }))
}

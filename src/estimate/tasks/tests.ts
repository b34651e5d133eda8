// What each test step reads, and where that reading has a limit.
import type { Books } from '../../books/books.ts'
import type { JobFile } from '../../job/job-file.ts'
import { flueGas } from '../../reference/draft.ts'
import { sourceOf } from '../../reference/table.ts'
import { applianceName, drafts, hasVent, type Appliance } from '../../scope/appliances.ts'
import { draftLimit } from '../../scope/draft-limit.ts'
import { coLevels } from '../../scope/hazards/carbon-monoxide.ts'
import { given, type Quantity } from '../../units/quantity.ts'
import { a as withArticle } from '../../units/words.ts'
import type { Step } from './order.ts'

export interface Reading {
  readonly id: string; readonly task: string; readonly of: string; readonly where: string; readonly reads: string; readonly unit: string
  readonly before?: Quantity; readonly atMost?: Quantity; readonly acts: readonly { readonly from: Quantity; readonly act: string }[]
}
type Row = Pick<Reading, 'reads' | 'unit' | 'before' | 'atMost'>

/** The readings of the test steps that stand in the plan, in its order. @param around what sealed ducts may leak at 25 Pa, as advice; whether dust lies open that no fan may stir */
export function readingsOf({ appliances = [], tests = {} }: Pick<JobFile, 'appliances' | 'tests'>, steps: readonly Pick<Step, 'id' | 'parts'>[], { ductTarget, noFan }: { readonly ductTarget?: Quantity<'cfm'> | undefined; readonly noFan: boolean }, books: Books): Reading[] {
  const measured = (key: 'cfm50' | 'cfm25Total', unit: 'cfm') => (tests[key] === undefined ? {} : { before: given(tests[key], unit, `/tests/${key}`) })
  const zone = tests.zonePa === undefined ? {} : { before: given(tests.zonePa, 'Pa', '/tests/zonePa') }
  const door: readonly Row[] = [{ reads: 'blower door at 50 Pa', unit: 'CFM50', ...measured('cfm50', 'cfm') }, { reads: 'attic against house, house at 50 Pa', unit: 'Pa', ...zone }]
  const ducts: Row = { reads: 'ducts at 25 Pa, all leakage', unit: 'CFM25', ...measured('cfm25Total', 'cfm') }
  const house = (task: string, rows: readonly Row[]): Reading[] => rows.map((r, i) => ({ id: `${task}-${i + 1}`, task, of: 'house', where: '', ...r, acts: [] }))
  const drafting = appliances.filter(drafts)
  return steps.flatMap(({ id, parts }): Reading[] => {
    if (id === 'blower-door-in' || id === 'blower-door-out') return house(id, door)
    if (id === 'look' && !noFan && (tests.blowerDoor ?? 'none') !== 'none') return house(id, door.slice(0, 1))
    if (id === 'duct-test-in') return house(id, [ducts])
    if (id === 'duct-test') return house(id, [{ ...ducts, ...(ductTarget ? { atMost: ductTarget } : {}) }])
    if (!id.startsWith('test-combustion')) return []
    // The first test is of what nobody has tested yet.
    const due = id === 'test-combustion-in' ? drafting.filter(a => a.test === undefined) : drafting
    return parts.length === 0 ? [] : [...due.flatMap(a => flameReadings(id, a, drafting, books)), roomReading(id, books)]
  })
}

/** What the readings of one flame may be at most; draft and spillage only where it has a vent. */
export function flameLimits(a: Appliance, drafting: readonly Appliance[], books: Books) {
  const practice = 'home performance practice (from memory, medium)'
  const vented = hasVent(a), gas = flueGas.rows.find(r => r.kind === a.kind)
  return {
    basis: gas?.basis ?? 'air free', ...(gas ? { flueCoPpm: books.start(`co-flue-${gas.kind}`, gas.ppm, 'ppm', `carbon monoxide in the flue gas of ${withArticle(applianceName(a))}, ${gas.basis}, at most`, `${sourceOf(flueGas, gas)} (from memory, medium)`) } : {}),
    ...(vented ? { vent: { pulledDownPa: draftLimit(a, drafting, books), spillageWarm: books.start('spillage-warm', 60, 's', 'spillage at start with a warm vent, at most', practice), spillageCold: books.start('spillage-cold', 300, 's', 'spillage at start with a cold vent, at most', practice) } } : {}),
  }
}

/** Worst case: all that blows air out runs, doors as they pull most. */
function flameReadings(task: string, a: Appliance, drafting: readonly Appliance[], books: Books): Reading[] {
  const most = flameLimits(a, drafting, books)
  const rows: Row[] = [
    ...(most.vent ? [
      { reads: 'its zone against outdoors, worst case: pulled down by', unit: 'Pa', atMost: most.vent.pulledDownPa },
      { reads: 'spillage ends, vent warm', unit: 's', atMost: most.vent.spillageWarm },
      { reads: 'spillage ends, vent cold', unit: 's', atMost: most.vent.spillageCold },
    ] : []),
    { reads: `carbon monoxide in its flue gas, ${most.basis}`, unit: 'ppm', ...(most.flueCoPpm ? { atMost: most.flueCoPpm } : {}) },
  ]
  return rows.map((r, i) => ({ id: `${task}-${a.id}-${i + 1}`, task, of: applianceName(a), where: a.at, ...r, acts: [] }))
}

/** Worn by the tester and by everybody in the house while a flame is tested. */
function roomReading(task: string, books: Books): Reading {
  const { note, abort, off, out } = coLevels(books)
  return { id: `${task}-room`, task, of: 'house', where: '', reads: 'carbon monoxide in the air of the rooms', unit: 'ppm', acts: [
    { from: note, act: 'look for its source' }, { from: abort, act: 'end the test' }, { from: off, act: 'appliances off, windows open, leave, call the utility' }, { from: out, act: 'everybody out, call 911 from outdoors' },
  ] }
}

// Fans that draw air out of the house: what they take, a tighter house can no longer give.
import * as f from '../fields/index.ts'
import { lessCut } from '../calc/air.ts'
import { depressurization } from '../calc/draft.ts'
import { lineCents } from '../calc/price.ts'
import type { Books } from '../books/books.ts'
import { fanFlows } from '../reference/draft.ts'
import { fromRow } from '../reference/table.ts'
import { exactly, given, totalOf, work, type Quantity } from '../units/quantity.ts'
import { leakExponent } from './air-cut.ts'
import { drafts, hasVent, type Appliance } from './appliances.ts'
import { draftLimit } from './draft-limit.ts'
import { itself, TIGHTENING, type Found, type Gate, type Measure, type Task } from './kind.ts'

export const exhaustSchema = f.later(() => f.fields({
  id: f.id('short name', { examples: ['hood'] }),
  kind: f.word(['bath-fan', 'hood', 'dryer', 'central-vacuum', 'power-attic-fan', 'whole-house-fan'] as const, 'what it is'),
  at: f.text('where, in your words', { examples: ['kitchen'] }),
  cfm: f.optional(f.number('cfm', { above: 0, max: 5000 }, 'air it moves at its highest step, measured or by its label', { examples: [600] })),
  measured: f.optional(f.yesNo('cfm was measured, not read from the label', { default: 'no' })),
  disabled: f.optional(f.yesNo('a powered attic fan whose power is off for good', { default: 'no' })),
}, 'one fan that blows outdoors'))
export type Exhaust = f.StaticOf<typeof exhaustSchema>

/** `flame`: something in the house burns fuel on room air. */
export function exhaustMeasure({ item, at }: Found<Exhaust>, flame: boolean, books: Books): Measure {
  const shared = { where: item.at, in: 'house', of: item.id, path: at, stops: { phases: TIGHTENING, places: [] } } as const
  const step = (id: string, title: string, role: Task['role'], sub: string, proof: string): Task => ({
    id, title, phase: 'clear', work: 'swap', touches: 'house', serves: itself, closes: id, from: at, role, ownVisit: true, personHours: exactly(0, 'h', 'the trade’s own'),
    subcontractCents: work(lineCents, { amount: exactly(1, 'each', 'one fan'), unitPriceCents: books.subcontract(sub) }), needs: [], cautions: ['Licensed trade only.'], proof })
  const most = books.start('hood-cfm', 400, 'cfm', 'hood over which make-up air is asked for', 'IRC M1503.6 (from memory, medium)')
  if (item.kind === 'hood' && (item.cfm ?? 0) > most.value) {
    const gate: Gate = { ...shared, code: 'hood-make-up-air', state: 'hold', why: `a hood of ${item.cfm} cfm is over ${most.value} cfm: in a tighter house it pulls its air down flues`, clearedByTask: `make-up-air-${item.id}`, clearedBy: 'make-up air that opens with the hood, or a smaller hood', clearable: [{ kind: 'hvac-letter', license: true, outside: true }],
      condition: `The price holds only if the hood (${item.at}) gets make-up air before work starts.` }
    return { figures: {}, assumes: [most], gates: [gate], tasks: [step(`make-up-air-${item.id}`, `HVAC contractor: make-up air for the hood (${item.at})`, 'hvac', 'make-up-air', 'photo, letter')] }
  }
  if (item.kind === 'power-attic-fan' && item.disabled !== 'yes' && flame) {
    const gate: Gate = { ...shared, code: 'power-attic-fan', state: 'hold', why: 'a powered attic fan pulls air out of the house and can turn a flue round', clearedByTask: `switch-off-${item.id}`, clearedBy: 'its power taken off for good, or a blower door that proves the ceiling tight', clearable: [{ kind: 'electrician-repair', license: true, outside: true }, { kind: 'ceiling-test' }],
      condition: `The price holds only if the attic fan (${item.at}) is taken off its power before work starts.` }
    return { figures: {}, gates: [gate], tasks: [step(`switch-off-${item.id}`, `Electrician: take the attic fan off its power (${item.at})`, 'electrician', 'wiring-repair', 'electrician’s photo')] }
  }
  return { figures: {}, tasks: [] }
}

/** All that can run together against the tightest limit of what drafts: it can raise a warning, and lowers nothing. */
export function draftWarning(exhausts: readonly Found<Exhaust>[], appliances: readonly Appliance[], house: { readonly cfm50?: Quantity<'cfm'>; /** The most that the plan may take off it. */ readonly cut?: Quantity<'cfm'> }, books: Books): Measure | undefined {
  const drafting = appliances.filter(a => drafts(a) && hasVent(a)), running = exhausts.filter(e => e.item.kind !== 'power-attic-fan' && e.item.kind !== 'whole-house-fan')
  if (house.cfm50 === undefined || drafting.length === 0 || running.length === 0) return undefined
  // Of several hoods the largest runs; all else together.
  const flow = ({ item, at }: Found<Exhaust>): Quantity<'cfm'> => { const r = fanFlows.rows.find(x => x.kind === item.kind)!; return item.cfm === undefined ? fromRow(fanFlows, r, r.cfm, 'cfm', r.kind) : given(item.cfm, 'cfm', `${at}/cfm`) }
  const hoods = running.filter(e => e.item.kind === 'hood').sort((a, b) => flow(b).value - flow(a).value), together = [...hoods.slice(0, 1), ...running.filter(e => e.item.kind !== 'hood')]
  const exhaustCfm = totalOf('cfm', together, e => [e.id, flow(e)])
  const cfm50 = house.cut ? work(lessCut, { before: house.cfm50, cut: house.cut }) : house.cfm50
  const pulled = work(depressurization, { exhaustCfm, cfm50, exponent: leakExponent(books) })
  const limitPa = drafting.map(a => draftLimit(a, drafting, books)).sort((a, b) => a.value - b.value)[0]!
  if (pulled.value <= limitPa.value) return undefined
  return { figures: {}, tasks: [], assumes: [limitPa, pulled], gates: [{ code: 'depressurization', state: 'note', where: 'house', in: 'house', path: '/exhausts', why: `fans that can run together (${Math.round(exhaustCfm.value)} cfm) pull the house down by at least ${pulled.value.toFixed(1)} Pa ${house.cut ? 'once it is sealed' : 'as it leaks now'}, zone open to the house; the limit is ${limitPa.value} Pa`, stops: { phases: [], places: [] },
    clearedBy: 'the worst-case tests in the plan decide; a sealed appliance or make-up air cures it', clearable: [] }] }
}

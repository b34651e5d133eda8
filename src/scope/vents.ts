// Whether the attic has the vents that the code asks for. A note with a priced way out: vents are never in the price unasked.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import { lineCents } from '../calc/price.ts'
import { freeNeeded, shareOf, soffitFree, ventRatio, ventsFree, ventsToAdd } from '../calc/vent.ts'
import type { Books } from '../books/books.ts'
import type { Finding } from '../findings/finding.ts'
import { editions } from '../reference/targets.ts'
import { fromRow } from '../reference/table.ts'
import { COLD_ZONES, ventRules } from '../reference/ventilation.ts'
import { exactly, given, total, work, type Quantity } from '../units/quantity.ts'
import type { Eave } from './eaves.ts'
import { CAUTION, itself, type Found, type Gate, type Task } from './kind.ts'

export const highVentSchema = f.later(() => f.fields({
  kind: f.word(['ridge', 'gable', 'roof-vent', 'turbine', 'powered'] as const, 'what it is'),
  at: f.optional(f.text('where, in your words', { examples: ['main roof'] })),
  lengthFt: f.optional(f.feet(500, 'length of a ridge vent')),
  netFreeIn2PerFt: f.optional(f.number('in2/ft', { min: 0, max: 100 }, 'net free area of a foot of ridge vent, as marked', { examples: [18] })),
  count: f.optional(f.count(60, 'how many alike')),
  netFreeIn2: f.optional(f.number('in2', { min: 0, max: 2000 }, 'net free area of one, as marked', { examples: [50] })),
}, 'vents near the ridge'))
export type HighVent = f.StaticOf<typeof highVentSchema>

/** Only what is surely wrong. */
export function ventFaults({ item, at }: Found<HighVent>): Finding[] {
  const ridge = item.kind === 'ridge', missing = ridge ? item.lengthFt === undefined || item.netFreeIn2PerFt === undefined : item.count === undefined || item.netFreeIn2 === undefined
  return missing ? [{ code: 'vent-size-missing', severity: 'error', path: `${at}/kind`, says: `kind: ${item.kind} without ${ridge ? 'lengthFt and netFreeIn2PerFt' : 'count and netFreeIn2'}`, why: 'its net free area follows from these', mend: ridge ? 'write lengthFt: 30, netFreeIn2PerFt: 18' : 'write count: 4, netFreeIn2: 50' }] : []
}

export interface VentsAround {
  readonly areaFt2: Quantity<'ft2'>
  readonly edition: string | undefined
  readonly zone: string | undefined
  /** Every ceiling has a vapor retarder on its warm side. */
  readonly retarder: boolean
}

export interface Vents {
  readonly figures: Readonly<Record<string, Quantity>>
  readonly gates: readonly Gate[]
  readonly findings: readonly Finding[]
  /** What would cure it, priced beside the job. */
  readonly offers: readonly { readonly id: string; readonly what: string; readonly tasks: readonly Task[] }[]
}

const IN2 = (q: Quantity): string => `${Math.round(q.value)} in²`

/** Nothing where the survey says nothing of vents; a finding where it says half. */
export function atticVents(eaves: readonly Found<Eave>[] | undefined, high: readonly Found<HighVent>[] | undefined, around: VentsAround, books: Books): Vents | undefined {
  const told = (eaves ?? []).filter(e => e.item.netFreeIn2PerFt !== undefined)
  if (told.length === 0 && high === undefined) return undefined
  const silent = (eaves ?? []).filter(e => e.item.netFreeIn2PerFt === undefined && e.item.ventedBays > 0)
  if (silent.length > 0 || high === undefined) {
    return { figures: {}, gates: [], offers: [], findings: [{ code: 'vents-half-surveyed', severity: 'note', path: silent[0]?.at ?? '/eaves', says: silent.length > 0 ? `no netFreeIn2PerFt for the eave ${silent[0]!.item.at}` : 'no highVents', why: 'without all vents the net free area can’t be compared with what the code asks for', mend: silent.length > 0 ? 'write netFreeIn2PerFt: as marked on the vent, 0 where it is painted shut' : 'write highVents: and what is there, or highVents: []' }] }
  }
  const rule = ventRules.rows.find(r => r.edition === (around.edition ?? editions.at(-1)))!
  const sum = (lines: readonly Quantity[], none: string): Quantity<'in2'> => lines.length === 0 ? exactly(0, 'in2', none) : total('in2', lines)
  const low = sum(told.map(e => work(soffitFree, { lengthFt: e.q('lengthFt'), perFt: given(e.item.netFreeIn2PerFt!, 'in2/ft', `${e.at}/netFreeIn2PerFt`) })), 'no vented eave')
  const top = sum(high.map(v => (v.item.kind === 'ridge' ? work(soffitFree, { lengthFt: v.q('lengthFt'), perFt: given(v.item.netFreeIn2PerFt!, 'in2/ft', `${v.at}/netFreeIn2PerFt`) }) : work(ventsFree, { count: v.q('count'), eachIn2: v.q('netFreeIn2') }))), 'no high vent')
  const part = (n: number) => fromRow(ventRules, rule, n, 'factor', rule.edition), share = (n: number) => fromRow(ventRules, rule, n, 'fraction', rule.edition)
  const reduced = work(freeNeeded, { areaFt2: around.areaFt2, ratio: part(rule.reduced) })
  const highWanted = work(shareOf, { needed: reduced, share: share(rule.high) }), lowWanted = work(shareOf, { needed: reduced, share: share(rule.low) })
  const cold = around.zone !== undefined && COLD_ZONES.includes(around.zone), balanced = top.value >= highWanted.value - 1e-9 && low.value >= lowWanted.value - 1e-9
  const eased = rule.retarder === 'and' ? balanced && (!cold || around.retarder) : balanced || (cold && around.retarder)
  const neededIn2 = eased ? reduced : work(freeNeeded, { areaFt2: around.areaFt2, ratio: part(rule.base) }), netFreeIn2 = total('in2', { low, high: top })
  const figures = { netFreeIn2, lowIn2: low, highIn2: top, neededIn2, ...(netFreeIn2.value >= 1 ? { ratio: work(ventRatio, { areaFt2: around.areaFt2, freeIn2: netFreeIn2 }) } : {}) }
  const findings: Finding[] = []
  const kinds = new Set(high.map(v => (v.item.kind === 'turbine' || v.item.kind === 'roof-vent' ? 'roof' : v.item.kind)))
  if (kinds.size > 1) findings.push({ code: 'vents-mixed', severity: 'note', path: '/highVents', says: `${[...kinds].join(', ')} together`, why: 'high vents of different kinds draw from each other and not from the eaves', mend: 'close all but one kind when the roof is next worked on' })
  if (netFreeIn2.value >= neededIn2.value - 1e-9) return { figures, gates: [], findings, offers: [] }

  // Half of what is needed at the eaves first; high vents never alone.
  const half = work(shareOf, { needed: neededIn2, share: exactly(1 / 2, 'fraction', 'half of it at the eaves') })
  const soffitEach = books.start('soffit-vent-free', 60, 'in2', 'net free area of one soffit vent'), roofEach = books.start('roof-vent-free', 50, 'in2', 'net free area of one roof vent')
  const soffits = work(ventsToAdd, { needed: half, there: low, eachIn2: soffitEach }), roofs = work(ventsToAdd, { needed: half, there: top, eachIn2: roofEach })
  const base = { touches: 'house', serves: itself, phase: 'ventilate', work: 'baffle' } as const
  const tasks: Task[] = []
  if (soffits.value > 0) tasks.push({ ...base, id: 'cut-soffit-vents', title: 'Cut soffit vents in', count: soffits.value, role: 'crew', personHours: work(personHours, { amount: soffits, rate: books.rate('soffit-vent', 0.5, 'each'), access: exactly(1, 'factor', 'from a ladder') }),
    needs: [{ item: books.product('soffit-vent').item, quantity: soffits }], cautions: [CAUTION.ladder], proof: 'photo of each' })
  if (roofs.value > 0) tasks.push({ ...base, id: 'cut-roof-vents', title: 'Roofer: cut in and flash roof vents', count: roofs.value, role: 'roofer', personHours: exactly(0, 'h', 'the roofer’s own'), subcontractCents: work(lineCents, { amount: roofs, unitPriceCents: books.subcontract('roof-vent') }),
    needs: [], cautions: ['Fall protection; the roof’s warranty is the roofer’s.'], proof: 'photo from the roof' })
  const parts = [soffits.value > 0 && `${soffits.value} soffit vents`, roofs.value > 0 && `${roofs.value} roof vents`].filter(Boolean).join(' and ')
  return {
    figures, findings, offers: tasks.length > 0 ? [{ id: 'attic-vents', what: `${parts}, to reach ${IN2(neededIn2)} of net free area; to be decided before the blow, and with a baffle in each bay that they open`, tasks }] : [],
    gates: [{ code: 'attic-vents-short', state: 'note', where: 'attic', in: 'house', path: '/eaves', why: `${IN2(netFreeIn2)} of net free area, and ${IN2(neededIn2)} are asked for (one part of ${eased ? rule.reduced : rule.base}); a sealed ceiling lets less moisture up`, stops: { phases: [], places: [] },
      clearedBy: parts === '' ? 'vents at the eaves and near the ridge in like parts' : `${parts}: offered beside this price`, clearable: [] }],
  }
}

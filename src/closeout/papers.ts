// What goes on the receipt, the certificate and the card: one line for each part of the house, never added up, and by name what nobody has shown.
import { markers } from '../calc/fill.ts'
import type { Estimate } from '../estimate/estimate.ts'
import { certificateFields, receiptFields } from '../reference/closeout-rules.ts'
import { total, work, type Quantity } from '../units/quantity.ts'
import type { CloseoutFile } from './format.ts'
import type { MissingOut } from './output.ts'
import type { AreaProof } from './proof.ts'

type Fields = Readonly<Record<string, unknown>>
/** Insulation in one part of the house. */
type Part = Fields & { readonly id: string; readonly part: string; readonly material: string; readonly kind: 'loose-fill' | 'other' }

const FILLS: Readonly<Record<string, string>> = { cellulose: 'loose-fill cellulose', fiberglass: 'loose-fill fiberglass' }

function areaPart(p: AreaProof, estimate: Estimate): Part {
  const blown = estimate.books.blown(p.product.item), maker = p.entries.find(e => e.entry.maker !== undefined)?.entry.maker, { figures } = p
  const shared = { id: p.id, part: `${p.id}, ${String(p.area.measure.figures['kind']).replaceAll('-', ' ')}`, material: blown ? FILLS[blown.fill] ?? blown.fill : p.product.name, ...(maker === undefined ? {} : { maker }), ...(p.entries.length > 0 ? { coverageFt2: p.coveredFt2 } : {}) }
  const of = (key: string, from: string): Fields => (figures[from] === undefined ? {} : { [key]: figures[from] })
  if (p.way === 'laid') return { ...shared, kind: 'other', ...(p.entries.length > 0 ? { ...of('thicknessIn', 'thicknessIn'), ...of('rValue', 'labelR') } : {}) }
  if (p.way === 'packed') return { ...shared, kind: 'loose-fill', ...(p.proof === 'not-shown' ? {} : { ...of('initialIn', 'thicknessIn'), ...of('settledIn', 'thicknessIn') }), ...(p.entries.some(e => e.entry.labelR !== undefined) && p.proof === 'proved' ? of('rValue', 'labelR') : {}), ...of('bags', 'bags'), ...of('densityPcf', 'densityPcf') }
  return { ...shared, kind: 'loose-fill', ...of('initialIn', 'initialDepthIn'), ...(p.certified ? { settledIn: p.certified.settledDepthIn, rValue: p.certified.r } : {}), ...of('bags', 'bags'), ...of('densityPcf', 'densityPcf') }
}

/** The fields of a paper that are missing, in words. */
export const missingWords = (missing: readonly MissingOut[]): string => missing.map(m => (m.part === undefined ? m.title : `${m.title} of ${m.part}`)).join(', ')

/** A paper with what it shows and, by the rule's list, what is missing on it. */
function paper(rule: string, table: typeof receiptFields, parts: readonly Part[], file: CloseoutFile) {
  const { company, name, license, signedOn } = file.installer ?? {}, signature: Fields = { ...(company === undefined ? {} : { company }), ...(name === undefined ? {} : { name }), ...(license === undefined ? {} : { license }), ...(signedOn === undefined ? {} : { signedOn }) }
  return { rule, parts, ...signature, missing: [...table.rows.filter(r => r.of === 'paper' && signature[r.field] === undefined).map(({ field, title }) => ({ field, title })), ...parts.flatMap(p => table.rows.filter(r => r.of === p.kind && p[r.field] === undefined).map(({ field, title }) => ({ part: p.id, field, title })))] }
}

const HOT = ['chimney', 'metal-flue', 'combustion-air-opening', 'heat-producing-device'] as const

/** The openings whose surroundings stay free of fill. */
function keepClear({ plan }: Estimate): { what: string; where: string }[] {
  const bare = plan.taken.openings.filter(o => o.found.item.kind === 'recessed-light' && o.measure.paths?.some(p => p.bareTops)).map(o => ({ what: 'box over a light', where: o.found.item.at }))
  return [...bare, ...plan.taken.openings.filter(o => HOT.some(k => k === o.found.item.kind) && !('inUse' in o.found.item && o.found.item.inUse === 'no')).map(o => ({ what: o.found.item.kind.replaceAll('-', ' '), where: o.found.item.at }))]
}

export function closingPapers(file: CloseoutFile, areas: readonly AreaProof[], estimate: Estimate) {
  const laid = (file.laid ?? []).map((l, i): Part => ({ id: `laid-${i + 1}`, part: l.part, material: l.what, kind: 'other', ...(l.maker === undefined ? {} : { maker: l.maker }), ...(l.areaFt2 === undefined ? {} : { coverageFt2: l.areaFt2 }), ...(l.thicknessIn === undefined ? {} : { thicknessIn: l.thicknessIn }), ...(l.labelR === undefined ? {} : { rValue: l.labelR }) }))
  const parts = [...areas.map(p => areaPart(p, estimate)), ...laid]
  const blown = areas.filter(p => p.way === 'blown'), asked = blown.map(p => work(markers, { areaFt2: p.coveredFt2 })), count: Quantity<'each'> = total('each', asked)
  return { receipt: paper('16 CFR 460.17', receiptFields, parts, file), certificate: paper('IECC R303.1.1', certificateFields, parts, file), card: { ...(file.flags === undefined ? {} : { flags: file.flags }), keepClear: keepClear(estimate), markers: count } }
}

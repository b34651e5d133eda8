// How much of everything: areas first, then what depends on their depth.
import type { Books } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { ductTakeoff, type Duct, type DuctMeasure } from '../../scope/ducts.ts'
import { zoneOf } from '../../reference/zones.ts'
import { atticVents, type Vents } from '../../scope/vents.ts'
import { airCut } from '../../scope/air-cut.ts'
import type { Leak } from '../../scope/leaks.ts'
import { vermiculiteGate } from '../../scope/hazards/vermiculite.ts'
import { untracedWiring } from '../../scope/untraced-wiring.ts'
import { airHandlerTakeoff } from '../../scope/air-handler.ts'
import { draftWarning, exhaustMeasure } from '../../scope/exhausts.ts'
import { appliancesNotListed, applianceMeasure, flueWithoutAppliance, takesRoomAir } from '../../scope/appliances.ts'
import { areaKinds, hazardKinds, openingKinds, type Opening } from '../../scope/index.ts'
import type { AreaKind, AreaMeasure } from '../../scope/area-kind.ts'
import { wayIn, wayOf } from '../../scope/way-in.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { CAUTION, found, part, takes, workOf, type AreaAround, type Found, type Gate, type House, type Kind, type Measure, type OpeningAround } from '../../scope/kind.ts'
import { readingFindings } from './plausible.ts'
import { guarded } from './guarded.ts'
import { exactly, given, totalOf, work, type Quantity } from '../../units/quantity.ts'

export interface AreaTaken { readonly id: string; readonly at: string; readonly measure: AreaMeasure }
export interface OpeningTaken { readonly found: Found<Opening>; readonly measure: Measure; readonly leak?: Leak | undefined }
export interface DuctTaken { readonly found: Found<Duct>; readonly measure: DuctMeasure }
export interface Taken {
  readonly areas: readonly AreaTaken[]
  readonly openings: readonly OpeningTaken[]
  readonly ducts: readonly DuctTaken[]
  readonly house: readonly Measure[]
  readonly vents?: Vents
  readonly findings: readonly Finding[]
}

/** Kinds by their names. */
const byKind = <K extends { readonly kind: string }>(kinds: readonly K[]): ReadonlyMap<string, K> => new Map(kinds.map(k => [k.kind, k]))
const areaKind = byKind<{ readonly kind: string }>(areaKinds) as unknown as ReadonlyMap<string, AreaKind<never>>, openingKind = byKind<{ readonly kind: string }>(openingKinds) as unknown as ReadonlyMap<string, Kind<never, OpeningAround>>
const hazardKind = byKind(hazardKinds)

/** The largest way in, hatch, stair or door, its shorter side first: through it all work passes. */
function largestHatch(job: JobFile): readonly [Quantity, Quantity] | undefined {
  const hatches = job.openings.flatMap((o, i) => ('sizeIn' in o && wayOf(o) ? [{ size: o.sizeIn, at: `/openings/${i}` }] : []))
  const best = hatches.sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1] || Math.min(...b.size) - Math.min(...a.size))[0]
  if (!best) return undefined
  const short = best.size[0] <= best.size[1] ? 0 : 1
  return [part(best.at, 'sizeIn', best.size, short), part(best.at, 'sizeIn', best.size, 1 - short)]
}

/** The first opening that serves a flame, where the list has none. */
function flueGates(job: JobFile): Gate[] {
  if (job.appliances === undefined || job.appliances.some(a => a.fuel !== 'electric')) return []
  const at = job.openings.findIndex(o => o.kind === 'metal-flue' || o.kind === 'combustion-air-opening' || (o.kind === 'chimney' && o.inUse === 'yes'))
  return at < 0 ? [] : [flueWithoutAppliance(job.openings[at]!.at, `/openings/${at}`)]
}

/** What shuts a floor shuts the walls that stand on it and what lies beside it: it is one room. */
function withBeside(areas: JobFile['areas'], m: Measure): Measure {
  const reach = (places: readonly string[]): string[] => [...new Set([...places, ...areas.flatMap(a => ('beside' in a && a.beside !== undefined && places.includes(a.beside) ? [a.id] : []))])]
  return m.gates ? { ...m, gates: m.gates.map(g => ({ ...g, stops: { ...g.stops, places: reach(g.stops.places) } })) } : m
}

/** Carbon monoxide alarms that are missing: hung before the crew leaves. */
function alarms(job: JobFile, books: Books): Measure[] {
  const missing = job.house.coAlarmsMissing ?? 0
  if (missing === 0) return []
  const count = given(missing, 'each', '/house/coAlarmsMissing'), alarm = takes([books.product('co-alarm'), count])
  return [{ figures: {}, tasks: [{ id: 'hang-co-alarms', title: 'Hang carbon monoxide alarms, one a floor near the bedrooms', count: missing, phase: 'prove', work: 'prove', touches: 'house', serves: workOf('seal', 'ducts', 'insulate'), role: 'crew',
    personHours: work(personHours, { amount: count, rate: books.rate('co-alarm', 0.1, 'each'), access: exactly(1, 'factor', 'in the rooms') }), needs: alarm.needs, cautions: [CAUTION.ladder], proof: 'photo of each' }] }]
}

/** What each part of the takeoff is told, and where what is found goes. */
interface Survey { readonly job: JobFile; readonly books: Books; readonly findings: Finding[]; readonly zone: ReturnType<typeof zoneFor> }
/** What depends on the depth of the fill: the areas by their ids. */
type Around = ReadonlyMap<string, AreaAround>

const zoneFor = (job: JobFile) => zoneOf(job.house, job.target.code)?.zone
const eavesOf = ({ eaves = [] }: JobFile) => eaves.map((e, i) => found(e, `/eaves/${i}`, `eave-${e.in}-${eaves.slice(0, i + 1).filter(x => x.in === e.in).length}`))

function areaTaken(item: JobFile['areas'][number], at: string, eaves: ReturnType<typeof eavesOf>, hatchIn: ReturnType<typeof largestHatch>, { job, books, findings }: Survey): AreaTaken | undefined {
  const kind = areaKind.get(item.kind)!
  const fill = job.choices?.fill?.[item.id], way = wayIn(job.openings, item.id)
  if (fill !== undefined && !books.blown(fill)) {
    findings.push({ code: 'product-unknown', severity: 'error', path: `/choices/fill/${item.id}`, says: fill, why: 'the price book has no such blown product', mend: `write one of: ${books.blownItems.join(', ')}` })
    return undefined
  }
  const measure = guarded(at, findings, () => kind.takeoff(found(item, at, item.id) as never, books, {
    eaves: eaves.filter(e => e.item.in === item.id), ...(fill === undefined ? {} : { fill, fillAt: `/choices/fill/${item.id}` }), ...(hatchIn ? { hatchIn } : {}), ...(way ? { wayIn: way } : {}),
    eavesUnknown: job.eaves === undefined,
  }))
  if (!measure) return undefined
  // A hazard that the file describes is said once, in its own words.
  const old = ('existing' in item ? item.existing : []).flatMap((l, n): Gate[] => (l.fill === 'vermiculite' ? [vermiculiteGate(`${item.id}, old fill`, `${at}/existing/${n}`)] : []))
  const gates = [...old, ...measure.gates ?? []].filter(g => !job.hazards.some(h => h.kind === g.code))
  return { id: item.id, at, measure: { ...measure, gates } }
}

function openingsTaken(around: Around, { job, books, findings, zone }: Survey): OpeningTaken[] {
  const numbers = new Map<string, number>()
  return job.openings.flatMap((item, i): OpeningTaken[] => {
    const at = `/openings/${i}`, key = `${item.kind}-${item.in}`, n = (numbers.get(key) ?? 0) + 1
    numbers.set(key, n)
    const area = around.get(item.in)
    if (!area) return [] // its area already has its finding
    const it = found(item, at, `${key}-${n}`) as Found<Opening>
    const kind = openingKind.get(item.kind)!
    const measure = guarded(at, findings, () => kind.takeoff(it as never, books, { area, house: zone === undefined ? {} : { climateZone: zone } }))
    if (!measure) return []
    const leak = kind.leak && guarded(at, findings, () => kind.leak!(it as never, books))
    // Kept open by the owner: no fill comes near it, so it shuts nothing else.
    return [{ found: it, leak, measure: item.decline === 'yes' ? { ...measure, gates: (measure.gates ?? []).filter(g => g.state === 'note') } : measure }]
  })
}

const ductsTaken = (around: Around, { job, books, findings, zone }: Survey): DuctTaken[] => (job.ducts ?? []).flatMap((item, i): DuctTaken[] => {
  const at = `/ducts/${i}`, area = around.get(item.in), it = found(item, at, item.id)
  const measure = area && guarded(at, findings, () => ductTakeoff(it, books, area, zone === undefined ? {} : { climateZone: zone }))
  return measure ? [{ found: it, measure }] : []
})

function handlersTaken(around: Around, { job, books, findings }: Survey): Measure[] {
  return (job.airHandlers ?? []).flatMap((item, i): Measure[] => {
    const at = `/airHandlers/${i}`, here = around.get(item.in), measure = here && guarded(at, findings, () => airHandlerTakeoff(found(item, at, item.id), books, here))
    return measure ? [measure] : []
  })
}

/** Hazards that were found, and those that nobody looked for. */
function hazardsTaken({ job, books, findings }: Survey): Measure[] {
  const house: House = { ducts: (job.ducts ?? []).length > 0, ...(job.house.yearBuilt === undefined ? {} : { yearBuilt: job.house.yearBuilt }) }
  const seen = job.hazards.flatMap((h, i) => guarded(`/hazards/${i}`, findings, () => withBeside(job.areas, hazardKind.get(h.kind)!.takeoff(found(h, `/hazards/${i}`, `${h.kind}-${i + 1}`) as never, books, { house }))) ?? [])
  const unseen = hazardKinds.flatMap(k => (job.hazards.some(h => h.kind === k.kind) || job.notFound.includes(k.kind) ? [] : k.unseen(house, books, '/notFound') ?? []))
  return [...seen, gatesAlone(untracedWiring(job)), ...unseen]
}

const gatesAlone = (gates: readonly Gate[]): Measure => ({ figures: {}, tasks: [], gates })

/** Flames and fans: what they are, and what they do to each other once the house is tighter. */
function flamesTaken(openings: readonly OpeningTaken[], { job, books, findings }: Survey): Measure[] {
  const { appliances, exhausts = [] } = job
  const cfm50 = job.tests?.cfm50 === undefined ? undefined : given(job.tests.cfm50, 'cfm', '/tests/cfm50')
  // All that may be closed, at the high end: a warning must not wait for what the gates leave.
  const cut = cfm50 && guarded('/tests/cfm50', findings, () => airCut(Object.fromEntries(openings.flatMap(o => (o.leak && o.found.item.decline !== 'yes' ? [[o.found.id, o.leak] as const] : []))), cfm50, books))?.cfm50.high
  const fans = exhausts.map((e, i) => found(e, `/exhausts/${i}`, e.id)), roomAir = appliances === undefined || appliances.some(takesRoomAir)
  const warning = draftWarning(fans, appliances ?? [], { ...(cfm50 ? { cfm50 } : {}), ...(cut ? { cut } : {}) }, books)
  return [
    gatesAlone(flueGates(job)),
    ...(appliances === undefined ? [gatesAlone([appliancesNotListed('/house')])] : appliances.map((a, i) => applianceMeasure(found(a, `/appliances/${i}`, a.id), job.job.surveyedOn, books))),
    ...fans.map(fan => exhaustMeasure(fan, roomAir, books)),
    ...(warning ? [warning] : []),
  ]
}

const unseenFloor = (job: JobFile): Measure => ({ figures: {}, tasks: [], unknowns: job.areas.flatMap(a => ('unseenFt2' in a && a.unseenFt2 !== undefined ? [`Openings in ${a.unseenFt2} ft² of ${a.id} that nobody could look at.`] : [])) })

/** All that was measured, place by place. */
export const measuresOf = ({ areas, openings, ducts, house }: Omit<Taken, 'findings'>): Measure[] => [...areas.map(a => a.measure), ...openings.map(o => o.measure), ...ducts.map(d => d.measure), ...house]

export function takeoff(job: JobFile, books: Books): Taken {
  const survey: Survey = { job, books, findings: [], zone: zoneFor(job) }, { findings, zone } = survey
  const hatchIn = largestHatch(job), eaves = eavesOf(job)
  const areas = job.areas.flatMap((item, i) => areaTaken(item, `/areas/${i}`, eaves, hatchIn, survey) ?? [])
  const around: Around = new Map(areas.map(a => [a.id, { id: a.id, topOfFillInitialIn: a.measure.topOfFillInitialIn, access: a.measure.access, filled: a.measure.loose }]))
  const openings = openingsTaken(around, survey), ducts = ductsTaken(around, survey)
  const house = [...handlersTaken(around, survey), ...hazardsTaken(survey), ...flamesTaken(openings, survey), ...alarms(job, books), unseenFloor(job)]
  const vents = atticVents(job.eaves === undefined ? undefined : eaves, job.highVents?.map((v, i) => found(v, `/highVents/${i}`, `high-vent-${i + 1}`)), {
    areaFt2: totalOf('ft2', areas.filter(a => a.measure.floor), a => [a.id, a.measure.figures['areaFt2'] as Quantity]), edition: job.target.code, zone, retarder: areas.every(a => !a.measure.floor || a.measure.retarder),
  }, books)
  findings.push(...readingFindings(job, books))
  if (vents) house.push({ figures: {}, tasks: [], gates: vents.gates, findings: vents.findings })
  const taken = { areas, openings, ducts, house, ...(vents ? { vents } : {}), findings }
  for (const m of measuresOf(taken)) findings.push(...m.findings ?? [])
  return taken
}

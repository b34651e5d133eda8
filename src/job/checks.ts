// Rules of the trade across the whole job: what each part alone cannot show. Only what is surely wrong.
import type { Finding } from '../findings/finding.ts'
import { pointer } from '../findings/places.ts'
import { nearest } from '../findings/suggest.ts'
import { dateFault } from '../files/dates.ts'
import { stationOf, stationsOf } from '../reference/climate.ts'
import { editions } from '../reference/targets.ts'
import { countiesNamed, countiesNear, zoneByMap, zoneMaps, zoneOn } from '../reference/zones.ts'
import { areaKinds, hasEaves, openingKinds } from '../scope/index.ts'
import { ventFaults } from '../scope/vents.ts'
import { ductFaults } from '../scope/ducts.ts'
import { found, type Found } from '../scope/kind.ts'
import { IN_PER_FT } from '../units/convert.ts'
import type { JobFile } from './job-file.ts'

type Say = (code: string, path: string, says: string, why: string, mend: string, more?: Partial<Finding>) => void
type Rule = (job: JobFile, say: Say) => void

/** The names there are, each once. */
const namesOf = (what: string, ids: readonly string[]): string => {
  const each = [...new Set(ids)]
  return each.length === 1 ? `the only ${what} is ${each[0]!}` : `the ${what}s are ${each.join(', ')}`
}

/** Kinds as they are asked here: by their own name, with whatever item. */
interface Checked { readonly kind: string; check?(f: Found<object>): readonly Finding[] }
const checked = new Map(([...areaKinds, ...openingKinds] as unknown as readonly Checked[]).map(k => [k.kind, k]))

/** A name that stands twice where it can stand once. */
const unique = (list: 'areas' | 'appliances' | 'ducts' | 'exhausts' | 'airHandlers', what: string): Rule => (job, say) => {
  const first = new Map<string, number>()
  for (const [i, { id }] of (job[list] ?? []).entries()) {
    const before = first.get(id)
    if (before === undefined) first.set(id, i)
    else say('id-twice', `/${list}/${i}/id`, `id: ${id}`, `another ${what} has that name already`, `give one of them another name, such as ${id}-2`)
  }
}

const inAnArea: Rule = (job, say) => {
  const ids = job.areas.map(a => a.id)
  for (const list of ['openings', 'eaves', 'ducts', 'airHandlers', 'hazards', 'clearances'] as const) for (const [i, item] of (job[list] ?? []).entries()) {
    const area = 'in' in item ? item.in : undefined
    if (area === undefined || ids.includes(area)) continue
    const near = nearest(area, ids)
    say('area-unknown', `/${list}/${i}/in`, `in: ${area}`, `no area has that id; ${namesOf('area', ids)}`, near ? `did you mean ${near}?` : 'write the id of an area')
  }
}

const OUT_OF_SCOPE = { 'manufactured-home': 'a manufactured home has a roof and a belly of its own kind', 'flat-roof': 'a flat roof has no attic to walk', 'cathedral-only': 'a house without an attic has no floor to blow', 'apartment-building': 'an apartment building has corridors, fire walls and rules of its own' } as const
const inScope: Rule = ({ house: { type } }, say) => {
  if (type !== undefined && type in OUT_OF_SCOPE) say('out-of-scope', '/house/type', `type: ${type}`, `${OUT_OF_SCOPE[type as keyof typeof OUT_OF_SCOPE]}: nothing here is made for it`, 'price it by hand, or with a tool made for it')
}

const ofADuct: Rule = (job, say) => {
  const ids = (job.ducts ?? []).map(d => d.id)
  for (const [i, h] of job.hazards.entries()) {
    if (h.kind !== 'suspect-duct-wrap' || h.of === undefined || ids.includes(h.of)) continue
    const near = nearest(h.of, ids)
    say('duct-unknown', `/hazards/${i}/of`, `of: ${h.of}`, ids.length === 0 ? 'the job lists no ducts' : `no duct has that id; ${namesOf('duct', ids)}`, near ? `did you mean ${near}?` : 'write the id of a duct, or leave it out')
  }
}

const ofAnAppliance: Rule = (job, say) => {
  const ids = [...(job.appliances ?? []), ...(job.exhausts ?? [])].map(a => a.id)
  for (const [i, { of }] of (job.clearances ?? []).entries()) {
    if (of === undefined || ids.includes(of)) continue
    const near = nearest(of, ids)
    say('appliance-unknown', `/clearances/${i}/of`, `of: ${of}`, ids.length === 0 ? 'the job lists no appliances' : `no appliance or fan has that id; ${namesOf('appliance', ids)}`, near ? `did you mean ${near}?` : 'write the id of an appliance or a fan')
  }
}

const target: Rule = ({ target: { code, rValue } }, say) => {
  if (code !== undefined && rValue !== undefined) say('target-twice', '/target', 'both code and rValue', 'the goal is a code edition or an R, not both', 'take one of them out', { on: 'key' })
  if (code === undefined && rValue === undefined) say('target-missing', '/target', 'neither code nor rValue', 'without a goal nothing says how much to blow', 'write target: {code: iecc-2021} or target: {rValue: 49}', { on: 'key' })
}

const either = (names: readonly string[]): string => (names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)!}`)

/** The climate zone: written, or of the county by the map of the edition. */
const zone: Rule = ({ target: { code, rValue }, house, areas }, say) => {
  const { state, county, climateZone } = house
  const asked = code !== undefined && rValue === undefined && areas.some(a => !('rValue' in a) || a.rValue === undefined), needed = asked && climateZone === undefined
  const edition = code ?? editions.at(-1)!, map = zoneMaps[edition]
  const byMap = zoneByMap(map, house), named = county === undefined ? [] : countiesNamed(state, county)
  if (county !== undefined && named.length === 0) {
    const near = countiesNear(state, county), itself = 'write the zone itself, such as climateZone: 5'
    const mend = near.length > 0 ? `did you mean ${either(near)}?${needed ? ` If not, ${itself}` : ''}` : `write the county, not the town; ${needed ? `or ${itself}` : 'or leave it out'}`
    say('county-unknown', '/house/county', `county: ${county}`, `no county of ${state} has that name`, mend, needed ? {} : { severity: 'warning' })
  } else if (needed && byMap === undefined && county === undefined) {
    say('zone-missing', '/target/code', `code: ${code}`, 'the R that an edition asks for depends on the climate zone', `under house: write county: and its name, or climateZone: 5, the zone of the county by the map of ${code}`)
  } else if (needed && byMap === undefined) {
    say('county-ambiguous', '/house/county', `county: ${county!}`, `on the ${map.title} that may be ${either(named.map(c => `${c.name} in zone ${zoneOn(map, c)}`))}`, 'write the one that the house stands in, or the zone itself, such as climateZone: 5')
  } else if (asked && byMap !== undefined && climateZone !== undefined && byMap.zone !== climateZone) {
    say('zone-differs-from-map', '/house/climateZone', `climateZone: ${climateZone}`, `the ${map.title}, which ${edition} uses, has ${byMap.counties} in zone ${byMap.zone}`, 'take climateZone out to go by the map; leave it where state or town has a map of its own', { severity: 'note' })
  }
}

const notFound: Rule = (job, say) => {
  const seen = new Set<string>()
  for (const [i, kind] of job.notFound.entries()) {
    if (seen.has(kind)) { say('hazard-twice', `/notFound/${i}`, `in notFound: ${kind}`, 'it stands there already', 'take one out'); continue }
    seen.add(kind)
    const at = job.hazards.findIndex(h => h.kind === kind)
    if (at !== -1) say('hazard-found-and-not', `/notFound/${i}`, `in notFound: ${kind}`, `under hazards the same is seen or suspected (${job.hazards[at]!.at})`, 'take it out of notFound, or out of hazards')
    job.areas.forEach((a, n) => 'existing' in a && a.existing.forEach((l, m) => {
      if (l.fill === kind) say('hazard-found-and-not', `/areas/${n}/existing/${m}/fill`, `${kind} as old fill of ${a.id}`, `notFound says that there is none`, 'take it out of notFound, or write what the layer is')
    }))
  }
}

/** A joist bay more at each end than length over spacing gives. */
const SPARE_BAYS = 2
/** Rectangles are measured inside the walls, a roof edge outside: a wall and an overhang more at each end [ft]. */
const SPARE_FT = 4

const eaves: Rule = (job, say) => {
  if (job.eaves === undefined) {
    for (const [i, area] of job.areas.entries()) if (hasEaves(area)) say('eaves-missing', `/areas/${i}/id`, `no eaves listed for ${area.id}`, 'taper, baffles and wind blocks are left out of R and price', 'list them under eaves:, or write eaves: [] where no roof edge bears on this ceiling', { severity: 'warning' })
    return
  }
  for (const area of job.areas.filter(hasEaves)) {
    const own = job.eaves.filter(e => e.in === area.id), allFt = own.reduce((sum, e) => sum + e.lengthFt, 0), roundFt = area.rectanglesFt.reduce((sum, [a, b]) => sum + a + b, 0) * 2
    if (allFt > roundFt + own.length * SPARE_FT && own.every(e => e.lengthFt <= roundFt)) say('eaves-longer-than-round', `/eaves/${job.eaves.lastIndexOf(own.at(-1)!)}/lengthFt`, `${allFt} ft of eaves on ${area.id}`, `its rectangles measure ${roundFt} ft all round`, 'measure the eaves or the rectangles again', { severity: 'warning' })
  }
  for (const [i, eave] of job.eaves.entries()) {
    const area = job.areas.find(a => a.id === eave.in), at = `/eaves/${i}`
    if (!area) continue
    if (!hasEaves(area)) { say('eave-needs-floor', `${at}/in`, `in: ${eave.in}`, `a ${area.kind} has no eave: baffles and taper belong to the floor under the roof edge`, 'write the id of that floor'); continue }
    const perimeterFt = area.rectanglesFt.reduce((sum, [a, b]) => sum + a + b, 0) * 2
    const longestFt = area.rectanglesFt.reduce((sum, [a, b]) => sum + Math.max(a, b), 0)
    if (eave.lengthFt > perimeterFt) say('eave-too-long', `${at}/lengthFt`, `${eave.lengthFt} ft of eave`, `the rectangles of ${area.id} measure ${perimeterFt} ft all round`, 'measure the eave or the rectangles again')
    // Of a hip roof the eave may be written once, all round.
    else if (eave.lengthFt > longestFt + SPARE_FT && eave.lengthFt < perimeterFt - SPARE_FT) say('eave-longer-than-side', `${at}/lengthFt`, `${eave.lengthFt} ft of eave on one side`, `the longest sides of ${area.id} come to ${longestFt} ft`, 'write an entry for each side, or measure again', { severity: 'warning' })
    const most = eave.bays ?? Math.floor(eave.lengthFt * IN_PER_FT / area.joists.spacingIn) + SPARE_BAYS
    if (eave.ventedBays > most) say('more-vented-than-bays', `${at}/ventedBays`, `${eave.ventedBays} vented bays`, eave.bays === undefined ? `${eave.lengthFt} ft at ${area.joists.spacingIn} in has ${most} bays at most` : `the eave has ${eave.bays} bays`, 'count the bays again')
    if ((eave.goodBaffles ?? 0) > eave.ventedBays) say('more-baffles-than-vented', `${at}/goodBaffles`, `${eave.goodBaffles} good baffles`, `only ${eave.ventedBays} bays are vented; goodBaffles counts vented bays whose baffle may stay`, 'count again')
  }
}

/** What is left out, or stays as it is, lies beside a floor that gets fill. */
const beside: Rule = (job, say) => {
  const floors = job.areas.filter(hasEaves).map(a => a.id)
  for (const [i, a] of job.areas.entries()) {
    if (!('beside' in a) || a.beside === undefined || floors.includes(a.beside)) continue
    const near = nearest(a.beside, floors)
    say('beside-no-floor', `/areas/${i}/beside`, `beside: ${a.beside}`, floors.length === 0 ? 'the job has no floor that gets fill' : `no floor that gets fill has that id; ${namesOf('floor', floors)}`, near ? `did you mean ${near}?` : 'write the id of the floor beside it')
  }
}

const choices: Rule = (job, say) => {
  const ids = job.areas.map(a => a.id)
  for (const area of Object.keys(job.choices?.fill ?? {})) {
    if (ids.includes(area)) continue
    const near = nearest(area, ids)
    say('area-unknown', `/choices/fill/${pointer(area)}`, `a fill for ${area}`, `no area has that id; ${namesOf('area', ids)}`, near ? `did you mean ${near}?` : 'write the id of an area', { on: 'key' })
  }
}

const dates: Rule = (job, say) => {
  const all: [string, string][] = [['/job/surveyedOn', job.job.surveyedOn]]
  for (const [i, a] of (job.appliances ?? []).entries()) if (a.test) all.push([`/appliances/${i}/test/on`, a.test.on])
  for (const [i, c] of (job.clearances ?? []).entries()) all.push([`/clearances/${i}/on`, c.on])
  if (job.tests?.on !== undefined) all.push(['/tests/on', job.tests.on])
  for (const key of ['sentOn', 'expiresOn', 'signedOn'] as const) if (job.quote?.[key] !== undefined) all.push([`/quote/${key}`, job.quote[key]])
  for (const [i, e] of (job.quote?.escalation ?? []).entries()) all.push([`/quote/escalation/${i}/on`, e.on])
  for (const [path, date] of all) {
    const fault = dateFault(date)
    if (fault) say(fault.code, path, fault.says, fault.why, fault.mend)
  }
  const surveyed = Number(job.job.surveyedOn.slice(0, 4)), { yearBuilt } = job.house
  if (yearBuilt !== undefined && yearBuilt > surveyed) say('built-after-survey', '/house/yearBuilt', `yearBuilt: ${yearBuilt}`, `the survey was in ${surveyed}`, 'correct the one or the other')
}

/** What binds has its order: sent, then signed or expired; and what was never sent is no quote yet. */
const quote: Rule = ({ quote, job: { status } }, say) => {
  if (!quote) return
  const { sentOn, expiresOn, signedOn, escalation } = quote
  if (sentOn !== undefined && expiresOn !== undefined && expiresOn < sentOn) say('quote-expires-before-sent', '/quote/expiresOn', `expiresOn: ${expiresOn}`, `it was sent on ${sentOn}, later than that`, 'correct the one or the other')
  if (sentOn !== undefined && signedOn !== undefined && signedOn < sentOn) say('quote-signed-before-sent', '/quote/signedOn', `signedOn: ${signedOn}`, `it was sent on ${sentOn}, later than that`, 'correct the one or the other')
  if (status === 'draft' && (sentOn ?? signedOn) !== undefined) say('draft-was-sent', `/quote/${sentOn === undefined ? 'signedOn' : 'sentOn'}`, `${sentOn === undefined ? 'signed' : 'sent'} on ${sentOn ?? signedOn!}, and status: draft`, 'a draft has not gone out', `write status: ${signedOn === undefined ? 'sent' : 'signed'}, or take the date out`)
  if (status !== 'signed' && status !== 'draft' && signedOn !== undefined) say('signed-without-status', '/quote/signedOn', `signed on ${signedOn}, and status: ${status}`, 'what is signed binds, whatever its last day was', 'write status: signed, or take the date out')
  const seen = new Set<string>()
  for (const [i, { item }] of (escalation ?? []).entries()) {
    if (seen.has(item)) say('item-twice', `/quote/escalation/${i}/item`, `item: ${item}`, 'the clause names it already', 'take one of them out')
    seen.add(item)
  }
}

/** Of a state, the ones whose estimate is good before those that are only fair. */
const SHOWN_STATIONS = 4
const station: Rule = ({ energy, house: { state } }, say) => {
  if (energy?.station === undefined || stationOf(energy.station, state)) return
  const all = stationsOf(state), own = [...all.filter(s => !s.fair), ...all.filter(s => s.fair)]
  say('station-unknown', '/energy/station', `station: ${energy.station}`, 'no degree days of that station are at hand', own.length === 0 ? 'write degreeDays: and where they stand' : `write one of ${state}, such as ${own.slice(0, SHOWN_STATIONS).map(s => `${s.id} (${s.name})`).join(', ')}; lidwork tables stations lists all; or write degreeDays: and where they stand`)
}

/** Revisions follow one another; what was sent last is what the quote says. */
const revisions: Rule = ({ quote, job: { status } }, say) => {
  const all = quote?.revisions ?? [], sent = all.findLast(r => r.sentOn !== undefined)
  for (const [i, r] of all.entries()) {
    const at = `/quote/revisions/${i}`, before = all[i - 1]
    for (const key of ['on', 'sentOn'] as const) { const date = r[key], fault = date === undefined ? undefined : dateFault(date); if (fault) say(fault.code, `${at}/${key}`, fault.says, fault.why, fault.mend) }
    if (before && r.number <= before.number) say('revisions-out-of-order', `${at}/number`, `number: ${r.number}`, `the one before is ${before.number}`, 'number the revisions in the order they were made')
    else if (before && r.on < before.on) say('revisions-out-of-order', `${at}/on`, `on: ${r.on}`, `the one before is of ${before.on}`, 'write the revisions in the order they were made')
    if (r.sentOn !== undefined && r.sentOn < r.on) say('revision-sent-before-made', `${at}/sentOn`, `sentOn: ${r.sentOn}`, `the revision is of ${r.on}`, 'correct the one or the other')
  }
  if (all.length > 0 && status !== 'draft' && !sent && quote?.sentOn === undefined) say('revision-not-sent', '/job/status', `status: ${status}`, 'no revision says that it was sent', 'write sentOn: at the one that was')
  if (sent && quote?.sentOn !== undefined && quote.sentOn !== sent.sentOn) say('revision-sent-differs', '/quote/sentOn', `sentOn: ${quote.sentOn}`, `revision ${sent.number} says that it was sent on ${sent.sentOn!}`, 'take sentOn out: the last revision that was sent says it')
}

/** Burning gives no more heat than the fuel holds; a heat pump gives more than it takes. */
const efficiency: Rule = ({ energy }, say) => {
  const { fuel, efficiency: gives } = energy?.heating ?? {}
  if (fuel === undefined || gives === undefined) return
  const path = '/energy/heating/efficiency', says = `efficiency: ${gives} of ${fuel === 'heat-pump' ? 'a heat pump' : fuel}`
  if (fuel !== 'heat-pump' && gives > 1) say('efficiency-implausible', path, says, 'only a heat pump gives more heat than goes in', 'write the share, 0.8 for AFUE 80 %; or fuel: heat-pump', { severity: 'warning' })
  if (fuel === 'heat-pump' && gives < 1) say('efficiency-implausible', path, says, 'a heat pump gives more heat than it takes', 'write its seasonal COP: HSPF ÷ 3.412; or fuel: electric', { severity: 'warning' })
}

const rules: readonly Rule[] = [revisions, unique('areas', 'area'), unique('appliances', 'appliance'), unique('ducts', 'duct'), unique('exhausts', 'fan'), unique('airHandlers', 'air handler'), inScope, inAnArea, ofAnAppliance, ofADuct, target, zone, notFound, eaves, beside, choices, quote, station, efficiency, dates]

/** All that the rules find in a job that has the right form. */
export function checks(job: JobFile): Finding[] {
  const out: Finding[] = []
  const say: Say = (code, path, says, why, mend, more = {}) => { out.push({ code, severity: 'error', path, says, why, mend, ...more }) }
  for (const rule of rules) rule(job, say)
  for (const list of ['areas', 'openings'] as const) {
    const numbers = new Map<string, number>()
    for (const [i, item] of job[list].entries()) {
      const stem = 'id' in item ? item.id : `${item.kind}-${item.in}`
      const n = (numbers.get(stem) ?? 0) + 1
      numbers.set(stem, n)
      out.push(...checked.get(item.kind)?.check?.(found(item, `/${list}/${i}`, 'id' in item ? stem : `${stem}-${n}`)) ?? [])
    }
  }
  for (const [i, v] of (job.highVents ?? []).entries()) out.push(...ventFaults(found(v, `/highVents/${i}`, `high-vent-${i + 1}`)))
  for (const [i, duct] of (job.ducts ?? []).entries()) out.push(...ductFaults(found(duct, `/ducts/${i}`, duct.id)))
  return out
}

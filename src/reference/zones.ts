// The climate zone of a county, by the county map that a code edition uses.
import { byText } from '../findings/finding.ts'
import { distance } from '../findings/suggest.ts'
import { aliases } from './counties/aliases.ts'
import { counties } from './counties/index.ts'
import { table, type Obtained } from './table.ts'
import type { Edition, Zone } from './targets.ts'

/** A county map: where the zones lie changed once, with the edition of 2021. */
export interface ZoneMap {
  readonly name: 'before-2021' | '2021'
  readonly title: string
  readonly source: string
  readonly obtained: Obtained
}

const BEFORE: ZoneMap = { name: 'before-2021', title: 'county map before 2021', source: 'US Department of Energy, county table of climate zones for IECC 2006 to 2018', obtained: 'published, seen in a copy' }
const OF_2021: ZoneMap = { name: '2021', title: 'county map of 2021', source: 'PNNL-33270, county table of climate zones for IECC 2021', obtained: 'published, seen in a copy' }

/** Each edition with the map it prints. */
export const zoneMaps: Readonly<Record<Edition, ZoneMap>> = { 'iecc-2009': BEFORE, 'iecc-2012': BEFORE, 'iecc-2015': BEFORE, 'iecc-2018': BEFORE, 'iecc-2021': OF_2021 }

export interface County {
  /** With its kind: Sauk County, Baltimore city. */
  readonly name: string
  /** As people write it: Sauk. */
  readonly short: string
  /** With the letter for moisture: 6A. */
  readonly zone: Readonly<Record<ZoneMap['name'], string>>
}

/** One way to name one or more counties. */
interface Name { readonly name: string; readonly short: string; readonly means: readonly County[] }
interface State { readonly counties: readonly County[]; readonly names: readonly Name[]; /** As they stand on the map. */ readonly byShort: ReadonlyMap<string, readonly Name[]> }

const KINDS = 'county|parish|borough|census area|city and borough|city and county|municipality|planning region|city'
const KIND_BEFORE = new RegExp(`^(?:the )?(${KINDS}) of (.+)$`), KIND_BEHIND = new RegExp(` (?:${KINDS})$`)

/** Words as they are compared: small letters, accents off, one blank between. */
const plain = (text: string): string => text.normalize('NFD').replace(/[\u0300-\u036f.'’]/g, '').toLowerCase().replaceAll('&', ' and ').replace(/\s+/g, ' ').trim()
/** What is left when St. and Saint, La Salle and LaSalle are the same. */
const key = (words: string): string => words.replace(/\bst\b/g, 'saint').replace(/\bste\b/g, 'sainte').replace(/\bft\b/g, 'fort').replace(/[^a-z]/g, '')

const states = new Map<string, State>()

/** The counties of a state and the names for them, read once. */
function stateOf(state: string): State {
  let known = states.get(state)
  if (known === undefined) states.set(state, known = read(state))
  return known
}

function read(state: string): State {
  const rows = new Map<string, County>(), names: Name[] = []
  const split = (entry: string): readonly [short: string, name: string] => {
    const [short, kind = state === 'LA' ? 'Parish' : 'County'] = entry.split('/') as [string, string?]
    return [short, kind === '' ? short : `${short} ${kind}`]
  }
  const named = (entry: string, means: readonly County[]): void => {
    const [short, name] = split(entry)
    names.push({ name, short, means })
  }
  for (const group of counties[state]!().trim().split(/\n(?! )/)) {
    const [zones, list] = group.split(': ') as [string, string]
    const [before, since] = zones.split(' ') as [string, string]
    for (const entry of list.split(/,\s+/)) {
      const [short, name] = split(entry)
      const county: County = { name, short, zone: { 'before-2021': before, '2021': since } }
      rows.set(entry, county)
      named(entry, [county])
    }
  }
  for (const a of aliases) if (a.state === state) named(a.name, a.means.map(m => rows.get(m)!))
  const byShort = new Map<string, Name[]>()
  for (const n of names) byShort.set(n.short, [...byShort.get(n.short) ?? [], n])
  return { counties: [...rows.values()], names, byShort }
}

/** All counties of a state on the maps. */
export const countiesOf = (state: string): readonly County[] => stateOf(state).counties

/** Both maps as one table, for who reads them. */
export const countyTable = () => table<{ state: string; county: string; zoneBefore2021: string; zone2021: string }>({
  name: 'county-zones', title: 'Climate zone of each county, before 2021 and since', source: `${BEFORE.source}; ${OF_2021.source}`, obtained: 'published, seen in a copy', units: {},
  use: 'gives the zone of a house, and with it the R asked for',
  rows: Object.keys(counties).sort().flatMap(s => countiesOf(s).map(c => ({ state: s, county: c.name, zoneBefore2021: c.zone['before-2021'], zone2021: c.zone['2021'] }))),
})

/** The counties that a name may mean: more than one where a city and a county share it, or where an old county was divided. */
export function countiesNamed(state: string, name: string): readonly County[] {
  const { names, byShort } = stateOf(state)
  const means = (matches: readonly Name[]): County[] => [...new Set(matches.flatMap(n => n.means))]
  // Written as it stands there: nothing has to be compared by parts.
  const same = byShort.get(name)
  if (same) return same.length === 1 ? same[0]!.means : means(same)
  const written = plain(name).replace(/ co$/, ' county').replace(KIND_BEFORE, '$2 $1').replace(/^the /, '')
  const whole = key(written), bare = key(written.replace(KIND_BEHIND, ''))
  const byName = names.filter(n => key(plain(n.name)) === whole)
  if (byName.length > 0) return means(byName)
  const shorts = names.map(n => key(plain(n.short)))
  for (const wanted of [whole, bare]) {
    const byShort = names.filter((_, i) => shorts[i] === wanted)
    if (byShort.length > 0) return means(byShort)
  }
  return []
}

const MOST_NEAR = 3
/** A shorter piece is part of too many names. */
const LEAST_PART = 4

/** The counties of a state whose names are nearest to one that it does not have, as they would be written. */
export function countiesNear(state: string, name: string): string[] {
  const { counties: all } = stateOf(state), wrong = key(plain(name).replace(KIND_BEHIND, ''))
  const near = all.map(county => {
    const right = key(plain(county.short)), far = distance(wrong, right)
    const part = Math.min(wrong.length, right.length) >= LEAST_PART && (right.includes(wrong) || wrong.includes(right))
    return { county, far, part, close: far <= Math.max(2, Math.floor(right.length / 3)) && far < right.length }
  }).filter(n => n.part || n.close)
  const best = Math.min(...near.map(n => n.far))
  return near.filter(n => n.part || n.far === best).sort((a, b) => a.far - b.far || byText(a.county.name, b.county.name)).slice(0, MOST_NEAR)
    .map(({ county }) => (all.some(c => c !== county && c.short === county.short) ? county.name : county.short))
}

/** The zone of a county as target tables name it: marine 4 apart, the other letters off (5C is in the row of 5). */
export function zoneOn(map: ZoneMap, county: County): Zone {
  const zone = county.zone[map.name]
  return (zone === '4C' ? zone : zone.charAt(0)) as Zone
}

export interface Place { readonly state: string; readonly county?: string }

/** The zone that a map gives for a place and the counties it rests on; undefined where they lie in several zones, or no county has that name. */
export function zoneByMap(map: ZoneMap, { state, county }: Place): { readonly zone: Zone; readonly counties: string } | undefined {
  const all = county === undefined ? countiesOf(state) : countiesNamed(state, county)
  const zones = new Set(all.map(c => zoneOn(map, c)))
  if (zones.size !== 1) return undefined
  return { zone: [...zones][0]!, counties: county === undefined && all.length > 1 ? `every county of ${state}` : `${all.map(c => c.name).join(' or ')} ${state}` }
}

/** The zone of a house, and what it is read from: a pointer into the job file with the word there, and the map where it is not the zone itself that stands there. */
export interface HouseZone {
  readonly zone: Zone
  readonly at: '/house/climateZone' | '/house/county' | '/house/state'
  readonly as: string
  readonly map?: ZoneMap
  readonly counties?: string
}

/** The zone written in the file, else that of its county on the map of the edition. */
export function zoneOf(house: { readonly state?: string; readonly county?: string; readonly climateZone?: string }, edition: Edition | undefined): HouseZone | undefined {
  const { state, county, climateZone } = house
  if (climateZone !== undefined) return { zone: climateZone as Zone, at: '/house/climateZone', as: climateZone }
  if (edition === undefined || state === undefined) return undefined
  const map = zoneMaps[edition], found = zoneByMap(map, { state, ...(county === undefined ? {} : { county }) })
  return found && { zone: found.zone, at: county === undefined ? '/house/state' : '/house/county', as: county ?? state, map, counties: found.counties }
}

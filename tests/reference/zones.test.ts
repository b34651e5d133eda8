// County zones against what is known of them elsewhere: counts of the Census, the zones each state has in the code's own table, lists and single counties.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { openJob } from '../../src/cli/jobs.ts'
import { estimateJson } from '../../src/estimate/to-json.ts'
import { jobSchema } from '../../src/job/job-file.ts'
import { figures } from '../../src/estimate/told/figures.ts'
import { steps } from '../../src/estimate/told/told.ts'
import { aliases } from '../../src/reference/counties/aliases.ts'
import { counties } from '../../src/reference/counties/index.ts'
import { editions, targets, type Edition } from '../../src/reference/targets.ts'
import { countiesNamed, countiesNear, countiesOf, zoneByMap, zoneMaps, zoneOf, zoneOn } from '../../src/reference/zones.ts'

const states = Object.keys(counties)
const all = states.flatMap(state => countiesOf(state).map(county => ({ state, county })))
const BEFORE = zoneMaps['iecc-2018'], OF_2021 = zoneMaps['iecc-2021']
const digit = (zone: string): number => Number(zone.charAt(0))

/**
 * Counties and equivalents (US Census Bureau, 2015 to 2019), and the warmest and coldest zone of the state before 2021
 * (IECC 2012 table R301.1, from memory, high).
 */
const STATES: Readonly<Record<string, readonly [count: number, warmest: number, coldest: number]>> = {
  AL: [67, 2, 3], AK: [29, 7, 8], AZ: [15, 2, 5], AR: [75, 3, 4], CA: [58, 2, 6], CO: [64, 4, 7], CT: [8, 5, 5], DE: [3, 4, 4], DC: [1, 4, 4], FL: [67, 1, 2], GA: [159, 2, 4],
  HI: [5, 1, 1], ID: [44, 5, 6], IL: [102, 4, 5], IN: [92, 4, 5], IA: [99, 5, 6], KS: [105, 4, 5], KY: [120, 4, 4], LA: [64, 2, 3], ME: [16, 6, 7], MD: [24, 4, 5], MA: [14, 5, 5],
  MI: [83, 5, 7], MN: [87, 6, 7], MS: [82, 2, 3], MO: [115, 4, 5], MT: [56, 6, 6], NE: [93, 5, 5], NV: [17, 3, 5], NH: [10, 5, 6], NJ: [21, 4, 5], NM: [33, 3, 5], NY: [62, 4, 6],
  NC: [100, 3, 5], ND: [53, 6, 7], OH: [88, 4, 5], OK: [77, 3, 4], OR: [36, 4, 5], PA: [67, 4, 6], RI: [5, 5, 5], SC: [46, 3, 3], SD: [66, 5, 6], TN: [95, 3, 4], TX: [254, 2, 4],
  UT: [29, 3, 6], VT: [14, 6, 6], VA: [133, 4, 4], WA: [39, 4, 6], WV: [55, 4, 5], WI: [72, 6, 7], WY: [23, 5, 7],
}

describe('the county maps', () => {
  test('hold the states that a job file can name, and 3,142 counties (US Census Bureau)', () => {
    expect([...states].sort()).toEqual((jobSchema().properties.house.properties.state as unknown as { enum: string[] }).enum.slice().sort())
    expect(all).toHaveLength(3142)
  })
  test.each(Object.entries(STATES))('%s has its counties, and the zones of the code’s table', (state, [count, warmest, coldest]) => {
    const of = countiesOf(state), before = of.map(c => digit(c.zone['before-2021']))
    expect(of).toHaveLength(count)
    expect(new Set(of.map(c => c.name)).size, 'no name twice').toBe(count)
    expect([Math.min(...before), Math.max(...before)]).toEqual([warmest, coldest])
    expect(readFileSync(join(import.meta.dirname, `../../src/reference/counties/${state.toLowerCase()}.ts`), 'utf8')).toContain(`, ${count} count`)
  })
  test('use the zones there are: a letter for moisture up to zone 6, marine 5 only since 2021', () => {
    for (const { state, county } of all) {
      expect(county.zone['before-2021'], `${county.name} ${state}`).toMatch(/^([1-5][AB]|6[AB]|[34]C|[78])$/)
      expect(county.zone['2021'], `${county.name} ${state}`).toMatch(/^([1-5][AB]|6[AB]|[345]C|[78])$/)
    }
  })
  test('about 370 counties moved in 2021, a tenth, nearly all by one zone to a warmer one (PNNL-33270)', () => {
    const moved = all.filter(({ county }) => county.zone['before-2021'] !== county.zone['2021'])
    expect(Math.abs(moved.length - 370)).toBeLessThanOrEqual(10)
    const colder = moved.filter(({ county }) => digit(county.zone['2021']) > digit(county.zone['before-2021']))
    expect(colder.length / moved.length).toBeLessThan(0.1)
    for (const { state, county } of moved) expect(Math.abs(digit(county.zone['2021']) - digit(county.zone['before-2021'])), county.name).toBeLessThanOrEqual(state === 'AK' ? 2 : 1)
  })
  test('moisture has its side of the country: dry in no state east of Texas, marine only on the Pacific', () => {
    const withLetter = (letter: string) => new Set(all.filter(({ county }) => Object.values(county.zone).some(z => z.endsWith(letter))).map(({ state }) => state))
    const west = ['AZ', 'CA', 'CO', 'ID', 'MT', 'NM', 'NV', 'OK', 'OR', 'TX', 'UT', 'WA', 'WY']
    expect([...withLetter('B')].filter(s => !west.includes(s))).toEqual([])
    expect([...withLetter('C')].sort()).toEqual(['AK', 'CA', 'OR', 'WA'])
  })
})

describe('lists of the code’s county table (IECC 2012 and 2021, table R301.1; from memory, high)', () => {
  const inZone = (state: string, zone: string, map = BEFORE): string[] => countiesOf(state).filter(c => c.zone[map.name] === zone).map(c => c.short).sort()
  test.each([
    ['FL', '1A', 'Broward, Miami-Dade, Monroe'], ['MI', '7', 'Baraga, Chippewa, Gogebic, Houghton, Iron, Keweenaw, Luce, Mackinac, Ontonagon, Schoolcraft'],
    ['NY', '4A', 'Bronx, Kings, Nassau, New York, Queens, Richmond, Suffolk, Westchester'], ['PA', '4A', 'Bucks, Chester, Delaware, Montgomery, Philadelphia, York'], ['NV', '3B', 'Clark'],
  ])('%s %s before 2021', (state, zone, names) => expect(inZone(state, zone)).toEqual(names.split(', ')))
  test('Florida’s zone 1 of 2021 has Palm Beach besides', () => expect(inZone('FL', '1A', OF_2021)).toEqual(['Broward', 'Miami-Dade', 'Monroe', 'Palm Beach']))
  test.each([
    ['WI', 'Sauk', '6', '5'], ['WI', 'Milwaukee', '6', '5'], ['WI', 'Dane', '6', '5'], ['IA', 'Story', '5', '5'], ['IL', 'Cook', '5', '5'], ['IN', 'Marion', '5', '4'], ['OH', 'Franklin', '5', '4'],
    ['TN', 'Davidson', '4', '3'], ['TN', 'Shelby', '3', '3'], ['NC', 'Wake', '4', '3'], ['CO', 'Denver', '5', '5'], ['WA', 'King', '4C', '4C'], ['OR', 'Multnomah', '4C', '4C'], ['TX', 'Harris', '2', '2'],
    ['TX', 'Dallas', '3', '2'], ['AK', 'Ketchikan Gateway', '7', '5'], ['AK', 'Fairbanks North Star', '8', '8'], ['MN', 'Hennepin', '6', '6'], ['NE', 'Lancaster', '5', '5'], ['AZ', 'Maricopa', '2', '2'],
  ] as const)('%s %s: %s, then %s', (state, county, before, since) => {
    for (const e of editions) expect(zoneByMap(zoneMaps[e], { state, county })?.zone, e).toBe(e === 'iecc-2021' ? since : before)
  })
  test('no county needs a zone that the target table lacks', () => {
    for (const { county } of all) for (const e of editions) expect(targets.rows.find(r => r.edition === e)!.r[zoneOn(zoneMaps[e], county)]).toBeGreaterThanOrEqual(30)
  })
})

describe('names', () => {
  const named = (state: string, name: string): string => countiesNamed(state, name).map(c => c.name).join(', ')
  test('each county is found by its name, whole or short, in any letters', () => {
    for (const { state, county } of all) {
      for (const name of [county.name, county.name.toUpperCase(), county.name.replaceAll('.', '').replaceAll("'", '')]) expect(countiesNamed(state, name), `${name} ${state}`).toEqual([county])
      for (const name of [county.short, county.short.toLowerCase()]) expect(countiesNamed(state, name), `${name} ${state}`).toContain(county)
    }
  })
  test.each([
    ['WI', 'sauk county', 'Sauk County'], ['WI', 'Sauk Co.', 'Sauk County'], ['WI', 'County of Sauk', 'Sauk County'], ['LA', 'Acadia', 'Acadia Parish'], ['LA', 'Orleans County', 'Orleans Parish'], ['AK', 'Anchorage', 'Anchorage Municipality'],
    ['AK', 'Matanuska Susitna Borough', 'Matanuska-Susitna Borough'], ['MO', 'Saint Charles', 'St. Charles County'], ['MO', 'St Francois', 'St. Francois County'], ['MO', 'Sainte Genevieve', 'Ste. Genevieve County'], ['LA', 'La Salle', 'LaSalle Parish'],
    ['IL', 'La Salle', 'LaSalle County'], ['IN', 'Laporte', 'LaPorte County'], ['NM', 'Dona Ana', 'Doña Ana County'], ['MD', 'Prince Georges', "Prince George's County"], ['VA', 'King & Queen', 'King and Queen County'], ['TX', 'Ft. Bend', 'Fort Bend County'],
    ['CA', 'City and County of San Francisco', 'San Francisco County'], ['NV', 'Carson City', 'Carson City'], ['NY', 'The Bronx', 'Bronx County'], ['DC', 'District of Columbia', 'District of Columbia'], ['DC', 'Washington', 'District of Columbia'],
    // A city and a county of one name stay apart where it is said which; Charles City and James City are counties.
    ['VA', 'Fairfax', 'Fairfax County, Fairfax city'], ['VA', 'Fairfax County', 'Fairfax County'], ['VA', 'Fairfax City', 'Fairfax city'], ['VA', 'City of Richmond', 'Richmond city'], ['VA', 'Roanoke city', 'Roanoke city'],
    ['MD', 'Baltimore County', 'Baltimore County'], ['MO', 'Saint Louis City', 'St. Louis city'], ['VA', 'Charles City', 'Charles City County'], ['VA', 'James City County', 'James City County'], ['VA', 'Virginia Beach', 'Virginia Beach city'],
    // Renamed, merged, split, or what people say.
    ['SD', 'Shannon', 'Oglala Lakota County'], ['AK', 'Wade Hampton Census Area', 'Kusilvak Census Area'], ['FL', 'Dade County', 'Miami-Dade County'], ['VA', 'Bedford city', 'Bedford County'], ['VA', 'Bedford', 'Bedford County'],
    ['AK', 'Chugach', 'Valdez-Cordova Census Area'], ['NY', 'Brooklyn', 'Kings County'], ['CT', 'Western Connecticut Planning Region', 'Fairfield County, Litchfield County'], ['CT', 'Capitol', 'Hartford County, Tolland County'],
    ['WI', 'Baraboo', ''], ['GA', 'Miami-Dade', ''], ['WI', '', ''], ['WI', 'County', ''],
  ])('%s: %s', (state, written, counties) => expect(named(state, written)).toBe(counties))
  test('each other name stands for counties of its state, is no county itself, and has a source', () => {
    for (const a of aliases) {
      const [short, kind = 'County'] = a.name.split('/') as [string, string?]
      const name = kind === '' ? short : `${short} ${kind}`
      expect(countiesOf(a.state).some(c => c.name === name), name).toBe(false)
      expect(countiesNamed(a.state, name), name).toHaveLength(a.means.length)
      expect(a.source).toMatch(/^US Census Bureau, /)
      expect(a.what.length).toBeGreaterThan(9)
    }
  })
  test('the planning regions of Connecticut since 2022 are all there, and together hold its eight counties', () => {
    const regions = aliases.filter(a => a.state === 'CT')
    expect(regions).toHaveLength(9)
    expect(new Set(regions.flatMap(r => r.means)).size).toBe(8)
  })
  test('a name that no county has brings the nearest', () => {
    expect(countiesNear('WI', 'Sank')).toEqual(['Sauk'])
    expect(countiesNear('WI', 'Milwakee County')).toEqual(['Milwaukee'])
    expect(countiesNear('AK', 'Fairbanks')).toEqual(['Fairbanks North Star', 'Southeast Fairbanks'])
    expect(countiesNear('MD', 'Baltimor')).toEqual(['Baltimore County', 'Baltimore city'])
    expect(countiesNear('WI', 'Baraboo')).toEqual([])
    for (const state of states) expect(countiesNear(state, 'Springfield Township').length, state).toBeLessThanOrEqual(3)
  })
})

describe('the zone of a house', () => {
  const good = readFileSync(join(import.meta.dirname, '../findings/good.job.yaml'), 'utf8')
  const opened = (house: string, edition: Edition) => {
    const text = good.replace('house: {state: MN, county: Dakota, climateZone: 6, yearBuilt: 1974}', `house: {${house}}`).replace('iecc-2021', edition)
    expect(text).toContain(`house: {${house}}`)
    return openJob(Buffer.from(text), 'a.job.yaml')
  }
  const explained = ({ estimate, job }: Extract<ReturnType<typeof opened>, { sound: true }>) => { const figs = figures(estimate, job); return steps(figs, job, 'areas.main.targetR', figs.all.get('areas.main.targetR')!, false)[0]! }
  const sound = (house: string, edition: Edition) => {
    const made = opened(house, edition)
    if (!made.sound) throw new Error(made.findings.map(f => f.code).join(' '))
    const json = estimateJson(made.estimate, made.job)
    return { json, targetR: json.areas[0]!.targetR, explained: explained(made), codes: made.findings.map(f => f.code).filter(c => !c.endsWith('-out-of-band')) }
  }
  test('comes from the map of the edition: Sauk County WI is in zone 6 before 2021, R-49, and in zone 5 from then on, R-60', () => {
    const before = sound('state: WI, county: Sauk', 'iecc-2018'), since = sound('state: WI, county: Sauk', 'iecc-2021')
    expect(before.json.basis).toMatchObject({ climateZone: '6', climateZoneMap: 'before-2021', state: 'WI', county: 'Sauk' })
    expect(since.json.basis).toMatchObject({ climateZone: '5', climateZoneMap: '2021' })
    expect([before.targetR, since.targetR]).toEqual([49, 60])
    // In 2009 zones 5 and 6 still differed.
    expect([sound('state: WI, county: Sauk', 'iecc-2009').targetR, sound('state: IA, county: Story', 'iecc-2009').targetR]).toEqual([49, 38])
  })
  test('the figure says map, county and the line of the job file', () => {
    const { explained } = sound('state: WI, county: sauk', 'iecc-2018')
    expect(explained).toMatchObject({ path: 'areas.main.targetR', value: 49, table: 'targets', inputs: [{ name: 'pickedBy', as: 'sauk', file: 'a.job.yaml', line: 3 }] })
    expect(explained.row).toMatch(/^targets: iecc-2018, table R402\.1\.2, zone 6; county map before 2021: Sauk County WI$/)
    expect(explained.source).toContain('US Department of Energy, county table')
  })
  test('a zone in the file wins, and a note says where the map differs', () => {
    const own = sound('state: WI, county: Sauk, climateZone: 6', 'iecc-2009')
    expect(own.json.basis).not.toHaveProperty('climateZoneMap')
    expect(own.codes).toEqual([])
    const differs = sound('state: IA, county: Story, climateZone: 6', 'iecc-2009')
    expect(differs).toMatchObject({ targetR: 49, codes: ['zone-differs-from-map'], json: { basis: { climateZone: '6' } } })
    expect(differs.explained.inputs[0]).toMatchObject({ file: 'a.job.yaml', line: 3 })
    expect(sound('state: AK, county: Ketchikan Gateway, climateZone: 5', 'iecc-2021').codes, 'marine 5 is in the row of 5').toEqual([])
    expect(sound('state: WA, county: King, climateZone: 4', 'iecc-2012').codes, 'marine 4 has a row of its own').toEqual(['zone-differs-from-map'])
  })
  test('needs no county where the whole state lies in one zone', () => {
    expect(sound('state: VT', 'iecc-2018').json.basis).toMatchObject({ climateZone: '6', climateZoneMap: 'before-2021' })
    expect(sound('state: DC', 'iecc-2021').json.basis.climateZone).toBe('4')
    expect(opened('state: VA', 'iecc-2021').findings.map(f => f.code)).toEqual(['zone-missing'])
  })
  test('is open where a name means counties in several zones, and only there', () => {
    const divided = 'state: AK, county: Prince of Wales-Outer Ketchikan'
    expect(opened(divided, 'iecc-2021').findings.map(f => f.code)).toEqual(['county-ambiguous'])
    expect(sound(divided, 'iecc-2018').json.basis.climateZone).toBe('7')
    expect(sound('state: MD, county: Baltimore', 'iecc-2021').json.basis.climateZone).toBe('4')
    expect(sound('state: CT, county: Naugatuck Valley', 'iecc-2021').json.basis.climateZone).toBe('5')
  })
  test('is asked of the books alone as well', () => {
    const target = shelf(demoPrices, demoCompany).for({ code: 'iecc-2021', state: 'WA', county: 'King' }).target()
    expect(target).toMatchObject({ value: 60, from: { is: 'row', pickedBy: { value: 4, from: { is: 'given', at: '/house/county', as: 'King' } } } })
    expect(zoneOf({ state: 'WI', county: 'Sauk' }, undefined)).toBeUndefined()
  })
})

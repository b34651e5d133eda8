// Both county maps against the zone criteria of the code, by degree days of stations.
import { describe, expect, test } from 'vitest'
import { stationsOf } from '../../src/reference/climate.ts'
import { stations } from '../../src/reference/stations.ts'
import { countiesOf, type ZoneMap } from '../../src/reference/zones.ts'

/** IECC R301.3, as printed in IRC 2018 table N1101.7.2(2) (seen in a copy): zones 5 to 8 by heating degree days, base 65 °F; under 5,400 the zone is 4 or warmer, by cooling degree days that no station here has. */
const zoneBy = (hdd65: number): number => (hdd65 > 12600 ? 8 : hdd65 > 9000 ? 7 : hdd65 > 7200 ? 6 : hdd65 > 5400 ? 5 : 4)
/** The stations are an estimate, most within 3 %, of normals up to 10 % colder than today’s; half of that on each side. */
const OFF = [0.93, 1, 1.07]

/** Stations that stand where few people live: passes, summits, high basins; and two of the plains just under a limit. A county has one zone. */
const APART: Readonly<Record<ZoneMap['name'], readonly string[]>> = {
  'before-2021': ['ID MULLAN PASS VOR/DME', 'ID STANLEY RS', 'MT BILLINGS LOGAN INTL AP', 'MT MALMSTROM AFB', 'NH MT WASHINGTON', 'NM LOS ALAMOS 13 W'],
  '2021': ['ID MULLAN PASS VOR/DME', 'ID STANLEY RS', 'MT BILLINGS LOGAN INTL AP', 'MT MALMSTROM AFB', 'NH MT WASHINGTON', 'NM LOS ALAMOS 13 W', 'PA BRADFORD RGNL AP'],
}

describe.each(['before-2021', '2021'] as const)('the map %s', map => {
  const zonesOf = (state: string): Set<number> => new Set(countiesOf(state).map(c => Number(c.zone[map].charAt(0))))
  const all = Object.keys(stations).flatMap(state => stationsOf(state).filter(s => !s.fair))

  test('each station lies in a zone that its state has, but for those that stand apart', () => {
    expect(all.length).toBeGreaterThan(700)
    const out = all.filter(s => { const on = zonesOf(s.state); return !OFF.some(f => { const z = zoneBy(s.hdd65 * f); return z === 4 ? Math.min(...on) <= 4 : on.has(z) }) })
    expect(out.map(s => `${s.state} ${s.name}`)).toEqual(APART[map])
  })
  test('the map reaches no more than one zone beyond the stations: a mountain or valley may have none', () => {
    let seen = 0
    for (const state of Object.keys(stations)) {
      const own = stationsOf(state).filter(s => !s.fair), coldest = Math.max(...own.map(s => zoneBy(s.hdd65 * OFF[2]!))), mildest = Math.min(...own.map(s => zoneBy(s.hdd65 * OFF[0]!)))
      if (own.length < 5) continue
      seen++
      const on = [...zonesOf(state)]
      expect(Math.max(...on), `${state}: coldest zone of the map, and of its stations ${coldest}`).toBeLessThanOrEqual(coldest + 1)
      if (mildest > 4) expect(Math.min(...on), `${state}: mildest zone of the map, and of its stations ${mildest}`).toBeGreaterThanOrEqual(mildest - 1)
    }
    expect(seen).toBeGreaterThan(30)
  })
})

// Degree days for a house: its own, a station's, or its state's.
import { fromRow, table } from './table.ts'
import { given, type Quantity } from '../units/quantity.ts'
import { coolingDays, heatingDays } from './degree-days.ts'
import { stations } from './stations.ts'

const STATION_SOURCE = 'estimate from NOAA mean temperatures 1981–2010'

/** All stations as a table, for who reads it. */
export const stationTable = () => table<{ id: string; station: string; state: string; hdd65: number; cdd65: number; quality: string }>({
  name: 'stations', title: 'Degree days of weather stations, base 65 °F', source: `${STATION_SOURCE}; a yearly cosine fitted to the state’s normals of the NOAA Climate Prediction Center`, obtained: 'derived', units: { hdd65: '°F·day', cdd65: '°F·day' },
  rows: Object.keys(stations).sort().flatMap(s => stationsOf(s).map(({ id, name, state, hdd65, cdd65, fair }) => ({ id, station: name, state, hdd65, cdd65, quality: fair ? 'fair' : 'good' }))),
})

const ofStation = (days: number, id: string): Quantity<'°F·day'> => fromRow({ name: 'stations', title: '', source: STATION_SOURCE, obtained: 'derived', units: {}, rows: [] }, {}, days, '°F·day', id)

export interface Station { readonly id: string; readonly name: string; readonly state: string; readonly hdd65: number; readonly cdd65: number; readonly fair: boolean }

const read = new Map<string, readonly Station[]>()

/** The stations of one state, read once. */
export function stationsOf(state: string): readonly Station[] {
  let known = read.get(state)
  if (known === undefined) read.set(state, known = readStations(state))
  return known
}

const readStations = (state: string): Station[] => (stations[state]?.() ?? '').trim().split('\n').filter(Boolean).map(line => {
  const [id = '', name = '', hdd65, cdd65, fair] = line.split('|')
  return { id, name, state, hdd65: Number(hdd65), cdd65: Number(cdd65), fair: fair === 'f' }
})

/** Its own state is looked through first: a station may lie over the border. */
export function stationOf(id: string, state: string): Station | undefined {
  for (const s of [state, ...Object.keys(stations).filter(x => x !== state)]) {
    const found = stationsOf(s).find(x => x.id === id)
    if (found) return found
  }
  return undefined
}

interface Asked { readonly degreeDays?: { readonly hdd65: number; readonly cdd65?: number; readonly from: string }; readonly station?: string }
export interface DegreeDays { readonly hdd65?: Quantity<'°F·day'>; readonly cdd65?: Quantity<'°F·day'>; readonly from: string }

/** What the file gives, else the station it names, else the state's mean. */
export function degreeDaysOf({ degreeDays, station }: Asked, state: string): DegreeDays {
  if (degreeDays) return { hdd65: given(degreeDays.hdd65, '°F·day', '/energy/degreeDays/hdd65'), ...(degreeDays.cdd65 === undefined ? {} : { cdd65: given(degreeDays.cdd65, '°F·day', '/energy/degreeDays/cdd65') }), from: degreeDays.from }
  const at = station === undefined ? undefined : stationOf(station, state)
  if (at) return { hdd65: ofStation(at.hdd65, at.id), cdd65: ofStation(at.cdd65, at.id), from: `${at.name} ${at.state}, ${STATION_SOURCE}${at.fair ? ', fair only' : ''}` }
  const heat = heatingDays.rows.find(r => r.state === state), cool = coolingDays.rows.find(r => r.state === state)
  return {
    ...(heat ? { hdd65: fromRow(heatingDays, heat, heat.hdd65, '°F·day', state) } : {}), ...(cool ? { cdd65: fromRow(coolingDays, cool, cool.cdd65, '°F·day', state) } : {}),
    from: `mean of ${state} by population, NOAA Climate Prediction Center`,
  }
}

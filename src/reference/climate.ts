// Degree days for a house: its own, a station's, or its state's.
import { fromRow } from './table.ts'
import { given, row, type Quantity } from '../units/quantity.ts'
import { coolingDays, heatingDays } from './degree-days.ts'
import { stations } from './stations.ts'

const STATION_SOURCE = 'estimate from NOAA mean temperatures 1981–2010'

export interface Station { readonly id: string; readonly name: string; readonly state: string; readonly hdd65: number; readonly cdd65: number; readonly fair: boolean }

/** The stations of one state. */
export const stationsOf = (state: string): Station[] => (stations[state]?.() ?? '').trim().split('\n').filter(Boolean).map(line => {
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
  if (at) return { hdd65: row(at.hdd65, '°F·day', `stations: ${at.id}`, STATION_SOURCE), cdd65: row(at.cdd65, '°F·day', `stations: ${at.id}`, STATION_SOURCE), from: `${at.name} ${at.state}, ${STATION_SOURCE}${at.fair ? ', fair only' : ''}` }
  const heat = heatingDays.rows.find(r => r.state === state), cool = coolingDays.rows.find(r => r.state === state)
  return {
    ...(heat ? { hdd65: fromRow(heatingDays, heat, heat.hdd65, '°F·day', state) } : {}), ...(cool ? { cdd65: fromRow(coolingDays, cool, cool.cdd65, '°F·day', state) } : {}),
    from: `mean of ${state} by population, NOAA Climate Prediction Center`,
  }
}

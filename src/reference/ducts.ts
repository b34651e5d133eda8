// Ducts in an attic: how their gaps are closed, how wide wrap is cut, and the R that an edition asks of them.
import type { Edition } from './targets.ts'
import { table } from './table.ts'

export type DuctMethod = 'mastic alone' | 'mastic and mesh' | 'bridged, then mastic and mesh' | 'rigid patch, then mastic and mesh'

/** By the width of the gap; mastic alone also only away from the air handler. */
export const ductGaps = table<{ upToIn: number; method: DuctMethod; verb: string }>({
  name: 'duct-gaps', title: 'How a duct joint is closed, by its gap', use: 'chooses how a duct joint is closed', source: 'SWS 5.0106.1: mastic alone only under 1/8 in, over 10 ft from the air handler and under 1 in of water', obtained: 'published, seen in a copy', units: { upToIn: 'in' },
  rows: [
    { upToIn: 1 / 8, method: 'mastic alone', verb: 'seal' },
    { upToIn: 1 / 4, method: 'mastic and mesh', verb: 'mesh' },
    { upToIn: 3 / 4, method: 'bridged, then mastic and mesh', verb: 'bridge', source: 'state weatherization field guides (TN), SWS 5.0106.1: bridge, then mastic and mesh an inch beyond', obtained: 'published, seen in a copy' },
    { upToIn: 3, method: 'rigid patch, then mastic and mesh', verb: 'patch', source: 'weatherization practice: rigid duct material, fastened', obtained: 'from memory, medium' },
  ],
})

/** Added to the way round the duct, with a 2 in lap, so that wrap keeps three quarters of its thickness. */
export const stretchOut = table<{ thicknessIn: number; roundIn: number; squareIn: number; rectangularIn: number }>({
  name: 'stretch-out', title: 'Duct wrap: inches added to the way round the duct', source: 'stretch-out table of duct wrap, a city’s permit record (Everett WA, document 253389)', obtained: 'published, seen in a copy',
  units: { thicknessIn: 'in', roundIn: 'in', squareIn: 'in', rectangularIn: 'in' },
  rows: [
    { thicknessIn: 1, roundIn: 7, squareIn: 6, rectangularIn: 5 },
    { thicknessIn: 1.5, roundIn: 9.5, squareIn: 8, rectangularIn: 7 },
    { thicknessIn: 2, roundIn: 12, squareIn: 10, rectangularIn: 8 },
    { thicknessIn: 2.2, roundIn: 13, squareIn: 11, rectangularIn: 8.5 },
    { thicknessIn: 3, roundIn: 17, squareIn: 14.5, rectangularIn: 11.5 },
  ],
})

/** Least R on a duct in an attic. Under 3 in across the later editions ask less. */
export const ductTargets = table<{ edition: Edition; section: string; supplyR: number; returnR: number; narrowR: number; narrowIn: number }>({
  name: 'duct-targets', title: 'R of ducts in an attic, by IECC edition', use: 'gives the R that wrap on a duct has to reach', source: 'IECC R403.3.1 as quoted by a state code office (Utah)', obtained: 'published, seen in a copy', units: { supplyR: 'R', returnR: 'R', narrowR: 'R', narrowIn: 'in' },
  rows: [
    { edition: 'iecc-2009', section: '403.2.1', supplyR: 8, returnR: 6, narrowR: 6, narrowIn: 0 },
    { edition: 'iecc-2012', section: 'R403.2.1; copies differ on returns, R-8 or R-6: the higher is taken', supplyR: 8, returnR: 8, narrowR: 6, narrowIn: 0, source: 'IECC R403.2.1', obtained: 'from memory, medium' },
    { edition: 'iecc-2015', section: 'R403.3.1', supplyR: 8, returnR: 8, narrowR: 6, narrowIn: 3 },
    { edition: 'iecc-2018', section: 'R403.3.1', supplyR: 8, returnR: 8, narrowR: 6, narrowIn: 3, source: 'IECC R403.3.1', obtained: 'from memory, high' },
    { edition: 'iecc-2021', section: 'R403.3.1', supplyR: 8, returnR: 8, narrowR: 6, narrowIn: 3, source: 'IECC R403.3.1', obtained: 'from memory, high' },
  ],
})

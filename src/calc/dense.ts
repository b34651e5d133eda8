import { formula } from '../units/quantity.ts'
import { IN_PER_FT } from '../units/convert.ts'

/** Fill packed into a closed cavity: by volume and density, never by a chart of open blow. */

export const cavityVolume = formula({ id: 'cavity-volume', says: 'area · (1 − framing) · depth ÷ 12', symbols: 'areaFt2 * (1 - framing) * depthIn / 12', source: 'geometry',
  args: { areaFt2: ['ft2', 0, 1e5], framing: ['fraction', 0, 0.5], depthIn: ['in', 0, 24] }, gives: 'ft3', fn: x => x.areaFt2 * (1 - x.framing) * x.depthIn / IN_PER_FT })

export const packedBags = formula({ id: 'packed-bags', says: 'volume · density ÷ weight of a bag', symbols: 'volumeFt3 * densityPcf / bagLb', source: 'conservation of mass',
  args: { volumeFt3: ['ft3', 0, 1e5], densityPcf: ['lb/ft3', 0.5, 6], bagLb: ['lb', 1, 200] }, gives: 'bag', fn: x => x.volumeFt3 * x.densityPcf / x.bagLb })

export const cavityDepth = formula({ id: 'cavity-depth', says: 'framing depth − what stays − air kept free, not below 0', symbols: 'max(0, framingIn - keptIn - airIn)', source: 'geometry',
  args: { framingIn: ['in', 0, 24], keptIn: ['in', 0, 60], airIn: ['in', 0, 6] }, gives: 'in', fn: x => Math.max(0, x.framingIn - x.keptIn - x.airIn) })

export const holesNeeded = formula({ id: 'holes', says: 'bays · (length of a bay ÷ distance between holes, up)', symbols: 'bays * up(lengthFt / apartFt)', source: 'common practice, no source: a hole in each bay, as far apart as the hose reaches',
  args: { bays: ['each', 0, 10000], lengthFt: ['ft', 0, 500], apartFt: ['ft', 0.5, 40] }, gives: 'each', fn: x => x.bays * Math.ceil(x.lengthFt / x.apartFt - 1e-9) })

export const baysOf = formula({ id: 'bays-of', says: 'width · 12 ÷ spacing, up', symbols: 'up(widthFt * 12 / spacingIn)', source: 'geometry',
  args: { widthFt: ['ft', 0, 5000], spacingIn: ['in', 6, 48] }, gives: 'each', fn: x => Math.ceil(x.widthFt * IN_PER_FT / x.spacingIn - 1e-9) })

/** One block in each bay, cut to the clear width and the joist's depth. */
export const blockArea = formula({ id: 'block-area', says: 'bays · (spacing − framing) · depth ÷ 144', symbols: 'bays * (spacingIn - framingIn) * depthIn / 144', source: 'geometry',
  args: { bays: ['each', 0, 10000], spacingIn: ['in', 6, 48], framingIn: ['in', 0, 6], depthIn: ['in', 0, 24] }, gives: 'ft2', fn: x => x.bays * (x.spacingIn - x.framingIn) * x.depthIn / 144 })

export const blockEdge = formula({ id: 'block-edge', says: 'bays · 2 · (spacing − framing + depth)', symbols: 'bays * 2 * (spacingIn - framingIn + depthIn)', source: 'geometry',
  args: { bays: ['each', 0, 10000], spacingIn: ['in', 6, 48], framingIn: ['in', 0, 6], depthIn: ['in', 0, 24] }, gives: 'in', fn: x => x.bays * 2 * (x.spacingIn - x.framingIn + x.depthIn) })

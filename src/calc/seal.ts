import { formula } from '../units/quantity.ts'
import { IN2_PER_FT2, IN3_PER_FLOZ, IN_PER_FT } from '../units/convert.ts'

/** Quantities of sealing: lengths, beads, boards, metal. All of it is geometry. */

const LOTS = 1e6

export const ring = formula({ id: 'ring', says: 'π · diameter · how many', symbols: 'pi * diameterIn * count', source: 'geometry',
  args: { diameterIn: ['in', 0, 60], count: ['each', 0, 500] }, gives: 'in', fn: x => Math.PI * x.diameterIn * x.count })

export const edge = formula({ id: 'edge', says: '2 · (length + width)', symbols: '2 * (lengthIn + widthIn)', source: 'geometry',
  args: { lengthIn: ['in', 0, 2400], widthIn: ['in', 0, 2400] }, gives: 'in', fn: x => 2 * (x.lengthIn + x.widthIn) })

/** The edge of a rectangle drawn a distance outside another. */
export const edgeOut = formula({ id: 'edge-out', says: '2 · (length + width) + 8 · distance out', symbols: '2 * (lengthIn + widthIn) + 8 * outIn', source: 'geometry',
  args: { lengthIn: ['in', 0, 2400], widthIn: ['in', 0, 2400], outIn: ['in', 0, 60] }, gives: 'in', fn: x => 2 * (x.lengthIn + x.widthIn) + 8 * x.outIn })

export const seamLength = formula({ id: 'seam-length', says: 'wall length · 12 · seams', symbols: 'lengthFt * 12 * seams', source: 'geometry: an inside wall has two drywall seams on its plate, an outside wall one',
  args: { lengthFt: ['ft', 0, 5000], seams: ['each', 1, 2] }, gives: 'in', fn: x => x.lengthFt * IN_PER_FT * x.seams })

export const beadWidth = formula({ id: 'bead-width', says: 'as wide as the gap, at least the least bead', symbols: 'max(gapIn, leastIn)', source: 'sealant practice: a bead fills the gap',
  args: { gapIn: ['in', 0, 12], leastIn: ['in', 0.05, 1] }, gives: 'in', fn: x => Math.max(x.gapIn, x.leastIn) })

export const bead = formula({ id: 'bead', says: 'run · π ÷ 4 · bead² ÷ (231/128 in³ per fl oz)', symbols: 'runIn * pi / 4 * beadIn^2 / (231 / 128)', source: 'US fluid ounce, exact: NIST Handbook 44, appendix C',
  args: { runIn: ['in', 0, LOTS], beadIn: ['in', 0.05, 3] }, gives: 'fl oz', fn: x => x.runIn * Math.PI / 4 * x.beadIn ** 2 / IN3_PER_FLOZ })

export const boardArea = formula({ id: 'board-area', says: '(length + 2 · lap) · (width + 2 · lap) ÷ 144', symbols: '(lengthIn + 2 * lapIn) * (widthIn + 2 * lapIn) / 144', source: 'geometry',
  args: { lengthIn: ['in', 0, 2400], widthIn: ['in', 0, 2400], lapIn: ['in', 0, 24] }, gives: 'ft2',
  fn: x => (x.lengthIn + 2 * x.lapIn) * (x.widthIn + 2 * x.lapIn) / IN2_PER_FT2 })

export const stripMetal = formula({ id: 'strip-metal', says: 'run · width ÷ 144', symbols: 'runIn * widthIn / 144', source: 'geometry',
  args: { runIn: ['in', 0, LOTS], widthIn: ['in', 0, 240] }, gives: 'ft2', fn: x => x.runIn * x.widthIn / IN2_PER_FT2 })

/** Along its middle the strip runs half of gap and lap outside the brick. */
export const chimneyStrip = formula({ id: 'chimney-strip', says: '(2 · (length + width) + 4 · (gap + lap)) · (leg + gap + lap) ÷ 144', symbols: '(2 * (lengthIn + widthIn) + 4 * (gapIn + lapIn)) * (legIn + gapIn + lapIn) / 144', source: 'geometry',
  args: { lengthIn: ['in', 1, 120], widthIn: ['in', 1, 120], gapIn: ['in', 0, 12], legIn: ['in', 0, 12], lapIn: ['in', 0, 12] }, gives: 'ft2',
  fn: x => (2 * (x.lengthIn + x.widthIn) + 4 * (x.gapIn + x.lapIn)) * (x.legIn + x.gapIn + x.lapIn) / IN2_PER_FT2 })

export const height = formula({ id: 'height', says: 'blown top + margin', symbols: 'topOfFillInitialIn + marginIn', source: 'heights are read from the ceiling plane to the blown top of all fill',
  args: { topOfFillInitialIn: ['in', 0, 120], marginIn: ['in', 0, 24] }, gives: 'in', fn: x => x.topOfFillInitialIn + x.marginIn })

export const inFeet = formula({ id: 'in-feet', says: 'inches ÷ 12', symbols: 'lengthIn / 12', source: 'exact', args: { lengthIn: ['in', 0, LOTS] }, gives: 'ft', fn: x => x.lengthIn / IN_PER_FT })

/** Four sides and a lid: two sides run past the other two, the lid covers all edges. */
export const boxBoard = formula({ id: 'box-board', says: 'how many · ((2 · (length + 2 · board) + 2 · width) · height + (length + 2 · board) · (width + 2 · board)) ÷ 144, inside sizes', symbols: 'long = lengthIn + 2 * boardIn; wide = widthIn + 2 * boardIn; count * ((2 * long + 2 * widthIn) * heightIn + long * wide) / 144',
  source: 'geometry; 3 in clear all round: NEC 410.116(B), SWS 4.1001.1',
  args: { lengthIn: ['in', 1, 120], widthIn: ['in', 1, 120], boardIn: ['in', 0, 2], heightIn: ['in', 0, 120], count: ['each', 1, 500] }, gives: 'ft2',
  fn: x => {
    const long = x.lengthIn + 2 * x.boardIn, wide = x.widthIn + 2 * x.boardIn
    return x.count * ((2 * long + 2 * x.widthIn) * x.heightIn + long * wide) / IN2_PER_FT2
  } })

/** Base, lid edge and four corners of the box. */
export const boxSeams = formula({ id: 'box-seams', says: 'how many · (2 · outside edge + 4 · height)', symbols: 'count * (4 * (lengthIn + widthIn + 4 * boardIn) + 4 * heightIn)', source: 'geometry',
  args: { lengthIn: ['in', 1, 120], widthIn: ['in', 1, 120], boardIn: ['in', 0, 2], heightIn: ['in', 0, 120], count: ['each', 1, 500] }, gives: 'in',
  fn: x => x.count * (4 * (x.lengthIn + x.widthIn + 4 * x.boardIn) + 4 * x.heightIn) })

export const boxTop = formula({ id: 'box-top', says: 'how many · inside length · inside width ÷ 144', symbols: 'count * lengthIn * widthIn / 144', source: 'geometry',
  args: { lengthIn: ['in', 1, 120], widthIn: ['in', 1, 120], count: ['each', 1, 500] }, gives: 'ft2', fn: x => x.count * x.lengthIn * x.widthIn / IN2_PER_FT2 })

export const clearOf = formula({ id: 'clear-of', says: 'size + 2 · distance kept', symbols: 'sizeIn + 2 * keepIn', source: 'geometry',
  args: { sizeIn: ['in', 0, 240], keepIn: ['in', 0, 24] }, gives: 'in', fn: x => x.sizeIn + 2 * x.keepIn })

/** The bare ring between a hot surface and its dam. */
export const ringArea = formula({ id: 'ring-area', says: '((length + 2 · off) · (width + 2 · off) − length · width) ÷ 144', symbols: '((lengthIn + 2 * offIn) * (widthIn + 2 * offIn) - lengthIn * widthIn) / 144', source: 'geometry',
  args: { lengthIn: ['in', 0, 240], widthIn: ['in', 0, 240], offIn: ['in', 0, 24] }, gives: 'ft2',
  fn: x => ((x.lengthIn + 2 * x.offIn) * (x.widthIn + 2 * x.offIn) - x.lengthIn * x.widthIn) / IN2_PER_FT2 })

export const inInches = formula({ id: 'in-inches', says: 'feet · 12', symbols: 'lengthFt * 12', source: 'exact', args: { lengthFt: ['ft', 0, LOTS] }, gives: 'in', fn: x => x.lengthFt * IN_PER_FT })

/** Lumber under a cover that spans too far: one piece across at each span, along the longer side. */
export const supports = formula({ id: 'supports', says: 'none to the span; else (longer side ÷ span, down) · shorter side ÷ 12', symbols: 'min(lengthIn, widthIn) <= spanIn ? 0 : down(max(lengthIn, widthIn) / spanIn) * min(lengthIn, widthIn) / 12', source: 'SWS 3.0101.1: spans over 24 in are supported',
  args: { lengthIn: ['in', 0, 2400], widthIn: ['in', 0, 2400], spanIn: ['in', 1, 96] }, gives: 'ft',
  fn: x => Math.min(x.lengthIn, x.widthIn) <= x.spanIn + 1e-9 ? 0 : Math.floor(Math.max(x.lengthIn, x.widthIn) / x.spanIn) * Math.min(x.lengthIn, x.widthIn) / IN_PER_FT })

/** A box must clear the light and stand above the fill. */
export const boxHeight = formula({ id: 'box-height', says: 'the greater of light + clear and blown top + margin', symbols: 'max(lightIn + clearIn, topOfFillInitialIn + marginIn)', source: 'NEC 410.116(B), SWS 4.1001.1',
  args: { lightIn: ['in', 0, 48], clearIn: ['in', 0, 24], topOfFillInitialIn: ['in', 0, 120], marginIn: ['in', 0, 24] }, gives: 'in', fn: x => Math.max(x.lightIn + x.clearIn, x.topOfFillInitialIn + x.marginIn) })

/** A hole round a pipe or wire, and what fills it. */
export const gapRound = formula({ id: 'gap-round', says: '(hole − outside of the pipe) ÷ 2', symbols: '(holeIn - outsideIn) / 2', source: 'geometry',
  args: { holeIn: ['in', 0, 60], outsideIn: ['in', 0, 60] }, gives: 'in', fn: x => (x.holeIn - x.outsideIn) / 2 })

export const annulus = formula({ id: 'annulus', says: 'how many · π ÷ 4 · (hole² − outside²)', symbols: 'count * pi / 4 * (holeIn^2 - outsideIn^2)', source: 'geometry',
  args: { holeIn: ['in', 0, 60], outsideIn: ['in', 0, 60], count: ['each', 0, 500] }, gives: 'in2', fn: x => x.count * Math.PI / 4 * (x.holeIn ** 2 - x.outsideIn ** 2) })

export const plug = formula({ id: 'plug', says: 'open area · depth ÷ (231/128 in³ per fl oz)', symbols: 'areaIn2 * depthIn / (231 / 128)', source: 'US fluid ounce, exact: NIST Handbook 44, appendix C',
  args: { areaIn2: ['in2', 0, LOTS], depthIn: ['in', 0, 24] }, gives: 'fl oz', fn: x => x.areaIn2 * x.depthIn / IN3_PER_FLOZ })

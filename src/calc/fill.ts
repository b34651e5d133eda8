import { formula } from '../units/quantity.ts'

/** Blown fill: depth, bags, weight. A chart's own row stands over any arithmetic; these join row, area and framing. */

export const joistShare = formula({ id: 'framing-share', says: 'joist width ÷ spacing', symbols: 'joistWidthIn / spacingIn', source: 'geometry',
  args: { joistWidthIn: ['in', 0, 12], spacingIn: ['in', 6, 48] }, gives: 'fraction', fn: x => x.joistWidthIn / x.spacingIn })

export const exposedJoist = formula({ id: 'joist-exposed', says: 'joist − fill kept, not below 0', symbols: 'max(0, joistIn - keptIn)', source: 'geometry',
  args: { joistIn: ['in', 0, 24], keptIn: ['in', 0, 60] }, gives: 'in', fn: x => Math.max(0, x.joistIn - x.keptIn) })

export const bags = formula({ id: 'bags', says: 'net area · (1 − framing share · exposed joist ÷ settled depth, at most the settled depth) ÷ coverage', symbols: 'netAreaFt2 * (1 - framingShare * min(settledDepthIn, exposedJoistIn) / settledDepthIn) / coverageFt2',
  source: 'net floor area, framing deducted: ASTM C1630; coverage of the row: 16 CFR 460.12',
  args: { netAreaFt2: ['ft2', 0, 1e6], framingShare: ['fraction', 0, 0.5], exposedJoistIn: ['in', 0, 24], settledDepthIn: ['in', 0.1, 60], coverageFt2: ['ft2/bag', 0.1, 1e4] },
  gives: 'bag', fn: x => x.netAreaFt2 * (1 - x.framingShare * Math.min(x.settledDepthIn, x.exposedJoistIn) / x.settledDepthIn) / x.coverageFt2 })

export const coverageFromWeight = formula({ id: 'coverage-from-weight', says: 'bag weight ÷ weight per ft²', symbols: 'bagLb / weightPsf', source: '16 CFR 460.12: coverage · weight = net bag weight',
  args: { bagLb: ['lb', 1, 200], weightPsf: ['lb/ft2', 0.01, 20] }, gives: 'ft2/bag', fn: x => x.bagLb / x.weightPsf })

export const layerWeight = formula({ id: 'layer-weight', says: 'depth ÷ 12 · density', symbols: 'depthIn / 12 * densityPcf', source: 'definition of density',
  args: { depthIn: ['in', 0, 60], densityPcf: ['lb/ft3', 0, 60] }, gives: 'lb/ft2', fn: x => x.depthIn / 12 * x.densityPcf })

export const ceilingLoad = formula({ id: 'ceiling-load', says: 'layers that stay + new minimum weight', symbols: 'keptPsf + addedPsf', source: 'gypsum ceiling load practice: DOE/EREC loose-fill sheet',
  args: { keptPsf: ['lb/ft2', 0, 50], addedPsf: ['lb/ft2', 0, 50] }, gives: 'lb/ft2', fn: x => x.keptPsf + x.addedPsf })

export const topOfFill = formula({ id: 'top-of-fill', says: 'fill kept + new depth', symbols: 'keptIn + depthIn', source: 'heights are read from the ceiling plane',
  args: { keptIn: ['in', 0, 60], depthIn: ['in', 0, 60] }, gives: 'in', fn: x => x.keptIn + x.depthIn })

/** Mass stays, so density rises as depth falls: blown depth from settled depth and the share of blown depth lost. */
export const blownFromSettled = formula({ id: 'blown-from-settled', says: 'settled ÷ (1 − share lost in settling)', symbols: 'settledIn / (1 - lost)',
  source: 'conservation of mass; ASTM C1374 gives the initial thickness on the label',
  args: { settledIn: ['in', 0, 60], lost: ['fraction', 0, 0.4] }, gives: 'in', fn: x => x.settledIn / (1 - x.lost) })

export const settledPerInch = formula({ id: 'r-per-settled-inch', says: 'R of the row ÷ settled depth', symbols: 'chartR / settledDepthIn', source: '16 CFR 460.12 row; used for heat paths only, never for bags or depth',
  args: { chartR: ['R', 1, 100], settledDepthIn: ['in', 0.1, 60] }, gives: 'R/in', fn: x => x.chartR / x.settledDepthIn })

/** A crew counts whole bags; each product's areas share the bags that are over by how much of one they need. */
export const wholeBags = formula({ id: 'whole-bags', says: 'exact bags, down, + 1 where the share of a bag is among the largest', symbols: 'down(bags) + more', source: 'largest remainders: the areas of a product come to its exact bags, up',
  args: { bags: ['bag', 0, 1e6], more: ['each', 0, 1] }, gives: 'bag', fn: x => Math.floor(x.bags + 1e-9) + x.more })

export const markers = formula({ id: 'markers', says: 'area ÷ 300, up, at least 1', symbols: 'max(1, up(areaFt2 / 300))', source: 'IECC R303.1.1.1: one marker in each 300 ft² of attic',
  args: { areaFt2: ['ft2', 0, 1e6] }, gives: 'each', fn: x => Math.max(1, Math.ceil(x.areaFt2 / 300 - 1e-9)) })

export const bays = formula({ id: 'bays', says: 'eave length · 12 ÷ spacing, down', symbols: 'down(eaveFt * 12 / spacingIn)', source: 'geometry; corrected by the count of the survey',
  args: { eaveFt: ['ft', 0, 5000], spacingIn: ['in', 6, 48] }, gives: 'each', fn: x => Math.floor(x.eaveFt * 12 / x.spacingIn + 1e-9) })

export const baffleLength = formula({ id: 'baffle-length', says: '(blown top + margin − (heel − gap ÷ cos(roof))) ÷ sin(roof) + run outside the plate', symbols: 'slope = sqrt(12^2 + pitch^2); max(0, (topIn + marginIn - (heelIn - gapIn * slope / 12)) / (pitch / slope)) + outsideIn',
  source: 'geometry; IECC R402.2.3: the baffle stands above the top of the fill',
  args: { topIn: ['in', 0, 120], marginIn: ['in', 0, 24], heelIn: ['in', 0.1, 60], gapIn: ['in', 0, 12], pitch: ['rise/12', 0.1, 24], outsideIn: ['in', 0, 60] }, gives: 'in',
  fn: x => {
    const slope = Math.hypot(12, x.pitch)
    return Math.max(0, (x.topIn + x.marginIn - (x.heelIn - x.gapIn * slope / 12)) / (x.pitch / slope)) + x.outsideIn
  } })

export const bafflePieces = formula({ id: 'baffle-pieces', says: 'bays without a good baffle · (length ÷ piece, up)', symbols: 'bays * up(lengthIn / pieceIn)', source: 'one run of pieces in each vented bay: IRC R806.3, SWS 4.0103.1',
  args: { bays: ['each', 0, 10000], lengthIn: ['in', 0, 600], pieceIn: ['in', 1, 200] }, gives: 'each', fn: x => x.bays * Math.ceil(x.lengthIn / x.pieceIn - 1e-9) })

export const baysToFit = formula({ id: 'bays-to-fit', says: 'vented bays − bays with a good baffle, not below 0', symbols: 'max(0, ventedBays - goodBaffles)', source: 'count of the survey',
  args: { ventedBays: ['each', 0, 10000], goodBaffles: ['each', 0, 10000] }, gives: 'each', fn: x => Math.max(0, x.ventedBays - x.goodBaffles) })

export const removedVolume = formula({ id: 'removed-volume', says: 'area · depth ÷ 12', symbols: 'areaFt2 * depthIn / 12', source: 'geometry',
  args: { areaFt2: ['ft2', 0, 1e6], depthIn: ['in', 0, 60] }, gives: 'ft3', fn: x => x.areaFt2 * x.depthIn / 12 })

export const tons = formula({ id: 'tons', says: 'area · weight ÷ 2,000', symbols: 'areaFt2 * weightPsf / 2000', source: 'short ton, exact',
  args: { areaFt2: ['ft2', 0, 1e6], weightPsf: ['lb/ft2', 0, 60] }, gives: 'ton', fn: x => x.areaFt2 * x.weightPsf / 2000 })

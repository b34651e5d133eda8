import { byHand, digit, group } from '../case.ts'

const DOE = 'DOE insulation fact sheet, loose fill: density and weight at R-38'
const HEAP = 'a cellulose seller’s worked example: 40 × 20 ft, 1 ft deep, 1.6 lb/ft³, bags of 25 lb: 1,280 lb, 51.2 bags, 52 to buy'
const CHART = 'chart of no product: 25 lb, 3.6 R per inch and 1.6 lb/ft³ settled, 13 % settling; columns of 16 CFR 460.12, framing by ASTM C1630'
const BAFFLE = 'geometry: heel 4 in, gap 1 in square to the roof unless said'
const baffle = { topIn: 16, marginIn: 2, heelIn: 4, gapIn: 1, pitch: 4, outsideIn: 0 }

export default [
  ...group({ formula: 'framing-share', ...byHand }, [
    { id: '16 in', inputs: { joistWidthIn: 1.5, spacingIn: 16 }, expected: 0.09375, note: '1.5 ÷ 16 = 3/32 = 0.09375' },
    { id: '24 in', inputs: { joistWidthIn: 1.5, spacingIn: 24 }, expected: 0.0625, note: '1.5 ÷ 24 = 1/16 = 0.0625' },
  ]),
  ...group({ formula: 'joist-exposed', ...byHand }, [
    { id: '2×6 over a thin batt', inputs: { joistIn: 5.5, keptIn: 3.5 }, expected: 2, note: '5.5 − 3.5 = 2' },
    { id: '2×4 buried already', inputs: { joistIn: 3.5, keptIn: 11 }, expected: 0, note: '3.5 − 11 is below 0: = 0' },
  ]),
  ...group({ formula: 'bags' }, [
    { id: '800 ft², a foot deep, no framing', inputs: { netAreaFt2: 800, framingShare: 0, exposedJoistIn: 0, settledDepthIn: 12, coverageFt2: 25 / 1.6 }, expected: 51.2, ...digit(0.1), source: HEAP, obtained: 'published, seen' },
  ]),
  ...group({ formula: 'bags', source: CHART, obtained: 'computed independently', table: 'chart with joists', tolerance: 0.2, toleranceWhy: 'coverage is printed to 0.1 ft², bags for 1,000 ft² to 0.1' }, [
    { id: 'R-13 for 1,000 ft², 2×6 at 16', inputs: { netAreaFt2: 1000, framingShare: 0.09375, exposedJoistIn: 5.5, settledDepthIn: 3.61, coverageFt2: 51.9 }, expected: 17.5, note: 'the joist stands above the fill' },
    { id: 'R-30 for 1,000 ft², 2×6 at 16', inputs: { netAreaFt2: 1000, framingShare: 0.09375, exposedJoistIn: 5.5, settledDepthIn: 8.33, coverageFt2: 22.5 }, expected: 41.7 },
    { id: 'R-38 for 1,000 ft², 2×6 at 16', inputs: { netAreaFt2: 1000, framingShare: 0.09375, exposedJoistIn: 5.5, settledDepthIn: 10.56, coverageFt2: 17.8 }, expected: 53.5 },
    { id: 'R-38 for 1,000 ft², 2×6 at 24', inputs: { netAreaFt2: 1000, framingShare: 0.0625, exposedJoistIn: 5.5, settledDepthIn: 10.56, coverageFt2: 17.8 }, expected: 54.5 },
    { id: 'R-49 for 1,000 ft², 2×6 at 24', inputs: { netAreaFt2: 1000, framingShare: 0.0625, exposedJoistIn: 5.5, settledDepthIn: 13.61, coverageFt2: 13.8 }, expected: 70.8 },
    { id: '1,344 ft² over a 3.5 in batt', inputs: { netAreaFt2: 1344, framingShare: 0.09375, exposedJoistIn: 2, settledDepthIn: 10.56, coverageFt2: 17.8 }, expected: 74.16, ...digit(0.01), table: 'the worked house' },
  ]),
  ...group({ formula: 'coverage-from-weight' }, [
    { id: 'a foot at 1.6 lb/ft³', inputs: { bagLb: 25, weightPsf: 1.6 }, expected: 800 / 51.2, tolerance: 0.016, toleranceWhy: 'bags printed to 0.1', source: HEAP, obtained: 'published, seen', note: '800 ft² ÷ 51.2 bags' },
    { id: 'R-30', inputs: { bagLb: 25, weightPsf: 1.111 }, expected: 22.5, source: CHART, obtained: 'computed independently', table: 'chart', tolerance: 0.061, toleranceWhy: 'half of the last printed digit of both columns' },
    { id: 'R-38', inputs: { bagLb: 25, weightPsf: 1.407 }, expected: 17.8, source: CHART, obtained: 'computed independently', table: 'chart', tolerance: 0.057, toleranceWhy: 'half of the last printed digit of both columns' },
  ]),
  ...group({ formula: 'layer-weight', source: DOE, obtained: 'published, seen in a copy', table: 'DOE loose fill', toleranceWhy: 'weight printed to two figures', note: 'depth from the range of R per inch of the same department, which the weight table does not print' }, [
    { id: 'cellulose, light end', inputs: { depthIn: 38 / 3.8, densityPcf: 1.5 }, expected: 1.25, tolerance: 0.005 },
    { id: 'cellulose, heavy end', inputs: { depthIn: 38 / 3.2, densityPcf: 2 }, expected: 2, tolerance: 0.05 },
    { id: 'rock wool, light end', inputs: { depthIn: 38 / 3.3, densityPcf: 1.7 }, expected: 1.6, tolerance: 0.05 },
    { id: 'rock wool, heavy end', inputs: { depthIn: 38 / 3, densityPcf: 1.7 }, expected: 1.8, tolerance: 0.05 },
    { id: 'a foot of cellulose', inputs: { depthIn: 12, densityPcf: 1.6 }, expected: 1.6, tolerance: 1e-9, toleranceWhy: '1,280 lb on 800 ft²', source: HEAP, obtained: 'published, seen', table: 'heap', note: '1,280 lb ÷ 800 ft²' },
  ]),
  ...group({ formula: 'ceiling-load', ...byHand }, [
    { id: 'old batt and R-38 cellulose', inputs: { keptPsf: 0.1604, addedPsf: 1.407 }, expected: 1.5674, note: '3.5 ÷ 12 · 0.55 = 0.1604; 0.1604 + 1.407 = 1.5674' },
    { id: 'old batt and R-38 glass', inputs: { keptPsf: 0.1604, addedPsf: 0.67 }, expected: 0.8304, note: '0.1604 + 0.670 = 0.8304' },
  ]),
  ...group({ formula: 'top-of-fill', ...byHand }, [
    { id: 'blown', inputs: { keptIn: 3.5, depthIn: 12.13 }, expected: 15.63, note: '3.5 + 12.13 = 15.63' },
    { id: 'settled', inputs: { keptIn: 3.5, depthIn: 10.56 }, expected: 14.06, note: '3.5 + 10.56 = 14.06' },
  ]),
  ...group({ formula: 'blown-from-settled', source: 'conservation of mass: settled ÷ (1 − loss)', obtained: 'computed independently', table: 'settling', tolerance: 0.012, toleranceWhy: 'both depths printed to 0.01 in' }, [
    { id: 'R-38, 13 %', inputs: { settledIn: 10.56, lost: 0.13 }, expected: 12.13 },
    { id: 'R-49, 13 %', inputs: { settledIn: 13.61, lost: 0.13 }, expected: 15.64 },
    { id: 'R-38, 20 %', inputs: { settledIn: 10.86, lost: 0.2 }, expected: 13.57 },
    { id: 'R-49, 20 %', inputs: { settledIn: 14, lost: 0.2 }, expected: 17.5 },
    { id: 'R-38 glass, 4 %', inputs: { settledIn: 14.62, lost: 0.04 }, expected: 15.22 },
  ]),
  ...group({ formula: 'markers', source: 'IECC R303.1.1.1: at least one marker in each 300 ft²', obtained: 'computed independently', table: 'markers', tolerance: 0, toleranceWhy: 'a count' }, [
    { id: '900 ft²', inputs: { areaFt2: 900 }, expected: 3 },
    { id: '1,344 ft²', inputs: { areaFt2: 1344 }, expected: 5 },
    { id: '1,500 ft²', inputs: { areaFt2: 1500 }, expected: 5 },
    { id: 'a closet', inputs: { areaFt2: 20 }, expected: 1 },
  ]),
  ...group({ formula: 'whole-bags', ...byHand }, [
    { id: 'one of those over', inputs: { bags: 51.3, more: 1 }, expected: 52, note: '51 + 1 = 52' },
    { id: 'none over', inputs: { bags: 6.1, more: 0 }, expected: 6, note: '6.1, down = 6' },
    { id: 'whole already', inputs: { bags: 57, more: 0 }, expected: 57, note: '57 + 0 = 57' },
  ]),
  ...group({ formula: 'bays', ...byHand }, [
    { id: '42 ft at 16 in', inputs: { eaveFt: 42, spacingIn: 16 }, expected: 31, note: '42 · 12 ÷ 16 = 31.5, down = 31' },
    { id: '48 ft at 16 in', inputs: { eaveFt: 48, spacingIn: 16 }, expected: 36, note: '48 · 12 ÷ 16 = 36' },
    { id: '40 ft at 24 in', inputs: { eaveFt: 40, spacingIn: 24 }, expected: 20, note: '40 · 12 ÷ 24 = 20' },
  ]),
  ...group({ formula: 'baffle-length', source: BAFFLE, obtained: 'computed independently', table: 'baffles', ...digit(1) }, [
    { id: '4/12, top 16, 2 in over it', inputs: baffle, expected: 47.6, ...digit(0.1), note: 'a 48 in piece is just enough' },
    { id: '4/12, top 16, gap 1.5', inputs: { ...baffle, gapIn: 1.5 }, expected: 49.3, ...digit(0.1), note: 'a 48 in piece is short' },
    { id: '4/12, top 16, 6 in over it', inputs: { ...baffle, marginIn: 6 }, expected: 60 },
    { id: '4/12, top 16, 6 in past the plate', inputs: { ...baffle, outsideIn: 6 }, expected: 53.6, ...byHand, ...digit(0.1), note: '47.6 + 6 = 53.6' },
    { id: 'a heel as high as the fill', inputs: { ...baffle, heelIn: 24 }, expected: 0, ...byHand, note: '18 − 22.9 is below 0: = 0' },
    { id: '4/12, top 22', inputs: { ...baffle, topIn: 22 }, expected: 67 },
    { id: '4/12, top 22, 6 in over it', inputs: { ...baffle, topIn: 22, marginIn: 6 }, expected: 79 },
    { id: '3/12, top 20', inputs: { ...baffle, topIn: 20, pitch: 3 }, expected: 78 },
    { id: '3/12, top 20, 6 in over it', inputs: { ...baffle, topIn: 20, marginIn: 6, pitch: 3 }, expected: 95 },
  ]),
  ...group({ formula: 'baffle-pieces', ...byHand }, [
    { id: 'one piece is enough', inputs: { bays: 62, lengthIn: 47.6, pieceIn: 48 }, expected: 62, note: '47.6 ÷ 48, up = 1; 62 · 1 = 62' },
    { id: 'two pieces', inputs: { bays: 62, lengthIn: 60.3, pieceIn: 48 }, expected: 124, note: '60.3 ÷ 48, up = 2; 62 · 2 = 124' },
    { id: 'a piece to the inch', inputs: { bays: 10, lengthIn: 96, pieceIn: 48 }, expected: 20, note: '96 ÷ 48 = 2; 10 · 2 = 20' },
  ]),
  ...group({ formula: 'bays-to-fit', ...byHand }, [
    { id: 'some are good', inputs: { ventedBays: 26, goodBaffles: 6 }, expected: 20, note: '26 − 6 = 20' },
    { id: 'more good ones than vented bays', inputs: { ventedBays: 4, goodBaffles: 6 }, expected: 0, note: '4 − 6 is below 0: = 0' },
  ]),
  ...group({ formula: 'removed-volume' }, [
    { id: '800 ft², a foot deep', inputs: { areaFt2: 800, depthIn: 12 }, expected: 800, tolerance: 1e-9, toleranceWhy: '1,280 lb ÷ 1.6 lb/ft³, exact', source: HEAP, obtained: 'published, seen', table: 'heap' },
  ]),
  ...group({ formula: 'tons', ...byHand }, [
    { id: '1,000 ft² of old cellulose', inputs: { areaFt2: 1000, weightPsf: 1.25 }, expected: 0.625, note: '1,000 · 1.25 = 1,250 lb; ÷ 2,000 = 0.625' },
  ]),
  ...group({ formula: 'between-rows', source: CHART, obtained: 'computed independently', table: 'between rows', tolerance: 0.0006, toleranceWhy: 'half of the last printed digit' }, [
    { id: 'weight of R-39', inputs: { lower: 1.407, upper: 1.815, r: 39, lowerR: 38, upperR: 49 }, expected: 1.444 },
    { id: 'weight of R-40', inputs: { lower: 1.407, upper: 1.815, r: 40, lowerR: 38, upperR: 49 }, expected: 1.481 },
    { id: 'depth of R-39', inputs: { lower: 10.56, upper: 13.61, r: 39, lowerR: 38, upperR: 49 }, expected: 10.837, ...byHand, tolerance: 0.0005, note: '10.56 + 3.05 ÷ 11 = 10.837' },
  ]),
  ...group({ formula: 'up-to-quarter', ...byHand }, [
    { id: '10.837', inputs: { depthIn: 10.837 }, expected: 11, note: 'quarters: 10.75, 11; up = 11' },
    { id: '12.449', inputs: { depthIn: 12.449 }, expected: 12.5, note: 'quarters: 12.25, 12.5; up = 12.5' },
    { id: 'already a quarter', inputs: { depthIn: 4.25 }, expected: 4.25, note: '4.25 = 17/4' },
  ]),
]

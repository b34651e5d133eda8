import { byHand, digit, group } from '../case.ts'

const STRETCH = 'stretch-out table of duct wrap (city permit record, Everett WA): 3 in wrap adds 17 in on round, 11 1/2 on rectangular, 14 1/2 on square duct'
const ASHRAE = 'ASHRAE Handbook Fundamentals, duct design: 24 × 36 in sheet metal, 65 ft, 17,200 cfm, 122 °F leaving into 40 °F; bare U 0.73: 124.1 °F entering, 39,412 Btu/h'

export default [
  ...group({ formula: 'round-outside', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [
    { id: '8 in round', inputs: { diameterIn: 8, onItIn: 0 }, expected: 25.13, note: '3.1416 · 8 = 25.13' },
    { id: '6 in round with 1 in on it', inputs: { diameterIn: 6, onItIn: 1 }, expected: 25.13, note: '3.1416 · (6 + 2) = 25.13' },
  ]),
  ...group({ formula: 'box-outside', ...byHand }, [
    { id: '20 × 8 trunk', inputs: { widthIn: 20, heightIn: 8, onItIn: 0 }, expected: 56, note: '2 · 28 = 56' },
    { id: '14 × 8 with 2 in on it', inputs: { widthIn: 14, heightIn: 8, onItIn: 2 }, expected: 60, note: '2 · (18 + 12) = 60' },
  ]),
  ...group({ formula: 'duct-skin', ...byHand, tolerance: 0.05, toleranceWhy: 'half of the last digit' }, [
    { id: '25 ft of 8 in round', inputs: { roundIn: 25.13, lengthFt: 25, runs: 1 }, expected: 52.4, note: '25.13 ÷ 12 · 25 = 52.4' },
    { id: 'six branches of 6 in', inputs: { roundIn: 18.85, lengthFt: 11, runs: 6 }, expected: 103.7, note: '18.85 ÷ 12 · 11 · 6 = 103.7' },
  ]),
  ...group({ formula: 'wrap-area', source: STRETCH, obtained: 'computed independently', table: 'stretch-out' }, [
    { id: '8 in round, 25 ft, 3 in wrap: cut 42.13 in', inputs: { roundIn: 25.13, allowanceIn: 17, lengthFt: 25, runs: 1 }, expected: 87.8, ...digit(0.1) },
    { id: '8 in round, 25 ft, 2.2 in wrap: cut 38.13 in', inputs: { roundIn: 25.13, allowanceIn: 13, lengthFt: 25, runs: 1 }, expected: 79.4, ...digit(0.1) },
    { id: '20 × 8 trunk, 30 ft, 3 in wrap: cut 67.5 in', inputs: { roundIn: 56, allowanceIn: 11.5, lengthFt: 30, runs: 1 }, expected: 168.8, ...digit(0.1) },
    { id: '12 × 12 square, a foot, 3 in wrap', inputs: { roundIn: 48, allowanceIn: 14.5, lengthFt: 1, runs: 3 }, expected: 15.62, ...digit(0.02) },
  ]),
  ...group({ formula: 'duct-joints', ...byHand }, [
    { id: '25 ft of pieces of 5 ft, elbow, take-off, boot', inputs: { lengthFt: 25, pieceFt: 5, takeoffs: 1, boots: 1, elbows: 1 }, expected: 11, note: '4 slip joints + 1 + 1 + 5 = 11' },
    { id: '11 ft, two boots', inputs: { lengthFt: 11, pieceFt: 5, takeoffs: 0, boots: 2, elbows: 0 }, expected: 4, note: '3 pieces have 2 joints; 2 + 2 = 4' },
    { id: 'one short piece', inputs: { lengthFt: 4, pieceFt: 5, takeoffs: 0, boots: 0, elbows: 0 }, expected: 0, note: '1 piece − 1 = 0, not below 0' },
  ]),
  ...group({ formula: 'joint-run', ...byHand, tolerance: 0.05, toleranceWhy: 'half of the last digit' }, [
    { id: '11 joints of 8 in', inputs: { roundIn: 25.13, joints: 11, runs: 1 }, expected: 23, note: '2.094 · 11 = 23.0' },
    { id: 'three runs', inputs: { roundIn: 18.85, joints: 4, runs: 3 }, expected: 18.85, note: '1.571 · 12 = 18.85' },
  ]),
  ...group({ formula: 'mastic', source: 'feet to a gallon = 231 ÷ (12 · band · thickness); gallon 231 in³ (NIST Handbook 44, appendix C)', obtained: 'computed independently', table: 'mastic', toleranceWhy: 'feet are printed whole' }, [
    { id: '2 in × 1/16: 154 ft to a gallon', inputs: { runFt: 154, bandIn: 2, thickIn: 0.0625 }, expected: 1, tolerance: 0.004 },
    { id: '3 in, as thick as a nickel: 83 ft', inputs: { runFt: 83, bandIn: 3, thickIn: 0.077 }, expected: 1, tolerance: 0.007 },
    { id: '23 ft, 3 in × nickel', inputs: { runFt: 23, bandIn: 3, thickIn: 0.077 }, expected: 0.276, tolerance: 0.0006, toleranceWhy: 'half of the last digit' },
  ]),
  ...group({ formula: 'patch-area', ...byHand, tolerance: 0.0005, toleranceWhy: 'half of the last digit' }, [
    { id: '6 ft of a 1 in gap, lap 2 in', inputs: { runFt: 6, gapIn: 1, lapIn: 2 }, expected: 2.5, note: '72 · 5 ÷ 144 = 2.5' },
    { id: '4 ft of a 2 in gap, lap 1 in', inputs: { runFt: 4, gapIn: 2, lapIn: 1 }, expected: 1.333, note: '48 · 4 ÷ 144 = 1.333' },
  ]),
  ...group({ formula: 'round-bore', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [{ id: '8 in', inputs: { diameterIn: 8 }, expected: 50.27, note: '0.7854 · 64 = 50.27' }]),
  ...group({ formula: 'box-bore', ...byHand }, [{ id: '24 × 36', inputs: { widthIn: 24, heightIn: 36 }, expected: 864, note: '24 · 36 = 864' }]),
  ...group({ formula: 'air-carried', source: ASHRAE, obtained: 'from memory' }, [
    { id: '864 in² at 2,867 fpm', inputs: { boreIn2: 864, speedFpm: 2867 }, expected: 17200, tolerance: 5, toleranceWhy: 'speed printed to 1 fpm' },
  ]),
  ...group({ formula: 'air-carried', ...byHand, tolerance: 0.5, toleranceWhy: 'half of the last digit' }, [{ id: '8 in at 430 fpm', inputs: { boreIn2: 50.27, speedFpm: 430 }, expected: 150, note: '50.27 ÷ 144 · 430 = 150' }]),
  ...group({ formula: 'u-duct', source: 'duct U = 1 ÷ (R + films), printed with bare U 0.73', obtained: 'computed independently', tolerance: 0.00006, toleranceWhy: 'half of the last digit' }, [
    { id: 'R-4.2, films 0.85', inputs: { insulationR: 4.2, films: 0.85 }, expected: 0.198 },
    { id: 'R-8, films 0.85', inputs: { insulationR: 8, films: 0.85 }, expected: 0.113 },
  ]),
  ...group({ formula: 'on-duct', ...byHand }, [{ id: 'R-8.3 at 3.689 an inch', inputs: { insulationR: 7.4, perInch: 3.7 }, expected: 2, note: '7.4 ÷ 3.7 = 2' }]),
  ...group({ formula: 'air-leaving', source: ASHRAE, obtained: 'from memory' }, [
    { id: 'bare: enters at 124.1, leaves at 122', inputs: { enteringF: 124.1, atticF: 40, u: 0.73, skinFt2: 650, cfm: 17200 }, expected: 122, tolerance: 0.1, toleranceWhy: 'temperatures printed to 0.1 °F; there the midpoint form' },
  ]),
  ...group({ formula: 'air-leaving', source: '8 in round, 25 ft, 150 cfm, worked out apart from the program by the exponential', obtained: 'computed independently', table: 'branch', tolerance: 0.02, toleranceWhy: 'skin printed to 0.01 ft²' }, [
    { id: 'cooling, bare', inputs: { enteringF: 55, atticF: 130, u: 0.73, skinFt2: 52.36, cfm: 150 }, expected: 70.76 },
    { id: 'cooling, R-8', inputs: { enteringF: 55, atticF: 130, u: 0.113, skinFt2: 52.36, cfm: 150 }, expected: 57.69 },
    { id: 'heating, R-4.2', inputs: { enteringF: 120, atticF: 20, u: 0.198, skinFt2: 52.36, cfm: 150 }, expected: 113.8 },
  ]),
  ...group({ formula: 'duct-heat', source: ASHRAE, obtained: 'from memory' }, [
    { id: 'bare', inputs: { cfm: 17200, enteringF: 124.1217, leavingF: 122, runs: 1 }, expected: 39412, tolerance: 20, toleranceWhy: 'entering temperature printed to 0.1 °F, here from the printed heat' },
  ]),
  ...group({ formula: 'duct-heat', ...byHand, tolerance: 1, toleranceWhy: 'half of the last digit' }, [{ id: 'four branches, R-8, cooling', inputs: { cfm: 150, enteringF: 55, leavingF: 57.69, runs: 4 }, expected: 1743, note: '1.08 · 150 · 2.69 · 4 = 1,743' }]),
  ...group({ formula: 'oval-outside', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [
    { id: '14 × 6 oval', inputs: { longIn: 14, shortIn: 6, onItIn: 0 }, expected: 34.85, note: '3.1416 · 6 + 2 · 8 = 34.85' },
    { id: 'the same with an inch on it', inputs: { longIn: 14, shortIn: 6, onItIn: 1 }, expected: 41.13, note: '3.1416 · 8 + 2 · 8 = 41.13' },
  ]),
  ...group({ formula: 'oval-bore', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [{ id: '14 × 6 oval', inputs: { longIn: 14, shortIn: 6 }, expected: 76.27, note: '0.7854 · 36 + 6 · 8 = 76.27' }]),
  ...group({ formula: 'duct-allowance', source: 'IECC R403.3.4: 4 and 3 cfm for 100 ft² of floor', obtained: 'computed independently', tolerance: 1e-9, toleranceWhy: 'exact' }, [
    { id: '1,800 ft² at 4: 72 cfm', inputs: { floorFt2: 1800, perHundred: 4 }, expected: 72 },
    { id: '2,400 ft² at 3: 72 cfm', inputs: { floorFt2: 2400, perHundred: 3 }, expected: 72 },
  ]),
  ...group({ formula: 'new-run-hours', ...byHand }, [
    { id: 'two runs of 20 ft', inputs: { lengthFt: 20, perFt: 0.05, perEnd: 0.3, runs: 2, access: 1 }, expected: 3.2, note: '(20 · 0.05 + 2 · 0.3) · 2 = 3.2' },
    { id: 'hard to reach', inputs: { lengthFt: 10, perFt: 0.05, perEnd: 0.3, runs: 1, access: 2 }, expected: 2.2, note: '(0.5 + 0.6) · 2 = 2.2' },
  ]),
  ...group({ formula: 'duct-heat', source: 'Washington WAC 51-11C-61081: 0.0180 Btu for a cubic foot and °F at sea level', obtained: 'published, seen', table: 'WAC heat of air', tolerance: 30, toleranceWhy: 'half of the last printed digit of 0.0180, which is 0.3 %' }, [{ id: '200 cfm, 50 °F', inputs: { cfm: 200, enteringF: 120, leavingF: 70, runs: 1 }, expected: 0.018 * 12000 * 50 }]),
]

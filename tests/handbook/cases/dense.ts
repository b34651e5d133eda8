import { byHand, digit, group } from '../case.ts'

export default [
  ...group({ formula: 'cavity-volume', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [
    { id: '132 ft² of 2x6 at 16 in, an inch of air kept', inputs: { areaFt2: 132, framing: 0.09375, depthIn: 4.5 }, expected: 44.86, note: '132 · 0.90625 · 4.5 ÷ 12 = 44.86' },
    { id: '192 ft² of 2x8', inputs: { areaFt2: 192, framing: 0.09375, depthIn: 7.25 }, expected: 105.13, note: '192 · 0.90625 · 7.25 ÷ 12 = 105.13' },
  ]),
  ...group({ formula: 'packed-bags', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [
    { id: '44.86 ft³ at 3.5, bags of 25 lb', inputs: { volumeFt3: 44.86, densityPcf: 3.5, bagLb: 25 }, expected: 6.28, note: '44.86 · 3.5 ÷ 25 = 6.28' },
    { id: '100 ft³ at 1.6, bags of 30 lb', inputs: { volumeFt3: 100, densityPcf: 1.6, bagLb: 30 }, expected: 5.33, note: '160 ÷ 30 = 5.33' },
  ]),
  ...group({ formula: 'cavity-depth', ...byHand }, [
    { id: '2x6, an inch of air', inputs: { framingIn: 5.5, keptIn: 0, airIn: 1 }, expected: 4.5, note: '5.5 − 1 = 4.5' },
    { id: '2x8 with 3 1/2 in of batts', inputs: { framingIn: 7.25, keptIn: 3.5, airIn: 1.5 }, expected: 2.25, note: '7.25 − 3.5 − 1.5 = 2.25' },
    { id: 'full', inputs: { framingIn: 3.5, keptIn: 3.5, airIn: 1 }, expected: 0, note: '−1, not below 0' },
  ]),
  ...group({ formula: 'holes', ...byHand }, [
    { id: 'nine bays of 16 ft, holes 4 ft apart', inputs: { bays: 9, lengthFt: 16, apartFt: 4 }, expected: 36, note: '9 · 16 ÷ 4 = 36' },
    { id: 'a part of 4 ft takes one more', inputs: { bays: 9, lengthFt: 17, apartFt: 4 }, expected: 45, note: '17 ÷ 4, up: 5; 9 · 5 = 45' },
  ]),
  ...group({ formula: 'bays-of', ...byHand }, [
    { id: '22 ft at 16 in', inputs: { widthFt: 22, spacingIn: 16 }, expected: 17, note: '264 ÷ 16 = 16.5, up: = 17' },
    { id: '20 ft at 24 in', inputs: { widthFt: 20, spacingIn: 24 }, expected: 10, note: '240 ÷ 24 = 10' },
  ]),
  ...group({ formula: 'block-area', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [{ id: '17 bays of 2x6 at 16 in', inputs: { bays: 17, spacingIn: 16, framingIn: 1.5, depthIn: 5.5 }, expected: 9.41, note: '17 · 14.5 · 5.5 ÷ 144 = 9.41' }]),
  ...group({ formula: 'block-edge', ...byHand }, [{ id: '17 bays of 2x6 at 16 in', inputs: { bays: 17, spacingIn: 16, framingIn: 1.5, depthIn: 5.5 }, expected: 680, note: '17 · 2 · 20 = 680' }]),
  ...group({ formula: 'r-gapped', source: 'a builder’s page on an attic hatch: a fifth of it bare, R-38 on the rest, 3 for films and panel: 1 ÷ (R + 3) = 0.8 ÷ 41 + 0.2 ÷ 3, R 8.6', obtained: 'published, seen in a copy', ...digit(0.1) }, [{ id: 'hatch, a fifth bare', inputs: { r: 38, gaps: 0.2, base: 3 }, expected: 8.6 }]),
  ...group({ formula: 'r-gapped', source: 'worked out apart from the program: base 1.67 on both paths', obtained: 'computed independently', ...digit(0.1) }, [
    { id: 'R-19, 5 % gaps: 11.5', inputs: { r: 19, gaps: 0.05, base: 1.67 }, expected: 11.5 },
    { id: 'R-30, 5 % gaps: 15.0', inputs: { r: 30, gaps: 0.05, base: 1.67 }, expected: 15 },
    { id: 'no gaps', inputs: { r: 19, gaps: 0, base: 1.67 }, expected: 19 },
  ]),
]

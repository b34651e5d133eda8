import { byHand, group } from '../case.ts'

const HALF = { tolerance: 0.05, toleranceWhy: 'half of the last digit' } as const

export default [
  ...group({ formula: 'within-hole', ...byHand }, [
    { id: '35 holes of 1/2 in, 32.6 in² by the table', inputs: { leakIn2: 32.55, openIn2: 6.872, tableIn2: 32.55 }, expected: 6.872, note: '32.55 · 6.872 ÷ 32.55 = 6.872' },
    { id: 'sealed, in proportion', inputs: { leakIn2: 10.85, openIn2: 6.872, tableIn2: 32.55 }, expected: 2.2906666666666666, note: '10.85 · 6.872 ÷ 32.55 = 2.2907' },
    { id: 'a wide hole: by the table', inputs: { leakIn2: 0.93, openIn2: 7, tableIn2: 0.93 }, expected: 0.93, note: '0.93 · 1 = 0.93' },
  ]),
  ...group({ formula: 'leak-of', ...byHand, tolerance: 0.005, toleranceWhy: 'half of the last digit' }, [
    { id: 'four recessed lights', inputs: { eachIn2: 1.6, amount: 4 }, expected: 6.4, note: '1.6 · 4 = 6.4' },
    { id: '372 ft of ceiling joint', inputs: { eachIn2: 0.071, amount: 372 }, expected: 26.41, note: '0.071 · 372 = 26.41' },
  ]),
  ...group({ formula: 'seam-path', ...byHand }, [
    { id: 'soffit 8 × 2 ft', inputs: { mouthIn2: 2304, edgeIn: 240, seamIn: 0.25 }, expected: 60, note: 'the smaller of 2,304 and 240 · 0.25 = 60' },
    { id: 'a slot of 1/8 in', inputs: { mouthIn2: 6, edgeIn: 96.25, seamIn: 0.25 }, expected: 6, note: '96.25 · 0.25 = 24 is more than its mouth of 6' },
  ]),
  ...group({ formula: 'hole-leak', source: 'worked out apart from the program: open area × 0.61 × 0.5', obtained: 'computed independently', ...HALF }, [
    { id: 'soffit 8 × 2 ft by its seams: 18 in²', inputs: { openIn2: 60, series: 0.5, count: 1 }, expected: 18.3 },
    { id: 'chimney 17 × 21 in, 2 in gap: 51 in²', inputs: { openIn2: 168, series: 0.5, count: 1 }, expected: 51.2 },
    { id: 'three stud bays', inputs: { openIn2: 9, series: 0.5, count: 3 }, expected: 8.235 },
  ]),
  ...group({ formula: 'rectangle', ...byHand }, [{ id: 'soffit', inputs: { lengthIn: 96, widthIn: 24 }, expected: 2304, note: '96 · 24 = 2,304' }]),
  ...group({ formula: 'framed-gap', ...byHand }, [
    { id: 'chimney 20 × 32, 2 in gap', inputs: { lengthIn: 20, widthIn: 32, gapIn: 2 }, expected: 224, note: '24 · 36 − 20 · 32 = 224' },
    { id: 'chimney 17 × 21, 2 in gap', inputs: { lengthIn: 17, widthIn: 21, gapIn: 2 }, expected: 168, note: '21 · 25 − 17 · 21 = 168' },
  ]),
  ...group({ formula: 'round-in', ...byHand, ...HALF }, [
    { id: 'vent 4 1/2 in in 9 × 9', inputs: { lengthIn: 9, widthIn: 9, diameterIn: 4.5 }, expected: 65.1, note: '81 − 0.7854 · 20.25 = 65.1' },
    { id: 'vent as wide as its frame', inputs: { lengthIn: 4, widthIn: 4, diameterIn: 6 }, expected: 0, note: '16 − 28.3, not below 0' },
  ]),
]

import { byHand, digit, group } from '../case.ts'

const NIST = { source: 'NIST StRD, NumAcc1: certified standard deviation 1', obtained: 'from memory' } as const
const OVEN = { source: 'JCGM 100:2008, 4.4.3: twenty readings of a temperature', obtained: 'from memory', table: 'GUM 4.4.3' } as const
const list = (values: readonly number[]): Record<string, number> => Object.fromEntries(values.map((v, i) => [String(i + 1), v]))
export default [
  ...group({ formula: 'standard-deviation' }, [
    { id: 'three large readings one apart', inputs: list([10000001, 10000003, 10000002]), expected: 1, ...NIST, tolerance: 1e-9, toleranceWhy: 'certified to 15 digits' },
    { id: 'five probes', inputs: list([3.5, 3.25, 3.5, 3.75, 3.5]), expected: 0.1767766953, ...byHand, note: '√((0.0625 + 0.0625) ÷ 4) = √0.03125 = 0.1767766953' },
    { id: 'two probes', inputs: list([3, 4]), expected: Math.SQRT1_2, ...byHand, note: '√(0.25 + 0.25) = 0.70711' },
    { id: 'all alike', inputs: list([6, 6, 6]), expected: 0, ...byHand, note: 'none is off: = 0' },
  ]),
  ...group({ formula: 'mean-off' }, [
    { id: 'twenty readings, one standard error', inputs: { factor: 1, deviationIn: 1.489, probes: 20 }, expected: 0.333, ...OVEN, ...digit(0.001) },
    { id: 'five probes', inputs: { factor: 2.13, deviationIn: 0.1767766953, probes: 5 }, expected: 0.168391, ...byHand, tolerance: 1e-6, note: '2.13 · 0.1767767 ÷ 2.2360680 = 0.168391' },
    { id: 'two probes an inch apart', inputs: { factor: 6.31, deviationIn: Math.SQRT1_2, probes: 2 }, expected: 3.155, ...byHand, note: '6.31 · 0.7071 ÷ 1.4142 = 6.31 ÷ 2 = 3.155' },
  ]),
  ...group({ formula: 'joined' }, [
    { id: 'end gauge', inputs: list([25, 9.7, 2.9, 16.6]), expected: 32, source: 'JCGM 100:2008, H.1: u(l) = 32 nm from 25, 9.7, 2.9 and 16.6 nm', obtained: 'from memory', ...digit(1) },
    { id: 'three and four', inputs: list([3, 4]), expected: 5, ...byHand, note: '√(9 + 16) = 5' },
    { id: 'four of them', inputs: list([2, 4, 5, 6]), expected: 9, ...byHand, note: '√(4 + 16 + 25 + 36) = √81 = 9' },
    { id: 'none', inputs: {}, expected: 0, ...byHand, note: 'nothing moves it: = 0' },
  ]),
  ...group({ formula: 'about-off', ...byHand }, [
    { id: '152 ft', inputs: { value: 152, pct: 10 }, expected: 15.2, note: '152 · 10 ÷ 100 = 15.2' },
    { id: 'exact', inputs: { value: 152, pct: 0 }, expected: 0, note: '152 · 0 = 0' },
  ]),
  ...group({ formula: 'low-end', ...byHand }, [
    { id: 'down to five dollars', inputs: { expected: 696500, moved: 41700, step: 500 }, expected: 654500, note: '654,800 ÷ 500 = 1309.6, down = 1309; 1309 · 500 = 654,500' },
    { id: 'to the hundredth', inputs: { expected: 46.67, moved: 4.623, step: 0.01 }, expected: 42.04, note: '42.047, down = 42.04' },
    { id: 'no price is below none', inputs: { expected: 100, moved: 300, step: 1 }, expected: 0, note: '100 − 300 is not below 0: = 0' },
    { id: 'at a step', inputs: { expected: 1000, moved: 500, step: 100 }, expected: 500, note: '1,000 − 500 = 500' },
  ]),
  ...group({ formula: 'high-end', ...byHand }, [
    { id: 'up to five dollars', inputs: { expected: 696500, moved: 4800, step: 500 }, expected: 701500, note: '701,300 ÷ 500 = 1402.6, up = 1403; 1403 · 500 = 701,500' },
    { id: 'to the hundredth', inputs: { expected: 46.67, moved: 0.443, step: 0.01 }, expected: 47.12, note: '47.113, up = 47.12' },
    { id: 'at a step', inputs: { expected: 1000, moved: 500, step: 100 }, expected: 1500, note: '1,000 + 500 = 1,500' },
  ]),
  ...group({ formula: 'moved', ...byHand }, [
    { id: 'dearer', inputs: { after: 700, before: 650 }, expected: 50, note: '700 − 650 = 50' },
    { id: 'cheaper', inputs: { after: 600, before: 650 }, expected: -50, note: '600 − 650 = −50' },
  ]),
  ...group({ formula: 'narrowed', ...byHand }, [
    { id: 'two of one size both ways', inputs: { below: 5, above: 5, ownBelow: 3, ownAbove: 4 }, expected: 3, note: '10 − √(25 − 9) − √(25 − 16) = 10 − 4 − 3 = 3' },
    { id: 'the only one', inputs: { below: 5, above: 2, ownBelow: 5, ownAbove: 2 }, expected: 7, note: '5 + 2 − 0 − 0 = 7' },
    { id: 'one way only', inputs: { below: 13, above: 0, ownBelow: 5, ownAbove: 0 }, expected: 1, note: '13 − √(169 − 25) = 13 − 12 = 1' },
  ]),
  ...group({ formula: 'unseen-more', ...byHand }, [
    { id: 'a tenth', inputs: { sealing: 900, unseenFt2: 120, seenFt2: 1080 }, expected: 100, note: '900 · 120 ÷ 1,080 = 100' },
  ]),
]

import { byHand, group } from '../case.ts'

const PIPE = 'plastic pipe of 2 in, 2.375 in outside (ASTM D1785), in a 3 in hole'

export default [
  ...group({ formula: 'gap-round', ...byHand }, [
    { id: PIPE, inputs: { holeIn: 3, outsideIn: 2.375 }, expected: 0.3125, note: '(3 − 2.375) ÷ 2 = 0.3125' },
  ]),
  ...group({ formula: 'annulus', ...byHand, tolerance: 0.0005, toleranceWhy: 'half of the last digit' }, [
    { id: PIPE, inputs: { holeIn: 3, outsideIn: 2.375, count: 1 }, expected: 2.638, note: '0.785398 · (9 − 5.640625) = 2.638' },
    { id: '22 wire holes of 3/4 in', inputs: { holeIn: 0.75, outsideIn: 0, count: 22 }, expected: 9.719, note: '22 · 0.785398 · 0.5625 = 9.719' },
  ]),
  ...group({ formula: 'plug', source: 'a sealant distributor’s table (Midwest Sealant Supply): 27 oz hold 48.7 in³, 30 oz hold 54.1 in³', obtained: 'published, seen', table: 'sealant packs', tolerance: 0.03, toleranceWhy: 'volumes printed to 0.1 in³' }, [
    { id: '48.7 in³', inputs: { areaIn2: 48.7, depthIn: 1 }, expected: 27 },
    { id: '54.1 in³, half an inch deep', inputs: { areaIn2: 108.2, depthIn: 0.5 }, expected: 30 },
  ]),
  ...group({ formula: 'plug', ...byHand }, [
    { id: 'a gallon', inputs: { areaIn2: 115.5, depthIn: 2 }, expected: 128, note: '115.5 · 2 = 231 in³ = 128 fl oz' },
  ]),
]

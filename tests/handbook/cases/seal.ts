import { byHand, digit, group } from '../case.ts'

const FLOZ = 'US fluid ounce = 231/128 in³ (NIST Handbook 44, appendix C); round bead'
const BOX = 'panels cut out one by one: light box 19 × 14 in inside, 5/8 board, 16.63 in high'
const CHIMNEY = 'brick 17 × 21 in, 2 in gap; strip 1 1/2 in up, 2 in on; dam 3 in off, 19.63 in high'

export default [
  ...group({ formula: 'ring', ...byHand, tolerance: 0.001, toleranceWhy: 'π taken as 3.1416' }, [
    { id: 'three 6 in trims', inputs: { diameterIn: 6, count: 3 }, expected: 56.549, note: '3.1416 · 6 · 3 = 56.549' },
  ]),
  ...group({ formula: 'edge', ...byHand }, [
    { id: 'hatch 22 × 30', inputs: { lengthIn: 22, widthIn: 30 }, expected: 104, note: '2 · (22 + 30) = 104' },
    { id: 'brick 17 × 21', inputs: { lengthIn: 17, widthIn: 21 }, expected: 76, note: '2 · (17 + 21) = 76' },
  ]),
  ...group({ formula: 'edge-out', ...byHand }, [
    { id: '3 in off a 17 × 21 chimney', inputs: { lengthIn: 17, widthIn: 21, outIn: 3 }, expected: 100, note: '2 · (23 + 27) = 100' },
    { id: 'dam 3 in off a 24 × 24 chimney', inputs: { lengthIn: 24, widthIn: 24, outIn: 3 }, expected: 120, note: 'inside 30 × 30: 4 · 30 = 120' },
    { id: 'framing 2 in off it', inputs: { lengthIn: 17, widthIn: 21, outIn: 2 }, expected: 92, note: '2 · (21 + 25) = 92' },
  ]),
  ...group({ formula: 'seam-length', ...byHand }, [
    { id: '186 ft inside', inputs: { lengthFt: 186, seams: 2 }, expected: 4464, note: '186 · 12 · 2 = 4,464' },
    { id: '76 ft outside', inputs: { lengthFt: 76, seams: 1 }, expected: 912, note: '76 · 12 = 912' },
  ]),
  ...group({ formula: 'bead-width', ...byHand }, [
    { id: 'thin gap', inputs: { gapIn: 0.125, leastIn: 0.25 }, expected: 0.25, note: '1/8 is under 1/4: = 0.25' },
    { id: 'wide gap', inputs: { gapIn: 0.5, leastIn: 0.25 }, expected: 0.5, note: 'as wide as the gap: = 0.5' },
  ]),
  // The distributor prints 18.3 and 36.6 in³ for 10.1 and 20 oz as well; by the exact ounce these are 18.23 and 36.09.
  ...group({ formula: 'bead', source: 'a sealant distributor’s table (Midwest Sealant Supply): 27 oz hold 48.7 in³, 30 oz hold 54.1 in³', obtained: 'published, seen', table: 'sealant packs', tolerance: 0.03, toleranceWhy: 'volume printed to 0.1 in³' }, [
    { id: '27 oz, 1 in round', inputs: { runIn: 48.7 * 4 / Math.PI, beadIn: 1 }, expected: 27 },
    { id: '30 oz, 1 in round', inputs: { runIn: 54.1 * 4 / Math.PI, beadIn: 1 }, expected: 30 },
    { id: '30 oz, 1/2 in round', inputs: { runIn: 54.1 * 16 / Math.PI, beadIn: 0.5 }, expected: 30 },
  ]),
  ...group({ formula: 'bead', source: FLOZ, obtained: 'computed independently', table: 'beads', toleranceWhy: 'feet to a cartridge of 10.1 fl oz are printed to 0.1' }, [
    { id: 'cartridge, round 1/4: 30.9 ft', inputs: { runIn: 30.9 * 12, beadIn: 0.25 }, expected: 10.1, tolerance: 0.017, note: 'square it would be 24.3 ft' },
    { id: 'cartridge, round 3/8: 13.8 ft', inputs: { runIn: 13.8 * 12, beadIn: 0.375 }, expected: 10.1, tolerance: 0.04, note: 'square it would be 10.8 ft' },
    { id: 'cartridge, round 1/2: 7.7 ft', inputs: { runIn: 7.7 * 12, beadIn: 0.5 }, expected: 10.1, tolerance: 0.07 },
    { id: '372 ft round 1/4', inputs: { runIn: 4464, beadIn: 0.25 }, expected: 12 * 10.1, tolerance: 0.05 * 10.1, toleranceWhy: 'printed as 12.0 cartridges', note: 'square it would be 15.3 cartridges' },
    { id: '168 in of brick and framing, 3/8', inputs: { runIn: 168, beadIn: 0.375 }, expected: 10.28, ...digit(0.01) },
    { id: 'a gallon, 1 in round', inputs: { runIn: 231 * 4 / Math.PI, beadIn: 1 }, expected: 128, tolerance: 1e-9, toleranceWhy: '231 in³ are 128 fl oz, exact', source: 'NIST Handbook 44, appendix C: 1 gallon = 231 in³ = 128 fl oz', obtained: 'from memory', table: 'NIST' },
  ]),
  ...group({ formula: 'board-area', ...byHand }, [
    { id: 'soffit 8 × 2 ft, 2 in lap', inputs: { lengthIn: 96, widthIn: 24, lapIn: 2 }, expected: 19.444, tolerance: 0.0005, toleranceWhy: 'half of the last digit', note: '100 · 28 ÷ 144 = 19.444' },
    { id: 'hatch panel', inputs: { lengthIn: 22, widthIn: 30, lapIn: 0 }, expected: 4.583, tolerance: 0.0005, toleranceWhy: 'half of the last digit', note: '22 · 30 ÷ 144 = 4.583' },
  ]),
  ...group({ formula: 'strip-metal', ...byHand }, [
    { id: 'dam', inputs: { runIn: 100, widthIn: 19.63 }, expected: 13.632, tolerance: 0.0005, toleranceWhy: 'half of the last digit', note: '100 · 19.63 ÷ 144 = 13.632' },
  ]),
  ...group({ formula: 'chimney-strip', source: CHIMNEY, obtained: 'computed independently' }, [
    { id: 'strip of the chimney', inputs: { lengthIn: 17, widthIn: 21, gapIn: 2, legIn: 1.5, lapIn: 2 }, expected: 17.15 - 13.632, tolerance: 0.006, toleranceWhy: 'metal of strip and dam is printed to 0.01 ft²', note: '(76 + 4 · 4) · 5.5 ÷ 144 = 3.514' },
    { id: 'strip of a 24 × 24 chimney', inputs: { lengthIn: 24, widthIn: 24, gapIn: 2, legIn: 1.5, lapIn: 2 }, expected: 4.28, ...digit(0.01), source: 'four L-strips 5.5 in wide, two of 32 in and two of 24 in, laid out by hand' },
  ]),
  ...group({ formula: 'height', ...byHand }, [
    { id: 'dam', inputs: { topOfFillInitialIn: 15.63, marginIn: 4 }, expected: 19.63, note: '15.63 + 4 = 19.63' },
    { id: 'light box', inputs: { topOfFillInitialIn: 15.63, marginIn: 1 }, expected: 16.63, note: '15.63 + 1 = 16.63' },
  ]),
  ...group({ formula: 'in-feet', ...byHand }, [{ id: 'hatch edge', inputs: { lengthIn: 104 }, expected: 8.6667, tolerance: 0.0001, toleranceWhy: 'half of the last digit', note: '104 ÷ 12 = 8.6667' }]),
  ...group({ formula: 'in-inches', ...byHand }, [{ id: 'eight feet', inputs: { lengthFt: 8 }, expected: 96, note: '8 · 12 = 96' }]),
  ...group({ formula: 'box-board', source: BOX, obtained: 'computed independently' }, [
    { id: 'two boxes', inputs: { lengthIn: 19, widthIn: 14, boardIn: 0.625, heightIn: 16.63, count: 2 }, expected: 20.11, ...digit(0.01), note: '2 · ((40.5 + 28) · 16.63 + 20.25 · 15.25) ÷ 144 = 20.11' },
  ]),
  ...group({ formula: 'box-seams', source: BOX, obtained: 'computed independently' }, [
    { id: 'two boxes, seams', inputs: { lengthIn: 19, widthIn: 14, boardIn: 0.625, heightIn: 16.63, count: 2 }, expected: 11.34 * 231 / 128 / (Math.PI / 64), tolerance: 0.2, toleranceWhy: 'printed as 11.34 fl oz of a 1/4 in bead', note: '2 · (2 · 71 + 4 · 16.63) = 417.04' },
  ]),
  ...group({ formula: 'box-top', obtained: 'computed independently' }, [
    { id: 'nine tops 14 × 14', inputs: { lengthIn: 14, widthIn: 14, count: 9 }, expected: 12.25, ...digit(0.01), source: 'nine boxes 14 × 14 in, lid R 0.56 and base 1.67', table: 'holes in a ceiling' },
    { id: 'four tops 19 × 14', inputs: { lengthIn: 19, widthIn: 14, count: 4 }, expected: 7.39, ...digit(0.01), source: BOX },
  ]),
  ...group({ formula: 'clear-of', ...byHand }, [
    { id: 'housing 13 in, 3 in clear', inputs: { sizeIn: 13, keepIn: 3 }, expected: 19, note: '13 + 2 · 3 = 19' },
    { id: 'housing 8 in, 3 in clear', inputs: { sizeIn: 8, keepIn: 3 }, expected: 14, note: '8 + 2 · 3 = 14; SWS 4.1001.1 and NEC 410.116(B) ask for 3 in' },
  ]),
  ...group({ formula: 'ring-area', source: CHIMNEY, obtained: 'computed independently' }, [
    { id: 'bare ring', inputs: { lengthIn: 17, widthIn: 21, offIn: 3 }, expected: 1.83, ...digit(0.01), note: '(23 · 27 − 17 · 21) ÷ 144 = 264 ÷ 144 = 1.83' },
  ]),
  ...group({ formula: 'supports', ...byHand }, [
    { id: '8 × 2 ft: not over 24 in', inputs: { lengthIn: 96, widthIn: 24, spanIn: 24 }, expected: 0, note: 'SWS 3.0101.1 asks for support over 24 in; 24 is not over: = 0' },
    { id: '8 × 3 ft', inputs: { lengthIn: 96, widthIn: 36, spanIn: 24 }, expected: 12, note: '96 ÷ 24 = 4 pieces of 3 ft = 12' },
    { id: '5 × 2 1/2 ft', inputs: { lengthIn: 60, widthIn: 30, spanIn: 24 }, expected: 5, note: '60 ÷ 24, down = 2 pieces of 2.5 ft = 5' },
  ]),
  ...group({ formula: 'box-height', ...byHand }, [
    { id: 'the fill is higher', inputs: { lightIn: 7.5, clearIn: 3, topOfFillInitialIn: 15.63, marginIn: 1 }, expected: 16.63, note: '15.63 + 1 = 16.63, over 7.5 + 3' },
    { id: 'the light is higher', inputs: { lightIn: 20, clearIn: 3, topOfFillInitialIn: 9, marginIn: 1 }, expected: 23, note: '20 + 3 = 23, over 9 + 1' },
  ]),
]

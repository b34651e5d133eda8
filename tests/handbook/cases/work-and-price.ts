import { byHand, digit, group } from '../case.ts'

const RANCH = 'library extract, blowing insulation is a team effort: 1950s ranch, 1,500 ft², two people'
const HEAP = 'a cellulose seller’s worked example: 40 × 20 ft, 1 ft deep, 1.6 lb/ft³, bags of 25 lb: 1,280 lb, 51.2 bags, 52 to buy'
const MARKUPS = 'Remodeling, Managing Markups: 50 % markup makes 33 % gross margin, 67 % makes 40 %'
const HOUSE = 'a house of 1,344 ft² worked out line by line without the program'
const RULE = 'a ranch of 1,344 ft² worked out line by line without the program'

export default [
  ...group({ formula: 'sum' }, [
    { id: 'hours of the ranch', inputs: { sealing: 3, tuning: 8, blowing: 6 }, expected: 17, tolerance: 0, toleranceWhy: 'whole hours', source: RANCH, obtained: 'published, seen', table: 'ranch' },
    { id: 'material of the ranch', inputs: { caulk: 7, foam: 20, board: 30, fill: 500 }, expected: 557, tolerance: 0, toleranceWhy: 'whole dollars', source: RANCH, obtained: 'published, seen', table: 'ranch' },
  ]),
  ...group({ formula: 'product' }, [{ id: '40 × 20 ft', inputs: { length: 40, width: 20 }, expected: 800, tolerance: 1e-9, toleranceWhy: '1,280 lb at 1.6 lb on each ft², exact', source: HEAP, obtained: 'published, seen', table: 'heap' }]),
  ...group({ formula: 'times', ...byHand }, [{ id: '52 in round two covers', inputs: { amount: 56, count: 2 }, expected: 112, note: '56 · 2 = 112' }]),
  ...group({ formula: 'share' }, [
    { id: 'a gap of 3/8 in along a batt', inputs: { part: 0.375, whole: 14.5 }, expected: 0.025, tolerance: 0.001, toleranceWhy: 'said as 2.5 %', source: 'BPI, effective R of batts: fair is a gap of 3/8 in along a 14 1/2 in batt', obtained: 'from memory' },
    { id: 'strip of a ceiling', inputs: { part: 186, whole: 1120 }, expected: 0.166, ...byHand, tolerance: 0.0005, toleranceWhy: 'half of the last digit', note: '186 ÷ 1,120 = 0.166' },
  ]),
  ...group({ formula: 'field-area', ...byHand }, [
    { id: 'hatch, box tops and strip taken off', inputs: { netAreaFt2: 1344, takenFt2: 161 }, expected: 1183, note: '1,344 − 161 = 1,183' },
    { id: 'openings larger than the area', inputs: { netAreaFt2: 6, takenFt2: 9 }, expected: 0, note: '6 − 9 = −3, not below 0' },
  ]),
  ...group({ formula: 'net-of', ...byHand }, [{ id: 'a stair head left out', inputs: { whole: 1120, leftOut: 24 }, expected: 1096, note: '1,120 − 24 = 1,096' }]),
  ...group({ formula: 'mean' }, [
    { id: 'NumAcc1', inputs: { a: 10000001, b: 10000003, c: 10000002 }, expected: 10000002, tolerance: 0, toleranceWhy: 'certified exactly', source: 'NIST StRD, univariate data set NumAcc1', obtained: 'from memory' },
    { id: 'five probes', inputs: { a: 3.5, b: 3.5, c: 3.75, d: 3.25, e: 3.5 }, expected: 3.5, ...byHand, note: '17.5 ÷ 5 = 3.5' },
  ]),
  ...group({ formula: 'person-hours' }, [
    { id: 'two people, three hours', inputs: { amount: 2, rate: 3, access: 1 }, expected: 6, tolerance: 0, toleranceWhy: 'whole hours', source: RANCH, obtained: 'published, seen', table: 'ranch' },
    { id: '186 ft of plates', inputs: { amount: 186, rate: 0.025, access: 1 }, expected: 4.65, ...digit(0.01), source: RULE, obtained: 'computed independently', table: 'ranch of 1,344 ft²' },
    { id: 'sealing, kneeling under trusses', inputs: { amount: 12.7, rate: 1, access: 1.38 }, expected: 17.5, ...digit(0.1), source: RULE, obtained: 'computed independently', table: 'ranch of 1,344 ft²' },
  ]),
  ...group({ formula: 'hours-with-more', source: HOUSE, obtained: 'computed independently', table: 'worked house, hours', ...digit(0.01) }, [
    { id: 'soffit of 16 ft²', inputs: { count: 1, rate: 1, amount: 16, upTo: 12, rateMore: 0.05, access: 1 }, expected: 1.2 },
    { id: 'chimney of 12 ft, kneeling', inputs: { count: 1, rate: 1.5, amount: 12, upTo: 10, rateMore: 0.1, access: 1.2 }, expected: 2.04, ...byHand, note: '(1.5 + 2 · 0.1) · 1.2 = 2.04' },
    { id: 'chimney of 6.33 ft', inputs: { count: 1, rate: 1.5, amount: 76 / 12, upTo: 10, rateMore: 0.1, access: 1 }, expected: 1.5 },
  ]),
  ...group({ formula: 'task-hours', ...byHand }, [
    { id: 'blowing', inputs: { hours: 2.22495 }, expected: 2.22, note: '2.22495 is nearer 2.22: = 2.22' },
    { id: 'on the half', inputs: { hours: 1.125 }, expected: 1.13, note: 'half up: 1.125 = 1.13' },
  ]),
  ...group({ formula: 'access-factor', ...byHand }, [
    { id: 'kneeling under trusses', inputs: { headroom: 1.2, oldFill: 1, webs: 1.15, hatch: 1, air: 1, cap: 3 }, expected: 1.38, note: '1.2 · 1.15 = 1.38' },
    { id: 'every factor', inputs: { headroom: 1.2, oldFill: 1.3, webs: 1.15, hatch: 1.1, air: 1.25, cap: 3 }, expected: 2.46675, note: '1.2 · 1.3 · 1.15 · 1.1 · 1.25 = 2.46675' },
    { id: 'over the cap', inputs: { headroom: 2.2, oldFill: 1.5, webs: 1.3, hatch: 1.2, air: 1, cap: 3 }, expected: 3, note: '2.2 · 1.5 · 1.3 · 1.2 = 5.15, at most 3' },
  ]),
  ...group({ formula: 'blow-factor', ...byHand, tolerance: 0.0001, toleranceWhy: 'half of the last digit' }, [
    { id: 'kneeling', inputs: { headroom: 1.2 }, expected: 1.0954, note: '1.0954 · 1.0954 = 1.2' },
    { id: 'crawling', inputs: { headroom: 2.2 }, expected: 1.4832, note: '1.4832 · 1.4832 = 2.2' },
  ]),
  ...group({ formula: 'whole-packs' }, [
    { id: '51.2 bags', inputs: { needed: 51.2, wastePct: 0, pack: 1 }, expected: 52, tolerance: 0, toleranceWhy: 'a count', source: HEAP, obtained: 'published, seen', table: 'heap' },
    { id: '74.16 bags and breakage', inputs: { needed: 74.16, wastePct: 2, pack: 1 }, expected: 76, tolerance: 0, toleranceWhy: 'a count', source: HOUSE, obtained: 'computed independently', table: 'worked house, materials' },
    { id: '75.51 bags and breakage', inputs: { needed: 75.506, wastePct: 2, pack: 1 }, expected: 78, tolerance: 0, toleranceWhy: 'a count', source: RULE, obtained: 'computed independently', table: 'ranch of 1,344 ft²' },
    { id: 'sealant for 360 ft of round 1/4, 15 % waste', inputs: { needed: 117.5, wastePct: 15, pack: 10.1 }, expected: 14, tolerance: 0, toleranceWhy: 'a count', source: 'US fluid ounce = 231/128 in³; round bead', obtained: 'computed independently', table: 'beads' },
    { id: 'to the pack', inputs: { needed: 34, wastePct: 0, pack: 17 }, expected: 2, ...byHand, note: '34 ÷ 17 = 2' },
  ]),
  ...group({ formula: 'used-packs', source: HOUSE, obtained: 'computed independently', table: 'worked house, materials', tolerance: 1e-9, toleranceWhy: 'hundredths of a pack' }, [
    { id: 'sealant', inputs: { needed: 158.05, wastePct: 10, pack: 10.1 }, expected: 17.22 },
    { id: 'metal', inputs: { needed: 17.15, wastePct: 10, pack: 16.667 }, expected: 1.14 },
    { id: 'hot sealant', inputs: { needed: 10.28, wastePct: 10, pack: 10.1 }, expected: 1.12 },
  ]),
  ...group({ formula: 'thousands', ...byHand }, [{ id: '1,344 ft²', inputs: { areaFt2: 1344 }, expected: 1.344, note: '1,344 ÷ 1,000 = 1.344' }]),
  ...group({ formula: 'over', ...byHand }, [
    { id: '9 in of old fill', inputs: { amount: 9, free: 6 }, expected: 3, note: '9 − 6 = 3' },
    { id: '4 in of old fill', inputs: { amount: 4, free: 6 }, expected: 0, note: '4 − 6 is below 0: = 0' },
  ]),
  ...group({ formula: 'capped', ...byHand }, [
    { id: 'at the eave', inputs: { factor: 2.2, most: 1.6 }, expected: 1.6, note: '2.2, at most 1.6' + ' = 1.6' },
    { id: 'under the cap', inputs: { factor: 1.2, most: 1.6 }, expected: 1.2, note: '1.2 is under 1.6: = 1.2' },
  ]),
  ...group({ formula: 'line', source: HOUSE, obtained: 'computed independently', table: 'worked house, price', tolerance: 0, toleranceWhy: 'whole cents' }, [
    { id: 'coil charged as used', inputs: { amount: 1.14, unitPriceCents: 4200 }, expected: 4788 },
    { id: 'blowing', inputs: { amount: 2.22, unitPriceCents: 4800 }, expected: 10656 },
    { id: 'bags', inputs: { amount: 76, unitPriceCents: 1400 }, expected: 106400 },
    { id: 'curb', inputs: { amount: 8.67, unitPriceCents: 175 }, expected: 1517 },
    { id: 'half a cent', inputs: { amount: 1.005, unitPriceCents: 100 }, expected: 101, ...byHand, tolerance: 0, note: '1.005 · 100 = 100.5, half up = 101; binary fractions would give 100' },
  ]),
  ...group({ formula: 'percent-of', source: HOUSE, obtained: 'computed independently', table: 'worked house, price', tolerance: 0, toleranceWhy: 'whole cents' }, [
    { id: 'tax', inputs: { cents: 150612, pct: 7 }, expected: 10543 },
    { id: 'contingency', inputs: { cents: 299268, pct: 7 }, expected: 20949 },
    { id: 'half a cent', inputs: { cents: 50, pct: 1 }, expected: 1, ...byHand, note: '50 · 1 ÷ 100 = 0.5, half up = 1' },
  ]),
  ...group({ formula: 'price-from-margin' }, [
    { id: '40 % of the price', inputs: { costCents: 10000, marginPct: 40 }, expected: 16700, tolerance: 50, toleranceWhy: 'markup said as a whole percent', source: MARKUPS, obtained: 'published, seen', table: 'markups' },
    { id: '$3,236.40 at 35 %', inputs: { costCents: 323640, marginPct: 35 }, expected: 497908, tolerance: 0, toleranceWhy: 'whole cents', ...{ source: 'small-contractor price build-up, worked without the program', obtained: 'computed independently' } },
    { id: 'the worked house', inputs: { costCents: 330760, marginPct: 40 }, expected: 551267, tolerance: 0, toleranceWhy: 'whole cents', source: HOUSE, obtained: 'computed independently', table: 'worked house, price' },
    { id: '$4,412 at 40 %', inputs: { costCents: 441200, marginPct: 40 }, expected: 735300, tolerance: 50, toleranceWhy: 'whole dollars', source: RULE, obtained: 'computed independently', table: 'ranch of 1,344 ft²' },
  ]),
  ...group({ formula: 'minimum-added', ...byHand }, [
    { id: 'small job', inputs: { priceCents: 60000, minimumCents: 85000 }, expected: 25000, note: '850 − 600 = $250' },
    { id: 'large job', inputs: { priceCents: 551267, minimumCents: 85000 }, expected: 0, note: '5,512.67 is over 850: = 0' },
  ]),
  ...group({ formula: 'rounding', ...byHand }, [
    { id: 'up to $5', inputs: { priceCents: 551267, stepCents: 500 }, expected: 233, note: '5,515.00 − 5,512.67 = 2.33' },
    { id: 'already there', inputs: { priceCents: 551500, stepCents: 500 }, expected: 0, note: '5,515 ÷ 5 is whole: = 0' },
  ]),
  ...group({ formula: 'margin' }, [
    { id: 'of a 50 % markup', inputs: { priceCents: 150, costCents: 100 }, expected: 33, ...digit(1), source: MARKUPS, obtained: 'published, seen', table: 'markups' },
    { id: 'of a 67 % markup', inputs: { priceCents: 167, costCents: 100 }, expected: 40, ...digit(1), source: MARKUPS, obtained: 'published, seen', table: 'markups' },
    { id: 'of a 10 % markup', inputs: { priceCents: 110, costCents: 100 }, expected: 9.1, ...byHand, ...digit(0.1), note: '10 ÷ 110 = 9.1 %' },
    { id: 'of a 20 % markup', inputs: { priceCents: 120, costCents: 100 }, expected: 16.7, ...byHand, ...digit(0.1), note: '20 ÷ 120 = 16.7 %' },
    { id: 'of a 25 % markup', inputs: { priceCents: 125, costCents: 100 }, expected: 20, ...byHand, note: '25 ÷ 125 = 20 %' },
    { id: 'of a 33 % markup', inputs: { priceCents: 133, costCents: 100 }, expected: 25, ...byHand, ...digit(1), note: '33 ÷ 133 = 25 %' },
    { id: 'of a 35 % markup', inputs: { priceCents: 436914, costCents: 323640 }, expected: 25.9, ...digit(0.1), source: 'small-contractor price build-up, worked without the program', obtained: 'computed independently' },
  ]),
  ...group({ formula: 'markup' }, [
    { id: 'of a 33 % margin', inputs: { priceCents: 10000, costCents: 6667 }, expected: 50, ...digit(1), source: MARKUPS, obtained: 'published, seen', table: 'markups' },
    { id: 'of a 40 % margin', inputs: { priceCents: 10000, costCents: 6000 }, expected: 67, ...digit(1), source: MARKUPS, obtained: 'published, seen', table: 'markups' },
  ]),
  ...group({ formula: 'net', ...byHand }, [{ id: 'a rebate', inputs: { totalCents: 551500, incentivesCents: 50000 }, expected: 501500, note: '5,515 − 500 = $5,015' }]),
  ...group({ formula: 'days' }, [
    { id: 'the worked house', inputs: { hours: 24.97, crew: 2, hoursPerDay: 6.5, dailyHours: 1.5 }, expected: 2.17, ...digit(0.01), source: HOUSE, obtained: 'computed independently', table: 'worked house, hours' },
    { id: 'the ranch, two people', inputs: { hours: 34.6, crew: 2, hoursPerDay: 6.5, dailyHours: 1.5 }, expected: 3.02, tolerance: 0.02, toleranceWhy: 'its hours are printed to 0.1', source: RULE, obtained: 'computed independently', table: 'ranch of 1,344 ft²' },
  ]),
  ...group({ formula: 'half-days', source: 'half days, up only if more than a tenth of a half day remains', obtained: 'computed independently', table: 'half days', tolerance: 0, toleranceWhy: 'half days' }, [
    { id: '2.17', inputs: { days: 2.17 }, expected: 2.5 },
    { id: '3.02', inputs: { days: 3.02 }, expected: 3 },
    { id: '3.09', inputs: { days: 3.09 }, expected: 3.5 },
    { id: 'a tenth of a half day to the point', inputs: { days: 1.05 }, expected: 1, ...byHand, note: '1.05 · 2 = 2.1: no more than a tenth is left, = 2 halves' },
    { id: 'an hour', inputs: { days: 0.03 }, expected: 0.5, ...byHand, note: 'a started day is at least half of one: = 0.5' },
    { id: 'nothing', inputs: { days: 0 }, expected: 0, ...byHand, note: 'no work: = 0' },
  ]),
  ...group({ formula: 'whole-days', ...byHand }, [{ id: '2.5', inputs: { days: 2.5 }, expected: 3, note: '2.5, up = 3' }, { id: '3', inputs: { days: 3 }, expected: 3, note: '3 = 3' }]),
  ...group({ formula: 'first-and-later', source: HOUSE, obtained: 'computed independently', table: 'worked house, hours', ...digit(0.01) }, [{ id: 'three days', inputs: { once: 1.5, each: 0.75, days: 3 }, expected: 3 }, { id: 'one day', inputs: { once: 1.5, each: 0.75, days: 1 }, expected: 1.5, ...byHand, note: '1.5 + 0.75 · 0 = 1.5' }]),
  ...group({ formula: 'each-and-once', source: HOUSE, obtained: 'computed independently', table: 'worked house, hours', ...digit(0.01) }, [{ id: 'three days', inputs: { each: 0.75, days: 3, once: 1.5 }, expected: 3.75 }]),
  ...group({ formula: 'test-hours', source: RULE, obtained: 'computed independently', table: 'tests', ...digit(0.01) }, [
    { id: 'one appliance', inputs: { setUp: 1, count: 1, each: 0.5 }, expected: 1.5 },
    { id: 'three appliances', inputs: { setUp: 1, count: 3, each: 0.5 }, expected: 2.5, ...byHand, note: '1 + 3 · 0.5 = 2.5' },
  ]),
  ...group({ formula: 'person-days', source: HOUSE, obtained: 'computed independently', table: 'worked house, materials', tolerance: 0, toleranceWhy: 'a count' }, [{ id: 'two people, three days', inputs: { crew: 2, days: 3 }, expected: 6 }]),
  ...group({ formula: 'deposit-limit', ...byHand }, [
    { id: 'a tenth, under the most', inputs: { wantedCents: 300000, totalCents: 697000, share: 0.1, mostCents: 100000 }, expected: 69700, note: '6,970 · 0.1 = $697' },
    { id: 'the most in dollars', inputs: { wantedCents: 300000, totalCents: 1200000, share: 0.1, mostCents: 100000 }, expected: 100000, note: 'at most $1,000' },
    { id: 'what is wanted', inputs: { wantedCents: 50000, totalCents: 1200000, share: 0.1, mostCents: 100000 }, expected: 50000, note: 'at most what is wanted: $500' },
  ]),
  ...group({ formula: 'net-of-stock', ...byHand }, [
    { id: 'ten on hand', inputs: { packs: 51.3, stock: 10 }, expected: 42, note: '51.3 − 10 = 41.3, up: 42' },
    { id: 'half a roll on hand', inputs: { packs: 1.14, stock: 0.5 }, expected: 1, note: '1.14 − 0.5 = 0.64, up: 1' },
    { id: 'more on hand than it takes', inputs: { packs: 3, stock: 8 }, expected: 0, note: '3 − 8, not below 0: 0' },
  ]),
  ...group({ formula: 'from-stock', ...byHand }, [
    { id: 'all that is on hand', inputs: { packs: 51.3, stock: 10 }, expected: 10, note: 'at most what is on hand: 10' },
    { id: 'as much as it takes', inputs: { packs: 1.14, stock: 4 }, expected: 1.14, note: 'at most what it takes: 1.14' },
  ]),
  ...group({ formula: 'difference', ...byHand }, [
    { id: 'glass over cellulose', inputs: { after: 593000, before: 556500 }, expected: 36500, note: '5,930 − 5,565 = $365' },
    { id: 'cheaper', inputs: { after: 500, before: 700 }, expected: -200, note: '500 − 700 = −200' },
  ]),
  ...group({ formula: 'hose-steps', ...byHand }, [
    { id: '90 ft, one story', inputs: { hoseFt: 90, freeFt: 100, stepFt: 50, stories: 1 }, expected: 0, note: 'under 100 ft: = 0' },
    { id: '160 ft, one and a half stories', inputs: { hoseFt: 160, freeFt: 100, stepFt: 50, stories: 1.5 }, expected: 3, note: '60 ÷ 50, up: 2; half a story, up: 1; 2 + 1 = 3' },
    { id: '200 ft of hose in pieces of 25', inputs: { hoseFt: 200, freeFt: 50, stepFt: 25, stories: 2 }, expected: 7, note: '150 ÷ 25 = 6; 6 + 1 = 7' },
  ]),
]

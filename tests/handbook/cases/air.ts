import { byHand, digit, group } from '../case.ts'

const LBL = { source: 'LBL leakage area worked out apart from the program: 4 Pa, coefficient 1, air of 1.2046 kg/m³, exponent 0.65', obtained: 'computed independently', table: 'lbl' } as const
const SG = { source: 'ASHRAE Handbook Fundamentals, infiltration chapter, worked examples (Lincoln NE)', obtained: 'from memory', ...digit(0.1) } as const
const VT = { source: 'a leakage sheet customized for Vermont, 2 stories, exposed: N = 12.4', obtained: 'published, seen in a copy', ...digit(1) } as const
const S62 = { source: 'ASHRAE 62.2 formulas worked out apart from the program: 1,400 ft², 3 bedrooms, 8.2 ft and 2,400 ft², 4 bedrooms, 17 ft; weather factor 0.60', obtained: 'computed independently', ...digit(0.1) } as const

export default [
  ...group({ formula: 'winter-mean', ...byHand }, [{ id: '4,240 over 212 days', inputs: { degreeDays: 4240, days: 212 }, expected: 45, note: '65 − 4240 ÷ 212 = 45' }]),
  ...group({ formula: 'leakage-area', ...LBL, ...digit(0.1) }, [
    { id: '2,000 CFM50, effective', inputs: { cfm50: 2000, exponent: 0.65, pa: 4, coefficient: 1 }, expected: 109.9 },
    { id: '2,400 CFM50, effective', inputs: { cfm50: 2400, exponent: 0.65, pa: 4, coefficient: 1 }, expected: 131.9 },
    { id: '2,000 CFM50, equivalent', inputs: { cfm50: 2000, exponent: 0.65, pa: 10, coefficient: 0.611 }, expected: 206.4 },
    { id: 'exponent 0.5: 12.5 to the square inch', inputs: { cfm50: 125, exponent: 0.5, pa: 4, coefficient: 1 }, expected: 10, ...digit(0.1) },
  ]),
  ...group({ formula: 'leakage-area', source: 'a building-science forum’s derivation after ASHRAE Fundamentals 2009 ch. 16: CFM50 ÷ 18 and ÷ 10', obtained: 'published, seen' }, [
    { id: '÷ 18', inputs: { cfm50: 1800, exponent: 0.65, pa: 4, coefficient: 1 }, expected: 100, tolerance: 1.2, toleranceWhy: 'the divisor is 18.19, printed as 18' },
    { id: '÷ 10', inputs: { cfm50: 1000, exponent: 0.65, pa: 10, coefficient: 0.611 }, expected: 100, tolerance: 3.3, toleranceWhy: 'the divisor is 9.69, printed as 10' },
  ]),
  ...group({ formula: 'cfm50-of', ...LBL }, [
    { id: 'a square inch', inputs: { areaIn2: 1, exponent: 0.65 }, expected: 18.19, ...digit(0.01) },
    { id: '30 in²', inputs: { areaIn2: 30, exponent: 0.65 }, expected: 546, ...digit(1) },
    { id: 'exponent 0.75', inputs: { areaIn2: 1, exponent: 0.75 }, expected: 23.4, ...digit(0.1) },
  ]),
  ...group({ formula: 'air-changes', ...byHand }, [{ id: '2,600 CFM50 in 11,200 ft³', inputs: { cfm: 2600, volumeFt3: 11200 }, expected: 13.928571428571429, note: '2600 · 60 ÷ 11200 = 13.9286' }]),
  ...group({ formula: 'air-changes', source: 'ASHRAE Handbook Fundamentals, infiltration chapter: 154.5 cfm in 12,000 ft³ are 0.77 an hour', obtained: 'from memory', ...digit(0.01) }, [{ id: 'Lincoln NE, design', inputs: { cfm: 154.5, volumeFt3: 12000 }, expected: 0.77 }]),
  ...group({ formula: 'joined-spread', ...byHand }, [{ id: '3 and 4', inputs: { one: 3, other: 4 }, expected: 5, note: '√(9 + 16) = 5' }]),
  ...group({ formula: 'above-0', ...byHand }, [{ id: '12 less 5', inputs: { expected: 12, spread: 5 }, expected: 7, note: '12 − 5 = 7' }, { id: 'never below 0', inputs: { expected: 3, spread: 5 }, expected: 0, note: '3 − 5 is not below 0' }]),
  ...group({ formula: 'up-to', ...byHand }, [{ id: '12 and 5', inputs: { expected: 12, spread: 5 }, expected: 17, note: '12 + 5 = 17' }]),
  ...group({ formula: 'cut-cap', ...byHand }, [{ id: '60 % of 22 % of 2,450', inputs: { stopped: 0.6, ceiling: 0.22, cfm50: 2450 }, expected: 323.4, note: '0.6 · 0.22 · 2450 = 323.4' }]),
  ...group({ formula: 'lesser', ...byHand }, [{ id: 'the cap', inputs: { sum: 918, cap: 324 }, expected: 324, note: '324 at most' }, { id: 'the sum', inputs: { sum: 200, cap: 324 }, expected: 200, note: '200 at most 324' }]),
  ...group({ formula: 'less-cut', ...byHand }, [{ id: '2,450 less 323', inputs: { before: 2450, cut: 323 }, expected: 2127, note: '2450 − 323 = 2127' }]),
  ...group({ formula: 'n-factor', source: 'table of N as weatherization programs print it (Sherman 1987)', obtained: 'from memory', ...digit(0.1, ', the printed table rounds its parts') }, [
    { id: 'zone 2, 2 stories, exposed', inputs: { climate: 18.5, height: 0.8, shelter: 0.9 }, expected: 13.3 },
    { id: 'zone 1, 1 story, well shielded', inputs: { climate: 15.5, height: 1, shelter: 1.2 }, expected: 18.6 },
    { id: 'zone 4, 3 stories, exposed', inputs: { climate: 24.5, height: 0.7, shelter: 0.9 }, expected: 15.4 },
    { id: 'zone 3, 1.5 stories, normal', inputs: { climate: 21.5, height: 0.9, shelter: 1 }, expected: 19.4 },
  ]),
  ...group({ formula: 'natural-by-n', ...VT }, [{ id: '2,480 CFM50', inputs: { cfm50: 2480, n: 12.4 }, expected: 200 }, { id: '620 CFM50', inputs: { cfm50: 620, n: 12.4 }, expected: 50 }]),
  ...group({ formula: 'infiltration', ...SG }, [
    { id: 'design: 77 in², 70 °F, 15 mph', inputs: { areaIn2: 77, stack: 0.0299, deltaF: 70, wind: 0.0086, speedMph: 15 }, expected: 154.5 },
    { id: 'heating season: 131 in², 36 °F, 7 mph', inputs: { areaIn2: 131, stack: 0.0299, deltaF: 36, wind: 0.0086, speedMph: 7 }, expected: 160.3 },
  ]),
  ...group({ formula: 'stack-pressure', source: 'ideal-gas form with 3,465 Pa·K/m, worked out apart from the program', obtained: 'computed independently', tolerance: 0.006, toleranceWhy: 'half of the last printed digit, 3,465 is rounded' }, [
    { id: '8 ft, 70 and 20 °F', inputs: { heightFt: 8, insideF: 70, outsideF: 20 }, expected: 2.99 },
    { id: '16 ft, 70 and 0 °F', inputs: { heightFt: 16, insideF: 70, outsideF: 0 }, expected: 8.75 },
    { id: '17 ft, 70 and 10 °F', inputs: { heightFt: 17, insideF: 70, outsideF: 10 }, expected: 7.8 },
  ]),
  ...group({ formula: 'stack-pressure', source: 'rule of thumb of stack pressure: 0.0075 to 0.0078 Pa for a foot and °F', obtained: 'from memory' }, [{ id: '10 ft, 50 °F apart', inputs: { heightFt: 10, insideF: 70, outsideF: 20 }, expected: 3.83, tolerance: 0.1, toleranceWhy: 'the rule names a range' }]),
  ...group({ formula: 'neutral-level', source: 'two leaks, exponent 0.65, worked out apart from the program: 16 ft, 90 and 60 in², then 30 and 60', obtained: 'computed independently', ...digit(0.1) }, [
    { id: 'before', inputs: { heightFt: 16, top: 0.9, bottom: 0.6, exponent: 0.65 }, expected: 10.4 },
    { id: 'the top sealed', inputs: { heightFt: 16, top: 0.3, bottom: 0.6, exponent: 0.65 }, expected: 4.1 },
  ]),
  ...group({ formula: 'leaks-high', ...byHand }, [{ id: 'a ceiling of 22 %', inputs: { ceiling: 0.22 }, expected: 0.61, note: '0.22 + 0.78 ÷ 2 = 0.61' }]),
  ...group({ formula: 'leaks-low', ...byHand }, [{ id: 'a ceiling of 22 %', inputs: { ceiling: 0.22 }, expected: 0.39, note: '0.78 ÷ 2 = 0.39' }]),
  ...group({ formula: 'ceiling-share-after', ...byHand }, [{ id: '500 of 2,500, 300 cut', inputs: { share: 0.2, cfm50: 2500, cut: 300 }, expected: 200 / 2200, note: '(500 − 300) ÷ (2500 − 300) = 0.0909' }]),
  ...group({ formula: 'pressure-at', source: 'two leaks, 5.986 Pa over 16 ft, worked out apart from the program', obtained: 'computed independently', ...digit(0.01) }, [
    { id: 'the ceiling before', inputs: { stackPa: 5.986, heightFt: 16, neutralFt: 10.42 }, expected: 2.09 }, { id: 'the ceiling after', inputs: { stackPa: 5.986, heightFt: 16, neutralFt: 4.1 }, expected: 4.45 },
  ]),
  ...group({ formula: 'ventilation-total', ...S62 }, [{ id: '1,400 ft², 3 bedrooms', inputs: { floorFt2: 1400, bedrooms: 3 }, expected: 72 }, { id: '2,400 ft², 4 bedrooms', inputs: { floorFt2: 2400, bedrooms: 4 }, expected: 109.5 }]),
  ...group({ formula: 'infiltration-credit', ...S62 }, [
    { id: '2,600 CFM50, one story', inputs: { cfm50: 2600, wsf: 0.6, heightFt: 8.2 }, expected: 81.1 }, { id: '1,400 CFM50, one story', inputs: { cfm50: 1400, wsf: 0.6, heightFt: 8.2 }, expected: 43.7 }, { id: '2,500 CFM50, 17 ft', inputs: { cfm50: 2500, wsf: 0.6, heightFt: 17 }, expected: 104.4 },
  ]),
  ...group({ formula: 'infiltration-credit', source: 'Standard Work Specifications, calculation of the infiltration credit: story factor 1.32 for 2 stories, 1.55 for 3', obtained: 'published, seen' }, [
    { id: '2 stories', inputs: { cfm50: 1000, wsf: 1, heightFt: 16.4 }, expected: 68.6, tolerance: 0.3, toleranceWhy: 'the factor is printed to two decimals' },
    { id: '3 stories', inputs: { cfm50: 1000, wsf: 1, heightFt: 24.6 }, expected: 80.6, tolerance: 0.3, toleranceWhy: 'the factor is printed to two decimals' },
  ]),
  ...group({ formula: 'fan-full', ...S62 }, [{ id: '1,950 CFM50', inputs: { totalCfm: 72, deficitCfm: 0, creditCfm: 60.84, exterior: 1 }, expected: 11.2 }, { id: 'with 70 cfm of local deficit', inputs: { totalCfm: 72, deficitCfm: 70, creditCfm: 60.84, exterior: 1 }, expected: 28.7 }]),
  ...group({ formula: 'fan-shared', ...S62 }, [{ id: '1,950 CFM50', inputs: { totalCfm: 72, deficitCfm: 0, creditCfm: 60.84, exterior: 1 }, expected: 20.6 }, { id: '2,400 ft², 1,800 CFM50', inputs: { totalCfm: 109.5, deficitCfm: 0, creditCfm: 75.2, exterior: 1 }, expected: 57.9 }, { id: 'with 70 cfm of local deficit', inputs: { totalCfm: 72, deficitCfm: 70, creditCfm: 60.84, exterior: 1 }, expected: 38.1 }]),
  ...group({ formula: 'fan-full', ...byHand }, [{ id: 'half of the walls are outside', inputs: { totalCfm: 72, deficitCfm: 40, creditCfm: 60, exterior: 0.5 }, expected: 52, note: '72 + 10 − 60 · 0.5 = 52' }]),
  ...group({ formula: 'fan-shared', ...byHand }, [{ id: 'half of the walls are outside', inputs: { totalCfm: 72, deficitCfm: 40, creditCfm: 60, exterior: 0.5 }, expected: 57, note: '72 + 10 − 60 ÷ 72 · 60 · 0.5 = 82 − 25 = 57' }, { id: 'leaks bring more than is asked', inputs: { totalCfm: 60, deficitCfm: 0, creditCfm: 90, exterior: 0.5 }, expected: 15, note: 'no more than all of it counts: 60 − 1 · 90 · 0.5 = 15' }]),
  ...group({ formula: 'local-deficit', source: 'ASHRAE 62.2, existing houses: bath 50, kitchen 100, a window 20', obtained: 'from memory', ...digit(1) }, [{ id: 'a bath with a window', inputs: { askedCfm: 50, fanCfm: 0, window: 1 }, expected: 30 }, { id: 'a kitchen with 60 cfm', inputs: { askedCfm: 100, fanCfm: 60, window: 0 }, expected: 40 }]),
  ...group({ formula: 'in-stories', ...byHand }, [{ id: 'two of 8.5 ft', inputs: { stories: 2, each: 8.5 }, expected: 17, note: '2 · 8.5 = 17' }]),
  ...group({ formula: 'less-f', ...byHand }, [{ id: '70 and 35', inputs: { warm: 70, cold: 35 }, expected: 35, note: '70 − 35 = 35' }, { id: 'warmer out', inputs: { warm: 60, cold: 70 }, expected: 0, note: 'not below 0' }]),
  ...group({ formula: 'leak-less', ...byHand }, [{ id: '18.3 less 0.1', inputs: { before: 18.3, after: 0.1 }, expected: 18.2, note: '18.3 − 0.1 = 18.2' }]),
  ...group({ formula: 'leak-share', ...byHand }, [{ id: '12 of 48', inputs: { part: 12, all: 48 }, expected: 25, note: '12 ÷ 48 · 100 = 25' }]),
]

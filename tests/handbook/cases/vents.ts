import { byHand, group } from '../case.ts'

const RULE = 'IRC R806.2: 1/150 of the vented space; 1/300 with the conditions of its exception'

export default [
  ...group({ formula: 'soffit-free', ...byHand }, [
    { id: '48 ft of 9 in²', inputs: { lengthFt: 48, perFt: 9 }, expected: 432, note: '48 · 9 = 432' },
    { id: '30 ft of ridge at 18', inputs: { lengthFt: 30, perFt: 18 }, expected: 540, note: '30 · 18 = 540' },
  ]),
  ...group({ formula: 'vents-free', ...byHand }, [{ id: 'four roof vents', inputs: { count: 4, eachIn2: 50 }, expected: 200, note: '4 · 50 = 200' }]),
  ...group({ formula: 'free-needed', source: `${RULE}; 1,500 ft²: 10 ft² and 5 ft²`, obtained: 'computed independently', tolerance: 1e-9, toleranceWhy: 'exact' }, [
    { id: '1,500 ft² at 1/150: 10 ft²', inputs: { areaFt2: 1500, ratio: 150 }, expected: 1440 },
    { id: '1,500 ft² at 1/300: 5 ft²', inputs: { areaFt2: 1500, ratio: 300 }, expected: 720 },
    { id: '1,288 ft² at 1/300', inputs: { areaFt2: 1288, ratio: 300 }, expected: 618.24 },
  ]),
  ...group({ formula: 'vent-ratio', ...byHand }, [
    { id: '1,500 ft² with 1,440 in²', inputs: { areaFt2: 1500, freeIn2: 1440 }, expected: 150, note: '1,500 · 144 ÷ 1,440 = 150' },
    { id: '1,288 ft² with 972 in²', inputs: { areaFt2: 1350, freeIn2: 972 }, expected: 200, note: '1,350 · 144 ÷ 972 = 200' },
  ]),
  ...group({ formula: 'share-of-needed', ...byHand }, [{ id: '40 % of 720', inputs: { needed: 720, share: 0.4 }, expected: 288, note: '720 · 0.4 = 288' }]),
  ...group({ formula: 'vents-to-add', ...byHand }, [
    { id: 'from 432 to 720 in vents of 60', inputs: { needed: 720, there: 432, eachIn2: 60 }, expected: 5, note: '288 ÷ 60 = 4.8, up: = 5' },
    { id: 'enough', inputs: { needed: 400, there: 432, eachIn2: 60 }, expected: 0, note: '−32, not below 0' },
  ]),
]

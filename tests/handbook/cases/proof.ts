import { byHand, digit, group } from '../case.ts'

const HEAP = 'a cellulose seller’s worked example: 40 × 20 ft, 1 ft deep, 1.6 lb/ft³, bags of 25 lb: 1,280 lb, 51.2 bags, 52 to buy'

export default [
  ...group({ formula: 'blown-weight', source: HEAP, obtained: 'published, seen', ...digit(0.01) }, [{ id: '800 ft², a foot deep', inputs: { bags: 51.2, bagLb: 25, filledFt2: 800 }, expected: 1.6 }]),
  ...group({ formula: 'installed-density', source: HEAP, obtained: 'published, seen', ...digit(0.01) }, [{ id: '800 ft², a foot deep', inputs: { bags: 51.2, bagLb: 25, filledFt2: 800, depthIn: 12 }, expected: 1.6 }]),
  ...group({ formula: 'bags-by-weight', source: HEAP, obtained: 'published, seen', ...digit(0.1) }, [{ id: '800 ft², a foot deep', inputs: { weightPsf: 1.6, filledFt2: 800, bagLb: 25 }, expected: 51.2 }]),
  ...group({ formula: 'filled-area', ...byHand }, [{ id: '50 bags', inputs: { bags: 50, coverageFt2: 17.8 }, expected: 890, note: '50 · 17.8 = 890' }]),
  ...group({ formula: 'bags-asked', ...byHand }, [{ id: 'by weight', inputs: { byCoverage: 74.2, byWeight: 74.3 }, expected: 74.3, note: 'the larger = 74.3' }, { id: 'by coverage', inputs: { byCoverage: 50, byWeight: 49 }, expected: 50, note: 'the larger = 50' }]),
  ...group({ formula: 'bags-short', ...byHand }, [{ id: 'six', inputs: { asked: 74, used: 68 }, expected: 6, note: '74 − 68 = 6' }, { id: 'none', inputs: { asked: 74, used: 80 }, expected: 0, note: '74 − 80 is not below 0: = 0' }]),
  ...group({ formula: 'bags-covered', ...byHand }, [{ id: 'a quarter more floor', inputs: { bags: 60, coveredFt2: 1250, surveyedFt2: 1000 }, expected: 75, note: '60 · 1,250 ÷ 1,000 = 75' }]),
  ...group({ formula: 'new-fill', ...byHand }, [{ id: 'over old batts', inputs: { readIn: 15.75, oldIn: 3.5 }, expected: 12.25, note: '15.75 − 3.5 = 12.25' }, { id: 'under the old fill', inputs: { readIn: 3, oldIn: 4 }, expected: -1, note: '3 − 4 = −1' }]),
  ...group({ formula: 'packed-density', ...byHand }, [{ id: 'a tenth over', inputs: { leastPcf: 3.5, used: 11, asked: 10 }, expected: 3.85, note: '3.5 · 11 ÷ 10 = 3.85' }]),
  ...group({ formula: 'measured-cut', ...byHand }, [{ id: 'tighter', inputs: { before: 2280, after: 1935 }, expected: 345, note: '2,280 − 1,935 = 345' }, { id: 'leakier', inputs: { before: 1900, after: 1950 }, expected: -50, note: '1,900 − 1,950 = −50' }]),
  ...group({ formula: 'cut-share', ...byHand }, [{ id: 'a fifth', inputs: { before: 2000, after: 1600 }, expected: 20, note: '(2,000 − 1,600) ÷ 2,000 = 20 %' }]),
  ...group({ formula: 'rate-learned', ...byHand }, [{ id: 'half as long again, a fifth more done', inputs: { rate: 0.4, tookHours: 3, estimatedHours: 2, amountShare: 1.2 }, expected: 0.5, note: '0.4 · 3 ÷ 2 ÷ 1.2 = 0.5' }]),
]

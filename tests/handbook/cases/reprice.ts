import { byHand, group } from '../case.ts'

export default [
  ...group({ formula: 'rise', ...byHand }, [
    { id: '500 to 515', inputs: { before: 50000, after: 51500 }, expected: 3, note: '1,500 ÷ 50,000 = 3 %' },
    { id: '500 to 450', inputs: { before: 50000, after: 45000 }, expected: -10, note: '−5,000 ÷ 50,000 = -10' },
  ]),
  ...group({ formula: 'carried-on', ...byHand }, [
    { id: '100 dollars of material at a margin of 40 %, contractor pays 7 %, contingency 7 %', inputs: { changeCents: 10000, salesTaxPct: 7, contingencyPct: 7, overheadPct: 0, marginPct: 40, customerTaxPct: 0 }, expected: 19000, note: '10,000 · 1.14 ÷ 0.6 = 19,000' },
    { id: 'overhead 25 %, profit 8 %, the customer pays 6 %', inputs: { changeCents: 10000, salesTaxPct: 0, contingencyPct: 5, overheadPct: 25, marginPct: 8, customerTaxPct: 6 }, expected: 15122, note: '10,000 · 1.05 = 10,500; · 1.25 = 13,125; ÷ 0.92 = 14,266.30; · 1.06 = 15,122.28, to the cent 15,122' },
    { id: 'a fall', inputs: { changeCents: -6000, salesTaxPct: 0, contingencyPct: 0, overheadPct: 0, marginPct: 40, customerTaxPct: 0 }, expected: -10000, note: '−6,000 ÷ 0.6 = -10,000' },
  ]),
]

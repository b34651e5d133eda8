import { byHand, group } from '../case.ts'

export default [
  ...group({ formula: 'with-burden', ...byHand }, [{ id: '$24 and 40.15 %', inputs: { wageCents: 2400, burdenPct: 40.15 }, expected: 3363.6, note: '24.00 · 1.4015 = 33.636 dollars: 2,400 · 1.4015 = 3,363.6' }]),
  ...group({ formula: 'productive-wage', ...byHand }, [
    { id: '80 % of the hours at houses', inputs: { paidCents: 3363.6, productivePct: 80 }, expected: 4204.5, note: '3,363.6 ÷ 0.8 = 4,204.5' },
    { id: 'all of them', inputs: { paidCents: 3363.6, productivePct: 100 }, expected: 3363.6, note: '3,363.6 ÷ 1 = 3,363.6' },
  ]),
  ...group({ formula: 'miles-driven', ...byHand }, [{ id: '18 miles, three days', inputs: { oneWayMi: 18, days: 3 }, expected: 108, note: '18 · 2 · 3 = 108' }]),
  ...group({ formula: 'hours-left', ...byHand }, [
    { id: 'two people, three days, 31 hours', inputs: { crew: 2, hoursPerDay: 6.5, days: 3, hours: 31 }, expected: 8, note: '2 · 6.5 · 3 − 31 = 8' },
    { id: 'more hours than days hold', inputs: { crew: 2, hoursPerDay: 6.5, days: 1, hours: 14 }, expected: 0, note: '13 − 14 is below: = 0' },
  ]),
]

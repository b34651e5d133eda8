import { table } from './table.ts'

/** What the law of a state lets a home improvement contractor ask before the work: a summary that a company has to confirm by the law itself. */
export const depositLimits = table<{ state: string; share: number; mostUsd?: number; aboveUsd?: number; says: string }>({
  name: 'deposit-limits', title: 'Most that may be asked before the work, by state', use: 'says when a deposit is more than a state allows', source: 'summaries of contractor deposit laws of the states, for consumers', obtained: 'from memory, medium', units: { share: 'fraction', mostUsd: 'USD', aboveUsd: 'USD' },
  rows: [
    { state: 'CA', share: 0.1, mostUsd: 1000, says: '10 % or $1,000, the lesser' },
    { state: 'MD', share: 1 / 3, says: 'a third' },
    { state: 'MA', share: 1 / 3, says: 'a third; material made to order may come on top' },
    { state: 'ME', share: 1 / 3, says: 'a third, unless the customer waives it in writing' },
    { state: 'PA', share: 1 / 3, aboveUsd: 5000, says: 'a third of a contract over $5,000; material made to order may come on top' },
  ],
})

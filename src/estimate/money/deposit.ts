// What may be asked before the work: the company's share, and no more than the law of the state lets it ask.
import type { Books } from '../../books/books.ts'
import { depositLimit, pctOf } from '../../calc/price.ts'
import type { Finding } from '../../findings/finding.ts'
import { depositLimits } from '../../reference/deposits.ts'
import { cents, usd } from '../../units/money.ts'
import { assumed, exactly, row, work, type Quantity } from '../../units/quantity.ts'

type Cents = Quantity<'cents'>
const UNCONFIRMED = 'look it up and write it under depositRules: of the company file'

/** @param state of the house */
export function depositOf(totalCents: Cents, state: string, books: Books): { readonly depositCents: Cents; readonly findings: readonly Finding[] } {
  const { depositPct, depositRules, name } = books.company, wantedCents = work(pctOf, { cents: totalCents, pct: depositPct })
  if (wantedCents.value === 0) return { depositCents: wantedCents, findings: [] }
  const own = depositRules.find(r => r.state === state), known = depositLimits.rows.find(r => r.state === state)
  if (!own && !known) return { depositCents: wantedCents, findings: [{ code: 'deposit-unconfirmed', severity: 'note', path: '/house/state', says: `a deposit in ${state}`, why: 'no limit of that state is at hand, and none is assumed', mend: UNCONFIRMED }] }
  const rule = own ? { share: (own.maxPct ?? 100) / 100, mostUsd: own.maxUsd, aboveUsd: own.aboveUsd } : known!
  if (rule.aboveUsd !== undefined && totalCents.value <= cents(rule.aboveUsd)) return { depositCents: wantedCents, findings: [] }
  const at = `${name}: depositRules, ${state}`
  const share = own ? row(rule.share, 'fraction', at, 'company file') : assumed(`deposit-limit-${state.toLowerCase()}`, rule.share, 'fraction', `most deposit that ${state} lets be asked: ${known!.says}`, `${depositLimits.source} (${depositLimits.obtained}); ${UNCONFIRMED}`)
  const mostCents = rule.mostUsd === undefined ? totalCents : own ? row(cents(rule.mostUsd), 'cents', at, 'company file') : exactly(cents(rule.mostUsd), 'cents', `${state}: ${known!.says}`)
  const depositCents = work(depositLimit, { wantedCents, totalCents, share, mostCents })
  if (depositCents.value >= wantedCents.value) return { depositCents, findings: [] }
  const says = `a deposit of ${usd(wantedCents.value)}`, why = `in ${state} ${usd(depositCents.value)} may be asked of this price${own ? '' : `, by a summary of its law: ${known!.says}`}`
  return { depositCents, findings: [{ code: 'deposit-capped', severity: 'note', path: '/house/state', says, why, mend: own ? 'the lesser is asked' : `the lesser is asked; ${UNCONFIRMED}` }] }
}

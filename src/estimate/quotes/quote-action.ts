// Where a quote stands on a day, and what to do with it when prices have moved: by what binds the company, then by its thresholds.
import type { Thresholds } from '../../books/books.ts'
import { dayNumber, daysLater } from '../../files/dates.ts'
import type { JobFile } from '../../job/job-file.ts'
import { printed } from '../to-json.ts'

export type Status = 'draft' | 'sent' | 'signed' | 'expired'
export type Action = 'honor' | 're-issue' | 'expire' | 'ask'
export const actions: readonly Action[] = ['honor', 're-issue', 'expire', 'ask']
export const statuses: readonly Status[] = ['draft', 'sent', 'signed', 'expired']

/** What is asked of a job file before its quote can be judged. */
export interface QuoteFacts { readonly status: Status; readonly sentOn?: string; readonly expiresOn?: string; readonly signedOn?: string }

/** A quote that was sent more than once counts from the last time. */
export const quoteFacts = ({ job: { status }, quote: { sentOn: said, expiresOn, signedOn, revisions = [] } = {} }: Pick<JobFile, 'job' | 'quote'>, sentOn = said ?? revisions.findLast(r => r.sentOn !== undefined)?.sentOn): QuoteFacts =>
  ({ status, ...(sentOn === undefined ? {} : { sentOn }), ...(expiresOn === undefined ? {} : { expiresOn }), ...(signedOn === undefined ? {} : { signedOn }) })

/** A quote with dates stands differently on different days. */
export const needsDay = ({ sentOn, expiresOn, signedOn }: QuoteFacts): boolean => (sentOn ?? expiresOn ?? signedOn) !== undefined

/** The last day a quote holds, where it has one: its own, else the company's days from the day it was sent. */
export const lastDay = ({ sentOn, expiresOn }: QuoteFacts, validDays: number): string | undefined => expiresOn ?? (sentOn === undefined ? undefined : daysLater(sentOn, validDays))

/** Where the quote stands on that day. The last day counts; what is signed binds from the day it was signed. */
export function statusOn(facts: QuoteFacts, validDays: number, on: string | undefined): Status {
  const { status, sentOn, signedOn } = facts, last = lastDay(facts, validDays)
  if (on === undefined || status === 'draft' || status === 'expired') return status
  if (status === 'signed' && (signedOn === undefined || on >= signedOn)) return 'signed'
  if (sentOn !== undefined && on < sentOn) return 'draft'
  return last !== undefined && on > last ? 'expired' : 'sent'
}

/** What decides about one quote. */
export interface Situation {
  readonly status: Status
  readonly on: string | undefined
  readonly lastDay: string | undefined
  /** What was done after the day asked, and when, in words. */
  readonly later?: string | undefined
  /** Why work may not be scheduled under the new book, where it may not: a gate it turns shut, or one that is shut under both. */
  readonly shut: string | undefined
  /** Rise of the price [%]; absent where one of the two has none. */
  readonly risePct: number | undefined
  readonly honoredMarginPct: number | undefined
  /** What an escalation clause passes on, in words. */
  readonly clause: string | undefined
}

const pct = (x: number): string => `${x.toFixed(1)} %`
/** Held against a threshold as it is printed: 2.0 % is not above 2 %. */
const tenth = (x: number): number => printed('changePct', x)

/** What to do, and why in a few words. Safety comes before what binds, and what binds before what it costs. */
export function actionOn(s: Situation, { honorUpToPct, reissueAbovePct, leastMarginPct, reissueWithinDays }: Thresholds): { readonly action: Action; readonly why: string } {
  const later = s.later === undefined ? undefined : `${s.later}, later than --on`
  if (s.shut !== undefined) return { action: 'ask', why: later === undefined ? s.shut : `${s.shut}; ${later}` }
  if (later !== undefined) return { action: 'ask', why: later }
  if (s.risePct === undefined) return { action: 'ask', why: 'it has no price under both books' }
  const rise = tenth(s.risePct), said = rise > 0 ? `the price rises ${pct(rise)}` : rise < 0 ? `the price falls ${pct(-rise)}` : 'the price stays'
  if (s.status === 'signed') return s.clause === undefined ? { action: 'honor', why: 'it is signed' } : { action: 're-issue', why: s.clause }
  if (s.status === 'draft') return s.risePct === 0 ? { action: 'honor', why: 'a draft whose price stays' } : { action: 're-issue', why: `a draft; ${said}` }
  if (s.status === 'expired') {
    const since = s.on === undefined || s.lastDay === undefined ? undefined : dayNumber(s.on) - dayNumber(s.lastDay)
    if (since === undefined) return { action: 'expire', why: 'it has expired' }
    const days = `${since} ${since === 1 ? 'day' : 'days'} past its last`
    return since > 0 && since <= reissueWithinDays.value ? { action: 're-issue', why: `${days}; ${said}` } : { action: 'expire', why: since > 0 ? days : 'it has expired' }
  }
  if (rise > Math.max(reissueAbovePct.value, honorUpToPct.value)) return { action: 're-issue', why: said }
  if (rise > honorUpToPct.value) return { action: 'ask', why: `${said}: more than ${pct(honorUpToPct.value)}, not more than ${pct(reissueAbovePct.value)}` }
  if (leastMarginPct !== undefined && s.honoredMarginPct !== undefined && tenth(s.honoredMarginPct) < leastMarginPct.value) return { action: 'ask', why: `honored it keeps a margin of ${pct(tenth(s.honoredMarginPct))}, less than ${pct(leastMarginPct.value)}` }
  return { action: 'honor', why: said }
}

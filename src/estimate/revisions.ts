// Which quotes were made and which was sent, and how this price stands to the last.
import { difference } from '../calc/price.ts'
import type { Finding } from '../findings/finding.ts'
import type { JobFile } from '../job/job-file.ts'
import { cents, usd } from '../units/money.ts'
import { given, work, type Quantity } from '../units/quantity.ts'

type Cents = Quantity<'cents'>

/** @param totalCents of this estimate, where it has one */
export function revisionsOf({ revisions }: NonNullable<JobFile['quote']>, totalCents: Cents | undefined) {
  const priced = (revisions ?? []).map((r, i) => ({ ...r, i, priceCents: r.price === undefined ? undefined : given(cents(r.price), 'cents', `/quote/revisions/${i}/price`) }))
  const out = priced.map(({ number, on, reason, changed, sentOn, priceCents, i }) => {
    const before = priced.slice(0, i).findLast(r => r.priceCents !== undefined)?.priceCents
    return { number, on, reason, ...(changed === undefined ? {} : { changed }), ...(sentOn === undefined ? {} : { sentOn }), ...(priceCents ? { priceCents } : {}), ...(priceCents && before ? { changeCents: work(difference, { after: priceCents, before }) } : {}) }
  })
  const sent = priced.findLast(r => r.sentOn !== undefined), last = priced.at(-1), findings: Finding[] = []
  const off = (r: (typeof priced)[number] | undefined): string | undefined => (totalCents && r?.priceCents && r.priceCents.value !== totalCents.value ? `this estimate comes to ${usd(totalCents.value)}, ${usd(Math.abs(totalCents.value - r.priceCents.value))} ${totalCents.value > r.priceCents.value ? 'more' : 'less'}` : undefined)
  const sentOff = off(sent)
  if (sent && sentOff !== undefined) findings.push({ code: 'price-since-sent', severity: 'note', path: `/quote/revisions/${sent.i}`, says: `revision ${sent.number} was sent at ${usd(sent.priceCents!.value)}`, why: sentOff, mend: 'what was sent binds as long as it holds; a new price is a new revision' })
  else if (last && off(last) !== undefined) findings.push({ code: 'price-since-revision', severity: 'note', path: `/quote/revisions/${last.i}`, says: `revision ${last.number} says ${usd(last.priceCents!.value)}`, why: off(last)!, mend: 'write its price anew before it is sent' })
  return { out, findings }
}

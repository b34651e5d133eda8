// Proposed rates as a piece of a company file: what stands on enough jobs as lines to take over, the rest as comments.
import { COMPANY_FORMAT } from '../../books/format-names.ts'
import type { LearnedOut, LearnedRate, Spread } from '../../closeout/learn.ts'
import { printable } from '../../findings/printable.ts'
import { wrapped } from '../commented.ts'

const DIGITS = 3
/** No rate is known better than to three digits. */
const rate = (x: number): string => String(Number(x.toPrecision(DIGITS)))
const jobs = (n: number): string => `${n} ${n === 1 ? 'job' : 'jobs'}`
const range = (s: Spread): string => (s.jobs === 1 ? rate(s.median) : `${rate(s.low)} to ${rate(s.high)}`)

const told = (r: LearnedRate): string => [
  `${r.work}: now ${rate(r.now)}${r.ofCompany ? '' : ', a starting rate'}; ${jobs(r.jobs)}, ${r.jobs === 1 ? rate(r.median) : `${range(r)}, median ${rate(r.median)}`}`,
  r.classes.length > 1 ? `by access: ${r.classes.map(c => `${c.access} ${rate(c.median)} (${jobs(c.jobs)}${c.jobs === 1 ? '' : `, ${range(c)}`})`).join(', ')}` : `access ${r.classes[0]!.access}`,
  r.shared && 'its tasks hold other rates too, which all moved together',
].filter(Boolean).join('; ')

/** The fragment; it validates under `rates` of a company file, and changes nothing by itself. */
export function learnedFragment(out: LearnedOut): string {
  const { rates, least } = out, proposed = rates.filter(r => r.proposed), few = rates.filter(r => !r.proposed)
  return [
    ...wrapped(`Rates from ${jobs(out.jobs.length)} that ${out.jobs.length === 1 ? 'was' : 'were'} closed: ${out.jobs.map(printable).join(', ') || 'none gives its hours'}.`, ''),
    ...wrapped(`A piece of a company file (${COMPANY_FORMAT}), person-hours for one unit at access factor 1. Nothing uses it until you put its lines under rates: of yours. Median of the jobs, each counted once; a line stands on ${jobs(least)} or more.`, ''),
    ...(proposed.length === 0 ? ['# rates: []'] : ['rates:', ...proposed.flatMap(r => [...wrapped(told(r), '  '), `  - {work: ${r.work}, hours: ${rate(r.median)}}`])]),
    ...(few.length === 0 ? [] : ['', ...wrapped(`On fewer than ${jobs(least)}, for information:`, ''), ...few.flatMap(r => wrapped(told(r), '  '))]),
  ].join('\n') + '\n'
}

// What makes a house risky to price, as the survey shows it; the company file says how much contingency that adds.
import type { Books } from '../../books/books.ts'
import type { Risk } from '../../books/company-file.ts'
import type { JobFile } from '../../job/job-file.ts'
import { row, total, type Quantity } from '../../units/quantity.ts'
import { asTape } from '../../units/tape.ts'

export interface RiskSeen { readonly risk: Risk; readonly why: string }

/** Floors and slopes whose leaks nobody sees before they are opened. */
const HIDDEN = ['decked-floor', 'slope', 'knee-wall', 'knee-wall-floor'] as const

const limits = (books: Books) => ({
  year: books.start('risk-year', 1950, 'year', 'a house built before is an old one, for the contingency', 'judgment'),
  headroom: books.start('risk-headroom', 36, 'in', 'headroom under which a house is risky to price, for the contingency', 'judgment: the step of the access factors'),
})

/** @param unknowns what the price carries without knowing it */
export function risksOf({ house: { yearBuilt }, areas }: JobFile, unknowns: readonly string[], books: Books): RiskSeen[] {
  if (books.company.contingencyByRisk.length === 0) return []
  const { year, headroom } = limits(books), hidden = areas.filter(a => HIDDEN.some(k => k === a.kind))
  const low = areas.flatMap(a => ('headroomIn' in a && a.headroomIn < headroom.value ? [a] : [])).sort((a, b) => a.headroomIn - b.headroomIn)[0]
  const seen: readonly (RiskSeen | false)[] = [
    yearBuilt !== undefined && yearBuilt < year.value && { risk: 'old-house', why: `built ${yearBuilt}, before ${year.value}` },
    low !== undefined && { risk: 'low-headroom', why: `${asTape(low.headroomIn)} in of headroom in ${low.id}, under ${asTape(headroom.value)}` },
    hidden.length > 0 && { risk: 'hidden-floor', why: `${hidden.map(a => a.id).join(', ')}: what lies under is seen when it is opened` },
    unknowns.length > 0 && { risk: 'unknowns', why: `${unknowns.length} carried in the price` },
  ]
  return seen.filter(s => s !== false).filter(s => books.company.contingencyByRisk.some(r => r.risk === s.risk))
}

/** The company's contingency, and what each risk of this house adds to it. */
export function contingencyOf(risks: readonly RiskSeen[], books: Books): { readonly pct: Quantity<'pct'>; readonly added: readonly { readonly id: Risk; readonly addPct: Quantity<'pct'>; readonly why: string }[] } {
  const { contingencyPct, contingencyByRisk } = books.company, limit = risks.length === 0 ? undefined : limits(books)
  const added = risks.map(({ risk, why }) => {
    const { pct } = contingencyByRisk.find(r => r.risk === risk)!, by = risk === 'old-house' ? limit!.year : risk === 'low-headroom' ? limit!.headroom : undefined
    return { id: risk, addPct: by && pct.from.is === 'row' ? row(pct.value, 'pct', pct.from.at, pct.from.source, by) : pct, why }
  })
  return { pct: added.length === 0 ? contingencyPct : total('pct', { company: contingencyPct, ...Object.fromEntries(added.map(a => [a.id, a.addPct])) }), added }
}

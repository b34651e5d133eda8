// Opens a price book and a company file for one job. Each answer carries its row.
import type { Finding } from '../findings/finding.ts'
import { fills, type Fill } from '../reference/fills.ts'
import { ductTargets } from '../reference/ducts.ts'
import { fromRow } from '../reference/table.ts'
import { targets } from '../reference/targets.ts'
import { zoneOf } from '../reference/zones.ts'
import { given } from '../units/quantity.ts'
import type { Books, Company } from './books.ts'
import { companyOf } from './company.ts'
import type { CompanyFile } from './company-file.ts'
import type { JobTarget } from './job-target.ts'
import { overridesOf, ownFaults } from './overrides.ts'
import { companyFor } from './own-values.ts'
import type { PriceBook } from './price-book.ts'
import { goodsOf, type TakenOffers } from './products.ts'
import { valuesOf } from './values.ts'

/** Books on the desk: opened once, then turned to each job. */
export interface Shelf {
  /** The first of the price books. */
  readonly prices: PriceBook
  readonly priceBooks: readonly PriceBook[]
  readonly companyFile: CompanyFile
  /** What a job sets for itself that these books cannot take. */
  troubles(job: JobTarget): Finding[]
  for(job: JobTarget): Books
}

type Own = NonNullable<JobTarget['choices']>
/** All that a job may set for itself. */
const OWN = Object.keys({ products: 0, supplier: 0, prices: 0, company: 0, rates: 0, values: 0, subcontract: 0, marginPct: 0, permitFee: 0 } satisfies Record<keyof Own, 0>) as (keyof Own)[]
const setsNothing = ({ choices }: JobTarget): boolean => choices === undefined || OWN.every(key => choices[key] === undefined)
/** Goals of jobs for which books lie open. */
const MOST_OPEN = 500

const grossOf = ({ overhead: _, ...gross }: Company): Company => gross

/** @param books one price book, or those of several suppliers, the first of which says what fills a role */
export function shelf(books: PriceBook | readonly PriceBook[], companyFile: CompanyFile): Shelf {
  const priceBooks = 'format' in books ? [books] : books, prices = priceBooks[0]!, goods = goodsOf(priceBooks), several = priceBooks.length > 1
  const company = companyOf(companyFile), values = valuesOf(companyFile)
  const fillRows = new Map<string, Fill>(fills.rows.map(r => [r.fill, r]))
  const named = (b: PriceBook | CompanyFile) => ({ name: b.name, dated: b.dated, demo: b.demo === 'yes' })
  const shared = new Map<string, Books>()
  const steady = {
    sideBySide: several, basis: { priceBook: named(prices), ...(several ? { priceBooks: priceBooks.map(named) } : {}), company: named(companyFile) }, fill: (name: string) => fillRows.get(name)!,
  }

  /** Rates and values are the same for every job that says nothing of them. */
  function turned({ choices = {} }: JobTarget, taken: TakenOffers | undefined): Omit<Books, 'target' | 'ductTarget' | 'taking'> {
    const mine = choices.rates ?? choices.values ?? choices.subcontract ? valuesOf(companyFile, choices) : values, { lightTreatment } = companyFor(companyFile, choices.company)
    const changed = choices.company ? companyOf(companyFile, choices.company) : company
    return {
      ...steady, ...mine, ...goods.forJob({ ...(companyFile.supplier === undefined ? {} : { supplier: companyFile.supplier }), ...choices }, taken),
      // A gross margin of the job covers overhead too.
      company: choices.marginPct === undefined ? changed : { ...grossOf(changed), marginPct: given(choices.marginPct, 'pct', '/choices/marginPct') },
      choice: (name: string) => name === 'lightTreatment' ? lightTreatment : undefined,
      overrides: () => [...overridesOf(choices, priceBooks, companyFile), ...mine.overrides()],
    }
  }
  return {
    prices, priceBooks, companyFile,
    troubles: job => setsNothing(job) ? [] : ownFaults(job.choices!, priceBooks, companyFile),
    for: job => (goods.steady && companyFile.supplier === undefined && setsNothing(job) ? sharedFor(job) : opened(job)),
  }

  /** Jobs with one goal that set nothing for themselves find the same books open. */
  function sharedFor({ choices: _, ...goal }: JobTarget): Books {
    const key = JSON.stringify(goal)
    let open = shared.get(key)
    if (open === undefined) {
      if (shared.size >= MOST_OPEN) shared.clear()
      shared.set(key, open = opened(goal))
    }
    return open
  }

  function opened(job: JobTarget, taken?: TakenOffers): Books {
    const books = turned(job, taken), { start } = books
    return {
      ...books, taking: offers => opened(job, offers),
      ductTarget(use, acrossIn) {
        const t = job.rValue === undefined ? ductTargets.rows.find(r => r.edition === job.code) : undefined
        if (!t) return start('duct-r', 8, 'R', 'R wanted on ducts in the attic', 'the goal of the job is no code edition')
        const narrow = acrossIn < t.narrowIn, r = narrow ? t.narrowR : use === 'supply' ? t.supplyR : t.returnR
        return fromRow(ductTargets, t, r, 'R', `${t.edition}, ${t.section}, ${narrow ? `under ${t.narrowIn} in across` : use}`)
      },
      target() {
        if (job.rValue !== undefined) return given(job.rValue, 'R', '/target/rValue')
        const t = targets.rows.find(r => r.edition === job.code)!
        const { zone, map, counties, at, as } = zoneOf(job, job.code)!
        const from = `${t.edition}, table ${t.section}, zone ${zone}`, picked = given(Number.parseInt(zone), 'each', at, as)
        return map ? fromRow(targets, { source: `${targets.source}; ${map.source}` }, t.r[zone], 'R', `${from}; ${map.title}: ${counties}`, picked) : fromRow(targets, t, t.r[zone], 'R', from, picked)
      },
    }
  }
}

// Many re-priced jobs added up: by status, by action, and by the item that moved them.
import { byText } from '../../findings/finding.ts'
import { actions, statuses, type Action, type Status } from './quote-action.ts'
import type { RepricedOut } from './reprice.ts'

export interface Sums { jobs: number; oldCents: number; newCents: number; changeCents: number; lossCents: number }
export interface ItemTotal { item: string; name: string; jobs: number; costCents: number; priceCents: number }

/** All of `items` to `roundingCents` adds up to `changeCents`. */
export interface RepriceTotals extends Sums {
  /** Jobs that have no price under one of the books; they are in no sum. */
  unpriced: number
  byStatus: (Sums & { status: Status })[]
  byAction: (Sums & { action: Action })[]
  /** The ten that move the total most, and the others in one line. */
  items: ItemTotal[]
  otherItems: { items: number; costCents: number; priceCents: number }
  laborCents: number; otherCents: number; minimumCents: number; roundingCents: number
}

export const REPRICE_FORMAT = 'lidwork-reprice/1'

/** A whole run. */
export interface RepriceOut {
  format: typeof REPRICE_FORMAT
  from: string; to: string; on?: string
  /** Files that could be read, and jobs that were priced. */
  read: number; priced: number
  skipped: { file: string; why: string }[]
  /** Ids of jobs that more than one file has. */
  clashes: string[]
  totals: RepriceTotals
  jobs: RepricedOut[]
}

const MOST_ITEMS = 10
const empty = (): Sums => ({ jobs: 0, oldCents: 0, newCents: 0, changeCents: 0, lossCents: 0 })

/** Adds up one job after the other, and keeps none of them. */
export class Totals {
  readonly #all = empty()
  readonly #status = new Map<Status, Sums>()
  readonly #action = new Map<Action, Sums>()
  readonly #items = new Map<string, ItemTotal>()
  readonly #lines = { laborCents: 0, otherCents: 0, minimumCents: 0, roundingCents: 0 }
  #unpriced = 0

  add(job: RepricedOut): void {
    const sums = [this.#all, at(this.#status, job.status), at(this.#action, job.action)]
    for (const s of sums) s.jobs++
    if (job.changeCents === undefined) { this.#unpriced++; return }
    for (const s of sums) {
      s.oldCents += job.oldCents ?? 0; s.newCents += job.newCents ?? 0
      s.changeCents += job.changeCents; s.lossCents += job.lossCents ?? 0
    }
    const { items, ...lines } = job.effects!
    for (const key of Object.keys(lines) as (keyof typeof lines)[]) this.#lines[key] += lines[key]
    for (const { item, name, costCents, priceCents } of items) {
      const t = this.#items.get(item) ?? { item, name, jobs: 0, costCents: 0, priceCents: 0 }
      this.#items.set(item, t)
      t.jobs++; t.costCents += costCents; t.priceCents += priceCents
    }
  }

  out(): RepriceTotals {
    const items = [...this.#items.values()].sort((a, b) => Math.abs(b.priceCents) - Math.abs(a.priceCents) || byText(a.item, b.item)), rest = items.slice(MOST_ITEMS)
    return {
      ...this.#all, unpriced: this.#unpriced,
      byStatus: statuses.flatMap(status => { const s = this.#status.get(status); return s ? [{ status, ...s }] : [] }),
      byAction: actions.flatMap(action => { const s = this.#action.get(action); return s ? [{ action, ...s }] : [] }),
      items: items.slice(0, MOST_ITEMS),
      otherItems: { items: rest.length, costCents: rest.reduce((sum, i) => sum + i.costCents, 0), priceCents: rest.reduce((sum, i) => sum + i.priceCents, 0) },
      ...this.#lines,
    }
  }
}

function at<K>(by: Map<K, Sums>, key: K): Sums {
  const made = by.get(key) ?? empty()
  by.set(key, made)
  return made
}

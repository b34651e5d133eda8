// Re-priced jobs: a table by loss with its totals, and one line a job for spreadsheets.
import type { RepricedOut } from '../estimate/quotes/reprice.ts'
import type { RepriceTotals, Sums } from '../estimate/quotes/reprice-totals.ts'
import { printable } from '../findings/printable.ts'
import { csvLine } from './csv.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { moneyColumn } from './terminal/money-column.ts'
import { columns, GAP, padLeft, padRight, sheet } from './terminal/sheet.ts'
import { figure } from './terminal/words.ts'

/** What a table keeps of a job. */
export type RepriceRow = Pick<RepricedOut, 'file' | 'id' | 'status' | 'oldCents' | 'newCents' | 'changeCents' | 'honoredMarginPct' | 'lossCents' | 'action' | 'why'>
export const rowOf = ({ file, id, status, oldCents, newCents, changeCents, honoredMarginPct, lossCents, action, why }: RepricedOut): RepriceRow =>
  ({ file, id, status, action, why, ...(oldCents === undefined ? {} : { oldCents }), ...(newCents === undefined ? {} : { newCents }), ...(changeCents === undefined ? {} : { changeCents }), ...(honoredMarginPct === undefined ? {} : { honoredMarginPct }), ...(lossCents === undefined ? {} : { lossCents }) })

export interface RepriceHead { readonly from: string; readonly to: string; readonly on?: string }

/** Widths of columns; money takes more where a figure asks for it. */
const MONEY = 11, STATUS = 8, MARGIN = 7, ACTION = 10
const counted = (n: number, what: string): string => `${figure(n, 0)} ${what}${n === 1 ? '' : 's'}`

/** Jobs by what honoring them loses, the largest first; in the order they were read where that is the same. */
export const byLoss = (rows: readonly RepriceRow[]): RepriceRow[] => [...rows].sort((a, b) => (b.lossCents ?? 0) - (a.lossCents ?? 0))

/** The jobs, what moved them, and what it comes to. @param top how many jobs are shown; all without it */
export function terminalRepriced(head: RepriceHead, rows: readonly RepriceRow[], totals: RepriceTotals, look: Look, top?: number): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text))
  on.row({ at: 1, text: clean(`${head.from} to ${head.to}${head.on === undefined ? '' : `, on ${head.on}`}`), boldText: true })
  const sorted = byLoss(rows), shown = sorted.slice(0, top)
  on.row({ at: 1, text: 'margin: what is left at the old price, in percent; largest rise of cost first' })
  on.gap()
  const one = moneyColumn(MONEY, shown.flatMap(r => [r.oldCents, r.newCents, r.changeCents]))
  /** A name and its figures; on a line of its own where they leave it no room. */
  const line = (text: string, right: string, boldText = false): void => {
    if (columns(text) + GAP + columns(right) <= on.width) { on.row({ at: 1, text, boldText, right }); return }
    on.row({ at: 1, text, boldText })
    on.row({ at: 1, right })
  }
  line('job', ['status'.padEnd(STATUS), one.head('old $'), one.head('new $'), one.head('change'), padLeft('margin', MARGIN), padLeft('do', ACTION)].join(''), true)
  for (const r of shown) {
    line(clean(r.id), [padRight(r.status, STATUS), one.money(r.oldCents), one.money(r.newCents), one.change(r.changeCents), padLeft(r.honoredMarginPct === undefined ? '' : figure(r.honoredMarginPct, 1), MARGIN), padLeft(r.action, ACTION)].join(''))
    if (r.action === 'ask') on.row({ at: 3, text: clean(r.why) })
  }
  if (shown.length < sorted.length) on.row({ at: 1, text: `${counted(sorted.length - shown.length, 'more job')} whose cost rises less` })

  const { otherItems } = totals, sumsOf = [...totals.byStatus, ...totals.byAction, totals].flatMap(t => [t.oldCents, t.changeCents, t.lossCents]), effects = [...totals.items, otherItems].flatMap(i => [i.costCents, i.priceCents])
  const { width, head: over, money, change } = moneyColumn(MONEY, [...sumsOf, ...effects, totals.laborCents, totals.otherCents, totals.minimumCents, totals.roundingCents])
  const sums = (word: string, of: readonly (Sums & { readonly name: string })[]): void => {
    if (of.length === 0) return
    on.gap()
    line(word, [padLeft('jobs', ACTION), over('old $'), over('change'), over('cost')].join(''), true)
    for (const s of of) line(s.name, [padLeft(figure(s.jobs, 0), ACTION), money(s.oldCents), change(s.changeCents), change(s.lossCents)].join(''))
  }
  sums('by status', totals.byStatus.map(s => ({ ...s, name: s.status })))
  sums('by action', totals.byAction.map(s => ({ ...s, name: s.action })))
  sums('all', [{ ...totals, name: totals.unpriced === 0 ? 'all' : `all but ${figure(totals.unpriced, 0)} without a price` }])

  on.gap()
  on.row({ at: 1, text: 'what moves the total', boldText: true, right: [padLeft('jobs', ACTION), over('cost'), over('price')].join('') })
  const effect = (text: string, priceCents: number, jobs?: number, costCents?: number): void => on.row({ at: 1, text: clean(text), right: [padLeft(jobs === undefined ? '' : figure(jobs, 0), ACTION), change(costCents), change(priceCents)].join('') })
  for (const i of totals.items) effect(i.name, i.priceCents, i.jobs, i.costCents)
  if (otherItems.items > 0) effect(counted(otherItems.items, 'other item'), otherItems.priceCents, undefined, otherItems.costCents)
  for (const [text, c] of [['labor', totals.laborCents], ['other trades, travel, disposal', totals.otherCents], ['minimum charge', totals.minimumCents]] as const) if (c !== 0) effect(text, c)
  effect('rounding', totals.roundingCents)
  on.rule(width)
  effect('change of the total', totals.changeCents)
  return on.text()
}

/** The head of the first column names the format. */
export const REPRICE_CSV = 'lidwork-reprice-job/1'
const dollars = (c: number | undefined): number | string => (c === undefined ? '' : c / 100)
/** The one header line, however many jobs follow. */
export const repricedHead = (): string => csvLine([REPRICE_CSV, 'id', 'title', 'customer', 'status', 'sentOn', 'signedOn', 'expiresOn', 'verdictOld', 'verdictNew', 'old', 'new', 'change', 'changePct', 'oldCost', 'newCost', 'loss', 'marginPct', 'honoredMarginPct', 'passedOn', 'action', 'why'])
/** One job in one line; money in dollars. */
export const repricedLine = (r: RepricedOut): string => csvLine([r.file, r.id, r.title, r.customer ?? '', r.status, r.sentOn ?? '', r.signedOn ?? '', r.expiresOn ?? '', r.verdictOld, r.verdictNew, dollars(r.oldCents), dollars(r.newCents), dollars(r.changeCents), r.changePct ?? '',
  dollars(r.oldCostCents), dollars(r.newCostCents), dollars(r.lossCents), r.marginPct ?? '', r.honoredMarginPct ?? '', r.clauses.length === 0 ? '' : dollars(r.clauses.reduce((sum, c) => sum + c.passedOnCents, 0)), r.action, r.why])

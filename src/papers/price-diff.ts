// Two price books beside each other: a table by effect, and the same for spreadsheets.
import type { PriceDiffItem, PricesDiffOut } from '../estimate/quotes/price-diff.ts'
import { printable } from '../findings/printable.ts'
import { csvLine } from './csv.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { moneyColumn, signedUsd } from './terminal/money-column.ts'
import { padLeft, sheet } from './terminal/sheet.ts'
import { counted, figure } from './terminal/words.ts'

const PRICE = 10, PCT = 11, EFFECT = 12
const signedPct = (p: number): string => `${p > 0 ? '+' : p < 0 ? '-' : ''}${figure(Math.abs(p), 1)}%`

/** Added, dropped and changed items, those that move most first. */
export function terminalPriceDiff(d: PricesDiffOut, look: Look): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text)), withJobs = d.jobs !== undefined
  on.row({ at: 1, text: clean(`${d.old.name}, ${d.old.dated}, to ${d.new.name}, ${d.new.dated}`), boldText: true })
  if (d.items.length === 0) { on.row({ text: 'Nothing is different.' }); return on.text() }
  const price = moneyColumn(PRICE, d.items.flatMap(i => [i.oldPriceCents, i.newPriceCents])), effect = moneyColumn(EFFECT, d.items.map(i => i.effectCents))
  on.section('items', `${price.head('old $')}${price.head('new $')}${padLeft('change', PCT)}${withJobs ? effect.head('effect $') : ''}`)
  for (const i of d.items) {
    const right = price.money(i.oldPriceCents) + price.money(i.newPriceCents) + padLeft(i.change !== 'changed' ? i.change : i.changePct === undefined ? '' : signedPct(i.changePct), PCT) + (withJobs ? effect.change(i.effectCents) : '')
    on.row({ text: clean(i.name), right, keep: right.length + 2 })
    const also = [...i.also, ...(i.change === 'dropped' && (i.jobs ?? 0) > 0 ? [`${counted(i.jobs!, 'job')} would have no price`] : [])]
    if (also.length > 0) on.row({ at: 8, text: clean(`${also.join('; ')}.`) })
  }
  if (withJobs) {
    on.rule(effect.width)
    on.row({ text: `material of ${counted(d.jobs!, 'job')}, as planned with the old book`, right: signedUsd(d.effectCents!), boldRight: true })
  }
  return on.text()
}

const dollars = (c: number | undefined): number | string => (c === undefined ? '' : c / 100)
const csvRow = (i: PriceDiffItem): string => csvLine([i.item, i.name, i.change, dollars(i.oldPriceCents), dollars(i.newPriceCents), i.changePct ?? '', i.jobs ?? '', dollars(i.effectCents), i.also.join('; ')])
/** The same, an item to a line; the head of the first column names the format. Money in dollars. */
export const csvPriceDiff = (d: PricesDiffOut): string => csvLine([d.format, 'name', 'change', 'old', 'new', 'changePct', 'jobs', 'effect', 'also']) + d.items.map(csvRow).join('')

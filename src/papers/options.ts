// The options of a house on a terminal: a ladder, cheapest step first, each over the one before; then what stands beside the file as written.
import type { OptionOut, OptionsOut } from '../estimate/quotes/options-output.ts'
import { printable } from '../findings/printable.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { dollars, rangeOf, two } from './terminal/air.ts'
import { columns, GAP, sheet, type Sheet } from './terminal/sheet.ts'
import { counted, figure, usd } from './terminal/words.ts'

interface Col { readonly heads: readonly [string, string]; readonly cell: (o: OptionOut) => string }

const CENTS = 100
/** Whole dollars where all are whole. */
const money = (rows: readonly OptionOut[]): ((cents: number) => string) => (rows.every(o => (o.totalCents ?? 0) % CENTS === 0) ? cents => figure(cents / CENTS) : usd)
const years = (o: OptionOut): string => {
  const { paybackYearsLow: low, paybackYearsHigh: high, moreBillCentsExpected: saved, moreCents } = o.over ?? {}
  if (!o.over || saved === undefined || moreCents! <= 0) return ''
  return saved <= 0 ? 'never' : low === undefined ? 'over 50' : high === undefined ? `${two(low)} to 50+` : rangeOf(low, high)
}
const saved = (o: OptionOut): string => (o.billCentsLow === undefined ? '' : rangeOf(o.billCentsLow, o.billCentsHigh!, plainDollars))
const plainDollars = (cents: number): string => dollars(cents).slice(1)
const averages = (o: OptionOut): string => (o.averageR === undefined ? '' : figure(o.averageR, 1))

/** Columns that hold nothing are left out. */
function table(on: Sheet, name: string, rows: readonly OptionOut[], cols: readonly Col[], clean: (text: string) => string): void {
  const shown = cols.map(c => ({ ...c, cells: rows.map(c.cell) })).filter(c => c.cells.some(t => t !== ''))
  const widths = shown.map(c => Math.max(...[...c.heads, ...c.cells].map(columns)) + GAP)
  on.heads(name, shown.map(c => c.heads), widths)
  rows.forEach((o, i) => on.figures(clean(`${o.what}${o.asWritten ? ', as written' : ''}`), shown.map(c => c.cells[i]!), widths))
}

export function terminalOptions(o: OptionsOut, look: Look): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text))
  on.row({ at: 6, text: clean(o.job.title), boldText: true })
  on.row({ at: 6, text: `Options; the file asks for R-${figure(o.targetR)}. Each row is a whole estimate. Sealing, baffles, dams, ducts under the fill and tests are in all of them.` })
  if (o.verdict === 'stop') { on.gap(); on.row({ at: 6, text: 'The house is stopped: nothing is priced until its gates are open. lidwork estimate says which.' }); return on.text() }

  const usdOf = money([...o.ladder, ...o.products, ...o.choices]), more = (cents: number): string => `${cents > 0 ? '+' : ''}${usdOf(cents)}`
  const bags: Col = { heads: ['', 'bags'], cell: x => figure(x.bags) }, average: Col = { heads: ['mean', 'R'], cell: averages }, hours: Col = { heads: ['pers.', 'hours'], cell: x => figure(x.personHours) }, price: Col = { heads: ['price', '$'], cell: x => (x.totalCents === undefined ? 'none' : usdOf(x.totalCents)) }
  const year: Col = { heads: ['saves $', 'a year'], cell: saved }, back: Col = { heads: ['pays in', 'years'], cell: years }, load: Col = { heads: ['ceiling', 'lb/ft²'], cell: x => (x.ceilingLoadPsf === undefined ? '' : figure(x.ceilingLoadPsf, 2)) }
  const stepped: Col = { heads: ['step', '$'], cell: x => (x.over?.step === undefined ? '' : more(x.over.moreCents)) }, beside: Col = { heads: ['beside', '$'], cell: x => (x.over ? more(x.over.moreCents) : '') }
  const wide = on.width >= 80
  if (o.ladder.length > 0) {
    on.gap()
    table(on, 'ladder', o.ladder, wide ? [bags, average, hours, price, stepped, year, back] : [average, price, year, back], clean)
    for (const x of o.ladder) if (x.newGates.length > 0) on.row({ at: 6, text: clean(`${x.what}: ${x.newGates.join(', ')} stands in the way.`) })
    const under = o.ladder.filter(x => x.underTarget).map(x => x.what)
    if (under.length > 0) on.row({ at: 6, text: clean(`${under.join(', ')}: under the target of the file.`) })
    // The floor: with it a step may cost nothing more, and is judged without.
    const floored = o.ladder.filter(x => x.totalCents !== undefined && x.floored)
    if (floored.length > 0) on.row({ at: 6, text: clean(`Held up by the minimum charge; before it ${floored.map(x => `${x.what} ${usdOf(x.beforeFloorCents!)}`).join(', ')}. Paybacks go by these.`) })
    const { nextInch: n } = o, step = (id: string | undefined): OptionOut | undefined => o.ladder.find(x => x.id === id), last = step(n?.lastThatPays), first = step(n?.firstThatDoesNot)
    if (n) on.row({ word: 'next inch', text: clean(`${last ? `${last.what} is the last step that pays back within ${counted(n.paysWithinYears, 'year')}, as expected` : `no step of depth pays back within ${counted(n.paysWithinYears, 'year')}, as expected`}${first?.over?.inchCents === undefined ? '.' : `; an inch of ${first.what} costs ${dollars(first.over.inchCents)} and saves ${dollars(first.over.inchBillCents ?? 0)} a year.`}`) })
  }
  for (const [name, rows] of [['products', o.products], ['choices', o.choices]] as const) if (rows.length > 0) { on.gap(); table(on, name, rows, wide ? [bags, average, load, hours, price, beside, year] : [average, load, price, beside], clean) }
  if (o.offers.length > 0) { on.section('on offer', '$'); for (const x of o.offers) on.row({ text: clean(x.what), right: usd(x.priceCents) }) }
  if (o.left.length > 0 || o.missing.length > 0) {
    on.section('not in these figures')
    for (const x of o.left) on.row({ text: clean(`${x.what}: ${x.why}.`) })
    if (o.missing.length > 0) on.row({ text: clean(`Savings, missing: ${o.missing.join('; ')}.`) })
  }
  on.gap()
  on.row({ at: 6, text: `A step pays by what it saves over the one before, at the ends of the range. Savings vary: ranges, no promise. A yearly saving is held to a share of the bill: steps above that share save nothing more.` })
  return on.text()
}

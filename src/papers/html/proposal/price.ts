// The price, what it covers and leaves out, what has to happen first, and the steps up. Prices alone: never cost, wage, margin or markup.
import type { GateOut } from '../../../estimate/output.ts'
import type { OptionOut } from '../../../estimate/quotes/options-output.ts'
import { cents } from '../../../units/money.ts'
import { phases } from '../../../scope/kind.ts'
import { counted, figure, NB, phaseWords, usd, workedR } from '../../terminal/words.ts'
import { range } from '../drawings/range.ts'
import { gateText, isPriced, shutGates } from '../gate-words.ts'
import { html, type Html } from '../html.ts'
import { duties } from '../law.ts'
import type { House } from '../page.ts'
import { figureAt, gateList, tableOf } from '../parts.ts'
import { listed, sentence } from '../say.ts'

/** A homeowner's total has no cents where there are none. */
const CENTS = 100
const dollars = (cents: number): string => (cents % CENTS === 0 ? figure(cents / CENTS) : usd(cents))

const HOLDS = 'The price holds only if '
const NOT_IN = 'Not in this price: '

export function price({ estimate: e, job }: House): Html {
  const p = e.price, total = p.totalCents
  if (total === undefined) return html``
  const conditions = p.excludes.filter(x => x.startsWith(HOLDS)), not = p.excludes.filter(x => x.startsWith(NOT_IN)), open = p.excludes.filter(x => !conditions.includes(x) && !not.includes(x))
  const covered = phases.filter(ph => e.tasks.some(t => t.phase === ph)), trades = [...new Set(e.tasks.filter(t => t.personHours === 0 && ['electrician', 'hvac', 'roofer', 'abater', 'other'].includes(t.role)).map(t => t.title))]
  return html`<h2>Price</h2>
<p class="large">$${figureAt('price.totalCents', dollars(total))}</p>
<div class="columns keep"><section><h3>It covers</h3>
<ul><li>All steps above with their labor and material: ${listed(covered.map(c => phaseWords[c]))}.</li>
${trades.length > 0 && html`<li>Other trades’ work in these steps: ${trades.join('; ')}.</li>
`}<li>${(p.customerTaxCents ?? 0) > 0 ? html`Sales tax of $${figureAt('price.customerTaxCents', usd(p.customerTaxCents!))}.` : 'All taxes on material.'}</li>
<li>The papers after the work: photos, tests, and the receipt with thickness, coverage, R and bags for each part (${duties.receipt.source}).</li>
</ul></section>
<section class="kraft aside"><h3>It leaves out</h3>
<ul>${not.map(x => html`<li>${sentence(x.slice(NOT_IN.length))}</li>
`)}<li>What nobody could see at the survey. If something hidden shows, work stops there, you are called, and a change is priced and signed before it is done.</li>
<li>Painting and patching in the rooms, moving of furniture, and anything the steps do not name.</li>
</ul></section></div>
${conditions.length > 0 && html`<h3>It holds only if</h3>
<ul>${conditions.map(x => html`<li>${sentence(x.slice(HOLDS.length))}</li>
`)}</ul>`}
${open.length > 0 && html`<h3>Taken as it looks today</h3>
<ul>${open.map(x => html`<li>${sentence(x)}</li>
`)}</ul>`}
<p>${p.validDays !== undefined && html`This price holds ${figureAt('price.validDays', counted(p.validDays, 'day'))} from the day it is signed for us below. `}${(p.depositCents ?? 0) > 0 ? html`Deposit: $${figureAt('price.depositCents', dollars(p.depositCents!))}, credited to the total; the rest is due when the work is done and you have the papers.` : 'No deposit is asked; the price is due when the work is done and you have the papers.'}</p>
${(p.incentivesCents ?? 0) > 0
    ? html`<h3>Incentives, if they are granted</h3>
${tableOf({ tight: true, columns: [{ head: 'From' }, { head: 'On what it depends' }, { head: 'Amount', unit: '$', figure: true }], rows: [...(job.choices?.incentives ?? []).map(i => [i.from, sentence(i.condition), dollars(cents(i.amount))]), { is: 'total' as const, cells: ['Left for you, if all are granted', '', figureAt('price.netCents', dollars(p.netCents!))] }] })}
<p>They are not ours to promise: the price stands without them.</p>`
    : html`<p>No utility or tax incentive is counted in this price. If one is granted to you, it is yours.</p>`}`
}

/** What else can be had, each by itself. */
export const offers = ({ estimate: { offers: all } }: House): Html | false => all.length > 0 && html`<h3>On offer, not in the price</h3>
${tableOf({ columns: [{ head: 'What' }, { head: 'Price', unit: '$', figure: true }, { head: 'Yes or no, initials' }], rows: all.map(o => [sentence(o.what).slice(0, -1), figureAt(`offers.${o.id}.priceCents`, usd(o.priceCents)), html`<span class="write" role="img" aria-label="initials"></span>`]) })}`

/** Who has to open what before a date can be set. */
export function first(house: House): Html | false {
  const { estimate: e } = house, ours = e.gates.filter(g => g.open && g.state === 'mend'), priced = (g: GateOut): boolean => isPriced(g, e)
  const waits = shutGates(house).filter(priced), mends = ours.filter(priced), leftOut = [...shutGates(house), ...ours].filter(g => !priced(g)), opened = e.gates.filter(g => !g.open)
  if (waits.length + mends.length + leftOut.length + opened.length === 0) return false
  return html`<h2>What has to happen first</h2>
${waits.length > 0 && html`<p class="lead">No day can be set until these are answered. What they touch is priced, and waits.</p>
${gateList(waits.map(g => gateText(g, house)))}`}
${mends.length > 0 && html`<h3>Opened by our own work</h3>
${gateList(mends.map(g => gateText(g, house)))}`}
${leftOut.length > 0 && html`<h3>What is not in this price</h3>
<p class="lead">These shut only work that this price leaves out. What is in it does not wait for them. Once they are answered, that work is priced by itself.</p>
${gateList(leftOut.map(g => gateText(g, house)))}`}
${opened.length > 0 && html`<h3>Already answered</h3>
${gateList(opened.map(g => gateText(g, house)))}`}`
}

/** Rows of whole prices; the average R stands there only where every row has one. */
function choicesTable(head: string, beside: string, of: readonly OptionOut[]): Html {
  const money = (cents: number | undefined): string => (cents === undefined ? '' : cents < 0 ? `−${dollars(-cents)}` : dollars(cents)), averaged = of.every(o => o.averageR !== undefined)
  return tableOf({ tight: true, columns: [{ head }, ...(averaged ? [{ head: 'Whole ceiling', figure: true }] : []), { head: 'Price', unit: '$', figure: true }, { head: beside, unit: '$', figure: true }],
    rows: of.map(o => [html`${o.what}${o.asWritten && html` <b>(this proposal)</b>`}${o.underTarget && html`<span class="unit"> under the goal</span>`}`, ...(averaged ? [workedR(o.averageR!)] : []), money(o.totalCents), o.over?.step === undefined ? '' : money(o.over.moreCents)]) })
}

/** The same house, done otherwise: one step over the one before. Options have no figures in the estimate's JSON; they are whole estimates of their own. */
export function ladder({ options }: House): Html | false {
  if (options === undefined || options.ladder.length + options.products.length + options.choices.length === 0) return false
  const { ladder: steps, products, choices } = options
  const others = [...products, ...choices].filter(o => !o.asWritten)
  const left = [...steps, ...others].filter(o => o.newGates.length > 0)
  return html`<h2>The same house, done otherwise</h2>
<p class="lead">Each row is a whole price of its own. Sealing, baffles, dams, ducts under the fill and tests are in all of them: none leaves out what would lie buried.</p>
${steps.length > 0 && choicesTable('Goal', 'Over the one before', steps)}
${others.length > 0 && choicesTable('At the same goal', 'Beside this proposal', others)}
${left.length > 0 && html`<p class="small">${left.map(o => `${sentence(o.what).slice(0, -1)} would meet ${counted(o.newGates.length, 'more gate', 'more gates')} that ${o.newGates.length === 1 ? 'has' : 'have'} to be opened.`).join(' ')}</p>`}`
}

const PARTS = { air: 'Sealing', ducts: 'Ducts', ceiling: 'Insulation' } as const

/** What a year may save: a range with its parts, and the words the rule asks for. */
export function savings({ estimate: { savings: s } }: House): Html | false {
  if (s?.billCentsLow === undefined) return false
  const two = (cents: number): string => `$${figure(cents < CENTS * CENTS ? cents / CENTS : Number((cents / CENTS).toPrecision(2)))}`, years = (y: number): string => figure(Number(y.toPrecision(2)))
  const payback = s.paybackYearsLow === undefined ? `longer than 50${NB}years` : s.paybackYearsHigh === undefined ? html`${figureAt('savings.paybackYearsLow', years(s.paybackYearsLow))} to more than 50${NB}years` : html`${figureAt('savings.paybackYearsLow', years(s.paybackYearsLow))} to ${figureAt('savings.paybackYearsHigh', years(s.paybackYearsHigh))}${NB}years`
  return html`<section class="keep"><h2>What a year may save</h2>
<figure>${range({ low: s.billCentsLow, expected: s.billCentsExpected!, high: s.billCentsHigh!, show: two, paths: ['savings.billCentsLow', 'savings.billCentsHigh'], says: `A year may save ${two(s.billCentsLow)} to ${two(s.billCentsHigh!)}, expected ${two(s.billCentsExpected!)}.` })}
<figcaption>${two(s.billCentsLow)} to ${two(s.billCentsHigh!)} a year, expect ${figureAt('savings.billCentsExpected', two(s.billCentsExpected!))}.${s.capped && ' The computed saving is larger than we claim: this range is held to a share of the bill.'} It pays back in ${payback}. Worked for this house, its fuel and ${s.degreeDaysFrom ?? 'its climate'}; a range, not a promise.</figcaption></figure>
${s.parts !== undefined && s.parts.length > 1 && tableOf({ tight: true, caption: 'How much of the heating comes from each, as expected', columns: [{ head: 'Part' }, { head: 'A year', unit: '$', figure: true }, { head: 'Of the price', unit: '$', figure: true }], rows: s.parts.map(p => [PARTS[p.id], figureAt(`savings.parts.${p.id}.billCents`, two(p.billCents).slice(1)), p.priceCents === undefined ? '' : figureAt(`savings.parts.${p.id}.priceCents`, figure(p.priceCents / CENTS))]) })}
<p><b>${duties.savings.says}</b> <span class="small gray">(${duties.savings.source})</span></p></section>`
}

// What changes in air, energy and safety, in a few lines of ranges.
import type { EstimateOut } from '../../estimate/output.ts'
import { columns, type Sheet } from './sheet.ts'
import { figure, NB } from './words.ts'

/** Two digits are all that a range carries. */
export const two = (x: number): string => (x === 0 ? '0' : figure(Number(x.toPrecision(2)), Math.max(0, 1 - Math.floor(Math.log10(Math.abs(x))))))
const KEEP = 12
const BAR = 24

/** From 0 to the high end: ticks at the ends, a cross where it is expected, ] where it was held down. */
function bar(low: number, expected: number, high: number, capped: boolean): string {
  const at = (x: number): number => Math.min(BAR - 1, Math.round(x / high * (BAR - 1))), from = at(low), cross = Math.max(from + 1, Math.min(BAR - 2, at(expected)))
  return NB.repeat(from) + Array.from({ length: BAR - from }, (_, i) => (i === 0 ? '|' : i === BAR - 1 - from ? capped ? ']' : '|' : i === cross - from ? '+' : '-')).join('')
}

export const rangeOf = (low: number, high: number, of: (x: number) => string = two): string => (of(low) === of(high) ? of(low) : `${of(low)} to ${of(high)}`)
const TEN_DOLLARS = 1000
export const dollars = (cents: number): string => `$${cents < TEN_DOLLARS ? figure(cents / 100) : two(cents / 100)}`

export function airAndEnergy(e: EstimateOut, on: Sheet): void {
  const { airLeakage: a, ventilation: v, ductDelivery: d, savings: s } = e
  const lines: { word: string; text: string; right?: string }[] = []
  const add = (word: string, text: string, right?: string): void => { lines.push({ word, text, ...(right === undefined ? {} : { right }) }) }

  if (a?.cfm50CutLow !== undefined) {
    const range = `${rangeOf(a.cfm50CutLow, a.cfm50CutHigh!)} less, expect ${two(a.cfm50CutExpected!)}`
    if (on.width >= 80) add('air', bar(a.cfm50CutLow, a.cfm50CutExpected!, a.cfm50CutHigh!, a.cutCapped === true), `CFM50`)
    add(on.width >= 80 ? '' : 'air', `${range}, of ${figure(a.cfm50Before!)}${NB}CFM50 ${a.cfm50Assumed ? 'that are assumed' : 'as measured'}${a.cutCapped ? '; the most that sealing a ceiling is taken to bring, the listed parts add up to more' : ''}. A range, not a promise.`)
  } else if (a?.listedIn2Before !== undefined && e.verdict !== 'stop') add('air', `listed openings leak ${figure(a.listedIn2Before)}${NB}in² as found, ${figure(a.listedIn2After!)}${NB}in² once closed${a.cfm50Before === undefined ? '; no blower door, so no flow is printed' : ''}.`)
  if (a?.leaks && a.leaks.length > 0) add(lines.length === 0 ? 'air' : '', `Most leak: ${a.leaks.slice(0, 3).map(l => `${l.id} ${figure(l.sharePct)}%`).join(', ')}.`)
  if (v) add('fresh air', v.fanNeeded ? `${figure(Math.ceil(v.fanCfm))}${NB}cfm are missing by ASHRAE${NB}${v.standard} once it is sealed: a fan, offered; the owner decides in writing.` : `enough by ASHRAE${NB}${v.standard} once it is sealed: no fan asked for.`)
  const flames = e.tasks.some(t => t.id.startsWith('test-combustion'))
  if (flames) add('flames', 'Draft and CO are tested before and after; no figure here takes the place of a test.')
  if (d && d.cases.length > 1) add('ducts', `of the heat sent out, what arrives: ${d.cases.map(c => `${CASES[c.id]} ${figure(c.averageShare * 100)}%`).join(', ')}.`)
  if (s?.billCentsLow !== undefined) {
    const payback = s.paybackYearsLow === undefined ? 'more than 50 years' : s.paybackYearsHigh === undefined ? `${two(s.paybackYearsLow)} to more than 50 years` : `${rangeOf(s.paybackYearsLow, s.paybackYearsHigh)} years`
    add('saving', `${dollars(s.billCentsLow) === dollars(s.billCentsHigh!) ? `at most ${dollars(s.billCentsHigh!)} a year` : `${rangeOf(s.billCentsLow, s.billCentsHigh!, dollars)} a year, expect ${dollars(s.billCentsExpected!)}`}${s.capped ? ', held to a share of the bill' : ''}; pays back in ${payback}. Savings vary: a range, not a promise.`)
    add('', `${rangeOf(s.fuelUnitsLow!, s.fuelUnitsHigh!)}${NB}${s.fuelUnit} ${FUELS[s.fuel!] ?? `of ${s.fuel}`}${s.coolingKwhLow === undefined ? '' : `, ${rangeOf(s.coolingKwhLow, s.coolingKwhHigh!)}${NB}kWh of cooling`}; degree days: ${s.degreeDaysFrom}.`)
    for (const p of s.parts ?? []) add('', `${PARTS[p.id]}: ${p.heatingBtu === 0 ? 'not counted here,' : `${dollars(p.billCents)} a year of heating`}${p.priceCents === undefined ? '' : ` for $${figure(p.priceCents / 100)} of the price`}`)
  }
  if (s && s.missing.length > 0) add(s.billCentsLow === undefined ? 'saving' : '', `not ${s.billCentsLow === undefined ? 'computed' : 'whole'}; missing: ${s.missing.join('; ')}.`)
  if (lines.length === 0) return
  on.section('air and energy')
  for (const l of lines) on.row({ ...(l.word === '' ? { at: 19 } : { word: l.word }), text: l.text, ...(l.right === undefined ? {} : { right: l.right, keep: Math.max(KEEP, columns(l.right) + 2) }) })
}

const CASES = { 'as-found': 'now', 'wrap-only': 'wrapped alone', 'seal-only': 'sealed alone', both: 'sealed, then wrapped' } as const
const FUELS: Readonly<Record<string, string>> = { 'heat-pump': 'for the heat pump', electric: 'of electric heat' }
const PARTS = { air: 'sealing', ducts: 'ducts', ceiling: 'insulation' } as const

// How far the price may be off, and what to measure again, on a terminal.
import type { RangesOut, UncertainOut } from '../estimate/output.ts'
import { printable } from '../findings/printable.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { sheet } from './terminal/sheet.ts'
import { counted, figure, NB } from './terminal/words.ts'

const LINE = 6
const whole = (cents: number): string => figure(cents / 100)

/** Below and above the price, in dollars. */
const moves = (u: UncertainOut): string => [whole(u.downCents) !== '0' && `$${whole(u.downCents)} less`, whole(u.upCents) !== '0' && `$${whole(u.upCents)} more`].filter(Boolean).join(' or ')

export function terminalRanges(r: RangesOut | undefined, look: Look): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text))
  on.section('range', 'by the survey')
  if (!r) { on.row({ text: 'Nothing may start in this house: no price, and no range.' }); return on.text() }
  const spread = (low: number, high: number, expected: number, of: (x: number) => string): string => low === high ? `${of(expected)}: nothing uncertain in the survey moves it` : `${of(low)} to ${of(high)}, expect ${of(expected)}`
  on.row({ word: 'price', text: `$${spread(r.totalCentsLow, r.totalCentsHigh, r.totalCentsExpected, whole)}` })
  on.row({ word: 'hours', text: spread(r.personHoursLow, r.personHoursHigh, r.personHoursExpected, x => figure(x, 1)) })
  if (r.uncertain.length > 0) {
    const again = r.measureAgain.map(path => r.uncertain.find(u => u.path === path)!)
    if (again.length > 0) on.section('measure again', 'narrows by $  line')
    again.forEach((u, i) => on.row({ mark: String(i + 1), text: clean(`${u.where}: ${u.stands}. By itself ${moves(u)}; ${u.better}.`), right: `${whole(u.narrowsCents)}${String(u.line).padStart(LINE, NB)}` }))
    const rest = r.uncertain.length - again.length
    if (rest > 0) on.row({ text: `${counted(rest, 'other figure')} of the survey ${rest === 1 ? 'is' : 'are'} uncertain and ${rest === 1 ? 'moves' : 'move'} it less.` })
  }
  if (r.outside.length > 0) {
    on.section('not in the range', 'line')
    for (const o of r.outside) on.row({ text: clean(`${o.where} ${o.says}: ${o.why}`), right: String(o.line) })
  }
  on.gap()
  on.row({ text: clean(r.method) })
  return on.text()
}

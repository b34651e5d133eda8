// Estimates against their records: on a terminal, and as JUnit XML for those who collect test results.
import type { Difference } from '../estimate/told/compare.ts'
import { printable } from '../findings/printable.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { padLeft, sheet } from './terminal/sheet.ts'

/** `same` and `differs` were compared; `recorded` was written now; `not-recorded` has no record that can be read as one; `faulty` is a job without an estimate; `unread` could not be read. */
export type VerifyState = 'same' | 'differs' | 'recorded' | 'not-recorded' | 'faulty' | 'unread'
export interface Verified { readonly file: string; readonly record: string; readonly state: VerifyState; readonly why?: string; readonly differences: readonly Difference[]; readonly within: number }

const FIGURE = 12
const signed = (n: number): string => (n > 0 ? `+${n}` : String(n))
/** A value as one line: text as it stands, an entry by its names and values, all else as JSON. */
const told = (value: unknown): string => {
  if (value === undefined) return 'nothing'
  if (typeof value === 'string') return value
  const entries = typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.entries(value) : []
  return entries.length > 0 && entries.every(([, v]) => typeof v !== 'object') ? entries.map(([k, v]) => `${k} ${String(v)}`).join(', ') : JSON.stringify(value)
}

/** One figure in one line: `price.totalCents: recorded 697000, now 698500 (+1500)`. */
export const differenceLine = ({ path, recorded, now, difference }: Difference): string =>
  printable(`${path}: recorded ${told(recorded)}, now ${told(now)}${difference === undefined ? '' : ` (${signed(difference)})`}`)

const counted = (n: number): string => `${n} ${n === 1 ? 'figure differs' : 'figures differ'}`
/** What is to be said of one file. */
export const verifyTitle = ({ file, record, state, why, differences }: Verified): string =>
  state === 'same' ? `${file}: as recorded` : state === 'recorded' ? `${file}: ${differences.length === 0 ? 'recorded' : `${counted(differences.length)} from before`}; wrote ${record}` : state === 'differs' ? `${file}: ${counted(differences.length)} from ${record}` : `${file}: ${why ?? state}`

/** The figures of one file that differ, each with what was recorded, what it is now, and the difference. */
export function terminalVerified(v: Verified, look: Look): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text))
  on.row({ at: 1, text: clean(verifyTitle(v)), boldText: true })
  if (v.differences.some(d => d.difference !== undefined)) on.row({ at: 3, right: ['recorded', 'now', 'difference'].map(t => padLeft(t, FIGURE)).join('') })
  for (const { path, recorded, now, difference } of v.differences) {
    if (difference !== undefined) { on.row({ at: 3, text: clean(path), right: [recorded, now, signed(difference)].map(t => padLeft(String(t), FIGURE)).join('') }); continue }
    on.row({ at: 3, text: clean(path) })
    on.row({ word: 'recorded', text: clean(told(recorded)) })
    on.row({ word: 'now', text: clean(told(now)) })
  }
  return on.text()
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
/** Text of an XML file: what XML may not hold at all is written out before. */
const xml = (text: string): string => text.split('\n').map(printable).join('\n').replace(/[&<>"]/g, c => ENTITIES[c]!).replace(/[\ufffe\uffff]/g, c => `\\u${c.charCodeAt(0).toString(16)}`)

/** One test case for each job file. */
export function junitVerified(all: readonly Verified[]): string {
  const failures = all.filter(v => v.state === 'differs' || v.state === 'not-recorded').length, errors = all.filter(v => v.state === 'faulty' || v.state === 'unread').length
  const counts = `tests="${all.length}" failures="${failures}" errors="${errors}"`
  const cases = all.map(v => {
    const head = `    <testcase classname="lidwork.verify" name="${xml(v.file)}"`
    if (v.state === 'same' || v.state === 'recorded') return `${head}/>\n`
    const what = v.state === 'faulty' || v.state === 'unread' ? 'error' : 'failure'
    return `${head}>\n      <${what} type="${v.state}" message="${xml(verifyTitle(v))}">${xml(v.differences.map(differenceLine).join('\n'))}</${what}>\n    </testcase>\n`
  })
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="lidwork verify" ${counts}>\n  <testsuite name="lidwork verify" ${counts}>\n${cases.join('')}  </testsuite>\n</testsuites>\n`
}

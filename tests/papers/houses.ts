// Houses as papers get them, and texts that mean harm.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { openJob } from '../../src/cli/jobs.ts'
import { options } from '../../src/estimate/quotes/options.ts'
import { estimateJson } from '../../src/estimate/to-json.ts'
import type { House } from '../../src/papers/html/page.ts'

const examples = fileURLToPath(new URL('../../examples/', import.meta.url))
export const exampleNames = readdirSync(examples).filter(f => f.endsWith('.job.yaml')).map(f => f.replace('.job.yaml', ''))
export const exampleText = (name: string): string => readFileSync(`${examples}${name}.job.yaml`, 'utf8')
/** The hard house. */
export const HARD = 'juniper-run-27'

/** A job file as papers get it. */
export function houseOf(text: string, file = 'a.job.yaml'): House {
  const opened = openJob(Buffer.from(text), file)
  if (!opened.sound) throw new Error(`${file} is not sound: ${opened.findings.map(f => f.code).join(', ')}`)
  return { job: opened.job.data, estimate: estimateJson(opened.estimate, opened.job), company: opened.books.companyFile, prices: opened.books.prices, options: options(opened.job, opened.estimate, opened.estimate.books) }
}

export const HOSTILE = [
  '<script>document.title = "taken"</script>', '"><img src=x onerror=alert(1)>', "' onmouseover='alert(1)", '</style></title><script>alert(2)</script>', '<!-- <svg onload=alert(3)>', '&lt;b&gt; &amp; &#60;',
  'right to left \u202etxt.exe\u202c \u200fand \u05e9\u05dc\u05d5\u05dd', '\u0007\u001b[31mred\u0000', '\u{1f3da}\ufe0f\u{1f469}\u{1f3fd}\u200d\u{1f527}', '=cmd()|\' /C calc\'!A0', '${7 * 7} {{7 * 7}} url(javascript:alert(4))', 'x'.repeat(10_000),
]

/** Names by which the parts of a house find each other, words of the program, days: everything else is text. */
const NAMES = new Set(['unit', 'reads', 'id', 'kind', 'code', 'state', 'phase', 'phases', 'places', 'role', 'format', 'verdict', 'status', 'path', 'areas', 'area', 'in', 'of', 'after', 'task', 'tasks', 'gate', 'clears', 'item', 'product', 'fill', 'usedFor', 'clearedByTask', 'stoppedBy', 'on', 'surveyedOn', 'dated', 'use', 'shape', 'charge',
  'codeEdition', 'climateZone', 'climateZoneMap', 'standard', 'step', 'newGates', 'lastThatPays', 'firstThatDoesNot', 'demo', 'severity', 'material', 'condition', 'action', 'facing', 'size', 'webs', 'position', 'board', 'fuel', 'vent'])

/** The same house with every text that a person may write in the place of another: one after the other, or the same everywhere. */
export function withTexts<T>(value: T, next: () => string, key = ''): T {
  if (typeof value === 'string') return (NAMES.has(key) ? value : next()) as T
  if (Array.isArray(value)) return value.map(v => withTexts(v as unknown, next, key)) as T
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, withTexts(v as unknown, next, k)])) as T
  return value
}

// A bracket or a quote that is left out is told on the line where it stood.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { placed } from '../../src/findings/finding.ts'
import { readJob } from '../../src/job/read.ts'

const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
const example = readFileSync(join(import.meta.dirname, '../../examples/sorrel-court-8.job.yaml'), 'utf8')
/** The same with quotes, a key to a line and in braces, each followed by other quotes further down. */
const quoted = `${good.replace(/^job: .*$/m, 'job:\n  id: fern-close-3\n  title: "3 Fern Close, seal and blow"\n  customer: "The Fern Household, invented"\n  surveyedOn: 2026-02-02\n  surveyedBy: A. Pell (invented)\n  status: draft')
  .replace('openings:\n', 'openings:\n  - {kind: ceiling-box, in: main, at: "hall, north end", count: 3}\n  - {kind: ceiling-box, in: main, at: \'hall, south end\', count: 2}\n')}`

/** Without each such sign: the line it stood on, and where the first error is told. */
function leftOut(text: string, signs: RegExp): { readonly line: string; readonly code: string }[] {
  expect(readJob(text, 'a').ok).toBe(true)
  return [...text.matchAll(signs)].flatMap(({ index, 0: sign }) => {
    const start = text.lastIndexOf('\n', index) + 1, line = text.slice(0, index).split('\n').length
    if (text.slice(start, index).includes('#')) return []
    const read = readJob(text.slice(0, index) + text.slice(index + 1), 'a'), first = read.findings.find(f => f.severity === 'error')
    if (read.ok || !first) return [{ line: `${line}:${index - start} ${sign} is read`, code: '' }]
    const told = placed(first, read.places).line
    return [{ line: told === line ? 'its own' : `${line}:${index - start} ${sign} told on line ${told}`, code: first.code }]
  })
}

describe('left out', () => {
  test.each([['the good file', good], ['an example', example], ['with quotes', quoted]])('brackets of %s', (_, text) => {
    const all = leftOut(text, /[[\]{}]/g)
    expect(all.length).toBeGreaterThan(15)
    expect(new Set(all.map(a => a.line))).toEqual(new Set(['its own']))
  })
  test('a closing bracket is named by the one that opens', () => { expect(new Set(leftOut(example, /[\]}]/g).map(a => a.code))).toEqual(new Set(['bracket-not-closed'])) })
  test('an opening one by the one that closes nothing, or by what then stands there', () => {
    expect(new Set(leftOut(example, /\[/g).map(a => a.code)).has('bracket-not-opened')).toBe(true)
  })
  test('quotes that close', () => {
    const all = leftOut(quoted, /(?<=[a-z])["'](?=[,}\n])/g)
    expect(all).toHaveLength(5)
    expect(all.map(a => `${a.line} ${a.code}`)).toEqual(Array.from({ length: 5 }, () => 'its own quote-not-closed'))
  })
  test('quotes that open in braces', () => { expect(new Set(leftOut(quoted, /(?<=at: )["']/g).map(a => a.line))).toEqual(new Set(['its own'])) })
})

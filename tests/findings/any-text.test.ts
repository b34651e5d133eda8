// Whatever the bytes: an answer, findings that stand inside the file, and nothing on the screen that steers it.
import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { placed } from '../../src/findings/finding.ts'
import { renderFinding } from '../../src/findings/render.ts'
import { readJob } from '../../src/job/read.ts'

const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
const settings = { numRuns: 180, seed: 20260303 }

function answers(bytes: Uint8Array | string): void {
  const result = readJob(bytes, 'a.job.yaml')
  const places = result.ok ? result.job.places : result.places
  const lines = result.source.split('\n')
  expect(result.ok).toBe(!result.findings.some(f => f.severity === 'error'))
  for (const f of result.findings) {
    const { line, column } = placed(f, places)
    expect(line).toBeGreaterThanOrEqual(1)
    expect(line).toBeLessThanOrEqual(lines.length)
    expect(column).toBeGreaterThanOrEqual(1)
    expect(column).toBeLessThanOrEqual(lines[line - 1]!.length + 1)
    expect(renderFinding(f, places, result.source, 'a.job.yaml')).toMatch(/^(?:[^\p{Cc}\u202a-\u202e\u2066-\u2069]|[\n\t])*$/u)
    for (const part of [f.code, f.says, f.why, f.mend]) expect(part.trim()).not.toBe('')
  }
}

test('any text', () => { fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), answers), settings) })
test('any bytes', () => { fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), answers), settings) })
test('a good file with a piece cut out, doubled or written over', () => {
  const sign = fc.constantFrom('', ' ', '\n', '\n  ', '\t', ':', ': ', ',', '- ', '-', '{', '}', '[', ']', '"', "'", '#', '~', '|', '>', '*', '&', '!', '%', '@', '`', '?', '0', '.', 'yes', 'null', '\u001b', '\u202e', '\u00bd', '<<: 1')
  fc.assert(fc.property(fc.nat(good.length), fc.nat(30), fc.array(sign, { maxLength: 3 }), fc.boolean(), (at, length, signs, twice) => {
    const piece = good.slice(at, at + length)
    answers(good.slice(0, at) + signs.join('') + (twice ? piece + piece : '') + good.slice(at + length))
  }), { ...settings, numRuns: 1500 })
})

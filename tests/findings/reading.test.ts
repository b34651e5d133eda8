// What a file says is what the program has: bytes, tape notation, names, places.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { placed } from '../../src/findings/finding.ts'
import { findingJson, renderFinding } from '../../src/findings/render.ts'
import { normalize } from '../../src/files/normalize.ts'
import { readJob, type ReadResult } from '../../src/job/read.ts'

const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
const job = (bytes: Uint8Array | string) => {
  const result = readJob(bytes, 'a.job.yaml')
  if (!result.ok) throw new Error(JSON.stringify(result.findings))
  return result.job
}
const placesOf = (result: ReadResult) => (result.ok ? result.job.places : result.places)
const codes = (bytes: Uint8Array | string): string[] => readJob(bytes, 'a.job.yaml').findings.map(f => f.code)
const utf16 = (text: string, bigEndian: boolean): Uint8Array => {
  const bytes = Buffer.from(`\ufeff${text}`, 'utf16le')
  return bigEndian ? bytes.swap16() : bytes
}
const changed = (from: string, to: string): string => {
  if (!good.includes(from)) throw new Error(`the good file has no ${from}`)
  return good.replace(from, to)
}

describe('encodings', () => {
  const expected = job(good).data
  test.each([
    ['UTF-8', Buffer.from(good)],
    ['UTF-8 with a byte order mark', Buffer.from(`\ufeff${good}`)],
    ['UTF-16 as PowerShell writes it', utf16(good, false)],
    ['UTF-16, big end first', utf16(good, true)],
    ['line ends of Windows', Buffer.from(good.replaceAll('\n', '\r\n'))],
    ['line ends of a lone carriage return', Buffer.from(good.replaceAll('\n', '\r'))],
  ])('%s is read', (_, bytes) => { expect(job(bytes).data).toEqual(expected) })
  test('a byte order mark moves no column', () => {
    const at = (text: string) => { const result = readJob(Buffer.from(text), 'a'); return placed(result.findings[0]!, placesOf(result)) }
    expect(at('\ufeffformat: x\n')).toEqual(at('format: x\n'))
  })
  test.each([
    ['a spreadsheet', Buffer.from('PK\u0003\u0004\0\0\0\0'), ['not-text']],
    ['UTF-16 without its mark', utf16(good, false).subarray(2), ['not-text']],
    ['a picture', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 0x4a, 0x46]), ['not-text']],
    ['a program', Buffer.from([0x7f, 0x45, 0x4c, 0x46, 2, 1, 0, 0xb5]), ['not-text']],
    ['a UTF-16 file cut in the middle of a letter', utf16(good, false).subarray(0, 99), ['not-utf-8']],
    ['a file larger than any job', Buffer.alloc(1_000_001, 0x23), ['file-too-large']],
    ['a text no paper has room for', changed('3 Fern Close', 'x'.repeat(10_001)), ['text-too-long']],
    ['brackets without end', '['.repeat(900_000), ['nested-too-deep']],
  ])('%s is refused', (_, bytes, expected) => { expect(codes(bytes)).toEqual(expected) })
  test('the first bad byte is shown where it stands, also behind good letters of several bytes', () => {
    const bytes = Buffer.concat([Buffer.from('# \u00bd \u2014\nformat: '), Buffer.from([0xbd]), Buffer.from(' x\n')])
    const result = readJob(bytes, 'a')
    expect(placed(result.findings[0]!, placesOf(result))).toMatchObject({ line: 2, column: 9 })
  })
})

describe('numbers as the tape reads', () => {
  test('become the numbers of their key', () => {
    const { data, about } = job(good)
    expect(data.openings[0]).toMatchObject({ lengthFt: 112, gapIn: 0.125 })
    expect(data.openings[1]).toMatchObject({ sizeIn: [22.5, 30] })
    expect(data.areas[0]).toMatchObject({ heelIn: 5.5, ceiling: { thicknessIn: 0.5 } })
    expect(data.eaves).toMatchObject([{ lengthFt: 40.5 }])
    expect(about).toEqual(['/openings/0/lengthFt'])
  })
  test('a zone that YAML reads as a number is a name', () => {
    expect(job(good).data.house.climateZone).toBe('6')
    expect(job(changed('climateZone: 6', 'climateZone: 4C')).data.house.climateZone).toBe('4C')
    expect(job(changed('climateZone: 6', 'climateZone: "6"')).data.house.climateZone).toBe('6')
  })
  test('yes and no are words', () => { expect(job(good).data.openings[1]).toMatchObject({ gasket: 'no', latch: 'no' }) })
  test('a key of the file that has the name of a method reads nothing', () => {
    const data = { constructor: '5', toString: '3', lengthFt: ["14'6", '~2'] }
    expect(normalize(data, new Map([['lengthFt', 'feet']]))).toEqual({ about: ['/lengthFt/1'], unread: [] })
    expect(data).toEqual({ constructor: '5', toString: '3', lengthFt: [14.5, 2] })
  })
})

describe('keys', () => {
  test('__proto__ is a key like any other, and changes no object', () => {
    expect(codes(`${good}__proto__: {polluted: yes}\n`)).toEqual(['key-unknown'])
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined()
  })
  test('thousands of keys take no longer each than hundreds', () => {
    const time = (n: number): number => {
      const text = `${good}${Array.from({ length: n }, (_, i) => `k${i}: 1\n`).join('')}`
      return Math.min(...Array.from({ length: 3 }, () => { const began = performance.now(); readJob(text, 'a'); return performance.now() - began })) / n
    }
    time(500)
    expect(time(8000) / time(1000)).toBeLessThan(4) // a quadratic check would be 8
  })
})

describe('places', () => {
  test('every value and key stands where it was typed', () => {
    const { places } = job(good)
    const lines = good.split('\n')
    for (const [path, word] of [['/areas/0/heelIn', '5 1/2'], ['/openings/1/at', '"hall, north end"'], ['/openings/1/sizeIn/0', '22 1/2"'], ['/choices/fill/main', 'demo-loose-cellulose']] as const) {
      const { line, column, length } = places.value(path)!
      expect(lines[line - 1]!.slice(column - 1, column - 1 + length)).toBe(word)
    }
    const key = places.key('/areas/0/roofPitch')!
    expect(lines[key.line - 1]!.slice(key.column - 1, key.column - 1 + key.length)).toBe('roofPitch')
  })
  test('a finding for another program', () => {
    const result = readJob(changed('lengthFt: ~112', 'lengthFt: 12 ft'), 'jobs/a.job.yaml')
    const line = good.split('\n').findIndex(l => l.includes('~112')) + 1
    expect(result.findings.map(f => findingJson(f, placesOf(result), 'jobs/a.job.yaml'))).toEqual([{
      file: 'jobs/a.job.yaml', line, column: good.split('\n')[line - 1]!.indexOf('~112') + 1, severity: 'error', code: 'number-with-unit', path: '/openings/0/lengthFt',
      message: 'lengthFt: 12 ft: the key is in feet already; write 12',
    }])
  })
  test('a tab before the caret is a tab under it', () => {
    const f = { code: 'x', severity: 'error', path: '', says: 'this', why: 'that', mend: 'mend it', span: { line: 1, column: 3, length: 3 } } as const
    expect(renderFinding(f, { value: () => undefined, key: () => undefined }, 'a\tbad\u001b[2J', 'f\u001b')).toBe('f\\u001b:1:3: error x\n  a\tbad\\u001b[2J\n   \t^^^\n  This.\n  That.\n  Mend it.\n\n')
  })
})

// What scripts import, from the package as it is built, by its own name; and the example of README.md, run.
import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import * as source from '../../src/api/index.ts'
import type * as published from '../../schemas/lidwork.d.ts'
import { newPrices } from '../../src/papers/new-books.ts'
import { blocksOf } from '../docs/pages.ts'

// The committed types are those of the source: both ways, by the type checker.
const forth: typeof published = source
const back: Pick<typeof source, keyof typeof published> = source as typeof published
void forth
void back

const root = join(import.meta.dirname, '../..')
const quince = readFileSync(join(root, 'examples/quince-lane-14.job.yaml'), 'utf8')
const dearer = newPrices().replace(/(item: demo-loose-cellulose\n(?:.*\n)*? *price: )[\d.]+/, '$120')
const value = <T>(r: source.Result<T>): T => { if (!r.ok) throw new Error(r.findings[0]!.message); return r.value }

describe('the core', () => {
  test('reads, estimates, re-prices', () => {
    const job = value(source.readJob(quince, 'quince.job.yaml')), from = value(source.readBooks()), to = value(source.readBooks({ prices: dearer }))
    const before = value(source.estimate(job, from)), after = value(source.estimate(job, to))
    expect(before).toEqual(JSON.parse(readFileSync(join(root, 'examples/quince-lane-14.estimate.json'), 'utf8')))
    expect(value(source.reprice(job, { from, to }))).toMatchObject({ format: 'lidwork-reprice-job/1', file: 'quince.job.yaml', oldCents: before.price.totalCents, newCents: after.price.totalCents })
    expect(after.price.totalCents).toBeGreaterThan(before.price.totalCents!)
  })
  test('what is wrong is told as data, with its place', () => {
    expect(source.readJob('format: lidwork-job/1\njob: {id: x}\n')).toMatchObject({ ok: false, findings: expect.arrayContaining([expect.objectContaining({ file: 'job.yaml', severity: 'error', line: expect.any(Number), code: expect.any(String) })]) })
    expect(source.readBooks({ prices: 'a: 1', company: 'b: 2' })).toMatchObject({ ok: false, findings: expect.arrayContaining([expect.objectContaining({ file: 'prices' }), expect.objectContaining({ file: 'company' })]) })
    expect(() => source.reprice(value(source.readJob(`${quince}quote: {sentOn: 2026-03-02}\n`.replace('status: draft', 'status: sent'))), { from: value(source.readBooks()), to: value(source.readBooks()) })).toThrow('day')
  })
  test('a day that is none is refused, not taken for one', () => {
    const job = value(source.readJob(`${quince}quote: {sentOn: 2026-03-02}\n`.replace('status: draft', 'status: sent'))), books = value(source.readBooks())
    for (const on of ['yesterday', '2026-02-31', '2026-13-01', '', '26-04-01', new Date(0) as unknown as string]) expect(() => source.reprice(job, { from: books, to: books, on }), String(on)).toThrow(RangeError)
    expect(value(source.reprice(job, { from: books, to: books, on: '2026-03-02' })).status).toBe('sent')
    expect(new source.DayMissing().name).toBe('DayMissing')
  })
  test('keeps nothing: the same call gives the same, whatever came between', () => {
    const from = value(source.readBooks()), once = JSON.stringify(source.estimate(value(source.readJob(quince)), from))
    source.readJob('nonsense')
    value(source.readBooks({ prices: dearer }))
    expect(JSON.stringify(source.estimate(value(source.readJob(quince)), from))).toBe(once)
  })
})

describe('the package', () => {
  let folder = ''
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'lidwork-api-'))
    mkdirSync(join(folder, 'node_modules'))
    symlinkSync(root, join(folder, 'node_modules', 'lidwork'))
    writeFileSync(join(folder, 'quince.job.yaml'), quince)
    writeFileSync(join(folder, 'new.yaml'), dearer)
  })
  afterAll(() => { rmSync(folder, { recursive: true, force: true }) })
  test('the example of README.md runs, and prints what it says', () => {
    const [code, printed] = blocksOf(readFileSync(join(root, 'README.md'), 'utf8')).filter(b => b.name === 'reprice.mjs' || b.name === 'reprice.txt')
    writeFileSync(join(folder, 'reprice.mjs'), code!.text)
    expect(execFileSync(process.execPath, ['reprice.mjs'], { cwd: folder, encoding: 'utf8' })).toBe(printed!.text)
  })
  test('the schemas can be imported by name', () => {
    expect(execFileSync(process.execPath, ['-p', "require('lidwork/schemas/job.schema.json').$id + ' ' + typeof require('lidwork').readJob"], { cwd: folder, encoding: 'utf8' })).toBe('lidwork-job-1 function\n')
  })
})

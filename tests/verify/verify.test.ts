// Estimates against their records: what differs is named, what was there is never lost, and what programs read is well formed.
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { SaxesParser } from 'saxes'
import { describe, expect, test } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { compare } from '../../src/estimate/told/compare.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { differenceLine, junitVerified, type Verified } from '../../src/papers/verify.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { minusExactly } from '../../src/units/money.ts'
import { lidwork, testIo } from '../cli/test-io.ts'

const JOB = newJob()
const RECORD = (await lidwork('estimate a.job.yaml --json', { files: { 'a.job.yaml': JOB } })).out
const changed = (change: (e: EstimateOut) => void): string => { const e = JSON.parse(RECORD) as EstimateOut; change(e); return `${JSON.stringify(e, undefined, 2)}\n` }
const both = (record: string) => ({ 'a.job.yaml': JOB, 'a.estimate.json': record })
const paths = (recorded: string) => compare(JSON.parse(recorded), JSON.parse(RECORD)).differences

describe('what differs', () => {
  test('nothing, where the record is the estimate; layout of the file is no figure', async () => {
    for (const record of [RECORD, JSON.stringify(JSON.parse(RECORD))]) {
      const ran = await lidwork('verify a.job.yaml', { files: both(record) })
      expect(ran).toMatchObject({ code: 0, out: '', err: '1 file: 1 as recorded\n' })
    }
  })
  test('figures by their paths, with old, new and difference, and 1', async () => {
    const now = JSON.parse(RECORD) as EstimateOut, area = now.areas[0]!
    const ran = await lidwork('verify a.job.yaml', { files: both(changed(e => { e.areas[0]!.bags = area.bags! - 0.63; e.price.totalCents = now.price.totalCents! + 1500 })) })
    expect(ran.code).toBe(1)
    const lines = ran.out.split('\n').map(l => l.trim().split(/ {2,}/))
    expect(lines[0]).toEqual(['a.job.yaml: 2 figures differ from a.estimate.json'])
    expect(lines).toContainEqual([`areas.${area.id}.bags`, String(minusExactly(area.bags!, 0.63)), String(area.bags), '+0.63'])
    expect(lines).toContainEqual(['price.totalCents', String(now.price.totalCents! + 1500), String(now.price.totalCents), '-1500'])
    expect(ran.err).toBe('1 file: 1 not as recorded\n')
    for (const line of ran.out.split('\n')) expect(line.length).toBeLessThanOrEqual(80)
  })
  test('texts, lists of words, and what is there on one side only', () => {
    const out = paths(changed(e => { e.tasks[0]!.title = 'Other'; e.tasks[1]!.cautions = ['Care']; delete e.price.depositCents; e.materials.splice(1, 1); e.gates.push({ ...e.gates[0]!, id: 'made' }) }))
    const now = JSON.parse(RECORD) as EstimateOut
    expect(out).toContainEqual({ path: `tasks.${now.tasks[0]!.id}.title`, recorded: 'Other', now: now.tasks[0]!.title })
    expect(out).toContainEqual({ path: `tasks.${now.tasks[1]!.id}.cautions`, recorded: ['Care'], now: now.tasks[1]!.cautions })
    expect(out).toContainEqual({ path: 'price.depositCents', now: 0 })
    expect(out).toContainEqual({ path: `materials.${now.materials[1]!.item}`, now: now.materials[1] })
    expect(out.find(d => d.path === 'gates.made')).toMatchObject({ recorded: { id: 'made' } })
    expect(out).toHaveLength(5)
  })
  test('another order of the same entries', () => {
    const out = paths(changed(e => { e.sealing.reverse() }))
    expect(out.map(d => d.path)).toEqual(['sealing'])
  })
  test('what is carried, by phase and item, a line each', async () => {
    const now = JSON.parse(RECORD) as EstimateOut, [first, last] = [now.carry[0]!, now.carry.at(-1)!], item = first.items[0]!
    const record = changed(e => { e.carry[0]!.items[0]!.packs += 2; e.carry[0]!.items.push({ ...item, item: 'gone' }); e.carry.pop() })
    expect(paths(record)).toEqual([
      { path: `carry.${first.phase}.items.${item.item}.packs`, recorded: item.packs + 2, now: item.packs, difference: -2 }, { path: `carry.${first.phase}.items.gone`, recorded: { ...item, item: 'gone' } },
      ...last.items.map(i => ({ path: `carry.${last.phase}.items.${i.item}`, now: i })),
    ].sort((a, b) => paths(record).findIndex(d => d.path === a.path) - paths(record).findIndex(d => d.path === b.path)))
    const { out } = await lidwork('verify a.job.yaml', { files: both(record) })
    expect(out).not.toMatch(/[{}[\]]/)
    expect(out.replace(/\s+/g, ' ')).toContain(`recorded item gone, quantity ${item.quantity}, unit ${item.unit}, packs ${item.packs}, buyUnit ${item.buyUnit}, leftover ${String(item.leftover)} now nothing`)
  })
  test('two findings of one code are told apart', () => {
    const twice = { findings: [{ code: 'a', line: 1 }, { code: 'a', line: 2 }] }
    expect(compare(twice, { findings: [{ code: 'a', line: 1 }, { code: 'a', line: 3 }] }).differences).toEqual([{ path: 'findings.a-2.line', recorded: 2, now: 3, difference: 1 }])
  })
  test('any one leaf that is changed is named, and nothing else', () => {
    const leaves: { path: (string | number)[] }[] = []
    const visit = (v: unknown, path: (string | number)[]): void => { if (typeof v === 'object' && v !== null) for (const [k, x] of Object.entries(v)) visit(x, [...path, Array.isArray(v) ? Number(k) : k]); else leaves.push({ path }) }
    visit(JSON.parse(RECORD), [])
    fc.assert(fc.property(fc.constantFrom(...leaves), ({ path }) => {
      const other = JSON.parse(RECORD) as Record<string | number, unknown>, key = path.at(-1)!
      const holder = path.slice(0, -1).reduce((v, k) => v[k] as Record<string | number, unknown>, other)
      holder[key] = typeof holder[key] === 'number' ? holder[key] + 1 : typeof holder[key] === 'boolean' ? !holder[key] : `${String(holder[key])}x`
      const { differences } = compare(JSON.parse(RECORD), other)
      // A new name is an entry gone and an entry come.
      if (['id', 'item', 'task', 'code', 'path', 'chartR', 'phase'].includes(String(key))) expect(differences.length).toBeGreaterThan(0)
      else expect(differences).toHaveLength(1)
    }), { seed: 6, numRuns: 400 })
  })
  test('a difference is exact', () => {
    expect([minusExactly(64.1, 63.47), minusExactly(0.1, 0.3), minusExactly(-0.5, 1e-7), minusExactly(1e21, 1)]).toEqual([0.63, -0.2, -0.5000001, 999999999999999999999])
  })
})

describe('a tolerance', () => {
  const record = changed(e => { e.price.totalCents! += 100; e.labor.personHours += 1 })
  test.each([
    ['', 2], ['--tolerance Cents=100', 1], ['--tolerance Cents=99', 2], ['--tolerance Cents=100 --tolerance Hours=1', 0], ['--tolerance 50%', 0], ['--tolerance totalCents=0.0001%', 2], ['--tolerance personHours=50%', 1],
  ])('%s leaves %i', async (options, left) => {
    const ran = await lidwork(`verify a.job.yaml --json ${options}`, { files: both(record) })
    const { results } = JSON.parse(ran.out) as { results: Verified[] }
    expect(results[0]!.differences).toHaveLength(left)
    expect(results[0]!.within).toBe(2 - left)
    expect(ran.code).toBe(left === 0 ? 0 : 1)
  })
  test('is no tolerance for texts', () => { expect(compare({ a: 'x' }, { a: 'y' }, [{ pct: 100 }]).differences).toHaveLength(1) })
  test.each(['5', 'Cents', 'Cents=', '-1%', 'a b=1', '1e3%'])('%s is refused', async text => {
    const ran = await lidwork(['verify', 'a.job.yaml', `--tolerance=${text}`], { files: both(RECORD) })
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toContain('Cents=100')
  })
})

describe('what stands in the way', () => {
  test.each([
    ['no record', undefined, 'a.job.yaml: there is no a.estimate.json; --record writes it'],
    ['a record that is not JSON', '{"format": ', 'a.job.yaml: a.estimate.json is not JSON; --record writes it anew'],
    ['a record of something else', '{"format": "lidwork-check/1"}', 'a.job.yaml: a.estimate.json is no lidwork-estimate/1; --record writes it anew'],
    ['a record that is a list', 'null', 'a.job.yaml: a.estimate.json is no lidwork-estimate/1; --record writes it anew'],
  ])('%s: 1', async (_, record, said) => {
    const ran = await lidwork('verify a.job.yaml', { files: record === undefined ? { 'a.job.yaml': JOB } : both(record) })
    expect([ran.code, ran.out.replace(/\n(?=.)/g, ' ')]).toEqual([1, `${said}\n`])
  })
  test('a job with errors is told as check tells it, and the others are still done', async () => {
    const ran = await lidwork('verify .', { files: { ...both(RECORD), 'b.job.yaml': JOB.replace('\nhouse:', '\nhuose:') } })
    expect(ran.code).toBe(1)
    expect(ran.err).toContain('error key-unknown')
    expect(ran.err).toMatch(/2 files: 1 as recorded, 1 without an estimate\n$/)
  })
  test('a record that may not be read: 3', async () => {
    const ran = await lidwork('verify a.job.yaml', { files: { 'a.job.yaml': JOB, 'a.estimate.json': null } })
    expect([ran.code, ran.err]).toEqual([3, 'lidwork: could not read a.estimate.json: no permission\n1 file: 1 not read\n'])
  })
  test('- has no record beside it: 2', async () => { expect((await lidwork('verify -', { stdin: JOB })).code).toBe(2) })
  test('books named in the job and by options count as in estimate', async () => {
    const ran = await lidwork('verify a.job.yaml --company c.yaml', { files: { ...both(RECORD), 'c.yaml': (await lidwork('company new')).out.replace(/^wage: 48/m, 'wage: 50') } })
    expect(ran.code).toBe(1)
    expect(ran.out).toContain('labor.wageCents')
  })
})

describe('--record', () => {
  test('writes beside the job what estimate --json prints, and then it is as recorded', async () => {
    const made = await lidwork('verify jobs --record', { files: { 'jobs/a.job.yaml': JOB, 'jobs/b.yaml': JOB } })
    expect([made.code, made.err]).toEqual([0, '1 file: 1 recorded\n'])
    expect(made.files['jobs/a.estimate.json']).toBe(RECORD)
    expect((await lidwork('verify jobs', { files: made.files })).code).toBe(0)
    expect((await lidwork('verify jobs --record', { files: made.files })).err).toBe('1 file: 1 as recorded\n')
    expect((await lidwork('verify jobs/b.yaml --record', { files: made.files })).files['jobs/b.estimate.json']).toBe(RECORD)
  })
  test('tells what changed', async () => {
    const ran = await lidwork('verify a.job.yaml --record', { files: both(changed(e => { e.price.totalCents! += 5 })) })
    expect([ran.code, ran.files['a.estimate.json']]).toEqual([0, RECORD])
    expect(ran.out).toContain('price.totalCents')
  })
  test('a disk that is full: what was there is kept, and 3', async () => {
    const io = testIo({ files: both(changed(e => { e.price.totalCents! += 5 })) })
    const code = await main(['verify', 'a.job.yaml', '--record'], { ...io, writeFile: () => ({ failure: 'other', message: 'the disk is full' }) })
    expect([code, io.ended().err]).toEqual([3, 'lidwork: could not write a.estimate.json: the disk is full; what was there is kept\n1 file: 1 not read\n'])
  })
  test('ended in the middle by kill -9: each record is whole, old or new', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lidwork-verify-')), bin = fileURLToPath(new URL('../../bin/lidwork.cjs', import.meta.url))
    try {
      mkdirSync(join(folder, 'jobs'))
      const names = Array.from({ length: 60 }, (_, i) => `house-${String(i).padStart(2, '0')}`), old = changed(e => { e.price.totalCents! += 5 })
      const reset = (): void => { for (const n of names) { writeFileSync(join(folder, 'jobs', `${n}.job.yaml`), JOB); writeFileSync(join(folder, 'jobs', `${n}.estimate.json`), old) } }
      let partly = 0
      for (const after of [1, 7, 20, 41]) {
        reset()
        const child = spawn(process.execPath, [bin, 'verify', 'jobs', '--record'], { cwd: folder, stdio: ['ignore', 'pipe', 'ignore'] })
        let told = ''
        child.stdout.on('data', chunk => { told += String(chunk); if (told.split('wrote').length > after) child.kill('SIGKILL') })
        await new Promise(resolve => child.on('close', resolve))
        const records = names.map(n => readFileSync(join(folder, 'jobs', `${n}.estimate.json`), 'utf8'))
        for (const text of records) expect([old, RECORD]).toContain(text)
        const done = records.filter(text => text === RECORD).length
        expect(done).toBeGreaterThanOrEqual(after)
        if (done < names.length) partly++
        expect(readdirSync(join(folder, 'jobs')).filter(f => f.endsWith('.job.yaml'))).toHaveLength(names.length)
      }
      expect(partly).toBeGreaterThan(0)
    } finally { rmSync(folder, { recursive: true, force: true }) }
  })
})

describe('for other programs', () => {
  const wellFormed = (text: string): { readonly names: string[]; readonly cases: Record<string, string>[] } => {
    const names: string[] = [], cases: Record<string, string>[] = []
    const parser = new SaxesParser()
    parser.on('error', e => { throw e })
    parser.on('opentag', t => { names.push(t.name); if (t.name === 'testcase' || t.name === 'failure') cases.push(t.attributes as Record<string, string>) })
    parser.write(text).close()
    return { names, cases }
  }
  test('JUnit: a case for each file, failures with their figures', async () => {
    const files = { ...both(changed(e => { e.price.totalCents! += 5 })), 'b.job.yaml': JOB, 'b.estimate.json': RECORD, 'c.job.yaml': JOB.replace('\nhouse:', '\nhuose:') }
    const ran = await lidwork('verify . --junit', { files })
    const { names, cases } = wellFormed(ran.out)
    expect(names.filter(n => n === 'testcase')).toHaveLength(3)
    expect(names.filter(n => n === 'failure')).toHaveLength(1)
    expect(names.filter(n => n === 'error')).toHaveLength(1)
    expect(cases[0]).toMatchObject({ name: 'a.job.yaml' })
    expect(ran.out).toContain('price.totalCents: recorded ')
    expect(ran.out).toContain('tests="3" failures="1" errors="1"')
  })
  test('JUnit is well formed whatever text is in it, and gives the name back', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 30 }), text => {
      const { cases } = wellFormed(junitVerified([{ file: `a ${text}`, record: text, state: 'differs', differences: [{ path: text, recorded: text, now: [text] }], within: 0 }]))
      if (/^[\x21-\x7e]*$/.test(text)) expect(cases[0]!['name']).toBe(`a ${text}`)
    }), { seed: 6, numRuns: 500 })
    expect(wellFormed(junitVerified([])).names).toEqual(['testsuites', 'testsuite'])
  })
  test('GitHub: one line a figure, none of which text can break', async () => {
    const ran = await lidwork('verify a.job.yaml --github', { files: both(changed(e => { e.price.totalCents! += 5; e.job.title = 'A, B\n::error::x %0A' })) })
    const lines = ran.out.trimEnd().split('\n')
    expect(lines).toHaveLength(2)
    for (const line of lines) expect(line).toMatch(/^::error file=a\.job\.yaml,title=[^:,]+::/)
    expect(ran.out).toContain('%250A')
    const missing = await lidwork('verify a.job.yaml --format github', { files: { 'a.job.yaml': JOB } })
    expect(missing.out).toBe('::error file=a.job.yaml,title=not-recorded::there is no a.estimate.json; --record writes it\n')
  })
  test('JSON is what its schema says', async () => {
    const validate = new Ajv({ strict: true, allowUnionTypes: true }).compile(JSON.parse((await lidwork('schema verify')).out) as object)
    for (const files of [both(RECORD), both(changed(e => { e.price.totalCents! += 5; e.materials.pop() })), { 'a.job.yaml': JOB }]) {
      const out = JSON.parse((await lidwork('verify a.job.yaml gone.job.yaml --json', { files })).out) as { format: string; files: number }
      expect(validate(out), JSON.stringify(validate.errors)).toBe(true)
      expect(out).toMatchObject({ format: 'lidwork-verify/1', files: 2 })
    }
  })
  test('a line holds nothing that steers a terminal', () => { expect(differenceLine({ path: 'a', recorded: '\u001b[2J', now: 1 })).toBe('a: recorded \\u001b[2J, now 1') })
})

// Each faulty close-out beside the text a person reads about it; a blank one of every example; any text at all.
import fc from 'fast-check'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { closeoutSchema } from '../../src/closeout/format.ts'
import type { AsBuiltOut } from '../../src/closeout/output.ts'
import { readCloseout } from '../../src/closeout/read.ts'
import { placed } from '../../src/findings/finding.ts'
import { renderFinding } from '../../src/findings/render.ts'
import { lidwork } from '../cli/test-io.ts'
import { text, WORKED } from './close.ts'

const folder = join(import.meta.dirname, 'bad'), names = readdirSync(folder).filter(f => f.endsWith('.closeout.yaml')).sort()
const told = async (name: string) => lidwork(`closeout ${name} --json`, { files: { 'a.job.yaml': WORKED, 'bad.job.yaml': WORKED.replace('in: main, sizeIn: [22, 30]', 'in: attic, sizeIn: [22, 30]'), [name]: readFileSync(join(folder, name), 'utf8') } })

describe('faulty close-outs', () => {
  test.each(names)('%s', async name => {
    const ran = await told(name), file = join(folder, name.replace('.closeout.yaml', '.txt'))
    // Notes and warnings of a close-out that can be read stand in its output.
    const said = ran.out === '' ? ran.err : (JSON.parse(ran.out) as AsBuiltOut).findings.map(f => `${name}:${f.line}: ${f.severity} ${f.code}\n  ${f.message}\n`).join('')
    expect(said).toBe(readFileSync(file, 'utf8'))
    expect(said).not.toBe('')
    if (ran.out === '') expect(ran.code).toBe(name.startsWith('job-gone') ? 3 : 1)
  })
  test('each text belongs to a file', () => expect(readdirSync(folder).filter(f => f.endsWith('.txt')).sort()).toEqual(names.map(n => n.replace('.closeout.yaml', '.txt'))))
  test('each code that a close-out can raise has a faulty file, or a test of its own', async () => {
    const source = ['read', 'against-job'].map(f => text(`src/closeout/${f}.ts`)).join('\n') + text('src/cli/closeouts.ts')
    const raised = new Set([...source.matchAll(/(?:\b(?:say|named|unsound)\(|code: )'([a-z]+(?:-[a-z]+)+)'/g)].map(m => m[1]!)), shown = names.map(n => readFileSync(join(folder, n.replace('.closeout.yaml', '.txt')), 'utf8')).join('\n')
    expect(raised.size).toBeGreaterThan(15)
    const elsewhere = ['area-gets-no-fill', 'area-has-no-markers', 'ceiling-over-limit', 'job-not-signed']
    expect([...raised].filter(code => !shown.includes(` ${code}\n`) && !elsewhere.includes(code))).toEqual([])
  })
  test('an area that gets no fill, one without markers, a ceiling over its limit, a job that is not signed', async () => {
    const codes = async (body: string, job: string): Promise<string> => { const r = await lidwork('closeout c.closeout.yaml --json', { files: { 'j.job.yaml': job, 'c.closeout.yaml': `format: lidwork-closeout/1\njob: j.job.yaml\n${body}\n` } }); return r.out + r.err }
    const laurel = text('examples/laurel-fork-7.job.yaml')
    expect(await codes('areas: [{in: slope-bath, bags: 3}]', laurel)).toContain('error area-gets-no-fill')
    expect(await codes('areas: [{in: slope-east, bags: 3, markersIn: [4]}]', laurel)).toContain('error area-has-no-markers')
    expect(await codes('areas: [{in: main, bags: 130, markersIn: [22, 22, 22, 22, 22]}]', WORKED)).toContain('"ceiling-over-limit"')
    expect(await codes('flags: 0', WORKED.replace('status: signed', 'status: sent'))).toContain('"job-not-signed"')
  })
})

describe('closeout new', () => {
  const jobs = readdirSync(join(import.meta.dirname, '../../examples')).filter(f => f.endsWith('.job.yaml'))
  test.each(jobs)('of %s asks for every area, task, material, mend and flame, and can be closed as it is', async name => {
    const files = { [`jobs/${name}`]: text(`examples/${name}`) }, estimate = JSON.parse((await lidwork(`estimate jobs/${name} --json`, { files })).out) as { tasks: { id: string; personHours: number }[]; verdict: string; materials: { item: string }[]; areas: { id: string; product?: string }[]; gates: { id: string; state: string; open: boolean; clearedByTask?: string }[] }
    const made = await lidwork(`closeout new jobs/${name}`, { files }), file = `jobs/${name.replace('.job.yaml', '.closeout.yaml')}`
    if (estimate.verdict === 'stop') { expect([made.code, made.files[file]]).toEqual([1, undefined]); return }
    expect([made.code, made.files['jobs/lidwork-closeout.schema.json']]).toEqual([0, (await lidwork('schema closeout')).out])
    const data = parse(made.files[file]!) as Record<string, readonly Record<string, string>[]>
    expect(data['job']).toBe(name)
    expect((data['hours'] ?? []).map(h => h['task'])).toEqual(estimate.tasks.filter(t => t.personHours > 0).map(t => t.id))
    expect((data['areas'] ?? []).map(a => a['in'])).toEqual(estimate.areas.filter(a => a.product !== undefined).map(a => a.id))
    expect((data['mends'] ?? []).map(m => m['gate'])).toEqual(estimate.gates.filter(g => g.open && g.state === 'mend' && g.clearedByTask !== undefined).map(g => g.id))
    const closed = await lidwork(`closeout ${file} --json`, { files: made.files as Record<string, string> })
    expect([closed.code, closed.err]).toEqual([0, ''])
    const out = JSON.parse(closed.out) as AsBuiltOut
    expect(out.state).not.toBe('proved')
    // No draft test proves an open fire, whatever is filled in.
    expect(out.findings.filter(f => !['job-not-signed', 'fire-not-testable'].includes(f.code)).map(f => f.code)).toEqual(['not-filled-in'])
  })
  test('keeps what is there, prints to -, and goes by the folder it stands in', async () => {
    const files = { 'jobs/a.job.yaml': WORKED }
    expect((await lidwork('closeout new jobs/a.job.yaml', { files: { ...files, 'jobs/a.closeout.yaml': 'mine' } })).code).toBe(3)
    const other = await lidwork('closeout new jobs/a.job.yaml done/b.closeout.yaml', { files: { ...files, 'done/x': '' } })
    expect(other.files['done/b.closeout.yaml']).toContain('\njob: "../jobs/a.job.yaml"\n')
    expect((await lidwork('closeout done/b.closeout.yaml', { files: other.files as Record<string, string> })).code).toBe(0)
    expect((await lidwork('closeout new jobs/a.job.yaml -', { files })).out).toContain('format: lidwork-closeout/1')
  })
})

test('README.md names every key of a close-out, and no other', () => {
  const section = text('README.md').split('## The close-out\n')[1]!.split('\n**Proof.**')[0]!
  const told = new Set([...section.matchAll(/`([a-zA-Z0-9]+)`/g)].map(m => m[1]!))
  interface Node { readonly properties?: Readonly<Record<string, Node>>; readonly items?: Node }
  const keys = (n: Node): string[] => [...Object.entries(n.properties ?? {}).flatMap(([k, v]) => [k, ...keys(v)]), ...(n.items ? keys(n.items) : [])]
  const all = new Set(keys(closeoutSchema() as unknown as Node))
  expect([...all].filter(k => !told.has(k))).toEqual([])
  expect([...told].filter(k => !all.has(k) && k !== 'format' && k !== '___')).toEqual([])
})

test('any text, and a good close-out with a piece cut out or doubled', () => {
  const good = text('examples/quince-lane-14.closeout.yaml')
  const answers = (source: string): void => {
    const read = readCloseout(source)
    expect(read.ok).toBe(!read.findings.some(f => f.severity === 'error'))
    for (const f of read.findings) {
      const { line, column } = placed(f, read.places)
      expect(line).toBeLessThanOrEqual(read.source.split('\n').length)
      expect(column).toBeGreaterThanOrEqual(1)
      expect(renderFinding(f, read.places, read.source, 'a')).toMatch(/^(?:[^\p{Cc}\u202a-\u202e\u2066-\u2069]|[\n\t])*$/u)
    }
  }
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), answers), { numRuns: 100, seed: 20260506 })
  fc.assert(fc.property(fc.nat(good.length), fc.nat(30), fc.constantFrom('', '___', '\n', ': ', '[', '}', '~', '-1', '\u202e'), fc.boolean(), (at, length, sign, twice) => { const piece = good.slice(at, at + length); answers(good.slice(0, at) + sign + (twice ? piece + piece : '') + good.slice(at + length)) }), { numRuns: 400, seed: 20260506 })
})

test('the terminal holds its width, and nothing in a file steers it', async () => {
  const steer = JSON.stringify('\u001b[2Jgone\u202e \u0007bell')
  const files = { 'a.job.yaml': WORKED, 'a.closeout.yaml': `format: lidwork-closeout/1\njob: a.job.yaml\ninstaller: {name: ${steer}, company: ${steer}}\nareas: [{in: main, maker: ${steer}, bags: 60, markersIn: [16, 12, 16, 16, 16]}]\ncombustion: [{of: heater, by: ${steer}, on: 2026-04-04, result: fail}]\ndays: [2026-04-04]\n` }
  for (const width of [60, 80, 100, 140]) for (const more of ['', '--ascii']) {
    const { out } = await lidwork(`closeout a.closeout.yaml --width ${width} ${more}`.trim(), { files })
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(Math.min(width, 100))
    expect(out).toMatch(more === '' ? /^(?:[^\p{Cc}\u202a-\u202e\u2066-\u2069]|\n)*$/u : /^[\x20-\x7e\n]*$/)
  }
})

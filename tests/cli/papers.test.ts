// The command that writes papers: what it writes and where, and what it refuses.
import { existsSync, lstatSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { nodeIo } from '../../src/cli/io.ts'
import { text } from '../structure/source.ts'
import { lidwork } from './test-io.ts'

const job = text('examples/quince-lane-14.job.yaml'), stopped = text('examples/willow-ferry-11.job.yaml')
const written = (files: Record<string, string | null>): string[] => Object.keys(files).filter(f => f.startsWith('out/')).sort()

describe('lidwork papers', () => {
  test('writes each paper of a house into the folder, and says which', async () => {
    const { code, out, err, files } = await lidwork('papers a.job.yaml --out out/', { files: { 'a.job.yaml': job } })
    expect([code, err]).toEqual([0, ''])
    expect(out.trimEnd().split('\n').sort()).toEqual(written(files))
    expect(written(files)).toContain('out/quince-lane-14.proposal.html')
  })
  test('of a stopped house the deferral, and no proposal', async () => {
    const { files } = await lidwork('papers a.job.yaml --out out', { files: { 'a.job.yaml': stopped } })
    expect(written(files)).toContain('out/willow-ferry-11.deferral.html')
    expect(written(files).some(f => /proposal|work-order|supplier/.test(f))).toBe(false)
  })
  test('only those that are asked for, wherever the option stands', async () => {
    for (const line of ['papers --only proposal a.job.yaml --out out', 'papers a.job.yaml --only proposal,deferral --out out']) expect(written((await lidwork(line, { files: { 'a.job.yaml': job } })).files)).toEqual(['out/quince-lane-14.proposal.html'])
    const { err, code } = await lidwork('papers a.job.yaml --only deferral --out out', { files: { 'a.job.yaml': job } })
    expect([code, err]).toEqual([0, 'lidwork: quince-lane-14 has no deferral: the house is not stopped\n'])
  })
  test('a name of no paper is said, with the one that was meant', async () => {
    const { code, err, files } = await lidwork('papers a.job.yaml --only propsal --out out', { files: { 'a.job.yaml': job } })
    expect(code).toBe(2)
    expect(err).toMatch(/^lidwork: there is no paper propsal; did you mean proposal\? The papers: proposal, /)
    expect(written(files)).toEqual([])
    expect((await lidwork('papers a.job.yaml --only zzzzz --out out', { files: { 'a.job.yaml': job } })).err).toMatch(/^lidwork: there is no paper zzzzz\. The papers: proposal, /)
  })
  test('without --out nothing is done', async () => {
    const { code, err } = await lidwork('papers a.job.yaml', { files: { 'a.job.yaml': job } })
    expect(code).toBe(2)
    expect(err).toContain("required option '--out <dir>' not specified")
  })
  test('a faulty file and one that is not there stop no other', async () => {
    const { code, err, files } = await lidwork('papers bad.job.yaml none.job.yaml a.job.yaml --out out', { files: { 'a.job.yaml': job, 'bad.job.yaml': job.replace('areas:', 'aeras:') } })
    expect(code).toBe(3)
    expect(err).toContain('could not read none.job.yaml')
    expect(err).toContain('bad.job.yaml:')
    expect(written(files)).toContain('out/quince-lane-14.proposal.html')
  })
  test('two jobs of one id: the second writes nothing and is named', async () => {
    const { code, err, files } = await lidwork('papers a.job.yaml b.job.yaml --out out --only proposal', { files: { 'a.job.yaml': job, 'b.job.yaml': job.replace(/title: .*/, 'title: Another house') } })
    expect(code).toBe(1)
    expect(err).toContain('b.job.yaml has the job id quince-lane-14, as a.job.yaml has')
    expect(files['out/quince-lane-14.proposal.html']).not.toContain('Another house')
  })
  test('an id that is a path never comes so far', async () => {
    const { code, err, files } = await lidwork('papers a.job.yaml --out out', { files: { 'a.job.yaml': job.replace('id: quince-lane-14', 'id: ../../quince') } })
    expect(code).toBe(1)
    expect(err).toContain('../../quince')
    expect(Object.keys(files)).toEqual(['a.job.yaml'])
  })
  test('what is there already is replaced whole', async () => {
    const { files } = await lidwork('papers a.job.yaml --out out --only proposal', { files: { 'a.job.yaml': job, 'out/quince-lane-14.proposal.html': 'x'.repeat(1e6) } })
    expect(files['out/quince-lane-14.proposal.html']).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/)
  })
  test('a file that can’t be written is said', async () => {
    const { code, err } = await lidwork('papers a.job.yaml --out out --only proposal', { files: { 'a.job.yaml': job, 'out/quince-lane-14.proposal.html': null } })
    expect([code, err]).toEqual([3, 'lidwork: could not write quince-lane-14.proposal.html into out: no permission\n'])
  })
  test('reads a job from a pipe', async () => {
    const { code, files } = await lidwork('papers - --out out --only proposal', { stdin: job })
    expect([code, written(files)]).toEqual([0, ['out/quince-lane-14.proposal.html']])
  })
  test('the text of papers is in a bundle of its own, which an estimate never reads', () => {
    for (const bundle of ['dist/lidwork.cjs', 'dist/work.cjs']) expect(text(bundle)).not.toContain('<!doctype html>')
    expect(text('dist/papers.cjs')).toContain('<!doctype html>')
  })
})

describe('on a disk', () => {
  const top = mkdtempSync(join(tmpdir(), 'lidwork-out-')), io = nodeIo()
  afterAll(() => { rmSync(top, { recursive: true, force: true }) })
  test('folders are made, a file is replaced, and nothing is left beside it', () => {
    const folder = join(top, 'a', 'b')
    expect(io.makeFolder(folder)).toBeUndefined()
    expect(io.makeFolder(folder)).toBeUndefined()
    for (const body of ['one', 'two']) expect(io.writeInto(folder, 'x.html', body)).toBeUndefined()
    expect([readdirSync(folder), readFileSync(join(folder, 'x.html'), 'utf8')]).toEqual([['x.html'], 'two'])
  })
  test('a link of that name is replaced, and what it led to stays', () => {
    const folder = join(top, 'links')
    mkdirSync(folder)
    writeFileSync(join(top, 'outside.txt'), 'kept')
    symlinkSync(join(top, 'outside.txt'), join(folder, 'x.html'))
    expect(io.writeInto(folder, 'x.html', 'new')).toBeUndefined()
    expect([readFileSync(join(top, 'outside.txt'), 'utf8'), lstatSync(join(folder, 'x.html')).isSymbolicLink()]).toEqual(['kept', false])
  })
  test.each(['../x.html', 'a/x.html', '/x.html', '..', 'C:\\x.html', '', '.x', 'A.html'])('the name %j is refused', name => {
    expect(io.writeInto(top, name, 'new')).toMatchObject({ failure: 'other' })
    expect(existsSync(join(top, '..', 'x.html'))).toBe(false)
  })
  test('a folder of that name is said, and a file where the folder should be', () => {
    mkdirSync(join(top, 'full', 'x.html'), { recursive: true })
    expect(io.writeInto(join(top, 'full'), 'x.html', 'new')).toMatchObject({ failure: 'directory' })
    writeFileSync(join(top, 'file'), '')
    expect(io.makeFolder(join(top, 'file'))).toMatchObject({ failure: 'exists' })
  })
})

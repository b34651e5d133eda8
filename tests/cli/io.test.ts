// The real files: what no test in memory can show.
import { execFileSync } from 'node:child_process'
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { failed, nodeIo } from '../../src/cli/io.ts'

let folder = ''
const at = (...parts: string[]) => join(folder, ...parts)
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'lidwork-io-')) })
afterEach(() => { rmSync(folder, { recursive: true, force: true }) })
const io = nodeIo()

describe('reading', () => {
  test('bytes come as they are', () => {
    writeFileSync(at('a'), Buffer.from([0xff, 0x00, 0x61]))
    const read = io.readFile(at('a'))
    expect(failed(read) ? read : [...read.bytes]).toEqual([0xff, 0x00, 0x61])
  })
  test.each([
    ['missing', () => at('none.job.yaml'), 'there is no such file'],
    ['missing', () => { writeFileSync(at('plain'), ''); return at('plain', 'b') }, 'there is no such folder'],
    ['directory', () => folder, 'it is a folder'],
  ])('%s', (failure, path, message) => {
    expect(io.readFile(path())).toEqual({ failure, message })
  })
  test.runIf(process.getuid?.() !== 0)('unreadable', () => {
    writeFileSync(at('locked'), 'x')
    chmodSync(at('locked'), 0)
    expect(io.readFile(at('locked'))).toEqual({ failure: 'unreadable', message: 'no permission' })
  })
  test('links in a circle', () => {
    symlinkSync(at('b'), at('a'))
    symlinkSync(at('a'), at('b'))
    expect(io.readFile(at('a'))).toEqual({ failure: 'other', message: 'its links go round in a circle' })
  })
})

describe('writing', () => {
  test('a new file, whole, with nothing left beside it', () => {
    expect(io.writeFile(at('new'), 'text\n')).toBeUndefined()
    expect(readFileSync(at('new'), 'utf8')).toBe('text\n')
    expect(readdirSync(folder)).toEqual(['new'])
  })
  test('keeps what is there, unless forced', () => {
    writeFileSync(at('kept'), 'mine')
    expect(io.writeFile(at('kept'), 'other')).toEqual({ failure: 'exists', message: 'it is there already' })
    expect(readFileSync(at('kept'), 'utf8')).toBe('mine')
    expect(io.writeFile(at('kept'), 'other', { force: true })).toBeUndefined()
    expect(readFileSync(at('kept'), 'utf8')).toBe('other')
    expect(readdirSync(folder)).toEqual(['kept'])
  })
  test('keeps permissions and links when it writes over a file', () => {
    writeFileSync(at('real'), 'old', { mode: 0o600 })
    symlinkSync(at('real'), at('link'))
    io.writeFile(at('link'), 'new', { force: true })
    expect(readFileSync(at('real'), 'utf8')).toBe('new')
    expect(statSync(at('real')).mode & 0o777).toBe(0o600)
    expect(readdirSync(folder).sort()).toEqual(['link', 'real'])
  })
  test('says why it could not', () => {
    expect(io.writeFile(at('no', 'such'), 'x')).toEqual({ failure: 'missing', message: 'there is no such folder' })
    expect(io.writeFile(folder, 'x', { force: true })).toEqual({ failure: 'directory', message: 'it is a folder' })
    expect(readdirSync(folder)).toEqual([])
  })
  test.runIf(process.platform !== 'win32')('a pipe or device is not put aside, by itself or through a link', () => {
    execFileSync('mkfifo', [at('pipe')])
    symlinkSync(at('pipe'), at('link'))
    for (const name of ['pipe', 'link']) expect(io.writeFile(at(name), 'x', { force: true })).toEqual({ failure: 'other', message: 'it is a device or a pipe, and only a file is written over' })
    expect(statSync(at('pipe')).isFIFO()).toBe(true)
    expect(readdirSync(folder).sort()).toEqual(['link', 'pipe'])
  })
})

describe('searching', () => {
  test('finds job files below, in order, and enters no folder twice', () => {
    mkdirSync(at('b', 'deep'), { recursive: true })
    mkdirSync(at('node_modules'))
    mkdirSync(at('.hidden'))
    for (const f of ['z.job.yaml', 'a.job.yaml', 'notes.yaml', 'b/deep/c.job.yaml', 'node_modules/n.job.yaml', '.hidden/h.job.yaml']) writeFileSync(at(f), '')
    symlinkSync(folder, at('b', 'back-to-the-top'))
    symlinkSync(at('gone'), at('b', 'dangling'))
    expect(io.filesBelow(folder, '.job.yaml')).toEqual({ files: ['a.job.yaml', 'b/deep/c.job.yaml', 'z.job.yaml'].map(f => `${folder}/${f}`), unread: [] })
  })
  test('names a folder that cannot be read', () => {
    const { files, unread } = io.filesBelow(at('none'), '.job.yaml')
    expect(files).toEqual([])
    expect(unread.map(u => [u.folder, u.why.failure])).toEqual([[at('none'), 'missing']])
  })
})

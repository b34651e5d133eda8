// The built program on real files: threads, links, pipes and disks. Needs dist/ (npm test builds it first).
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, openSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { readSteady } from '../../src/cli/io.ts'
import { newPrices } from '../../src/papers/new-books.ts'

const root = join(import.meta.dirname, '../..'), bin = join(root, 'bin', 'lidwork.cjs')
let folder = ''
const at = (...parts: string[]): string => join(folder, ...parts)
const line = (...more: string[]): string[] => [bin, 'reprice', 'jobs', '--from', 'old.yaml', '--to', 'new.yaml', ...more]
const run = (...more: string[]) => spawnSync(process.execPath, line(...more), { cwd: folder, encoding: 'utf8', maxBuffer: 1e8, env: { ...process.env, XDG_CACHE_HOME: at('cache') } })

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lidwork-reprice-'))
  const prices = newPrices(), examples = readdirSync(join(root, 'examples')).filter(f => f.endsWith('.job.yaml')).map(f => readFileSync(join(root, 'examples', f), 'utf8'))
  writeFileSync(at('old.yaml'), prices)
  writeFileSync(at('new.yaml'), prices.replaceAll(/price: ([\d.]+)/g, (_, p: string) => `price: ${Math.round(Number(p) * 110) / 100}`))
  mkdirSync(at('jobs', 'deep'), { recursive: true })
  for (let n = 0; n < 60; n++) writeFileSync(at('jobs', n % 2 ? 'deep' : '', `${String(n).padStart(3, '0')}.job.yaml`), n % 20 === 7 ? 'job: [' : examples[n % examples.length]!)
  symlinkSync(at('jobs'), at('jobs', 'deep', 'round'))
})
afterAll(() => { rmSync(folder, { recursive: true, force: true }) })

test('any number of threads, kept or not: the same bytes on both streams', () => {
  const one = run('--ndjson', '--workers', '0', '--no-cache')
  expect(one.stdout.trimEnd().split('\n')).toHaveLength(60)
  expect(one.status).toBe(1)
  for (const more of [['--workers', '1'], ['--workers', '3'], ['--workers', '2', '--no-cache'], ['--workers', '0']]) {
    const other = run('--ndjson', ...more)
    expect([other.stdout === one.stdout, other.stderr === one.stderr, other.status], more.join(' ')).toEqual([true, true, 1])
  }
  expect(run('--workers', '2').stdout).toBe(run('--workers', '0').stdout)
}, 60_000)

test('a folder that a link leads back to is entered once', () => {
  const { stdout } = run('--ndjson', '--workers', '0')
  const files = stdout.trimEnd().split('\n').map(l => (JSON.parse(l) as { file: string }).file)
  expect(new Set(files).size).toBe(60)
  expect(files.some(f => f.includes('round'))).toBe(false)
})

test('a reader that leaves ends it quietly, with threads too', async () => {
  const child = spawn(process.execPath, line('--ndjson', '--workers', '2'), { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] })
  child.stdout.destroy()
  let said = ''
  child.stderr.on('data', (chunk: Buffer) => { said += chunk.toString() })
  expect(await new Promise(resolve => { child.on('close', resolve) })).toBeLessThanOrEqual(1)
  expect(said).not.toMatch(/fault|EPIPE/)
})

test.runIf(existsSync('/dev/full'))('a full disk behind the output is said', () => {
  const { status, stderr } = spawnSync(process.execPath, line('--ndjson'), { cwd: folder, encoding: 'utf8', stdio: ['ignore', openSync('/dev/full', 'w'), 'pipe'] })
  expect([status, stderr]).toEqual([3, expect.stringContaining('could not write the output: the disk is full')])
})

describe('a file that changes while it is read', () => {
  test('once: it is read again', () => {
    writeFileSync(at('moving'), 'before')
    let times = 0
    const read = readSteady(at('moving'), () => { if (times++ === 0) writeFileSync(at('moving'), 'after it grew') })
    expect(times).toBe(2)
    expect('bytes' in read && new TextDecoder().decode(read.bytes)).toBe('after it grew')
  })
  test('all the time: it is refused', () => {
    let n = 0
    expect(readSteady(at('moving'), () => { writeFileSync(at('moving'), 'x'.repeat(++n)) })).toEqual({ failure: 'changed', message: 'it changes while it is read; run again when nobody writes it' })
  })
})

test('killed at any moment, what is kept is whole or not there', async () => {
  for (const ms of [250, 500, 900]) {
    rmSync(at('cache'), { recursive: true, force: true })
    const child = spawn(process.execPath, line('--ndjson'), { cwd: folder, stdio: 'ignore', env: { ...process.env, XDG_CACHE_HOME: at('cache') } })
    const ended = new Promise(resolve => { child.on('close', resolve) })
    await new Promise(resolve => { setTimeout(resolve, ms) })
    child.kill('SIGKILL')
    await ended
    expect(run('--ndjson').stdout).toBe(run('--ndjson', '--no-cache').stdout)
  }
}, 60_000)

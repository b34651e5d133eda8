// The program as people get it: built, packed, installed, cut off. Needs dist/ (npm test builds it first).
import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { transformSync } from 'esbuild'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

const root = fileURLToPath(new URL('../..', import.meta.url))
const bin = join(root, 'bin', 'lidwork.cjs')
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'

let folder = ''
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'lidwork-installed-')) })
afterAll(() => { rmSync(folder, { recursive: true, force: true }) })

describe('the launcher', () => {
  test('can be read by any Node, to say which one it needs', () => {
    const source = readFileSync(bin, 'utf8')
    expect(() => transformSync(source, { target: 'es5' })).not.toThrow() // esbuild refuses const, let, class and for-of
    expect(source).not.toMatch(/=>|`/)
  })
  test('says how to build where nothing is built', () => {
    mkdirSync(join(folder, 'bare', 'bin'), { recursive: true })
    const copy = join(folder, 'bare', 'bin', 'lidwork.cjs')
    copyFileSync(bin, copy)
    const { status, stdout, stderr } = spawnSync(process.execPath, [copy, '--version'], { encoding: 'utf8' })
    expect({ status, stdout, stderr }).toEqual({ status: 4, stdout: '', stderr: 'lidwork: is not built: run npm run build\n' })
  })
  test('ends quietly when the reader of its output has left', async () => {
    const child = spawn(process.execPath, [bin, '--help'], { stdio: ['ignore', 'pipe', 'pipe'] })
    child.stdout.destroy()
    let said = ''
    child.stderr.on('data', chunk => { said += chunk })
    const code = await new Promise(resolve => child.on('close', resolve))
    expect({ code, said }).toEqual({ code: 0, said: '' })
  })
})

test('packed and installed elsewhere without a network, the same bytes under any time zone, language and terminal', () => {
  const [pack] = JSON.parse(execFileSync(npm, ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], { cwd: root, encoding: 'utf8' })) as [{ filename: string; files: { path: string }[] }]
  const packed = pack.files.map(f => f.path)
  for (const needed of ['bin/lidwork.cjs', 'dist/lidwork.cjs', 'dist/work.cjs', 'dist/THIRD-PARTY.txt', 'schemas/job.schema.json', 'LICENSE', 'package.json']) expect(packed).toContain(needed)
  expect(packed.filter(f => /^(src|tests|node_modules)\//.test(f))).toEqual([])

  const home = join(folder, 'home')
  mkdirSync(home)
  execFileSync(npm, ['install', '--offline', '--no-audit', '--no-fund', '--prefix', home, join(folder, pack.filename)], { cwd: home, encoding: 'utf8', stdio: 'pipe' })
  const installed = join(home, 'node_modules', 'lidwork', 'bin', 'lidwork.cjs')
  const run = (args: string[], env: Record<string, string>) => spawnSync(process.execPath, [installed, ...args], { cwd: home, encoding: 'utf8', env: { PATH: process.env['PATH'], ...env } })
  expect(run(['new', 'house.job.yaml'], {}).status).toBe(0)
  const [here, there] = [{ TZ: 'UTC', LANG: 'C', TERM: 'dumb' }, { TZ: 'Pacific/Auckland', LANG: 'tr_TR.UTF-8', LC_ALL: 'de_DE.UTF-8', TERM: 'xterm-256color' }].map(env => run(['estimate', 'house.job.yaml'], env))
  expect([here!.status, there!.status]).toEqual([0, 0])
  expect(here!.stdout).toContain('8 Bramble Court')
  expect(there!.stdout).toBe(here!.stdout)
  expect(there!.stderr).toBe(here!.stderr)
}, 60_000)

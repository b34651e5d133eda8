// The command line in memory: words in; exit code, output and messages out.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { useColor } from '../../src/cli/run.ts'
import { lidwork } from './test-io.ts'

const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string }
const COMMANDS = ['new', 'check', 'estimate', 'explain', 'schema']

describe('help', () => {
  test('the bare name gives the first three steps, on stdout', async () => {
    const { code, out, err } = await lidwork('')
    expect([code, err]).toEqual([0, ''])
    for (const step of ['lidwork new', 'lidwork check', 'lidwork estimate', 'lidwork --help']) expect(out).toContain(step)
    expect(out.split('\n').length).toBeLessThan(15)
  })
  test.each(['--help', '-h', 'help'])('%s lists every command and the exit codes', async line => {
    const { code, out, err } = await lidwork(line)
    expect([code, err]).toEqual([0, ''])
    for (const c of COMMANDS) expect(out).toMatch(new RegExp(`^  ${c} `, 'm'))
    for (const e of ['0 done', '1 findings', '2 wrong use', '3 could not read or write', '4 a fault in lidwork']) expect(out).toContain(e)
    for (const l of out.split('\n')) expect(l.length).toBeLessThanOrEqual(80)
  })
  test.each(COMMANDS)('help %s is what %s --help prints, with an example', async command => {
    const long = await lidwork(`${command} --help`)
    expect(await lidwork(`help ${command}`)).toEqual(long)
    expect([long.code, long.err]).toEqual([0, ''])
    expect(long.out).toContain(`Usage: lidwork ${command}`)
    expect(long.out).toMatch(/Examples?:\n {2}lidwork /)
  })
  test.each(['--version', '-V'])('%s', async line => {
    expect(await lidwork(line)).toMatchObject({ code: 0, out: `${version}\n`, err: '' })
  })
})

describe('wrong use ends with 2, says what was meant, and prints no data', () => {
  test.each([
    ['estimat a.job.yaml', "unknown command 'estimat'\n(Did you mean estimate?)"],
    ['a.job.yaml', 'To estimate it: lidwork estimate a.job.yaml'],
    ['estimate', "missing required argument 'files'"],
    ['estimate a --jsn', "unknown option '--jsn'\n(Did you mean --json?)"],
    ['estimate a --json --ndjson', 'cannot be used with'],
    ['estimate a b --json', '--json holds one job, and these are 2; --ndjson holds many'],
    ['estimate a --width 80x', 'Write a whole number from 40 to 1000.'],
    ['estimate a --width 12', 'Write a whole number from 40 to 1000.'],
    ['check a --format sarif', 'Allowed choices are text, json, github.'],
    ['explain', "missing required argument 'file'"],
    ['schema jbo', 'there is no schema jbo; did you mean job? The schemas: job, prices, company, closeout, import, estimate, explain, options,'],
    ['schema toString', 'there is no schema toString'],
    ['check -', 'nothing is piped in'],
  ])('%s', async (line, says) => {
    const { code, out, err } = await lidwork(line)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(says)
    expect(err).toMatch(/^lidwork: /)
  })
})

describe('what cannot be read ends with 3, and the other files are still done', () => {
  test.each([
    ['check none.job.yaml', 'could not read none.job.yaml: there is no such file'],
    ['check locked.job.yaml', 'could not read locked.job.yaml: no permission'],
    ['check empty', 'no file in empty ends in .job.yaml'],
    ['estimate empty', 'no file in empty ends in .job.yaml'],
  ])('%s', async (line, says) => {
    const { code, err } = await lidwork(line, { files: { 'locked.job.yaml': null, 'empty/notes.txt': '' } })
    expect(code).toBe(3)
    expect(err).toContain(`lidwork: ${says}\n`)
  })
})

test.each([['check', 'a\u001b[2J.job.yaml'], ['estim\u001b[2J']])('a control character in a word of the command line is written out: %j', async (...line) => {
  const { err } = await lidwork(line)
  expect(err).toContain('\\u001b[2J')
  expect(err).not.toContain('\u001b')
})

describe('color', () => {
  const tty = { isTTY: true }, pipe = { isTTY: false }
  test.each([
    // a terminal, or not
    [tty, {}, undefined, true], [pipe, {}, undefined, false], [tty, { TERM: 'dumb' }, undefined, false],
    // NO_COLOR, when not empty, over the terminal and over FORCE_COLOR
    [tty, { NO_COLOR: '1' }, undefined, false], [tty, { NO_COLOR: '' }, undefined, true], [tty, { NO_COLOR: '1', FORCE_COLOR: '1' }, undefined, false],
    // FORCE_COLOR over the stream
    [pipe, { FORCE_COLOR: '1' }, undefined, true], [pipe, { FORCE_COLOR: '' }, undefined, true], [tty, { FORCE_COLOR: '0' }, undefined, false], [pipe, { FORCE_COLOR: '3', TERM: 'dumb' }, undefined, true],
    // a flag over all
    [pipe, { NO_COLOR: '1' }, true, true], [tty, { FORCE_COLOR: '1' }, false, false], [pipe, { TERM: 'dumb' }, true, true],
  ] as const)('%o %o flag %s: %s', (out, env, flag, colored) => {
    expect(useColor({ ...out, columns: undefined, write: async () => {} }, env, flag)).toBe(colored)
  })
})

describe('schema', () => {
  const folder = new URL('../../schemas/', import.meta.url)
  const names = readdirSync(folder).filter(f => f.endsWith('.schema.json')).map(f => f.replace('.schema.json', ''))
  test.each(names)('%s is the committed file, byte for byte, and the help names it', async name => {
    const { code, out, err } = await lidwork(`schema ${name}`)
    expect([code, err]).toEqual([0, ''])
    expect(out).toBe(readFileSync(new URL(`${name}.schema.json`, folder), 'utf8'))
    expect((await lidwork('help schema')).out).toContain(name)
  })
})

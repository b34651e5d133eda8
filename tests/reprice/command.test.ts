// The command on files in memory: where jobs come from, what goes out, what is said, how it ends; and that keeping and threads change no byte.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import type { RepriceOut } from '../../src/estimate/quotes/reprice-totals.ts'
import type { RepricedOut } from '../../src/estimate/quotes/reprice.ts'
import { newCompany, newPrices } from '../../src/papers/new-books.ts'
import { lidwork, testIo, type Ended, type World } from '../cli/test-io.ts'
import { main } from '../../src/cli/main.ts'
import { Splitter } from '../../src/cli/reprice/sources.ts'

const example = (name: string): string => readFileSync(join(import.meta.dirname, `../../examples/${name}.job.yaml`), 'utf8')
const quince = example('quince-lane-14'), fern = example('fern-hollow-9'), tamarack = example('tamarack-road-3')
const old = newPrices(), now = old.replace(/(item: demo-loose-cellulose\n(?:.*\n)*? *price: )[\d.]+/, '$120').replace(/^dated: .*/m, 'dated: 2026-06-01')
const books = { 'old.yaml': old, 'new.yaml': now }
const status = (job: string, s: string, quote = ''): string => job.replace('status: draft', `status: ${s}`) + quote
const run = (line: string, world: World = {}): Promise<Ended> => lidwork(`reprice ${line} --from old.yaml --to new.yaml`, { ...world, files: { ...books, 'jobs/a.job.yaml': quince, 'jobs/b/c.job.yaml': fern, ...world.files } })
const lines = (r: Ended): (RepricedOut & { skipped?: string })[] => r.out.split('\n').filter(Boolean).map(l => JSON.parse(l) as RepricedOut)
const files = (r: Ended): string[] => lines(r).map(l => l.file)

test('the two books differ', () => expect(old).not.toBe(now))

describe('where jobs come from', () => {
  test.each([
    ['jobs', ['jobs/a.job.yaml', 'jobs/b/c.job.yaml']], ['jobs/a.job.yaml jobs', ['jobs/a.job.yaml', 'jobs/b/c.job.yaml']], ['jobs/*.yaml', ['jobs/a.job.yaml']], ['jobs/**/*.yaml', ['jobs/a.job.yaml', 'jobs/b/c.job.yaml']],
    ['jobs/*/c.job.yaml', ['jobs/b/c.job.yaml']], ['jobs/?.job.yaml', ['jobs/a.job.yaml']], ['**/c.job.yaml', ['jobs/b/c.job.yaml']], ['j*/b', ['jobs/b/c.job.yaml']],
  ])('%s', async (words, found) => { expect(files(await run(`${words} --ndjson`))).toEqual(found) })
  test('a list: one to a line, or as find -print0 writes it; a file, or what is piped in', async () => {
    for (const list of ['jobs/b/c.job.yaml\njobs/a.job.yaml\n', 'jobs/b/c.job.yaml\r\njobs/a.job.yaml', 'jobs/b/c.job.yaml\0jobs/a.job.yaml\0']) {
      expect(files(await run('--list - --ndjson', { stdin: list }))).toEqual(['jobs/b/c.job.yaml', 'jobs/a.job.yaml'])
      expect(files(await run('--list names --ndjson', { files: { names: list } }))).toEqual(['jobs/b/c.job.yaml', 'jobs/a.job.yaml'])
    }
  })
  test('a stream of documents, and lines of JSON', async () => {
    expect(files(await run('- --ndjson', { stdin: `# a head\n---\n${quince}---\n${fern}...\n` }))).toEqual(['-#1', '-#2'])
    const asJson = (await import('yaml')).parse(quince) as object
    const r = await run('- jobs.ndjson --ndjson', { stdin: `${JSON.stringify(asJson)}\n\n${JSON.stringify(asJson)}\n`, files: { 'jobs.ndjson': `${JSON.stringify(asJson)}` } })
    expect(files(r)).toEqual(['-#1', '-#2', 'jobs.ndjson#1'])
    expect({ ...lines(r)[0], file: '' }).toEqual({ ...lines(await run('jobs/a.job.yaml --ndjson'))[0], file: '' })
  })
  test('a stream in pieces of any size', () => {
    const text = `---\n${quince}--- # next\n${fern}\n{"a": 1}\n{"b": "é"}`, bytes = new TextEncoder().encode(text)
    const by = (n: number): string[] => { const s = new Splitter(), out: string[] = []; for (let i = 0; i < bytes.length; i += n) out.push(...s.push(bytes.subarray(i, i + n))); return [...out, ...s.end()] }
    for (const n of [1, 7, 1000]) expect(by(n)).toEqual(by(1e6))
  })
  test.each([['', 2, 'say which jobs'], ['none.job.yaml', 3, 'there is no such file'], ['- --list names', 3, 'could not read names'], ['--list -', 1, 'no name in what was piped in'], ['jobs --on 2026-02-30', 2, 'that month has 28 days'], ['jobs --on soon', 2, 'Write a date'], ['jobs --workers x', 2, 'whole number'], ['jobs --fail-if-margin-below x', 2, 'percentage'], ['jobs --json --csv', 2, 'cannot be used']])('wrong use: %s', async (words, code, said) => {
    const r = await run(words, { stdin: '' })
    expect([r.code, r.err]).toEqual([code, expect.stringContaining(said)])
  })
  test('without both books nothing is done', async () => {
    expect(await lidwork('reprice jobs --from old.yaml', { files: books })).toMatchObject({ code: 2, out: '' })
    expect(await lidwork('reprice jobs --from old.yaml --to none.yaml', { files: books })).toMatchObject({ code: 3, out: '', err: expect.stringContaining('could not read none.yaml') })
    expect(await lidwork('reprice jobs --from old.yaml --to bad.yaml', { files: { ...books, 'bad.yaml': 'a: 1' } })).toMatchObject({ code: 1, out: '', err: expect.stringContaining('bad.yaml:1:1: error') })
  })
})

describe('days', () => {
  const dated = { 'jobs/a.job.yaml': status(quince, 'sent', 'quote: {sentOn: 2026-03-02}\n') }
  test('a quote with a date needs a day', async () => {
    const r = await run('jobs --json', { files: dated })
    expect([r.code, r.out, r.err]).toEqual([2, '', expect.stringContaining('jobs/a.job.yaml: its quote has dates; say --on')])
  })
  test.each([['2026-04-01', 'sent', 're-issue'], ['2026-04-02', 'expired', 're-issue'], ['2026-05-02', 'expired', 'expire']])('on %s it is %s: %s', async (on, is, action) => {
    expect(lines(await run(`jobs/a.job.yaml --ndjson --on ${on}`, { files: dated }))[0]).toMatchObject({ status: is, action })
  })
  test.each(['sentOn: 2026-05-20, ', ''])('signed later than the day asked: somebody looks at it, and is told why (%s)', async sent => {
    const files = { 'jobs/a.job.yaml': status(quince, 'signed', `quote: {${sent}signedOn: 2026-05-21}\n`) }
    expect(lines(await run('jobs/a.job.yaml --ndjson --on 2026-04-01', { files }))[0]).toMatchObject({ action: 'ask', why: 'signed 2026-05-21, later than --on' })
    expect((await run('jobs/a.job.yaml --on 2026-04-01', { files })).out).toContain('signed 2026-05-21, later than --on')
    expect(lines(await run('jobs/a.job.yaml --ndjson --on 2026-05-21', { files }))[0]).toMatchObject({ status: 'signed', action: 'honor', why: 'it is signed' })
  })
  test('the company’s own thresholds, from its file or the job’s', async () => {
    const company = newCompany().replace(/^# reprice: .*$/m, 'reprice: {honorUpToPct: 50, reissueAbovePct: 60}').replace(/^validDays: \d+/m, 'validDays: 10')
    const on = 'jobs/a.job.yaml --ndjson --on 2026-03-12'
    expect(lines(await run(`${on} --company company.yaml`, { files: { ...dated, 'company.yaml': company } }))[0]).toMatchObject({ status: 'sent', expiresOn: '2026-03-12', action: 'honor' })
    expect(lines(await run(on, { files: { 'jobs/a.job.yaml': `${dated['jobs/a.job.yaml']}books: {company: ../company.yaml}\n`, 'company.yaml': company } }))[0]).toMatchObject({ expiresOn: '2026-03-12', action: 'honor' })
  })
})

describe('what goes out', () => {
  test('one object, and the table by loss, agree with the lines', async () => {
    const all = lines(await run('jobs --ndjson')), whole = JSON.parse((await run('jobs --json')).out) as RepriceOut
    expect(whole).toMatchObject({ format: 'lidwork-reprice/1', from: 'old.yaml', to: 'new.yaml', read: 2, priced: 2, skipped: [], clashes: [], jobs: all })
    expect(whole.totals.changeCents).toBe(all.reduce((sum, j) => sum + j.changeCents!, 0))
    const table = (await run('jobs')).out, rows = [...all].sort((a, b) => b.lossCents! - a.lossCents!)
    expect(table.indexOf(rows[0]!.id)).toBeLessThan(table.indexOf(rows[1]!.id))
    expect(Math.max(...table.split('\n').map(l => l.length))).toBeLessThanOrEqual(80)
    expect((await run('jobs --top 1')).out).toContain('1 more job')
    expect((await run('jobs --ascii')).out).toMatch(/^[\n\x20-\x7e]*$/)
  })
  test('a table for spreadsheets: money in dollars, and no text that one would work out', async () => {
    const r = await run('jobs/a.job.yaml --csv', { files: { 'jobs/a.job.yaml': quince.replace(/title: .*?, (?=\w+:)|title: .*/, m => m.replace(/title: .*?(, (?=\w+:)|$)/, 'title: "=1+1 \\"x\\", y"$1')) } })
    const [head, line] = r.out.split('\r\n')
    expect(head).toBe('lidwork-reprice-job/1,id,title,customer,status,sentOn,signedOn,expiresOn,verdictOld,verdictNew,old,new,change,changePct,oldCost,newCost,loss,marginPct,honoredMarginPct,passedOn,action,why')
    expect(line).toContain(`"'=1+1 ""x"", y"`)
    expect(line).toContain(',6970,')
  })
  test('a script can ask for a least margin of open quotes', async () => {
    const sent = { 'jobs/a.job.yaml': status(quince, 'sent') }
    const margin = lines(await run('jobs/a.job.yaml --ndjson', { files: sent }))[0]!.honoredMarginPct!
    expect((await run(`jobs --fail-if-margin-below ${margin}`, { files: sent })).code).toBe(0)
    expect(await run(`jobs --fail-if-margin-below ${margin + 0.1}`, { files: sent })).toMatchObject({ code: 1, err: expect.stringContaining('1 open quote would keep less than') })
    // Drafts bind nobody: nothing was judged, and that is said.
    expect(await run('jobs --fail-if-margin-below 99')).toMatchObject({ code: 0, err: 'lidwork: 0 sent or signed jobs judged against 99 %\n2 jobs: 2 priced\n' })
    expect((await run('jobs --fail-if-margin-below 10', { files: sent })).err).toContain('1 sent or signed job judged against 10 %')
    expect((await run('jobs')).err).not.toContain('judged')
  })
})

describe('faults', () => {
  test('a bad file is told and skipped; the end counts', async () => {
    const r = await run('jobs --json', { files: { 'jobs/bad.job.yaml': 'format: lidwork-job/1\n', 'jobs/locked.job.yaml': null, 'jobs/stop.job.yaml': tamarack } })
    expect(r.code).toBe(3)
    expect(r.err).toContain('jobs/bad.job.yaml:1:1: error')
    expect(r.err).toContain('could not read jobs/locked.job.yaml: no permission')
    expect(r.err.trimEnd().split('\n').at(-1)).toBe('5 jobs: 3 priced, 2 skipped (1 with errors, 1 not read)')
    expect(JSON.parse(r.out)).toMatchObject({ read: 4, priced: 3, skipped: [{ file: 'jobs/bad.job.yaml' }, { file: 'jobs/locked.job.yaml', why: 'no permission' }], totals: { jobs: 3, unpriced: 1 } })
    expect(lines(await run('jobs/bad.job.yaml --ndjson', { files: { 'jobs/bad.job.yaml': 'a: 1' } }))[0]).toMatchObject({ format: 'lidwork-reprice-job/1', file: 'jobs/bad.job.yaml', skipped: expect.stringContaining('error') })
  })
  test('a fault of the program at one file is told, and the others are done', async () => {
    const r = await run('jobs --ndjson', { faultAt: 'jobs/a.job.yaml' })
    expect([r.code, files(r)]).toEqual([4, ['jobs/b/c.job.yaml']])
    expect(r.err).not.toContain('secret')
  })
  test('two files with one id: both counted, and told', async () => {
    const r = await run('jobs --json', { files: { 'jobs/copy.job.yaml': quince } })
    expect([r.code, r.err]).toEqual([0, expect.stringContaining('jobs/copy.job.yaml and jobs/a.job.yaml are both the job quince-lane-14')])
    expect(JSON.parse(r.out)).toMatchObject({ priced: 3, clashes: ['quince-lane-14'] })
  })
  test('an item that the new book lacks is told, and the job skipped', async () => {
    const r = await run('jobs/a.job.yaml --ndjson', { files: { 'new.yaml': now.replace(/role: depth-marker/g, 'role: latch').replace(/item: hatch-latch[^\n]*/, m => m) } })
    expect(r.code).toBe(1)
    expect(r.err).toMatch(/no-product-for-role|error/)
  })
  test('a reader that leaves ends it quietly; a full disk is said', async () => {
    expect(await run('jobs --ndjson', { closesAfter: 1 })).toMatchObject({ code: 0, err: '' })
    expect(await run('jobs --ndjson', { full: true })).toMatchObject({ code: 3, err: expect.stringContaining('could not write the output: the disk is full') })
  })
})

describe('what is kept of files read before', () => {
  const env = { XDG_CACHE_HOME: '/cache' }
  const kept = (r: Ended): string[] => Object.keys(r.files).filter(f => f.startsWith('/cache/'))
  test('changes no byte, not under other prices, another day, other charts', async () => {
    const world: World = { env, files: { 'jobs/s.job.yaml': status(fern, 'sent', 'quote: {sentOn: 2026-03-02}\n').replace('fern-hollow-9', 'fern-2') } }
    const heavier = now.replaceAll(/weightPsf: ([\d.]+), coverageFt2: ([\d.]+), bagsPer1000Ft2: ([\d.]+)/g, (_, w, c, b) => `weightPsf: ${Number(w) * 2}, coverageFt2: ${Number(c) / 2}, bagsPer1000Ft2: ${Number(b) * 2}`)
    expect(heavier).not.toBe(now)
    let left = world.files
    for (const [to, on] of [[now, '2026-03-20'], [now, '2026-08-01'], [old, '2026-03-20'], [heavier, '2026-03-20'], [now, '2026-03-20']] as const) {
      const line = `jobs --ndjson --on ${on}`, first = await run(`${line} --no-cache`, { ...world, files: { ...world.files, 'new.yaml': to } })
      expect(kept(first)).toEqual([])
      const cold = await run(line, { env, files: { ...left, 'new.yaml': to } as Record<string, string> }), warm = await run(line, { env, files: { ...cold.files, 'new.yaml': to } })
      expect([cold.out, warm.out]).toEqual([first.out, first.out])
      expect(kept(warm)).toEqual(kept(cold))
      expect(kept(warm).length).toBeGreaterThan(0)
      left = cold.files as Record<string, string>
    }
  })
  test('a damaged entry counts as none and is mended', async () => {
    const cold = await run('jobs/a.job.yaml --ndjson', { env }), [entry] = kept(cold), good = cold.files[entry!]!
    for (const bad of ['', good.slice(0, -20), good.replace('"steps":[', '"steps":[ '), `${good.split('\n')[0]}\n{}\n{}\n`, good.replace('lidwork-kept/1', 'lidwork-kept/0')]) {
      const again = await run('jobs/a.job.yaml --ndjson', { env, files: { ...cold.files, [entry!]: bad } })
      expect([again.out, again.files[entry!]]).toEqual([cold.out, good])
    }
  })
  test('a faulty file is not kept, and a changed one is another', async () => {
    const r = await run('jobs/bad.job.yaml --ndjson', { env, files: { 'jobs/bad.job.yaml': 'a: 1' } })
    expect(kept(r)).toEqual([])
    const cold = await run('jobs/a.job.yaml --ndjson', { env }), changed = await run('jobs/a.job.yaml --ndjson', { env, files: { ...cold.files, 'jobs/a.job.yaml': `${quince}# seen again\n` } })
    expect(kept(changed)).toHaveLength(2)
  })
  test('a disk without room for it costs nothing but time', async () => {
    const r = await run('jobs --ndjson', { env, cacheFull: true })
    expect([r.code, r.err, kept(r)]).toEqual([0, '2 jobs: 2 priced\n', []])
  })
  test('no place said: nothing kept; a relative one is none', async () => {
    for (const e of [{}, { XDG_CACHE_HOME: 'here' }] as Record<string, string>[]) expect(Object.keys((await run('jobs --ndjson', { env: e })).files).filter(f => f.includes('reprice'))).toEqual([])
    expect(Object.keys((await run('jobs --ndjson', { env: { HOME: '/home/someone' } })).files).filter(f => f.startsWith('/home/someone/.cache/lidwork/'))).toHaveLength(1)
  })
  test('of two packs with the same file the later one counts', async () => {
    const cold = await run('jobs/a.job.yaml --ndjson', { env }), [pack] = kept(cold), line = 'jobs --ndjson'
    const other = await run(line, { env, files: { ...cold.files, [pack!]: cold.files[pack!]!.replace('"steps":[', '"steps":[ ') } }), warm = await run(line, { env, files: other.files as Record<string, string> })
    expect(kept(other)).toHaveLength(2)
    expect([warm.out, kept(warm)]).toEqual([other.out, kept(other)])
  })
  test('more jobs than a pack holds are all found again', async () => {
    const files = Object.fromEntries(Array.from({ length: 60 }, (_, i) => [`jobs/${i}.job.yaml`, fern.replace('fern-hollow-9', `fern-${i}`)]))
    const cold = await run('jobs --ndjson', { env, files }), warm = await run('jobs --ndjson', { env, files: cold.files as Record<string, string> })
    expect(kept(cold)).toHaveLength(2)
    expect([warm.out, kept(warm)]).toEqual([cold.out, kept(cold)])
  })
  test('it is bounded: the oldest go first', async () => {
    const { keeper } = await import('../../src/cli/reprice/keeper.ts')
    const many = Object.fromEntries(Array.from({ length: 60 }, (_, i) => [`/c/${String(i).padStart(3, '0')}.pack`, 'x'.repeat(30_000)]))
    const trimmed = (most?: { bytes: number; packs: number }): string[] => { const io = testIo({ files: { ...many, '/c/left.pack.12.tmp': 'x' } }); keeper(io, '/c', most).trim(); return Object.keys(io.ended().files) }
    expect(trimmed()).toEqual(Object.keys(many))
    expect(trimmed({ bytes: 1_000_000, packs: 100 })).toEqual(Object.keys(many).slice(-33))
    expect(trimmed({ bytes: 1e9, packs: 20 })).toEqual(Object.keys(many).slice(-20))
  })
})

test('progress on a terminal alone, wiped at the end', async () => {
  const io = testIo({ tty: { stderr: true, columns: 60 }, files: { ...books, 'jobs/a.job.yaml': quince, 'jobs/c.job.yaml': fern } })
  let clock = 0
  const code = await main('reprice jobs --from old.yaml --to new.yaml --json'.split(' '), { ...io, now: () => (clock += 1000) })
  expect(code).toBe(0)
  expect(io.ended().err).toMatch(/^1 of 2 jobs, 1 a second, 0:01 left\r +\r2 of 2 jobs, 1 a second, 0:00 left\r +\r2 jobs: 2 priced\n$/)
  expect((await run('jobs --json')).err).toBe('2 jobs: 2 priced\n')
})

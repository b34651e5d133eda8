// The commands on files in memory: what reaches stdout, what reaches stderr, and the exit code.
import type { ExplainOut } from '../../src/estimate/told/told-output.ts'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { jobSchema } from '../../src/job/job-file.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork, type World } from './test-io.ts'

const GOOD = newJob()
const TITLE = '8 Bramble Court'
const BAD = GOOD.replace('kind: open-floor', 'kind: opn-floor')
const at = (name: string, text = GOOD) => ({ [name]: text })

describe('counts', () => {
  const stopped = GOOD.replace('hazards: []', 'hazards: [{kind: vermiculite, in: main, at: under the batts}, {kind: gas-leak, at: kitchen}]')
  const renamed = (text: string, id: string): string => text.replace('bramble-court-8', id)
  test('check and estimate call gates by the same words', async () => {
    for (const text of [GOOD, stopped]) {
      const [checked, estimated] = [await lidwork('check a.job.yaml', { files: at('a.job.yaml', text) }), await lidwork('estimate a.job.yaml', { files: at('a.job.yaml', text) })]
      const verdict = /verdict: (\w+); gates: (.*)\n/.exec(checked.err)!, said = / {5}\w+ +.*?: ((?:\d|[^.])*?)\.\n/.exec(estimated.out.slice(estimated.out.indexOf('|')).replace(/\n {18}/g, ' '))![1]!
      expect(estimated.out).toContain(`  ${verdict[1]!} `)
      expect(said.split('; ').filter(w => /shut|ours/.test(w)).join(', ')).toBe(verdict[2])
    }
  })
  test('many files: so many of each verdict, and all their gates', async () => {
    const { err } = await lidwork('check a.job.yaml b.job.yaml c.job.yaml', { files: { ...at('a.job.yaml'), ...at('b.job.yaml', renamed(stopped, 'b')), ...at('c.job.yaml', renamed(GOOD, 'c')) } })
    expect(err).toBe('3 files: 4 notes; verdicts: 1 stop, 2 hold; gates: 2 stops shut, 5 holds shut, 2 mends ours\n')
  })
  test('a file that could not be read is none that has nothing wrong', async () => {
    expect((await lidwork('check gone.job.yaml')).err).toBe('lidwork: could not read gone.job.yaml: there is no such file\n0 files read\n')
    const { code, err } = await lidwork('check a.job.yaml shut.job.yaml', { files: { ...at('a.job.yaml'), 'shut.job.yaml': null } })
    expect([code, err.split('\n')[1]]).toEqual([3, '1 file: 2 notes; 1 not read; verdict: hold; gates: 2 holds shut, 1 mend ours'])
  })
  test('an id of two jobs is told by check, and one order holds the first alone', async () => {
    const files = { ...at('a.job.yaml'), ...at('b.job.yaml') }
    const checked = await lidwork('check a.job.yaml b.job.yaml', { files })
    expect(checked.out).toMatch(/b\.job\.yaml:\d+:\d+: warning job-id-twice/)
    expect(checked.out).not.toMatch(/a\.job\.yaml:\d+:\d+: warning/)
    expect(await lidwork('estimate a.job.yaml b.job.yaml --csv', { files })).toMatchObject({ code: 1, out: (await lidwork('estimate a.job.yaml --csv', { files })).out,
      err: 'lidwork: b.job.yaml has the job id bramble-court-8, as a.job.yaml has: what it needs would be ordered twice, so it is left out. Give each job an id of its own\n' })
    const lines = await lidwork('estimate a.job.yaml b.job.yaml --ndjson', { files })
    expect([lines.code, lines.out.trimEnd().split('\n').length, lines.err]).toEqual([0, 2, 'lidwork: b.job.yaml and a.job.yaml are both the job bramble-court-8; both are printed\n'])
  })
})

describe('new', () => {
  test('says what to open, and does it: the file passes check and can be estimated', async () => {
    const made = await lidwork('new jobs/house.job.yaml', { files: { 'jobs/readme': '' } })
    expect([made.code, made.out]).toEqual([0, ''])
    expect(made.err).toBe('wrote jobs/house.job.yaml\nwrote jobs/lidwork-job.schema.json, which editors read to help and to check\nnext: write over the invented house, then lidwork check jobs/house.job.yaml\n')
    const checked = await lidwork('check jobs', { files: made.files })
    expect(checked.code).toBe(0)
    expect(checked.err).toBe('1 file: 2 notes; verdict: hold; gates: 2 holds shut, 1 mend ours\n') // a bare top over each light not rated; nobody looked for hazards yet, and the heater is not tested
    const estimated = await lidwork('estimate jobs/house.job.yaml', { files: made.files })
    expect([estimated.code, estimated.err]).toEqual([0, ''])
    expect(estimated.out).toContain(TITLE)
  })
  test('names its schema in the first two lines, for both kinds of editor, and the schema is the committed one', async () => {
    const { files } = await lidwork('new house.job.yaml')
    expect(files['house.job.yaml']!.split('\n').slice(0, 2)).toEqual(['# yaml-language-server: $schema=./lidwork-job.schema.json', '# $schema: ./lidwork-job.schema.json'])
    expect(files['lidwork-job.schema.json']).toBe((await lidwork('schema job')).out)
  })
  test('without a file it prints the same text', async () => {
    expect((await lidwork('new')).out).toBe((await lidwork('new a.job.yaml')).files['a.job.yaml'])
  })
  test('keeps a file that is there, unless forced', async () => {
    const mine = { 'a.job.yaml': 'mine' }
    const kept = await lidwork('new a.job.yaml', { files: mine })
    expect(kept).toMatchObject({ code: 3, out: '', files: mine, err: 'lidwork: could not write a.job.yaml: it is there already; --force writes over it\n' })
    const forced = await lidwork('new a.job.yaml --force', { files: { ...mine, 'lidwork-job.schema.json': 'kept' } })
    expect(forced.code).toBe(0)
    expect(forced.files['a.job.yaml']).toBe(GOOD)
    expect(forced.files['lidwork-job.schema.json']).toBe('kept')
  })
  test('shows every key of the format, in its order, live or as a comment', () => {
    const sections = [...GOOD.matchAll(/^(?:# )?([a-zA-Z]+):/gm)].map(m => m[1]).filter(key => key! in jobSchema().properties)
    expect(sections).toEqual(Object.keys(jobSchema().properties))
    for (const key of Object.keys(jobSchema().properties.house.properties)) expect(GOOD).toMatch(new RegExp(`^ {2}(# )?${key}:`, 'm'))
  })
  test('asks before it says that anything was looked for: no hazard is answered in advance', () => {
    expect(parse(GOOD)).toMatchObject({ notFound: [], hazards: [] })
  })
  test('the comments that show an item can be used as they stand', async () => {
    const used = GOOD.replace(/^hazards: \[\].*$/m, 'hazards:').replace(/^# (ducts|airHandlers|exhausts|highVents):$/gm, '$1:').replace(/^( {2})# (- \{(?:kind|id): (?!heater))/gm, '$1$2')
    expect(used).not.toBe(GOOD)
    const { code, err } = await lidwork('check a.job.yaml', { files: at('a.job.yaml', used) })
    expect(code).toBe(0)
    expect(err).not.toMatch(/error|warning/)
  })
})

describe('several files', () => {
  const files = { 'jobs/a.job.yaml': GOOD, 'jobs/b.job.yaml': BAD, 'jobs/deep/c.job.yaml': GOOD.replace('bramble-court-8', 'c'), 'jobs/notes.yaml': 'not a job' }
  test('one that is wrong is told on stderr; the others are still estimated', async () => {
    const { code, out, err } = await lidwork('estimate jobs --ndjson', { files })
    expect(code).toBe(1)
    expect(out.trimEnd().split('\n').map(line => (JSON.parse(line) as { format: string }).format)).toEqual(['lidwork-estimate/1', 'lidwork-estimate/1'])
    expect(err).toContain('jobs/b.job.yaml:')
    expect(err).not.toContain('a.job.yaml')
  })
  test('the highest code wins', async () => {
    expect((await lidwork('estimate jobs none.job.yaml', { files })).code).toBe(3)
    expect((await lidwork('check none.job.yaml jobs/a.job.yaml', { files })).code).toBe(3)
  })
  test('each is done once, in the order given', async () => {
    const { err } = await lidwork('check jobs/deep jobs jobs/a.job.yaml', { files })
    expect(err).toMatch(/^3 files: /m)
  })
  test('on Windows the program opens up * and reads \\ as /', async () => {
    const { code, err } = await lidwork(['check', 'jobs\\*.job.yaml'], { files, windows: true })
    expect(code).toBe(1)
    expect(err).toMatch(/^2 files: /m)
  })
})

describe('stdin', () => {
  test.each(['estimate - --json', 'estimate -'])('%s', async line => {
    const { code, out } = await lidwork(line, { stdin: GOOD })
    expect(code).toBe(0)
    expect(out).toContain(TITLE)
  })
})

describe('estimate', () => {
  test('--json is one object with its format first, and a line end', async () => {
    const { out } = await lidwork('estimate a.job.yaml --json', { files: at('a.job.yaml') })
    expect(out.startsWith('{\n  "format": "lidwork-estimate/1",\n')).toBe(true)
    expect(out.endsWith('}\n')).toBe(true)
    expect(JSON.parse(out)).toMatchObject({ job: { id: 'bramble-court-8' }, verdict: 'hold' })
  })
  const shown = async (line: string, world: World = {}) => (await lidwork(`estimate a.job.yaml ${line}`, { files: at('a.job.yaml'), ...world })).out
  const plain = (text: string) => text.replace(/\u001b\[\d+m/g, '')
  test('color goes only where it is wanted, and only bold and red', async () => {
    const piped = await shown('')
    expect(piped).not.toContain('\u001b')
    for (const colored of [await shown('--color'), await shown('', { tty: { stdout: true } }), await shown('', { env: { FORCE_COLOR: '1' } })]) {
      expect(plain(colored)).toBe(piped)
      expect([...new Set([...colored.matchAll(/\u001b\[(\d+)m/g)].map(m => m[1]))].sort()).toEqual(['1', '22', '31', '39'])
    }
    for (const quiet of [await shown('--no-color', { tty: { stdout: true } }), await shown('', { tty: { stdout: true }, env: { NO_COLOR: '1' } }), await shown('', { tty: { stderr: true } })]) expect(quiet).toBe(piped)
  })
  test('--width and the terminal set the width, a pipe has 80', async () => {
    expect(await shown('--width 100')).toBe(await shown('', { tty: { stdout: true, columns: 100 }, env: { NO_COLOR: '1' } }))
    expect(await shown('--width 80')).toBe(await shown(''))
    for (const l of (await shown('')).split('\n')) expect(l.length).toBeLessThanOrEqual(80)
  })
  test('--ascii holds nothing else', async () => {
    expect(await shown('--ascii')).toMatch(/^[\x20-\x7e\n]*$/)
  })
})

describe('check', () => {
  test('findings are data, the count is a message', async () => {
    const { code, out, err } = await lidwork('check b.job.yaml', { files: at('b.job.yaml', BAD) })
    expect(code).toBe(1)
    expect(out).toContain('b.job.yaml:')
    expect(out).toContain('opn-floor')
    expect(err).toBe('1 file: 1 error\n')
  })
  test.each(['--json', '--format json'])('%s', async flag => {
    const { code, out } = await lidwork(`check b.job.yaml ${flag}`, { files: at('b.job.yaml', BAD) })
    expect(code).toBe(1)
    const line = BAD.split('\n').findIndex(l => l.includes('opn-floor')) + 1
    const validate = new Ajv({ strict: true }).compile(JSON.parse((await lidwork('schema check')).out) as object)
    expect(validate(JSON.parse(out)), JSON.stringify(validate.errors)).toBe(true)
    expect(JSON.parse(out)).toMatchObject({ format: 'lidwork-check/1', files: 1, findings: [{ severity: 'error', line }] })
  })
  test('github: one command to a finding, and nothing from the file can start another', async () => {
    const { out } = await lidwork('check b,1.job.yaml --format github', { files: at('b,1.job.yaml', GOOD.replace('kind: open-floor', 'kind: "50%\\n::error::x"')) })
    const lines = out.trimEnd().split('\n')
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatch(/^::error file=b%2C1\.job\.yaml,line=\d+,endLine=\d+,col=\d+,endColumn=\d+,title=[a-z-]+::/)
    expect(lines[0]).toContain('50%25')
  })
  test('--strict makes an open hold a finding at the line that raised it', async () => {
    const files = at('a.job.yaml')
    expect((await lidwork('check a.job.yaml', { files })).code).toBe(0)
    const { code, out } = await lidwork('check a.job.yaml --strict', { files })
    expect(code).toBe(1)
    expect(out).toContain('combustion-untested')
    expect(out).toContain(`a.job.yaml:${GOOD.split('\n').findIndex(l => l.includes('kind: water-heater')) + 1}:`)
  })
})

describe('explain', () => {
  test('a figure with what went into it', async () => {
    const { code, out, err } = await lidwork('explain a.job.yaml areas.main.netAreaFt2', { files: at('a.job.yaml') })
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('areas.main.netAreaFt2 = 1344 ft²') // 48 × 28
  })
  test('a figure that is not there names its neighbors', async () => {
    const { code, out, err } = await lidwork('explain a.job.yaml areas.main.bag', { files: at('a.job.yaml') })
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/^lidwork: the estimate has no figure areas\.main\.bag; near it: .*areas\.main\.bags/)
  })
  const asked = async (words: string) => lidwork(`explain a.job.yaml ${words}`, { files: at('a.job.yaml') })
  test('a range is sent to who makes it', async () => {
    for (const words of ['ranges.totalCentsLow', '/ranges/totalCentsLow', 'ranges']) {
      const { code, out, err } = await asked(words)
      expect([code, out]).toEqual([2, ''])
      expect(err).toContain('lidwork estimate a.job.yaml --ranges says what moves it')
    }
  })
  test('a path by positions or pointers, as jq and programs write it, is the same figure', async () => {
    const { out } = await asked('areas.main.bags')
    for (const words of ['areas[0].bags', 'areas.0.bags', '.areas[0].bags', '$.areas[0].bags', '/areas/0/bags', 'Areas.Main.Bags']) expect((await asked(words)).out, words).toBe(out)
  })
  test('a name that fits one figure is that figure, with or without its unit and its list', async () => {
    for (const words of ['depositCents', 'price.deposit', 'price.depositCents']) expect((await asked(words)).out, words).toMatch(/^price\.depositCents = /)
  })
  test('a name that fits several lists them, as the beginning of a path does', async () => {
    const { code, out } = await asked('personHours')
    expect([code, out]).toEqual([0, expect.stringMatching(/^personHours fits \d+ figures:\n/)])
    for (const line of out.split('\n').slice(1, -1)) expect(line).toMatch(/^[\w.-]+\.personHours +[\d.]+ h$/)
    expect((await asked('price')).out).toContain('\nprice.totalCents ')
  })
  test('an input is asked by its name behind its figure; a wrong one names those there are', async () => {
    expect((await asked('areas.main.bags.framingShare')).out).toMatch(/^areas\.main\.bags\.framingShare = /)
    expect((await asked('areas.main.bags.framing')).err).toMatch(/near it: .*areas\.main\.bags\.framingShare/)
  })
  test('a starting value says how a company replaces it', async () => { expect((await asked('rate.hatch')).out).toContain('your own figure: rates, work hatch, in the company file') })
  test('a dozen assumptions are named, the others counted; --json has all', async () => {
    const said = (await asked('price.totalCents')).out.replace(/\s+/g, ' '), rests = /rests on assumptions: (.*?) · and (\d+) more; --deep tells each at its step, --json lists all/.exec(said)!
    const whole = JSON.parse((await asked('price.totalCents --json')).out) as { steps: { assumptions: unknown[] }[] }
    expect([rests[1]!.split(' · ').length, Number(rests[2]) + 12]).toEqual([12, whole.steps[0]!.assumptions.length])
  })
  test('days say how they round: to the half', async () => {
    const { out } = await asked('labor.days')
    expect(out.replace(/\s+/g, ' ')).toContain('rounded up to the half day; down to it where no more than a tenth of a half day is left over')
    expect(out).not.toContain('down to a whole')
  })
  test('--deep goes down to lines, rows and assumptions, each step once', async () => {
    const { out } = await asked('price.totalCents --deep')
    const heads = out.split('\n').filter(l => /^\S/.test(l)).map(l => l.split(' = ')[0]!)
    expect(heads[0]).toBe('price.totalCents')
    expect(heads).toEqual(expect.arrayContaining(['price.costCents', 'areas.main.bags']))
    expect(new Set(heads).size).toBe(heads.length)
  })
  test('--json is whole, in full precision, and as its schema says', async () => {
    const schema = JSON.parse((await lidwork('schema explain')).out) as object
    const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(schema)
    for (const words of ['', 'personHours', 'areas.main.bags', 'price.totalCents --deep', 'areas.main.targetR']) {
      const told = JSON.parse((await asked(`${words} --json`)).out) as object
      expect(validate(told), `${words}: ${JSON.stringify(validate.errors)}`).toBe(true)
    }
    const { steps: [step] } = JSON.parse((await asked('areas.main.bags --json')).out) as ExplainOut
    const { netAreaFt2, framingShare, exposedJoistIn, settledDepthIn, coverageFt2 } = Object.fromEntries(step!.inputs.map(i => [i.name, i.value])) as Record<string, number>
    // ASTM C1630: framing is deducted from the floor; 16 CFR 460.12: coverage of the row.
    expect(netAreaFt2! * (1 - framingShare! * Math.min(exposedJoistIn!, settledDepthIn!) / settledDepthIn!) / coverageFt2!).toBeCloseTo(step!.value, 9)
    expect(step!.inputs.find(i => i.name === 'coverageFt2')).toMatchObject({ is: 'row', source: expect.stringContaining('16 CFR 460.12') as string })
  })
  test('ASCII alone where it is asked for, symbols ready for a calculator', async () => {
    const { out } = await asked('areas.main.bags --ascii')
    expect(out).toMatch(/^[\n\x20-\x7e]*$/)
    expect(out).toMatch(/= \d+ \* \(1 - [\d.]+ \* min\([\d.]+, [\d.]+\) \/\s+[\d.]+\) \/ [\d.]+/)
  })
  test('no line is wider than the terminal', async () => {
    for (const width of [60, 80, 100]) for (const line of (await asked(`price.totalCents --deep --width ${width}`)).out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(width)
  })
})

describe('nobody reads on', () => {
  test.each(['new', 'check a.job.yaml --strict', 'estimate a.job.yaml', '--help'])('%s ends with 0 and without a word', async line => {
    expect(await lidwork(line, { files: at('a.job.yaml'), closesAfter: 0 })).toMatchObject({ code: 0, out: '', err: '' })
  })
})

test('output that the disk does not take ends with 3', async () => {
  expect(await lidwork('new', { full: true })).toMatchObject({ code: 3, err: 'lidwork: could not write the output: the disk is full\n' })
})

describe('a fault of ours', () => {
  const files = { ...at('a.job.yaml'), ...at('b.job.yaml') }
  test('ends with 4, names version and file and no other path, and the other files are still done', async () => {
    const { code, out, err } = await lidwork('estimate a.job.yaml b.job.yaml', { files, faultAt: 'a.job.yaml' })
    expect(code).toBe(4)
    expect(out).toContain(TITLE)
    expect(err).toMatch(/^lidwork: this is a fault in lidwork \d+\.\d+\.\d+, at a\.job\.yaml, not in your file\. Please report it .*\n$/)
    expect(err).not.toMatch(/secret|node_modules|\n +at /)
  })
  test('--debug shows where', async () => {
    const { code, err } = await lidwork('estimate a.job.yaml --debug', { files, faultAt: 'a.job.yaml' })
    expect(code).toBe(4)
    expect(err).toMatch(/TypeError: x is not a function.*\n +at /)
  })
})

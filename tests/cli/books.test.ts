// The company's own books on the command line and in job files.
import { describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { newCompany, newPrices } from '../../src/papers/new-books.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from './test-io.ts'

const replaced = (text: string, ...changes: readonly (readonly [string, string])[]): string => changes.reduce((t, [a, b]) => {
  if (!t.includes(a)) throw new Error(`no ${a}`)
  return t.replace(a, b)
}, text)
const JOB = newJob()
const OWN = replaced(newPrices(), ['name: demo prices ', 'name: Spring list '], ['dated: 2026-01-15', 'dated: 2026-03-01'], ['\ndemo: yes', '\n#'], ['price: 14\n', 'price: 15\n'])
const FIRM = replaced(newCompany(), ['name: demo company ', 'name: Invented Attics '], ['\ndemo: yes', '\n#'], ['wage: 48\n', 'wage: 50\n'])
const withBooks = (books: string): string => `${JOB}books: ${books}\n`
const estimated = async (line: string, files: Record<string, string | null>): Promise<EstimateOut> => {
  const ran = await lidwork(`estimate ${line} --json`, { files })
  expect([ran.code, ran.err]).toEqual([0, ''])
  return JSON.parse(ran.out) as EstimateOut
}
const bag = (e: EstimateOut) => e.materials.find(m => m.item === 'demo-loose-cellulose')!.unitPriceCents

describe('which books count', () => {
  test('none named: the built-in ones, and the output says so', async () => {
    const e = await estimated('a.job.yaml', { 'a.job.yaml': JOB })
    expect(e.basis.priceBook).toEqual({ name: 'demo prices', dated: '2026-01-15', demo: true })
    expect([bag(e), e.labor.wageCents]).toEqual([1400, 4800])
  })
  test('the ones of the job file, by path from its own folder', async () => {
    const e = await estimated('jobs/a.job.yaml', { 'jobs/a.job.yaml': withBooks('{prices: ../lists/spring.yaml, company: firm.yaml}'), 'lists/spring.yaml': OWN, 'jobs/firm.yaml': FIRM })
    expect(e.basis.priceBook).toEqual({ name: 'Spring list', dated: '2026-03-01', demo: false })
    expect(e.basis.company).toEqual({ name: 'Invented Attics', dated: '2026-01-15', demo: false })
    expect([bag(e), e.labor.wageCents]).toEqual([1500, 5000])
  })
  test('an option wins over the job file, each for its own book', async () => {
    const files = { 'a.job.yaml': withBooks('{prices: gone.yaml, company: firm.yaml}'), 'spring.yaml': OWN, 'firm.yaml': FIRM }
    const e = await estimated('a.job.yaml --prices spring.yaml', files)
    expect([bag(e), e.labor.wageCents]).toEqual([1500, 5000])
  })
  test('explain goes by the same books, and names the row', async () => {
    const { code, out } = await lidwork('explain a.job.yaml labor.wageCents --company firm.yaml', { files: { 'a.job.yaml': JOB, 'firm.yaml': FIRM } })
    expect(code).toBe(0)
    expect(out).toContain('Invented Attics: wage')
  })
  test('two jobs with two price books keep them apart', async () => {
    const files = { 'a.job.yaml': withBooks('{prices: p.yaml}'), 'b.job.yaml': JOB, 'c.job.yaml': withBooks('{prices: p.yaml}'), 'p.yaml': OWN }
    const { out } = await lidwork('estimate a.job.yaml b.job.yaml c.job.yaml --ndjson', { files })
    expect(out.trim().split('\n').map(l => bag(JSON.parse(l) as EstimateOut))).toEqual([1500, 1400, 1500])
  })
})

describe('a book that cannot be used', () => {
  const bad = replaced(OWN, ['bagsPer1000Ft2: 56.3', 'bagsPer1000Ft2: 71.2'])
  test('of an option: its findings are told, nothing is estimated', async () => {
    const ran = await lidwork('estimate a.job.yaml --prices p.yaml', { files: { 'a.job.yaml': JOB, 'p.yaml': bad } })
    expect([ran.code, ran.out]).toEqual([1, ''])
    expect(ran.err).toContain(`p.yaml:${bad.split('\n').findIndex(l => l.includes('71.2')) + 1}:9: error chart-does-not-multiply`)
  })
  test('of a job: a finding in that job, and the others are still done', async () => {
    const files = { 'a.job.yaml': withBooks('{prices: p.yaml}'), 'b.job.yaml': JOB, 'p.yaml': bad }
    const ran = await lidwork('estimate a.job.yaml b.job.yaml --ndjson', { files })
    expect(ran.code).toBe(1)
    expect(ran.out.trim().split('\n')).toHaveLength(1)
    expect(ran.err).toContain('error book-faulty\n')
    expect(ran.err).toContain('See lidwork prices check p.yaml')
  })
  test('that is not there: 3, by option or by job', async () => {
    const option = await lidwork('estimate a.job.yaml --company gone.yaml', { files: { 'a.job.yaml': JOB } })
    expect([option.code, option.out, option.err]).toEqual([3, '', 'lidwork: could not read gone.yaml: there is no such file\n'])
    const own = await lidwork('check jobs/a.job.yaml --json', { files: { 'jobs/a.job.yaml': withBooks('{company: gone.yaml}') } })
    expect(own.code).toBe(3)
    const { findings } = JSON.parse(own.out) as { findings: { code: string; message: string; path: string }[] }
    expect(findings).toMatchObject([{ code: 'book-unread', path: '/books/company', message: 'company: jobs/gone.yaml: there is no such file; write the path from the folder of the job file' }])
  })
  test('a product of the job that the price book lacks is a finding of the job', async () => {
    const files = { 'a.job.yaml': `${JOB}choices: {fill: {main: demo-loose-cellulose}}\n`, 'p.yaml': replaced(OWN, ['item: demo-loose-cellulose', 'item: other-cellulose']) }
    const ran = await lidwork('check a.job.yaml --prices p.yaml', { files })
    expect(ran.code).toBe(1)
    expect(ran.out).toContain('error product-unknown')
  })
})

describe.each([['prices', newPrices], ['company', newCompany]] as const)('%s', (name, made) => {
  test('new writes a file that its check takes, and the schema beside it', async () => {
    const ran = await lidwork(`${name} new books/mine.yaml`, { files: { 'books/readme': '' } })
    expect([ran.code, ran.out, ran.files['books/mine.yaml']]).toEqual([0, '', made()])
    expect(ran.files[`books/lidwork-${name}.schema.json`]).toBe((await lidwork(`schema ${name}`)).out)
    expect(made().split('\n')[0]).toBe(`# yaml-language-server: $schema=./lidwork-${name}.schema.json`)
    const checked = await lidwork(`${name} check books/mine.yaml`, { files: ran.files })
    expect([checked.code, checked.out]).toEqual([0, ''])
  })
  test('new without a name prints it; a file that is there is kept', async () => {
    expect((await lidwork(`${name} new`)).out).toBe(made())
    const kept = await lidwork(`${name} new mine.yaml`, { files: { 'mine.yaml': 'mine' } })
    expect([kept.code, kept.files['mine.yaml']]).toEqual([3, 'mine'])
  })
  test('check tells what is wrong, and ends with 1; a file that is not there with 3', async () => {
    const ran = await lidwork(`${name} check bad.yaml gone.yaml`, { files: { 'bad.yaml': made().replace('\nname: ', '\nnmae: ') } })
    expect(ran.code).toBe(3)
    expect(ran.out).toMatch(/^bad\.yaml:\d+:1: error key-unknown\n/)
    expect(ran.err).toContain('could not read gone.yaml')
    expect((await lidwork(`${name} check bad.yaml`, { files: { 'bad.yaml': '' } })).code).toBe(1)
  })
})

// Contingency by risk, access factors of one's own, deposits by state, revisions: worked by hand from the same house without them.
import { describe, expect, test } from 'vitest'
import { demoCompany } from '../../src/books/demo.ts'
import type { CompanyFile } from '../../src/books/company-file.ts'
import { readCompany } from '../../src/books/read.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

const JOB = newJob()
const estimated = async (company: Partial<CompanyFile> = {}, job = JOB, command = 'estimate a.job.yaml --json'): Promise<string> => {
  const ran = await lidwork(`${command} --company c.yaml`, { files: { 'a.job.yaml': job, 'c.yaml': JSON.stringify({ ...demoCompany, ...company }) } })
  expect(ran.err).toBe('')
  return ran.out
}
const priced = async (company: Partial<CompanyFile> = {}, job = JOB): Promise<EstimateOut> => JSON.parse(await estimated(company, job)) as EstimateOut
const house = (key: string, value: string, job = JOB): string => { const made = job.replace(new RegExp(`^( +)${key}: [^#\\n]*`, 'm'), `$1${key}: ${value} `); expect(made).not.toBe(job); return made }
const said = (company: Partial<CompanyFile>): string[] => readCompany(JSON.stringify({ ...demoCompany, ...company })).findings.map(f => `${f.code} ${f.path}`)
const plain = await priced()
const half = (cents: number, pct: number): number => Math.floor(cents * pct / 100 + 0.5 + 1e-9)

describe('contingency by risk', () => {
  const all = [{ risk: 'old-house', addPct: 3 }, { risk: 'low-headroom', addPct: 2 }, { risk: 'hidden-floor', addPct: 4 }, { risk: 'unknowns', addPct: 1 }] as CompanyFile['contingencyByRisk'] & object
  test.each<[string, string, number]>([['1949', '62', 3], ['1950', '62', 0], ['1949', '35 1/2', 5], ['1950', '36', 0]])('built %s, headroom %s in: %i %% more', async (year, headroom, more) => {
    const job = house('yearBuilt', year, JOB.replace(/headroomIn: [\d /]+/g, `headroomIn: ${headroom} `)), unknown = (await priced({ contingencyByRisk: [{ risk: 'unknowns', addPct: 1 }] }, job)).price.contingencyPct! - 7
    const { price: p } = await priced({ contingencyByRisk: all }, job)
    expect(p.contingencyPct).toBe(7 + more + unknown)
    expect(p.contingencyCents).toBe(half(p.materialsCents! + p.laborCents!, 7 + more + unknown))
    expect(p.risks!.map(r => r.addPct).reduce((a, b) => a + b, 0)).toBe(more + unknown)
  })
  test('only the risks that the company names count, and without any nothing is printed of them', async () => {
    const old = house('yearBuilt', '1920')
    expect((await priced({ contingencyByRisk: [{ risk: 'low-headroom', addPct: 2 }] }, old)).price).toMatchObject({ contingencyPct: 7, risks: [] })
    expect((await priced({}, old)).price.contingencyPct).toBeUndefined()
  })
  test('the year is a starting value: listed as an assumption, and the company may set it', async () => {
    const old = house('yearBuilt', '1955'), by = [{ risk: 'old-house' as const, addPct: 3 }]
    expect((await priced({ contingencyByRisk: by }, house('yearBuilt', '1920'))).assumptions.find(a => a.id === 'risk-year')).toMatchObject({ value: 1950, unit: 'year' })
    expect((await priced({ contingencyByRisk: by }, old)).price.risks).toEqual([])
    expect((await priced({ contingencyByRisk: by, values: [{ id: 'risk-year', value: 1960 }] }, old)).price.risks).toEqual([{ id: 'old-house', addPct: 3, why: 'built 1955, before 1960' }])
  })
  test('the terminal and explain say which', async () => {
    const old = house('yearBuilt', '1920'), by = { contingencyByRisk: [{ risk: 'old-house' as const, addPct: 3 }] }
    expect(await estimated(by, old, 'estimate a.job.yaml')).toContain('3.0% of it: old house, built 1920, before 1950')
    expect(await estimated(by, old, 'explain a.job.yaml price.contingencyPct')).toMatch(/contingencyByRisk, 0,\s+addPct/)
  })
  test('what is wrong', () => {
    expect(said({ contingencyByRisk: [{ risk: 'unknowns', addPct: 1 }, { risk: 'unknowns', addPct: 2 }] })).toEqual(['name-twice /contingencyByRisk/1/risk'])
    expect(said({ contingencyPct: 60, contingencyByRisk: [{ risk: 'unknowns', addPct: 50 }] })).toEqual(['contingency-too-high /contingencyByRisk'])
  })
})

describe('access factors', () => {
  const at = (headroom: string): string => JOB.replace(/headroomIn: [\d /]+/g, `headroomIn: ${headroom} `)
  const hours = (e: EstimateOut, id: string): number => e.tasks.find(t => t.id === id)!.personHours
  const plates = plain.tasks.find(t => t.phase === 'seal' && t.personHours > 0.5)!.id
  const flat: CompanyFile['accessFactors'] = { headroom: [{ factor: 1 }], oldFill: [{ factor: 1 }], webs: [{ webs: 'open', factor: 1 }, { webs: 'w', factor: 1 }, { webs: 'dense', factor: 1 }], hatch: [{ factor: 1 }] }
  test('a list takes the place of the whole built-in one; its edge is the roomier step', async () => {
    const base = hours(await priced({ accessFactors: flat }, at('62')), plates)
    const own = { ...flat, headroom: [{ upToIn: 40, factor: 2 }, { upToIn: 50, factor: 1.5 }, { factor: 1.1 }] }
    for (const [headroom, factor] of [['39', 2], ['40', 1.5], ['49.9', 1.5], ['50', 1.1], ['200', 1.1]] as const) expect(hours(await priced({ accessFactors: own }, at(headroom)), plates) / base, headroom).toBeCloseTo(factor, 1)
  })
  test('the others stay as they are', async () => {
    const e = await priced({ accessFactors: { headroom: [{ upToIn: 24, factor: 2.2 }, { upToIn: 36, factor: 1.6 }, { upToIn: 60, factor: 1.2 }, { factor: 1 }] } })
    expect(e.labor).toEqual(plain.labor)
  })
  test('webs and the hatch', async () => {
    const base = hours(await priced({ accessFactors: flat }), plates)
    expect(hours(await priced({ accessFactors: { ...flat, webs: [{ webs: 'open', factor: 1.5 }, { webs: 'w', factor: 1.5 }, { webs: 'dense', factor: 1.5 }] } }), plates) / base).toBeCloseTo(1.5, 1)
    expect(hours(await priced({ accessFactors: { ...flat, hatch: [{ sidesIn: [90, 90], factor: 1 }, { factor: 1.25 }] } }), plates) / base).toBeCloseTo(1.25, 1)
  })
  test.each<[string, CompanyFile['accessFactors'], string]>([
    ['no open end', { headroom: [{ upToIn: 30, factor: 2 }] }, 'factors-have-no-end /accessFactors/headroom/0/upToIn'],
    ['an open end in the middle', { oldFill: [{ factor: 1 }, { factor: 1.2 }] }, 'factors-out-of-order /accessFactors/oldFill/0'],
    ['from high to low', { headroom: [{ upToIn: 30, factor: 2 }, { upToIn: 20, factor: 1.5 }, { factor: 1 }] }, 'factors-out-of-order /accessFactors/headroom/1/upToIn'],
    ['a word missing', { webs: [{ webs: 'open', factor: 1 }, { webs: 'w', factor: 1 }] }, 'factors-have-no-end /accessFactors/webs'],
    ['a word twice', { webs: [{ webs: 'open', factor: 1 }, { webs: 'w', factor: 1 }, { webs: 'w', factor: 1 }] }, 'name-twice /accessFactors/webs/2/webs'],
    ['any hatch but the last', { hatch: [{ sidesIn: [22, 30], factor: 1 }] }, 'factors-have-no-end /accessFactors/hatch/0/sidesIn'],
    ['hatches from small to large', { hatch: [{ sidesIn: [18, 18], factor: 1.1 }, { sidesIn: [22, 30], factor: 1 }, { factor: 1.2 }] }, 'factors-out-of-order /accessFactors/hatch/1/sidesIn'],
    ['the longer side first', { hatch: [{ sidesIn: [30, 22], factor: 1 }, { factor: 1.2 }] }, 'factors-out-of-order /accessFactors/hatch/0/sidesIn'],
  ])('%s is refused', (_, accessFactors, expected) => { expect(said({ accessFactors: accessFactors! })).toContain(expected) })
})

describe('the deposit', () => {
  const inState = (state: string): string => JOB.replace(/^ {2}state: \w\w/m, `  state: ${state}`).replace(/^ {2}county: [^#\n]*/m, '  climateZone: 5 ').replace(/^( {2}climateZone: 5 [^\n]*\n)([\s\S]*?)^ {2}climateZone: [^\n]*\n/m, '$1$2')
  const total = plain.price.totalCents!
  test.each<[string, number, number]>([
    ['CA', 50, Math.min(100000, Math.floor(total / 10))], ['CA', 5, half(total, 5)], ['MD', 50, Math.floor(total / 3)], ['MA', 33, half(total, 33)], ['ME', 34, Math.floor(total / 3)],
    ['PA', 50, total > 500000 ? Math.floor(total / 3) : half(total, 50)], ['WI', 50, half(total, 50)],
  ])('%s, %i %% wanted: %i cents (limits: summaries of state law)', async (state, depositPct, expected) => {
    const e = await priced({ depositPct }, inState(state))
    expect(e.price.totalCents).toBe(total)
    expect(e.price.depositCents).toBe(expected)
    const codes = e.findings.map(f => f.code), capped = expected < half(total, depositPct)
    expect(codes.includes('deposit-capped')).toBe(capped)
    expect(codes.includes('deposit-unconfirmed')).toBe(state === 'WI')
    if (capped) expect(e.assumptions.find(a => a.id === `deposit-limit-${state.toLowerCase()}`)!.why).toContain('depositRules')
  })
  test('a rule that the company has looked up is no assumption', async () => {
    const e = await priced({ depositPct: 50, depositRules: [{ state: 'CA', maxPct: 10, maxUsd: 1000 }] }, inState('CA'))
    expect(e.price.depositCents).toBe(Math.min(100000, Math.floor(total / 10)))
    expect(e.assumptions.some(a => a.id.startsWith('deposit'))).toBe(false)
  })
  test('one that sets no limit, and one above a price alone', async () => {
    const none = await priced({ depositPct: 50, depositRules: [{ state: 'WI' }] }, inState('WI'))
    expect([none.price.depositCents, none.findings.some(f => f.code.startsWith('deposit'))]).toEqual([half(total, 50), false])
    const edge = (aboveUsd: number) => priced({ depositPct: 50, depositRules: [{ state: 'WI', maxPct: 10, aboveUsd }] }, inState('WI'))
    expect((await edge(total / 100)).price.depositCents).toBe(half(total, 50))
    expect((await edge(Math.floor(total / 100) - 1)).price.depositCents).toBe(Math.floor(total / 10))
  })
  test('none wanted, nothing said', async () => { expect((await priced({}, inState('CA'))).findings.some(f => f.code.startsWith('deposit'))).toBe(false) })
  test('a state twice', () => { expect(said({ depositRules: [{ state: 'CA' }, { state: 'CA', maxPct: 5 }] })).toEqual(['name-twice /depositRules/1/state']) })
})

describe('revisions', () => {
  const total = plain.price.totalCents! / 100
  const job = (rows: string, status = 'sent'): string => `${JOB.replace(/status: \w+/, `status: ${status}`)}\nquote:\n  revisions:\n${rows.split('\n').map(r => `    - {${r}}`).join('\n')}\n`
  test('are listed with what each changed; the last sent is judged by', async () => {
    const text = job(`number: 1, on: 2026-04-02, reason: first quote, price: ${total + 200}, sentOn: 2026-04-03\nnumber: 2, on: 2026-04-20, reason: price of cellulose, changed: "cellulose 14 to 15", price: ${total}`)
    const e = await priced({}, text)
    expect(e.revisions).toEqual([
      { number: 1, on: '2026-04-02', reason: 'first quote', sentOn: '2026-04-03', priceCents: total * 100 + 20000 },
      { number: 2, on: '2026-04-20', reason: 'price of cellulose', changed: 'cellulose 14 to 15', priceCents: total * 100, changeCents: -20000 },
    ])
    expect(e.findings.find(f => f.code === 'price-since-sent')!.message).toContain('$200.00 less')
    const out = (await estimated({}, text, 'estimate a.job.yaml')).replace(/\s+/g, ' ')
    expect(out).toContain('revision 1, 2026-04-02, sent 2026-04-03: first quote.')
    expect(out).toContain('revision 2, 2026-04-20, not sent: price of cellulose.')
    expect(out).toContain('(-200.00)')
  })
  test('a price that is as it was sent is not spoken of; one that was never sent and is not as it says is', async () => {
    expect((await priced({}, job(`number: 1, on: 2026-04-02, reason: first, price: ${total}, sentOn: 2026-04-03`))).findings.filter(f => f.code.startsWith('price-since'))).toEqual([])
    expect((await priced({}, job(`number: 1, on: 2026-04-02, reason: first, price: ${total - 5}`, 'draft'))).findings.map(f => f.code)).toContain('price-since-revision')
  })
  test('the day the last was sent is the day of the quote', async () => {
    const text = job(`number: 1, on: 2026-04-02, reason: first, sentOn: 2026-04-03\nnumber: 2, on: 2026-04-20, reason: again, sentOn: 2026-04-21`), { out: p } = await lidwork('prices new')
    const files = { 'a.job.yaml': text, 'p.yaml': p }
    expect((await lidwork('reprice a.job.yaml --from p.yaml --to p.yaml', { files })).code).toBe(2)
    const { out } = await lidwork('reprice a.job.yaml --from p.yaml --to p.yaml --on 2026-05-01 --ndjson', { files })
    expect(out).toContain('"sentOn":"2026-04-21"')
  })
})

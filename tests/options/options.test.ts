// Options: rows are whole estimates of the same house, no row buries a leak or leaves out safety, and the steps add up.
import { readdirSync, readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import type { OptionsOut } from '../../src/estimate/quotes/options-output.ts'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { estimate } from '../../src/estimate/estimate.ts'
import { options } from '../../src/estimate/quotes/options.ts'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { lidwork } from '../cli/test-io.ts'
import { booksFor, jobOf, make, onHouses, targetOf } from '../property/job.ts'

const folder = new URL('../../examples/', import.meta.url)
const examples = readdirSync(folder).filter(f => f.endsWith('.job.yaml')).sort()
const source = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const optionsOf = (data: JobFile, asked?: Parameters<typeof options>[3]): OptionsOut => { const { made } = make(data); return options(jobOf(data), made, booksFor(data), asked) }

const house = (more: Partial<JobFile> = {}): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'ladder', title: 'A house for a ladder', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004, stories: 1, floorAreaFt2: 1200 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], appliances: [], eaves: [], areas: [{ ...openFloor.sample, heelIn: 20 }], openings: [{ kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 140, gapIn: 0.25, at: 'all' }],
  tests: { cfm50: 2400 }, energy: { heating: { fuel: 'gas', efficiency: 0.8, price: 1.5, yearlyBill: 1500 }, degreeDays: { hdd65: 7000, from: 'a round number' } }, ...more,
})

describe('every example', () => {
  const ajv = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }), validate = ajv.compile(JSON.parse(readFileSync(new URL('../../schemas/options.schema.json', import.meta.url), 'utf8')) as object)
  test.each(examples)('%s', async name => {
    const ran = await lidwork(`options ${name} --json`, { files: { [name]: source(name) } })
    expect([ran.code, ran.err]).toEqual([0, ''])
    const o = JSON.parse(ran.out) as OptionsOut
    expect(validate(o), JSON.stringify(validate.errors)).toBe(true)
    if (o.verdict === 'stop') { expect([o.ladder, o.products, o.choices]).toEqual([[], [], []]); return }
    // Each step is over the one before: the steps add up to the last row, from the first.
    const priced = o.ladder.filter(s => s.totalCents !== undefined)
    for (const [i, s] of o.ladder.entries()) {
      if (i > 0 && s.over) expect(s.over.step).toBe(o.ladder[i - 1]!.id)
      if (s.billCentsLow !== undefined) { expect(s.billCentsLow).toBeLessThanOrEqual(s.billCentsExpected!); expect(s.billCentsExpected!).toBeLessThanOrEqual(s.billCentsHigh!) }
    }
    if (priced.length === o.ladder.length && priced.length > 0) expect(priced.reduce((sum, s) => sum + s.over!.moreCents, 0)).toBe(priced.at(-1)!.totalCents)
    // The text says the same, and nothing in it is wider than the terminal.
    const text = await lidwork(`options ${name}`, { files: { [name]: source(name) } })
    expect(text.code).toBe(0)
    for (const line of text.out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80)
    for (const s of o.ladder) expect(text.out).toContain(s.what)
  })
})

describe('a row', () => {
  const o = optionsOf(house())
  test('is the whole estimate of the house with that target', () => {
    for (const targetR of [30, 38, 49, 60]) {
      const { json } = make(house({ areas: [{ ...openFloor.sample, heelIn: 20, rValue: targetR }] })), row = o.ladder.find(s => s.id === `r-${targetR}`)!
      expect(row).toMatchObject({ totalCents: json.price.totalCents, personHours: json.labor.personHours, bags: json.areas[0]!.bags, averageR: json.areas[0]!.averageR, billCentsExpected: json.savings!.billCentsExpected })
    }
  })
  test('and of the house with that product', () => {
    for (const p of o.products) expect(p.totalCents).toBe(make(house({ choices: { fill: { main: p.product! } } })).json.price.totalCents)
    expect(o.products.map(p => p.totalCents)).toEqual(o.products.map(p => p.totalCents).sort((a, b) => a! - b!))
    expect(o.products.filter(p => p.asWritten).map(p => p.over)).toEqual([undefined])
  })
  test('more R costs more, saves more, and each step pays back later than the one under it', () => {
    const up = o.ladder.filter(s => s.targetR !== undefined)
    for (let i = 1; i < up.length; i++) {
      expect(up[i]!.totalCents!).toBeGreaterThan(up[i - 1]!.totalCents!)
      expect(up[i]!.billCentsExpected!).toBeGreaterThan(up[i - 1]!.billCentsExpected!)
    }
    const years = up.slice(1).map(s => s.over!.paybackYearsExpected ?? 99)
    expect(years).toEqual([...years].sort((a, b) => a - b))
  })
  test('under the target of the file is marked', () => expect(o.ladder.filter(s => s.underTarget).map(s => s.id)).toEqual(['r-30', 'r-38']))
  test('a payback is the more in price over the more in saving, low against high', () => {
    const s = o.ladder.find(x => x.id === 'r-38')!.over!
    expect(s.paybackYearsExpected).toBeCloseTo(s.moreBeforeFloorCents / s.moreBillCentsExpected!, 1)
    expect(s.paybackYearsLow!).toBeLessThanOrEqual(s.paybackYearsExpected!)
  })
})

test('under a minimum charge steps cost nothing more, and pay back by the price before it', () => {
  const data = house(), from = shelf(demoPrices, { ...demoCompany, minimumCharge: 20000 }), books = from.for(targetOf(data)), made = estimate(jobOf(data), books), o = options(jobOf(data), made, books)
  expect(o.ladder.every(s => s.floored && s.totalCents === 2000000)).toBe(true)
  for (const s of o.ladder.slice(1)) { expect(s.over!.moreCents).toBe(0); expect(s.over!.moreBeforeFloorCents).toBeGreaterThan(0); expect(s.over!.inchCents).toBeGreaterThan(0) }
})

describe('what is never optional', () => {
  test('on generated houses every target and product is sealed in the same hours as the file as written, where no gate differs', () => {
    let rows = 0
    onHouses(({ data, made, json }) => {
      if (json.verdict === 'stop') return
      const o = options(jobOf(data), made, booksFor(data)), open = json.gates.filter(g => g.open && /^ceiling-/.test(g.code)).length
      for (const row of [...o.ladder, ...o.products]) if (row.newGates.length === 0 && open === 0) { expect(row.sealingHours, row.id).toBe(json.labor.byPhase.seal ?? 0); rows++ }
    }, 60)
    expect(rows).toBeGreaterThan(50)
  })
  test('the hours of sealing are the same in every step of the ladder', () => {
    for (const targetR of [30, 60]) {
      const at = (rValue: number) => make(house({ areas: [{ ...openFloor.sample, heelIn: 20, rValue }] })).json.tasks.filter(t => t.phase === 'seal').map(t => [t.id, t.personHours])
      expect(at(targetR)).toEqual(at(49))
    }
    const bare = make(house({ areas: [{ ...openFloor.sample, heelIn: 20, cover: 'none' }] })).json.tasks.filter(t => t.phase === 'seal').map(t => t.id)
    expect(bare).toEqual(make(house()).json.tasks.filter(t => t.phase === 'seal').map(t => t.id))
  })
  test('a duct under the fill is wrapped in every row; one that hangs may stay bare, and is sealed all the same', () => {
    const duct = (position: 'hung' | 'floor') => [{ id: 'trunk', in: 'main', use: 'supply', position, material: 'metal', shape: 'round', diameterIn: 8, lengthFt: 20, gapIn: 0.125, insulationR: 0 }] as JobFile['ducts']
    expect(optionsOf(house({ ducts: duct('floor')! })).choices.map(c => c.id)).toEqual([])
    const hung = optionsOf(house({ ducts: duct('hung')! }))
    expect(hung.choices.map(c => c.id)).toEqual(['hung-ducts-unwrapped'])
    expect(hung.choices[0]!.over!.moreCents).toBeLessThan(0)
    const tasks = make(house({ ducts: [{ ...duct('hung')![0]!, wrap: 'no' }] })).json.tasks.map(t => t.phase)
    expect(tasks).toContain('ducts')
    expect(tasks).not.toContain('wrap')
  })
})

test('wrapped flex may be replaced by new insulated flex: a choice, with its price', () => {
  const flex = [{ id: 'run', in: 'main', use: 'supply', position: 'hung', material: 'flex', shape: 'round', diameterIn: 6, lengthFt: 20, gapIn: 0.125, insulationR: 4.2 }] as JobFile['ducts']
  const choice = optionsOf(house({ ducts: flex! })).choices.find(c => c.id === 'flex-replaced')!
  expect(choice.totalCents).toBe(make(house({ ducts: [{ ...flex![0]!, replace: 'yes' }] })).json.price.totalCents)
})
test('a floor behind a knee wall takes the target of the row like any other', () => {
  const crawl = { kind: 'knee-wall-floor', id: 'crawl', rectanglesFt: [[30, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [], wallFt: 30 } as const
  const at = (rValue?: number) => house({ areas: [{ ...openFloor.sample, heelIn: 20, ...(rValue ? { rValue } : {}) }, { ...crawl, ...(rValue ? { rValue } : {}) }] as JobFile['areas'] })
  for (const r of [30, 38]) expect(optionsOf(at()).ladder.find(s => s.id === `r-${r}`)!.totalCents).toBe(make(at(r)).json.price.totalCents)
})

describe('the next inch', () => {
  test('dear gas and a hard winter carry more depth than cheap gas and a mild one', () => {
    const last = (price: number, hdd65: number) => { const o = optionsOf(house({ energy: { heating: { fuel: 'gas', efficiency: 0.8, price, yearlyBill: 4000 }, degreeDays: { hdd65, from: 'a round number' } } })); return o.ladder.findIndex(s => s.id === o.nextInch?.lastThatPays) }
    expect(last(3, 9000)).toBeGreaterThan(last(1, 4000))
    expect(last(0.3, 2000)).toBe(-1)
  })
  test('the company’s years decide', async () => {
    const name = 'quince-lane-14.job.yaml', company = (years: number) => `${readBook}\nvalues: [{id: step-pays-within, value: ${years}}]\n`
    const readBook = (await lidwork('company new -')).out.replace(/^values:.*$/m, '')
    const at = async (years: number) => { const { out, err } = await lidwork(`options ${name} --company c.yaml --json`, { files: { [name]: source(name), 'c.yaml': company(years) } }); expect(err).toBe(''); return (JSON.parse(out) as OptionsOut).nextInch }
    expect((await at(35))!.lastThatPays).toBe('r-38')
    expect((await at(5))!.lastThatPays).toBeUndefined()
  })
  test('without fuel there is none, and the paper says what is missing', () => {
    const { energy: _, ...rest } = house(), o = optionsOf(rest)
    expect(o.nextInch).toBeUndefined()
    expect(o.missing).toEqual(['energy: what a year saves'])
    expect(o.ladder.length).toBeGreaterThan(3)
  })
})

describe('what is asked for', () => {
  const name = 'quince-lane-14.job.yaml', run = (words: string) => lidwork(`options ${name} ${words}`, { files: { [name]: source(name) } })
  test('targets and products of one’s own', async () => {
    const o = JSON.parse((await run('--targets 38,R-44 --products demo-loose-cellulose --json')).out) as OptionsOut
    expect(o.ladder.map(s => s.id)).toEqual(['no-fill', 'r-38', 'r-44'])
    expect(o.products.map(p => p.id)).toEqual(['demo-loose-cellulose'])
  })
  test.each([['--targets 5', 'Write R values'], ['--targets many', 'Write R values'], ['--products straw', 'no blown product straw; it has demo-loose-cellulose']])('%s is wrong use', async (words, said) => {
    const ran = await run(words)
    expect(ran.code).toBe(2)
    expect(ran.out).toBe('')
    expect(ran.err).toContain(said)
  })
  test('ASCII alone where it is asked for', async () => expect((await run('--ascii')).out).toMatch(/^[\x20-\x7e\n]*$/))
})

// Ranges of price and hours, redone apart from the code that made them: by editing the file and pricing it anew, and by arithmetic on what is printed.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { EstimateOut, RangesOut } from '../../src/estimate/output.ts'
import { ranges } from '../../src/estimate/ranges.ts'
import { plain } from '../../src/estimate/to-json.ts'
import { lidwork } from '../cli/test-io.ts'
import { booksFor, jobOf, onHouses } from '../property/job.ts'

const folder = new URL('../../examples/', import.meta.url)
const example = (name: string): string => readFileSync(new URL(`${name}.job.yaml`, folder), 'utf8')
const names = readdirSync(folder).filter(f => f.endsWith('.job.yaml')).map(f => f.replace('.job.yaml', ''))

const run = async (text: string, options = '--json'): Promise<string> => (await lidwork(`estimate a.job.yaml ${options}`, { files: { 'a.job.yaml': text } })).out
const estimate = async (text: string): Promise<EstimateOut> => JSON.parse(await run(text, '--json --ranges')) as EstimateOut
const rangesOf = async (text: string): Promise<RangesOut> => (await estimate(text)).ranges!
/** Before the rounding step, in cents, and hours. */
const pricedAt = async (text: string): Promise<{ cents: number; hours: number }> => {
  const { price, labor } = JSON.parse(await run(text)) as EstimateOut
  return { cents: price.totalCents! - price.roundingCents!, hours: labor.personHours }
}
const swap = (text: string, from: string, to: string): string => { expect(text.split(from)).toHaveLength(2); return text.replace(from, to) }

const all = await Promise.all(names.map(async name => [name, await estimate(example(name))] as const))
const priced = all.filter(([, e]) => e.ranges !== undefined) as (readonly [string, EstimateOut & { ranges: RangesOut }])[]

describe('each example', () => {
  test('has a range where it has a price, and most have something uncertain', () => {
    for (const [name, e] of all) expect(e.ranges === undefined, name).toBe(e.price.totalCents === undefined)
    expect(priced.length).toBeGreaterThan(10)
    expect(priced.filter(([, e]) => e.ranges.uncertain.length > 0).length).toBeGreaterThan(10)
    expect(new Set(priced.flatMap(([, e]) => e.ranges.uncertain.map(u => u.why)))).toEqual(new Set(['about', 'probes', 'unknown']))
  })
  test.each(priced)('%s: the ends follow from the moves that are printed', (_, { ranges: r, price, labor }) => {
    expect(r.totalCentsExpected).toBe(price.totalCents)
    expect(r.personHoursExpected).toBe(labor.personHours)
    const square = (of: (u: RangesOut['uncertain'][number]) => number): number => Math.sqrt(r.uncertain.reduce((sum, u) => sum + of(u) ** 2, 0))
    const base = price.totalCents! - price.roundingCents!, step = 500, down = square(u => u.downCents), up = square(u => u.upCents)
    // Down and up to whole steps of five dollars; a cent off in the sum may be a step where it lies on one.
    expect(r.totalCentsLow).toBe(down === 0 ? price.totalCents : Math.floor((base - down) / step) * step)
    expect(r.totalCentsHigh).toBe(up === 0 ? price.totalCents : Math.ceil((base + up) / step) * step)
    expect(Math.abs(r.personHoursLow - (labor.personHours - square(u => u.downHours)))).toBeLessThan(0.02)
    expect(Math.abs(r.personHoursHigh - (labor.personHours + square(u => u.upHours)))).toBeLessThan(0.02)
    for (const u of r.uncertain) {
      const without = Math.sqrt(Math.max(0, down ** 2 - u.downCents ** 2)) + Math.sqrt(Math.max(0, up ** 2 - u.upCents ** 2))
      expect(Math.abs(u.narrowsCents - (down + up - without)), u.path).toBeLessThan(1.01)
    }
  })
  test.each(priced)('%s: the three to measure again narrow it most', (_, { ranges: r }) => {
    const most = r.uncertain.filter(u => u.narrowsCents >= 50)
    expect(r.measureAgain).toEqual(most.slice(0, 3).map(u => u.path))
    r.uncertain.forEach((u, i) => { if (i > 0) expect(u.narrowsCents).toBeLessThanOrEqual(r.uncertain[i - 1]!.narrowsCents) })
  })
  test.each(names)('%s: the rest of the estimate is as without it, and the same each time', async name => {
    const text = example(name), first = await run(text, '--json --ranges')
    expect(await run(text, '--json --ranges')).toBe(first)
    const { ranges: _, ...rest } = JSON.parse(first) as EstimateOut
    expect(rest).toEqual(JSON.parse(await run(text)))
  })
})

describe('what one figure moves is what editing the file moves', () => {
  const quince = example('quince-lane-14'), juniper = example('juniper-run-27')
  const of = async (text: string, path: string) => (await rangesOf(text)).uncertain.find(u => u.path === path)!
  const moves = async (text: string, ...edited: string[]) => {
    const now = await pricedAt(text), there = await Promise.all(edited.map(pricedAt)), cents = there.map(p => p.cents - now.cents), hours = there.map(p => p.hours - now.hours)
    return { downCents: Math.max(0, ...cents.map(c => -c)), upCents: Math.max(0, ...cents), downHours: Math.max(0, ...hours.map(h => -h)), upHours: Math.max(0, ...hours) }
  }
  const same = (a: Record<string, number>, b: Record<string, number>): void => { for (const k of Object.keys(b)) expect(Math.abs(a[k]! - b[k]!), k).toBeLessThan(k.endsWith('Cents') ? 1.5 : 0.006) }

  test('~152 ft of plate: 136.8 and 167.2', async () => {
    const u = await of(quince, '/openings/7/lengthFt')
    expect(u).toMatchObject({ why: 'about', stands: '~152', ends: [136.8, 167.2], where: 'top-plate in main, all inside walls: lengthFt', line: quince.split('\n').findIndex(l => l.includes('~152')) + 1 })
    same(u as never, await moves(quince, swap(quince, '~152', '136.8'), swap(quince, '~152', '167.2')))
  })
  test('a count goes to whole things: ~28 wire holes are 25 or 31', async () => {
    const u = await of(juniper, '/openings/11/count')
    expect(u).toMatchObject({ ends: [25, 31], better: 'count it' })
    same(u as never, await moves(juniper, swap(juniper, '~28', '25'), swap(juniper, '~28', '31')))
  })
  test('two lights whose label nobody read: each other word', async () => {
    const light = 'count: 2, rating: unknown', u = await of(quince, '/openings/1/rating')
    expect(u).toMatchObject({ why: 'unknown', ends: ['ic-airtight', 'ic', 'non-ic'] })
    same(u as never, await moves(quince, ...['ic-airtight', 'ic', 'non-ic'].map(w => swap(quince, light, `count: 2, rating: ${w}`))))
  })
  test('five probes: mean 3.5, off by 2.13 · 0.17678 ÷ √5 = 0.16839 in', async () => {
    const probes = '[3 1/2, 3 1/4, 3 1/2, 3 3/4, 3 1/2]', u = await of(quince, '/areas/0/existing/0/depthIn')
    expect(u).toMatchObject({ why: 'probes', stands: '5 probes from 3 1/4 to 3 3/4 in', ends: [3.33, 3.67] })
    const to = (mean: number): string => swap(quince, probes, `[${[3.5, 3.25, 3.5, 3.75, 3.5].map(d => (d * mean / 3.5).toFixed(6)).join(', ')}]`)
    same(u as never, await moves(quince, to(3.5 - 0.168391), to(3.5 + 0.168391)))
  })
  test('a single probe by 30 %, and a company may say otherwise, of what is about too', async () => {
    const one = swap(quince, '[3 1/2, 3 1/4, 3 1/2, 3 3/4, 3 1/2]', '[3 1/2]')
    expect(await of(one, '/areas/0/existing/0/depthIn')).toMatchObject({ stands: '1 probe, 3 1/2 in', ends: [2.45, 4.55] })
    const company = (await lidwork('company new c.yaml')).files['c.yaml']!, own = `${company}\nvalues:\n  - {id: one-probe-off, value: 20}\n  - {id: about-off, value: 5}\n`
    const { uncertain, method } = (JSON.parse((await lidwork('estimate a.job.yaml --json --ranges --company c.yaml', { files: { 'a.job.yaml': one, 'c.yaml': own } })).out) as EstimateOut).ranges!
    expect(uncertain.find(u => u.why === 'probes' && u.path.startsWith('/areas/0/existing/0'))!.ends).toEqual([2.8, 4.2])
    expect(uncertain.find(u => u.path === '/openings/7/lengthFt')!.ends).toEqual([144.4, 159.6])
    expect(method).toContain('A figure written ~ may be off by 5 %')
  })
  test('probes written ~ are off twice over: by their spread and by themselves', async () => {
    const rough = swap(quince, '[3 1/2, 3 1/4, 3 1/2, 3 3/4, 3 1/2]', '[~3 1/2, 3 1/4, 3 1/2, 3 3/4, ~3 1/2]')
    // √(0.168391² + 0.07² + 0.07²) = 0.195329
    expect((await of(rough, '/areas/0/existing/0/depthIn')).ends).toEqual([3.3, 3.7])
  })
})

describe('at the edges', () => {
  const sure = example('quince-lane-14').replace(/\[3 1\/2, 3 1\/4, 3 1\/2, 3 3\/4, 3 1\/2\]/, '[3.5, 3.5, 3.5]').replace('[1, 0, 1/2, 1, 1/2]', '[0.6, 0.6]').replace(/~/g, '').replace('rating: unknown', 'rating: non-ic')
  test('a survey without a doubt has a price and no range', async () => {
    const r = await rangesOf(sure)
    expect(r).toMatchObject({ totalCentsLow: r.totalCentsExpected, totalCentsHigh: r.totalCentsExpected, personHoursLow: r.personHoursExpected, personHoursHigh: r.personHoursExpected, measureAgain: [], uncertain: [], outside: [] })
    expect(await run(sure, '--ranges')).toMatch(/price +\$[\d,]+: nothing uncertain in the survey moves it/)
  })
  test('more probes of the same spread narrow it', async () => {
    const few = swap(sure, '[3.5, 3.5, 3.5]', '[3, 4]'), many = swap(sure, '[3.5, 3.5, 3.5]', '[3, 4, 3, 4, 3, 4, 3, 4, 3, 4]')
    const width = (r: RangesOut): number => r.totalCentsHigh - r.totalCentsLow
    expect(width(await rangesOf(many))).toBeLessThan(width(await rangesOf(few)))
  })
  test('an end that the chart does not reach is told, and is no part of the range', async () => {
    // R 63 wanted; 3.5 in of batt leave a need under R-60, its low end one over it, where the chart ends.
    const far = swap(swap(sure, '[3.5, 3.5, 3.5]', '[3, 3.5, 4]'), 'target: {code: iecc-2018}', 'target: {rValue: 72}')
    const r = await rangesOf(far)
    expect(r.outside).toHaveLength(1)
    expect(r.outside[0]).toMatchObject({ path: '/areas/0/existing/0/depthIn', where: 'main, fiberglass-batt: depthIn', why: expect.stringContaining('the chart of demo-loose-cellulose ends at R-60') })
    expect(await run(far, '--ranges')).toContain('not in the range')
  })
  test('an end at which other work would be priced is told, and is no part of the range', async () => {
    // R-49 of 1.815 psf on 2.5 in of old cellulose, 0.333, and a little glass, 0.028: 2.176 of the most, 2.2. Half an inch more of the old is too much.
    const near = swap(swap(sure, '- {fill: fiberglass-batt, depthIn: [3.5, 3.5, 3.5], condition: fair, action: keep}', '- {fill: loose-cellulose, depthIn: [2, 2.5, 3], condition: failed, action: keep}'), 'target: {code: iecc-2018}', 'target: {rValue: 49}')
    const { ranges: r, areas } = await estimate(near)
    expect(areas[0]!.chartR).toBe(49)
    expect(r!.outside).toEqual([{ path: '/areas/0/existing/0/depthIn', line: expect.any(Number) as number, where: 'main, loose-cellulose: depthIn', says: '3.34', why: 'work would stop at ceiling-overloaded-main-1' }])
    expect(r!.totalCentsHigh).toBeLessThan(r!.totalCentsExpected * 1.05)
  })
  test('floor that nobody saw: none to as much sealing as where somebody looked', async () => {
    const seen = await estimate(sure), part = swap(sure, '    joists: {size: 2x6', '    unseenFt2: 104\n    joists: {size: 2x6'), e = await estimate(part), u = e.ranges!.uncertain[0]!
    expect(e.price.totalCents).toBe(seen.price.totalCents)
    expect([seen.verdict, e.verdict]).toEqual(['go', 'conditional'])
    expect(e.price.excludes.join()).toContain('104 ft² of main that nobody could look at')
    expect(u).toMatchObject({ path: '/areas/0/unseenFt2', why: 'unseen', stands: '104 ft2', downCents: 0, downHours: 0, better: 'look there' })
    // A tenth of 1,040 ft² that were seen: a tenth of the hours of sealing in the area.
    const sealing = e.tasks.filter(t => t.phase === 'seal' && t.areas.includes('main')).reduce((sum, t) => sum + t.personHours, 0)
    expect(Math.abs(u.upHours - sealing / 10)).toBeLessThan(0.02)
    expect(u.upCents).toBeGreaterThan(sealing / 10 * 4800)
  })
  test('a house that may not start has none', async () => {
    expect(await estimate(example('tamarack-road-3'))).not.toHaveProperty('ranges')
    expect(await run(example('tamarack-road-3'), '--ranges')).toContain('Nothing may start in this house: no price, and no range.')
  })
  test('not beside the order list', async () => {
    const { code, err } = await lidwork('estimate a.job.yaml --csv --ranges', { files: { 'a.job.yaml': sure } })
    expect([code, err.split('\n')[0]]).toEqual([2, "lidwork: option '--ranges' cannot be used with option '--csv'"])
  })
  test('nothing in a file steers the terminal, in plain letters too', async () => {
    const text = await run(example('quince-lane-14'), '--ranges --ascii')
    expect(text.slice(text.indexOf('by the survey'))).toMatch(/^[\x20-\x7e\n]+$/)
  })
})

test('on generated houses: the ends lie round the price, each move is told, nothing throws', () => {
  let uncertain = 0
  onHouses(({ data, json }) => {
    const linked = ranges(jobOf(data), booksFor(data)), r = linked && plain(linked, '') as RangesOut
    expect(r === undefined).toBe(json.verdict === 'stop')
    if (!r) return
    uncertain += r.uncertain.length
    expect([r.totalCentsExpected, r.personHoursExpected]).toEqual([json.price.totalCents, json.labor.personHours])
    // A price that is taxed or rounded once more may lie a step under the high end.
    expect(r.totalCentsLow).toBeLessThanOrEqual(r.totalCentsExpected)
    expect(r.totalCentsHigh).toBeGreaterThanOrEqual(r.totalCentsExpected - 500)
    expect(r.personHoursLow).toBeLessThanOrEqual(r.personHoursExpected + 0.01)
    expect(r.personHoursHigh).toBeGreaterThanOrEqual(r.personHoursExpected - 0.01)
    for (const u of r.uncertain) expect(Math.min(u.downCents, u.upCents, u.downHours, u.upHours, u.narrowsCents), u.path).toBeGreaterThanOrEqual(0)
  }, 60)
  expect(uncertain).toBeGreaterThan(40)
})

/** Density of Student's t, and its area between −t and t by Simpson's rule. */
const within = (t: number, v: number): number => {
  const steps = 4000, lnGamma = (x: number): number => x < 7 ? lnGamma(x + 1) - Math.log(x) : (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + 1 / (12 * x) - 1 / (360 * x ** 3) + 1 / (1260 * x ** 5)
  const scale = Math.exp(lnGamma((v + 1) / 2) - lnGamma(v / 2)) / Math.sqrt(v * Math.PI), density = (x: number): number => scale * (1 + x * x / v) ** (-(v + 1) / 2)
  let sum = density(0) + density(t)
  for (let i = 1; i < steps; i++) sum += density(i * t / steps) * (i % 2 === 1 ? 4 : 2)
  return 2 * sum * t / steps / 3
}
test('Student’s t of the table holds nine of ten, integrated apart from it', async () => {
  const { studentT } = await import('../../src/reference/coverage.ts')
  for (const r of studentT.rows) expect(Math.abs(within(r.factor, r.freedom) - 0.9), `${r.freedom}`).toBeLessThan(0.0011)
})

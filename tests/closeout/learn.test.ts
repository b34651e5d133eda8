// Rates from finished jobs: by hand, and whatever the books of the moment say.
import { describe, expect, test } from 'vitest'
import type { LearnedOut } from '../../src/closeout/learn.ts'
import { newCompany } from '../../src/papers/new-books.ts'
import { lidwork } from '../cli/test-io.ts'
import { text, WORKED } from './close.ts'

/** The worked house: 186 ft of inside plates, 74.165 bags, no access factor. */
const house = (id: string, webs = 'open'): string => WORKED.replace('id: sorrel-bend-27', `id: ${id}`).replace('webs: open', `webs: ${webs}`)
const jobs = (...list: readonly { readonly hours: Readonly<Record<string, number>>; readonly webs?: string; readonly bags?: number; readonly days?: string }[]): Record<string, string> => Object.fromEntries(list.flatMap(({ hours, webs, bags, days }, i) => [
  [`jobs/h${i}.job.yaml`, house(`h${i}`, webs)],
  [`jobs/h${i}.closeout.yaml`, `format: lidwork-closeout/1\njob: h${i}.job.yaml\n${days === undefined ? '' : `days: [${days}]\n`}${bags === undefined ? '' : `areas: [{in: main, bags: ${bags}}]\n`}hours: [${Object.entries(hours).map(([task, h]) => `{task: ${task}, personHours: ${h}}`).join(', ')}]\n`]]))
const learn = async (files: Record<string, string>, line = ''): Promise<LearnedOut> => JSON.parse((await lidwork(`learn jobs --json ${line}`.trim(), { files })).out) as LearnedOut
const rate = (out: LearnedOut, work: string) => out.rates.find(r => r.work === work)!

test('median, count and spread of three jobs: 186 ft of plates in 4, 5 and 9 hours', async () => {
  const out = await learn(jobs({ hours: { 'seal-plates-main-1': 4 } }, { hours: { 'seal-plates-main-1': 9 } }, { hours: { 'seal-plates-main-1': 5 } }))
  const r = rate(out, 'top-plate-inside')
  expect(r).toMatchObject({ jobs: 3, proposed: true, now: 0.025, ofCompany: false, shared: false })
  expect([r.median, r.low, r.high].map(x => Math.round(x * 1e5) / 1e5)).toEqual([0.02688, 0.02151, 0.04839]) // 5, 4 and 9 ÷ 186
})
test('an even number: the mean of the two in the middle', async () => {
  const out = await learn(jobs({ hours: { 'seal-plates-main-1': 4 } }, { hours: { 'seal-plates-main-1': 6 } }))
  expect(rate(out, 'top-plate-inside').median).toBeCloseTo(5 / 186, 5)
})
test('by access: the factor is taken off, and each class stands by itself', async () => {
  // W-trusses 1.15 times; dense webs 1.3.
  const out = await learn(jobs({ hours: { 'seal-plates-main-1': 4.65 } }, { hours: { 'seal-plates-main-1': 4.65 * 1.3 }, webs: 'dense' }, { hours: { 'seal-plates-main-1': 9.3 * 1.3 }, webs: 'dense' }))
  const r = rate(out, 'top-plate-inside')
  expect(r.classes.map(c => [c.access, c.jobs])).toEqual([['plain', 1], ['tight', 2]])
  expect(r.classes.map(c => Math.round(c.median * 1e4) / 1e4)).toEqual([0.025, 0.0375])
})
test('blowing goes by the bags that were used', async () => {
  const out = await learn(jobs({ hours: { 'blow-main': 3 }, bags: 100 }))
  expect(rate(out, 'bag-cellulose-truck').median).toBeCloseTo(0.03, 3) // 3 h ÷ 100 bags
})
test('what the company says now changes nothing of what a job shows', async () => {
  const files = jobs({ hours: { 'seal-plates-main-1': 5, 'blow-main': 2 } }), firm = `${newCompany()}\nrates: [{work: top-plate-inside, hours: 0.05}, {work: bag-cellulose-truck, hours: 0.1}]\n`
  const plain = await learn(files), own = await learn({ ...files, 'firm.yaml': firm }, '--company firm.yaml')
  for (const work of ['top-plate-inside', 'bag-cellulose-truck']) expect(rate(own, work).median).toBeCloseTo(rate(plain, work).median, 5)
  expect([rate(own, 'top-plate-inside').now, rate(own, 'top-plate-inside').ofCompany]).toEqual([0.05, true])
})
test('a task of several rates moves them together, and says so', async () => {
  const out = await learn(jobs({ hours: { 'cap-chimney-main-1': 3 } }))
  expect([rate(out, 'chimney').median, rate(out, 'chimney').shared]).toEqual([3, true]) // twice 1.5
})
test('set-up and clean-up only where the days were as planned; a task that was not done not at all', async () => {
  const days = (n: number) => Array.from({ length: n }, (_, i) => `2026-04-0${i + 1}`).join(', ')
  const out = await learn(jobs({ hours: { 'set-up': 4, look: 0 }, days: days(9) }))
  expect(out.rates.map(r => r.work)).toEqual([])
  expect(out.leftOut.map(l => l.task)).toEqual(['set-up', 'look'])
  const planned = await learn(jobs({ hours: { 'set-up': 4 }, days: days(3) }))
  expect(planned.rates.map(r => r.work)).toEqual(['arrival', 'day-start'])
})

describe('the fragment', () => {
  const three = jobs(...[4, 5, 9].map(h => ({ hours: { 'seal-plates-main-1': h, ...(h === 4 ? { look: 1 } : {}) } })))
  test('proposes what stands on enough jobs, and tells the rest as comments', async () => {
    const ran = await lidwork('learn jobs', { files: three })
    expect([ran.code, ran.err]).toEqual([0, '3 jobs: 1 of 2 rates stand on 3 or more\n'])
    expect(ran.out.split('\n').filter(l => !/^\s*#|^$/.test(l))).toEqual(['rates:', '  - {work: top-plate-inside, hours: 0.0269}'])
    expect(ran.out).toContain('# look: now 0.75, a starting rate; 1 job, 1; access plain')
    expect((await lidwork('learn jobs --least 1', { files: three })).out).toContain('  - {work: look, hours: 1}')
  })
  test('is taken by a company file, and changes no estimate until it is', async () => {
    const { out, files } = await lidwork('learn jobs', { files: three })
    expect(Object.keys(files).sort()).toEqual(Object.keys(three).sort())
    const firm = { 'firm.yaml': `${newCompany()}\n${out}` }
    expect((await lidwork('company check firm.yaml', { files: firm })).code).toBe(0)
    const hours = async (line: string) => (JSON.parse((await lidwork(`estimate jobs/h0.job.yaml --json ${line}`.trim(), { files: { ...three, ...firm } })).out) as { tasks: { id: string; personHours: number }[] }).tasks.find(t => t.id === 'seal-plates-main-1')!.personHours
    expect([await hours(''), await hours('--company firm.yaml')]).toEqual([4.65, 5])
  })
  test('a job that is closed twice counts once, and the others are still done', async () => {
    const files = { ...three, 'jobs/again.closeout.yaml': three['jobs/h0.closeout.yaml']! }
    const ran = await lidwork('learn jobs', { files })
    expect([ran.code, ran.err.includes('it is not counted again')]).toEqual([1, true])
    expect(ran.err).toContain('3 jobs: 1 of 2')
  })
  test('a faulty close-out is told, and the others are still done', async () => {
    const ran = await lidwork('learn jobs --least 1', { files: { ...three, 'jobs/a.closeout.yaml': 'format: lidwork-closeout/1\njob: gone.job.yaml\n' } })
    expect(ran.code).toBe(3)
    expect(ran.out).toContain('hours: 0.0269')
  })
  test('the example teaches what its hours say', async () => {
    const files = Object.fromEntries(['job', 'closeout'].map(k => [`quince.${k}.yaml`, text(`examples/quince-lane-14.${k}.yaml`).replace('quince-lane-14.job.yaml', 'quince.job.yaml')]))
    const out = JSON.parse((await lidwork('learn quince.closeout.yaml --json', { files })).out) as LearnedOut
    expect(rate(out, 'box-light').median).toBeCloseTo(5.5 / (4 * 1.15), 2) // four boxes, old fill 4.1 in: 1.15
    expect(rate(out, 'bag-cellulose-truck').median).toBeCloseTo(2.25 / 66, 4)
  })
})

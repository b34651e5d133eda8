// Coverage charts: do they multiply out, and which row answers a need.
import { describe, expect, test } from 'vitest'
import { answer, chartFaults } from '../../src/books/chart.ts'
import { demoPrices } from '../../src/books/demo.ts'
import type { BlownRow, ChartLine } from '../../src/books/price-book.ts'
import { needR } from '../../src/calc/heat.ts'
import { given, work } from '../../src/units/quantity.ts'

const product = (item: string): BlownRow => demoPrices.blown.find(p => p.item === item)!
const cellulose = product('demo-loose-cellulose'), glass = product('demo-loose-fiberglass')

describe('the charts of no product', () => {
  // Settled = R ÷ R per inch; weight = settled ÷ 12 · density; coverage = bag ÷ weight; bags = 1,000 ÷ coverage; blown = settled ÷ (1 − loss). To half of the last printed digit.
  test.each([[cellulose, 25, 3.6, 1.6, 0.13], [glass, 30, 2.6, 0.55, 0.04]] as const)('$item follows from its R per inch, density and settling', (p, bagLb, perInch, pcf, lost) => {
    expect(p.bagLb).toBe(bagLb)
    expect(p.chart.map(r => r.r)).toEqual([13, 19, 22, 30, 38, 49, 60])
    for (const r of p.chart) {
      const settled = r.r / perInch, psf = settled / 12 * pcf
      const printed = (name: keyof ChartLine, exact: number, step: number) => expect(Math.abs(r[name] - exact), `R-${r.r} ${name}: ${r[name]}, and ${exact}`).toBeLessThanOrEqual(step / 2 + 1e-9)
      printed('settledIn', settled, 0.01)
      printed('blownIn', settled / (1 - lost), 0.01)
      printed('weightPsf', psf, 0.001)
      printed('coverageFt2', bagLb / psf, 0.1)
      printed('bagsPer1000Ft2', 1000 * psf / bagLb, r.bagsPer1000Ft2 < 10 ? 0.01 : 0.1)
    }
  })
  test('rows as they were worked out apart', () => {
    const row = (p: BlownRow, r: number) => p.chart.find(x => x.r === r)
    expect(row(cellulose, 38)).toEqual({ r: 38, settledIn: 10.56, blownIn: 12.13, weightPsf: 1.407, coverageFt2: 17.8, bagsPer1000Ft2: 56.3 })
    expect(row(cellulose, 60)).toEqual({ r: 60, settledIn: 16.67, blownIn: 19.16, weightPsf: 2.222, coverageFt2: 11.2, bagsPer1000Ft2: 88.9 })
    expect(row(glass, 38)).toMatchObject({ settledIn: 14.62, blownIn: 15.22, weightPsf: 0.67, coverageFt2: 44.8 })
  })
})

describe('a chart must multiply out (16 CFR 460.12 columns)', () => {
  test.each([[cellulose], [glass]])('$item has no fault', p => expect(chartFaults(p)).toEqual([]))
  // A misprint in one row is found, and the row is named.
  const misprints: readonly (readonly [keyof ChartLine, number])[] = [['coverageFt2', 1.05], ['coverageFt2', 0.95], ['bagsPer1000Ft2', 1.05], ['bagsPer1000Ft2', 0.95], ['weightPsf', 1.05], ['weightPsf', 0.95], ['settledIn', 1.25], ['settledIn', 0.8], ['blownIn', 0.8], ['r', 0.8], ['r', 1.25]]
  test.each([cellulose, glass].flatMap(p => misprints.flatMap(([name, by]) => p.chart.map((r, i) => [p.item, name, by, r.r, i, p] as const))))('%s: %s × %f in the row R-%i', (_, name, by, _r, i, p) => {
    const chart = p.chart.map((r, n) => (n === i ? { ...r, [name]: Number((r[name] * by).toPrecision(4)) } : r))
    const errors = chartFaults({ ...p, chart }).filter(f => f.severity === 'error')
    expect(errors.map(f => f.row)).toContain(i)
    expect(errors.find(f => f.row === i)!.says).toMatch(new RegExp(`^R-${chart[i]!.r}: .`))
  })
  test('both sides of the equation are in the text', () => {
    const chart = cellulose.chart.map(r => (r.r === 38 ? { ...r, coverageFt2: 19.8 } : r))
    expect(chartFaults({ ...cellulose, chart }).map(f => f.says)).toEqual([
      'R-38: 19.8 ft2 × 56.3 bags = 1114.7, not 1,000',
      'R-38: 19.8 ft2 × 1.407 psf = 27.86 lb, not 25',
    ])
  })
  test('printed digits are forgiven: 11.2 × 88.9 = 995.7 and 11.2 × 2.222 = 24.89', () => {
    expect(chartFaults({ ...cellulose, chart: cellulose.chart.filter(r => r.r === 60) }).filter(f => f.severity === 'error')).toEqual([])
  })
  test('a missing row of the six is a warning', () => {
    expect(chartFaults({ ...cellulose, chart: cellulose.chart.filter(r => r.r !== 22) })).toMatchObject([{ row: 0, severity: 'warning', says: 'no row R-22', why: '16 CFR 460.12 lists R-13, 19, 22, 30, 38 and 49' }])
  })
})

/** What the chart says to so much R short, as the estimate asks it. */
function said(short: number, p: BlownRow = cellulose) {
  const need = work(needR, { shortR: given(short, 'R', '/short') })
  if (need.value <= 0) return { is: 'nothing' } as const
  const a = answer(p, 'book', need)
  return a.is === 'row' ? { is: a.row.interpolated ? 'between' : 'row', r: a.row.chartR, excess: a.excess === true, settledIn: a.row.settledDepthIn.value, blownIn: a.row.initialDepthIn.value, psf: a.row.weightPsf.value, ft2: a.row.coverageFt2.value, below: a.below?.chartR, above: a.above?.chartR } as const
    : a.is === 'leave' ? { is: 'leave', first: a.first.chartR } as const : { is: 'beyond', last: a.last.chartR } as const
}
const tenths = (from: number, to: number) => Array.from({ length: Math.round((to - from) * 10) + 1 }, (_, i) => Math.round(from * 10 + i) / 10)

describe('the row for a need', () => {
  test.each([
    ['−3 to 0.4: nothing', -3, 0.4, 'nothing', undefined], ['0.5 to 6.4: left as it is', 0.5, 6.4, 'leave', undefined], ['6.5 to 13.4: the first row', 6.5, 13.4, 'row', 13], ['14', 13.5, 16.4, 'between', undefined],
    ['17 to 19: R-19', 16.5, 19.4, 'row', 19], ['20 to 22: R-22', 19.5, 22.4, 'row', 22], ['23 to 27', 22.5, 27.4, 'between', undefined], ['28 to 30: R-30', 27.5, 30.4, 'row', 30],
    ['31 to 35', 30.5, 35.4, 'between', undefined], ['36 to 38: R-38', 35.5, 38.4, 'row', 38], ['39 to 46', 38.5, 46.4, 'between', undefined], ['47 to 49: R-49', 46.5, 49.4, 'row', 49],
    ['50 to 57', 49.5, 57.4, 'between', undefined], ['58 to 60: R-60', 57.5, 60.4, 'row', 60], ['over the last row', 60.5, 75, 'beyond', undefined],
  ] as const)('%s', (_, from, to, is, r) => {
    for (const short of tenths(from, to)) {
      const s = said(short)
      expect(s.is, `R ${short} short`).toBe(is)
      if (r !== undefined) expect(s, `R ${short} short`).toMatchObject({ r })
    }
  })
  test('between rows: weight by the straight line, depths up to 1/4 in', () => {
    const row = (short: number) => said(short) as Extract<ReturnType<typeof said>, { r: number }>
    for (const [short, settledIn, blownIn, psf, ft2] of [[14, 4, 4.5, 0.518, 48.2], [38.5, 11, 12.5, 1.444, 17.31], [40, 11.25, 13, 1.481, 16.88]] as const) {
      expect(row(short)).toMatchObject({ is: 'between', r: Math.round(short), settledIn, blownIn })
      expect(row(short).psf).toBeCloseTo(psf, 3)
      expect(Math.abs(row(short).ft2 - ft2)).toBeLessThan(short === 14 ? 0.06 : 0.006)
    }
  })
  test('a row far over a small need says so; a row near it does not', () => {
    expect(said(7)).toMatchObject({ r: 13, excess: true })
    expect(said(10.4)).toMatchObject({ r: 13, excess: true })
    expect(said(11)).toMatchObject({ r: 13, excess: false })
    expect(said(38.4)).toMatchObject({ r: 38, excess: false })
  })
  test('the rows beside it', () => {
    expect(said(37.8)).toMatchObject({ below: 30, above: 49 })
    expect(said(40)).toMatchObject({ below: 38, above: 49 })
    expect(said(60)).toMatchObject({ below: 49, above: undefined })
    expect(said(13)).toMatchObject({ below: undefined, above: 19 })
  })
  test('a book that wants the next row gets it', () => {
    const next: BlownRow = { ...cellulose, between: 'next-row' }
    expect(said(40, next)).toMatchObject({ is: 'row', r: 49 })
    expect(said(14, next)).toMatchObject({ is: 'row', r: 19 })
    for (const short of tenths(6.5, 60.4)) expect(said(short, next).is).toBe('row')
  })
  test.each([['cellulose', cellulose], ['fiberglass', glass], ['cellulose, next row', { ...cellulose, between: 'next-row' } as BlownRow]])('more need never brings less: %s, in steps of 0.1', (_, p) => {
    let before = { r: 0, settledIn: 0, blownIn: 0, psf: 0, ft2: Infinity }
    for (const short of tenths(-3, 60.4)) {
      const s = said(short, p)
      if (s.is !== 'row' && s.is !== 'between') { expect(before.r, `R ${short} short`).toBe(0); continue }
      expect(s.r).toBeGreaterThanOrEqual(before.r)
      expect(s.psf).toBeGreaterThanOrEqual(before.psf)
      expect(s.settledIn).toBeGreaterThanOrEqual(before.settledIn)
      expect(s.blownIn).toBeGreaterThanOrEqual(before.blownIn)
      // A row takes its printed coverage, a figure between rows bag ÷ weight: they part by the printed digit.
      expect(s.ft2).toBeLessThanOrEqual(before.ft2 + 0.06)
      // Never short of the whole R asked for.
      expect(s.r).toBeGreaterThanOrEqual(Math.floor(short + 0.5))
      before = s
    }
  })
})

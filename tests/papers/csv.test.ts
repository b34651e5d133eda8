// The supplier's list: read back by a reader that knows RFC 4180 and nothing of the writer.
import { describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { orderLines } from '../../src/papers/csv.ts'
import { newPrices } from '../../src/papers/new-books.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

/** Records of RFC 4180: CRLF ends each; quotes are doubled inside quotes. */
function records(text: string): string[][] {
  const out: string[][] = []
  let row: string[] = [], field = '', inside = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!
    if (inside) {
      if (c !== '"') field += c
      else if (text[i + 1] === '"') { field += '"'; i++ } else inside = false
    } else if (c === '"' && field === '') inside = true
    else if (c === ',') { row.push(field); field = '' }
    else if (c === '\r' && text[i + 1] === '\n') { out.push([...row, field]); row = []; field = ''; i++ } else if (c === '\n' || c === '\r' || c === '"') throw new Error(`a bare ${JSON.stringify(c)} at ${i}`)
    else field += c
  }
  if (row.length > 0 || field !== '') throw new Error('the last record has no end')
  return out
}

const JOB = newJob()
const csv = async (files: Record<string, string>, line = 'a.job.yaml'): Promise<string> => {
  const ran = await lidwork(`estimate ${line} --csv`, { files })
  expect([ran.code, ran.err]).toEqual([0, ''])
  return ran.out
}

describe('the list', () => {
  test('names its format in its one header line, and holds every material with how many to buy', async () => {
    const [head, ...rows] = records(await csv({ 'a.job.yaml': JOB }))
    expect(head).toEqual(['lidwork-order/1', 'item', 'name', 'buy', 'unit', 'usedFor', 'supplier', 'code', 'fromStock', 'alternates', 'verdict'])
    const { materials, tasks, job } = JSON.parse((await lidwork('estimate a.job.yaml --json', { files: { 'a.job.yaml': JOB } })).out) as EstimateOut
    expect(rows.map(r => r.slice(0, 5))).toEqual(materials.map(m => [job.id, m.item, m.name, String(m.buy), m.buyUnit]))
    expect(new Set(rows.map(r => r[10]))).toEqual(new Set(['hold'])) // nobody has tested the heater
    const bags = rows.find(r => r[1] === 'demo-loose-cellulose')!
    const blow = tasks.find(t => t.id === 'blow-main')!
    expect(bags[5]).toBe(`${blow.step} ${blow.title}`)
  })
  test('no sum of money of the estimate stands in it', async () => {
    const out = await csv({ 'a.job.yaml': JOB })
    const { price, materials } = JSON.parse((await lidwork('estimate a.job.yaml --json', { files: { 'a.job.yaml': JOB } })).out) as EstimateOut
    const sums = [price.totalCents!, price.costCents!, price.laborCents!, price.directCents, ...materials.filter(m => m.totalCents > 1000).map(m => m.totalCents)]
    for (const cents of sums) for (const text of [String(cents), (cents / 100).toFixed(2)]) expect(records(out).flat()).not.toContain(text)
    expect(out).not.toMatch(/margin|markup|wage|cost|cents|\$/i)
  })
  test('many jobs are one list under one header; a stopped house orders nothing', async () => {
    const second = JOB.replace('bramble-court-8', 'bramble-court-9')
    const stopped = JOB.replace('hazards: []', 'hazards: [{kind: vermiculite, in: main, at: under the batts}]')
    expect(stopped).not.toBe(JOB)
    const rows = records(await csv({ 'a.job.yaml': JOB, 'b.job.yaml': second }, 'a.job.yaml b.job.yaml'))
    expect(rows.filter(r => r[0] === 'lidwork-order/1')).toHaveLength(1)
    expect(new Set(rows.slice(1).map(r => r[0]))).toEqual(new Set(['bramble-court-8', 'bramble-court-9']))
    expect(records(await csv({ 'c.job.yaml': stopped }, 'c.job.yaml'))).toHaveLength(1)
  })
  test('goes with no other form', async () => {
    for (const other of ['--json', '--ndjson']) expect((await lidwork(`estimate a.job.yaml --csv ${other}`, { files: { 'a.job.yaml': JOB } })).code).toBe(2)
  })
})

describe('names that mean harm', async () => {
  const e = JSON.parse((await lidwork('estimate a.job.yaml --json', { files: { 'a.job.yaml': JOB } })).out) as EstimateOut
  const m = e.materials[0]!
  const written = (name: string): string[] => records(orderLines({ ...e, materials: [{ ...m, name, buyUnit: name }] }))[0]!
  test.each(['=HYPERLINK("http://x","y")', '+1+1', '-2+3', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '\0=1', '＝1+1'])('%j is text, as a name and as a unit', name => {
    expect([written(name)[2], written(name)[4]]).toEqual([`'${name}`, `'${name}`])
  })
  test.each(['latch "heavy", pair', 'two\nlines', 'a=b', '1/2 in', 'x -1', 'ends with ,', '"', ''])('%j is what it was', name => {
    expect([written(name)[2], written(name)[4]]).toEqual([name, name])
  })
  test('from a price book to the list', async () => {
    const prices = newPrices().replace('name: latch pair', `name: ${JSON.stringify('=cmd|"/c calc"!A1, pair')}`)
    const row = records(await csv({ 'a.job.yaml': JOB, 'p.yaml': prices }, 'a.job.yaml --prices p.yaml')).find(r => r[1] === 'latch-pair')!
    expect(row[2]).toBe(`'=cmd|"/c calc"!A1, pair`)
  })
})

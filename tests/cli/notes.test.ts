// What is nobody's but the office's: it goes through to other programs and onto no paper.
import { describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from './test-io.ts'

const SECRET = 'the dog bites'
const noted = (text: string): string => newJob().replace('  status: draft', `  notes: ${JSON.stringify(text)}\n  status: draft`)
const run = (line: string, text = noted(SECRET)) => lidwork(line, { files: { 'a.job.yaml': text } })

describe('notes of a job', () => {
  test('stand in --json as they are, over several lines too', async () => {
    expect((JSON.parse((await run('estimate a.job.yaml --json')).out) as EstimateOut).job.notes).toBe(SECRET)
    expect((JSON.parse((await run('estimate a.job.yaml --json', noted('one\ntwo'))).out) as EstimateOut).job.notes).toBe('one\ntwo')
  })
  test('stand on no screen and no paper', async () => {
    for (const line of ['estimate a.job.yaml', 'estimate a.job.yaml --csv', 'explain a.job.yaml', 'check a.job.yaml']) expect((await run(line)).out).not.toContain(SECRET)
    const { files, code } = await run('papers a.job.yaml --out out')
    const papers = Object.entries(files).filter(([name]) => name.startsWith('out/'))
    expect([code, papers.length > 2]).toEqual([0, true])
    for (const [name, text] of papers) expect(text, name).not.toContain(SECRET)
  })
  test('change nothing else of the estimate', async () => {
    const [plain, with_] = await Promise.all([newJob(), noted(SECRET)].map(async text => JSON.parse((await run('estimate a.job.yaml --json', text)).out) as EstimateOut))
    const lines = (e: EstimateOut): string => JSON.stringify({ ...e, job: { ...e.job, notes: undefined } }).replace(/"line":\d+/g, '')
    expect(lines(with_!)).toBe(lines(plain!))
  })
  test('end at 2,000 letters', async () => {
    expect((await run('check a.job.yaml', noted('x'.repeat(2000)))).code).toBe(0)
    const { code, out } = await run('check a.job.yaml', noted('x'.repeat(2001)))
    expect(code).toBe(1)
    expect(out).toMatch(/text-too-long[\s\S]*2001 letters; there is room for 2000/)
  })
})

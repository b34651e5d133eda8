// What attics of an age hold: the table adds up, and the note is a question, never a figure.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openJob } from '../../src/cli/jobs.ts'
import { atticStock, stockShares } from '../../src/reference/stock.ts'

describe('attics by the year of the house', () => {
  test('each row sums to 1 within the rounding of its source, and the years follow on each other', () => {
    for (const [i, row] of atticStock.rows.entries()) {
      expect(Math.abs(Object.values(row.r).reduce((a, b) => a + b, 0) - 1), row.built).toBeLessThanOrEqual(0.02)
      if (i > 0) expect(row.from).toBe(atticStock.rows[i - 1]!.to + 1)
    }
  })
  test('bare attics grow rarer with the decades from the 1940s, and are gone after 1990 (ResStock)', () => {
    const bare = atticStock.rows.filter(r => r.from >= 1940).map(r => r.r[0])
    expect(bare.filter((_, i) => i > 4).every(x => x === 0)).toBe(true)
    expect(bare[0]).toBeGreaterThan(bare[4]!)
  })
  test('shares from both sides count the level itself', () => {
    // 1980s: bare 0.005 + R-7 0.046; R-49 alone 0.019.
    expect(stockShares(1985, 6)!.upTo).toBeCloseTo(0.051, 9)
    expect(stockShares(1985, 52)!.from).toBeCloseTo(0.019, 9)
    expect(stockShares(1500, 11)).toBeUndefined()
  })
})

describe('the note', () => {
  const good = readFileSync(join(import.meta.dirname, '../findings/good.job.yaml'), 'utf8')
  const notes = (year: number, layer: string): string[] => {
    const text = good.replace('yearBuilt: 1974', `yearBuilt: ${year}`).replace(/existing:[\s\S]*?(?=\n\S|\n {4}[a-z]|\n {2}- )/, `existing: [${layer}]`)
    expect(text).toContain(`existing: [${layer}]`)
    const made = openJob(Buffer.from(text), 'a.job.yaml')
    if (!made.sound) throw new Error(made.findings.map(f => `${f.code} ${f.path}`).join(' '))
    return made.findings.filter(f => f.code === 'existing-r-rare').map(f => `${f.says}: ${f.why}`)
  }
  const layer = (depth: number, action = 'keep'): string => `{fill: loose-cellulose, depthIn: [${depth}, ${depth}, ${depth}, ${depth}, ${depth}], condition: good, action: ${action}}`
  test('asks where hardly any attic of that age holds so little, or so much', () => {
    expect(notes(1995, layer(2))).toEqual([expect.stringContaining('R 7 lies there in a house of 1995: of vented attics of houses built in the 1990s, hardly any hold that little')])
    expect(notes(1985, layer(14))).toEqual([expect.stringContaining('2 % hold that much')])
  })
  test('is silent where it is usual, and where old fill is taken out', () => {
    expect(notes(1955, layer(3))).toEqual([])
    expect(notes(1995, layer(2, 'remove'))).toEqual([])
  })
})

// Whole estimates rebuilt in a general-purpose formula engine, from the survey and published figures: every figure must come out the same.
import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { lidwork } from '../cli/test-io.ts'
import { cellsOf, stepOf, workedOut, type Worked } from './sheet.ts'

const HOUSES = ['quince-lane-14', 'juniper-run-27', 'laurel-fork-7'] as const

/** Figures that repeat others beside them, or stand in the file or the price book as they are. */
const COPIED = new Set(['step', 'line', 'unitPriceCents', 'wastePct', 'pack', 'packs', 'distanceIn', 'atMost', 'from', 'to', 'wholeBags', 'bagFloorFt2', 'baffleIn', 'damTopIn', 'validDays'])
/** What is worked out; the rest of an estimate is words, or repeats it for one reader. */
const SECTIONS = new Set(['areas', 'eaves', 'atticVents', 'offers', 'sealing', 'ducts', 'airLeakage', 'ventilation', 'ductDelivery', 'savings', 'moisture', 'tasks', 'materials', 'labor', 'price'])
const PARTS = new Set(['layers', 'section', 'stopped', 'alternates', 'substitutes', 'keepOff'])

/** Every number of the estimate, by list.id.name. What a task takes stands under sealing and materials already. */
function figures(value: unknown, path: string, out: Map<string, number>): void {
  if (typeof value === 'number') out.set(path, value)
  else if (Array.isArray(value)) {
    const met = new Map<string, number>()
    value.forEach((v, i) => {
      const own = typeof v === 'object' && v !== null ? (v as Record<string, unknown>)['id'] ?? (v as Record<string, unknown>)['item'] ?? (v as Record<string, unknown>)['chartR'] : undefined, name = String(own ?? i), n = (met.get(name) ?? 0) + 1
      met.set(name, n)
      figures(v, `${path}.${name}${n > 1 ? `-${n}` : ''}`, out)
    })
  }
  else if (typeof value === 'object' && value !== null) for (const [k, v] of Object.entries(value)) {
    if ((path === '' && !SECTIONS.has(k)) || COPIED.has(k) && !(k === 'validDays' && path === 'price') || PARTS.has(k) || (k === 'materials' && path.startsWith('tasks.'))) continue
    figures(v, path === '' ? k : `${path}.${k}`, out)
  }
}

const compared: string[] = []
afterAll(() => { console.log(compared.join('\n')) })

describe.each(HOUSES)('%s', house => {
  const printed = new Map<string, number>()
  let sheet: Worked[] = []
  beforeAll(async () => {
    const file = `${house}.job.yaml`, ran = await lidwork(`estimate ${file} --json`, { files: { [file]: readFileSync(new URL(`../../examples/${file}`, import.meta.url), 'utf8') } })
    figures(JSON.parse(ran.out) as EstimateOut, '', printed)
    sheet = workedOut(house)
    compared.push(`${house}: ${sheet.length} figures rebuilt in the formula engine and compared`)
  })
  test('every cell is a figure of the estimate, to the digits it is printed in', () => {
    const off = sheet.filter(c => {
      const value = printed.get(c.path), step = stepOf(c.path)
      // Figures of many digits carry the error of the sum over the strip at the eave.
      return value === undefined || !(Math.abs(value - c.value) <= step / 2 + 1e-9 + Math.abs(c.value) * 1e-8)
    })
    expect(off.map(c => `${house}.sheet:${c.line} ${c.path} ${c.value}, printed ${String(printed.get(c.path))}`)).toEqual([])
  })
  test('every figure of the estimate has its cell', () => {
    const worked = new Set(sheet.map(c => c.path))
    expect([...printed.keys()].filter(p => !worked.has(p))).toEqual([])
    expect(worked.size).toBe(sheet.length)
    expect(worked.size).toBeGreaterThan(150)
  })
})

describe('the reader of a sheet', () => {
  test('tells figures that must be printed from figures on the way', () => {
    expect(cellsOf('# words\na = 2 # two\nprice.totalCents: a * 3\n\nf(x) = x ? 1 : 2')).toEqual([{ line: 2, text: 'a = 2' }, { line: 3, path: 'price.totalCents', text: 'a * 3' }, { line: 5, text: 'f(x) = x ? 1 : 2' }])
  })
  test('prints to the digits of README.md', () => {
    expect(['price.totalCents', 'areas.main.areaFt2', 'areas.main.uAfter', 'tasks.look.personHours', 'labor.days', 'savings.heatingBtuLow'].map(stepOf)).toEqual([1, 0.1, 0.0001, 0.01, 0.5, 1000])
  })
})

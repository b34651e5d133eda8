// Reference tables: every row says where it comes from, no key twice, plausible figures, and the direction that physics gives.
import { describe, expect, test } from 'vitest'
import * as ceilings from '../../src/reference/ceilings.ts'
import * as fillTables from '../../src/reference/fills.ts'
import type { Table } from '../../src/reference/table.ts'
import * as targetTables from '../../src/reference/targets.ts'
import * as access from '../../src/scope/access.ts'
import * as kind from '../../src/scope/kind.ts'
import { allTables } from '../../src/scope/tables.ts'
import { filesIn, sources, text } from './source.ts'

/** Long ones, made when somebody reads them. */
const MADE_WHEN_ASKED = ['stations', 'county-zones']

type Any = Table<Record<string, unknown>>
const isTable = (v: unknown): v is Any => typeof v === 'object' && v !== null && 'rows' in v && 'obtained' in v
const modules = await Promise.all([...filesIn('src/reference', /\.ts$/), ...filesIn('src/scope', /\.ts$/)].map(async file => await import(/* @vite-ignore */ `../../${file}`) as Record<string, unknown>))
const tables = [...new Set(modules.flatMap(m => Object.values(m)).filter(isTable))]

const OBTAINED = ['published, seen', 'published, seen in a copy', 'from memory, high', 'from memory, medium', 'from memory, low', 'judgment', 'common practice, no source', 'derived', 'company default']
/** The columns that name a row, where they are not its words. */
const KEYS: Readonly<Record<string, readonly string[]>> = {
  'ceiling-limits': ['board', 'thicknessIn', 'spacingIn'], lumber: ['size'], fills: ['fill'], densities: ['fill'], conditions: ['condition'], targets: ['edition'], surfaces: ['what'], 'gap-methods': ['upToIn'],
  pipes: ['series', 'nominalIn'], 'student-t': ['freedom'],
  'access-headroom': ['upTo'], 'access-old-fill': ['upTo'], 'access-webs': ['webs'], 'access-hatch': ['shortIn', 'longIn'],
}
/** What a figure in a unit can be in a house: air to aerogel, foam dust to wet sand, one bay to a hall. */
const LIMITS: Readonly<Record<string, readonly [number, number]>> = { in: [0, 60], 'lb/ft2': [0.5, 10], 'R/in': [1, 7.5], 'lb/ft3': [0.3, 40], R: [0.1, 70], fraction: [0, 0.5], in2: [0.0005, 15], part: [100, 400], Pa: [1, 60], ppm: [9, 1000], cfm: [20, 1000], factor: [1, 3], ft2: [600, 100000], 'as its row says': [1, 60],
  '°F·day': [10, 13000], Btu: [3000, 3e7], lb: [0.1, 30], coefficient: [0.001, 0.05], N: [0.5, 30], stories: [1, 3], zone: [1, 8], 'USD/therm': [0.5, 6], 'cents/kWh': [5, 60], 'USD/gal': [1, 8], year: [2015, 2030], 'year built': [1600, 2100], 'share of attics': [0, 1], 'probes less one': [1, 100], 'standard errors': [1.64, 6.4], USD: [500, 10000] }
/** A last step without an end. */
const endless = (column: string, value: number): boolean => column === 'upTo' && value === Infinity

describe('reference tables', () => {
  test('all of them are looked at here, and stand in reference or beside their kind', () => {
    const made = sources.flatMap(f => f === 'src/reference/table.ts' ? [] : [...text(f).matchAll(/\btable(?:<[^(]*>)?\(\{/g)].map(() => f))
    expect(made.filter(f => !/^src\/(reference|scope)\//.test(f))).toEqual([])
    // The steps of access are made twice by one call.
    expect(tables.length + MADE_WHEN_ASKED.length).toBe(made.length + 1)
    expect(allTables().map(t => t.name).sort(), 'every table is listed').toEqual([...tables.map(t => t.name), ...MADE_WHEN_ASKED].sort())
    expect(tables.map(t => t.name)).toEqual(expect.arrayContaining(Object.keys(KEYS)))
    expect(new Set(tables.map(t => t.name)).size, 'one name for one table').toBe(tables.length)
  })

  test.each(tables.map(t => [t.name, t] as const))('%s: source, how obtained, units, keys, figures', (_, t) => {
    expect(t.title).toMatch(/^[A-Z]/)
    expect(t.source.length, 'a source names a document').toBeGreaterThan(7)
    expect(t.rows.length).toBeGreaterThan(0)
    expect(OBTAINED).toContain(t.obtained)
    const words = KEYS[t.name] ?? Object.keys(t.rows[0]!).filter(k => typeof t.rows[0]![k] === 'string' && !['title', 'source', 'obtained'].includes(k)).concat(Object.keys(t.units).slice(0, 1))
    const keys = t.rows.map(r => words.map(k => { expect(r, k).toHaveProperty(k); return String(r[k]) }).join(' '))
    expect(new Set(keys).size, 'no key twice').toBe(keys.length)
    for (const r of t.rows) {
      if (r.obtained !== undefined) { expect(OBTAINED).toContain(r.obtained); expect(r.source, 'a row obtained otherwise has its own source').toBeDefined() }
      for (const [column, value] of Object.entries(r)) {
        const figures = typeof value === 'number' ? [value] : typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.values(value as Record<string, number>) : []
        for (const x of figures) {
          if (endless(column, x)) continue
          const unit = t.units[column]
          expect(unit, `${t.name}.${column} has a unit`).toBeDefined()
          expect(LIMITS[unit!], `limits of what is plausible in ${unit!}`).toBeDefined()
          const [min, max] = LIMITS[unit!]!
          expect(x, `${keys[t.rows.indexOf(r)]!} ${column}`).toBeGreaterThanOrEqual(column === 'shortIn' || column === 'longIn' ? 0 : min)
          expect(x, `${keys[t.rows.indexOf(r)]!} ${column}`).toBeLessThanOrEqual(max)
        }
      }
    }
    for (const column of Object.keys(t.units)) expect(t.rows.some(r => column in r), `unit of ${column}, which no row has`).toBe(true)
  })
})

const rising = (list: readonly number[], strictly = false): void => list.forEach((x, i) => { if (i > 0) strictly ? expect(x).toBeGreaterThan(list[i - 1]!) : expect(x).toBeGreaterThanOrEqual(list[i - 1]!) })

describe('directions', () => {
  const { targets, zones, editions } = targetTables
  test('a target never falls with the edition, up to 2021', () => {
    expect(targets.rows.map(r => r.edition)).toEqual([...editions])
    for (const z of zones) rising(targets.rows.map(r => r.r[z]))
  })
  test('a target never falls with a colder zone; marine 4 is zone 4', () => {
    for (const r of targets.rows) { rising((['1', '2', '3', '4', '5', '6', '7', '8'] as const).map(z => r.r[z])); expect(r.r['4C']).toBeGreaterThanOrEqual(r.r['4']) }
  })
  test('2021 asks R-60 from zone 4 up and R-49 in zones 2 and 3 (table R402.1.3)', () => {
    const last = targets.rows.at(-1)!.r
    expect(last).toEqual({ '1': 30, '2': 49, '3': 49, '4': 60, '4C': 60, '5': 60, '6': 60, '7': 60, '8': 60 })
  })
  test('a wider spacing or a thinner board never carries more', () => {
    for (const a of ceilings.ceilingLimits.rows) for (const b of ceilings.ceilingLimits.rows) {
      if (a.board === b.board && a.thicknessIn <= b.thicknessIn && a.spacingIn >= b.spacingIn) expect(a.limitPsf, `${a.board} ${a.thicknessIn} at ${a.spacingIn}`).toBeLessThanOrEqual(b.limitPsf)
    }
    for (const r of ceilings.ceilingLimits.rows) expect(r.limitPsf).toBeLessThanOrEqual(ceilings.MOST_PSF_ROW.limitPsf)
  })
  test('milled lumber is smaller than its name, by 1/2 in to 3/4 in', () => {
    for (const { size, widthIn, depthIn } of ceilings.lumber.rows) {
      const [w, d] = size.split('x').map(Number) as [number, number]
      expect(w - widthIn).toBe(0.5)
      expect(d - depthIn).toBe(d > 6 ? 0.75 : 0.5)
    }
  })
  test('access grows harder as headroom falls, old fill deepens, webs close in and the hatch shrinks', () => {
    rising(access.headroomSteps.rows.map(r => r.upTo), true); rising(access.headroomSteps.rows.map(r => -r.factor), true)
    rising(access.oldFillSteps.rows.map(r => r.upTo), true); rising(access.oldFillSteps.rows.map(r => r.factor), true)
    rising(access.websRows.rows.map(r => r.factor), true)
    rising(access.hatchRows.rows.map(r => -r.shortIn), true); rising(access.hatchRows.rows.map(r => r.factor), true)
    for (const steps of [access.headroomSteps, access.oldFillSteps]) expect(steps.rows.at(-1)!.upTo).toBe(Infinity)
    expect(access.headroomSteps.rows.at(-1)!.factor).toBe(1)
  })
  test('gaps grow as the condition falls, and gap classes widen', () => {
    expect(fillTables.conditions.rows.map(r => r.condition)).toEqual(['good', 'fair', 'poor'])
    rising(fillTables.conditions.rows.map(r => r.gaps), true)
    rising(kind.gapMethods.rows.map(r => r.upToIn), true)
  })
})

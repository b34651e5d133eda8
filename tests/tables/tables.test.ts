// The reference tables as they are printed: every figure has unit, source and how it was obtained; what uses it is what the examples say.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv } from 'ajv'
import { parse } from 'csv-parse/sync'
import { describe, expect, test } from 'vitest'
// @ts-expect-error a script of the build, without types
import { usesText } from '../../bin/uses.mjs'
import uses from '../../dist/uses.json'
import { valueIds, workNames } from '../../src/books/names.ts'
import { bibliography, fromMemory, tablesOut } from '../../src/estimate/told/tables.ts'
import type { TablesOut } from '../../src/estimate/told/tables-output.ts'
import { lidwork } from '../cli/test-io.ts'

const tables = tablesOut(uses)

describe('each table', () => {
  test.each(tables.map(t => [t.name, t] as const))('%s: rows of one name each, figures with unit and source, and a use', (name, t) => {
    const cells = t.figures.map(f => `${f.row}|${f.figure}`)
    expect(new Set(cells).size).toBe(cells.length)
    for (const f of t.figures) {
      if (f.figure === 'asked for by no example') continue
      if (typeof f.value === 'number' && name !== 'starting-values') expect(f.unit, `${f.row} ${f.figure}`).not.toBe('')
      expect(f.source, `${f.row} ${f.figure}`).toMatch(/\S{3}/)
      expect(f.obtained).toMatch(/^(published|from memory|judgment|common practice|derived|company default)/)
    }
    expect(t.use !== undefined || t.usedBy.figures.length > 0, 'it says what it decides, or a figure of an example holds it').toBe(true)
  })
  test('the index of uses is what the examples say now', async () => { expect(readFileSync(join(import.meta.dirname, '../../dist/uses.json'), 'utf8')).toBe(await (usesText as () => Promise<string>)()) })
  test('what the index names is there', () => {
    const known = new Set(tables.map(t => t.name)), formulas = new Set(tables.find(t => t.name === 'formulas')!.figures.map(f => f.row))
    expect(Object.keys(uses.tables).filter(t => !known.has(t))).toEqual([])
    expect([...Object.values(uses.tables).flatMap(t => t.formulas), ...Object.keys(uses.formulas)].filter(f => !formulas.has(f))).toEqual([])
    expect(uses.tables.lumber.figures).toContain('areas.*.bags')
    expect(uses.tables.leakage.formulas).toEqual(['leak-of'])
  })
  test('nearly every starting value and rate is asked for by an example, and the others are named', () => {
    for (const [name, ids] of [['starting-values', valueIds], ['starting-rates', workNames]] as const) {
      const t = tables.find(x => x.name === name)!, without = t.figures.filter(f => f.figure === 'asked for by no example')
      expect([...new Set(t.figures.map(f => f.row))].sort()).toEqual([...new Set(ids)].sort())
      expect(without.length / ids.length, without.map(f => f.row).join(' ')).toBeLessThan(0.2)
    }
  })
})

describe('what was held from memory', () => {
  test('is listed figure by figure, with how sure', () => {
    const held = fromMemory(tables), n = held.find(m => m.table === 'n-climate' && m.row === 'zone 1')
    expect(n).toMatchObject({ figure: 'n', value: 15.5, howSure: 'high', source: expect.stringContaining('Sherman 1987') as string })
    for (const m of held) expect(['high', 'medium', 'low', 'not said']).toContain(m.howSure)
    for (const t of tables) for (const f of t.figures) if (f.obtained.startsWith('from memory') && typeof f.value === 'number') expect(held.some(m => m.table === t.name && m.row === f.row && m.figure === f.figure), `${t.name} ${f.row}`).toBe(true)
  })
})

test('the bibliography names each source once, and all that rests on it', () => {
  const list = bibliography(tables)
  expect(new Set(list.map(s => s.source)).size).toBe(list.length)
  for (const s of list) expect(s.tables.length + s.formulas.length + s.values.length, s.source).toBeGreaterThan(0)
  expect(list.find(s => s.source.startsWith('BASC'))!.tables).toEqual(['targets'])
})

describe('lidwork tables', () => {
  test('lists all, each fits the width, and a mistyped name is told', async () => {
    const { code, out, err } = await lidwork('tables')
    expect([code, err]).toEqual([0, ''])
    for (const t of tables) expect(out).toContain(`\n${t.name} `)
    expect(await lidwork('tables leakge')).toMatchObject({ code: 2, out: '', err: expect.stringContaining('did you mean leakage?') as string })
    const { err: none } = await lidwork('tables nosuch')
    expect(none.replaceAll('\n', ' ')).toBe(`lidwork: there is no table nosuch. The tables: ${tables.map(x => x.name).join(', ')} `)
    for (const width of [60, 80]) for (const line of (await lidwork(`tables nosuch --width ${width}`)).err.split('\n')) expect(line.length, line).toBeLessThanOrEqual(width)
  })
  test.each(tables.map(t => t.name).filter(n => n !== 'stations' && n !== 'county-zones'))('%s at 60, 80 and 100 columns, and in ASCII', async name => {
    for (const width of [60, 80, 100]) for (const line of (await lidwork(`tables ${name} --width ${width}`)).out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(width)
    expect((await lidwork(`tables ${name} --ascii`)).out).toMatch(/^[\n\x20-\x7e]*$/)
  })
  test('--json is as its schema says, also for sources and memory', async () => {
    const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(JSON.parse((await lidwork('schema tables')).out) as object)
    for (const words of ['leakage', 'formulas', '--bibliography', '--from-memory', 'targets --from-memory']) {
      const out = JSON.parse((await lidwork(`tables ${words} --json`)).out) as TablesOut
      expect(validate(out), `${words}: ${JSON.stringify(validate.errors)}`).toBe(true)
    }
  })
  test('--csv has a line for each figure, and no cell that a spreadsheet would work out', async () => {
    const rows = parse((await lidwork('tables targets --csv')).out) as string[][]
    expect(rows[0]).toEqual(['lidwork-tables/1', 'row', 'figure', 'value', 'unit', 'source', 'obtained', 'usedBy'])
    // IECC 2021, table R402.1.3: R-60 in zone 5.
    expect(rows.find(r => r[1] === 'iecc-2021' && r[2] === 'r.5')!.slice(3, 5)).toEqual(['60', 'R'])
    for (const words of ['formulas', '--from-memory', '--bibliography']) for (const r of parse((await lidwork(`tables ${words} --csv`)).out) as string[][]) for (const c of r) expect(c).not.toMatch(/^[=+@\t]/)
  })
})

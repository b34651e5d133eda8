// Books of the company's own: what `new` writes is what is built in, and what is wrong in one is said where it stands.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { subcontractNames, valueIds, workNames } from '../../src/books/names.ts'
import { readCompany, readPrices, type BookRead } from '../../src/books/read.ts'
import { findingJson, renderFinding } from '../../src/findings/render.ts'
import { newCompany, newPrices } from '../../src/papers/new-books.ts'
import { draftLimits } from '../../src/reference/draft.ts'
import { filesIn, text } from '../structure/source.ts'

const PRICES = newPrices(), COMPANY = newCompany()
const changed = (from: string, [before, after]: readonly [string, string]): string => {
  if (!from.includes(before)) throw new Error(`no ${before} in the file`)
  return from.replace(before, after)
}
const told = (read: BookRead<unknown>, file = 'a.yaml') => read.findings.map(f => { const { severity, code, line, path } = findingJson(f, read.places, file); return [severity, code, line, path] })
const lineOf = (file: string, part: string): number => file.split('\n').findIndex(l => l.includes(part)) + 1

describe('what new writes', () => {
  test('is the built-in price book to the last figure', () => {
    const read = readPrices(PRICES)
    expect(read.findings).toEqual([])
    expect(read.ok && read.book).toEqual(demoPrices)
  })
  test('is the built-in company file', () => {
    const read = readCompany(COMPANY)
    expect(read.findings).toEqual([])
    expect(read.ok && read.book).toEqual(demoCompany)
  })
  test('its comments can be used as they stand', () => {
    expect(readCompany(COMPANY.replace(/^# ((?:depositPct|lightTreatment|rates|values|subMarkupPct|travelPerMile|permitFee|billWholeDays|salesTax):)/gm, '$1').replace(/^ {2}# - /gm, '  - ')).findings).toEqual([])
    const otherWay = COMPANY.replace(/^(wage|grossMarginPct): .*\n/gm, '').replace(/^# ((?:builtUpWage|overheadPerHour|netProfitPct|travelPerDay):)/gm, '$1')
    expect(readCompany(otherWay).findings).toEqual([])
  })
  test('no line of a comment is wider than an editor window', () => {
    for (const line of `${PRICES}${COMPANY}`.split('\n')) if (line.startsWith('#')) expect(line.length, line).toBeLessThanOrEqual(120)
  })
})

describe('a price book', () => {
  const row = '{r: 38, settledIn: 10.56, blownIn: 12.13, weightPsf: 1.407, coverageFt2: 17.8, bagsPer1000Ft2: 56.3}'
  // 71.2 bags × 17.8 ft² would cover 1,267 ft²; the label of a 25 lb bag says 56.3.
  test('a chart that does not multiply out is refused: product, row, line and both sides', () => {
    const bad = changed(PRICES, [row, row.replace('56.3', '71.2')])
    const read = readPrices(bad)
    expect(read.ok).toBe(false)
    expect(told(read)).toContainEqual(['error', 'chart-does-not-multiply', lineOf(bad, '71.2'), '/blown/0/chart/4'])
    expect(renderFinding(read.findings[0]!, read.places, read.source, 'p.yaml')).toContain('Demo-loose-cellulose, row R-38: 17.8 ft2 × 71.2 bags = 1267.4, not 1,000'.slice(1))
  })
  test('so is a row whose coverage and weight are not the bag', () => {
    expect(told(readPrices(changed(PRICES, [row, row.replace('1.407', '1.507')])))).toContainEqual(['error', 'chart-does-not-multiply', lineOf(PRICES, row), '/blown/0/chart/4'])
  })
  test('a row thinner when blown than settled is refused', () => {
    expect(told(readPrices(changed(PRICES, [row, row.replace('12.13', '10.13')])))).toContainEqual(['error', 'chart-row-wrong', lineOf(PRICES, row), '/blown/0/chart/4'])
  })
  test('a row that 16 CFR 460.12 asks for and the chart lacks is a warning, and the book can be used', () => {
    const read = readPrices(changed(PRICES, [`      - ${row}\n`, '']))
    expect(read.ok).toBe(true)
    expect(told(read)).toEqual([['warning', 'chart-row-missing', PRICES.split('\n').indexOf('    chart:') + 1, '/blown/0/chart']])
  })
  test('a row between those may be left out', () => {
    expect(readPrices(changed(PRICES, ['      - {r: 60, settledIn: 16.67, blownIn: 19.16, weightPsf: 2.222, coverageFt2: 11.2, bagsPer1000Ft2: 88.9}\n', ''])).findings).toEqual([])
  })
  test.each([
    ['an item that stands twice in a role', ['item: latch-pair, role: latch', 'item: weatherstrip-17ft, role: weatherstrip'], 'item-twice'],
    ['an item with two prices', ['item: gypsum-12, role: panel-tray, name: "drywall 1/2, 4×8", unit: ft2, pack: 32, buyUnit: sheet, price: 16', 'item: gypsum-12, role: panel-tray, name: "drywall 1/2, 4×8", unit: ft2, pack: 32, buyUnit: sheet, price: 17'], 'item-differs'],
    ['a blown product with the name of another', ['item: demo-loose-fiberglass', 'item: demo-loose-cellulose'], 'item-twice'],
    ['a blown product with the name of a part', ['item: demo-loose-fiberglass', 'item: latch-pair'], 'item-twice'],
    ['a role that is none', ['role: seam-sealant', 'role: seam-sealent'], 'word-unknown'],
    ['a price with a sign of dollars', ['price: 42, wastePct', 'price: $42, wastePct'], 'number-with-unit'],
    ['a day that is none', ['dated: 2026-01-15', 'dated: 2026-02-30'], 'date-not-real'],
    ['a key that is mistyped', ['price: 42, wastePct', 'prise: 42, wastePct'], 'key-unknown'],
    ['a company file in its place', [PRICES, COMPANY], 'format-unknown'],
  ] as const)('%s', (_, change, code) => {
    const read = readPrices(changed(PRICES, change))
    expect([read.ok, read.findings.filter(f => f.severity === 'error').map(f => f.code)]).toEqual([false, [code]])
  })
  test('a role without a product is a note', () => {
    const line = PRICES.split('\n').find(l => l.includes('role: latch'))!
    expect(told(readPrices(changed(PRICES, [`${line}\n`, ''])))).toEqual([['note', 'role-unfilled', PRICES.split('\n').indexOf('products:') + 1, '/products']])
  })
})

describe('a company file', () => {
  test.each([
    ['a rate that no work has', ['# rates:\n  # - {work: top-plate-inside,', 'rates:\n  - {work: top-plate-insde,'], 'rate-unknown', 'did you mean top-plate-inside?'],
    ['a value that nothing asks for', ['# values:\n  # - {id: bead-seam,', 'values:\n  - {id: bead-sean,'], 'value-unknown', 'did you mean bead-seam?'],
    ['a trade that is not asked', ['work: light-surface', 'work: light-swop'], 'subcontract-unknown', 'did you mean light-swap?'],
    ['a price that stands twice', ['work: light-surface', 'work: light-swap'], 'name-twice', 'take one of them out'],
    ['part of a cent', ['wage: 48\n', 'wage: 48.125\n'], 'part-of-a-cent', 'write 48.13'],
    ['half a person in the crew', ['crew: 2 ', 'crew: 2.5 '], 'number-not-whole', 'write 2 or 3'],
    ['a price book in its place', [COMPANY, PRICES], 'format-unknown', 'name a company file instead'],
  ] as const)('%s', (_, change, code, mend) => {
    const read = readCompany(changed(COMPANY, change))
    expect([read.ok, read.findings.map(f => [f.code, f.mend])]).toEqual([false, [[code, mend]]])
  })
})

describe('the names that a company file may use', () => {
  const source = filesIn('src/scope', /\.ts$/).concat(filesIn('src/estimate', /\.ts$/), 'src/books/open.ts').map(f => text(f)).join('\n')
  const called = (pattern: RegExp): string[] => [...new Set([...source.matchAll(pattern)].map(m => m[1]!))]
  test('are those that the kinds ask for: a new one needs a place in src/books/names.ts', () => {
    const rates = [...called(/\brate\('([a-z-]+)'/g), ...called(/\bhours\([^\n]*?'([a-z-]+)', [\d.]+, '/g)]
    expect(rates.length).toBeGreaterThan(25)
    expect(rates.filter(r => !workNames.includes(r))).toEqual([])
    const starts = called(/\bstart\('([a-z0-9-]+)'/g)
    expect(starts.length).toBeGreaterThan(15)
    expect(starts.filter(s => !valueIds.includes(s))).toEqual([])
  })
  test('and none that nothing asks for', () => {
    const bags = ['bag-cellulose-truck', 'bag-cellulose-rental', 'bag-glass-truck', 'bag-glass-rental'] // made from the machine
    const limits = draftLimits.rows.map(l => `draft-limit-${l.vent}`) // made from the vent
    expect(source).toContain('`draft-limit-${vent}`')
    for (const bag of bags) expect(source).toContain(`\`${bag.replace(/truck|rental/, '${machine}')}\``)
    expect([...workNames, ...valueIds, ...subcontractNames].filter(n => !bags.includes(n) && !limits.includes(n) && !source.includes(`'${n}'`))).toEqual([])
  })
})

test('the folder of the schemas has the names that the files point at', () => {
  for (const name of ['prices', 'company']) expect(JSON.parse(readFileSync(join(import.meta.dirname, `../../schemas/${name}.schema.json`), 'utf8'))).toMatchObject({ $id: `lidwork-${name}-1` })
})

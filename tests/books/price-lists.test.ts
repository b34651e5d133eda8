// Two price books beside each other, and a supplier's list into one: nothing half written, every fault at its cell.
import fc from 'fast-check'
import { spawn } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { demoPrices } from '../../src/books/demo.ts'
import type { BlownRow, PriceBook, ProductRow } from '../../src/books/price-book.ts'
import { readPrices } from '../../src/books/read.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import type { PricesDiffOut } from '../../src/estimate/quotes/price-diff.ts'
import { newPrices } from '../../src/papers/new-books.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork, testIo } from '../cli/test-io.ts'

const JOB = newJob(), BOOK = newPrices(), SEALANT = 'sealant-10oz', BAGS = 'demo-loose-cellulose'
const changed = (changes: Readonly<Record<string, Partial<ProductRow & BlownRow>>>, more: readonly ProductRow[] = [], less: readonly string[] = []): string => JSON.stringify({
  ...demoPrices, products: [...demoPrices.products.filter(p => !less.includes(p.item)).map(p => ({ ...p, ...changes[p.item] })), ...more], blown: demoPrices.blown.map(p => ({ ...p, ...changes[p.item] })),
} as PriceBook)

describe('diff', () => {
  const diff = async (old: string, now: string, options = '', files: Record<string, string> = {}): Promise<PricesDiffOut> => {
    const ran = await lidwork(`prices diff old.yaml new.yaml --json ${options}`, { files: { ...files, 'old.yaml': old, 'new.yaml': now } })
    expect([ran.code, ran.err]).toEqual([0, ''])
    return JSON.parse(ran.out) as PricesDiffOut
  }
  const of = (d: PricesDiffOut, item: string) => d.items.find(i => i.item === item)
  test('nothing between a book and itself', async () => {
    expect((await diff(BOOK, BOOK)).items).toEqual([])
    expect((await lidwork('prices diff a.yaml a.yaml', { files: { 'a.yaml': BOOK } })).out).toContain('Nothing is different.')
  })
  test('added, dropped, changed; what changed most first', async () => {
    const d = await diff(BOOK, changed({ [SEALANT]: { price: 5.5 }, 'gypsum-12': { price: 8 }, 'baffle-14': { price: 1.92 } }, [{ ...demoPrices.products[0]!, item: 'new-tube' }], ['latch-pair']))
    expect(d.items.map(i => [i.item, i.change, i.changePct])).toEqual([['gypsum-12', 'changed', -50], [SEALANT, 'changed', 10], ['baffle-14', 'changed', 1.1], ['new-tube', 'added', undefined], ['latch-pair', 'dropped', undefined]])
    expect(of(d, SEALANT)).toMatchObject({ oldPriceCents: 500, newPriceCents: 550 })
  })
  test('a smaller pack at the same price is a rise: 10.1 oz to 9 oz is 12.2 %', async () => {
    expect(of(await diff(BOOK, changed({ [SEALANT]: { pack: 9 } })), SEALANT)).toMatchObject({ changePct: 12.2, also: ['pack 10.1 to 9'] })
  })
  test('a blown product by the row of its chart that changes most: 14 % more bags at R-60, the bag 5 % dearer', async () => {
    const { chart } = demoPrices.blown[0]!, thinner = chart.map(r => (r.r === 60 ? { ...r, coverageFt2: 9.82, bagsPer1000Ft2: 101.8, weightPsf: 2.546, settledIn: 17.7, blownIn: 20.3 } : r))
    const i = of(await diff(BOOK, changed({ [BAGS]: { price: 14.7, chart: thinner } })), BAGS)!
    expect(i.changePct).toBeCloseTo((1.05 * 101.8 / 88.9 - 1) * 100, 1)
    expect(i.also).toEqual(['row R-60 changes most', 'row R-60: 88.9 to 101.8 bags for 1,000 ft2, 16.67 to 17.7 in settled, 19.16 to 20.3 in as blown'])
  })
  test('a row that is only deeper, or only heavier, is told as that', async () => {
    const { chart } = demoPrices.blown[0]!, other = (more: object) => chart.map(r => (r.r === 60 ? { ...r, ...more } : r))
    expect(of(await diff(BOOK, changed({ [BAGS]: { chart: other({ blownIn: 20.3 }) } })), BAGS)!.also).toEqual(['row R-60: 19.16 to 20.3 in as blown'])
    expect(of(await diff(BOOK, changed({ [BAGS]: { chart: other({ weightPsf: 2.24 }) } })), BAGS)!.also.at(-1)).toMatch(/^row R-60: [\d.]+ to 2\.24 psf$/)
  })
  test('with jobs, by effect, which is that of the same jobs estimated with both books', async () => {
    const files = { 'jobs/a.job.yaml': JOB, 'jobs/b.job.yaml': JOB.replace(/^ {2}id: .+$/m, '  id: house-2') }
    const now = changed({ [SEALANT]: { price: 9 }, [BAGS]: { price: 14.5, breaks: [{ atLeast: 30, price: 14.2 }] }, 'stair-cover-rigid': { price: 900 } }, [], ['latch-pair'])
    const d = await diff(BOOK, now, '--jobs jobs', files)
    const materials = async (book: string): Promise<Map<string, number>> => new Map((JSON.parse((await lidwork('estimate a.job.yaml --json --prices p.yaml', { files: { 'a.job.yaml': JOB, 'p.yaml': book } })).out) as EstimateOut).materials.map(m => [m.item, m.totalCents]))
    const before = await materials(BOOK), after = await materials(changed({ [SEALANT]: { price: 9 }, [BAGS]: { price: 14.5, breaks: [{ atLeast: 30, price: 14.2 }] } }))
    for (const item of [SEALANT, BAGS]) expect(of(d, item)!.effectCents, item).toBe(2 * (after.get(item)! - before.get(item)!))
    expect(of(d, 'stair-cover-rigid')).toMatchObject({ changePct: 275, effectCents: 0, jobs: 0 })
    expect([d.jobs, d.effectCents]).toEqual([2, d.items.reduce((sum, i) => sum + (i.effectCents ?? 0), 0)])
    expect(d.items[0]!.item).toBe(before.has('latch-pair') ? 'latch-pair' : d.items[0]!.item)
    expect(d.items.at(-1)!.item).toBe('stair-cover-rigid')
  })
  test('a job with errors is told, and the others count; a book with errors is told', async () => {
    const files = { 'old.yaml': BOOK, 'new.yaml': changed({ [SEALANT]: { price: 9 } }), 'jobs/a.job.yaml': JOB, 'jobs/b.job.yaml': JOB.replace('\nhouse:', '\nhuose:') }
    const ran = await lidwork('prices diff old.yaml new.yaml --jobs jobs', { files })
    expect(ran.code).toBe(1)
    expect(ran.err).toContain('key-unknown')
    expect(ran.out).toContain('material of 1 job')
    const bad = await lidwork('prices diff old.yaml new.yaml', { files: { ...files, 'new.yaml': BOOK.replace('\nname:', '\nnaem:') } })
    expect([bad.code, bad.out]).toEqual([1, ''])
    expect((await lidwork('prices diff old.yaml gone.yaml', { files })).code).toBe(3)
  })
  test('JSON is what its schema says; CSV has a line for each item; no line is wider than the terminal', async () => {
    const files = { 'old.yaml': BOOK, 'new.yaml': changed({ [SEALANT]: { price: 5.5, name: '=1+1' } }, [], ['latch-pair']), 'a.job.yaml': JOB }
    const d = JSON.parse((await lidwork('prices diff old.yaml new.yaml --jobs a.job.yaml --json', { files })).out) as PricesDiffOut
    const validate = new Ajv({ strict: true, allowUnionTypes: true }).compile(JSON.parse((await lidwork('schema prices-diff')).out) as object)
    expect(validate(d), JSON.stringify(validate.errors)).toBe(true)
    const csv = (await lidwork('prices diff old.yaml new.yaml --csv --bom', { files })).out
    expect(csv.startsWith('\ufefflidwork-prices-diff/1,')).toBe(true)
    expect(csv.trimEnd().split('\r\n')).toHaveLength(3)
    expect(csv).toContain("'=1+1")
    for (const line of (await lidwork('prices diff old.yaml new.yaml --jobs a.job.yaml', { files })).out.split('\n')) expect(line.length).toBeLessThanOrEqual(80)
  })
})

describe('import', () => {
  const MAP = 'format: lidwork-import/1\ncolumns: {item: SKU, price: Net, stock: On hand, code: Number}\nbreaks: [{atLeast: 50, column: 50+}]\n'
  const HEAD = 'SKU,Net,On hand,Number,50+'
  const ran = (rows: readonly string[], { map = MAP, book = BOOK, options = '', head = HEAD }: { map?: string; book?: string; options?: string; head?: string } = {}) =>
    lidwork(`prices import l.csv --map m.yaml --into p.yaml --dated 2026-04-01 ${options}`, { files: { 'l.csv': [head, ...rows].join('\r\n'), 'm.yaml': map, 'p.yaml': book } })
  const bookIn = (text: string | null | undefined): PriceBook => { const read = readPrices(text!); if (!read.ok) throw new Error(JSON.stringify(read.findings)); return read.book }

  test('the mapping of README.md is one', async () => {
    const page = readFileSync(new URL('../../README.md', import.meta.url), 'utf8'), map = /```yaml\n(format: lidwork-import\/1\n[\s\S]*?)```/.exec(page)![1]!
    const { code, files } = await ran(['DS-1,5.25,7,4.9', 'DS-9,1,,'], { map, head: 'SKU,Net price,On hand,Price 50+', book: BOOK.replace(`item: ${SEALANT},`, `item: ${SEALANT}, code: DS-1,`) })
    expect([code, bookIn(files['p.yaml']).products[0]]).toMatchObject([0, { price: 5.25, stock: 7, breaks: [{ atLeast: 50, price: 4.9 }] }])
  })
  test('changes what the list says, and no other sign of the book', async () => {
    const { code, files } = await ran([`${SEALANT},$5.25,6,DS-1,`, `${BAGS},"1,014.80",,DS-2,13.9`])
    expect(code).toBe(0)
    const before = BOOK.split('\n'), after = files['p.yaml']!.split('\n'), cellulose = after.findIndex(l => l.includes('price: 1014.8'))
    expect(after.slice(cellulose, cellulose + 3)).toEqual(['    price: 1014.8', '    code: DS-2', '    breaks: [{atLeast: 50, price: 13.9}]'])
    const rest = after.filter((_, i) => i !== cellulose + 1 && i !== cellulose + 2)
    expect(rest.map((l, i) => (l === before[i] ? '' : l.trim())).filter(l => l !== '')).toEqual([
      'dated: 2026-04-01                             # day of the prices', expect.stringMatching(/^- \{item: sealant-10oz, .*price: 5\.25, wastePct: 10, charge: used, stock: 6, code: DS-1\}$/), 'price: 1014.8'])
  })
  test('what is in the book afterwards is what the list says, whatever it says', async () => {
    const items = [...new Set([...demoPrices.products, ...demoPrices.blown].map(p => p.item))]
    await fc.assert(fc.asyncProperty(fc.uniqueArray(fc.record({ item: fc.constantFrom(...items), price: fc.integer({ min: 1, max: 999999 }), stock: fc.option(fc.integer({ min: 0, max: 500 })) }), { selector: r => r.item, minLength: 1, maxLength: 12 }), fc.boolean(), async (rows, json) => {
      const { files, code } = await ran(rows.map(r => `${r.item},${(r.price / 100).toFixed(2)},${r.stock ?? ''},,`), { book: json ? JSON.stringify(demoPrices) : BOOK })
      expect(code).toBe(0)
      const after = bookIn(files['p.yaml'])
      const expected = (p: ProductRow | BlownRow) => { const r = rows.find(x => x.item === p.item); return r ? { ...p, price: r.price / 100, ...(r.stock === null ? {} : { stock: r.stock }) } : p }
      expect(after).toEqual({ ...demoPrices, dated: '2026-04-01', products: demoPrices.products.map(expected), blown: demoPrices.blown.map(expected) })
    }), { seed: 8, numRuns: 25 })
  })
  test('a second time it changes nothing', async () => {
    const rows = [`${SEALANT},5.25,6,DS-1,`, `${BAGS},15,,DS-2,13.9`], first = await ran(rows), second = await ran(rows, { book: first.files['p.yaml']! })
    expect(second.files['p.yaml']).toBe(first.files['p.yaml'])
    expect(second.err).toContain('0 products changed, 2 as they were')
  })
  test('a book with CRLF keeps its line ends; by code; with other signs between columns', async () => {
    const { files } = await ran([`${SEALANT};5.25`], { head: 'SKU;Net', book: BOOK.replaceAll('\n', '\r\n'), map: 'format: lidwork-import/1\ndelimiter: semicolon\ncolumns: {item: SKU, price: Net}\n' })
    expect(files['p.yaml']!.replaceAll('\r\n', '')).not.toContain('\n')
    const coded = BOOK.replace(`item: ${SEALANT},`, `item: ${SEALANT}, code: DS-9,`)
    const byCode = await ran(['DS-9\t5.25'], { head: 'No\tNet', book: coded, map: 'format: lidwork-import/1\ndelimiter: tab\nmatch: code\ncolumns: {code: No, price: Net}\n' })
    expect(bookIn(byCode.files['p.yaml']).products[0]!.price).toBe(5.25)
  })
  test('new products, where the mapping says so', async () => {
    const map = 'format: lidwork-import/1\nunlisted: add\ncolumns: {item: SKU, price: Net, name: What, pack: Oz}\nfill: {role: seam-sealant, unit: fl oz, charge: used, buyUnit: tube, supplier: demo supply}\n'
    const { files, err } = await ran(['sealant-29oz,9,"latex sealant, 29 oz",29', `${SEALANT},5.25,"latex sealant, 10.1 oz",10.1`], { head: 'SKU,Net,What,Oz', map })
    expect(bookIn(files['p.yaml']).products.at(-1)).toEqual({ item: 'sealant-29oz', role: 'seam-sealant', name: 'latex sealant, 29 oz', unit: 'fl oz', pack: 29, buyUnit: 'tube', price: 9, charge: 'used', supplier: 'demo supply' })
    expect(err).toContain('1 added')
    const bad = await ran(['SEALANT 29,9,x,29', 'b,9,,29'], { head: 'SKU,Net,What,Oz', map: map.replace('role: seam-sealant', 'role: seam-sealent') })
    expect(bad.err.match(/error [a-z-]+/g)).toEqual(['error cell-not-known', 'error cell-not-known', 'error cell-not-known', 'error cell-not-known'])
    expect(bad.err).toContain('Did you mean seam-sealant?')
  })
  test.each<[string, readonly string[], string]>([
    ['a price that is none', [`${SEALANT},5..25,,,`], 'l.csv:2:14: error cell-not-a-number'],
    ['thousands out of place', [`${SEALANT},"1,2.5",,,`], 'l.csv:2:14: error cell-not-a-number'],
    ['below nothing', [`${SEALANT},-5,,,`], 'l.csv:2:14: error cell-not-a-number'],
    ['too much', [`${SEALANT},9999999,,,`], 'l.csv:2:14: error cell-out-of-range'],
    ['no price', [`${SEALANT},,6,,`], 'l.csv:2:1: error cell-empty'],
    ['no item', [',5,,,'], 'l.csv:2:1: error cell-empty'],
    ['an item twice', [`${SEALANT},5,,,`, '', `${SEALANT},5,,,`], 'l.csv:4:1: error item-twice'],
    ['an item that the book has not', ['sealant-10,5,,,'], 'l.csv:2:1: error item-unlisted'],
    ['a cell too few, behind a text of two lines', [`"${SEALANT}",5,,"a\nb",`, 'x,1'], 'l.csv:4:1: error row-of-other-length'],
    ['a break that costs more', [`${SEALANT},5,,é,6`], 'l.csv:2:19: error break-not-cheaper'],
    ['a quote left open', [`${SEALANT},5,,"x,`], 'l.csv:2:17: error quote-not-closed'],
    ['a quote in a cell', [`${SEALANT},5,,3/4" x,`], 'l.csv:2:20: error quote-in-cell'],
  ])('%s: at its cell, and nothing is written', async (_, rows, said) => {
    const { code, err, out, files } = await ran([`${BAGS},15,,,`, ...rows].slice(rows.length > 2 ? 1 : 0).filter((r, i) => i > 0 || r !== `${BAGS},15,,,`))
    expect([code, out]).toEqual([1, ''])
    expect(err.split('\n')[0]).toBe(said)
    expect(err).toContain('p.yaml: nothing written')
    expect(files['p.yaml']).toBe(BOOK)
  })
  test.each<[string, string, string]>([
    ['a heading that is not there', MAP.replace('price: Net', 'price: Nett'), 'm.yaml:2:29: error column-missing'],
    ['no column for what is matched', MAP.replace('item: SKU, ', ''), 'm.yaml:2:1: error match-without-column'],
    ['a key that is not there', MAP.replace('stock:', 'stok:'), 'm.yaml:2:34: error key-unknown'],
    ['breaks from many to few', MAP.replace('[{', '[{atLeast: 60, column: 50+}, {'), 'm.yaml:3:48: error breaks-out-of-order'],
    ['adding without a pack', `${MAP}unlisted: add\n`, 'm.yaml:4:11: error add-without-column'],
  ])('a mapping with %s', async (_, map, said) => {
    const { code, err, files } = await ran([`${SEALANT},5,,,`], { map })
    expect([code, err.split('\n')[0]]).toEqual([1, said])
    expect(files['p.yaml']).toBe(BOOK)
  })
  test('bytes that are no UTF-8, and an empty list', async () => {
    const io = testIo({ files: { 'm.yaml': MAP, 'p.yaml': BOOK, 'l.csv': '' } })
    const bytes = (text: number[]) => ({ ...io, readFile: (path: string) => (path === 'l.csv' ? { bytes: new Uint8Array(text) } : io.readFile(path)) })
    expect(await main(['prices', 'import', 'l.csv', '--map', 'm.yaml', '--into', 'p.yaml', '--dated', '2026-04-01'], bytes([0x53, 0xe9, 0x2c]))).toBe(1)
    expect(io.ended().err).toContain('error not-utf-8')
    expect(await main(['prices', 'import', 'l.csv', '--map', 'm.yaml', '--into', 'p.yaml', '--dated', '2026-04-01'], bytes([]))).toBe(1)
    expect(io.ended().files['p.yaml']).toBe(BOOK)
  })
  test('a disk that is full, a day that is none, --dry-run and --out', async () => {
    const files = { 'l.csv': `${HEAD}\n${SEALANT},5.25,,,\n`, 'm.yaml': MAP, 'p.yaml': BOOK }, io = testIo({ files })
    expect(await main(['prices', 'import', 'l.csv', '--map', 'm.yaml', '--into', 'p.yaml', '--dated', '2026-04-01'], { ...io, writeFile: () => ({ failure: 'other', message: 'the disk is full' }) })).toBe(3)
    expect(io.ended().err).toContain('could not write p.yaml: the disk is full; what was there is kept')
    expect((await lidwork('prices import l.csv --map m.yaml --into p.yaml --dated 2026-02-30', { files })).code).toBe(2)
    const dry = await lidwork('prices import l.csv --map m.yaml --into p.yaml --dated 2026-04-01 --dry-run', { files })
    expect([dry.code, dry.files['p.yaml'], dry.out.includes('+5.0%')]).toEqual([0, BOOK, true])
    const out = await lidwork('prices import l.csv --map m.yaml --into p.yaml --dated 2026-04-01 --out new.yaml', { files: { ...files, 'new.yaml': 'mine' } })
    expect([out.code, out.files['new.yaml'], out.files['p.yaml']]).toEqual([3, 'mine', BOOK])
    const forced = await lidwork('prices import l.csv --map m.yaml --into p.yaml --dated 2026-04-01 --out new.yaml --force', { files: { ...files, 'new.yaml': 'mine' } })
    expect([forced.files['p.yaml'], bookIn(forced.files['new.yaml']).products[0]!.price]).toEqual([BOOK, 5.25])
  })
  test('a list older than the book is refused, tried or not; --force takes it; one of the same day is taken', async () => {
    const files = { 'l.csv': `${HEAD}\n${SEALANT},5.25,,,\n`, 'm.yaml': MAP, 'p.yaml': BOOK.replace(/^dated: \S+/m, 'dated: 2026-04-01') }
    const on = (options: string) => lidwork(`prices import l.csv --map m.yaml --into p.yaml --dated ${options}`, { files })
    for (const options of ['2026-03-31', '2026-03-31 --dry-run']) {
      const { code, out, err, files: after } = await on(options)
      expect([code, out, after['p.yaml']]).toEqual([1, '', files['p.yaml']])
      expect(err).toMatch(/^p\.yaml:\d+:\d+: error list-older-than-book\n[\s\S]*2026-03-31[\s\S]*2026-04-01[\s\S]*--force[\s\S]*p\.yaml: nothing written\n$/)
    }
    const forced = await on('2026-03-31 --force')
    expect([forced.code, bookIn(forced.files['p.yaml']).dated, bookIn(forced.files['p.yaml']).products[0]!.price]).toEqual([0, '2026-03-31', 5.25])
    expect((await on('2026-04-01')).code).toBe(0)
  })
  test('ended by kill -9 at any moment: the book is whole, old or new', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lidwork-import-')), bin = fileURLToPath(new URL('../../bin/lidwork.cjs', import.meta.url))
    try {
      writeFileSync(join(folder, 'm.yaml'), MAP)
      writeFileSync(join(folder, 'l.csv'), `${HEAD}\n${demoPrices.products.filter((p, i, all) => all.findIndex(x => x.item === p.item) === i).map(p => `${p.item},${p.price + 1},,,`).join('\n')}\n`)
      const whole = (await lidwork('prices import l.csv --map m.yaml --into p.yaml --dated 2026-04-01', { files: { 'm.yaml': MAP, 'p.yaml': BOOK, 'l.csv': readFileSync(join(folder, 'l.csv'), 'utf8') } })).files['p.yaml']!
      for (const after of [60, 110, 150, 190]) {
        writeFileSync(join(folder, 'p.yaml'), BOOK)
        const child = spawn(process.execPath, [bin, 'prices', 'import', 'l.csv', '--map', 'm.yaml', '--into', 'p.yaml', '--dated', '2026-04-01'], { cwd: folder, stdio: 'ignore' })
        const timer = setTimeout(() => child.kill('SIGKILL'), after)
        await new Promise(resolve => child.on('close', resolve))
        clearTimeout(timer)
        expect([BOOK, whole]).toContain(readFileSync(join(folder, 'p.yaml'), 'utf8'))
      }
      expect(readdirSync(folder).filter(f => f.endsWith('.csv') || f.endsWith('.yaml')).sort()).toEqual(['l.csv', 'm.yaml', 'p.yaml'])
    } finally { rmSync(folder, { recursive: true, force: true }) }
  })
})

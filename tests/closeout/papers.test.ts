// The papers at the end of a job, held to the rules’ own lists, and opened in a real browser.
import { Ajv } from 'ajv'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { AsBuiltOut } from '../../src/closeout/output.ts'
import { signs } from '../../src/papers/terminal/words.ts'
import { dark, light } from '../../src/papers/html/palette.ts'
import { certificateFields, receiptFields } from '../../src/reference/closeout-rules.ts'
import { lidwork } from '../cli/test-io.ts'
import { browserAt, openBrowser } from '../papers/browser.ts'
import { axeFindings, differing, laidOut, width } from '../papers/in-page.mjs'
import { example, run, text, WORKED } from './close.ts'

/** Each paper of a close-out by its ending. */
async function papers(body: string, job = WORKED): Promise<Record<string, string>> {
  const ran = await run(body, { job, line: '--out out' })
  return Object.fromEntries(Object.entries(ran.files).filter(([f]) => f.startsWith('out/')).map(([f, t]) => [f.replace(/^out\/[^.]*\./, ''), t!]))
}
const shown = (html: string): string => html.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]*>/g, ' ').replace(/&#39;/g, "'").replace(/[\s\u00a0]+/g, ' ')

// Typed here from the rules, apart from the tables of the program.
/** 16 CFR 460.17: loose fill; all other; the receipt itself. */
const RECEIPT = { loose: ['Coverage area', 'Initial installed thickness', 'Minimum settled thickness', 'R-value', 'Number of bags used'], other: ['Coverage area', 'Thickness', 'R-value'], paper: ['Date', 'Installer'] }
/** IECC R303.1.1 (from memory, high): type, manufacturer and R of each element; of blown insulation also these; signed and dated. */
const CERTIFICATE = { loose: ['Type', 'Manufacturer', 'Initial installed thickness', 'Settled thickness', 'Installed density', 'Coverage area', 'Number of bags installed'], other: ['Type', 'Manufacturer', 'Coverage area'], paper: ['Date', 'Installer'] }
const PART = (html: string, name: string): string => shown(html.split('<section').find(s => s.includes(`>${name}<`)) ?? '')

describe('field by field', () => {
  let done: Record<string, string>, out: AsBuiltOut
  beforeAll(async () => {
    out = JSON.parse((await example('quince-lane-14')).out) as AsBuiltOut
    done = Object.fromEntries(Object.entries((await example('quince-lane-14', '--out out')).files).filter(([f]) => f.startsWith('out/')).map(([f, t]) => [f.replace(/^out\/[^.]*\./, ''), t!]))
  })
  test('there are three papers', () => { expect(Object.keys(done).sort()).toEqual(['attic-card.html', 'done.html', 'receipt.html']) })
  test('the receipt shows what 16 CFR 460.17 lists, for each part by itself', () => {
    const loose = PART(done['receipt.html']!, 'main, open floor'), other = PART(done['receipt.html']!, 'hatch panel'), whole = shown(done['receipt.html']!)
    for (const f of RECEIPT.loose) expect(loose).toMatch(new RegExp(`${f} (?:R-)?[\\d,.]+`))
    for (const f of RECEIPT.other) expect(other).toMatch(new RegExp(`${f} (?:R-)?[\\d,.]+`))
    for (const f of RECEIPT.paper) expect(whole).toMatch(new RegExp(`${f}: \\S`))
    expect(loose).toMatch(/Coverage area 1,144 ft² Initial installed thickness 12\.15 in Minimum settled thickness 10\.56 in R-value R-38 Number of bags used 66/)
    // Parts are not added up: no area and no R that is the sum of two.
    expect(whole).not.toMatch(/1,148\.6|R-61/)
  })
  test('the card shows what IECC R303.1.1 lists', () => {
    const loose = PART(done['attic-card.html']!, 'main, open floor'), other = PART(done['attic-card.html']!, 'hatch panel'), whole = shown(done['attic-card.html']!)
    for (const f of CERTIFICATE.loose) expect(loose).toMatch(new RegExp(`${f} \\S`))
    for (const f of CERTIFICATE.other) expect(other).toMatch(new RegExp(`${f} \\S`))
    for (const part of [loose, other]) expect(part).toMatch(/R-\d+/)
    for (const f of CERTIFICATE.paper) expect(whole).toMatch(new RegExp(`${f}: \\S`))
    expect(whole).toContain('Keep fill off, for good: box over a light (kitchen); box over a light (living room); chimney (between kitchen and living room)')
  })
  test('the tables that find what is missing hold the same fields', () => {
    const of = (t: typeof receiptFields, kind: string) => t.rows.filter(r => r.of === kind).map(r => r.title)
    expect(of(receiptFields, 'loose-fill')).toEqual(RECEIPT.loose.map(f => (f === 'R-value' ? f : f.toLowerCase())))
    expect(of(receiptFields, 'other')).toEqual(RECEIPT.other.map(f => (f === 'R-value' ? f : f.toLowerCase())))
    expect(new Set(of(certificateFields, 'loose-fill'))).toEqual(new Set([...CERTIFICATE.loose.map(f => f.toLowerCase()), 'settled R-value']))
    for (const t of [receiptFields, certificateFields]) expect(of(t, 'paper')).toEqual(['date', 'signature of the installer'])
  })
  test('nothing is missing where all is recorded', () => { expect([out.receipt.missing, out.certificate.missing]).toEqual([[], []]) })
  test('each figure that is taken away is named as missing, and a line to fill in stands in its place', async () => {
    const whole = text('examples/quince-lane-14.closeout.yaml').replace(/^(#.*\n)*format.*\njob.*\n/m, ''), job = text('examples/quince-lane-14.job.yaml')
    for (const [from, to, field] of [['bags: 66', 'bags: ___', 'bags'], [/markersIn: \[[^\]]*\]/, 'markersIn: []', 'initialIn'], ['areaFt2: 4.6', 'areaFt2: ___', 'coverageFt2'], ['labelR: 23', 'labelR: ___', 'rValue'], ['signedOn: 2026-05-06', 'signedOn: ___', 'signedOn'], ['name: M. Torvik (invented)', 'name: ___', 'name']] as const) {
      const made = whole.replace(from, to), ran = JSON.parse((await run(made, { job })).out) as AsBuiltOut
      expect(made).not.toBe(whole)
      expect(ran.receipt.missing.map(m => m.field), field).toContain(field)
      expect(ran.open.map(o => o.code)).toContain('receipt-not-whole')
      const receipt = (await papers(made, job))['receipt.html']!
      expect(receipt, field).toContain('Not whole yet')
      if (field !== 'signedOn' && field !== 'name') expect(receipt, field).toContain('to fill in:')
    }
  })
  test('no cost, wage or margin stands on any of them', () => {
    for (const [name, html] of Object.entries(done)) expect(shown(html), name).not.toMatch(/\$|margin|wage|markup|person-h/i)
  })
  test('a short area is certified at the row it reaches, and the owner is told that it is short', async () => {
    const short = Object.fromEntries(Object.entries((await example('ibis-landing-5', '--out out')).files).map(([f, t]) => [f.replace(/^out\/[^.]*\./, ''), t!]))
    expect(PART(short['receipt.html']!, 'main, open floor')).toContain('R-value R-22')
    for (const html of [short['receipt.html']!, short['attic-card.html']!]) expect(shown(html)).not.toContain('R-26')
    expect(shown(short['done.html']!)).toContain('That is short of what was agreed: 5 bags missing for R 26')
  })
  test('what is due is told to an owner, not to the one who types the file', async () => {
    const owners = await Promise.all([papers('flags: 0'), papers('days: [2026-04-06]\nareas: [{in: main, bags: 75, markersIn: [16]}]'), ...['quince-lane-14', 'ibis-landing-5'].map(async n => {
      const body = text(`examples/${n}.closeout.yaml`).replace(/^(#.*\n)*format.*\njob.*\n/m, '').replace(/^mends:\n(?: .*\n)+/m, '').replace(/^freshAirChoice.*\n/m, '')
      return papers(body, text(`examples/${n}.job.yaml`))
    })])
    for (const made of owners) expect(shown(made['done.html']!)).not.toMatch(/\b[a-zA-Z]+: ?under|under [a-z]+:|freshAirChoice|as drawn|job file|\[\]|`|light-not-ic|\bwrite (?:it|its|bags)\b/)
    expect(owners.some(made => shown(made['done.html']!).includes('Lights that fill may not touch, '))).toBe(true)
    expect(owners.some(made => shown(made['done.html']!).includes('or your own choice, signed'))).toBe(true)
  })
  test('the missing fresh air is one figure wherever it stands: rounded up', async () => {
    const body = 'days: [2026-05-04]\ntests: {on: 2026-05-04, cfm50: 1210, sameSetUp: yes}', job = text('examples/quince-lane-14.job.yaml')
    const { fanNeeded, fanCfm } = (JSON.parse((await run(body, { job })).out) as AsBuiltOut).ventilation!, made = shown((await papers(body, job))['done.html']!)
    expect(fanNeeded).toBe(true)
    expect([...made.matchAll(/([\d.]+) cfm (?:are missing|of fresh air missing)/g)].map(m => Number(m[1]))).toEqual([fanCfm, fanCfm])
    expect(made).toContain('205 to 410 CFM50 less were expected, 1,070 were measured.')
  })
  test('a test called passed with a reading over its limit has the stop sign, and the owner is told', async () => {
    const body = (ppm: number): string => `days: [2026-04-06]\ncombustion: [{of: heater, on: 2026-04-06, by: N. Quill, result: pass, flueCoPpm: ${ppm}}]`
    const flame = async (ppm: number): Promise<string> => (await run(body(ppm), { line: '' })).out.split('flames')[1]!.split('\n').slice(0, 4).join(' ').replace(/\s+/g, ' ')
    expect(await flame(200)).toContain(`${signs.go} water heater`)
    expect(await flame(200)).toContain('pass on 2026-04-06 after it')
    expect(await flame(201)).toContain(`${signs.stop} water heater`)
    expect(await flame(201)).toContain('called passed; over its limit on 2026-04-06 after it')
    expect(shown((await papers(body(201)))['done.html']!)).toContain('called passed in its combustion test on Apr 6, 2026, after the work, by N. Quill, but a reading is over its limit')
    expect(shown((await papers(body(200)))['done.html']!)).toContain('passed its combustion test on Apr 6, 2026')
  })
  test('no word of prices stands where there is none', async () => {
    for (const [name, made] of Object.entries(await papers('flags: 0'))) { expect(shown(made), name).not.toMatch(/price/i); expect(shown(made), name).toContain('Demo company: its figures are invented.') }
  })
  test('a stop stands first on the owner’s paper', async () => {
    const made = shown((await papers('days: [2026-04-06]\nareas: [{in: main, bags: 75, markersIn: [16, 16, 16, 16, 16]}]'))['done.html']!)
    expect(made).toContain('not tested since the work. It stays off until it has passed.')
    expect(made.indexOf('First of all')).toBeLessThan(made.indexOf('What lies in your attic now'))
  })
})

describe('as all papers', () => {
  const made = async (): Promise<[string, string][]> => [
    ...(await Promise.all(['quince-lane-14', 'ibis-landing-5'].map(n => example(n, '--out out')))).flatMap(r => Object.entries(r.files).filter(([f]) => f.startsWith('out/')) as [string, string][]),
    ...Object.entries(await papers('flags: 0')), ...Object.entries(await papers('days: [2026-04-06]\nareas: [{in: main, bags: 60, markersIn: [16, 12, 16, 16, 16]}]')),
  ]
  test('no script, no frame, no form, nothing that points elsewhere', async () => {
    for (const [name, html] of await made()) expect(html.match(/<(?:script|iframe|object|embed|form|input|link|base|img|a)\b|\son\w+=|javascript:|@import|https?:|\b(?:src|href)=/gi), name).toBeNull()
  })
  test('the palette’s colors and no others; the heavy line once in a drawing', async () => {
    const colors = new Set([...Object.values(light), ...Object.values(dark)].map(c => c.toUpperCase()))
    for (const [name, html] of await made()) {
      expect([...html.matchAll(/(?<!&)#[0-9a-f]{3,8}\b/gi)].map(m => m[0].toUpperCase()).filter(c => !colors.has(c)), name).toEqual([])
      for (const svg of html.match(/<svg class="drawing[\s\S]*?<\/svg>/g) ?? []) expect((svg.match(/class="lid"/g) ?? []).length, name).toBeLessThanOrEqual(1)
    }
  })
  test('nothing that is refused; R with a hyphen only of a listed row or a label', async () => {
    for (const [name, html] of await made()) {
      for (const word of [/\brecommend/i, /\bbest\b/i, /\bsave up to\b/i, /\beasy\b/i, /\bprofessional\b/i, /\bscore\b/i, /\bn\/a\b/i, /\binstalled depth\b/i, /\bclearance\b/i, /!/, /\bnull\b|\bundefined\b|NaN|\[object/]) expect(word.exec(shown(html))?.[0], `${name}: ${String(word)}`).toBeUndefined()
      for (const [, r] of shown(html).matchAll(/\bR-(\d+(?:\.\d+)?)/g)) expect([13, 19, 22, 23, 30, 38, 49, 60], name).toContain(Number(r))
    }
  })
})

describe('the JSON', () => {
  test.each(['quince-lane-14', 'ibis-landing-5'])('of %s is taken by the schema, and holds no null', async name => {
    const { out } = await example(name)
    expect(out).not.toMatch(/\bnull\b|NaN/)
    const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(JSON.parse(text('schemas/as-built.schema.json')) as object)
    expect(validate(JSON.parse(out)), JSON.stringify(validate.errors)).toBe(true)
  })
})

/** Text that would be markup, a script, a style or an order of its own. */
const HOSTILE = `</p><script>alert(1)</script><img src=x onerror=alert(2)> "quoted' & =cmd() \\u202eabc 🏠 ${'long '.repeat(200)}`
const hostile = `days: [2026-04-06]
installer: {company: ${JSON.stringify(HOSTILE)}, name: ${JSON.stringify(HOSTILE)}, phone: ${JSON.stringify(HOSTILE)}, license: ${JSON.stringify(HOSTILE)}, signedOn: 2026-04-06}
areas: [{in: main, maker: ${JSON.stringify(HOSTILE)}, machine: ${JSON.stringify(HOSTILE)}, bags: 75, markersIn: [16, 16, 16, 16, 16]}]
laid: [{part: ${JSON.stringify(HOSTILE)}, what: ${JSON.stringify(HOSTILE)}, maker: ${JSON.stringify(HOSTILE)}, areaFt2: 3, thicknessIn: 3, labelR: 13}]
combustion: [{of: heater, on: 2026-04-06, by: ${JSON.stringify(HOSTILE)}, result: pass}]
`

describe.runIf(browserAt)('in a browser', () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  const INCH = 96, SHEET = { width: 6.75 * INCH, height: 9.5 * INCH }, PHONE = 360
  let at: Awaited<ReturnType<typeof openBrowser>>
  beforeAll(async () => { at = await openBrowser() })
  afterAll(async () => { await at.close() })
  const looked = async (name: string, html: string, out?: AsBuiltOut): Promise<void> => {
    await at.page.emulateMedia({ media: 'print', colorScheme: 'light' })
    await at.page.setViewportSize({ width: SHEET.width, height: SHEET.height })
    const { page, messages, requests } = await at.open(name, html)
    expect({ messages, requests }, name).toEqual({ messages: [], requests: [] })
    const { wide, cut, inch } = await page.evaluate(laidOut, SHEET)
    expect({ wide, cut, inch }, name).toEqual({ wide: [], cut: [], inch: INCH })
    // Parts of the receipt and of the certificate are named within their list.
    const flat = out && { ...out, receipt: { parts: out.receipt.parts }, certificate: { parts: out.certificate.parts } }
    if (flat) expect(await page.evaluate(differing, flat as never), name).toEqual([])
    await page.setViewportSize({ width: PHONE, height: 800 })
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' })
    expect(await page.evaluate(width), `${name} on a phone`).toBeLessThanOrEqual(PHONE)
    await page.evaluate(axe)
    expect(await page.evaluate(axeFindings, []), name).toEqual([])
    await page.emulateMedia({ media: 'screen', colorScheme: 'dark' })
    expect(await page.evaluate(axeFindings, ['color-contrast']), `${name}, dark`).toEqual([])
  }
  test.each(['quince-lane-14', 'ibis-landing-5'])('the papers of %s', async name => {
    const out = JSON.parse((await example(name)).out) as AsBuiltOut, { files } = await example(name, '--out out')
    for (const [f, html] of Object.entries(files)) if (f.startsWith('out/')) await looked(f.slice('out/'.length), html!, out)
  })
  test('a house that is stopped, and one of which nothing is recorded', async () => {
    for (const body of ['flags: 0', 'days: [2026-04-06]\nareas: [{in: main, bags: 60, markersIn: [16, 12, 16, 16, 16]}]']) for (const [name, html] of Object.entries(await papers(body))) await looked(name, html)
  })
  test('hostile text is text', async () => {
    for (const [name, html] of Object.entries(await papers(hostile))) {
      expect(html).not.toContain('<script>alert')
      const { page, messages, requests } = await at.open(name, html)
      expect({ messages, requests }, name).toEqual({ messages: [], requests: [] })
      expect(await page.evaluate(width), name).toBeLessThanOrEqual(PHONE)
      if (name !== 'done.html') expect(await page.textContent('main')).toContain('</p><script>alert(1)</script>')
    }
  })
})

test('a paper is never written outside its folder, and a job that is closed twice keeps the first', async () => {
  const files = { 'a.job.yaml': WORKED, 'a.closeout.yaml': 'format: lidwork-closeout/1\njob: a.job.yaml\n', 'b.closeout.yaml': 'format: lidwork-closeout/1\njob: a.job.yaml\n' }
  const ran = await lidwork('closeout a.closeout.yaml b.closeout.yaml --out out/', { files })
  expect([ran.code, ran.out]).toEqual([1, 'out/sorrel-bend-27.done.html\nout/sorrel-bend-27.receipt.html\nout/sorrel-bend-27.attic-card.html\n'])
  expect(ran.err).toContain('b.closeout.yaml closes the job sorrel-bend-27, as a.closeout.yaml does')
})

// The papers as text: what may not stand in them, what must, and that no text of a file is ever markup. What only a browser sees is in browser.test.ts.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { gateWords } from '../../src/papers/html/gate-words.ts'
import { cssString, escaped, html } from '../../src/papers/html/html.ts'
import { papers } from '../../src/papers/html/index.ts'
import { duties } from '../../src/papers/html/law.ts'
import type { House } from '../../src/papers/html/page.ts'
import { dark, light, type Palette } from '../../src/papers/html/palette.ts'
import { sign, type Sign } from '../../src/papers/html/parts.ts'
import { filesIn, text } from '../structure/source.ts'
import { exampleNames, exampleText, HARD, HOSTILE, houseOf, withTexts } from './houses.ts'

const houses = new Map<string, House>()
const house = (name: string): House => { const made = houses.get(name) ?? houseOf(exampleText(name), `${name}.job.yaml`); houses.set(name, made); return made }
const made = (h: House): [name: string, text: string][] => papers.filter(p => p.appliesTo(h)).flatMap(p => p.files(h).map(f => [f.ending, f.text] as [string, string]))
const htmlOf = (h: House): [name: string, text: string][] => made(h).filter(([ending]) => ending.endsWith('.html'))
/** What is read: no markup, no styles. */
const readable = (markup: string): string => markup.replace(/<style>[\s\S]*?<\/style>/g, ' ').replace(/<[^>]*>/g, ' ').replace(/&amp;/g, '&').replace(/&#39;/g, '\'').replace(/&quot;/g, '"').replace(/\s+/g, ' ')

describe('markup', () => {
  test('a text is a text', () => {
    expect(html`<p title="${'a"b'}">${'<i>&'}</p>`.markup).toBe('<p title="a&quot;b">&lt;i&gt;&amp;</p>')
    expect(html`${[1, 'a', false, undefined, html`<b>${2}</b>`]}`.markup).toBe('1a<b>2</b>')
    expect(html`${0}${''}`.markup).toBe('0')
  })
  test('steering characters are written out, and text from the right keeps its order to itself', () => {
    expect(escaped('a\u202eb\u0007c\n')).toBe('a\\u202eb\\u0007c\n')
    expect(escaped('\u05d0')).toBe('\u2068\u05d0\u2069')
  })
  test('a part in a tag stands in quotes, or nothing is made', () => {
    expect(() => html`<p title=${'x onclick=y'}>a</p>`).toThrow('quotes')
    expect(() => html`<p ${'onclick=y'}>a</p>`).toThrow('quotes')
    expect(html`<p title='${'it’s \' x'}' id="b">${'a'}</p>`.markup).toBe('<p title=\'it’s &#39; x\' id="b">a</p>')
  })
  test('a style sheet’s string can’t end early', () => {
    for (const t of HOSTILE) expect(cssString(t).slice(1, -1)).not.toMatch(/["<>\n]/)
    expect(cssString('a"b')).toBe('"a\\000022b"')
  })
  test('raw markup is made in two places alone', () => {
    const raw = filesIn('src/papers/html', /\.ts$/).filter(f => /new Html\(/.test(text(f)))
    expect(raw).toEqual(['src/papers/html/html.ts', 'src/papers/html/page.ts'])
  })
})

describe('the list of papers', () => {
  test('has each file that holds a paper, and each name once', () => {
    const files = filesIn('src/papers/html', /\.ts$/).filter(f => /: Paper = \{/.test(text(f)))
    const index = text('src/papers/html/index.ts')
    expect(files.filter(f => !index.includes(`./${f.split('/').at(-1)!}`))).toEqual([])
    expect(files.length).toBe(papers.length)
    expect(new Set(papers.map(p => p.name)).size).toBe(papers.length)
  })
  test('README.md says for whom each is', () => {
    const readme = text('README.md')
    expect(papers.filter(p => !readme.includes(`| \`${p.name}\` |`)).map(p => p.name)).toEqual([])
  })
  test('a stopped house has a deferral and no proposal; the others the other way round', () => {
    for (const name of exampleNames) {
      const h = house(name), names = made(h).map(([e]) => e)
      expect([names.includes('deferral.html'), names.includes('proposal.html')], name).toEqual(h.estimate.verdict === 'stop' ? [true, false] : [false, true])
    }
    expect(exampleNames.some(n => house(n).estimate.verdict === 'stop')).toBe(true)
  })
  test('every gate of the program has words for an owner', () => {
    const section = text('README.md').split('## Stops, holds and mends')[1]!.split('\n## ')[0]!
    const codes = [...section.matchAll(/^\| `([a-z-]+)` \|/gm)].map(m => m[1]!)
    expect(codes.length).toBeGreaterThan(40)
    expect(Object.keys(gateWords).sort()).toEqual(codes.sort())
  })
})

describe.each(exampleNames)('the papers of %s', name => {
  test('hold no script, no frame, no form, and point nowhere', () => {
    for (const [paper, markup] of htmlOf(house(name))) {
      expect(markup.match(/<(?:script|iframe|object|embed|form|input|link|base|img|a)\b|\son\w+=|javascript:|@import|https?:|\b(?:src|href)=/gi), paper).toBeNull()
      expect([...markup.matchAll(/url\(([^)]*)\)/g)].map(m => m[1]!).filter(u => !u.startsWith('#')), paper).toEqual([])
      expect(markup.startsWith('<!doctype html>\n<html lang="en">'), paper).toBe(true)
    }
  })
  test('have the palette’s colors and no others', () => {
    const colors = new Set([...Object.values(light), ...Object.values(dark)].map(c => c.toUpperCase()))
    for (const [paper, markup] of htmlOf(house(name))) {
      // A character by its number is no color.
      const found = [...markup.matchAll(/(?<!&)#[0-9a-f]{3,8}\b/gi)].map(m => m[0].toUpperCase())
      expect(found.length, paper).toBeGreaterThan(10)
      expect(found.filter(c => !colors.has(c)), paper).toEqual([])
      expect(markup.match(/\b(?:rgba?|hsla?)\(|gradient|box-shadow|border-radius/gi), paper).toBeNull()
    }
  })
  test('have one cover line at most, between the last look and the first that covers', () => {
    const { tasks } = house(name).estimate, covers = ['wrap', 'ventilate', 'contain', 'insulate']
    for (const [paper, markup] of htmlOf(house(name))) {
      const lines = markup.match(/<div class="cover">/g) ?? []
      expect(lines.length, paper).toBeLessThanOrEqual(1)
      for (const svg of markup.match(/<svg class="drawing[\s\S]*?<\/svg>/g) ?? []) expect((svg.match(/class="lid"/g) ?? []).length, paper).toBeLessThanOrEqual(1)
    }
    const proposal = htmlOf(house(name)).find(([e]) => e === 'proposal.html')?.[1]
    const first = tasks.find(t => covers.includes(t.phase)), last = tasks.filter(t => t.phase === 'check').at(-1)
    if (!proposal || !first || tasks[0] === first) return
    const line = proposal.indexOf('<div class="cover">'), step = (n: number): number => proposal.indexOf(`<b class="number">${n}</b>`)
    expect(line).toBeGreaterThan(step(last?.step ?? first.step - 1))
    expect(line).toBeLessThan(step(first.step))
  })
  test('say nothing that is refused', () => {
    const refused = [/\brecommend/i, /\bbest\b/i, /\bsave up to\b/i, /\beasy\b/i, /\bprofessional\b/i, /\bscore\b/i, /\bn\/a\b/i, /\binstalled depth\b/i, /\bcritical\b/i, /\b(?:platinum|premium|deluxe|good, better)\b/i, /!/, /\bnull\b|\bundefined\b|NaN|\[object/, /\bclearance: /i, /`|appliances\[\]/]
    for (const [paper, markup] of htmlOf(house(name))) for (const word of refused) expect(word.exec(readable(markup))?.[0], `${paper}: ${String(word)}`).toBeUndefined()
  })
  test('write R with a hyphen only for what a label or a code lists', () => {
    const h = house(name), listed = new Set<number>([...h.prices.blown.flatMap(b => b.chart.map(c => c.r)), ...h.prices.products.flatMap(p => [p.rValue ?? 0, ...[...p.name.matchAll(/R-(\d+)/g)].map(m => Number(m[1]))]),
      ...h.estimate.areas.flatMap(a => a.targetR ?? []), ...(h.options?.ladder.flatMap(o => o.targetR ?? []) ?? []), 8, 6])
    for (const [paper, markup] of htmlOf(h)) for (const [, r] of readable(markup).matchAll(/\bR-(\d+(?:\.\d+)?)/g)) expect(listed.has(Number(r)), `${paper}: R-${r}`).toBe(true)
  })
  test('the proposal never shows cost, wage, margin or markup', () => {
    const h = house(name), proposal = htmlOf(h).find(([e]) => e === 'proposal.html')?.[1]
    if (proposal === undefined) return
    const words = readable(proposal), { price: p, labor } = h.estimate
    expect(words.match(/\b(?:cost|costs|wage|wages|margin|markup|overhead|contingency|profit|person-h)\b/gi)).toBeNull()
    const usd = (cents: number): string => `${Math.floor(cents / 100).toLocaleString('en-US')}.${String(cents % 100).padStart(2, '0')}`
    for (const cents of [p.costCents, p.directCents, p.laborCents, p.materialsCents, p.contingencyCents, labor.wageCents].filter(c => c !== undefined && c > 0 && c !== p.totalCents)) {
      expect(words).not.toContain(usd(cents!))
      // Also not in the markup beside it.
      expect(proposal).not.toContain(`${cents!}"`)
    }
    for (const path of proposal.matchAll(/data-figure="([^"]*)"/g)) expect(path[1]).not.toMatch(/cost|wage|margin|markup|labor[A-Z]|materials[A-Z]|direct|personHours/)
  })
})

describe('colors', () => {
  const channel = (c: string): number => { const v = parseInt(c, 16) / 255; return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4 }
  const luminance = (hex: string): number => 0.2126 * channel(hex.slice(1, 3)) + 0.7152 * channel(hex.slice(3, 5)) + 0.0722 * channel(hex.slice(5, 7))
  const contrast = (a: string, b: string): number => { const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p) as [number, number]; return (x + 0.05) / (y + 0.05) }
  // WCAG 2.1, 1.4.3 and 1.4.11: text 4.5 to 1, lines and signs 3 to 1.
  test.each([['light', light], ['dark', dark]] as [string, Palette][])('%s: text and lines stand off their ground', (_, c) => {
    for (const ground of [c.paper, c.kraft]) {
      for (const text of [c.ink, c.chalk, c.oxide, c.gray]) expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5)
      expect(contrast(c.hair, ground)).toBeGreaterThanOrEqual(3)
    }
    expect(contrast(c.ink, c.tint)).toBeGreaterThanOrEqual(4.5)
  })
  test('on a copier gates are still apart: no two signs have one shape', () => {
    const states: Sign[] = ['stop', 'hold', 'mend', 'opened', 'note', 'conditional']
    const shapes = states.map(s => sign(s, 'x').markup.replace(/class="sign [a-z]+"/, ''))
    expect(new Set(shapes).size).toBe(states.length)
  })
})

describe('what a seller of insulation has to say', () => {
  const proposal = htmlOf(house(HARD)).find(([e]) => e === 'proposal.html')![1], words = readable(proposal)
  // 16 CFR 460.15, 460.18(a), 460.19(b), 429.1(a): the words of the rules, from memory.
  test.each([duties.rValue, duties.savings, duties.cancel])('$id, $source', d => { expect(words).toContain(d.says); expect(words).toContain(d.source) })
  test('the fact sheet is shown before signing (16 CFR 460.15)', () => { expect(words.indexOf(duties.factSheet.source)).toBeLessThan(words.lastIndexOf('Owner')); expect(words).toContain('I was shown the fact sheet of: loose cellulose') })
  test('an R comes with type, thickness and area (16 CFR 460.18)', () => { for (const part of ['Insulation', 'Thickness', 'in, settled', 'loose cellulose, 25 lb bag', '8 3/4', '1,266']) expect(words).toContain(part) })
  test('what each part saves stands there where several save together (16 CFR 460.19)', () => { for (const part of ['Sealing', 'Ducts', 'Insulation']) expect(words).toMatch(new RegExp(`${part} \\d+ [\\d,]+`)) })
})

describe('what an owner is told', () => {
  const proposalOf = (name: string): string => htmlOf(house(name)).find(([e]) => e === 'proposal.html')![1], words = readable(proposalOf(HARD))
  test('beside a blower door no sum of the list is drawn as holes; without one it is', () => {
    for (const name of exampleNames) {
      const a = house(name).estimate.airLeakage
      if (house(name).estimate.verdict === 'stop') continue
      expect(proposalOf(name).includes('pushed together'), name).toBe((a?.listedIn2Before ?? 0) > 0 && a?.cfm50Before === undefined)
      expect(readable(proposalOf(name)).includes('add up to more than that'), name).toBe(a?.cutCapped === true)
    }
    expect(exampleNames.some(n => house(n).estimate.airLeakage?.cutCapped === false)).toBe(true)
    expect(proposalOf('sorrel-court-8')).toContain('pushed together')
  })
  test('a saving that is held down says to what', () => {
    for (const name of exampleNames) if (house(name).estimate.verdict !== 'stop') expect(proposalOf(name).includes('this range is held to a share of the bill'), name).toBe(house(name).estimate.savings?.capped === true)
  })
  test('fans that pull more than a flue bears are told, and the tests decide', () => {
    for (const name of exampleNames) if (house(name).estimate.verdict !== 'stop') expect(proposalOf(name).includes('may pull air down a flue'), name).toBe(house(name).estimate.gates.some(g => g.code === 'depressurization'))
    expect(words).toContain('may pull air down a flue')
  })
  test('what stops only work that is not in the price stands apart from what is waited for', () => {
    const [waits, leftOut] = words.split('What has to happen first')[1]!.split('Already answered')[0]!.split('What is not in this price') as [string, string]
    for (const there of ['Open wiring boxes', 'utility closet', 'living room', 'A strong kitchen hood']) { expect(waits).toContain(there); expect(leftOut).not.toContain(there) }
    // The den lies under wet wood: nothing of it is priced, so nobody waits for its ceiling.
    for (const there of ['Wet wood', 'Wrap on ducts', 'den, ceiling', 'den, old fill']) { expect(leftOut).toContain(there); expect(waits).not.toContain(there) }
    expect(words).toContain('22 openings between the rooms and the attic are listed')
  })
  // EPA and CPSC to the public (from memory, high); CDC for droppings.
  test('a deferral says what holds until then, by what was found', () => {
    const until = (h: House): string => readable(htmlOf(h).find(([e]) => e === 'deferral.html')![1]).split('Until then')[1]!.split(' Price ')[0]!
    const asbestos = ['nobody goes up', 'nothing is swept, dusted or vacuumed', 'an accredited asbestos inspector or a licensed abatement firm'], alarm = ['A carbon monoxide alarm on each floor near the bedrooms, now', 'calls 911 from there']
    const tamarack = house('tamarack-road-3'), bare = until({ ...tamarack, estimate: { ...tamarack.estimate, gates: [] } })
    for (const part of [...asbestos, ...alarm]) { expect(until(tamarack)).toContain(part); expect(until(house('willow-ferry-11'))).toContain(part) }
    for (const part of [asbestos[1]!, asbestos[2]!, ...alarm, 'Gas:']) expect(bare).not.toContain(part)
    expect(until(tamarack)).not.toContain('Gas:')
    expect(until(house('willow-ferry-11'))).toMatch(/^ Gas: everybody stays out/)
    expect(until({ ...tamarack, company: { ...tamarack.company, letterhead: { phone: '555-0100' } } })).toContain(`${tamarack.company.name}, 555-0100.`)
    const codes = [...text('src/papers/html/until-then.ts').matchAll(/'([a-z]+(?:-[a-z]+)+)'/g)].map(m => m[1]!)
    expect(codes.length).toBeGreaterThan(15)
    expect(codes.filter(c => !(c in gateWords))).toEqual([])
  })
  test('whose task the two notices of cancellation are', () => { expect(words).toContain('The company adds the two copies of that notice itself: they are not among these papers.') })
})

test('incentives stand below the price, with their condition, and are no part of it', () => {
  const h = houseOf(exampleText(HARD).replace('choices:\n', 'choices:\n  incentives: [{from: an invented utility, amount: 400.5, condition: if the form is in by June 30}]\n'))
  expect(h.estimate.price).toMatchObject({ totalCents: house(HARD).estimate.price.totalCents, incentivesCents: 40050, netCents: house(HARD).estimate.price.totalCents! - 40050 })
  const words = readable(htmlOf(h)[0]![1])
  expect(words).toContain('Incentives, if they are granted')
  expect(words).toContain('If the form is in by June 30.')
  expect(words).toContain('the price stands without them')
  expect(() => houseOf(exampleText(HARD).replace('choices:\n', 'choices:\n  incentives: [{from: an invented utility, amount: 99999, condition: if granted}]\n'))).toThrow('incentives-over-price')
})

test('terms and letterhead of the company stand there', () => {
  const h = house(HARD), own = { ...h, company: { ...h.company, name: 'Invented Lids LLC', terms: ['Workmanship is warranted for one year.'], letterhead: { address: '12 Invented Street', phone: '555-0100', license: 'license 0000 (invented)' } } }
  for (const part of ['Invented Lids LLC', '12 Invented Street', '555-0100', 'license 0000 (invented)', 'Workmanship is warranted for one year.']) expect(readable(htmlOf(own)[0]![1])).toContain(part)
})

describe('texts that mean harm', () => {
  test('are shown, and change no tag and no attribute', () => {
    const h = house(HARD)
    // The same number of parts, whatever they say: only texts differ.
    const bare = htmlOf(withTexts(h, () => 'word')), tags = (markup: string): string[] => markup.match(/<\/?[a-z][a-z0-9-]*/gi) ?? []
    let n = 0
    const hostile = htmlOf(withTexts(h, () => HOSTILE[n++ % HOSTILE.length]!))
    expect(n).toBeGreaterThan(500)
    hostile.forEach(([paper, markup], i) => {
      expect(tags(markup).filter(t => !/^<\/?(?:br|p|div|span)$/.test(t) && tags(bare[i]![1]).includes(t) === false), paper).toEqual([])
      expect(markup, paper).not.toMatch(/<script|<img|<svg onload|\u202e|\u0007|\u001b/)
      // The blank sheet holds hardly a text of the job.
      if (paper !== 'survey-sheet.html') expect(markup, paper).toContain('&lt;script&gt;')
    })
  })
  test('through the whole way, from the file to the paper: shown, or refused where they steer', () => {
    for (const bad of HOSTILE) {
      const job = exampleText('quince-lane-14').replace(/^( {2}title:).*$/m, (_, key: string) => `${key} ${JSON.stringify(bad)}`)
      // Left to right marks and control characters end at the reader.
      if (/[\p{Cc}\u200e\u200f\u202a-\u202e]/u.test(bad)) { expect(() => houseOf(job)).toThrow('control-character'); continue }
      for (const [, markup] of htmlOf(houseOf(job))) {
        expect(/<script|<img|<svg onload/.test(markup)).toBe(false)
        expect(markup.includes(escaped(bad))).toBe(true)
      }
    }
  })
})

// A regression only: it shows what changed, and proves nothing. `npm run only tests/papers -- --update` writes them.
describe('the papers of the hard house, as recorded', () => {
  const folder = join(import.meta.dirname, 'golden')
  // The blank sheet changes with every key of the format; tests/crew holds it to the format itself.
  test.each(made(house(HARD)).filter(([ending]) => ending !== 'survey-sheet.html'))('%s', (ending, now) => {
    const file = join(folder, `${HARD}.${ending}`)
    if (process.env['LIDWORK_RECORD'] === 'yes') { mkdirSync(folder, { recursive: true }); writeFileSync(file, now) }
    expect(existsSync(file), `${ending} is not recorded: npm run only tests/papers -- --update`).toBe(true)
    expect(now === readFileSync(file, 'utf8'), `${ending} differs from its record: look at the difference, then npm run only tests/papers -- --update`).toBe(true)
  })
  test('the same house gives the same bytes', () => { expect(made(houseOf(exampleText(HARD), `${HARD}.job.yaml`))).toEqual(made(house(HARD))) })
})

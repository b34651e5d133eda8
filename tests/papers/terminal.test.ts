import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { EstimateOut, TaskOut } from '../../src/estimate/output.ts'
import { terminalEstimate } from '../../src/papers/terminal.ts'
import { asciiOnly } from '../../src/papers/terminal/ascii.ts'
import { wrap } from '../../src/papers/terminal/sheet.ts'
import { depthCell, stepRanges, usd } from '../../src/papers/terminal/words.ts'
import { house, stoppedHouse } from './house.ts'

const at = (width: number, more: { color?: boolean; ascii?: boolean } = {}) => ({ width, color: false, ascii: false, ...more })
const shown = (e: EstimateOut = house(), width = 80, more: { color?: boolean; ascii?: boolean } = {}) => terminalEstimate(e, at(width, more))
const lines = (text: string) => text.split('\n')
/** One line of words, however they were broken. */
const flat = (text: string) => text.replace(/\s+/g, ' ')
const ESCAPES = /\x1b\[[\d;]*m/g

/** Columns by the East Asian wide ranges of Unicode (UAX 11), written out here so that the text's own measure is not its judge. */
const columnsOf = (line: string) => [...line].reduce((n, c) => n + (/[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]/u.test(c) ? 2 : 1), 0)
const widest = (text: string) => Math.max(...lines(text).map(columnsOf))

/** From its bold word to the next empty line. */
const section = (text: string, name: string) => {
  const all = lines(text), from = all.findIndex(l => l === `     ${name}` || l.startsWith(`     ${name}  `))
  expect(from, name).toBeGreaterThan(-1)
  const to = all.findIndex((l, i) => i > from && l === '')
  return all.slice(from, to)
}

describe('columns', () => {
  for (const ascii of [false, true]) for (const make of [house, stoppedHouse]) {
    test(`no line is wider than the look (${make.name}, ${ascii ? 'ASCII' : 'Unicode'})`, () => {
      for (const width of [60, 66, 72, 79, 80, 81, 93, 100]) expect(widest(shown(make(), width, { ascii }))).toBeLessThanOrEqual(width)
    })
  }
  test('figures end at the last column, at 80 and at 100', () => {
    for (const width of [80, 100]) expect(lines(shown(house(), width)).find(l => l.includes('materials, as charged'))).toHaveLength(width)
  })
  test('beyond 100 nothing grows', () => { expect(shown(house(), 250)).toBe(shown(house(), 100)) })
  test('under 80 "after" and "load" go first', () => {
    const at80 = shown(house(), 80), at79 = shown(house(), 79)
    expect(section(at80, 'work')[0]).toMatch(/person-h +after$/)
    expect(section(at79, 'work')[0]).toMatch(/person-h$/)
    expect(section(at80, 'areas')[0]).toMatch(/bags +load +limit$/)
    expect(section(at79, 'areas')[0]).toMatch(/bags$/)
  })
  test('what has no column there stands below: every line of the price can be redone at any width', () => {
    const e = house()
    const text = flat(shown(e, 60)), money = (cents: number): string => (cents / 100).toFixed(2).replace(/\B(?=(\d{3})+\.)/g, ',')
    for (const m of e.materials) expect(text).toContain(`charged ${m.charged.toFixed(2)} at ${money(m.unitPriceCents)}`)
    for (const a of e.areas) if (a.ceilingLoadPsf !== undefined) expect(text).toContain(`The ceiling carries ${a.ceilingLoadPsf.toFixed(2)} psf of ${a.ceilingLimitPsf!.toFixed(2)}.`)
    expect(section(shown(e, 60), 'work').filter(l => /^ {19}After [\d, -]+\.$/.test(l))).toHaveLength(e.tasks.filter(t => t.after.length > 0).length)
    expect(shown(e, 80)).not.toMatch(/charged \d|The ceiling carries|After \d/)
  })
  test('an area called by its kind is said once', () => {
    const e = house(), [first] = e.areas
    const { existingR: _, ...left } = first!
    expect(flat(shown({ ...e, areas: [{ ...left, id: 'garage', kind: 'garage', stoppedBy: [] }] as unknown as typeof e.areas }))).toMatch(/(?<!garage )garage, [\d,.]+ ft²: left out/)
  })
  test('a name that its column would cut has a line of its own', () => {
    const e = house(), long = 'knee-wall-floor-of-the-west-side'
    const rows = section(shown({ ...e, areas: e.areas.map((a, i) => (i === 0 ? { ...a, id: long } : a)) }, 60), 'areas')
    expect(rows).toContain(`     ${long}`)
    expect(rows[rows.indexOf(`     ${long}`) + 1]).toMatch(/^ {10,}\d/)
  })
  test('no line ends in blanks, and the text ends with one line end', () => {
    expect(shown()).not.toMatch(/[ \u00a0]$/m)
    expect(shown()).toMatch(/[^\n]\n$/)
  })
})

describe('color', () => {
  test('stripped of escapes it is the same bytes as without color', () => {
    for (const make of [house, stoppedHouse]) for (const ascii of [false, true]) {
      const colored = shown(make(), 80, { color: true, ascii })
      expect(colored).toMatch(ESCAPES)
      expect(colored.replace(ESCAPES, '')).toBe(shown(make(), 80, { ascii }))
      expect(shown(make(), 80, { ascii })).not.toContain('\x1b')
    }
  })
  test('only bold and red appear, and red only on the sign of stop and hold', () => {
    for (const make of [house, stoppedHouse]) {
      const text = shown(make(), 80, { color: true })
      expect(new Set(text.match(ESCAPES))).toEqual(new Set(['\x1b[1m', '\x1b[22m', '\x1b[31m', '\x1b[39m']))
      for (const [, red] of text.matchAll(/\x1b\[31m(.*?)\x1b\[39m/gs)) expect(['|#|', '|=|']).toContain(red)
      for (const line of lines(text)) if (/\|[#=]\|/.test(line)) expect(line).toMatch(/^\x1b\[31m\|[#=]\|\x1b\[39m/)
    }
  })
  test('bold stands on state words, totals and headings alone', () => {
    const bold = [...shown(house(), 80, { color: true }).matchAll(/\x1b\[1m(.*?)\x1b\[22m/gs)].map(m => m[1])
    expect(new Set(bold)).toEqual(new Set(['22 Bittern Court, seal and blow', 'hold', 'stop', 'mend', 'opened', 'note', 'warning', 'gates', 'stopped', 'areas', 'rows beside', 'lighter fill', 'eaves', 'sealing', 'work', 'cover line', '22.36',
      'materials', 'price', 'total (margin 40.0%, markup 66.7%)', '4,270.00', 'air and energy', 'the price leaves out', 'findings', 'assumptions']))
  })
})

describe('ASCII', () => {
  test('only 0x20 to 0x7E and line ends', () => {
    const e = house()
    e.job.title = 'Måne cottage, 14½ ft × 20 ft — “café”, 40 °F, 数'
    expect(shown(e, 80, { ascii: true })).toMatch(/^[\x20-\x7e\n]*$/)
    expect(lines(shown(e, 80, { ascii: true }))[0]).toMatch(/^Mane cottage, 14 1\/2 ft x 20 ft - "cafe", 40 F, \?/)
  })
  test('signs that have a plain form keep their meaning', () => {
    expect(asciiOnly('1,180 ft², ≤ 3 in, 10 ÷ 4, “b”, naïve, Ⅳ')).toBe('1,180 ft2, <= 3 in, 10 / 4, "b", naive, IV')
  })
  test('the cover line is = and a total has -', () => {
    const text = shown(house(), 80, { ascii: true })
    expect(text).toMatch(/^===  cover line  =+$/m)
    expect(text).toMatch(/^ +-{8,}$/m)
    expect(text).toContain('1,180 ft2')
  })
})

describe('head and verdict', () => {
  test('who, where, which books', () => {
    expect(lines(shown()).slice(0, 2)).toEqual(['22 Bittern Court, seal and blow            bittern-court-22   draft   2026-02-17', 'Stearns County MN, IECC 2021, zone 6       demo prices, demo company, 2026-01-15'])
  })
  test('a company’s own books are named with their dates', () => {
    const e = house()
    e.basis.priceBook = { name: 'Spring list', dated: '2026-02-01', demo: false }
    e.basis.company = { name: 'Invented Attic Co.', dated: '2026-01-05', demo: false }
    expect(flat(shown(e))).toContain('prices Spring list 2026-02-01, Invented Attic Co. 2026-01-05')
    expect(shown(e)).not.toContain('demo')
    e.basis.priceBook.name = 'Invented prices'
    expect(flat(shown(e))).toContain('Invented prices 2026-02-01, ')
    expect(flat(shown(e))).not.toContain('prices Invented prices')
  })
  test('a parish is no county, and a job with its own R names no edition', () => {
    const e = house()
    e.basis = { priceBook: e.basis.priceBook, company: e.basis.company, state: 'LA', county: 'Acadia' }
    expect(lines(shown(e))[1]).toMatch(/^Acadia Parish LA  /)
    expect(shown(e)).toMatch(/Local code and licensed practice decide\.\n$/)
  })
  test.each([['go', '| |', 'Quote it and schedule it: nothing is shut.'], ['conditional', '|~|', 'Quote it, open in part: an unknown or an allowance is in the price.'], ['hold', '|=|', 'Quote it, do not schedule it'], ['stop', '|#|', 'Do not start, and quote the visit only']] as const)('%s stands behind %s', (verdict, sign, sentence) => {
    const text = shown({ ...house(), verdict, gates: [], stopped: [] })
    expect(lines(text)[3]!.slice(0, 18)).toBe(`${sign}  ${verdict.padEnd(13)}`)
    expect(flat(text)).toContain(`${verdict} ${sentence}`)
  })
  test('the sentence counts what is shut', () => {
    expect(flat(shown())).toContain('Quote it, do not schedule it: 1 stop shut; 1 hold shut; 3 tasks not in this price; 1 mend ours.')
  })
})

describe('gates', () => {
  test('worst first, each with sign, word, reason, what it shuts, what opens it, and its line', () => {
    expect(section(shown(), 'gates')).toEqual([
      '     gates                                                                  line',
      '|#|  stop         ceiling-sags-porch-1, porch ceiling: the ceiling sags       49',
      '                  shut: blow, in porch',
      '                  opens with: a repaired ceiling, photo',
      '|=|  hold         combustion-untested-furnace, basement: a natural-draft      31',
      '                  gas furnace that nobody has tested may spill once the',
      '                  house is tighter',
      '                  shut: seal, blow, in the whole attic',
      '                  opens with: a passed combustion test by a certified',
      '                  tester; step 1',
      '|+|  mend         light-not-ic-main-1, den: fill against a light not rated    58',
      '                  for contact can start a fire',
      '                  shut: blow, in main',
      '                  opens with: step 3, own box, photo with ruler',
      '| |  opened       vermiculite, north end: vermiculite may hold asbestos       27',
      '                  opened by Invented Abatement LLC on 2026-02-10,',
      '                  letters/north-end.pdf',
      ' .   note         chimney-use-unknown-main-1, back hall: nobody said          61',
      '                  whether anything vents into it',
      '                  asks for: a look at what vents into it',
    ])
  })
  test('a mend whose own task is stopped promises no step', () => {
    const e = house()
    e.tasks = e.tasks.filter(t => t.id !== 'box-lights-main')
    expect(flat(shown(e))).toContain('opens with: a task of ours that is stopped, own box, photo with ruler')
  })
  test('the three columns of a sign hold a sign, a step or nothing', () => {
    const body = lines(shown()).slice(3)
    for (const line of body) expect(line.slice(0, 5)).toMatch(/^(\|[#=~+ ]\| {2}| \. {3}|[ \d]{2}\d {2}|━━━ {2}| {5}|)$/)
  })
  test('what is stopped stands under its gate and reason', () => {
    expect(section(shown(), 'stopped')).toEqual([
      '     stopped                                                   not in this price',
      '|#|  ceiling-sags-porch-1: the ceiling sags', '     blow          Blow the porch floor',
      '|#|  ceiling-sags-porch-1: nothing is left that it serves', '     dams          Depth markers', '     blow          Level, probe, top up',
    ])
  })
  test('what an owner declines has no gate sign', () => {
    const e = house()
    e.stopped = [{ id: 'box', title: 'Build a box', phase: 'seal', gate: 'declined', why: 'owner keeps it open: den' }]
    expect(section(shown(e), 'stopped').slice(1)).toEqual(['     declined: owner keeps it open: den', '     seal          Build a box'])
  })
})

describe('areas', () => {
  test('hyphen only on a listed row; depth up to the next 1/4, whole inches aligned; a stopped area has neither', () => {
    expect(section(shown(), 'areas').slice(0, 5)).toEqual([
      '     areas          now   goal     row    blown   settled     bags   load  limit',
      '                      R      R               in        in             psf    psf',
      '     main          10.6   49.0    R-38   12 1/4    10 3/4    63.80   1.55   1.30',
      '     knee-floor     0.0   49.0    R 39   12 1/2    11         8.02   1.44   2.20',
      '     porch          0.0   49.0',
    ])
  })
  test('every R with a hyphen is a row of a chart', () => {
    const hyphens = [...shown().matchAll(/\bR-(\d+)/g)].map(m => Number(m[1]))
    expect(new Set(hyphens)).toEqual(new Set([30, 38, 49]))
  })
  test('what the ceiling will average stands beside what is nominal', () => {
    const text = flat(shown())
    expect(text).toContain('main, open floor, 1,180 ft² (1,152 ft² net): loose cellulose, 25 lb bag, to 15 1/2 in on the ruler. Nominal R 48.6; the ceiling will average R 41.3 of 49: R 7.7 short.')
    expect(text).toContain('Nominal R 49.0; the ceiling will average R 49.2 of 49. porch')
    expect(text).toContain('porch, open floor, 96 ft²: nothing is blown in this price, stopped by ceiling-sags-porch-1.')
  })
  test('the shortfall is the difference of the figures beside it', () => {
    const e = house()
    e.areas[0]!.averageR = 42.55
    expect(flat(shown(e))).toContain('average R 42.6 of 49: R 6.4 short')
  })
  test('an area where nothing is blown is left as it is', () => {
    const e = house()
    const { product: _, ...left } = { ...e.areas[2]!, product: undefined, stoppedBy: [] }
    e.areas[2] = left
    expect(flat(shown(e))).toContain('porch, open floor, 96 ft²: left as it is.')
  })
  test('rows beside with the price of their bags, the lighter fill with the price of the job', () => {
    expect(section(shown(), 'rows beside').map(flat)).toEqual([' rows beside row bags bags $', ' main the row under R-30 50.41 714.00', ' the row over R-49 82.29 1,176.00'])
    expect(section(shown(), 'lighter fill').map(flat)).toEqual([' lighter fill row bags load psf total $', ' main loose-fiberglass R-38 25.71 0.82 6,425.00', ' over this price 385.00'])
  })
  test('eaves', () => { expect(section(shown(), 'eaves')[1]).toBe('     66 bays, 40 vented: 40 baffles, 40 wind blocks.') })
})

describe('work', () => {
  const phaseOf = (line: string) => line.slice(5, 19).trim()
  test('steps, phases, hours, and what each waits for as ranges', () => {
    const steps = section(shown(), 'work').filter(l => /^[ \d]{2}\d {2}/.test(l))
    expect(steps.map(phaseOf)).toEqual(['clear the way', 'clear the way', 'seal', 'seal', 'last look', 'vents', 'dams', 'blow', 'shut', 'prove'])
    expect(steps[4]).toBe('  5  last look     Smoke pencil and flashlight, a photo of each     0.75     1-4')
    expect(steps[7]).toBe('  8  blow          Blow the open floor, in main                     2.16    5, 7')
  })
  test('cautions close each with a stop, under their task', () => {
    const work = section(shown(), 'work')
    expect(work[work.findIndex(l => l.startsWith('  3  ')) + 2]).toBe('                   Care: Power off and proved off. Keep fill 3 in off.')
  })
  test('the heavy line once, between the last look and the first work that covers, with its sentence', () => {
    for (const ascii of [false, true]) {
      const work = section(shown(house(), 80, { ascii }), 'work'), heavy = ascii ? /={3}/ : /━/
      const found = work.map((l, i) => (heavy.test(l) ? i : -1)).filter(i => i >= 0)
      expect(found).toHaveLength(1)
      const above = work.slice(0, found[0]).filter(l => /^[ \d]{2}\d/.test(l)), below = work.slice(found[0]! + 1).filter(l => /^[ \d]{2}\d/.test(l))
      expect(phaseOf(above.at(-1)!)).toBe('last look')
      expect(phaseOf(below[0]!)).toBe('vents')
      expect(work[found[0]! + 1]).toBe('     In each area nothing below starts until all above is done and seen.')
    }
    expect(shown()).toMatch(/^━━━ {2}cover line {2}━{63}$/m)
  })
  test('work that covers nothing has no cover line', () => {
    const e = house()
    e.tasks = e.tasks.filter(t => !['ventilate', 'contain', 'insulate'].includes(t.phase))
    expect(shown(e)).not.toContain('━')
    expect(shown(e)).not.toContain('cover line')
  })
  test('any order of work by phase has the line at most once, and where it belongs', () => {
    const order: TaskOut['phase'][] = ['clear', 'prepare', 'seal', 'ducts', 'check', 'wrap', 'ventilate', 'contain', 'insulate', 'close', 'prove']
    fc.assert(fc.property(fc.subarray(order), some => {
      const with_ = [...new Set([...some, 'check' as const])].sort((a, b) => order.indexOf(a) - order.indexOf(b))
      const e = house(), one = e.tasks[0]!
      e.tasks = with_.map((phase, i) => ({ ...one, step: i + 1, id: `t-${phase}`, title: 'Do', phase, cautions: [] }))
      const work = section(shown(e), 'work'), line = work.findIndex(l => l.startsWith('━━━'))
      const covering = with_.filter(p => ['wrap', 'ventilate', 'contain', 'insulate'].includes(p))
      if (covering.length === 0) { expect(line).toBe(-1); return }
      expect(work.filter(l => l.includes('━'))).toHaveLength(1)
      expect(phaseOf(work[line - 1]!)).toBe('last look')
      expect(phaseOf(work[line + 2]!)).toBe({ wrap: 'wrap', ventilate: 'vents', contain: 'dams', insulate: 'blow' }[covering[0] as string])
    }), { numRuns: 40 })
  })
  test('hours in all, crew and days', () => { expect(flat(section(shown(), 'work').slice(-3).join(' '))).toContain('crew of 2, 2 days 22.36 clear the way 3.75, seal 6.60,') })
  test('step ranges', () => {
    expect(stepRanges([8, 1, 2, 3, 5, 7, 3])).toBe('1-3, 5, 7-8')
    expect(stepRanges([])).toBe('')
    expect(stepRanges([12])).toBe('12')
  })
})

describe('sealing, materials, price', () => {
  test('each opening with its count, method, materials and hours', () => {
    expect(section(shown(), 'sealing').slice(3)).toEqual(['     recessed light in main, den (3): box, lid bare                         2.70', '                  drywall 5/8 Type X, 4×8: 30.2 ft²; latex sealant,', '                  10.1 oz: 17 fl oz'])
  })
  test('what is needed, what is bought, what is charged', () => {
    expect(section(shown(), 'materials')).toEqual([
      '     materials               needed        buy          charged   each     total',
      '                                                          packs      $         $',
      '     loose cellulose, 25 lb   71.82         74 bag        74.00  14.00  1,036.00', '     bag',
      '     latex sealant, 10.1 oz  115.40 fl oz   13 tube       12.57   5.00     62.85',
      '     drywall 5/8 Type X,      30.20 ft²      2 sheet       2.00  20.00     40.00', '     4×8',
      '     protection and PPE kit    4.00          4 person-     4.00  25.00    100.00', '                                               day',
    ])
  })
  test('the price builds up to the total', () => {
    const rows = section(shown(), 'price').filter(l => /\d$/.test(l)).map(l => [l.slice(5, 60).trim(), l.slice(60).trim()])
    expect(rows).toEqual([['materials, as charged', '1,238.85'], ['sales tax', '86.72'], ['labor, 22.36 person-h at 48.00', '1,073.28'], ['subcontract', '0.00'], ['other', '0.00'], ['direct', '2,398.85'], ['contingency', '161.85'], ['overhead', '0.00'],
      ['cost', '2,560.70'], ['price at margin', '4,267.83'], ['minimum charge, added', '0.00'], ['rounding', '2.17'], ['customer tax', '0.00'], ['total (margin 40.0%, markup 66.7%)', '4,270.00']])
    expect(section(shown(), 'price')[0]).toMatch(/ \$$/)
    expect(section(shown(), 'price').slice(1).join()).not.toContain('$')
  })
  test('incentives come off below the total', () => {
    const e = house()
    Object.assign(e.price, { incentivesCents: 60000, netCents: 367000, depositCents: 50000 })
    const price = section(shown(e), 'price').map(flat)
    expect(price.slice(-4)).toEqual([' incentives, if they are granted -600.00', ' net 3,670.00', ' deposit 500.00', ' The price holds 30 days.'])
  })
  test('money', () => {
    expect([0, 5, 123456789, -1200, -4].map(usd)).toEqual(['0.00', '0.05', '1,234,567.89', '-12.00', '-0.04'])
  })
  test('whole inches stand under whole inches', () => {
    expect(['10 3/4', '10    ', ' 3/4']).toEqual([depthCell(10.56), depthCell(10), depthCell(0.6)].map(t => t.replaceAll('\u00a0', ' ')))
  })
  test('stop: no total, only the visit', () => {
    const text = shown(stoppedHouse())
    expect(section(text, 'price').map(flat)).toEqual([' price $', ' the visit 125.00', ' No total: what is stopped is not priced.'])
    expect(text).not.toMatch(/^ +total/m)
    expect(text).not.toContain('cover line')
    expect(section(text, 'areas')[0]).toMatch(/now +goal$/)
  })
  test('the price says what it leaves out', () => { expect(section(shown(), 'the price leaves out').at(-1)).toBe('     Blowing over the porch.') })
})

describe('what else there is to know', () => {
  test('warnings before notes, each with its line', () => {
    expect(section(shown(), 'findings').slice(1)).toEqual(['     warning      13 bays without vents: air reaches them from no side        66', '     note         3 of 5 probes: existing R is only as good as its probes     44'])
  })
  test('rates are one line, other assumptions one each', () => {
    const rows = section(shown(), 'assumptions').slice(1)
    expect(rows.map(flat)).toEqual([' least bead of sealant on a seam (starting value) 0.25 in', ' fee for a visit (none in the company file) 125.00 USD', ' last year that vermiculite is possible (EPA) 1990', ' 2 starting rates; `lidwork explain FILE` lists them'])
  })
  test('an override is never silent', () => {
    expect(shown({ ...house(), overrides: [{ path: 'areas.main.bags', value: 70, insteadOf: 63.8 }] })).toContain('     areas.main.bags: 70 instead of 63.8')
  })
  test('who decides stands last', () => { expect(flat(shown()).trimEnd()).toMatch(/Local code and licensed practice decide\. The goal R is advice from IECC 2021, zone 6\.$/) })
  test('sections in their order', () => {
    const text = shown(), order = ['gates', 'stopped', 'areas', 'rows beside', 'lighter fill', 'eaves', 'sealing', 'work', 'materials', 'price', 'the price leaves out', 'findings', 'assumptions']
    const places = order.map(name => text.indexOf(`\n\n     ${name}`))
    expect(places.every(p => p > 0)).toBe(true)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })
})

describe('words that are not said', () => {
  const refused = ['recommended', 'best', 'score', 'n/a', 'save up to', 'easy', 'professional', 'installed depth', 'initial depth', 'design depth', 'premium', 'gold', 'silver', 'platinum', 'payback', 'hot spot', 'null', 'undefined', 'NaN', 'Infinity']
  test.each(refused)('%s', word => {
    for (const make of [house, stoppedHouse]) for (const width of [80, 100]) expect(flat(shown(make(), width))).not.toMatch(new RegExp(`\\b${word}\\b`, 'i'))
  })
  test('no "clearance" beside a gate, no box of rules, no brackets as posts', () => {
    const text = shown()
    expect(section(text, 'gates').join(' ')).not.toMatch(/clearance/i)
    expect(text).not.toMatch(/[│┃┌┐└┘├┤┬┴┼╭╮╯╰]|^\[|\.{4}|\p{Extended_Pictographic}/mu)
  })
})

describe('hostile text', () => {
  const everywhere = (bad: string): EstimateOut => {
    const e = house()
    e.job.title = bad
    e.basis.county = bad
    e.basis.priceBook = { name: bad, dated: '2026-01-15', demo: false }
    for (const g of e.gates) { g.where = bad; g.why = bad; if (g.clearance) g.clearance = { ...g.clearance, by: bad, paper: bad } }
    for (const a of e.areas) a.id = bad
    for (const s of e.sealing) { s.where = bad; s.method = bad; s.area = bad }
    for (const t of e.tasks) { t.title = bad; t.cautions = [bad] }
    for (const m of e.materials) { m.name = bad; m.buyUnit = bad; m.unit = `${bad}.` }
    for (const s of e.stopped) { s.title = bad; s.gate = bad }
    e.eaves!.sides[0]!.where = bad
    e.price.excludes = [bad]
    e.findings[0]!.message = bad
    e.assumptions[0]!.what = bad
    return e
  }
  const nasty: Record<string, string> = {
    'clears the screen': 'den\x1b[2J\x1b[31mred\x1b[0m', 'sets a title': 'den\x1b]0;owned\x07end', 'C1 and bidi': 'a\u009b31mb\u202ec', 'line ends': 'den\nverdict go\r\ttab\u2028x', 'one long word': 'x'.repeat(400), 'wide letters': '屋根裏断熱'.repeat(30), 'no-break': 'a\u00a0'.repeat(90), 'nothing': '', 'blanks': '     ',
  }
  test.each(Object.entries(nasty))('%s', (_, bad) => {
    for (const color of [false, true]) for (const ascii of [false, true]) {
      const text = shown(everywhere(bad), 80, { color, ascii }).replace(color ? ESCAPES : /$^/, '')
      expect(text).not.toMatch(/[\x00-\x09\x0b-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069]/)
      if (ascii) expect(text).toMatch(/^[\x20-\x7e\n]*$/)
      expect(widest(text)).toBeLessThanOrEqual(80)
    }
  })
  test('a line end in a title makes no line of its own', () => {
    const e = house()
    e.tasks[0]!.title = 'Test\n|#|  stop         Do not start'
    expect(shown(e)).not.toMatch(/^\|#\| {2}stop +Do not start/m)
  })
  test('long and wide words are cut, not lost', () => {
    const e = house(), word = 'abcdefghij'.repeat(30)
    e.materials[0]!.name = word
    e.findings[0]!.message = '断熱材'.repeat(40)
    const text = shown(e).replace(/ {2,}.*$/gm, '') // figures off
    expect(text.replace(/\s/g, '')).not.toContain('…')
    expect(section(shown(e), 'materials').map(l => l.slice(5, 28).trim()).join('')).toContain(word)
    expect(section(shown(e), 'findings').map(l => l.slice(18).replace(/ +\d+$/, '')).join('')).toContain('断熱材'.repeat(40))
  })
  test('whatever is typed, no line is too wide and nothing steers the terminal', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 120 }), fc.constantFrom(80, 100), (bad, width) => {
      const ascii = shown(everywhere(bad), width, { ascii: true })
      expect(ascii).toMatch(/^[\x20-\x7e\n]*$/)
      expect(Math.max(...lines(ascii).map(l => l.length))).toBeLessThanOrEqual(width)
      expect(shown(everywhere(bad), width)).not.toMatch(/[\x00-\x09\x0b-\x1f\x7f-\x9f]/)
    }), { numRuns: 25 })
  })
  test('words break at blanks, and behind a hyphen where a column is too narrow', () => {
    expect(wrap('blow the far end first', 8)).toEqual(['blow the', 'far end', 'first'])
    expect(wrap('person-day', 7)).toEqual(['person-', 'day'])
    expect(wrap('abcdefgh', 3)).toEqual(['abc', 'def', 'gh'])
    expect(wrap('', 10)).toEqual([''])
  })
})

// Work order, supplier order, survey sheet: what must stand on them, by the estimate and by the format of the job file.
import { readdirSync, readFileSync } from 'node:fs'
import { beforeAll, describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { workOrderOf } from '../../src/papers/crew/work-order.ts'
import { supplierOrderOf } from '../../src/papers/crew/supplier-order.ts'
import { areaKinds, hazardKinds, openingKinds } from '../../src/scope/index.ts'
import { phases } from '../../src/scope/kind.ts'
import { papers } from '../../src/papers/html/index.ts'
import { lidwork } from '../cli/test-io.ts'
import { exampleText, houseOf } from '../papers/houses.ts'

const examples = `${import.meta.dirname}/../../examples/`
const jobs = readdirSync(examples).filter(f => f.endsWith('.job.yaml'))
const source = (name: string): string => readFileSync(`${examples}${name}`, 'utf8')
/** What a person reads: no markup, entities as their letters. */
const read = (markup: string): string => markup.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]*>/g, ' ').replaceAll('&amp;', '&').replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replace(/[\s\u00a0]+/g, ' ')
const made = new Map<string, { e: EstimateOut; papers: Map<string, string> }>()
beforeAll(() => {
  for (const name of jobs) {
    const h = houseOf(exampleText(name.replace('.job.yaml', '')), name)
    made.set(name, { e: h.estimate, papers: new Map(papers.filter(p => p.appliesTo(h)).flatMap(p => p.files(h).map(f => [f.ending, f.text] as const))) })
  }
}, 60000)
const of = (name: string) => made.get(name)!

describe('a stopped house', () => {
  test('has neither work order nor supplier order', () => {
    const stopped = jobs.filter(n => of(n).e.verdict === 'stop')
    expect(stopped.length).toBeGreaterThan(0)
    for (const name of stopped) expect([...of(name).papers.keys()].filter(k => /order/.test(k)), name).toEqual([])
  })
})

describe('the work order', () => {
  const going = (): string[] => jobs.filter(n => of(n).e.verdict !== 'stop')
  test('holds every step in its order, its title, each caution word for word, each distance, its hours', () => {
    for (const name of going()) {
      const { e, papers } = of(name), markup = papers.get('work-order.html')!
      const items = [...markup.matchAll(/<li class="keep" id="step-(\d+)">[\s\S]*?<\/li>/g)].map(m => ({ step: Number(m[1]), text: read(m[0]) }))
      expect(items.map(i => i.step), name).toEqual(e.tasks.map(t => t.step))
      e.tasks.forEach((t, i) => {
        const { text } = items[i]!
        const plain = (s: string): string => s.replace(/\u00a0/g, ' ')
        expect(text, `${name} ${t.id}`).toContain(plain(t.title))
        for (const c of t.cautions) expect(text.toLowerCase(), `${name} ${t.id}`).toContain(plain(c).replace(/\.$/, '').toLowerCase())
        for (const k of t.keepOff) expect(text, `${name} ${t.id}`).toContain(`${k.distanceIn} in ${k.what}`)
        if (t.personHours > 0) expect(text, `${name} ${t.id}`).toContain(t.personHours.toFixed(2))
      })
    }
  })
  test('beside each step that closes an opening its size stands, as the survey has it', () => {
    for (const name of going()) {
      const { e, papers } = of(name), markup = papers.get('work-order.html')!
      for (const t of e.tasks.filter(x => x.phase !== 'insulate')) for (const s of e.sealing.filter(x => x.size !== undefined && x.tasks.includes(t.id))) {
        expect(read(new RegExp(`<li class="keep" id="step-${t.step}">[\\s\\S]*?</li>`).exec(markup)![0]), `${name} ${t.id}`).toContain(`${s.where}${s.count > 1 ? ` (${s.count})` : ''}: ${s.size!}`)
      }
    }
  })
  test('two flames in one closet are told apart by their names', () => {
    const text = read(of('juniper-run-27.job.yaml').papers.get('work-order.html')!)
    expect(text).toContain('Opens: water heater (utility closet) and furnace (utility closet).')
    expect(text).not.toMatch(/Opens: ([^.,]+) and \1\./)
  })
  test('an address that the file has not is a blank to fill in', () => {
    const h = houseOf(exampleText('juniper-run-27'), 'juniper-run-27.job.yaml'), { address: _, zip: __, ...job } = h.job.job
    const text = papers.find(p => p.name === 'work-order')!.files({ ...h, job: { ...h.job, job } })[0]!.text
    expect(/<dt>House<\/dt><dd>.*?<\/dd>/s.exec(text)![0]).toContain('aria-label="to fill in: address"')
    expect(text).not.toContain('undefined')
  })
  test('closing up is done each evening, and said so', () => {
    for (const name of going()) expect(of(name).e.tasks.filter(t => t.id === 'clean-up').map(t => t.title.replace(/ \(\d+ days\)$/, '')), name).toEqual(['Close up each evening; at the end clean, load, haul away'])
  })
  test('the cover line stands once, between the last look and whatever covers, with a place to sign', () => {
    for (const name of going()) {
      const { e, papers } = of(name), markup = papers.get('work-order.html')!, lines = [...markup.matchAll(/<div class="cover">/g)]
      const covers = e.tasks.find(t => ['wrap', 'ventilate', 'contain', 'insulate'].includes(t.phase))
      expect(lines.length, name).toBe(covers && covers.step > 1 ? 1 : 0)
      if (!covers || lines.length === 0) continue
      const at = lines[0]!.index
      expect(markup.indexOf(`id="step-${covers.step - 1}"`), name).toBeLessThan(at)
      expect(markup.indexOf(`id="step-${covers.step}"`), name).toBeGreaterThan(at)
      expect(markup.slice(at, at + 600)).toContain('Seen by the lead')
    }
  })
  test('a box for each bag of each area, and a row of the depth grid for each marker', () => {
    for (const name of going()) {
      const { e, papers } = of(name), markup = papers.get('work-order.html')!
      for (const a of e.areas.filter(x => x.wholeBags !== undefined)) expect(markup.match(new RegExp(`aria-label="box to tick: bag \\d+ of ${a.id}"`, 'g')), `${name} ${a.id}`).toHaveLength(a.wholeBags!)
    }
    const { e, papers } = of('juniper-run-27.job.yaml'), grid = /Depth grid[\s\S]*?<\/table>/.exec(papers.get('work-order.html')!)![0]
    expect(grid.match(/<tr><th scope="row">/g)).toHaveLength(e.areas[0]!.markers!)
  })
  test('what is brought up for all phases is what is bought or taken from stock', () => {
    for (const name of going()) {
      const { e } = of(name), brought = new Map<string, number>()
      for (const g of workOrderOf(e).groups) for (const c of g.carry) brought.set(c.item, (brought.get(c.item) ?? 0) + c.packs)
      expect(Object.fromEntries(brought), name).toEqual(Object.fromEntries(e.materials.map(m => [m.item, m.buy])))
    }
  })
  test('phases follow each other as the law has them, and each task is in one', () => {
    for (const name of going()) {
      const { groups } = workOrderOf(of(name).e), rank = groups.map(g => phases.indexOf(g.phase))
      expect(rank, name).toEqual([...rank].sort((a, b) => a - b))
      expect(groups.flatMap(g => g.tasks.map(t => t.task.step))).toEqual(of(name).e.tasks.map(t => t.step))
    }
  })
  test('every gate that is shut, what is not done, and every reading with its limit', () => {
    for (const name of going()) {
      const { e, papers } = of(name), text = read(papers.get('work-order.html')!)
      for (const g of e.gates.filter(x => x.open && (x.state === 'stop' || x.state === 'hold'))) expect(text, `${name} ${g.id}`).toContain(g.why.slice(1).replace(/\u00a0/g, ' '))
      for (const s of e.stopped) expect(text, `${name} ${s.id}`).toContain(s.title.slice(1).replace(/\u00a0/g, ' '))
      const limits = [...papers.get('work-order.html')!.matchAll(/data-figure="tests\.([a-z0-9-]+)\.atMost"/g)].map(m => m[1])
      const asked = new Set(e.tests.filter(t => t.atMost !== undefined).map(t => JSON.stringify([t.of, t.where, t.reads])))
      expect(new Set(limits).size, name).toBe(asked.size)
    }
  })
  test('a shut house says in its work order which work a gate shuts and what opens it', () => {
    const text = read(of('juniper-run-27.job.yaml').papers.get('work-order.html')!)
    expect(text).toContain('Combustion untested: utility closet Shut: seal, ducts, wrap and blow, in the whole attic.')
    expect(text).toContain('Nobody starts what a gate shuts before its paper is in the lead’s hand.')
  })
  test('whatever shows in an attic is on its last page, with whom to call; a reading and a person do not show', () => {
    const text = read(of('quince-lane-14.job.yaml').papers.get('work-order.html')!), silent = hazardKinds.filter(k => k.onSight === undefined).map(k => k.kind)
    expect(silent).toEqual(['radon', 'sensitive-occupant'])
    for (const k of hazardKinds) if (k.onSight) expect(text, k.kind).toContain(`${k.onSight.sign} ${k.onSight.act} ${k.onSight.call}`)
  })
  test('nothing of money stands on it', () => {
    for (const name of going()) expect(read(of(name).papers.get('work-order.html')!), name).not.toMatch(/\$|margin|markup|wage|cents/i)
  })
})

describe('the supplier order', () => {
  test('has every item that is bought, in whole packs, and the CSV the same', () => {
    for (const [name, { e, papers }] of made) if (e.verdict !== 'stop') {
      const markup = papers.get('supplier-order.html')!
      expect([...markup.matchAll(/data-figure="materials\.([a-z0-9-]+)\.buy"/g)].map(m => m[1]), name).toEqual(supplierOrderOf(e).flatMap(g => g.lines.map(l => l.material.item)))
      expect(supplierOrderOf(e).flatMap(g => g.lines.map(l => l.material.item)).sort(), name).toEqual(e.materials.filter(m => m.buy > 0).map(m => m.item).sort())
      expect(papers.get('supplier-order.csv')!.trim().split('\r\n').length - 1, name).toBe(e.materials.filter(m => m.buy > 0).length)
    }
  })
  test('no price of any kind, unless the company wants purchase prices; never cost, wage or margin', async () => {
    const name = 'quince-lane-14.job.yaml', { newCompany } = await import('../../src/papers/new-books.ts')
    expect(read(of(name).papers.get('supplier-order.html')!)).not.toMatch(/\$|margin|markup|wage|labor/i)
    const company = newCompany().replace(/^# orderPrices:.*$/m, 'orderPrices: yes')
    const ran = await lidwork(`papers ${name} --out o --only supplier-order --company c.yaml`, { files: { [name]: source(name), 'c.yaml': company } })
    const text = ran.files['o/quince-lane-14.supplier-order.html']!
    const m = of(name).e.materials.find(x => x.buy > 0)!
    expect(text).toContain(`data-figure="materials.${m.item}.unitPriceCents"`)
    expect(text).not.toContain('totalCents')
    expect(read(text)).not.toMatch(/margin|markup|wage|labor/i)
  })
  test('a held house says to set aside, not to send; the blown product has no stand-in', () => {
    expect(read(of('juniper-run-27.job.yaml').papers.get('supplier-order.html')!)).toContain('Set aside, do not send yet.')
    expect(read(of('ibis-landing-5.job.yaml').papers.get('supplier-order.html')!)).not.toContain('Set aside')
    expect(read(of('ibis-landing-5.job.yaml').papers.get('supplier-order.html')!)).toContain('No other product: bags and depth are those of this label.')
  })
})

describe('the survey sheet', () => {
  interface Node { readonly const?: string; readonly properties?: Record<string, Node>; readonly items?: Node; readonly $defs?: Record<string, Node> }
  const schema = JSON.parse(readFileSync(`${examples}../schemas/job.schema.json`, 'utf8')) as Node
  const keys = (n: Node): string[] => Object.entries(n.properties ?? {}).flatMap(([k, at]) => (at.const !== undefined ? [] : [k, ...keys(at), ...keys(at.items ?? {})]))
  const sheet = async (line: string): Promise<string> => { const ran = await lidwork(`survey-sheet ${line}`); expect([ran.code, ran.err]).toEqual([0, '']); return ran.out }
  const shown = (markup: string): string[] => [...markup.matchAll(/<span class="key"><b>([A-Za-z0-9]+)<\/b>/g)].map(m => m[1]!)
  const OFFICE = ['format', 'clearances', 'quote', 'choices', 'books', 'notFound', 'hazards', 'areas', 'openings']
  test('has every key of the schema but the office’s, in the order of the job file, with every kind', async () => {
    const markup = await sheet(`--areas ${areaKinds.map(k => k.kind).join(',')}`)
    const at = (word: string): number => { const i = markup.search(new RegExp(`<span class="mono(?: gray)?">${word}</span>`)); expect(i, word).toBeGreaterThan(0); return i }
    const sections = ['job', 'house', 'target', 'access', 'notFound', 'appliances', 'exhausts', 'tests', 'eaves', 'highVents', 'openings', 'ducts', 'airHandlers', 'energy', 'ventilation']
    const order = Object.keys(schema.properties!).filter(k => sections.includes(k))
    expect(order.map(at)).toEqual(order.map(at).sort((a, b) => a - b))
    for (const [key, n] of Object.entries(schema.properties!)) if (!OFFICE.includes(key)) for (const k of keys({ properties: { [key]: n } }).slice(1)) expect(shown(markup), `${key}.${k}`).toContain(k)
    for (const k of [...areaKinds, ...hazardKinds, ...openingKinds]) { at(k.kind); for (const key of keys(schema.$defs![k.kind]!)) expect(shown(markup), `${k.kind}.${key}`).toContain(key) }
  })
  test('the keys of one area follow each other as in the file', async () => {
    const markup = await sheet('--areas slope'), page = markup.slice(markup.indexOf('>slope<'), markup.indexOf('>eaves<'))
    const seen = shown(page).filter((k, i, all) => all.indexOf(k) === i)
    expect(seen).toEqual(keys(schema.$defs!['slope']!).filter((k, i, all) => all.indexOf(k) === i))
  })
  test('a page for each area that is asked for, and as many entries as asked', async () => {
    const markup = await sheet('--areas open-floor open-floor slope --lines 3')
    expect(markup.match(/<h2 class="new-page">Area /g)).toHaveLength(3)
    expect(markup.match(/>no\.</g)!.length).toBe(3 * openingKinds.length + 8 + 1)
  })
  test('one of a job has the areas of the job, by name', () => {
    const markup = of('laurel-fork-7.job.yaml').papers.get('survey-sheet.html')!
    expect([...markup.matchAll(/<h2 class="new-page">Area ([^<]*?) </g)].map(m => m[1])).toEqual(of('laurel-fork-7.job.yaml').e.areas.map(a => a.id))
  })
  test('wrong use and a file that is there', async () => {
    const wrong = await lidwork('survey-sheet --areas open-flor')
    expect([wrong.code, wrong.out]).toEqual([2, ''])
    expect(wrong.err).toContain('did you mean open-floor?')
    for (const lines of ['0', '21', 'x', '1.5']) expect((await lidwork(`survey-sheet --lines ${lines}`)).code, lines).toBe(2)
    const kept = await lidwork('survey-sheet a.html', { files: { 'a.html': 'mine' } })
    expect([kept.code, kept.files['a.html']]).toEqual([3, 'mine'])
    expect((await lidwork('survey-sheet a.html --force', { files: { 'a.html': 'mine' } })).files['a.html']).toMatch(/^<!doctype html>/)
    expect((await lidwork('survey-sheet --company no.yaml')).code).toBe(3)
  })
})

// What only the takeoff can see: each finding with the change to a sound job that raises it, and the text a person reads.
// The texts were printed by the program and then read for sense: they keep the wording, they prove no figure.
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { shelf } from '../../src/books/open.ts'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { openJob, reportOf } from '../../src/cli/jobs.ts'
import { estimate } from '../../src/estimate/estimate.ts'
import { readJob } from '../../src/job/read.ts'

const folder = join(import.meta.dirname, 'takeoff')
const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
const changed = (changes: readonly (readonly [string, string])[]): string => changes.reduce((text, [from, to]) => { expect(text).toContain(from); return text.replace(from, to) }, good)

const UNTESTED = ['appliances: []', 'appliances: [{id: heater, kind: water-heater, fuel: gas, vent: natural-draft, at: cellar}]'] as const
const paper = (text: string) => ['choices:', `clearances: [${text}]\nchoices:`] as const
const light = (rest: string) => ['openings:\n', `openings:\n  - {kind: recessed-light, in: main, count: 2, at: hall, diameterIn: 6, ${rest}}\n`] as const

const samples: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'need-above-chart': [['target: {code: iecc-2021}', 'target: {rValue: 75}']],
  'product-unknown': [['demo-loose-cellulose', 'demo-loose-celulose']],
  'clause-item-unknown': [['areas:\n', 'quote: {escalation: [{item: demo-loose-celulose, basePrice: 14, on: 2026-03-03}]}\nareas:\n']],
  'need-under-half-row': [['target: {code: iecc-2021}', 'target: {rValue: 5}']],
  'first-row-over-need': [['target: {code: iecc-2021}', 'target: {rValue: 9}']],
  'target-met': [['target: {code: iecc-2021}', 'target: {rValue: 0}']],
  'cover-too-low': [light('rating: ic, heightIn: 10')],
  'bare-box-tops': [light('rating: non-ic, heightIn: 7'), ['target: {code: iecc-2021}', 'target: {rValue: 49}']],
  'access-over-cap': [['headroomIn: 60', 'headroomIn: 20\n    webs: dense'], ['existing: []', 'existing: [{fill: loose-rock-wool, depthIn: [13, 13, 13, 13, 13], condition: good, action: keep}]']],
  'headroom-implausible': [['headroomIn: 60', 'headroomIn: 5']],
  'cfm50-implausible': [['yearBuilt: 1974', 'yearBuilt: 1974, floorAreaFt2: 1456'], ['areas:\n', 'tests: {cfm50: 298}\nareas:\n']],
  'figure-out-of-range': [['existing: []', 'existing: [{fill: loose-cellulose, depthIn: [40, 40, 40, 40, 40], condition: good, action: keep}, {fill: loose-cellulose, depthIn: [40, 40, 40, 40, 40], condition: good, action: keep}]']],
  'clearance-opens-nothing': [paper('{gate: combustion-untestd, of: heater, kind: combustion-test, by: Invented Testing LLC, on: 2026-03-01, paper: a.pdf}'), UNTESTED],
  'clearance-wrong-kind': [paper('{gate: combustion-untested, of: heater, kind: label-photo, by: Invented Testing LLC, on: 2026-03-01, paper: a.pdf}'), UNTESTED],
  'clearance-by-own-company': [paper('{gate: combustion-untested, of: heater, kind: combustion-test, by: Demo Company, on: 2026-03-01, paper: a.pdf}'), UNTESTED],
  'clearance-before-survey': [paper('{gate: combustion-untested, of: heater, kind: combustion-test, by: Invented Testing LLC, on: 2026-01-01, paper: a.pdf}'), UNTESTED],
  'clearance-before-failure': [paper('{gate: combustion-failed, of: heater, kind: combustion-test, by: Invented Testing LLC, on: 2026-02-20, paper: a.pdf}'), ['appliances: []', 'appliances: [{id: heater, kind: water-heater, fuel: gas, vent: natural-draft, at: cellar, test: {result: fail, on: 2026-03-01, by: A. Pell}}]']],
  'clearance-without-license': [paper('{gate: vermiculite, kind: abatement-clearance, by: Invented Abatement Inc, on: 2026-03-01, paper: a.pdf}'), ['notFound: [vermiculite]\nhazards: []', 'notFound: []\nhazards: [{kind: vermiculite, at: north end}]']],
}

describe('findings of the takeoff', () => {
  test.each(Object.entries(samples))('%s', (code, changes) => {
    const opened = openJob(Buffer.from(changed(changes)), `${code}.job.yaml`)
    expect(opened.findings.map(f => f.code)).toContain(code)
    const file = join(folder, `${code}.txt`)
    expect(reportOf(opened)).toBe(readFileSync(file, 'utf8'))
  })
  test('each text has its sample', () => { expect(readdirSync(folder).map(f => f.replace('.txt', '')).sort()).toEqual(Object.keys(samples).sort()) })

  test('a warning begins past its value, and a company may move it', () => {
    const codes = (changes: readonly (readonly [string, string])[], values: { id: string; value: number }[] = []) => {
      const read = readJob(changed(changes), 'a.job.yaml')
      if (!read.ok) throw new Error(JSON.stringify(read.findings))
      return estimate(read.job, shelf(demoPrices, { ...demoCompany, values }).for({ code: 'iecc-2021', climateZone: '6' })).findings.filter(f => f.code.endsWith('-implausible')).map(f => f.says)
    }
    const headroom = (n: number) => [['headroomIn: 60', `headroomIn: ${n}`]] as const
    const door = (cfm50: number, year: string) => [['yearBuilt: 1974', `${year}floorAreaFt2: 1000`], ['areas:\n', `tests: {cfm50: ${cfm50}}\nareas:\n`]] as const
    expect([15, 168, 14.9, 168.1].map(n => codes(headroom(n)).length)).toEqual([0, 0, 1, 1])
    expect([400, 399, 5000, 5001].map(n => codes(door(n, 'yearBuilt: 1974, ')).length)).toEqual([0, 1, 0, 1])
    expect([codes(door(300, '')).length, codes(door(300, 'yearBuilt: 2011, ')).length, codes(door(300, 'yearBuilt: 2012, ')).length]).toEqual([1, 1, 0])
    expect(codes(headroom(12), [{ id: 'headroom-least', value: 10 }])).toEqual([])
    expect(codes(door(350, ''), [{ id: 'cfm50-per-ft2-least', value: 0.3 }])).toEqual([])
  })

  const withBook = (prices: typeof demoPrices, changes: readonly (readonly [string, string])[]) => {
    const read = readJob(changed(changes), 'a.job.yaml')
    if (!read.ok) throw new Error('the sample must be sound')
    return estimate(read.job, shelf(prices, demoCompany).for({ code: 'iecc-2021', climateZone: '6' })).findings.map(f => `${f.code} ${f.path} ${f.says}`)
  }
  const without = (role: string) => ({ ...demoPrices, products: demoPrices.products.filter(p => p.role !== role) })
  const altered = (item: string, change: object) => ({ ...demoPrices, products: demoPrices.products.map(p => (p.item === item ? { ...p, ...change } : p)) })
  const chimney = ['openings:\n', 'openings:\n  - {kind: chimney, in: main, sizeIn: [17, 21], gapIn: 2, inUse: yes, at: hall}\n'] as const
  test('a role that no product fills is found at the item that needs it', () => {
    expect(withBook(without('latch'), [])).toContain('no-product-for-role /openings/1 this needs a product in the role latch')
  })
  test('a cover not rated for an IC light is no cover for it', () => {
    expect(withBook(altered('light-cover-ic', { ratedFor: 'non-ic' }), [light('rating: ic, heightIn: 7')])).toContain('cover-not-rated /openings/0 light-cover-ic over an IC light')
  })
  test('only noncombustible sealant may touch hot brick (ASTM E136; SWS 3.0102.2)', () => {
    expect(withBook(altered('noncombustible-sealant-10oz', { noncombustible: 'no' }), [chimney])).toContain('sealant-not-noncombustible /openings/0 noncombustible-sealant-10oz at a chimney')
    expect(withBook(demoPrices, [chimney]).filter(f => f.startsWith('sealant'))).toEqual([])
  })
})

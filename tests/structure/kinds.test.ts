// A kind is one file and one line in the index; each says what it is, shows a valid item and a faulty one.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { validateJob } from '../../dist/validators.mjs'
import { editions } from '../../src/reference/targets.ts'
import { areaKinds, hazardKinds, openingKinds } from '../../src/scope/index.ts'
import { imports, root } from './source.ts'

const lists = { areas: areaKinds, openings: openingKinds, hazards: hazardKinds } as const
const job = { format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', climateZone: '5' }, target: { code: editions[0] },
  notFound: [], hazards: [] as unknown[], areas: [areaKinds[0].sample] as unknown[], openings: [] as unknown[] }

describe.each(Object.keys(lists) as (keyof typeof lists)[])('src/scope/%s', list => {
  const kinds = lists[list] as readonly { kind: string; title: string; schema: () => { properties: Record<string, unknown> }; sample: { kind: string }; wrong: { item: unknown; code: string } }[]
  const files = readdirSync(join(root, 'src/scope', list)).filter(f => f.endsWith('.ts')).sort()

  test('each file is a line of the index, and each line a file', () => {
    expect(files).toEqual(kinds.map(k => `${k.kind}.ts`).sort())
    expect(imports('src/scope/index.ts').flatMap(i => (i.from.startsWith(`./${list}/`) ? [i.from.slice(`./${list}/`.length)] : [])).sort()).toEqual(files)
  })
  test('names and titles are there, once', () => {
    for (const k of kinds) { expect(k.kind).toMatch(/^[a-z]+(-[a-z]+)*$/); expect(k.title, k.kind).toMatch(/^[A-Z].{3,}/); expect(k.sample.kind).toBe(k.kind) }
    expect(new Set(kinds.map(k => k.title)).size).toBe(kinds.length)
  })
  test('the sample is a valid item', () => {
    for (const k of kinds) expect(validateJob(structuredClone({ ...job, [list]: [k.sample] })), `${k.kind}: ${JSON.stringify(validateJob.errors)}`).toBe(true)
  })
  test('the faulty item names its finding, and is not the sample', () => {
    for (const k of kinds) { expect(k.wrong.code, k.kind).toMatch(/^[a-z]+(-[a-z]+)+$/); expect(k.wrong.item).not.toEqual(k.sample) }
  })
})

test('no kind has the name of another, and every kind is one of three lists', () => {
  const names = Object.values(lists).flat().map(k => k.kind)
  expect(new Set(names).size).toBe(names.length)
  const folders = readdirSync(join(root, 'src/scope'), { withFileTypes: true }).filter(e => e.isDirectory()).map(e => e.name).sort()
  expect(folders).toEqual(Object.keys(lists).sort())
})

test('an opening or hazard knows neither job nor estimate', () => {
  for (const list of Object.keys(lists)) for (const f of readdirSync(join(root, 'src/scope', list))) {
    for (const i of imports(`src/scope/${list}/${f}`)) expect(i.to ?? '', `${f} imports ${i.from}`).not.toMatch(/^src\/(job|estimate|papers|cli)\//)
  }
})

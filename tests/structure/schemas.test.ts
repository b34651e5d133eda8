// The committed schema is the one the kinds compose, editors can use it, and the validators of the build say the same as it does.
import { Ajv } from 'ajv'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readsJob, validateJob } from '../../dist/validators.mjs'
// @ts-expect-error a script of the build, without types
import { AJV_OPTIONS, outputSchemas, schemaFiles } from '../../bin/validators.mjs'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { companyFormat, pricesFormat } from '../../src/books/formats.ts'
import { readsOf } from '../../src/files/schema.ts'
import { jobFormat } from '../../src/job/schemas.ts'

const root = join(import.meta.dirname, '../..')
const file = join(root, 'schemas/job.schema.json')

type Tree = { readonly [key: string]: unknown } | readonly unknown[]
const isTree = (v: unknown): v is Tree => typeof v === 'object' && v !== null
const paths = (tree: Tree): string[][] => Object.entries(tree).flatMap(([key, v]) => [[key], ...(isTree(v) ? paths(v).map(p => [key, ...p]) : [])])
/** The place in the format: of an entry of a list its kind. */
const inFormat = (tree: Tree, [key, ...rest]: readonly string[]): string => {
  const value = (tree as Record<string, unknown>)[key!], name = Array.isArray(tree) ? String((value as { kind?: unknown } | null)?.kind ?? '') : key!
  return rest.length === 0 || !isTree(value) ? name : `${name}/${inFormat(value, rest)}`
}
/** The tree with another value at a place; without the place where there is none. A wrong key comes beside it where it is a mapping. */
function withAt(tree: Tree, [key, ...rest]: readonly string[], value: unknown): unknown {
  const changed = rest.length === 0 ? value : withAt((tree as Record<string, Tree>)[key!]!, rest, value)
  if (Array.isArray(tree)) return tree.map((v: unknown, i) => (String(i) === key ? changed : v))
  return Object.fromEntries(Object.entries({ ...tree, [key!]: changed }).filter(([, v]) => v !== undefined))
}
/** Place, keyword, and the key that is missing or unknown: what the findings are worded from. */
const told = (errors: typeof validateJob.errors): string[] => (errors ?? []).map(e => [e.instancePath, e.keyword, e.params['missingProperty'] ?? e.params['additionalProperty'] ?? ''].join(' ')).sort()

describe('schemas/job.schema.json', () => {
  test('is what the fields and kinds compose', () => {
    expect(existsSync(file) && readFileSync(file, 'utf8'), 'schemas/ is not up to date: npm run build writes it').toBe(`${JSON.stringify(jobFormat(), undefined, 2)}\n`)
  })
  const ajv = new Ajv({ ...(AJV_OPTIONS as object), code: {} })
  ajv.addVocabulary(['x-unit', 'x-reads', 'patternErrorMessage'])
  const validate = ajv.compile(jobFormat())
  const good = parse(readFileSync(join(root, 'tests/findings/good.job.yaml'), 'utf8')) as Record<string, unknown>
  test('takes numbers as the tape reads, so that an editor does not mark them', () => {
    expect(validate(good), JSON.stringify(validate.errors)).toBe(true)
  })
  test('is draft-07, which YAML editors read, and is named', () => {
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ $schema: 'http://json-schema.org/draft-07/schema#', $id: 'lidwork-job-1' })
  })
  test('finds what the built validator finds', () => {
    const faulty = [{ ...good, openings: [{ kind: 'hatch' }, { kind: 'no-such' }, { in: 'main' }, 5] }, { ...good, areas: [] }, { ...good, extra: 1 }, [], null, { ...good, house: { state: 'XX', yearBuilt: 10.5 } }]
    for (const data of faulty) {
      expect(validate(data)).toBe(false)
      expect(validateJob(data)).toBe(false)
      expect(told(validateJob.errors)).toEqual(told(validate.errors as typeof validateJob.errors))
    }
  })
  // The built code is shortened (bin/validators.mjs): a job file is broken at each of its places in turn, against the library as it is.
  test('and at every place of the shipped houses, broken in five ways', () => {
    const houses = readdirSync(join(root, 'examples')).filter(f => f.endsWith('.job.yaml')).map(f => parse(readFileSync(join(root, 'examples', f), 'utf8')) as Tree)
    let faults = 0
    const met = new Set<string>()
    for (const house of houses) for (const path of paths(house).filter(p => !met.has(inFormat(house, p)) && met.add(inFormat(house, p)))) for (const broken of [5, 'no such', null, {}, undefined]) {
      const data = withAt(house, path, broken)
      const sound = validate(data)
      expect(validateJob(data), path.join('/')).toBe(sound)
      if (!sound) { faults++; expect(told(validateJob.errors), path.join('/')).toEqual(told(validate.errors as typeof validateJob.errors)) }
    }
    expect(faults).toBeGreaterThan(1000)
  })
})

describe('what keys read', () => {
  test('the ending of a key says its unit, and so its grammar', () => {
    expect(Object.fromEntries(readsJob)).toMatchObject({ lengthFt: 'feet', rectanglesFt: 'feet', heelIn: 'inches', depthIn: 'inches', areaFt2: 'number', count: 'number', climateZone: 'name' })
    for (const [key, as] of readsJob) if (as === 'feet' || as === 'inches') expect(key).toMatch(as === 'feet' ? /Ft$/ : /In$/)
  })
  test('one key name cannot be read in two ways', () => {
    const number = { type: ['number', 'string'], 'x-unit': 'ft', 'x-reads': 'feet' }
    expect(() => readsOf({ properties: { size: number, part: { properties: { size: { type: 'string' } } } } })).toThrow('the key size reads feet in one place and as it stands in another')
    expect(() => readsOf({ properties: { size: { type: 'array', items: number }, part: { properties: { size: { ...number, 'x-reads': 'inches' } } } } })).toThrow('size')
  })
})

describe('the other schemas', () => {
  test('of the price book and the company file are what their fields compose, and take the embedded books', async () => {
    for (const { file, text } of await schemaFiles() as { file: string; text: string }[]) expect(readFileSync(join(root, file), 'utf8'), `${file} is not up to date: npm run build writes it`).toBe(text)
    for (const [format, book] of [[pricesFormat(), demoPrices], [companyFormat(), demoCompany]] as const) {
      const ajv = new Ajv({ ...(AJV_OPTIONS as object), code: {} })
      ajv.addVocabulary(['x-unit', 'x-reads', 'patternErrorMessage'])
      const validate = ajv.compile(format)
      expect(validate(book), JSON.stringify(validate.errors)).toBe(true)
    }
  })
  test('of the outputs follow their types, and that of the estimate takes the estimate of each example', async () => {
    const made = await outputSchemas() as { file: string; text: string }[]
    for (const { file, text } of made) expect(readFileSync(join(root, file), 'utf8'), `${file} is not up to date: npm run schemas writes it`).toBe(text)
    const { text } = made.find(m => m.file === 'schemas/estimate.schema.json')!
    const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(JSON.parse(text) as object)
    const recorded = readdirSync(join(root, 'examples')).filter(f => f.endsWith('.estimate.json'))
    expect(recorded.length).toBeGreaterThan(0)
    for (const name of recorded) expect(validate(JSON.parse(readFileSync(join(root, 'examples', name), 'utf8'))), `${name}: ${JSON.stringify(validate.errors)}`).toBe(true)
  })
})

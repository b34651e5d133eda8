// The quicker reading against the other one: where it is sure, both read the same data, and find the same places.
import fc from 'fast-check'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { newCompany, newPrices } from '../../src/papers/new-books.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { quickYaml } from '../../src/files/quick-yaml.ts'
import { readYaml, type Yaml } from '../../src/files/yaml.ts'
import { SourcePlaces } from '../../src/findings/places.ts'
import { seed } from '../property/job.ts'

const kind = { format: 'x', name: 'a file', holds: 'x', start: 'x', one: ['x', 'x'], mostBytes: 1e7, usual: 'x' } as const
const root = join(import.meta.dirname, '../..')
const filesOf = (folder: string): [string, string][] => readdirSync(join(root, folder)).filter(f => f.endsWith('.yaml')).map(f => [`${folder}/${f}`, readFileSync(join(root, folder, f), 'utf8')])
const files: [string, string][] = [...filesOf('examples'), ...filesOf('tests/findings/bad'), ...filesOf('tests/findings'), ...filesOf('tests/handbook'), ['new job', newJob()], ['new prices', newPrices()], ['new company', newCompany()]]

/** What differs between the two readings of a text; nothing where the quicker one leaves it to the other. */
function parts(source: string): string | undefined {
  const places = new SourcePlaces(source), quick = quickYaml(places, 20)
  if (!quick) return undefined
  const slow: Yaml = readYaml(source, kind, false)
  if (slow.findings.length > 0) return `it finds nothing, the other ${slow.findings[0]!.code}`
  if (slow.bare.size > 0) return 'the other has bare keys'
  const [a, b] = [JSON.stringify(quick.data), JSON.stringify(slow.data)]
  if (a !== b) return `it reads ${a}, the other ${b}`
  places.value('') // they are looked up when somebody asks
  for (const what of ['values', 'keys', 'heads'] as const) if (slow.places[what].size !== places[what].size) return `${what}: ${places[what].size}, the other ${slow.places[what].size}`
  for (const path of slow.places.values.keys()) if (JSON.stringify(places.value(path)) !== JSON.stringify(slow.places.value(path))) return `the value ${path} at ${JSON.stringify(places.value(path))}, the other ${JSON.stringify(slow.places.value(path))}`
  for (const path of slow.places.keys.keys()) if (JSON.stringify(places.key(path)) !== JSON.stringify(slow.places.key(path))) return `the key ${path}`
  return undefined
}

test.each(files)('%s', (_, text) => { expect(parts(text)).toBeUndefined() })
test('it is sure of the files that people write', () => {
  const sure = filesOf('examples').filter(([, text]) => quickYaml(new SourcePlaces(text), 20)).length
  expect(sure).toBe(filesOf('examples').length)
  for (const text of [newJob(), newPrices(), newCompany()]) expect(quickYaml(new SourcePlaces(text), 20)).toBeDefined()
})
test('line ends of Windows', () => {
  for (const [, text] of filesOf('examples')) {
    const windows = text.replaceAll('\n', '\r\n')
    expect(quickYaml(new SourcePlaces(windows), 20)).toBeDefined()
    expect(parts(windows)).toBeUndefined()
  }
})

describe('on texts that somebody spoiled', () => {
  const bits = ['\n', '  ', ' ', '- ', ': ', ':', ',', '#', ' # x', '{', '}', '[', ']', '"', "'", '|', '> ', '&a ', '*a', '!t ', '? ', '---\n', '\t', '~', 'null', 'yes', 'true', '010', '0x1F', '.5', '1e3', '1_000', '-0', '+7', '.inf', '5/8', '1.', 'a: 1\n', '\\', '\r', '<<: ', '\u00a0', '%', '@', '`', 'é', '12345678901234567890', '2026-03-03', '-', '...\n', '""', '{}', '[]', 'x: {a, b: }']
  const spoiled = fc.constantFrom(...files.filter(([, t]) => t.length < 8000)).chain(([, text]) => fc.array(fc.record({ at: fc.nat(text.length), cut: fc.constantFrom(0, 0, 1, 1, 3, 12), put: fc.constantFrom('', ...bits) }), { minLength: 1, maxLength: 3 })
    .map(edits => edits.reduce((t, { at, cut, put }) => t.slice(0, at) + put + t.slice(at + cut), text)))
  test('no two readings part', () => {
    fc.assert(fc.property(spoiled, text => { expect(parts(text)).toBeUndefined() }), { seed, numRuns: Number(process.env['LIDWORK_RUNS'] ?? 500) })
  })
  const small = fc.array(fc.constantFrom(...bits, 'a', 'b', 'kind', 'a: ', 'b: ', '\n', '\n', '\n  ', ' ', '1', '2 in'), { minLength: 2, maxLength: 14 }).map(p => `a: ${p.join('')}`)
  test('nor on scraps', () => {
    fc.assert(fc.property(small, text => { expect(parts(text)).toBeUndefined() }), { seed, numRuns: Number(process.env['LIDWORK_RUNS'] ?? 3000) })
  })
})

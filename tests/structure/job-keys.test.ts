// The keys of the job file: an ending says the unit, the unit says the ending, and every numeric key has both.
import { expect, test } from 'vitest'
import { jobSchema, kindSchemas } from '../../src/job/job-file.ts'
import { unitOf } from '../../src/scope/kind.ts'

interface Node { readonly type?: string | readonly string[]; readonly properties?: Readonly<Record<string, Node>>; readonly items?: Node; readonly additionalProperties?: Node | boolean; readonly description?: string; readonly 'x-unit'?: string; readonly 'x-reads'?: string
  readonly minimum?: number; readonly exclusiveMinimum?: number; readonly maximum?: number; readonly required?: readonly string[] }

const keys: { path: string; key: string; node: Node }[] = []
const visit = (node: Node, path: string): void => {
  for (const [key, child] of Object.entries(node.properties ?? {})) { keys.push({ path: `${path}/${key}`, key, node: child }); visit(child, `${path}/${key}`) }
  if (node.items) visit(node.items, path)
  if (typeof node.additionalProperties === 'object') visit(node.additionalProperties, path)
}
visit(jobSchema() as unknown as Node, '')
for (const [kind, schema] of Object.entries(kindSchemas())) visit(schema as unknown as Node, `(${kind})`)

/** A number, or a list or pair of numbers: what is measured. */
const measured = (n: Node): Node | undefined => n['x-unit'] !== undefined ? n : n.items ? measured(n.items) : undefined
const numeric = (n: Node): boolean => [n.type].flat().includes('number') || [n.type].flat().includes('integer')

const ENDINGS: readonly (readonly [RegExp, string])[] = [[/Ft2$/, 'ft2'], [/Ft3$/, 'ft3'], [/In2$/, 'in2'], [/In2PerFt$/, 'in2/ft'], [/Ft$/, 'ft'], [/In$/, 'in'], [/Ppm$/, 'ppm'], [/PciL$/, 'pCi/L'], [/Pa$/, 'Pa'], [/Mi$/, 'mi'], [/(?:[a-z]R|^rValue)$/, 'R'], [/Psf$/, 'lb/ft2'], [/Pcf$/, 'lb/ft3'], [/Pct$/, 'pct'], [/Cents$/, 'cents'], [/Hours$/, 'h'], [/Cfm$/, 'cfm'], [/Btuh$/, 'Btu/h'], [/Mph$/, 'mph'], [/[a-z]F$/, '°F']]
/** Keys with a unit that their ending does not say, and why. */
const PLAIN: Readonly<Record<string, string>> = {
  count: 'a number of things', bays: 'a number of things', ventedBays: 'a number of things', goodBaffles: 'a number of things', bedrooms: 'a number of things', stories: 'a number of things, halves too',
  joints: 'a number of things', elbows: 'a number of things', takeoffs: 'a number of things', boots: 'a number of things', disconnected: 'a number of things', openSolidBays: 'a number of things', openBays: 'a number of things', strapsMissing: 'a number of things', coAlarmsMissing: 'a number of things', cfm: 'its own unit, as the trade says it', cfm50: 'cfm at 50 Pa, as the trade says it', cfm25Total: 'cfm at 25 Pa', cfm25Outside: 'cfm at 25 Pa',
  yearBuilt: 'a calendar year', roofPitch: 'rise in 12, as roofers say it', amount: 'dollars, as every price that people write', permitFee: 'dollars, as every price that people write', number: 'a number of a quote', pct: 'its own name', atLeast: 'a number of things bought', stock: 'a number of things bought', hours: 'its own name', value: 'in the unit of the value it names', crew: 'a number of people', wage: 'dollars, as every price that people write', basePerHour: 'dollars, as every price that people write', hoursPerDay: 'its own name', overheadPerHour: 'dollars, as every price that people write', minimumCharge: 'dollars, as every price that people write', travelPerMile: 'dollars, as every price that people write', travelPerDay: 'dollars, as every price that people write', roundUpTo: 'dollars, as every price that people write', validDays: 'its own name', reissueWithinDays: 'its own name', maxUsd: 'its own name', aboveUsd: 'its own name', visitFee: 'dollars, as every price that people write', dumpFeePerTon: 'dollars, as every price that people write', dumpFeeMinimum: 'dollars, as every price that people write', factor: 'a factor', price: 'dollars, as every price that people write', basePrice: 'dollars, as every price that people write', yearlyBill: 'dollars, as every price that people write',
  efficiency: 'a share, as its label says it', seer: 'as its label says it', hdd65: 'degree days, base 65 °F', cdd65: 'degree days, base 65 °F', wsf: 'a factor, as the standard names it', exteriorShare: 'a share', infiltrationZone: 'a zone of a map',
}
/** Numbers by their look, names by their meaning. */
const NAMES = ['climateZone']
const endingOf = (key: string) => ENDINGS.find(([ends]) => ends.test(key))

test('the walk finds the keys of all parts', () => {
  expect(keys.length).toBeGreaterThan(90)
  expect(keys.map(k => k.key)).toEqual(expect.arrayContaining(['rectanglesFt', 'heelIn', 'gapIn', 'surveyedOn', 'ventedBays', 'labelR', 'marginPct']))
})

test('a key that ends in a unit is a number in that unit', () => {
  for (const { path, key, node } of keys) {
    const ending = endingOf(key)
    if (!ending) continue
    const m = measured(node) ?? (node.items && measured(node.items))
    expect(m, `${path} is no number`).toBeDefined()
    expect(m!['x-unit'], path).toBe(ending[1])
    expect(numeric(m!), path).toBe(true)
  }
})

test('a number with a unit ends in it', () => {
  const plain = new Set<string>()
  for (const { path, key, node } of keys) {
    const m = measured(node)
    if (!m) continue
    if (key in PLAIN) { plain.add(key); continue }
    expect(endingOf(key)?.[1], `${path} is in ${m['x-unit']!}`).toBe(m['x-unit'])
  }
  expect([...plain].sort(), 'exceptions that no key needs').toEqual(Object.keys(PLAIN).sort())
})

test('every number has a unit, a largest value and help with the unit in it', () => {
  for (const { path, key, node } of keys) {
    const leaf = measured(node) ?? node
    if (!numeric(leaf) || NAMES.includes(key)) continue
    expect(leaf['x-unit'], path).toBeDefined()
    expect(leaf.maximum, path).toBeGreaterThan(0)
    expect(leaf.minimum ?? leaf.exclusiveMinimum, path).toBeDefined()
    expect(leaf.description, path).toContain(`[${leaf['x-unit']!}]`)
  }
})

test('inches and feet are read as the tape reads', () => {
  for (const { path, node } of keys) {
    const m = measured(node)
    if (m?.['x-unit'] === 'in') expect(m['x-reads'], path).toBe('inches')
    if (m?.['x-unit'] === 'ft') expect(m['x-reads'], path).toBe('feet')
  }
})

test('a figure taken from a key has the unit of the key', () => {
  for (const { path, key, node } of keys) {
    const unit = measured(node)?.['x-unit']
    // Figures of the house and of the choices are not taken by their key.
    if (unit === undefined || !path.startsWith('(') && !path.startsWith('/eaves')) continue
    expect(unitOf(key), path).toBe(unit === 'rise in 12' ? 'rise/12' : unit)
  }
})

test('keys are camelCase, and every key of a choice has help', () => {
  for (const { path, key, node } of keys) {
    expect(key, path).toMatch(/^[a-z][A-Za-z0-9]*$/)
    expect(node.description ?? '', path).toMatch(/\w{2,}/)
  }
})

// Each faulty file stands beside the text a person should read about it. A fault that nobody has shown here is not tested: the last test says which.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { renderFinding } from '../../src/findings/render.ts'
import { readJob } from '../../src/job/read.ts'

const folder = join(import.meta.dirname, 'bad')
const names = readdirSync(folder).filter(f => f.endsWith('.job.yaml')).sort()
const read = (name: string) => readJob(readFileSync(join(folder, name)), name)

describe('faulty files', () => {
  test.each(names)('%s', name => {
    const result = read(name)
    const text = result.findings.map(f => renderFinding(f, result.ok ? result.job.places : result.places, result.source, name)).join('')
    expect(text).toBe(readFileSync(join(folder, name.replace('.job.yaml', '.txt')), 'utf8'))
    expect(text).not.toBe('')
  })
  test('each text belongs to a file', () => {
    expect(readdirSync(folder).filter(f => f.endsWith('.txt')).sort()).toEqual(names.map(n => n.replace('.job.yaml', '.txt')))
  })
  test('no line is wider than 80 columns', () => {
    for (const name of names) for (const line of readFileSync(join(folder, name.replace('.job.yaml', '.txt')), 'utf8').split('\n')) expect(line.length, `${name}: ${line}`).toBeLessThanOrEqual(80)
  })
})

test('each code that reading a job file can raise has a faulty file', () => {
  const source = ['files/yaml', 'files/messages', 'files/number-texts', 'files/dates', 'files/read', 'job/checks', 'job/read'].map(f => readFileSync(join(import.meta.dirname, '../../src', `${f}.ts`), 'utf8')).join('\n')
    // A kind's own rules stand between its `check` and its takeoff.
    + readFileSync(join(import.meta.dirname, '../../src/scope/areas/open-floor.ts'), 'utf8').split('function floorFaults(')[1]!.split(/\n(?:export )?(?:function|interface) /)[0]!
    + readFileSync(join(import.meta.dirname, '../../src/scope/vents.ts'), 'utf8').split('function ventFaults(')[1]!.split(/\n(?:export )?(?:function|interface) /)[0]!
    + readFileSync(join(import.meta.dirname, '../../src/scope/ducts.ts'), 'utf8').split('function ductFaults(')[1]!.split(/\n(?:export )?(?:function|interface) /)[0]!
  const raised = new Set([...source.matchAll(/(?:\b(?:say|error|finding)\(\s*|\bcode: |\brefuse\(\w+, |\? |: )'([a-z]+(?:-[a-z]+)+)'(?=,)/g)].map(m => m[1]!))
  const shown = new Set(names.flatMap(n => read(n).findings.map(f => f.code)))
  expect(raised.size).toBeGreaterThan(50)
  // These need bytes that no file of this folder should hold: see reading.test.ts.
  const elsewhere = ['file-too-large', 'not-text', 'text-too-long']
  expect([...raised].filter(code => !shown.has(code) && !elsewhere.includes(code))).toEqual([])
})

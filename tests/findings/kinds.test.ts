// Every kind brings a valid item and a faulty one: the first passes in a job, the second raises the finding it says.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { readJob } from '../../src/job/read.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { areaKinds, hazardKinds, openingKinds } from '../../src/scope/index.ts'

const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
type Section = 'areas' | 'openings' | 'hazards'
const jobWith = (section: Section, item: unknown): string => {
  const job = parse(good, { schema: 'core' }) as Record<Section | 'notFound' | 'eaves' | 'choices', unknown>
  // What is left out lies beside a floor.
  job[section] = section === 'areas' && typeof item === 'object' && item !== null && 'beside' in item ? [openFloor.sample, item] : [item]
  job.notFound = []
  if (section === 'areas') { job.openings = []; job.eaves = []; delete job.choices }
  return stringify(job)
}

const all = [...areaKinds.map(k => ['areas', k] as const), ...openingKinds.map(k => ['openings', k] as const), ...hazardKinds.map(k => ['hazards', k] as const)]
describe.each(all.map(([section, kind]) => [kind.kind, section, kind] as const))('%s', (_, section, kind) => {
  test('its valid item', () => {
    const result = readJob(jobWith(section, kind.sample), 'a.job.yaml')
    expect(result.findings.filter(f => f.severity === 'error')).toEqual([])
    expect(result.ok && result.job.data[section].at(-1)).toEqual(kind.sample)
  })
  test('its faulty item', () => {
    const result = readJob(jobWith(section, kind.wrong.item), 'a.job.yaml')
    expect(result.findings.map(f => f.code)).toContain(kind.wrong.code)
    expect(result.ok).toBe(false)
  })
})

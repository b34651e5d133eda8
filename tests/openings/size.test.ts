// Sizes as the crew reads them off a tape: what the survey has, each measure of each kind of opening.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds, openingKinds } from '../../src/scope/index.ts'
import { sizeOf } from '../../src/scope/size.ts'
import { make } from '../property/job.ts'

const never = (): boolean => false

describe('a size in the words of a tape', () => {
  test.each<[object, string | undefined]>([
    [{ kind: 'duct-boot', sizeIn: [4, 10], gapIn: 0.25 }, '4 × 10 in, gap 1/4 in'],
    [{ kind: 'dropped-soffit', sizeFt: [8, 2.5] }, '8\'0" × 2\'6"'],
    [{ kind: 'recessed-light', diameterIn: 6, heightIn: 7.5, housingIn: [13, 8] }, 'housing 13 × 8 in, 6 in across, 7 1/2 in high'],
    [{ kind: 'pipe', nominalIn: 2, holeIn: 3 }, '2 in pipe, hole 3 in'],
    [{ kind: 'top-plate', lengthFt: 186, gapIn: 0.125 }, '186\'0" long, gap 1/8 in'],
    [{ kind: 'metal-flue', diameterIn: 4, framedIn: [7, 7] }, 'framed 7 × 7 in, 4 in across'],
    [{ kind: 'combustion-air-opening', sizeIn: [12, 8], sleeveIn: 0 }, '12 × 8 in, no sleeve'],
    [{ kind: 'sprinkler-head' }, undefined],
  ])('%o: %s', (item, said) => { expect(sizeOf(item, never)).toBe(said) })
  test('what was written with ~ is about that', () => { expect(sizeOf({ lengthFt: 112, gapIn: 0.125 }, key => key === 'lengthFt')).toBe('about 112\'0" long, gap 1/8 in') })
  test('every measure of every kind is read out, but a distance that the step itself keeps', () => {
    for (const { kind, sample } of openingKinds) for (const key of Object.keys(sample).filter(k => /(?:In|Ft|Ft2)$/.test(k) && k !== 'labelClearanceIn')) {
      const { [key]: _, ...rest } = sample as unknown as Record<string, unknown>
      expect(sizeOf(sample, never), `${kind} ${key}`).not.toBe(sizeOf(rest, never))
    }
  })
  test('stands on its line of sealing[], with ~ and without, and is absent where nothing was measured', () => {
    const house: JobFile = {
      format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
      notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample], eaves: [], appliances: [],
      openings: [{ kind: 'duct-boot', in: 'main', count: 7, sizeIn: [4, 10], gapIn: 0.25, at: 'all rooms' }, { kind: 'sprinkler-head', in: 'main', count: 1, at: 'hall' }],
    }
    expect(make(house).json.sealing.map(s => s.size)).toEqual(['4 × 10 in, gap 1/4 in', undefined])
  })
})

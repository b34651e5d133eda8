// The rules across a job at their edges: what is just right passes, one more does not.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readJob } from '../../src/job/read.ts'

const good = readFileSync(join(import.meta.dirname, 'good.job.yaml'), 'utf8')
const codes = (...changes: (readonly [from: string, to: string])[]): string[] => {
  const text = changes.reduce((t, [from, to]) => {
    if (!t.includes(from)) throw new Error(`the good file has no ${from}`)
    return t.replace(from, to)
  }, good)
  return readJob(text, 'a.job.yaml').findings.map(f => f.code)
}
const eave = (to: string) => ["lengthFt: 40'6, ventedBays: 24, goodBaffles: 2", to] as const

test('the file these are made from has no findings', () => { expect(codes()).toEqual([]) })

test.each([
  ['40 ft 6 in at 16 in: 30 bays and one more at each end', [eave("lengthFt: 40'6, ventedBays: 32")], []],
  ['one more', [eave("lengthFt: 40'6, ventedBays: 33")], ['more-vented-than-bays']],
  ['the bays counted, all vented', [eave("lengthFt: 40'6, bays: 40, ventedBays: 40")], []],
  ['all baffles good', [eave("lengthFt: 40'6, ventedBays: 24, goodBaffles: 24")], []],
  ['one more baffle than bays', [eave("lengthFt: 40'6, ventedBays: 24, goodBaffles: 25")], ['more-baffles-than-vented']],
  ['an eave all round 40 x 24 ft', [eave('lengthFt: 128, ventedBays: 24')], []],
  ['an inch more', [eave("lengthFt: 128'1, ventedBays: 24")], ['eave-too-long']],
  ['no eave bears on the ceiling', [["eaves:\n  - {in: main, at: south, lengthFt: 40'6, ventedBays: 24, goodBaffles: 2}", 'eaves: []']], []],
  ['a house built in the year of the survey', [['yearBuilt: 1974', 'yearBuilt: 2026']], []],
  ['a leap day', [['2026-02-02', '2028-02-29']], []],
  ['the same day a year before', [['2026-02-02', '2027-02-29']], ['date-not-real']],
  ['2000 was a leap year', [['2026-02-02', '2000-02-29']], []],
  ['the thirty-first of April', [['2026-02-02', '2026-04-31']], ['date-not-real']],
  ['an edition and a county: the map has the zone', [['climateZone: 6, ', '']], []],
  ['an edition without zone and county', [['county: Dakota, climateZone: 6, ', '']], ['zone-missing']],
  ['an edition in a state of one zone', [['state: MN, county: Dakota, climateZone: 6', 'state: VT']], []],
  ['a county that is not there, where the zone hangs on it', [['county: Dakota, climateZone: 6', 'county: Dakoto']], ['county-unknown']],
  ['a zone other than the map’s', [['climateZone: 6', 'climateZone: 5']], ['zone-differs-from-map']],
  ['the same where an R is the goal', [['climateZone: 6', 'climateZone: 5'], ['code: iecc-2021', 'rValue: 49']], []],
  ['an edition that no area asks for', [['county: Dakota, climateZone: 6, ', ''], ['    existing: []', '    rValue: 49\n    existing: []']], []],
  ['an R without a zone', [['county: Dakota, climateZone: 6, ', ''], ['code: iecc-2021', 'rValue: 49']], []],
  ['vermiculite looked for and suspected', [['hazards: []', 'hazards: [{kind: vermiculite, at: north}]']], ['hazard-found-and-not']],
  ['vermiculite suspected', [['notFound: [vermiculite]', 'notFound: []'], ['hazards: []', 'hazards: [{kind: vermiculite, at: north}]']], []],
] as const)('%s', (_, changes, expected) => { expect(codes(...changes)).toEqual(expected) })

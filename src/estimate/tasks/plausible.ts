// Readings that may well be right and seldom are: a digit left out, another unit, another house. They refuse nothing.
import type { Books } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'

/** A blower door reading against the floor of the house [cfm at 50 Pa for each ft²]; a house built by today's code may be as tight as it likes. */
export function readingFindings({ tests, house }: Pick<JobFile, 'tests' | 'house'>, books: Books): Finding[] {
  const { cfm50 } = tests ?? {}, { floorAreaFt2, yearBuilt } = house
  if (cfm50 === undefined || floorAreaFt2 === undefined) return []
  const least = books.start('cfm50-per-ft2-least', 0.4, 'factor', 'CFM50 for each ft² of floor under which an older house is hardly found', 'about 3 air changes an hour at 8 ft: what new houses have to reach by IECC R402.4.1.2 (from memory, high)')
  const most = books.start('cfm50-per-ft2-most', 5, 'factor', 'CFM50 for each ft² of floor over which a house is hardly found', 'judgment: about 37 air changes an hour at 8 ft')
  const tight = books.start('year-tight', 2012, 'year', 'first year that houses were built to a blower door', 'judgment: IECC 2012, as states took it over')
  const each = cfm50 / floorAreaFt2, low = each < least.value && (yearBuilt === undefined || yearBuilt < tight.value)
  if (!low && each <= most.value) return []
  return [{ code: 'cfm50-implausible', severity: 'warning', path: '/tests/cfm50', says: `${cfm50} CFM50 in ${floorAreaFt2} ft² of floor${yearBuilt === undefined ? '' : `, built ${yearBuilt}`}`,
    why: low ? `that is ${each.toFixed(2)} for each ft², tighter than ${least.value}, where older houses end` : `that is ${each.toFixed(2)} for each ft², over ${most.value}`, mend: 'look at the test form and at floorAreaFt2: a digit may be missing, or the ring left on the fan' }]
}

// An R that is rare for the year of the house is worth a second look: a wrong depth, or work that nobody mentioned.
import type { Books } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { atticStock, stockShares } from '../../reference/stock.ts'
import type { Quantity } from '../../units/quantity.ts'
import type { Taken } from './takeoff.ts'

/** Open floors alone: the survey behind the table counts vented attics by their floor. */
export function stockNotes(data: JobFile, taken: Taken, books: Books): Finding[] {
  const { yearBuilt } = data.house
  if (yearBuilt === undefined) return []
  const rare = books.start('rare-share', 0.05, 'fraction', 'share of attics of a house’s age under which an R is worth a second look', 'judgment').value
  return taken.areas.flatMap((a): Finding[] => {
    const area = data.areas.find(x => x.id === a.id)
    // A bare floor is plain to see; what is taken out or has failed counts for nothing in the estimate, and would be rare for that alone.
    if (area?.kind !== 'open-floor' || area.existing.length === 0 || area.existing.some(l => l.action !== 'keep' || l.condition === 'failed')) return []
    const r = (a.measure.figures['existingR'] as Quantity | undefined)?.value, shares = r === undefined ? undefined : stockShares(yearBuilt, r)
    if (r === undefined || shares === undefined) return []
    const low = shares.upTo < rare, high = shares.from < rare
    if (!low && !high) return []
    const pct = Math.round((low ? shares.upTo : shares.from) * 100)
    return [{ code: 'existing-r-rare', severity: 'note', path: a.at, says: `R ${r.toFixed(0)} lies there in a house of ${yearBuilt}`, why: `of vented attics of houses built ${shares.built.startsWith('before') || shares.built.endsWith('later') ? shares.built : `in the ${shares.built}`}, ${pct === 0 ? 'hardly any' : `${pct} %`} hold that ${low ? 'little' : 'much'} (${atticStock.source.split(',')[0]!})`, mend: 'measure it once more, and ask what was done since; the estimate goes by the file' }]
  })
}

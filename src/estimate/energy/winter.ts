// Rooms and weather of the heating season, as several figures ask for them.
import { winterMean } from '../../calc/air.ts'
import type { Books } from '../../books/books.ts'
import type { JobFile } from '../../job/job-file.ts'
import { degreeDaysOf } from '../../reference/climate.ts'
import { given, work, type Quantity } from '../../units/quantity.ts'

export const roomsF = (books: Books): Quantity<'°F'> => books.start('inside-winter', 70, '°F', 'rooms in winter')

/** Mean outdoors: as measured or looked up; else from the degree days of the place; else a starting value. */
export function winterMeanF({ energy, house }: JobFile, books: Books): Quantity<'°F'> {
  if (energy?.winterMeanF !== undefined) return given(energy.winterMeanF, '°F', '/energy/winterMeanF')
  const degreeDays = energy && degreeDaysOf(energy, house.state).hdd65
  return degreeDays === undefined ? books.start('winter-mean', 35, '°F', 'mean outdoor temperature of the heating season', 'no degree days of the place are at hand')
    : work(winterMean, { degreeDays, days: books.start('heating-season', 212, 'day', 'days of the heating season, October to April', 'judgment; shorter where winters are mild') })
}

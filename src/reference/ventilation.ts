// How much an attic is vented, by the code.
import type { Edition } from './targets.ts'
import { table } from './table.ts'

/** When a part of 300 is enough, else one of 150: shares of what is needed that stand high and at the eaves, and whether zones 6 to 8 want a vapor retarder as well. */
export const ventRules = table<{ edition: Edition; base: number; reduced: number; high: number; low: number; retarder: 'and' | 'or' }>({
  name: 'vent-rules', title: 'Net free area of attic vents, by edition', source: 'IRC R806.2, text of 2012 (hansenpolebuildings.com, 2018-03)', obtained: 'published, seen in a copy', units: { base: 'part', reduced: 'part', high: 'fraction', low: 'fraction' },
  rows: [
    { edition: 'iecc-2009', base: 150, reduced: 300, high: 0.5, low: 0.2, retarder: 'or', source: 'IRC R806.2, text up to 2009 (city and builders’ handouts)', obtained: 'published, seen in a copy' },
    { edition: 'iecc-2012', base: 150, reduced: 300, high: 0.4, low: 0.5, retarder: 'or' },
    { edition: 'iecc-2015', base: 150, reduced: 300, high: 0.4, low: 0.5, retarder: 'and', source: 'IRC R806.2 of 2015', obtained: 'from memory, high' },
    { edition: 'iecc-2018', base: 150, reduced: 300, high: 0.4, low: 0.5, retarder: 'and', source: 'IRC R806.2 of 2018', obtained: 'from memory, high' },
    { edition: 'iecc-2021', base: 150, reduced: 300, high: 0.4, low: 0.5, retarder: 'and', source: 'IRC R806.2 of 2021', obtained: 'from memory, high' },
  ],
})
/** Zones in which the retarder counts. */
export const COLD_ZONES: readonly string[] = ['6', '7', '8']

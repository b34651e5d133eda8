// What cold climates add: flags to think of, never predictions.
import type { Books } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Quantity } from '../../units/quantity.ts'
import type { Taken } from './takeoff.ts'

/** Zones with snow that lies, and those with deep cold. */
const SNOWY: readonly string[] = ['5', '6', '7', '8'], DEEP: readonly string[] = ['6', '7', '8']

/** Ice at the eaves wants warmth below snow: thin fill over the wall, air from the rooms, no air through the soffit. Two of three are flagged. */
export function coldNotes(taken: Taken, zone: string | undefined, books: Books): Finding[] {
  if (zone === undefined) return []
  const out: Finding[] = []
  if (SNOWY.includes(zone)) {
    const thin = books.start('ice-eave-depth', 6, 'in', 'fill over the wall under which ice at the eaves is thought of', 'judgment')
    const low = taken.areas.find(a => { const strip = a.measure.figures['edgeStrip'] as { wallDepthIn?: Quantity } | undefined; return strip?.wallDepthIn !== undefined && strip.wallDepthIn.value < thin.value })
    const short = taken.vents?.gates.some(g => g.code === 'attic-vents-short'), leaky = taken.openings.some(o => o.found.item.decline === 'yes')
    const flags = [low && `${low.id} has little fill over the wall`, short && 'vents are short', leaky && 'an opening stays open'].filter(Boolean)
    if (low && flags.length > 1) out.push({ code: 'ice-dam-flags', severity: 'note', path: low.at, says: flags.join('; '), why: `in zone ${zone} warmth under snow near the eaves can make ice; this is a flag, not a prediction`, mend: 'seal the plates there with care, and offer what raises R at the edge or opens the soffit' })
  }
  const glass = DEEP.includes(zone) ? taken.areas.find(a => a.measure.chart?.product.fill === 'fiberglass') : undefined
  if (glass) out.push({ code: 'loose-glass-cold', severity: 'note', path: glass.at, says: `loose glass fiber in zone ${zone}`, why: 'light loose glass fiber of the 1980s lost 35 to 50 % of its R where the attic was at 0 °F and colder (ORNL, Wilkes and Childs); batts and cellulose did not', mend: 'ask the maker for its density in deep cold, or cap it with a batt or cellulose' })
  return out
}

// A pipe in its hole: what the table says of it, and what is wrong with the measures.
import { annulus, gapRound } from '../calc/seal.ts'
import type { Finding } from '../findings/finding.ts'
import { outsideOf, sizesOf, type PipeMaterial } from '../reference/pipes.ts'
import { asTape } from '../units/tape.ts'
import { work, type Quantity } from '../units/quantity.ts'
import { within, type Leak } from './leaks.ts'

export interface Fit { readonly outsideIn: Quantity<'in'>; readonly gapIn: Quantity<'in'> }

/** The gap round a pipe, or the finding that says why there is none. */
export function fitOf(material: PipeMaterial, nominalIn: Quantity<'in'>, holeIn: Quantity<'in'>, at: string): Fit | Finding {
  const outsideIn = outsideOf(material, nominalIn)
  if (!outsideIn) return { code: 'pipe-size-unlisted', severity: 'error', path: `${at}/nominalIn`, says: `${asTape(nominalIn.value)} in ${material} pipe`, why: 'the table of pipes has no such size', mend: `write one of: ${sizesOf(material).map(s => asTape(s)).join(', ')}` }
  if (outsideIn.value > holeIn.value) return { code: 'pipe-larger-than-hole', severity: 'error', path: `${at}/holeIn`, says: `a hole of ${asTape(holeIn.value)} in round a ${asTape(nominalIn.value)} in ${material} pipe`,
    why: `that pipe is ${Number(outsideIn.value.toFixed(2))} in outside`, mend: 'measure the hole again, or write the nominal size of the pipe' }
  return { outsideIn, gapIn: work(gapRound, { holeIn, outsideIn }) }
}
export const fits = (f: Fit | Finding): f is Fit => 'gapIn' in f

/** A job that cannot be taken off: the finding alone. */
export const nothingBut = (finding: Finding) => ({ figures: { method: 'not measured', materials: [] }, tasks: [], findings: [finding] })

/** What leaks past pipes: no more than the ring that was measured; a pipe that fills its hole leaks nothing. */
export const ringLeak = (found: Leak, fit: Fit | Finding, holeIn: Quantity<'in'>, count: Quantity<'each'>): Leak => (fits(fit) ? within(found, work(annulus, { holeIn, outsideIn: fit.outsideIn, count })) : found)

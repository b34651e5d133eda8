// What both the report and the owner's paper say of a flame.
import type { ApplianceBuiltOut, AsBuiltOut } from '../../closeout/output.ts'

/** A test called passed although one of its readings is over its limit: a stop says which. */
export const overLimit = (a: ApplianceBuiltOut, { stops }: AsBuiltOut): boolean => a.after?.result === 'pass' && stops.some(s => s.of === a.id && (s.code === 'reading-over-limit' || s.code === 'carbon-monoxide'))

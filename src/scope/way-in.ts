// What the crew climbs in by.
import type { WayIn } from './area-kind.ts'

const WAYS = { hatch: 'hatch', 'pull-down-stair': 'stair', 'attic-door': 'door' } as const

/** The way in that an opening is, where it is one. */
export const wayOf = ({ kind }: { readonly kind: string }): WayIn | undefined => (kind in WAYS ? WAYS[kind as keyof typeof WAYS] : undefined)

/** The way into that area, else into another. */
export const wayIn = (openings: readonly { readonly kind: string; readonly in: string }[], area: string): WayIn | undefined => [...openings.filter(o => o.in === area), ...openings].map(wayOf).find(w => w !== undefined)

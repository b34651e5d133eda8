// The leaks as one strip, cut in proportion to their area and numbered as the steps that close them.
import { figure } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import { drawing, px } from './svg.ts'

export interface LeakPart { readonly id: string; readonly label: string; readonly sharePct: number; /** Not closed in this price. */ readonly left?: boolean }

/** As long as the column of text. */
export const STRIP = { width: 640, height: 36 } as const
/** Pixels that a letter takes, about. */
const LETTER = 7
/** Whether a label has room in its part of a strip. */
export const fits = (label: string, wide: number): boolean => wide > label.length * LETTER - 2
/** Parts under this share are one part at the end. */
export const SMALL_PCT = 2

/** The parts of the strip, largest first, the small ones as one. */
export function stripParts(all: readonly LeakPart[]): LeakPart[] {
  const large = all.filter(l => l.sharePct >= SMALL_PCT), small = all.filter(l => l.sharePct < SMALL_PCT)
  return small.length === 0 ? large : [...large, { id: 'small', label: 'small', sharePct: small.reduce((sum, l) => sum + l.sharePct, 0) }]
}

/** @param all with their shares of the listed leakage area */
export function leakStrip(all: readonly LeakPart[]): Html {
  const parts = stripParts(all), whole = parts.reduce((sum, p) => sum + p.sharePct, 0)
  let x = 0
  const says = `Where the ceiling leaks, by share of the listed area: ${parts.map(p => `${p.label === 'small' ? 'small ones' : p.left ? 'not closed in this price' : `step ${p.label}`} ${figure(p.sharePct)} percent`).join(', ')}.`
  return drawing({ left: -1, top: -1, width: STRIP.width + 2, height: STRIP.height + 2 }, says, parts.map(p => {
    const from = x, wide = p.sharePct / whole * STRIP.width
    x += wide
    return html`<rect class="${p.left ? 'left-open' : 'line'}" stroke-width="1" x="${px(from)}" y="0" width="${px(wide)}" height="${STRIP.height}"/>${fits(p.label, wide) && html`<text x="${px(from + wide / 2)}" y="${STRIP.height / 2 + 4}" text-anchor="middle">${p.label}</text>`}`
  }))
}

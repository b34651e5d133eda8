// The hours of a house as one strip, cut by phases in their order.
import { figure } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import { fits, STRIP } from './leaks.ts'
import { drawing, px } from './svg.ts'

export interface WorkPart { readonly label: string; readonly sharePct: number }

export function workStrip(parts: readonly WorkPart[]): Html {
  const whole = parts.reduce((sum, p) => sum + p.sharePct, 0), says = `The work by phases: ${parts.map(p => `${p.label} ${figure(p.sharePct)} percent`).join(', ')}.`
  let x = 0
  return drawing({ left: -1, top: -1, width: STRIP.width + 2, height: STRIP.height + 2 }, says, parts.map(p => {
    const from = x, wide = p.sharePct / whole * STRIP.width, sealing = p.label === 'seal'
    x += wide
    return html`<rect class="line" stroke-width="${sealing ? 2 : 1}" x="${px(from)}" y="0" width="${px(wide)}" height="${STRIP.height}"/>${fits(p.label, wide) && html`<text x="${px(from + wide / 2)}" y="${STRIP.height / 2 + 4}" text-anchor="middle" font-weight="${sealing ? 700 : 400}">${p.label}</text>`}`
  }))
}

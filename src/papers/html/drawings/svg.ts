// What drawings share: the frame with its sentence, lines through points, and the hatches of fill.
import { html, type Html, type Part } from '../html.ts'

/** Pixels of one inch of the house: 3/4 in of paper are one foot, 1:16. */
export const SCALE = 6

export interface Point { readonly x: number; readonly y: number }

const TENTHS = 10
/** A coordinate to the tenth of a pixel. */
export const px = (x: number): number => Math.round(x * TENTHS) / TENTHS

export interface Frame { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

/** A drawing says one sentence, with its figures, to those who can't see it. */
export const drawing = (frame: Frame, says: string, body: Part): Html =>
  html`<svg class="drawing" role="img" aria-label="${says}" width="${px(frame.width)}" height="${px(frame.height)}" viewBox="${px(frame.left)} ${px(frame.top)} ${px(frame.width)} ${px(frame.height)}">${body}</svg>`

/** A line through points. */
export const path = (points: readonly Point[], closed = false): string => `${points.map((p, i) => `${i === 0 ? 'M' : 'L'}${px(p.x)} ${px(p.y)}`).join('')}${closed ? 'Z' : ''}`

/** The hatches, once in a document. Their origin is the ceiling plane: drawings have it at y = 0. */
export const hatches: Html = html`<svg width="0" height="0" aria-hidden="true" style="position:absolute"><defs>
<pattern id="new-fill" width="6.8" height="6.8" patternUnits="userSpaceOnUse"><circle class="dot" cx="1.7" cy="1.7" r=".8"/><circle class="dot" cx="5.1" cy="5.1" r=".8"/></pattern>
<pattern id="old-loose" width="16" height="8" patternUnits="userSpaceOnUse"><path class="stroke" d="M1 2H7M9 6H15"/></pattern>
</defs></svg>
`

/** Loops of a batt, standing on its lower face. */
export function loops(fromX: number, toX: number, bottom: number, top: number): string {
  const step = Math.max(LEAST_LOOP, (bottom - top) / 2), rise = bottom - top
  let d = `M${px(fromX)} ${px(bottom)}`
  for (let x = fromX; x + step <= toX + 1; x += step) d += `c${px(step)} 0 0 ${px(-rise)} ${px(step / 2)} ${px(-rise)}s${px(-step / 2)} ${px(rise)} ${px(step / 2)} ${px(rise)}`
  return d
}
const LEAST_LOOP = 8

export interface Label { readonly at: Point; readonly text: Part }

const ROW = 13
const RISE = 4

/** Labels in a column beside the drawing, each on a thin line from what it names, in the order of their heights and never over each other. */
export function labels(all: readonly (Omit<Label, 'text'> & { readonly lines: readonly Part[] })[], columnX: number, fromX: number, limits: { readonly top: number; readonly bottom: number }): Html {
  const sorted = [...all].sort((a, b) => a.at.y - b.at.y)
  const heights = sorted.map(l => l.lines.length * ROW + RISE)
  const ys: number[] = []
  let free = limits.top
  sorted.forEach((l, i) => { ys[i] = Math.max(free, l.at.y - heights[i]! / 2); free = ys[i]! + heights[i]! })
  // Too low: pushed up again from the bottom.
  let floor = limits.bottom
  for (let i = sorted.length - 1; i >= 0; i--) { ys[i] = Math.min(ys[i]!, floor - heights[i]!); floor = ys[i]! }
  return html`${sorted.map((l, i) => html`<path class="leader" d="M${px(l.at.x)} ${px(l.at.y)}L${px(fromX)} ${px(l.at.y)}L${px(columnX - RISE)} ${px(ys[i]! + ROW / 2 + 2)}"/>${l.lines.map((line, n) => html`<text x="${px(columnX)}" y="${px(ys[i]! + n * ROW + ROW - 2)}">${line}</text>`)}`)}`
}

/** A figure inside a drawing, marked with its path in the JSON. */
export const figureIn = (path: string, shown: Part): Html => html`<tspan data-figure="${path}">${shown}</tspan>`

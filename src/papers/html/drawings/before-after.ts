// Now and after, from one zero: R on two rulers, and the holes pushed together to one square, at the scale of the section.
import type { AreaOut } from '../../../estimate/output.ts'
import { figure, NB, workedR } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import { drawing, figureIn, px, SCALE } from './svg.ts'

/** Pixels of one R. */
const R = 3
/** Height of a label of two lines. */
const TWO_LINES = 30
const RULER = { each: 10, width: 60, now: 34, after: 156, right: 312 } as const

/** Two rulers of R; what is missing to the goal is blank paper between two ticks. */
export function rulersOfR(a: AreaOut & { readonly existingR: number; readonly targetR: number }): Html {
  const after = a.averageR !== undefined && a.stoppedBy.length === 0 ? a.averageR : undefined, nominal = after === undefined ? undefined : a.finalR
  const most = Math.max(a.targetR, a.existingR, nominal ?? 0, after ?? 0), y = (r: number): number => -r * R, top = y(most) - 24, at = (n: string): string => `areas.${a.id}.${n}`
  const short = (from: number): boolean => a.targetR - from > 1
  const scale = Array.from({ length: Math.floor(most / RULER.each) + 1 }, (_, i) => i * RULER.each)
  const says = `R of ${a.id}: now ${workedR(a.existingR)}, goal ${figure(a.targetR)}${after === undefined ? '; nothing is added in this price' : `, after the work the whole ceiling averages ${workedR(after)}`}.`
  const block = (x: number, r: number, kind: 'old' | 'new', from = 0): Html => html`<rect class="${kind === 'old' ? 'old-loose' : 'new-fill'}" x="${x}" y="${px(y(r))}" width="${RULER.width}" height="${px(y(from) - y(r))}"/><path class="${kind === 'old' ? 'thin' : 'settled'}" d="M${x} 0V${px(y(r))}h${RULER.width}V0"/>`
  const goal = (x: number): Html => html`<path class="thin" d="M${x - 4} ${px(y(a.targetR))}h${RULER.width + 8}"/>`
  return drawing({ left: 0, top, width: RULER.right, height: -top + 24 }, says, html`<g class="thin"><path d="M24 0V${px(y(Math.floor(most)))}"/>${scale.map(r => html`<path d="M24 ${px(y(r))}h-5"/>`)}</g>${scale.map(r => html`<text class="gray" x="16" y="${px(y(r) + 4)}" text-anchor="end">${r}</text>`)}
${block(RULER.now, a.existingR, 'old')}${goal(RULER.now)}<text x="${RULER.now}" y="18">now</text>
<text x="${RULER.now + RULER.width + 6}" y="${px(Math.min(y(a.existingR) + 4, -4))}">${figureIn(at('existingR'), workedR(a.existingR))}</text>
<text class="gray" x="${RULER.now}" y="${px(y(a.targetR) - 6)}">goal ${figureIn(at('targetR'), figure(a.targetR))}</text>
${a.addedR !== undefined && short(a.existingR) && html`<text class="gray" x="${RULER.now + 4}" y="${px((y(a.existingR) + y(a.targetR)) / 2 + 4)}">${figureIn(at('addedR'), workedR(a.addedR))}</text><text class="gray" x="${RULER.now + 4}" y="${px((y(a.existingR) + y(a.targetR)) / 2 + 17)}">short</text>`}
${after !== undefined && html`${block(RULER.after, Math.min(a.existingR, after), 'old')}${after > a.existingR && block(RULER.after, after, 'new', a.existingR)}${goal(RULER.after)}<text x="${RULER.after}" y="18">after</text>
<text x="${RULER.after + RULER.width + 6}" y="${px(y(after) + 4)}">${figureIn(at('averageR'), workedR(after))}</text><text class="gray" x="${RULER.after + RULER.width + 6}" y="${px(y(after) + 17)}">on the average</text>${nominal !== undefined && (nominal - after) * R > TWO_LINES && html`<path class="leader" d="M${RULER.after} ${px(y(nominal))}h${RULER.width + 4}"/><text class="gray" x="${RULER.after + RULER.width + 6}" y="${px(y(nominal) + 4)}">${figureIn(at('finalR'), workedR(nominal))}</text><text class="gray" x="${RULER.after + RULER.width + 6}" y="${px(y(nominal) + 17)}">in the field</text>`}`}
<path class="thin" d="M24 0H${RULER.right}"/>`)
}

const GAP = 24

/** All listed holes as one square, as found and closed: at the scale of the section, so that a hand can be laid beside it. */
export function holes(beforeIn2: number, afterIn2: number): Html {
  const side = (in2: number): number => Math.sqrt(in2) * SCALE, a = side(beforeIn2), b = side(afterIn2)
  const says = `The listed holes pushed together: ${figure(beforeIn2)} square inches as found, ${figure(afterIn2)} once closed.`
  return drawing({ left: 0, top: 0, width: Math.max(a + b + GAP + 120, 240), height: a + 24 }, says, html`<rect class="line" stroke-width="2" x="1" y="1" width="${px(a)}" height="${px(a)}"/><rect class="line" stroke-width="2" x="${px(a + GAP)}" y="${px(a - b + 1)}" width="${px(b)}" height="${px(b)}"/>
<text x="1" y="${px(a + 18)}">${figureIn('airLeakage.listedIn2Before', figure(beforeIn2))}${NB}in² now</text><text x="${px(Math.max(a + GAP, 84))}" y="${px(a + 18)}">${figureIn('airLeakage.listedIn2After', figure(afterIn2))}${NB}in² closed</text>`)
}

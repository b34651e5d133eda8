// What the closing papers share: the house as built, cells to fill in by hand where nobody has recorded a figure, and the ruler of one area.
import type { AreaBuiltOut, AsBuiltOut, PaperOut, PartOut } from '../../../closeout/output.ts'
import { figure, NB, plainFigure } from '../../terminal/words.ts'
import { drawing, px, SCALE } from '../drawings/svg.ts'
import { html, type Html, type Part } from '../html.ts'
import type { House } from '../page.ts'
import { figureAt, writeHere } from '../parts.ts'
import { dayOf, listed } from '../say.ts'

/** A house once the work is done. */
export interface Done extends House { readonly built: AsBuiltOut }

/** A figure of the as-built, as it was recorded; a place to write where it was not. */
export const cell = (path: string, value: number | undefined, show: (v: number) => Part, what: string): Part => (value === undefined ? writeHere(what) : figureAt(path, show(value)))
export const inches = (v: number): string => figure(v, 2)
export const area = (v: number): string => figure(v, Number.isInteger(v) ? 0 : 1)

/** What is still to be written on a paper before it is whole, told once on top. */
export const notWhole = (paper: PaperOut, parts: readonly PartOut[]): Html | false => paper.missing.length > 0 && html`<p class="box-line">Not whole yet: ${listed(paper.missing.map(m => (m.part === undefined ? m.title : `${m.title} of ${parts.find(p => p.id === m.part)?.part ?? m.part}`)))}. Fill in by hand, or print it again.</p>`

/** Who signs, and when. */
export const signed = ({ company, name, signedOn, license }: PaperOut): Html => html`<div class="signatures"><div>Installer${name !== undefined && html`: ${name}`}${company !== undefined && html`, ${company}`}${license !== undefined && html`, ${license}`}</div><div>Date${signedOn !== undefined && html`: ${dayOf(signedOn)}`}</div></div>`

const INCH_EACH = 6
const RULER = { x: 36, width: 60, right: 300 } as const

/** The fill of one area on a ruler from the ceiling: old fill, blown top dashed, settled top solid. Printed without color. */
export function rulerOf(a: AreaBuiltOut): Html | undefined {
  const old = a.oldFillIn ?? 0, blown = a.initialDepthIn, settled = a.settledDepthIn
  if (blown === undefined) return undefined
  const top = old + blown, y = (inch: number): number => -inch * SCALE, ticks = Array.from({ length: Math.ceil(top) + 1 }, (_, i) => i), says = `On the ruler of ${a.id}: ${old > 0 ? `${inches(old)} in of old fill, ` : ''}new fill blown to ${inches(top)} in above the ceiling${settled === undefined ? '' : `, settled by its label to ${inches(old + settled)} in at least`}.`
  const right = RULER.x + RULER.width
  return drawing({ left: 0, top: y(Math.ceil(top)) - 16, width: RULER.right, height: -y(Math.ceil(top)) + 36 }, says, html`<g class="thin"><path d="M${RULER.x - 6} 0V${px(y(Math.ceil(top)))}"/>${ticks.map(i => html`<path d="M${RULER.x - 6} ${px(y(i))}h${i % INCH_EACH === 0 ? -8 : -4}"/>`)}</g>${ticks.filter(i => i > 0 && i % INCH_EACH === 0).map(i => html`<text class="gray" x="${RULER.x - 18}" y="${px(y(i) + 4)}" text-anchor="end">${i}</text>`)}
${old > 0 && html`<path class="thin" d="M${RULER.x} 0V${px(y(old))}h${RULER.width}V0"/>`}<path class="line" stroke-dasharray="6 4" d="M${RULER.x} ${px(y(top))}h${RULER.width}"/>${settled !== undefined && html`<path class="line" d="M${RULER.x} 0V${px(y(old + settled))}h${RULER.width}V0"/>`}
<text x="${right + 8}" y="${px(y(top) + 2)}">blown, ${figureAt2(a, 'initialDepthIn', inches(blown))}${NB}in new</text>${settled !== undefined && html`<text x="${right + 8}" y="${px(Math.max(y(old + settled) + 4, y(top) + 16))}">settled, ${figureAt2(a, 'settledDepthIn', inches(settled))}${NB}in at least</text>`}${old > 0 && html`<text x="${right + 8}" y="${px(Math.max(y(old) + 4, y(top) + 30))}">old fill, ${figureAt2(a, 'oldFillIn', inches(old))}${NB}in</text>`}
<path class="lid" d="M0 0H${RULER.right}"/><text class="gray" x="${right + 8}" y="15">ceiling</text>`)
}
const figureAt2 = (a: AreaBuiltOut, name: string, shown: string): Html => html`<tspan data-figure="areas.${a.id}.${name}">${shown}</tspan>`

/** What is known of one thing, a line each. */
export const facts = (lines: readonly (readonly [what: string, shown: Part, unit?: string])[]): Html => html`<dl class="facts">${lines.map(([what, shown, unit]) => html`<dt>${what}</dt><dd>${shown}${unit !== undefined && html` <span class="unit">${unit}</span>`}</dd>
`)}</dl>`

/** Styles of a part with its facts and its ruler side by side. */
export const PART_STYLE = `
.part{margin-bottom:12px}
.part h2,.part h3{margin:12px 0 3px}
.part .large{margin:0 0 6px}
.pair{display:flex;gap:24px;justify-content:space-between;align-items:flex-start}
.pair figure{flex:none;max-width:100%}
.facts{display:grid;grid-template-columns:fit-content(50%) 1fr;gap:0 24px;margin:0 0 6px;align-content:start}
.facts dt{color:var(--gray)}
.facts dd{margin:0}
@media screen and (max-width:600px){.pair{display:block}}
`

/** R of a listed row or a label: the hyphen is the promise. */
export const labelR = (r: number): string => `R-${plainFigure(r)}`

// A cut through the eave, from the outer edge of the plate inward, and one across the joists: to one scale, heights from the ceiling plane.
import type { AreaOut, TaskOut } from '../../../estimate/output.ts'
import { depth, figure, NB, rowR, workedR } from '../../terminal/words.ts'
import { html, type Html, type Part } from '../html.ts'
import { fillWords } from '../say.ts'
import { drawing, figureIn, labels, loops, path, px, SCALE, type Point } from './svg.ts'

/** What is drawn, in inches of the house. */
const SHOWN = { insideIn: 72, overhangIn: 6, heelLabel: 20, aboveIn: 4, belowIn: 7, ceilingIn: 1, plateIn: 2, damFromEndIn: 9, heelRoomIn: 8 } as const
const RULER = { gap: 6, width: 44, inch: 4, six: 10, each: 6 } as const
const LABELS = 104
const IN_PER_FT = 12

type Section = NonNullable<AreaOut['section']>
export type DrawnArea = AreaOut & { readonly section: Section & { readonly wallIn: number; readonly ventGapIn: number }; readonly layers: NonNullable<AreaOut['layers']> }

/** Whether there is an eave to draw. */
export const hasSection = (a: AreaOut): a is DrawnArea => a.section?.wallIn !== undefined && a.section.ventGapIn !== undefined && a.layers !== undefined

const up = (inches: number): number => -inches * SCALE
const across = (inches: number): number => inches * SCALE

/** Heights over the run from the outer edge of the plate. */
function roofOf({ section: s }: DrawnArea) {
  const slope = s.pitch / IN_PER_FT, lift = s.ventGapIn * Math.hypot(1, slope)
  return {
    slope,
    underside: (x: number): number => s.heelIn + slope * x,
    /** Where the air gap begins: nothing lies above it. */
    gap: (x: number): number => Math.max(0, s.heelIn - lift + slope * x),
    /** Run at which the gap is so high above the ceiling. */
    runTo: (height: number): number => Math.max(0, (height - s.heelIn + lift) / slope),
  }
}

/** A band of fill between two heights, under the air gap and up to its inner end. */
function band(a: DrawnArea, from: number, to: number, end: number): readonly Point[] {
  const { gap, runTo } = roofOf(a), top = (x: number): number => Math.min(to, gap(x)), bottom = (x: number): number => Math.min(from, gap(x))
  const bends = [0, runTo(from), runTo(to), end].filter(x => x <= end).sort((x, y) => x - y)
  return [...bends.map(x => ({ x: across(x), y: up(top(x)) })), ...[...bends].reverse().map(x => ({ x: across(x), y: up(bottom(x)) }))]
}

/** The top of a fill from the eave inward. */
function topLine(a: DrawnArea, height: number, end: number): string {
  const { gap, runTo } = roofOf(a), bend = Math.min(runTo(height), end)
  return path([{ x: 0, y: up(Math.min(height, gap(0))) }, { x: across(bend), y: up(Math.min(height, gap(bend))) }, { x: across(end), y: up(Math.min(height, gap(end))) }])
}

const isBatt = (fill: string): boolean => fill.endsWith('-batt')

interface Layered { readonly from: number; readonly to: number; readonly fill: string; readonly stays: boolean }

/** Old layers one on the other, what stays first as it will lie. */
function stacked(a: DrawnArea): Layered[] {
  let at = 0
  return a.layers.filter(l => l.stays).concat(a.layers.filter(l => !l.stays)).map(l => {
    const from = at
    at += l.depthIn
    return { from, to: at, fill: l.fill, stays: l.stays }
  })
}

const filled = (a: AreaOut): a is AreaOut & { topOfFillInitialIn: number; topOfFillSettledIn: number; settledDepthIn: number } => a.topOfFillSettledIn !== undefined && a.settledDepthIn !== undefined && a.stoppedBy.length === 0

/** Where the layers that stay end. */
const keptTop = (a: DrawnArea): number => a.layers.filter(l => l.stays).reduce((sum, l) => sum + l.depthIn, 0)

/** Inches and ticks of a tape from the ceiling plane; numerals each six. */
function ruler(x: number, topIn: number): Html {
  const ticks = Array.from({ length: Math.floor(topIn) + 1 }, (_, i) => i)
  return html`<g class="thin"><path d="M${px(x)} 0V${px(up(Math.floor(topIn)))}"/>${ticks.map(i => html`<path d="M${px(x)} ${px(up(i))}h${i % RULER.each === 0 ? RULER.six : RULER.inch}"/>`)}</g>${ticks.filter(i => i % RULER.each === 0 && i > 0 && i + 1 < topIn).map(i => html`<text class="gray halo" x="${px(x + RULER.six + 2)}" y="${px(up(i) + 4)}">${i}</text>`)}`
}

const arrow = (from: Point, to: Point): Html => {
  const angle = Math.atan2(to.y - from.y, to.x - from.x), head = (turn: number): Point => ({ x: to.x - Math.cos(angle + turn) * RULER.gap, y: to.y - Math.sin(angle + turn) * RULER.gap })
  return html`<path class="thin" d="${path([from, to])}${path([head(1 / 2), to, head(-1 / 2)])}"/>`
}

/** One foot of the house, so that the scale is known on a screen of any size. */
const barScale = (x: number, y: number): Html => html`<path class="thin" d="M${px(x)} ${px(y - 4)}v8M${px(x)} ${px(y)}h${px(across(IN_PER_FT))}m0 -4v8"/><text class="gray" x="${px(x + across(IN_PER_FT) + 6)}" y="${px(y + 4)}">1 ft</text>`

const inches = (x: number): string => `${depth(x)}${NB}in`

/** Whether dams or curbs stand in the fill of this area. */
const dammed = (a: AreaOut, tasks: readonly TaskOut[]): boolean => tasks.some(t => t.phase === 'contain' && t.areas.includes(a.id) && /\b(dam|curb)\b/i.test(t.title))

/** The eave. @returns the drawing and the sentence it says */
export function eaveSection(a: DrawnArea, tasks: readonly TaskOut[]): Html {
  const s = a.section, roof = roofOf(a), at = (name: string): string => `areas.${a.id}.${name}`
  const fill = filled(a), dam = fill && a.damTopIn !== undefined && dammed(a, tasks), end = dam ? SHOWN.insideIn - SHOWN.damFromEndIn : SHOWN.insideIn
  const old = stacked(a), oldTop = old.at(-1)?.to ?? 0, blownTop = fill ? a.topOfFillInitialIn ?? a.topOfFillSettledIn : 0
  const topIn = Math.max(blownTop, dam ? a.damTopIn! : 0, s.joistIn, oldTop, s.heelIn + SHOWN.heelRoomIn) + SHOWN.aboveIn
  const top = up(topIn), edge = -across(SHOWN.overhangIn), left = edge - SHOWN.heelLabel, right = across(SHOWN.insideIn)
  const rulerX = right + RULER.gap, columnX = rulerX + RULER.width
  const roofEnd = Math.min(SHOWN.insideIn, (topIn - s.heelIn) / roof.slope), soffitIn = Math.min(0, roof.underside(-SHOWN.overhangIn) - 2)
  const cut = `area-${a.id}`
  const baffleEnd = a.baffleIn === undefined ? undefined : a.baffleIn * Math.cos(Math.atan(roof.slope))
  const says = fill
    ? `Cut through the eave of ${a.id}: fill to ${inches(blownTop)} above the ceiling when blown, ${inches(a.topOfFillSettledIn)} once settled; ${inches(s.heelIn)} of heel at the wall; ${s.ventGapIn === 0 ? 'no air gap' : `air passes in a gap of ${inches(s.ventGapIn)} under the roof`}.`
    : `Cut through the eave of ${a.id} as it was found: ${oldTop === 0 ? 'no fill' : `${inches(oldTop)} of fill`}, ${inches(s.heelIn)} of heel at the wall. Nothing is put in by this price.`
  const oldMiddle = (keptTop(a) || oldTop) / 2
  const beside = [
    ...(dam ? [{ at: { x: across(end), y: up(a.damTopIn!) }, lines: ['dams and', html`curbs to ${figureIn(at('damTopIn'), inches(a.damTopIn!))}`] }] : []),
    ...(fill && a.topOfFillInitialIn !== undefined ? [{ at: { x: across(end), y: up(a.topOfFillInitialIn) }, lines: [html`blown ${figureIn(at('topOfFillInitialIn'), inches(a.topOfFillInitialIn))}`] }] : []),
    ...(fill ? [{ at: { x: across(end), y: up(a.topOfFillSettledIn) }, lines: [html`${a.topOfFillInitialIn === undefined ? 'laid' : 'settled'} ${figureIn(at('topOfFillSettledIn'), inches(a.topOfFillSettledIn))}`] }] : []),
    ...(fill && a.chartR !== undefined ? [{ at: { x: across(end - 1), y: up((a.topOfFillSettledIn + a.topOfFillSettledIn - a.settledDepthIn) / 2) }, lines: [html`new fill, ${figureIn(at('chartR'), rowR(a.chartR, a.interpolated !== true))}`] }] : []),
    ...(fill && a.battR !== undefined ? [{ at: { x: across(end - 1), y: up((a.topOfFillSettledIn + a.topOfFillSettledIn - a.settledDepthIn) / 2) }, lines: [html`new batts, ${figureIn(at('battR'), rowR(a.battR, true))}`] }] : []),
    ...(a.existingR !== undefined && old.length > 0 ? [{ at: { x: across(end - 1), y: up(oldMiddle) }, lines: [html`old fill ${figureIn(at('existingR'), workedR(a.existingR))}`] }] : []),
  ]
  const body = html`<defs><clipPath id="${cut}"><rect x="${px(left)}" y="${px(top)}" width="${px(right - left)}" height="${px(-top)}"/></clipPath></defs>
<g clip-path="url(#${cut})">
${old.map(l => html`${!l.stays ? html`<path class="gone" d="${path(band(a, l.from, l.to, end), true)}"/>` : isBatt(l.fill) ? html`<path class="hatch" d="${loops(across(Math.max(s.wallIn, roof.runTo(l.to))), across(end), up(l.from), up(l.to))}"/>` : html`<path class="old-loose" d="${path(band(a, l.from, l.to, end), true)}"/>`}<path class="thin" d="${topLine(a, l.to, end)}"/>`)}
${fill && html`<path class="tint" d="${path(band(a, keptTop(a), a.topOfFillSettledIn, end), true)}"/><path class="new-fill" d="${path(band(a, keptTop(a), a.topOfFillSettledIn, end), true)}"/><path class="settled" d="${topLine(a, a.topOfFillSettledIn, end)}"/>${a.topOfFillInitialIn !== undefined && html`<path class="blown" d="${topLine(a, a.topOfFillInitialIn, end)}"/>`}`}
<path class="thin" d="${path([{ x: 0, y: 0 }, { x: 0, y: up(Math.min(s.joistIn, s.heelIn)) }, { x: across(Math.max(0, (s.joistIn - s.heelIn) / roof.slope)), y: up(s.joistIn) }, { x: right, y: up(s.joistIn) }])}"/>
${baffleEnd !== undefined && html`<path class="baffle" d="${path([{ x: 0, y: up(roof.gap(0)) }, { x: across(Math.min(baffleEnd, SHOWN.insideIn)), y: up(roof.gap(Math.min(baffleEnd, SHOWN.insideIn))) }])}"/>`}
<path class="deck" d="${path([{ x: edge, y: up(roof.underside(-SHOWN.overhangIn)) }, { x: across(roofEnd), y: up(roof.underside(roofEnd)) }, { x: across(roofEnd), y: up(roof.underside(roofEnd) + 1) }, { x: edge, y: up(roof.underside(-SHOWN.overhangIn) + 1) }], true)}"/>
</g>
${fill && html`<path class="deck" d="M0 0V${px(up(roof.gap(0)))}"/>`}
<path class="deck" d="M${px(edge)} ${px(up(roof.underside(-SHOWN.overhangIn)))}V${px(up(soffitIn))}H${px(edge + across(2))}M${px(-across(2))} ${px(up(soffitIn))}H0"/>
<path class="wood" d="M0 0H${px(across(s.wallIn))}V${px(-up(SHOWN.plateIn))}H0Z"/><path class="hatch" d="M0 0L${px(across(s.wallIn))} ${px(-up(SHOWN.plateIn))}M${px(across(s.wallIn))} 0L0 ${px(-up(SHOWN.plateIn))}"/>
<path class="thin" d="M0 ${px(-up(SHOWN.plateIn))}V${px(-up(SHOWN.belowIn - 1))}M${px(across(s.wallIn))} ${px(-up(SHOWN.plateIn))}V${px(-up(SHOWN.belowIn - 1))}"/>
<path class="thin" d="M${px(across(s.wallIn))} ${px(-up(SHOWN.ceilingIn))}H${px(right)}"/>
${dam && html`<path class="wood" d="M${px(across(end))} 0V${px(up(a.damTopIn!))}h${SCALE}V0Z"/>`}
<path class="lid" d="M0 0H${px(right)}"/>
${fill && baffleEnd !== undefined && [vent(a, soffitIn), gapLabel(a, top, left)]}
${labels(beside, columnX, rulerX + RULER.width - RULER.gap * 2, { top, bottom: up(-1) })}
${ruler(rulerX, topIn)}
${heelLabel(a)}
<text class="gray" x="${px(across(s.wallIn) + RULER.gap)}" y="${px(-up(SHOWN.ceilingIn) + 16)}">ceiling: the lid</text><text class="gray" x="${px(rulerX)}" y="16">in</text>
${barScale(across(SHOWN.insideIn / 2), -up(SHOWN.belowIn - 2))}`
  return drawing({ left, top, width: columnX + LABELS - left, height: -top - up(SHOWN.belowIn) }, says, body)
}

/** Air in at the soffit, along under the roof, and out above the fill. */
function vent(a: DrawnArea, soffitIn: number): Html {
  const { underside, gap } = roofOf(a), middle = (x: number): Point => ({ x: across(x), y: up((underside(x) + gap(x)) / 2) }), out = Math.min(SHOWN.insideIn - 2, a.baffleIn ?? 0)
  return html`${arrow({ x: -across(SHOWN.overhangIn / 2), y: up(soffitIn) + 16 }, { x: -across(SHOWN.overhangIn / 2), y: up(Math.max(soffitIn, 0)) - 2 })}${arrow(middle(1), middle(out / 2))}${arrow(middle(out / 2 + 2), middle(out))}`
}

/** The heel, between two ticks at the outer edge of the plate. */
function heelLabel(a: DrawnArea): Html {
  const { heelIn } = a.section, x = -across(1), y = up(heelIn), low = -up(SHOWN.belowIn)
  return html`<path class="hatch" d="M${px(x - 4)} 0h8M${px(x - 4)} ${px(y)}h8M${px(x)} 0V${px(y)}"/><path class="leader" d="M${px(x)} ${px(y / 2)}L${px(x - 6)} ${px(low - 28)}"/><text x="-5" y="${px(low - 17)}" text-anchor="end">heel</text><text x="-5" y="${px(low - 4)}" text-anchor="end">${figureIn(`areas.${a.id}.section.heelIn`, inches(heelIn))}</text>`
}

/** Above the roof is room for the name of what lies right under it. */
function gapLabel(a: DrawnArea, top: number, left: number): Html {
  const { underside, gap } = roofOf(a), run = SHOWN.damFromEndIn, y = up((underside(run) + gap(run)) / 2)
  return html`<path class="leader" d="M${px(across(run))} ${px(y)}L${px(left + 60)} ${px(top + 18)}"/><text x="${px(left)}" y="${px(top + 12)}">baffle, air above it</text>`
}

/** Two bays across the joists: what lies between them and over them. */
export function joistSection(a: DrawnArea): Html {
  const s = a.section, fill = filled(a), bays = 2, end = s.spacingIn * bays + s.joistWidthIn, old = stacked(a), oldTop = old.at(-1)?.to ?? 0
  const blownTop = fill ? a.topOfFillInitialIn ?? a.topOfFillSettledIn : 0, topIn = Math.max(blownTop, s.joistIn, oldTop) + 2, top = up(topIn), right = across(end)
  const joists = Array.from({ length: bays + 1 }, (_, i) => i * s.spacingIn)
  const rect = (x: number, y: number, w: number, h: number): string => `M${px(x)} ${px(y)}h${px(w)}v${px(h)}h${px(-w)}Z`
  const whole = (from: number, to: number): string => rect(0, up(to), right, up(from) - up(to))
  const kept = keptTop(a)
  const says = `Cut across the joists of ${a.id}, ${inches(s.spacingIn)} apart: ${old.length === 0 ? 'bare' : old.map(l => `${inches(l.to - l.from)} of ${fillWords(l.fill)}${l.stays ? '' : ', taken out'}`).join(', ')}${fill ? `, and the new fill over the joists` : ''}.`
  return drawing({ left: -2, top, width: right + 4, height: -top - up(2) }, says, html`
${old.map(l => html`${!l.stays ? html`<path class="gone" d="${whole(l.from, l.to)}"/><text class="gray" x="${px(right / 2)}" y="${px(up((l.from + l.to) / 2) + 4)}">out</text>` : isBatt(l.fill) && l.from === 0 ? joists.slice(0, -1).map(x => html`<path class="hatch" d="${loops(across(x + s.joistWidthIn), across(x + s.spacingIn), up(l.from), up(l.to))}"/>`) : isBatt(l.fill) ? html`<path class="hatch" d="${loops(0, right, up(l.from), up(l.to))}"/>` : html`<path class="old-loose" d="${whole(l.from, l.to)}"/>`}<path class="thin" d="M0 ${px(up(l.to))}H${px(right)}"/>`)}
${fill && html`<path class="tint" d="${whole(kept, a.topOfFillSettledIn)}"/><path class="new-fill" d="${whole(kept, a.topOfFillSettledIn)}"/><path class="settled" d="M0 ${px(up(a.topOfFillSettledIn))}H${px(right)}"/>${a.topOfFillInitialIn !== undefined && html`<path class="blown" d="M0 ${px(up(a.topOfFillInitialIn))}H${px(right)}"/>`}`}
${joists.map(x => html`<path class="wood" d="${rect(across(x), up(s.joistIn), across(s.joistWidthIn), -up(s.joistIn))}"/><path class="hatch" d="M${px(across(x))} 0L${px(across(x + s.joistWidthIn))} ${px(up(s.joistIn))}M${px(across(x))} ${px(up(s.joistIn))}L${px(across(x + s.joistWidthIn))} 0"/>`)}
<path class="thin" d="M0 ${px(-up(SHOWN.ceilingIn))}H${px(right)}"/><path class="lid" d="M0 0H${px(right)}"/>`)
}

/** What the section can't say in seven labels. */
export function sectionWords(a: DrawnArea): Part {
  const batt = a.battR !== undefined, fill = filled(a)
  return html`${a.layers.length === 0 ? 'The floor is bare. ' : `Found, from the ceiling up: ${a.layers.map(l => `${inches(l.depthIn)} of ${fillWords(l.fill)}${l.stays ? '' : ' (goes out)'}`).join(', ')}. `}${fill && !batt && 'Dashed is the top on the day it is blown; it settles to the full line, and the promise holds for that. '}${fill && a.edgeStrip !== undefined && `At the eave the roof leaves less room: a strip ${figure(a.edgeStrip.widthFt, 1)}${NB}ft wide tapers to ${inches(a.edgeStrip.wallDepthIn)} at the wall and averages ${workedR(a.edgeStrip.averageR)}. `}${fill && a.baffleIn !== undefined && 'The dotted line is the baffle: air from the soffit passes above it, and the fill stays out of its way.'}`
}

// A range as a bar on an axis from nothing: ends, and an upright stroke where it is expected. Where it was held to a share of something, words beside it say so: any of the three may be.
import { html, type Html } from '../html.ts'
import { drawing, figureIn, px } from './svg.ts'

export interface Ranged {
  readonly low: number
  readonly expected: number
  readonly high: number
  /** Where the axis ends; else a little beyond the bar. */
  readonly to?: number
  /** What each end is in the JSON, and how it is written. */
  readonly paths: readonly [low: string, high: string]
  readonly show: (value: number) => string
  readonly says: string
}

const WIDTH = 430
const SIDE = 30
const END = 7

/** The bar with its three figures below. */
export function range(r: Ranged): Html {
  const to = r.to ?? r.high + r.high / END, at = (v: number): number => SIDE + v / to * (WIDTH - 2 * SIDE), [low, high] = r.paths
  const close = at(r.high) - at(r.low) < SIDE * 2
  return drawing({ left: 0, top: 0, width: WIDTH, height: 50 }, r.says, html`<path class="axis" d="M${SIDE} 14H${WIDTH - SIDE}M${SIDE} 10v8M${WIDTH - SIDE} 10v8"/>
<path class="range" d="M${px(at(r.low))} 14H${px(at(r.high))}"/><path class="range-tick" d="M${px(at(r.low))} ${14 - END}v${2 * END}M${px(at(r.expected))} 4v20M${px(at(r.high))} ${14 - END}v${2 * END}"/>
<text class="gray" x="${SIDE}" y="42" text-anchor="middle">0</text>${r.to !== undefined && html`<text class="gray" x="${WIDTH - SIDE}" y="42" text-anchor="middle">${r.show(to)}</text>`}
${close ? html`<text x="${px(at(r.high) + END + 2)}" y="42" text-anchor="end">${figureIn(low, r.show(r.low))} to ${figureIn(high, r.show(r.high))}</text>` : html`<text x="${px(at(r.low))}" y="42" text-anchor="middle">${figureIn(low, r.show(r.low))}</text><text x="${px(at(r.high))}" y="42" text-anchor="middle">${figureIn(high, r.show(r.high))}</text>`}`)
}

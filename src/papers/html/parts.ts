// What papers are put together from: tables, gate signs, the cover line, boxes to tick and lines to write on.
import type { GateOut, TaskOut, Verdict } from '../../estimate/output.ts'
import type { Phase } from '../../scope/kind.ts'
import { html, type Html, type Part } from './html.ts'

export interface Column {
  readonly head: string
  /** Once, under the head. */
  readonly unit?: string
  /** Figures stand at the right. */
  readonly figure?: boolean
}
export interface Row {
  /** The first names the row. */
  readonly cells: readonly Part[]
  readonly is?: 'total' | 'kraft'
}

/** Rows of a table that stays on one page. */
const SHORT = 12
/** Letters of a figure with its unit. */
const LONG = 24

/** A table with real heads; a row is never cut, and on a phone it becomes pairs of label and figure. */
export function tableOf({ caption, columns, rows, pairs = true, tight = false }: { readonly caption?: string; readonly columns: readonly Column[]; readonly rows: readonly (Row | readonly Part[])[]; /** False: stays a table on a phone as well. */ readonly pairs?: boolean; /** Rows as high as their text: nobody writes in them. */ readonly tight?: boolean }): Html {
  /** A figure stays on its line; a text of a file in its place may be as long as it likes. */
  const figure = (i: number, cell: Part = ''): string => (columns[i]?.figure ? `figure${html`${cell}`.markup.replace(/<[^>]*>/g, '').length > LONG ? ' long' : ''}` : '')
  const label = (i: number): string => { const c = columns[i]!; return c.unit === undefined ? c.head : `${c.head}, ${c.unit}` }
  const laid = rows.map(r => 'cells' in r ? r : { cells: r })
  return html`<table class="table${pairs ? ' pairs' : ''}${tight ? ' tight' : ''}${rows.length <= SHORT ? ' keep' : ''}" role="table">${caption !== undefined && html`<caption>${caption}</caption>`}
<thead role="rowgroup"><tr role="row">${columns.map((c, i) => html`<th scope="col" role="columnheader" class="${figure(i)}">${c.head}${c.unit !== undefined && html` <span class="unit">${c.unit}</span>`}</th>`)}</tr></thead>
<tbody role="rowgroup">
${laid.map(r => html`<tr role="row" class="${'is' in r && r.is !== undefined ? r.is : ''}">${r.cells.map((cell, i) => i === 0
    ? html`<th scope="row" role="rowheader" class="${figure(i, cell)}">${cell}</th>`
    : html`<td role="cell" class="${figure(i, cell)}" data-label="${label(i)}">${cell}</td>`)}</tr>
`)}</tbody>
</table>
`
}

export type Sign = GateOut['state'] | 'opened' | Verdict

const INSIDE: Readonly<Record<Sign, Html | undefined>> = {
  stop: html`<rect x="5" y="5" width="12" height="16" fill="currentColor"/>`,
  hold: html`<path class="post" d="M3 9H19M3 17H19"/>`,
  mend: html`<path class="post" d="M11 7V19M5 13H17"/>`,
  conditional: html`<path class="post" d="M4 13q3.5 -7 7 0t7 0"/>`,
  opened: undefined, go: undefined,
  note: html`<circle cx="11" cy="13" r="3" fill="currentColor"/>`,
}

/** Two posts, and what stands between them; a note shuts nothing and has no posts. The word beside it says the same. */
export const sign = (state: Sign, name: string = state): Html => html`<svg class="sign ${state}" role="img" aria-label="${name}" viewBox="0 0 22 26">${state !== 'note' && html`<path class="post" d="M3 1V25M19 1V25"/>`}${INSIDE[state]}</svg>`

/** Gates one under the other: sign, bold word, sentences. */
export const gateList = (gates: readonly { readonly state: Sign; readonly word: string; readonly says: Part }[]): Html => html`<ul class="gates">
${gates.map(g => html`<li>${sign(g.state)}<div><p><b>${g.word}</b></p>${g.says}</div></li>
`)}</ul>
`

/** What hides a leak. */
const COVERS: readonly Phase[] = ['wrap', 'ventilate', 'contain', 'insulate']

/** Where the cover line stands: before this task, by its place in the list; undefined where nothing is covered, or nothing comes before. */
export function coverAt(tasks: readonly TaskOut[]): number | undefined {
  const at = tasks.findIndex(t => COVERS.includes(t.phase))
  return at > 0 ? at : undefined
}

/** The heavy line: the lid, and nothing else. Once on a paper. @param beside what stands with it, such as a place to sign */
export const coverLine = (beside?: Part): Html => html`<div class="cover"><p><b>Cover line.</b> In each area nothing below starts until all above is done and seen.</p>${beside}</div>
`

/** A drawing as wide as the sheet. On a phone it keeps its size and is moved under the finger. */
export const wide = (drawn: Html, caption?: Part): Html => html`<figure class="wide" tabindex="0">${drawn}${caption !== undefined && html`<figcaption>${caption}</figcaption>`}</figure>
`

/** A figure as it is shown, marked with its path in the JSON: tests compare both. */
export const figureAt = (path: string, shown: Part): Html => html`<span data-figure="${path}">${shown}</span>`

/** A box to tick. */
export const tick = (what: string): Html => html`<span class="tick" role="img" aria-label="box to tick: ${what}"></span>`

/** A line to write on. */
export const writeHere = (what: string): Html => html`<span class="write" role="img" aria-label="to fill in: ${what}"></span>`

/** Places to sign, two to a row. */
export const signatures = (of: readonly string[]): Html => html`<div class="signatures">${of.map(o => html`<div>${o}</div>`)}</div>
`

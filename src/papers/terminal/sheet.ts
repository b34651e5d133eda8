// The sheet: columns 1 to 3 sign or step, from 6 a word, from 19 a sentence, figures at the right edge.
import { Chalk } from 'chalk'
import stringWidth from 'string-width'
import type { Look } from '../look.ts'
import { asciiOnly } from './ascii.ts'
import { NB } from './words.ts'

const WORD = 6
export const SENTENCE = 19
/** Where a line below a row of figures begins. */
export const BELOW = 8
const NARROWEST = 60
const WIDEST = 100
/** Between a text and figures at its right. */
export const GAP = 2

/** Letters of one column, without asking: ASCII, Latin, dashes, quotes, rules. */
const NARROW = /^[\x20-\x7e\xa0\xb0-\u024f\u2010-\u201e\u2500-\u257f]*$/

/** Columns a text takes: East Asian wide letters take two. */
export const columns = (text: string): number => (NARROW.test(text) ? text.length : stringWidth(text))

export const padRight = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - columns(text)))
export const padLeft = (text: string, width: number): string => ' '.repeat(Math.max(0, width - columns(text))) + text

/** Cuts a word that is wider than its column, behind a hyphen, slash or dot where there is one. */
function cut(word: string, width: number): string[] {
  const out: string[] = []
  let line = '', wide = 0
  for (const c of word) {
    const w = columns(c)
    if (wide + w > width && line !== '') {
      const joint = /^(.*[-/.,_])./su.exec(line)?.[1]
      const keep = joint !== undefined && columns(joint) * 2 > width ? joint : line
      out.push(keep)
      line = line.slice(keep.length)
      wide = columns(line)
    }
    line += c
    wide += w
  }
  return [...out, line]
}

/** Breaks a text into lines of at most so many columns. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = []
  let line = '', wide = 0
  for (const word of text.split(/ +/)) {
    if (word === '') continue
    const w = columns(word)
    if (line !== '' && wide + 1 + w <= width) { line += ` ${word}`; wide += 1 + w; continue }
    if (line !== '') lines.push(line)
    const parts = w > width ? cut(word, width) : [word]
    lines.push(...parts.slice(0, -1))
    line = parts.at(-1)!
    wide = columns(line)
  }
  if (line !== '') lines.push(line)
  return lines.length > 0 ? lines : ['']
}

export interface Row {
  /** Sign or step. */
  readonly mark?: string
  /** Stop and hold. */
  readonly red?: boolean
  readonly word?: string
  readonly boldWord?: boolean
  readonly text?: string
  readonly boldText?: boolean
  /** Lines at the right edge. */
  readonly right?: string | readonly string[]
  readonly boldRight?: boolean
  /** Columns the right edge keeps free of text in every line. */
  readonly keep?: number
  /** Column where the text begins. */
  readonly at?: number
}

export interface Sheet {
  readonly width: number
  /** Heavy line: the lid, and nothing else. */
  readonly heavy: string
  readonly thin: string
  /** A section: one bold word, its units at the right. */
  section(word: string, right?: string): void
  row(row: Row): void
  gap(): void
  /** A thin rule above a total, so many columns from the right edge. */
  rule(width: number, free?: number): void
  /**
   * A name, and figures each at the right of its column, whose width begins with its gap; a figure may have several lines.
   * A name of one word that would be cut stands on a line of its own.
   */
  figures(name: string, cells: readonly string[], widths: readonly number[]): void
  /** What stands over such figures: the section, and of each column two words. */
  heads(name: string, heads: readonly (readonly [string, string])[], widths: readonly number[]): void
  text(): string
}

/** An empty sheet. */
export function sheet(look: Look): Sheet {
  const width = Math.max(NARROWEST, Math.min(WIDEST, Math.floor(look.width)))
  const ink = new Chalk({ level: look.color ? 1 : 0 })
  const heavy = look.ascii ? '=' : '━', thin = look.ascii ? '-' : '─'
  const said = (text: string): string => look.ascii ? text.split(NB).map(asciiOnly).join(NB) : text
  const lines: string[] = []
  const put = (line: string): void => { lines.push(line.replaceAll(NB, ' ').trimEnd()) }

  function row(r: Row): void {
    const at = r.at ?? (r.word === undefined ? WORD : SENTENCE)
    const right = (typeof r.right === 'string' ? [r.right] : r.right ?? []).map(said)
    const keep = Math.max(r.keep ?? 0, ...right.map(t => columns(t) + GAP), 0)
    const word = r.word === undefined ? [] : wrap(said(r.word), Math.max(1, at - WORD - 1))
    const text = wrap(said(r.text ?? ''), Math.max(1, width - (at - 1) - keep))
    const bold = (on: boolean | undefined, t: string): string => on ? t.replace(/\S(?:.*\S)?/su, inked => ink.bold(inked)) : t
    for (let i = 0; i < Math.max(word.length, text.length, right.length); i++) {
      const mark = i === 0 ? padLeft(said(r.mark ?? ''), 3) : '   '
      const w = word[i] ?? '', t = text[i] ?? '', f = right[i] ?? ''
      const left = at < WORD ? ' '.repeat(at - 1) : (r.red && i === 0 ? ink.red(mark) : mark) + '  ' + bold(r.boldWord, w) + ' '.repeat(Math.max(0, at - WORD - columns(w)))
      put(left + bold(r.boldText, t) + ' '.repeat(Math.max(0, width - (at - 1) - columns(t) - columns(f))) + bold(r.boldRight, f))
    }
  }

  function laid(name: string, boldName: boolean, cells: readonly string[], widths: readonly number[]): void {
    const lines = cells.map(cell => said(cell).split('\n')), taken = widths.reduce((sum, w) => sum + w, 0), wide = columns(said(name))
    const right = Array.from({ length: Math.max(...lines.map(l => l.length)) }, (_, i) => lines.map((l, n) => padLeft(l[i] ?? '', widths[n]!)).join('').slice(GAP))
    const alone = !name.includes(' ') && wide > width - (WORD - 1) - taken && wide <= width - WORD
    if (alone) row({ text: name })
    row({ text: alone ? '' : name, boldText: boldName, right, keep: taken })
  }

  return {
    width, heavy, thin, row,
    figures: (name, cells, widths) => { laid(name, false, cells, widths) },
    heads(name, heads, widths) {
      laid(name, true, heads.map(h => h[0]), widths)
      laid('', false, heads.map(h => h[1]), widths)
    },
    gap() { lines.push('') },
    section(word, right = '') { lines.push(''); row({ text: word, boldText: true, right }) },
    rule(n, free = 0) { put(padLeft(thin.repeat(n), width - free)) },
    text: () => `${lines.join('\n')}\n`,
  }
}

/** Left and right on one line where both fit, else the right part below. */
export function bothEnds(on: Sheet, left: string, right: string, bold = false): void {
  if (columns(left) + 2 + columns(right) <= on.width) { on.row({ at: 1, text: left, boldText: bold, right }); return }
  on.row({ at: 1, text: left, boldText: bold })
  on.row({ at: 1, text: right })
}

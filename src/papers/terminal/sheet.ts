// The sheet: columns 1 to 3 sign or step, from 6 a word, from 19 a sentence, figures at the right edge.
import { Chalk } from 'chalk'
import Table from 'cli-table3'
import stringWidth from 'string-width'
import type { Look } from '../look.ts'
import { asciiOnly } from './ascii.ts'
import { NB } from './words.ts'

const WORD = 6
export const SENTENCE = 19
/** Where a line below a row of a table begins. */
const BELOW = 8
const NARROWEST = 60
const WIDEST = 100
const TALL = 3

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

export interface Column { readonly width: number; readonly right?: boolean }

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
   * Heads, of which the first is the name of the section, and rows; figures come laid out, words are broken to their column.
   * A first cell of one word that its column would cut stands on a line of its own. @param below of each row what has no column
   */
  table(columns: readonly Column[], heads: readonly (readonly string[])[], rows: readonly (readonly string[])[], below?: readonly string[]): void
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
    const keep = Math.max(r.keep ?? 0, ...right.map(t => columns(t) + 2), 0)
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

  function table(cols: readonly Column[], heads: readonly (readonly string[])[], rows: readonly (readonly string[])[], below?: readonly string[]): void {
    const none = { top: '', 'top-mid': '', 'top-left': '', 'top-right': '', bottom: '', 'bottom-mid': '', 'bottom-left': '', 'bottom-right': '', left: '', 'left-mid': '', mid: '', 'mid-mid': '', right: '', 'right-mid': '', middle: '' }
    const options = { chars: none, style: { head: [], border: [], compact: true, 'padding-left': 0, 'padding-right': 0 }, colWidths: cols.map(c => c.width), colAligns: cols.map(c => c.right ? 'right' as const : 'left' as const) }
    const indent = ' '.repeat(WORD - 1), name = said(heads[0]![0]!)
    heads.concat(rows).forEach((given, n) => {
      const [first = '', ...rest] = given, wide = columns(said(first))
      const alone = !first.includes(' ') && wide > cols[0]!.width && wide <= width - WORD
      if (alone) row({ text: first })
      const cells = alone ? ['', ...rest] : given
      // Words are broken here: the table would cut off a long one, and measures a tall cell again for each of its lines.
      const broken = cells.map((cell, i) => cols[i]!.right ? said(cell).split('\n') : wrap(said(cell), cols[i]!.width))
      const height = Math.max(...broken.map(b => b.length))
      // A table compares each cell with every other; its columns are fixed, so a row can be a table of its own.
      const laid = new Table(options)
      if (height <= TALL) laid.push(broken.map(b => b.join('\n')))
      else for (let i = 0; i < height; i++) laid.push(broken.map(b => b[i] ?? ''))
      laid.toString().split('\n').forEach((line, i) => put(indent + (n === 0 && i === 0 && !alone ? ink.bold(name) + line.slice(name.length) : line)))
      const more = below?.[n - heads.length]
      if (more !== undefined) row({ at: BELOW, text: more })
    })
  }

  return {
    width, heavy, thin, row, table,
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

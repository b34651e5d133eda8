// Reference tables on a terminal and as CSV: value, unit, source, how obtained, and what uses it.
import type { MemoryOut, SourceOut, TableFigure, TableOut } from '../estimate/told/tables-output.ts'
import { toDigits } from '../estimate/told/told.ts'
import { printable } from '../findings/printable.ts'
import { csvLine } from './csv.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { columns, GAP, padLeft, padRight, wrap } from './terminal/sheet.ts'
import { laid } from './terminal/table.ts'
import { unitWord } from './terminal/words.ts'

const NARROW = 14, MOST = 16, SIX = 6
const letter = (i: number): string => (i < LETTERS.length ? LETTERS[i]! : `${i}`)
const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** To six digits: a third has no end. */
const valued = (v: number | string): string => (typeof v === 'number' ? String(toDigits(v, SIX)) : v)

const text = (lines: readonly string[], look: Look): string => `${lines.map(l => (look.ascii ? asciiOnly(printable(l)) : printable(l)).trimEnd()).join('\n')}\n`
const para = (t: string, look: Look, indent = 0): string[] => wrap(t, look.width - indent).map(l => ' '.repeat(indent) + l)

/** Cells in columns where they fit the width; figures right, words left and broken where there is no room. */
function grid(heads: readonly string[], rows: readonly (readonly string[])[], right: readonly boolean[], width: number): string[] | undefined {
  const wide = heads.map((h, i) => Math.max(...h.split('\n').map(columns), ...rows.map(r => columns(r[i]!))))
  const over = wide.reduce((sum, w) => sum + w + GAP, 0) - GAP - width
  if (over > 0) {
    const words = wide.map((w, i) => (right[i] ? 0 : w)), widest = words.indexOf(Math.max(...words))
    if (wide[widest]! - over < NARROW) return undefined
    wide[widest]! -= over
  }
  const cols = wide.map((w, i) => ({ width: w, right: right[i]! }))
  const lines = (cells: readonly string[]): string[] => laid(cells.map((c, i) => c.split('\n').flatMap(l => (right[i] ? [l] : wrap(l, wide[i]!)))), cols, GAP)
  return [...lines(heads), ...rows.flatMap(lines)]
}

/** One table whole. Rows that come from elsewhere than the rest carry a letter. */
export function terminalTable(t: TableOut, look: Look): string {
  const by = new Map<string, TableFigure[]>()
  for (const f of t.figures) by.set(f.row, [...by.get(f.row) ?? [], f])
  const cited = (f: TableFigure): string => `${f.source}; ${f.obtained}`, own = `${t.source}; ${t.obtained}`
  const others = [...new Set(t.figures.map(cited))].filter(c => c !== own), mark = (f: TableFigure): string => { const i = others.indexOf(cited(f)); return i < 0 ? '' : letter(i) }
  const names = [...new Set(t.figures.map(f => f.figure))], rows = [...by]
  const unitsOf = (n: string): string => unitWord(t.figures.find(f => f.figure === n && f.unit !== '')?.unit ?? '')
  const even = names.length <= MOST
  const asGrid = even ? grid(['', ...names.map(n => `${n}\n${n.includes('.') && n !== names.find(x => x.includes('.')) ? '' : unitsOf(n)}`), ''], rows.map(([row, fs]) => [row, ...names.map(n => valued(fs.find(f => f.figure === n)?.value ?? '')), mark(fs[0]!)]), [false, ...names.map(n => t.figures.every(f => f.figure !== n || typeof f.value === 'number')), false], look.width) : undefined
  const wide = Math.max(NARROW, ...t.figures.map(f => columns(f.row))) + GAP
  const lines = asGrid ?? t.figures.flatMap(f => {
    const told = `${valued(f.value)} ${unitWord(f.unit)}`.trim() + `  ${f.figure}` + (mark(f) === '' ? '' : `  ${mark(f)}`)
    return wide + NARROW > look.width ? [...para(f.row, look), ...para(told, look, GAP * 2)] : wrap(told, look.width - wide).map((l, i) => (i === 0 ? padRight(f.row, wide) : ' '.repeat(wide)) + l)
  })
  const uses = [...(t.use === undefined ? [] : [`use: ${t.use}`]), ...(t.usedBy.formulas.length > 0 ? [`taken by the formulas: ${t.usedBy.formulas.join(', ')}`] : []),
    t.usedBy.figures.length > 0 ? `used by, in the shipped examples: ${t.usedBy.figures.join(', ')}` : 'no figure of the shipped examples holds a row of it']
  return text([...para(`${t.name}: ${t.title}`, look), '', ...lines, '', ...para(`source: ${own}`, look), ...others.flatMap((o, i) => para(`${letter(i)}  ${o}`, look, GAP)), ...uses.flatMap(u => para(u, look))], look)
}

/** Name, rows, how obtained, and title of each. */
export function terminalTables(list: readonly TableOut[], look: Look): string {
  const wide = Math.max(...list.map(t => columns(t.name))) + GAP, count = Math.max(...list.map(t => String(t.rows).length))
  const lines = list.flatMap(t => { const how = [...new Set(t.figures.map(f => f.obtained))].join('; '); return wrap(`${t.title} (${how})`, look.width - wide - count - GAP).map((l, i) => (i === 0 ? padRight(t.name, wide) + padLeft(String(t.rows), count) : ' '.repeat(wide + count)) + ' '.repeat(GAP) + l) })
  return text([`${padRight('table', wide)}${padLeft('rows', count)}  what it is, and how its figures were obtained`, ...lines], look)
}

export const terminalBibliography = (list: readonly SourceOut[], look: Look): string => text(list.flatMap(s => [
  ...para(s.source, look), ...para(s.obtained.join('; '), look, GAP * 2),
  ...(s.tables.length > 0 ? para(`tables: ${s.tables.join(', ')}`, look, GAP * 2) : []), ...(s.formulas.length > 0 ? para(`formulas: ${s.formulas.join(', ')}`, look, GAP * 2) : []), ...(s.values.length > 0 ? para(`starting values: ${s.values.join(', ')}`, look, GAP * 2) : []),
]), look)

export function terminalMemory(list: readonly MemoryOut[], look: Look): string {
  const lines: string[] = []
  let before = ''
  for (const m of list) {
    const head = `${m.table}: ${m.source}`
    if (head !== before) lines.push(...(before === '' ? [] : ['']), ...para(head, look))
    before = head
    lines.push(...para(`${m.row === m.figure ? '' : `${m.row}, `}${m.figure}: ${valued(m.value)} ${unitWord(m.unit)}`.trimEnd() + `  (${m.howSure})`, look, GAP * 2))
  }
  return text(lines, look)
}

/** The head of the first column names the format; the column holds the table. */
export const TABLES_CSV = 'lidwork-tables/1'

/** One line for each figure. */
export const csvTables = (list: readonly TableOut[]): string => csvLine([TABLES_CSV, 'row', 'figure', 'value', 'unit', 'source', 'obtained', 'usedBy']) + list.flatMap(t => { const used = t.usedBy.figures.join(' '); return t.figures.map(f => csvLine([t.name, f.row, f.figure, f.value, f.unit, f.source, f.obtained, used])) }).join('')
export const csvBibliography = (list: readonly SourceOut[]): string => csvLine([TABLES_CSV, 'obtained', 'tables', 'formulas', 'startingValues']) + list.map(s => csvLine([s.source, s.obtained.join('; '), s.tables.join(' '), s.formulas.join(' '), s.values.join(' ')])).join('')
export const csvMemory = (list: readonly MemoryOut[]): string => csvLine([TABLES_CSV, 'row', 'figure', 'value', 'unit', 'source', 'howSure']) + list.map(m => csvLine([m.table, m.row, m.figure, m.value, m.unit, m.source, m.howSure])).join('')

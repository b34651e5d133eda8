// A finding as people read it: place, source line, caret, and three short sentences: what stands there, why not, the mend.
import { placed, type Finding, type Places } from './finding.ts'
import { printable } from './printable.ts'

const WIDTH = 80
const INDENT = '  '
const CUT = '...'
const LEAST_BEFORE = 12

/** A finding as text, with a blank line behind it. */
export function renderFinding(f: Finding, places: Places, source: string, file: string): string {
  const { line, column, length } = placed(f, places)
  return [
    `${printable(file)}:${line}:${column}: ${f.severity} ${f.code}`,
    ...excerpt(source.split('\n')[line - 1] ?? '', column - 1, length),
    ...[asSentence(f.says, false), asSentence(f.why, false), asSentence(f.mend, true)].flatMap(wrapped),
    '', '',
  ].join('\n')
}

/** The source line and the caret under it, cut to the width round the caret. */
function excerpt(line: string, at: number, length: number): string[] {
  const plain = line.replace(/\r$/, '')
  if (plain.trim() === '') return []
  // Each piece as it is shown: a tab stays a tab in both lines, so that the caret stands under its word whatever a tab is wide.
  const shown = (text: string): string => text.split('\t').map(printable).join('\t')
  let before = shown(plain.slice(0, at)), under = shown(plain.slice(at, at + length)), after = shown(plain.slice(at + length))
  const room = WIDTH - INDENT.length
  if (before.length + under.length + after.length > room) {
    const most = room - Math.min(before.length, LEAST_BEFORE)
    if (under.length > most) { after = ''; under = under.slice(0, most - CUT.length) + CUT }
    const left = Math.max(room - under.length - after.length, Math.floor((room - under.length) / 2))
    if (before.length > left) before = CUT + before.slice(before.length - left + CUT.length)
    const right = room - before.length - under.length
    if (after.length > right) after = after.slice(0, Math.max(0, right - CUT.length)) + CUT
  }
  return [`${INDENT}${before}${under}${after}`.trimEnd(), `${INDENT}${before.replace(/[^\t]/g, ' ')}${'^'.repeat(Math.max(1, under.trimEnd().length))}`]
}

/** What stands there as it is typed, else a sentence; a full stop only where it cannot be taken for part of something to type. */
function asSentence(text: string, typed: boolean): string {
  const plain = printable(text)
  if (/^(in )?\w+: /.test(plain)) return plain
  const begun = /^[a-z]+(?=[ ,;]|$)/.test(plain) ? plain.charAt(0).toUpperCase() + plain.slice(1) : plain
  return /[.?!:]$/.test(begun) || (typed && !/(?:^|[\s(])[A-Za-z][A-Za-z-]*\)?$|: [^:]*\s\w+$/.test(begun)) || (typed && /: \S+$/.test(begun)) ? begun : `${begun}.`
}

function wrapped(text: string): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && INDENT.length + line.length + 1 + word.length > WIDTH) { lines.push(line); line = INDENT + word } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line].map(l => INDENT + l)
}

export interface FindingJson { readonly file: string; readonly line: number; readonly column: number; readonly severity: Finding['severity']; readonly code: string; readonly path: string; readonly message: string }

/** A finding for other programs. */
export function findingJson(f: Finding, places: Places, file: string): FindingJson {
  const { line, column } = placed(f, places)
  return { file, line, column, severity: f.severity, code: f.code, path: f.path, message: printable(`${f.says}: ${f.why}; ${f.mend}`) }
}

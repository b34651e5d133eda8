// How a figure came about, on a terminal: its formula in words, in symbols and with its numbers, what went into it, and where that stands.
import { toDigits } from '../estimate/told/told.ts'
import type { ExplainOut, InputTold, NamedTold, OriginTold, StepTold } from '../estimate/told/told-output.ts'
import { printable } from '../findings/printable.ts'
import { halfUp } from '../units/money.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { columns, padRight, wrap } from './terminal/sheet.ts'
import { unitWord } from './terminal/words.ts'

const NAME = 20, VALUE = 20, INDENT = 3
/** What is left for words beside names and values; under it they stand on a line of their own. */
const LEAST = 24
/** Lines of a sum beyond which it is not written out with numbers. */
const SUM = 8
const USES = 6
/** Assumptions that are named; the others are counted. */
const NAMED = 12

const SIX = 6
const valued = (t: NamedTold & Partial<OriginTold>, digits = SIX): string => (t.as !== undefined ? t.as : `${t.about ? 'about ' : ''}${toDigits(t.value, digits)} ${unitWord(t.unit)}`.trim())
/** Six digits of what was rounded in the output, or as many as show that way. */
function before({ value, printed, roundedTo }: StepTold): number {
  for (let digits = SIX; ; digits++) { const x = toDigits(value, digits); if (x === value || halfUp(x, roundedTo) === printed) return x }
}

/** Signs as they are written by hand; ASCII stays as it is, ready for a calculator. */
const written = (symbols: string, ascii: boolean): string => ascii ? symbols
  : symbols.replace(/ \* /g, ' · ').replace(/ \/ /g, ' ÷ ').replace(/ - /g, ' − ').replace(/(^|[(,] ?)-(?=[\w(])/g, '$1−').replace(/\bsqrt\(/g, '√(').replace(/\bpi\b/g, 'π').replace(/<=/g, '≤').replace(/==/g, '=')

/** The symbols with a number in place of each name. */
function numbered(symbols: string, inputs: readonly InputTold[], digits: number): string | undefined {
  const by = new Map(inputs.map(i => { const x = toDigits(i.value, digits); return [i.name, x < 0 ? `(${x})` : String(x)] }))
  if (symbols === 'sum' || symbols === 'mean') {
    if (inputs.length > SUM || inputs.length < 2) return undefined
    const sum = [...by.values()].join(' + ')
    return symbols === 'sum' ? sum : `(${sum}) / ${inputs.length}`
  }
  // Names of its own, given before or between brackets, stay names.
  return symbols.replace(/[A-Za-z_]\w*(?!\w*\()/g, name => by.get(name) ?? name)
}

/** Where a figure comes from, in words; its place in the file apart. */
function comesFrom(o: OriginTold & { readonly lines?: readonly number[] }, file: string, ascii: boolean): { readonly words: string; readonly place: string } {
  switch (o.is) {
    case 'given': return { words: '', place: `${o.file}:${o.line}` }
    case 'row': return { words: (o.row ?? '') + (o.pickedBy ? `, picked by ${o.pickedBy.as ?? `${toDigits(o.pickedBy.value, SIX)} ${unitWord(o.pickedBy.unit)}`.trim()}` : ''), place: '' }
    case 'assumed': return { words: `assumed: ${o.why}`, place: '' }
    case 'worked': return { words: `= ${ascii ? asciiOnly(o.formula!.says) : o.formula!.says}${o.lines === undefined ? '' : `, ${o.lines.map((l, i) => `${i === 0 ? `${file}:` : ''}${l}`).join(', ')}`}`, place: '' }
  }
}

const cited = (source: string, obtained?: string): string => (obtained === undefined || source.includes(obtained) ? source : `${source}; ${obtained}`)

/** One step as lines. */
function stepLines(s: StepTold, file: string, look: Look): string[] {
  const { width, ascii } = look, lines: string[] = []
  const put = (indent: number, text: string, hang = indent): void => { wrap(text, width - hang).forEach((l, i) => lines.push(' '.repeat(i === 0 ? indent : hang) + l)) }
  const exact = s.printed === undefined || Math.abs(s.printed - s.value) < 1e-9
  put(0, `${s.path} = ${exact ? valued(s) : `${s.printed} ${unitWord(s.unit)}`.trim() + (before(s) === s.printed ? '' : `, from ${before(s)}`)}`, INDENT)
  if (s.is === 'worked') {
    const { says, symbols } = s.formula!, numbers = numbered(symbols, s.inputs, s.digits)
    put(2, `= ${says}`, INDENT + 1)
    if (/\W/.test(symbols)) put(2, `= ${written(symbols, ascii)}`, INDENT + 1)
    if (numbers !== undefined && numbers !== symbols) put(2, `= ${written(numbers, ascii)}`, INDENT + 1)
  } else if (s.is === 'assumed') {
    put(2, s.what ?? '')
    put(2, `assumed: ${s.why}`)
    if (s.replacedBy !== undefined) put(2, `your own figure: ${s.replacedBy}, in the company file`)
  } else { const { words, place } = comesFrom(s, file, ascii); put(2, words + place) }
  const wide = Math.max(NAME, ...s.inputs.map(i => columns(i.name) + 2)), value = Math.max(VALUE, ...s.inputs.map(i => columns(valued(i, s.digits)) + 2)), from = INDENT + wide + value
  for (const i of s.inputs) {
    const { words, place } = comesFrom(i, file, ascii), head = `${' '.repeat(INDENT)}${padRight(i.name, wide)}`, beside = width - from >= LEAST
    const told = words === '' ? [] : wrap(words, beside ? width - from : width - 2 * INDENT)
    if (place !== '') {
      // At the right edge, on the line where it has room.
      const line = head + valued(i, s.digits), room = width - columns(line) - columns(place)
      if (room >= 2) lines.push(line + ' '.repeat(room) + place); else lines.push(line, ' '.repeat(Math.max(0, width - columns(place))) + place)
    } else if (beside) lines.push(head + padRight(valued(i, s.digits), value) + (told[0] ?? ''), ...told.slice(1).map(t => ' '.repeat(from) + t))
    else lines.push(head + valued(i, s.digits), ...told.map(t => ' '.repeat(2 * INDENT) + t))
  }
  if (s.roundings.length > 0) put(2, `rounded ${s.roundings.join('; ')}`, INDENT + 1)
  if (s.assumptions.length > 0) put(2, `rests on assumptions: ${s.assumptions.slice(0, NAMED).map(a => `${a.path} ${valued(a)}`).join(' · ')}${s.assumptions.length > NAMED ? ` · and ${s.assumptions.length - NAMED} more; --deep tells each at its step, --json lists all` : ''}`, INDENT + 1)
  if (s.usedBy.length > 0) put(2, `used by: ${s.usedBy.slice(0, USES).map(u => `${u.path} ${valued(u)}`).join(' · ')}${s.usedBy.length > USES ? ` · and ${s.usedBy.length - USES} more` : ''}`, INDENT + 1)
  const sources = new Map<string, string[]>()
  for (const i of s.inputs) if (i.is === 'row' && i.source !== 'definition') { const key = cited(i.source!, i.obtained); sources.set(key, [...sources.get(key) ?? [], i.name]) }
  for (const [source, names] of sources) put(2, `[${names.join(', ')}: ${source}]`, INDENT)
  if (s.is === 'worked') put(2, `[${s.formula!.id}: ${s.formula!.source}]`, INDENT)
  else if (s.is === 'row') put(2, `[${cited(s.source!, s.obtained)}]`, INDENT)
  return lines
}

/** What can be asked, one line each. */
const listLines = (list: readonly NamedTold[]): string[] => {
  const wide = Math.max(...list.map(f => columns(f.path))) + 2
  return list.map(f => padRight(f.path, wide) + valued(f))
}

/** The answer as text: its steps, or the figures that the words fit. */
export function terminalExplained(out: ExplainOut, look: Look): string {
  const lines = out.steps.length > 0 ? out.steps.flatMap((s, i) => [...(i === 0 ? [] : ['']), ...stepLines(s, out.file, look)])
    : [...(out.asked === undefined ? [] : [`${out.asked} fits ${out.figures.length} figures:`]), ...listLines(out.figures)]
  return `${lines.map(l => (look.ascii ? asciiOnly(printable(l)) : printable(l)).trimEnd()).join('\n')}\n`
}

// Words of the papers: dates, figures and sentences as people read them.
import { fills } from '../../reference/fills.ts'
import { NB, plainFigure, unitWord } from '../terminal/words.ts'

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const

/** 2026-02-17 as Feb 17, 2026. */
export function dayOf(date: string): string {
  const [year, month, day] = date.split('-').map(Number)
  return `${MONTHS[month! - 1]}${NB}${day},${NB}${year}`
}

/** Begins large, ends with a stop. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? '' : '.')

/** A code of the program as the word it is: light-not-ic is light not ic. */
export const codeWords = (code: string): string => code.replaceAll('-', ' ')

const MEASURES = ['each', 'ft', 'ft2', 'in2', 'ft3', 'gal', 'fl oz', 'lb']
/** So many purchase units: 26 tubes, 5 ft², 1 of what is counted by the piece. */
export function packsOf(n: number, unit: string): string {
  if (unit === 'each') return plainFigure(n)
  const many = n === 1 || MEASURES.includes(unit) || !/[a-z]$/.test(unit) ? unitWord(unit) : /(?:s|x|ch|sh)$/.test(unit) ? `${unit}es` : `${unit}s`
  return `${plainFigure(n)}${NB}${many.replaceAll(' ', NB)}`
}

/** One, two and three: `a, b and c`. */
export const listed = (parts: readonly string[]): string => (parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`)

/** A kind of fill in words: fiberglass-batt is fiberglass batt. */
export const fillWords = (fill: string): string => fills.rows.find(f => f.fill === fill)?.title ?? codeWords(fill)

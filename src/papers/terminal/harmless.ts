// Every text without control characters: nothing in a file may steer a terminal. A figure keeps its unit on its line.
import { printable } from '../../findings/printable.ts'
import { asciiOnly } from './ascii.ts'
import { NB } from './words.ts'

const FIGURE_AND_UNIT = /(?<=\d) (?=(?:\d+\/\d+ )?(?:in|ft|ft2|ft²|psf|oz|fl oz|lb|h|days?|bags?)\b)|(?<=\d \d+\/\d+) (?=in\b)/g

/** The same data with every text in it fit for a terminal. */
export function harmless<T>(value: T, ascii: boolean): T {
  if (typeof value === 'string') return (ascii ? asciiOnly(printable(value)) : printable(value)).replace(FIGURE_AND_UNIT, NB) as T
  if (Array.isArray(value)) return value.map(v => harmless<unknown>(v, ascii)) as T
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([key, v]) => [key, harmless<unknown>(v, ascii)])) as T
  return value
}

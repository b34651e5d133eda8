// Lines that GitHub shows beside a file: workflow commands, with what would end or split one escaped.
import { placed, sentence, type Finding, type Places } from '../findings/finding.ts'
import { printable } from '../findings/printable.ts'

const LEVELS = { error: 'error', warning: 'warning', note: 'notice' } as const
const data = (text: string): string => text.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A')
const property = (text: string): string => data(text).replace(/:/g, '%3A').replace(/,/g, '%2C')

/** One annotation at a file, at its place where it has one. */
export const annotation = (level: (typeof LEVELS)[keyof typeof LEVELS], file: string, title: string, text: string, place = ''): string =>
  `::${level} file=${property(file)},${place}title=${property(title)}::${data(printable(text))}\n`

/** A finding at its line. */
export function findingAnnotation(f: Finding, places: Places, file: string): string {
  const { line, column, length } = placed(f, places)
  return annotation(LEVELS[f.severity], file, f.code, sentence(f), `line=${line},endLine=${line},col=${column},endColumn=${column + length},`)
}

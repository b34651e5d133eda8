// How large an opening is, in the words of a tape: what the surveyor wrote, and nothing that was not measured.
import { asFeet, asTape } from '../units/tape.ts'

const inches = (x: number): string => `${asTape(x)} in`
type Words = (x: number) => string
type Sides = readonly [number, number]
const sides: (what?: string) => (s: Sides) => string = what => ([a, b]) => `${what === undefined ? '' : `${what} `}${asTape(a)} × ${asTape(b)} in`

/** Each key of an opening that holds a measure, in the order in which they are read out. */
const PAIRS: Readonly<Record<string, (s: Sides) => string>> = { sizeIn: sides(), sizeFt: ([a, b]) => `${asFeet(a)} × ${asFeet(b)}`, framedIn: sides('framed'), housingIn: sides('housing') }
const LENGTHS: Readonly<Record<string, Words>> = {
  ductIn: x => `duct ${inches(x)}`, lengthFt: x => `${asFeet(x)} long`, areaFt2: x => `${x} ft²`, edgeFt: x => `edge ${asFeet(x)}`, diameterIn: x => `${inches(x)} across`, widthIn: x => `${inches(x)} wide`, heightIn: x => `${inches(x)} high`,
  nominalIn: x => `${inches(x)} pipe`, holeIn: x => `hole ${inches(x)}`, gapIn: x => `gap ${inches(x)}`, flueIn: x => `flue ${inches(x)}`, sleeveIn: x => (x > 0 ? `sleeve ${inches(x)} high` : 'no sleeve'),
}

/** The size of one opening as the survey has it: `4 × 10 in, gap 1/4 in`. Undefined where the file has no measure of it. @param about whether a key was written with ~ */
export function sizeOf(item: object, about: (key: string) => boolean): string | undefined {
  const has = item as Readonly<Record<string, unknown>>
  const words = [
    ...Object.entries(PAIRS).flatMap(([key, say]) => (Array.isArray(has[key]) ? [[key, say(has[key] as unknown as Sides)] as const] : [])),
    ...Object.entries(LENGTHS).flatMap(([key, say]) => (typeof has[key] === 'number' ? [[key, say(has[key])] as const] : [])),
  ].map(([key, text]) => (about(key) ? `about ${text}` : text))
  return words.length === 0 ? undefined : words.join(', ')
}

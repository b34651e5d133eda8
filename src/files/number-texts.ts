// Why a text is no number for its key, and how to write what was probably meant.
import { asFeet, asTape, readNumber, type Grammar } from '../units/tape.ts'
import type { Node } from './schema.ts'

export interface Why { readonly code: string; readonly why: string; readonly mend: string }

const WORDS: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', ft2: 'square feet', ft3: 'cubic feet', R: 'R', pct: 'percent', USD: 'dollars', h: 'hours', lb: 'pounds', 'rise in 12': 'rise in 12' }

/** A unit as people say it; a plain count has none. */
export const unitWords = (unit: string): string => WORDS[unit] ?? unit

const UNIT_SHORT: Readonly<Record<string, string>> = { each: '', year: '', fraction: '', stories: '', 'rise in 12': ' in 12', pct: ' percent', USD: ' dollars' }
const behind = (unit: string): string => UNIT_SHORT[unit] ?? ` ${unit}`

/** The number of a text, by one of the grammars. */
export const asNumberText = (text: string, as: string | undefined): number | undefined =>
  (as === 'number' || as === 'inches' || as === 'feet' ? readNumber(text, as)?.value : undefined)

/** A number that its key does not take. */
export function ranged(value: number, node: Node, key: string): Why {
  const unit = node['x-unit'] ?? '', max = node.maximum ?? Infinity, above = node.exclusiveMinimum, min = above ?? node.minimum ?? 0
  const range = above === undefined ? `${min} to ${max}${behind(unit)}` : `more than ${above}, up to ${max}${behind(unit)}`
  const what = (node.description ?? key).replace(/ \[[^\]]*\]$/, '').split(';')[0]!
  if (value <= max && (above === undefined ? value >= min : value > min)) return { code: 'number-not-whole', why: 'a whole number belongs here', mend: `write ${Math.floor(value)} or ${Math.ceil(value)}` }
  const inches = node['x-reads'] === 'feet' && value > max && value / IN <= max ? `; if these are inches, write ${feetAndInches(value)}` : ''
  const length = unit === 'in' || unit === 'ft' ? `; the key is in ${unitWords(unit)}` : ''
  const part = value > max ? share(value, node) : undefined
  return { code: 'number-out-of-range', why: `it stands for ${what}, ${range}`, mend: part === undefined ? `write a number in that range${inches || length}` : `if it is percent, write ${part}` }
}

/** A percentage as the share that its key holds: 80 is 0.8; undefined where the key holds none. */
function share(pct: number, node: Node): number | undefined {
  const part = Number((pct / 100).toPrecision(12)), { minimum = 0, maximum = Infinity } = node
  return node['x-unit'] === 'fraction' && part >= minimum && part <= maximum ? part : undefined
}

/** Inches as a foot key takes them: 126 is 10'6. */
const feetAndInches = (inches: number): string => (inches % IN === 0 ? String(inches / IN) : asFeet(inches / IN).replace(/"$/, ''))

const IN = 12
const VULGAR: Readonly<Record<string, string>> = { '\u00bc': '1/4', '\u00bd': '1/2', '\u00be': '3/4', '\u215b': '1/8', '\u215c': '3/8', '\u215d': '5/8', '\u215e': '7/8' }
const LENGTHS: readonly (readonly [RegExp, 'in' | 'ft'])[] = [[/^(?:feet|foot|ft|lf|lin ft)\.?$/i, 'ft'], [/^(?:inches|inch|ins?)\.?(?: ?o\.?c\.?)?$/i, 'in']]
const OTHERS = /^(?:o\.?c|sq\.? ?ft|sqft|sf|square feet|ft2|cu\.? ?ft|ft3|psf|percent|pct|%|each|ea|pcs?|pieces|people|bays|lights?|years?|stor(?:y|ies)|bedrooms?|cfm(?:50|25)?|pa|pascals?|ppm|x|r)\.?$/i

/** A text that is no number. */
export function notANumber(text: string, node: Node, key: string, example: string | undefined): Why {
  const unit = node['x-unit'] ?? '', as = (node['x-reads'] ?? 'number') as Grammar
  const trimmed = text.trim()
  const reads = (t: string, by: Grammar = as) => readNumber(t, by)?.value
  const known = unit === 'in' || unit === 'ft' ? `the key is in ${unitWords(unit)} already` : 'a plain number belongs here'
  const inKey = (inches: number): string => (unit === 'ft' ? feetAndInches(inches) : asTape(inches))

  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(trimmed)) return { code: 'number-with-comma', why: 'YAML takes a comma in a number for text', mend: `write ${trimmed.replaceAll(',', '')}` }
  if (/^~?\d{1,3}([ _]\d{3})+$/.test(trimmed)) return { code: 'not-a-number', why: 'a number has no gaps', mend: `write ${trimmed.replace(/[ _]/g, '')}` }
  if (/^\d+,\d{1,2}$/.test(trimmed)) return { code: 'number-with-comma', why: 'a decimal stands behind a point', mend: `write ${trimmed.replace(',', '.')}` }
  const vulgar = trimmed.replace(/\s*([\u00bc-\u00be\u215b-\u215e])/g, (_, c: string) => ` ${VULGAR[c] ?? ''}`).trim()
  if (vulgar !== trimmed && reads(vulgar) !== undefined) return { code: 'not-a-number', why: 'a fraction is typed with a slash', mend: `write ${vulgar}` }
  const about = /^(?:about|approx\.?|approximately|around|ca\.?|circa|roughly|\+\/-|\u2248)\s*(.+)$/i.exec(trimmed)?.[1] ?? /^(.+?)\s*(?:\+\/-|\?|ish)$/i.exec(trimmed)?.[1]
  if (about !== undefined && reads(about) !== undefined) return { code: 'not-a-number', why: '~ means about', mend: `write ~${about}` }
  const dollars = unit === 'USD' ? /^\$\s*(\d[\d,]*(?:\.\d+)?|\.\d+)$/.exec(trimmed) : null
  if (dollars) return { code: 'number-with-unit', why: 'the key is in dollars already', mend: `write ${dollars[1]!.replaceAll(',', '')}` }
  const range = /^([\d.]+)\s*(?:-|to|\u2013)\s*([\d.]+)$/.exec(trimmed)
  if (range && Number(range[1]) < Number(range[2])) return { code: 'not-a-number', why: 'one number belongs here', mend: `write one number; ~${(Number(range[1]) + Number(range[2])) / 2} says about` }
  const r = /^r[ -]?(\d+(?:\.\d+)?)$/i.exec(trimmed)
  if (r && unit === 'R') return { code: 'number-with-unit', why: 'the key is an R-value already', mend: `write ${r[1]}` }

  const [, mark = '', figure = '', word = ''] = /^(~?)\s*([\d.][\d./ -]*?)\s*([a-z%][a-z0-9. ]*|%)$/i.exec(trimmed) ?? []
  const length = LENGTHS.find(([names]) => names.test(word))?.[1]
  if (length && (unit === 'in' || unit === 'ft')) {
    const inches = length === 'in' ? reads(figure, 'inches') : (Number(figure) || undefined) && Number(figure) * IN
    if (length === unit && reads(figure) !== undefined) return { code: 'number-with-unit', why: known, mend: `write ${mark}${figure}` }
    if (inches !== undefined) return { code: 'number-with-unit', why: `the key is in ${unitWords(unit)}`, mend: `write ${mark}${inKey(inches)}` }
  }
  const part = /^(?:%|percent|pct)$/i.test(word) ? share(Number(figure), node) : undefined
  if (part !== undefined) return { code: 'number-with-unit', why: 'the key is a share, 1 for all of it', mend: `write ${mark}${part}` }
  if (word !== '' && (length || OTHERS.test(word)) && reads(figure) !== undefined) return { code: 'number-with-unit', why: known, mend: `write ${mark}${figure}` }
  const worded = /^(\d+)\s*(?:feet|foot|ft)\.?,?\s*(?:and\s*)?(\d+(?:\s+\d+\/\d+)?)\s*(?:inches|inch|ins?)\.?$/i.exec(trimmed)
  if (worded && (unit === 'in' || unit === 'ft')) {
    const inches = Number(worded[1]) * IN + (reads(worded[2]!, 'inches') ?? 0)
    return { code: 'number-with-unit', why: unit === 'ft' ? 'feet and inches are typed as the tape reads' : `the key is in ${unitWords(unit)}`, mend: `write ${inKey(inches)}` }
  }

  const over = unit === 'ft' || unit === 'in' ? /^~?\s*(\d+)\s*['\u2019\u2032]\s*(\d+)((?:\s+|-)\d+\/\d+)?\s*(?:"|''|\u201d|\u2033)?$/.exec(trimmed) : null
  if (over && Number(over[2]) >= IN) {
    const inches = Number(over[1]) * IN + (reads(`${over[2]!}${over[3] ?? ''}`, 'inches') ?? NaN)
    return { code: 'not-a-number', why: 'inches behind feet go up to 11', mend: `measure again; ${over[1]!} ft and ${over[2]!}${over[3] ?? ''} in are ${inKey(inches)}` }
  }

  // The other key's tape notation.
  if (unit === 'in' && /['\u2019\u2032]/.test(trimmed)) {
    const feet = reads(trimmed, 'feet')
    if (feet !== undefined) return { code: 'number-with-unit', why: 'the key is in inches', mend: `write ${asTape(feet * IN)}` }
  }
  if (unit === 'ft') {
    const inches = reads(trimmed, 'inches')
    if (inches !== undefined) return /["\u201d\u2033]|''/.test(trimmed) || !trimmed.includes('/') ? { code: 'number-with-unit', why: 'the key is in feet', mend: `write ${inKey(inches)}` }
      : { code: 'not-a-number', why: 'a fraction alone would be inches, and the key is in feet', mend: `write feet and inches, such as 14'7 1/2, or feet with a point` }
  }
  const pitch = unit === 'rise in 12' ? /^(\d+(?:\.\d+)?)\s*(?:\/|:|in)\s*12$/.exec(trimmed) : null
  if (pitch) return { code: 'number-with-unit', why: 'the key is the rise in 12 already', mend: `write ${pitch[1]!}` }
  if (as === 'number' && reads(trimmed, 'inches') !== undefined) return { code: 'not-a-number', why: 'this key takes a number with a point', mend: `write ${Number(reads(trimmed, 'inches')!.toFixed(4))}` }
  if (/^(unknown|unk|n\/?a|none|tbd|\?+|-+|no|yes|not measured)$/i.test(trimmed)) return { code: 'not-a-number', why: 'a number belongs here', mend: `measure it, or write your best figure with ~ before it: ${key}: ~${example?.replace('~', '') ?? 1}` }
  if (/^~?[\d.]+\s*\/\s*0+$|^~?\d{300,}/.test(trimmed) || reads(trimmed.replace(/\/\s*0+(?!\d)/, '/1')) !== undefined) return { code: 'not-a-number', why: 'it has no value', mend: 'measure again' }
  const how = unit === 'ft' ? `14'7, 14.5 or ~14` : unit === 'in' ? `5 1/2, 5.5 or ~5` : example ?? '12 or ~12'
  return { code: 'not-a-number', why: `a number${unitWords(unit) === 'each' ? '' : ` in ${unitWords(unit)}`} belongs here`, mend: `write it as ${how}` }
}

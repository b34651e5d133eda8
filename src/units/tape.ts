// Numbers as the tape reads, and as a person writes them: 14'7, 14' 7 1/2", 3/8, 3 1/2, ~22.

const FRACTION = String.raw`\d+\s*/\s*\d+`
const NUMBER = String.raw`\d+(?:\.\d+)?|\.\d+`
const INCHES = String.raw`(?:(?:${NUMBER})(?:[ -]+${FRACTION})?|${FRACTION})`
const MARK = String.raw`(?:"|''|”|″)`
const FOOT = String.raw`(?:'|’|′)`
/** Inches behind feet: up to 11 and a part of one. */
const BELOW_12 = String.raw`(?:0*(?:1[01]|\d)(?:\.\d+)?(?:[ -]+${FRACTION})?|\.\d+|${FRACTION})`

/** What a number, an inch or a foot key may hold as text. One grammar for the reader, the schema and the editor. */
export const grammar = {
  number: String.raw`^~?\s*(?:${NUMBER})$`,
  inches: String.raw`^~?\s*${INCHES}\s*${MARK}?$`,
  feet: String.raw`^~?\s*(?:(?:${NUMBER})|(?:${NUMBER})\s*${FOOT}(?:\s*${BELOW_12}\s*${MARK}?)?)$`,
} as const

export type Grammar = keyof typeof grammar

const compiled = { number: new RegExp(grammar.number), inches: new RegExp(grammar.inches), feet: new RegExp(grammar.feet) }

const fraction = (text: string): number | undefined => {
  const [over, under] = text.split('/').map(Number)
  return over === undefined || !under ? undefined : over / under
}

const inchesOf = (text: string): number | undefined => {
  const parts = text.replace(/["”″]|''/g, '').replace(/\s*\/\s*/g, '/').trim().split(/[ -]+/)
  let sum = 0
  for (const part of parts) {
    const value = part.includes('/') ? fraction(part) : Number(part)
    if (value === undefined || Number.isNaN(value)) return undefined
    sum += value
  }
  return sum
}

export interface Reading { readonly value: number; readonly about: boolean }

/**
 * Reads text by one of the grammars.
 * @returns the number in the key's own unit (inches, or feet with decimals), and whether `~` marks it as about; undefined where the text is no such number
 */
export function readNumber(text: string, as: Grammar): Reading | undefined {
  const trimmed = text.trim()
  if (!compiled[as].test(trimmed)) return undefined
  const about = trimmed.startsWith('~')
  const plain = about ? trimmed.slice(1).trim() : trimmed
  let value: number | undefined
  if (as === 'number') value = Number(plain)
  else if (as === 'inches') value = inchesOf(plain)
  else {
    const [feet = '', rest = ''] = plain.split(/['’′](.*)/s)
    const inches = rest.trim() === '' ? 0 : inchesOf(rest)
    value = inches === undefined ? undefined : Number(feet) + inches / 12
  }
  return value === undefined || !Number.isFinite(value) ? undefined : { value, about }
}

const SIXTEENTHS = 16

/** Inches as the tape reads, to the nearest `1/per`: 14.25 → `14 1/4`. */
export function asTape(inches: number, per = SIXTEENTHS): string {
  const ticks = Math.round(inches * per)
  const whole = Math.floor(ticks / per)
  let over = ticks % per
  let under = per
  while (over > 0 && over % 2 === 0) { over /= 2; under /= 2 }
  return over === 0 ? String(whole) : whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`
}

/** Feet as crews write them: 14.583 → `14'7"`. */
export function asFeet(feet: number): string {
  const inches = Math.round(feet * 12 * 4) / 4
  return `${Math.floor(inches / 12)}'${asTape(inches % 12, 4)}"`
}

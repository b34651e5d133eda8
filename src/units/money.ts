// Money is whole cents in an ordinary number. One rule, half up, and only where a person would round.

/** A figure that is 12.000000000000002 by arithmetic is 12. */
export const NEAR = 1e-9

/** Rounds to a multiple of `step`, half up. */
export const halfUp = (x: number, step = 1): number => {
  const per = 1 / step
  return Math.floor(x * per + 0.5 + NEAR) / per
}

/** Rounds up to a multiple of `step`; 12.000000000000002 is 12. */
export const roundUp = (x: number, step = 1): number => {
  const per = 1 / step
  return Math.ceil(x * per - NEAR) / per
}

const TENS = [1, 10, 100, 1e3, 1e4, 1e5, 1e6]
/** Whole numbers up to here stand exactly in an ordinary number, their double too. */
const SURE = 2 ** 50
/** As many as the shortest text of a figure has decimals, up to six; -1 where it has more, or more digits than a figure can be told apart by. */
function decimalsOf(x: number): number {
  for (let d = 0; d < TENS.length; d++) {
    const shifted = Math.round(x * TENS[d]!)
    if (shifted / TENS[d]! === x) return Math.abs(shifted) < SURE ? d : -1
  }
  return -1
}

/** Exact product of two decimals by their shortest texts, divided by a whole number, rounded half up to a whole number. */
export function timesToWhole(a: number, b: number, over = 1): number {
  // Nearly every figure is small enough to be multiplied as whole numbers.
  const da = decimalsOf(a), db = decimalsOf(b)
  if (da >= 0 && db >= 0 && a >= 0 && b >= 0) {
    const scale = TENS[da]! * TENS[db]! * over, twice = 2 * Math.round(a * TENS[da]!) * Math.round(b * TENS[db]!) + scale
    if (twice < SURE) return (twice - twice % (2 * scale)) / (2 * scale)
  }
  return timesExactly(a, b, over)
}

/** The same for figures of any length. */
function timesExactly(a: number, b: number, over = 1): number {
  const [x, dx] = decimal(a)
  const [y, dy] = decimal(b)
  const scale = 10n ** BigInt(dx + dy) * BigInt(over)
  const twice = 2n * x * y + scale
  const whole = twice / (2n * scale)
  return Number(twice % (2n * scale) < 0n ? whole - 1n : whole)
}

/** A number as an integer and how many decimals were shifted away: 14.9 → [149n, 1]. */
export function decimal(x: number): [bigint, number] {
  const text = String(x)
  const [mantissa = '0', exponent = '0'] = text.split('e')
  const [whole = '0', part = ''] = mantissa.split('.')
  const shift = part.length - Number(exponent)
  const digits = BigInt(whole + part)
  return shift >= 0 ? [digits, shift] : [digits * 10n ** BigInt(-shift), 0]
}

/** Dollars to cents without a float in between: 14.9 → 1490, 0.0312 → 3.12. */
export function cents(usd: number): number {
  const [digits, shift] = decimal(usd)
  return shift <= 2 ? Number(digits * 10n ** BigInt(2 - shift)) : Number(`${digits}e-${shift - 2}`)
}

/** Cents as a person writes dollars in a sentence: $1,234.50; parts of a cent stay. */
export function usd(cents: number): string {
  const [, shift] = decimal(cents), [whole = '0', part = ''] = (cents / 100).toFixed(2 + shift).split('.')
  return `$${whole.replace(/\B(?=(\d{3})+$)/g, ',')}.${part}`
}

/** Exact difference of two decimals by their shortest texts: 64.1 − 63.47 is 0.63. */
export function minusExactly(a: number, b: number): number {
  const [x, dx] = decimal(a)
  const [y, dy] = decimal(b)
  const shift = Math.max(dx, dy)
  return Number(`${x * 10n ** BigInt(shift - dx) - y * 10n ** BigInt(shift - dy)}e-${shift}`)
}

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

/** Exact product of two decimals by their shortest texts, divided by a whole number, rounded half up to a whole number. */
export function timesToWhole(a: number, b: number, over = 1): number {
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

/** Exact difference of two decimals by their shortest texts: 64.1 − 63.47 is 0.63. */
export function minusExactly(a: number, b: number): number {
  const [x, dx] = decimal(a)
  const [y, dy] = decimal(b)
  const shift = Math.max(dx, dy)
  return Number(`${x * 10n ** BigInt(shift - dx) - y * 10n ** BigInt(shift - dy)}e-${shift}`)
}

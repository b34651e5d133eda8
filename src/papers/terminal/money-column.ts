// A column of money: as wide as its largest figure asks for, so that two columns never touch.
import { columns, padLeft } from './sheet.ts'
import { usd } from './words.ts'

type Cents = number | undefined
/** A change of money, with its sign. */
export const signedUsd = (c: number): string => (c > 0 ? `+${usd(c)}` : c < 0 ? `-${usd(-c)}` : usd(0))

/** @param least columns it takes anyway, the blank before it included @param all what will stand in it [cents] */
export function moneyColumn(least: number, all: readonly Cents[]) {
  const width = all.reduce<number>((widest, c) => (c === undefined ? widest : Math.max(widest, columns(signedUsd(c)) + 1)), least)
  const head = (text: string): string => padLeft(text, width)
  return { width, head, money: (c: Cents): string => head(c === undefined ? '' : usd(c)), change: (c: Cents): string => head(c === undefined ? '' : signedUsd(c)) }
}

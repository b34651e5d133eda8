// What steers a terminal, or turns the order of letters, is shown as what it is and never sent.

/** C0, DEL, C1, line and paragraph separators, marks that turn the writing direction, halves of characters. */
const STEERING = /[\p{Cc}\p{Cs}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/u
const EACH = new RegExp(STEERING, 'gu')
/** The same in a text of many lines, whose ends are none of it. */
export const STEERING_IN_LINES = new RegExp(`${STEERING.source}(?<![\\n\\r])`, 'u')
const SHORT: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' }

const escaped = (character: string): string => SHORT[character] ?? `\\u${character.codePointAt(0)!.toString(16).padStart(4, '0')}`

/** The text in one line, each steering character written out: ESC is `\u001b`. */
export const printable = (text: string): string => text.replace(EACH, escaped)

/** The first steering character of a text that is no tab or line end, written out; undefined where there is none. */
export function steering(text: string): string | undefined {
  if (!STEERING.test(text)) return undefined
  const first = text.match(EACH)!.find(c => c !== '\n' && c !== '\t')
  return first === undefined ? undefined : escaped(first)
}

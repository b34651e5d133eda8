// Markup in which a text can only be a text: what stands in a file cannot become a tag, an attribute or a style.
import { printable } from '../../findings/printable.ts'

/** Finished markup. Only `html` makes it, so a string that came from a file is never taken for it. */
export class Html {
  constructor(readonly markup: string) {}
}

export type Part = Html | string | number | false | undefined | readonly Part[]

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Letters that are written from the right. */
const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u
const [ISOLATE, END_OF_ISOLATE] = ['\u2068', '\u2069']

/** A text as it may stand in an element or a quoted attribute. Steering characters are written out, and text from the right keeps its order to itself. */
export function escaped(text: string): string {
  const shown = text.split('\n').map(printable).join('\n').replace(/[&<>"']/g, c => ENTITIES[c]!)
  return RIGHT_TO_LEFT.test(shown) ? `${ISOLATE}${shown}${END_OF_ISOLATE}` : shown
}

function markupOf(part: Part): string {
  if (part === undefined || part === false) return ''
  if (part instanceof Html) return part.markup
  return typeof part === 'object' ? part.map(markupOf).join('') : escaped(String(part))
}

/** Whether the markup so far ends inside a tag, and there outside quotes. */
const bareInTag = (before: string): boolean => /<[^<>]*$/.test(before) && !/=(?:"[^"]*|'[^']*)$/.test(before)

/**
 * Markup with its parts put in: strings and numbers as text, lists one after the other, nothing for undefined and false.
 * @throws where a text would stand in a tag outside quotes: it could end there as an attribute of its own
 */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Html {
  let out = strings[0]!
  parts.forEach((part, i) => {
    if (!(part instanceof Html) && bareInTag(strings.slice(0, i + 1).join('x'))) throw new Error(`a part stands in a tag without quotes: ${strings[i]!.slice(-40)}`)
    out += markupOf(part) + strings[i + 1]!
  })
  return new Html(out)
}

/** A text as a string of a style sheet: every character that is no plain letter, digit or blank by its code point. */
export const cssString = (text: string): string => `"${printable(text).replace(/[^A-Za-z0-9 .,:;()/+-]/gu, c => `\\${c.codePointAt(0)!.toString(16).padStart(6, '0')}`)}"`

// Brackets and quotes that lack their other end: where they open, and where it belongs. The parser stumbles only far behind them.
import { Lexer } from 'yaml'

/** A bracket or quote by its place in the source. */
export type OpenEnd =
  /** A quote that runs on over a key, to be closed before `ends`; or that nothing closes. */
  | { readonly what: 'quote'; readonly at: number; readonly over?: { readonly key: string; readonly ends: number } }
  /** A bracket: `by` is the one that closes too early, none where the lines go on further left or the file ends; `key` a key that belongs behind it. */
  | { readonly what: 'bracket'; readonly at: number; readonly by?: number; readonly key?: string; readonly ends: 'by' | 'line' | 'file' }
  /** One that closes nothing. */
  | { readonly what: 'closer'; readonly at: number }

interface Token { readonly text: string; readonly at: number; /** A word or text without quotes. */ readonly plain: boolean }

const PLAIN = '\u001f', FLOW_END = '\u0018', MARKS = ['\u0002', FLOW_END]

function tokensOf(source: string): Token[] {
  const out: Token[] = []
  let at = 0, plain = false
  for (const text of new Lexer().lex(source)) {
    if (!plain && text === PLAIN) { plain = true; continue }
    const mark = !plain && MARKS.includes(text)
    if (plain || !/^[ \t]+$/.test(text)) out.push({ text, at, plain })
    if (!mark) at += text.length
    plain = false
  }
  return out
}

const QUOTED_KEY = /([,\n])\s*(?:- +)?\{?([A-Za-z]\w*):(?=\s|$)/g

/** A quote whose text holds a key of the format, and behind whose end more text stands: its own end was left out. Else one without any. */
function openQuote(tokens: readonly Token[], known: (key: string) => boolean): OpenEnd | undefined {
  for (const [i, { text, at, plain }] of tokens.entries()) {
    if (plain || !/^["']/.test(text)) continue
    const closed = text.length > 1 && text.endsWith(text[0]!), next = tokens[i + 1]
    if (closed && (next === undefined || (!next.plain && /^[,\]}:#\n\r\u0018]/.test(next.text)))) continue
    const over = [...text.matchAll(QUOTED_KEY)].find(m => known(m[2]!))
    if (over) return { what: 'quote', at, over: { key: over[2]!, ends: at + over.index } }
    if (!closed) return { what: 'quote', at }
  }
  return undefined
}

const CLOSES: Readonly<Record<string, string>> = { '[': ']', '{': '}' }

interface Open { readonly token: Token; key?: string }

/** Whether all that is open is closed from here on, each by its own, up to the end of a line. */
function closes(tokens: readonly Token[], from: number, open: readonly string[]): boolean {
  const stack = [...open]
  for (let i = from; i < tokens.length && stack.length > 0; i++) {
    const { text, plain } = tokens[i]!
    if (plain) continue
    if (text === FLOW_END) return false
    if (CLOSES[text]) stack.push(text)
    else if ((text === ']' || text === '}') && CLOSES[stack.pop()!] !== text) return false
    if (stack.length === 0) { const next = tokens[i + 1]; return next === undefined || (!next.plain && /^[#\n\r\u0018]/.test(next.text)) }
  }
  return stack.length === 0
}

function openBracket(tokens: readonly Token[]): OpenEnd | undefined {
  const stack: Open[] = []
  const unclosed = (ends: 'by' | 'line' | 'file', by?: number): OpenEnd => {
    const { token, key } = stack.at(-1)!
    return { what: 'bracket', at: token.at, ends, ...(by === undefined ? {} : { by }), ...(key === undefined ? {} : { key }) }
  }
  for (const [i, token] of tokens.entries()) {
    const { text, at, plain } = token, top = stack.at(-1)
    if (!plain && text === FLOW_END && top) return unclosed('line')
    if (plain) {
      // A key in a list: the list should have ended before the comma.
      if (top?.token.text === '[' && top.key === undefined && tokens[i - 1]?.text === ',' && tokens[i + 1]?.text === ':') top.key = text
      continue
    }
    if (CLOSES[text]) { stack.push({ token }); continue }
    if (text !== ']' && text !== '}') continue
    if (top && CLOSES[top.token.text] === text) { stack.pop(); continue }
    const opened = stack.map(s => s.token.text)
    const other = opened.some(o => CLOSES[o] === text), both = opened.slice(0, -1)
    if (!other || (!closes(tokens, i, both) && closes(tokens, i + 1, opened))) return { what: 'closer', at }
    return unclosed('by', at)
  }
  return stack.length > 0 ? unclosed('file') : undefined
}

/** The first bracket or quote of a broken file without its other end. @param known whether the format has a key of that name */
export function openEnd(source: string, known: (key: string) => boolean): OpenEnd | undefined {
  const tokens = tokensOf(source)
  return openQuote(tokens, known) ?? openBracket(tokens)
}

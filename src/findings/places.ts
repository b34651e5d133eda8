import type { Places, Span } from './finding.ts'

/** Start and end of a piece of the source. */
export type Range = readonly [start: number, end: number]

/** Ranges by JSON pointer; lines are looked up only when someone asks. */
export class SourcePlaces implements Places {
  readonly values = new Map<string, Range>()
  readonly keys = new Map<string, Range>()
  /** Of each mapping its first key and value: enough to show which entry is meant. */
  readonly heads = new Map<string, Range>()
  #lineStarts: number[] | undefined
  #fill: (() => void) | undefined
  constructor(readonly source: string) {}

  /** Puts the looking off until somebody asks: of most files nobody does. */
  later(fill: () => void): void { this.#fill = fill }

  #filled(): this {
    const fill = this.#fill
    this.#fill = undefined
    fill?.()
    return this
  }

  value(path: string): Span | undefined { const { heads, values } = this.#filled(); return this.#span(heads.get(path) ?? values.get(path)) }
  key(path: string): Span | undefined { return this.#span(this.#filled().keys.get(path)) }

  /** A value as it was typed. */
  raw(path: string): string | undefined {
    const range = this.#filled().values.get(path)
    return range && this.source.slice(...range)
  }

  /** Where a piece of the source stands: its first line only, at least one column. */
  span([start, end]: Range): Span {
    this.#lineStarts ??= starts(this.source)
    let low = 0, high = this.#lineStarts.length - 1
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if (this.#lineStarts[middle]! <= start) low = middle
      else high = middle - 1
    }
    const first = this.source.slice(start, end).split('\n', 1)[0]!.trimEnd()
    return { line: low + 1, column: start - this.#lineStarts[low]! + 1, length: Math.max(1, first.length) }
  }

  #span(range: Range | undefined): Span | undefined { return range && this.span(range) }
}

function starts(source: string): number[] {
  const out = [0]
  for (let i = source.indexOf('\n'); i !== -1; i = source.indexOf('\n', i + 1)) out.push(i + 1)
  return out
}

/** A key as part of a JSON pointer. */
export const pointer = (key: string): string => (key.includes('~') || key.includes('/') ? key.replaceAll('~', '~0').replaceAll('/', '~1') : key)
/** The keys of a JSON pointer. */
export const keysOf = (path: string): string[] => path.split('/').slice(1).map(k => k.replaceAll('~1', '/').replaceAll('~0', '~'))

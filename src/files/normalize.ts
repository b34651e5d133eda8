// Numbers as the tape reads them become numbers; names that YAML takes for numbers become names again.
import { pointer } from '../findings/places.ts'
import { readNumber, type Grammar } from '../units/tape.ts'

/** What the keys of a format hold: a number by one of the grammars, or a name that may look like a number. Made from the schema when the program is built. */
export type Reads = ReadonlyMap<string, Grammar | 'name'>

export interface Normalized {
  /** Pointers of numbers written `~22`. */
  readonly about: readonly string[]
  /** Pointers of text that has the form of a number and no value: 1/0. */
  readonly unread: readonly string[]
}

type Container = Record<string, unknown>
/** A container and the way to it: a pointer is written for the few that are asked for. */
interface Step { readonly key: string; readonly up: Step | undefined }
const pointerTo = (key: string, up: Step | undefined): string => `${up === undefined ? '' : pointerTo(up.key, up.up)}/${pointer(key)}`

/** Replaces, in the data, each text that reads as a number by that number. What does not read so stays, for the validator to find. */
export function normalize(data: unknown, reads: Reads): Normalized {
  const about: string[] = [], unread: string[] = []
  const visit = (holder: Container, up: Step | undefined, inherited: Grammar | 'name' | undefined): void => {
    const list = Array.isArray(holder)
    for (const key of Object.keys(holder)) {
      const value = holder[key]
      const as = (list ? undefined : reads.get(key)) ?? inherited
      if (typeof value === 'object' && value !== null) { visit(value as Container, { key, up }, as); continue }
      if (as === undefined) continue
      if (as === 'name') { if (typeof value === 'number') holder[key] = String(value); continue }
      if (typeof value !== 'string') continue
      const read = readNumber(value, as)
      if (read === undefined) { if (/^~?[\d.]/.test(value)) unread.push(pointerTo(key, up)); continue }
      holder[key] = read.value
      if (read.about) about.push(pointerTo(key, up))
    }
  }
  if (typeof data === 'object' && data !== null) visit(data as Container, undefined, undefined)
  return { about, unread }
}

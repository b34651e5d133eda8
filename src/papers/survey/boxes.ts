// The blank field sheet as plain data: a box for each key of the job file, in its order. From the schema and the kinds, so that no key can be forgotten.
import type { TSchema } from '../../fields/index.ts'
import { jobSchema } from '../../job/job-file.ts'
import { areaKinds, hazardKinds, openingKinds } from '../../scope/index.ts'
import { capital, meaning, node, type Node } from '../commented.ts'

/** What is written into a box. */
export type Fill =
  | { readonly is: 'text'; readonly long: boolean }
  /** So many numbers of a unit: a pair, some probes. */
  | { readonly is: 'numbers'; readonly unit: string; readonly many: number }
  | { readonly is: 'words'; readonly words: readonly string[] }
  | { readonly is: 'group'; readonly boxes: readonly Box[] }
  /** A list, with room for so many entries. */
  | { readonly is: 'entries'; readonly boxes: readonly Box[]; readonly many: number }

export interface Box {
  /** As the file has it. */
  readonly key: string
  readonly says: string
  /** The file may not do without it. */
  readonly needed: boolean
  readonly fill: Fill
}

/** A piece of the sheet under one heading. */
export interface Block { readonly key: string; readonly title: string; readonly kind?: string; readonly newPage?: boolean; /** An empty list says that somebody looked, and there is none. */ readonly none?: boolean; readonly boxes: readonly Box[]; /** Entries of a list; 0 is a form that is filled once. */ readonly entries: number }

export interface SurveyPlan {
  /** Areas with their kind, each on a page of its own; an id where the job has one. */
  readonly areas: readonly { readonly kind: string; readonly id?: string }[]
  /** Entries of each kind of opening. */
  readonly lines: number
}

/** What no field knows: the office writes these. */
export const OFFICE = ['format', 'clearances', 'quote', 'choices', 'books'] as const

/** Room on a usual house; more go on the back. */
const ROOM: Readonly<Record<string, number>> = { appliances: 3, exhausts: 3, eaves: 4, highVents: 2, ducts: 3, airHandlers: 1, existing: 2, leaveOut: 2, rectanglesFt: 4, baths: 2, depthIn: 5 }
const MOST_WORDS = 12

interface Sub extends Node { readonly type?: string | readonly string[]; readonly maxItems?: number; readonly minItems?: number; readonly 'x-unit'?: string }

const room = (key: string): number => ROOM[key] ?? 2

function fillOf(key: string, at: Sub): Fill {
  const items = at.items as Sub | undefined
  if (at.properties) return { is: 'group', boxes: boxesOf(at) }
  if (items?.properties) return { is: 'entries', boxes: boxesOf(items), many: room(key) }
  if (items?.items) return { is: 'entries', boxes: [{ key: '', says: items.description ?? '', needed: true, fill: fillOf(key, items) }], many: room(key) }
  if (items) return { is: 'numbers', unit: items['x-unit'] ?? '', many: at.minItems !== undefined && at.minItems === at.maxItems ? at.maxItems : room(key) }
  const words = at.enum
  if (words && words.length <= MOST_WORDS) return { is: 'words', words }
  return at['x-unit'] === undefined ? { is: 'text', long: at['x-reads'] === undefined && words === undefined } : { is: 'numbers', unit: at['x-unit'], many: 1 }
}

/** Its words stand in the box, its unit beside it. */
const says = (at: Sub): string => meaning({ ...at, description: (at.description ?? '').replace(/ \[[^\]]*\]$/, '') }, true).replace(/ \([^()]*\)(?=;|$)/, s => (at.enum && s === ` (${at.enum.join(', ')})` ? '' : s))

/** A box for each key; what a kind is called stands in its heading. */
export const boxesOf = (schema: Node): Box[] => Object.entries(schema.properties ?? {}).filter(([, at]) => at.const === undefined)
  .map(([key, at]) => ({ key, says: says(at as Sub), needed: schema.required?.includes(key) ?? false, fill: fillOf(key, at as Sub) }))

interface Kind { readonly kind: string; readonly title: string; readonly schema: () => TSchema }
const ofKind = (key: string, k: Kind, entries: number, more: Partial<Block> = {}): Block => ({ key, title: k.title, kind: k.kind, boxes: boxesOf(node(k.schema())), entries, ...more })

/** Every key of the job file but those of the office, in its order. */
export function surveySheet({ areas, lines }: SurveyPlan): Block[] {
  return Object.entries(node(jobSchema()).properties ?? {}).filter(([key]) => !(OFFICE as readonly string[]).includes(key)).flatMap(([key, at]): Block[] => {
    const [title = '', none] = capital(at.description ?? '').split('; [] =')
    // Looked for and not there, or seen: one row to a hazard answers both.
    if (key === 'notFound') return []
    if (key === 'hazards') return [{ key: 'notFound', title: 'Hazards: look for each, tick what you did not find, describe what you saw', boxes: [], entries: 0 }, ...hazardKinds.map(k => ofKind(key, k as Kind, 1))]
    if (key === 'areas') return areas.map(a => ofKind(key, areaKinds.find(k => k.kind === a.kind) as Kind, 0, { newPage: true, ...(a.id === undefined ? {} : { title: a.id }) }))
    if (key === 'openings') return [{ key, title, boxes: [], entries: 0, newPage: true }, ...openingKinds.map(k => ofKind(key, k as unknown as Kind, lines)), { key: 'more', title: '', boxes: [], entries: 0 }]
    const items = at.items
    return [{ key, title, boxes: boxesOf(items ?? at), entries: items ? room(key) : 0, ...(none === undefined ? {} : { none: true }) }]
  })
}

export const areaKindNames: readonly string[] = areaKinds.map(k => k.kind)

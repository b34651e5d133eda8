// A file format as JSON Schema, as the reader and the findings look at it.
import { keysOf } from '../findings/places.ts'
import type { Grammar } from '../units/tape.ts'

/** A kind of file that people write, as the findings speak of it. */
export interface FileKind {
  readonly format: string
  /** `a job file` */
  readonly name: string
  /** `one surveyed house` */
  readonly holds: string
  /** How to get a file that is in order. */
  readonly start: string
  /** What such a file is, and what to do with a second one in it. */
  readonly one: readonly [is: string, mend: string]
  readonly mostBytes: number
  /** How large it usually is. */
  readonly usual: string
}

/** What the findings and the reader look at in a schema. */
export interface Node {
  readonly type?: string | readonly string[]
  readonly title?: string
  readonly description?: string
  readonly examples?: readonly unknown[]
  readonly default?: unknown
  readonly enum?: readonly string[]
  readonly const?: string
  readonly pattern?: string
  readonly minimum?: number
  readonly exclusiveMinimum?: number
  readonly maximum?: number
  readonly multipleOf?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly minItems?: number
  readonly maxItems?: number
  readonly properties?: Readonly<Record<string, Node>>
  readonly required?: readonly string[]
  readonly additionalProperties?: false | Node
  readonly items?: Node
  readonly oneOf?: readonly { readonly $ref: string }[]
  readonly $defs?: Readonly<Record<string, Node>>
  readonly 'x-unit'?: string
  readonly 'x-reads'?: string
}

/**
 * What each key of a format holds, where that is a number or a name like one.
 * @throws Error when one key name would have to be read in two ways
 */
export function readsOf(format: object): Readonly<Record<string, Grammar | 'name'>> {
  const reads = new Map<string, Grammar | 'name' | 'as it stands'>()
  const held = (node: Node): Grammar | 'name' | 'as it stands' | undefined => {
    if (node['x-unit'] !== undefined) return node['x-reads'] as Grammar
    if (Array.isArray(node.type) && node.type.includes('number')) return 'name'
    if (node.items) return held(node.items)
    if (node.additionalProperties) return held(node.additionalProperties)
    return node.properties || node.oneOf ? undefined : 'as it stands'
  }
  const visit = (node: Node): void => {
    for (const [key, child] of Object.entries(node.properties ?? {})) {
      const as = held(child), before = reads.get(key)
      if (as !== undefined) {
        if (before !== undefined && before !== as) throw new Error(`the key ${key} reads ${before} in one place and ${as} in another: give one of them another name`)
        reads.set(key, as)
      }
      visit(child)
    }
    if (node.items) visit(node.items)
    if (node.additionalProperties) visit(node.additionalProperties)
    Object.values(node.$defs ?? {}).forEach(visit)
  }
  visit(format as Node)
  return Object.fromEntries([...reads].filter((r): r is [string, Grammar | 'name'] => r[1] !== 'as it stands'))
}

/** All keys that a format has anywhere. */
export function keysNamed(format: object): ReadonlySet<string> {
  const keys = new Set<string>()
  const visit = (node: Node): void => {
    for (const [key, child] of Object.entries(node.properties ?? {})) { keys.add(key); visit(child) }
    if (node.items) visit(node.items)
    if (node.additionalProperties) visit(node.additionalProperties)
    Object.values(node.$defs ?? {}).forEach(visit)
  }
  visit(format as Node)
  return keys
}

export const isRecord = (v: unknown): v is Record<string, unknown> => typeof v === 'object' && v !== null && !Array.isArray(v)
/** A key of the mapping itself, never one that every object has. */
export const own = <V>(record: Readonly<Record<string, V>> | undefined, key: string): V | undefined => (record && Object.hasOwn(record, key) ? record[key] : undefined)

/** Of a choice of kinds the one that the value names. */
export function ofKind(root: Node, node: Node | undefined, value: unknown): Node | undefined {
  if (!node?.oneOf) return node
  const kind = isRecord(value) ? value['kind'] : undefined
  return typeof kind === 'string' ? own(root.$defs, kind) : undefined
}

/** The part of a schema for a place of the data, and what stands there. */
export interface Place { readonly node: Node | undefined; readonly value: unknown; readonly key: string; /** An entry of a list. */ readonly index: boolean; readonly required: boolean }

/** @param path JSON pointer */
export function placeIn(root: Node, data: unknown, path: string): Place {
  let node: Node | undefined = root, value = data, key = '', index = false, required = true
  for (const k of keysOf(path)) {
    node = ofKind(root, node, value)
    if (Array.isArray(value)) { node = node?.items; value = value[Number(k)]; index = true; continue }
    required = node?.required?.includes(k) ?? false
    node = own(node?.properties, k) ?? (node?.additionalProperties || undefined)
    value = isRecord(value) ? own(value, k) : undefined
    key = k
    index = false
  }
  return { node, value, key, index, required }
}

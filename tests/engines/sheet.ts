// A sheet of figures, worked out by a general-purpose formula engine: nothing of the program's own arithmetic is in it.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { all, create } from 'mathjs'

const math = create(all!, { matrix: 'Array' })

/** One line: `name = expression` keeps a figure or a function, `path: expression` is a figure that the estimate must print. */
export interface Cell { readonly line: number; readonly path?: string; readonly text: string }
export interface Worked { readonly line: number; readonly path: string; readonly value: number }

const PATH = /^([a-zA-Z][\w-]*(?:\.[\w-]+)+): (.+)$/

export const cellsOf = (text: string): Cell[] => text.split('\n').flatMap((raw, i): Cell[] => {
  const line = raw.replace(/\s*#.*$/, '').trim()
  if (line === '') return []
  const path = PATH.exec(line)
  return [path ? { line: i + 1, path: path[1]!, text: path[2]! } : { line: i + 1, text: line }]
})

const read = (name: string): string => readFileSync(join(import.meta.dirname, name), 'utf8')

/** Works a sheet out from its first line to its last, after the definitions that all sheets share. */
export function workedOut(name: string): Worked[] {
  const scope = new Map<string, unknown>(), out: Worked[] = []
  for (const c of cellsOf(read('definitions.sheet'))) math.evaluate(c.text, scope)
  for (const c of cellsOf(read(`${name}.sheet`))) {
    let value: unknown
    try { value = math.evaluate(c.text, scope) } catch (e) { throw new Error(`${name}.sheet:${c.line}: ${(e as Error).message}`) }
    if (c.path === undefined) continue
    if (typeof value !== 'number' || !Number.isFinite(value)) throw new Error(`${name}.sheet:${c.line}: ${c.path} is ${String(value)}`)
    out.push({ line: c.line, path: c.path, value })
  }
  return out
}

/** The step to which README.md says that a figure is printed. */
const STEPS: readonly (readonly [RegExp, number])[] = [
  [/Cents(Low|Expected|High)?$/, 1], [/Ft2$/, 0.1], [/Psf$|Gal$/, 0.001], [/^u(Before|After)$/, 0.0001], [/Pct$/, 0.1], [/^days$/, 0.5], [/^ach|Ach/, 0.01], [/Years(Low|Expected|High)?$/, 0.1], [/Share$/, 0.001], [/[a-z]F$/, 0.1], [/^heatingBtu/, 1000], [/Btu|Cfm|^cfm|Kwh|Lb|fuelUnits|^hdd|^cdd|^ratio$/, 1],
]
export const stepOf = (path: string): number => { const name = path.split('.').at(-1)!; return STEPS.find(([ends]) => ends.test(name))?.[1] ?? 0.01 }

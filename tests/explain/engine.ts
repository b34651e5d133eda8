// The symbols of a formula, worked out by a general-purpose evaluator: nothing of the program's own arithmetic is in it.
import { all, create } from 'mathjs/number'

const math = create(all!)

/** Formulas of a list: they take every input. */
export const OF_LINES: ReadonlySet<string> = new Set(['sum', 'mean', 'hypot', 'std'])

/** A figure that is 12.000000000000002 by arithmetic is 12. */
const SLIP = 1e-9
const helpers = {
  up: (x: number, step = 1): number => Math.ceil(x / step - SLIP) * step,
  down: (x: number): number => Math.floor(x + SLIP),
  halfUp: (x: number, step = 1): number => Math.floor(x / step + 0.5 + SLIP) * step,
  logMean: (a: number, b: number): number => (Math.abs(a - b) < SLIP ? a : (a - b) / Math.log(a / b)),
}

const compiled = new Map<string, { evaluate(scope: object): unknown }>()
const compile = (symbols: string) => {
  let code = compiled.get(symbols)
  if (code === undefined) compiled.set(symbols, code = math.parse(symbols).compile())
  return code
}

/** Works the symbols out with these inputs. */
export function evaluated(symbols: string, inputs: Readonly<Record<string, number>>): number {
  if (symbols === 'hypot') return math.hypot(0, ...Object.values(inputs))
  if (OF_LINES.has(symbols)) return (math as unknown as Record<string, (x: number[]) => number>)[symbols]!(Object.values(inputs))
  const made = compile(symbols).evaluate({ ...helpers, ...inputs })
  const last = typeof made === 'object' && made !== null && 'entries' in made ? (made as { entries: unknown[] }).entries.at(-1) : made
  if (typeof last !== 'number') throw new Error(`${symbols} gives ${String(last)}`)
  return last
}

/** The names a formula's symbols take from outside: arguments, nothing else. */
export function namesIn(symbols: string): Set<string> {
  const own = new Set(['pi']), names = new Set<string>()
  math.parse(symbols).traverse((node, path, parent) => {
    if (node.type === 'FunctionAssignmentNode') (node as unknown as { params: string[] }).params.forEach(p => own.add(p))
    if (node.type === 'AssignmentNode') own.add((node as unknown as { object: { name: string } }).object.name)
    // A function is called, an argument stands alone.
    if (node.type === 'SymbolNode' && !(parent?.type === 'FunctionNode' && path === 'fn')) names.add((node as unknown as { name: string }).name)
  })
  return new Set([...names].filter(n => !own.has(n)))
}

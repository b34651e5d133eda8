// Every step that `explain` prints, redone from what it prints: the text is read as a person would, and another engine works it out.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openJob } from '../../src/cli/jobs.ts'
import { figures } from '../../src/estimate/told/figures.ts'
import { steps } from '../../src/estimate/told/told.ts'
import { terminalExplained } from '../../src/papers/explain.ts'
import { walk, type Quantity } from '../../src/units/quantity.ts'
import { evaluated, OF_LINES } from './engine.ts'

const folder = join(import.meta.dirname, '../../examples')
const names = readdirSync(folder).filter(f => f.endsWith('.job.yaml'))
const look = { width: 2000, color: false, ascii: true }

interface Printed { readonly path: string; readonly value: string; readonly before: string; readonly lines: readonly string[]; readonly inputs: ReadonlyMap<string, string> }

/** What stands on the paper, and nothing else. */
function read(text: string): Printed {
  const lines = text.split('\n'), [, path = '', value = '', before] = /^(.+) = (?:about )?(-?[\d.e+-]+)[^,]*(?:, from (-?[\d.e+-]+))?$/.exec(lines[0]!) ?? []
  const inputs = new Map<string, string>()
  for (const l of lines) {
    const input = /^ {3}(\S.*?) {2,}(?:about )?(-?\d[\d.e+-]*)(?: |$)/.exec(l)
    if (input) inputs.set(input[1]!, input[2]!)
  }
  return { path, value, before: before ?? value, lines: lines.filter(l => l.startsWith('  = ')).map(l => l.slice('  = '.length)), inputs }
}

/** Half of the sixth significant digit of what is no whole number. */
const halfDigit = (x: number): number => (Number.isInteger(x) ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(x))) - 5))

/** How far the result may be off, since each input is printed to six digits. @param exact the inputs before that */
function slack(symbols: string, inputs: ReadonlyMap<string, string>, exact: Readonly<Record<string, Quantity>>, at: number): number {
  const x = Object.fromEntries([...inputs].map(([n, t]) => [n, Number(t)])), halves = Object.entries(exact).map(([n, q]) => [n, halfDigit(q.value)] as const).filter(([, half]) => half > 0)
  if (symbols === 'sum') return halves.reduce((sum, [, half]) => sum + half, 0)
  return halves.reduce((off, [name, half]) => off + Math.max(...[half, -half].map(d => { const there = evaluated(symbols, { ...x, [name]: x[name]! + d }); return Number.isFinite(there) ? Math.abs(there - at) : 0 })), 0)
}

const opened = (name: string) => {
  const made = openJob(readFileSync(join(folder, name)), `examples/${name}`)
  if (!made.sound) throw new Error(`${name} is not sound`)
  return made
}

describe.each(names)('%s', name => {
  const { job, estimate } = opened(name), figs = figures(estimate, job)
  const paths = new Map<Quantity, string>()
  walk(figs.all.values(), q => { if (q.from.is === 'worked') paths.set(q, figs.names.get(q) ?? 'between') })

  test('every step comes out as printed', () => {
    let redone = 0, written = 0
    for (const [q, path] of paths) {
      if (q.from.is !== 'worked') continue
      const { by } = q.from, { usedBy: _, ...bare } = steps(figs, job, path, q, false)[0]!
      const text = terminalExplained({ format: 'lidwork-explain/1', job: '', file: `examples/${name}`, figures: [], steps: [{ ...bare, usedBy: [] }] }, look)
      const page = read(text), said = (what: string): string => `${what}\n${text}`
      expect(page.inputs.size, said('every input is printed')).toBe(Object.keys(q.from.inputs).length)
      // The symbols as printed; of a list the one word.
      const symbols = OF_LINES.has(by.symbols) ? by.symbols : page.lines[1]!
      const made = evaluated(symbols, Object.fromEntries([...page.inputs].map(([n, t]) => [n, Number(t)])))
      // Where it rounds, the digits printed are as many as it takes: no slack at all.
      const rounds = /\b(up|down|halfUp)\(/.test(symbols), slip = 1e-9 * Math.max(1, Math.abs(made)), off = slip + halfDigit(q.value) + (rounds ? 0 : slack(symbols, page.inputs, q.from.inputs, made))
      expect(Math.abs(made - Number(page.before)), said(`${made}, within ${off}`)).toBeLessThanOrEqual(off)
      // A tolerance that lets a tenth of a percent go proves little: no figure is so sensitive to its sixth digit, but what is small beside its parts.
      const scale = Math.max(Math.abs(made), ...[...page.inputs.values()].map(t => Math.abs(Number(t))))
      expect(off, said('the digits are enough')).toBeLessThanOrEqual(1e-3 * Math.max(scale, 1e-3))
      redone++
      const numbers = page.lines[OF_LINES.has(by.symbols) ? 1 : 2]
      if (numbers !== undefined) { written++; expect(Math.abs(evaluated(numbers, {}) - made), said(`the line with numbers: ${numbers}`)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(made))) }
    }
    expect(redone).toBeGreaterThan(30)
    expect(written / redone).toBeGreaterThan(0.6)
  })

  test('what the output rounds is half up to its step, from the digits beside it', () => {
    for (const [path, q] of figs.all) {
      const [s] = steps(figs, job, path, q, false), page = read(terminalExplained({ format: 'lidwork-explain/1', job: '', file: '', figures: [], steps: [{ ...s!, usedBy: [] }] }, look))
      if (s!.roundedTo === undefined) continue
      expect(evaluated('halfUp(x, step)', { x: Number(page.before), step: s!.roundedTo }), path).toBeCloseTo(Number(page.value), 9)
    }
  })
})

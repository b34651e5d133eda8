// Words, signs and figures as they stand on a terminal.
import type { Phase } from '../../scope/kind.ts'
import type { Verdict } from '../../estimate/output.ts'
import { halfUp, roundUp } from '../../units/money.ts'
import { asTape } from '../../units/tape.ts'

/** What a phase is called where people read it. */
export const phaseWords: Readonly<Record<Phase, string>> = {
  clear: 'clear the way', prepare: 'old fill', seal: 'seal', ducts: 'ducts', check: 'last look', wrap: 'wrap', ventilate: 'vents', contain: 'dams', insulate: 'blow', close: 'shut', prove: 'prove',
}

/** Two posts, and what stands between them. */
export const signs: Readonly<Record<Verdict | 'mend' | 'opened' | 'note', string>> = { stop: '|#|', hold: '|=|', conditional: '|~|', mend: '|+|', opened: '| |', go: '| |', note: ' . ' }

const grouped = (digits: string): string => digits.replace(/\B(?=(\d{3})+$)/g, ',')

/** A figure with its decimals, half up, thousands set off. */
export function figure(x: number, decimals = 0): string {
  const [whole = '0', part] = halfUp(Math.abs(x), 10 ** -decimals).toFixed(decimals).split('.')
  const text = grouped(whole) + (part === undefined ? '' : `.${part}`)
  return x < 0 && /[1-9]/.test(text) ? `-${text}` : text
}

/** Cents as dollars; the `$` stands at the head of the column. */
export const usd = (cents: number): string => figure(cents / 100, 2)

/** No more decimals than the figure has. */
export function plainFigure(x: number): string {
  return figure(x, Math.min(4, String(x).split('.')[1]?.length ?? 0))
}

const QUARTER = 0.25
const FRACTION_WIDTH = ' 3/4'.length

/** Depth up to the next 1/4 in, as the tape reads. */
export const depth = (inches: number): string => asTape(roundUp(inches, QUARTER), 4)

/** The same for a column: whole inches stand under whole inches. */
export function depthCell(inches: number): string {
  const text = depth(inches), [whole = '', part] = text.split(' ')
  return part !== undefined ? text : whole.includes('/') ? ` ${whole}` : whole + ' '.repeat(FRACTION_WIDTH)
}

/** The hyphen is the promise of a listed row, the space is arithmetic. */
export const rowR = (r: number, listed: boolean): string => `R${listed ? '-' : NB}${plainFigure(r)}`

/** Worked or averaged R. */
export const workedR = (r: number): string => `R${NB}${figure(r, 1)}`

/** Holds a figure and its unit on one line; printed as a plain space. */
export const NB = '\u00a0'

export const counted = (n: number, one: string, many = `${one}s`): string => `${n}${NB}${n === 1 ? one : many}`

/** What the open gates of a house shut, in words; mends are ours. */
export const shutWords = ({ stop, hold, mend }: Readonly<Record<'stop' | 'hold' | 'mend', number>>): { readonly shut: string[]; readonly ours: string[] } => ({
  shut: [...stop > 0 ? [`${counted(stop, 'stop')} shut`] : [], ...hold > 0 ? [`${counted(hold, 'hold')} shut`] : []], ours: mend > 0 ? [`${counted(mend, 'mend')} ours`] : [],
})

/** Steps as a crew calls them out: 1-3, 5, 7-9. */
export function stepRanges(steps: readonly number[]): string {
  const sorted = [...new Set(steps)].sort((a, b) => a - b)
  const runs: [number, number][] = []
  for (const s of sorted) {
    const last = runs.at(-1)
    if (last && s === last[1] + 1) last[1] = s; else runs.push([s, s])
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`)).join(', ')
}

const unitWords = new Map([['ft2', 'ft²'], ['in2', 'in²'], ['ft3', 'ft³'], ['lb/ft2', 'lb/ft²'], ['lb/ft3', 'lb/ft³'], ['ft2/bag', 'ft²/bag'], ['pct', '%']])
export const unitWord = (unit: string): string => unitWords.get(unit) ?? unit

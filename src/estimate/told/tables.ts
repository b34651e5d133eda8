// Every shipped table as plain figures, each with unit, source and how it was obtained, and what uses it.
import { formulas } from '../../books/formulas.ts'
import { valueIds, workNames } from '../../books/names.ts'
import { byText } from '../../findings/finding.ts'
import { allTables, type AnyTable } from '../../scope/tables.ts'
import { isFields } from './named.ts'
import type { MemoryOut, SourceOut, TableFigure, TableOut, Uses } from './tables-output.ts'

/** Not figures: words that say where a row comes from, or what it is called. */
const BESIDE = new Set(['source', 'obtained'])
const COMPANY = 'company default'
const FORMULAS = 'formulas', VALUES = 'starting-values', RATES = 'starting-rates'
/** A last step has no end. */
const shown = (v: unknown): number | string => (v === Infinity ? 'no end' : typeof v === 'number' ? v : Array.isArray(v) ? v.join('; ') : String(v))

/** The columns that name a row: its words, and as many figures more as it takes to tell the rows apart. */
function keysOf(t: AnyTable): string[] {
  const words = [...new Set(t.rows.flatMap(r => Object.entries(r).filter(([k, v]) => typeof v === 'string' && !BESIDE.has(k) && k !== 'title').map(([k]) => k)))], figures = Object.keys(t.units).filter(k => t.rows.every(r => typeof r[k] === 'number'))
  const apart = (keys: readonly string[]): boolean => new Set(t.rows.map(r => keys.map(k => r[k]).join('|'))).size === t.rows.length
  for (let n = 1; n <= words.length; n++) if (apart(words.slice(0, n))) return words.slice(0, n)
  for (let n = 1; n <= figures.length; n++) if (apart([...words.slice(0, 1), ...figures.slice(0, n)])) return [...words.slice(0, 1), ...figures.slice(0, n)]
  return [...words, ...figures]
}
const rowName = (r: Record<string, unknown>, keys: readonly string[]): string => keys.map(k => (typeof r[k] === 'number' ? `${k} ${shown(r[k])}` : String(r[k] ?? ''))).join(', ')

function tableOut(t: AnyTable, uses: Uses): TableOut {
  const keys = keysOf(t), figures = t.rows.flatMap(r => {
    const row = rowName(r, keys), origin = { source: r.source ?? t.source, obtained: r.obtained ?? t.obtained }
    return Object.entries(r).filter(([k, v]) => !BESIDE.has(k) && !keys.includes(k) && v !== undefined).flatMap(([figure, v]): TableFigure[] => isFields(v)
      ? Object.entries(v).map(([under, x]) => ({ row, figure: `${figure}.${under}`, value: shown(x), unit: t.units[figure] ?? '', ...origin }))
      : [{ row, figure, value: shown(v), unit: typeof v === 'number' ? t.units[figure] ?? '' : '', ...origin }])
  })
  return { name: t.name, title: t.title, source: t.source, obtained: t.obtained, ...(t.use === undefined ? {} : { use: t.use }), usedBy: uses.tables[t.name] ?? { formulas: [], figures: [] }, rows: t.rows.length, figures }
}

/** How sure, where a text says that it is held from memory. */
const memoryIn = (text: string): string | undefined => /from memory(?:, (high|medium|low))?/.exec(text)?.[0]

/** Starting values and rates, as the shipped examples asked for them; a name that no example asks for has no figure here. */
function startingOut(name: string, title: string, ids: readonly string[], of: (id: string) => string, uses: Uses): TableOut {
  const rows = [...ids].sort(byText).map(id => ({ id, at: uses.starting[of(id)] }))
  return {
    name, title, source: 'stands where it is used; a company file replaces it', obtained: COMPANY, usedBy: { formulas: [], figures: [...new Set(rows.flatMap(r => r.at?.figures ?? []))].sort(byText) }, rows: rows.length,
    figures: rows.map(({ id, at }): TableFigure => at ? { row: id, figure: at.what, value: at.value, unit: at.unit, source: at.why, obtained: memoryIn(at.why) ?? COMPANY } : { row: id, figure: 'asked for by no example', value: '', unit: '', source: '', obtained: COMPANY }),
  }
}

function formulasOut(uses: Uses): TableOut {
  const figures = [...formulas].sort((a, b) => byText(a.id, b.id)).flatMap(f => {
    const origin = { source: f.source, obtained: memoryIn(f.source) ?? 'published or derived, as its source says' }
    return [{ row: f.id, figure: 'words', value: f.says, unit: f.gives, ...origin }, { row: f.id, figure: 'symbols', value: f.symbols, unit: f.gives, ...origin }]
  })
  return { name: FORMULAS, title: 'Formulas in words and symbols', source: 'each its own', obtained: 'as the source of each says', usedBy: { formulas: [], figures: [...new Set(Object.values(uses.formulas).flat())].sort(byText) }, rows: formulas.length, figures }
}

/** Every table: the shipped ones by name, then formulas, starting rates and starting values. */
export const tablesOut = (uses: Uses): TableOut[] => [
  ...allTables().map(t => tableOut(t, uses)), formulasOut(uses),
  startingOut(RATES, 'Starting rates: person-hours for one of each kind of work', workNames, id => `rate.${id}`, uses), startingOut(VALUES, 'Starting values', valueIds, id => id, uses),
].sort((a, b) => byText(a.name, b.name))

/** Figures held from memory, each with how sure: a reader with the paper standards can check them one by one. A row without figures is told by its first words. */
export const fromMemory = (tables: readonly TableOut[]): MemoryOut[] => tables.flatMap(t => {
  const rows = new Set(t.figures.filter(f => typeof f.value === 'number').map(f => f.row)), told = new Set<string>()
  return t.figures.filter(f => f.obtained.startsWith('from memory') && (typeof f.value === 'number' || !rows.has(f.row) && !told.has(f.row) && told.add(f.row)))
    .map(f => ({ table: t.name, ...f, howSure: /high|medium|low/.exec(f.obtained)?.[0] ?? 'not said' }))
})

/** Each document, and what rests on it. */
export function bibliography(tables: readonly TableOut[]): SourceOut[] {
  const by = new Map<string, { obtained: Set<string>; tables: Set<string>; formulas: Set<string>; values: Set<string> }>()
  for (const t of tables) for (const f of t.figures) {
    if (f.source === '') continue
    const s = by.get(f.source) ?? { obtained: new Set(), tables: new Set(), formulas: new Set(), values: new Set() }
    by.set(f.source, s)
    s.obtained.add(f.obtained)
    if (t.name === FORMULAS) s.formulas.add(f.row)
    else if (t.name === VALUES || t.name === RATES) s.values.add(f.row)
    else s.tables.add(t.name)
  }
  const sorted = (s: ReadonlySet<string>): string[] => [...s].sort(byText)
  return [...by].sort(([a], [b]) => byText(a, b)).map(([source, s]) => ({ source, obtained: sorted(s.obtained), tables: sorted(s.tables), formulas: sorted(s.formulas), values: sorted(s.values) }))
}

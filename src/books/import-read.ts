// From the bytes of a mapping and of a supplier’s list to their data, with the place of every cell.
import { parse, CsvError } from 'csv-parse/sync'
import { readsImport, validateImport } from '../../dist/import-validators.mjs'
import { sorted, type Finding, type Places, type Span } from '../findings/finding.ts'
import { SourcePlaces } from '../findings/places.ts'
import { few, readFormat, type Reader } from '../files/read.ts'
import { decodeText } from '../files/yaml.ts'
import { IMPORT_FORMAT, importFormat, type ImportMap } from './import-format.ts'

const reader: Reader = {
  kind: { format: IMPORT_FORMAT, name: 'a mapping', holds: 'which column is which key of a price book', start: 'begin with the example in README.md', one: ['a file is one mapping', 'put the second in a file of its own'], mostBytes: 100_000, usual: 'some hundred' },
  validate: validateImport, reads: readsImport, schema: importFormat,
}

export type MapRead = { readonly findings: readonly Finding[]; readonly places: Places; readonly source: string } & ({ readonly ok: true; readonly map: ImportMap } | { readonly ok: false })

/** Reads a mapping. */
export function readImport(bytes: Uint8Array | string): MapRead {
  const read = readFormat<ImportMap>(bytes, reader)
  if (!read.ok) return read
  const { data: map, places, source } = read, findings: Finding[] = [], match = map.match ?? 'item'
  const say = (code: string, path: string, says: string, why: string, mend: string, more: Partial<Finding> = {}): void => { findings.push({ code, severity: 'error', path, says, why, mend, ...more }) }
  if (map.columns[match] === undefined) say('match-without-column', '/columns', `match: ${match}`, `no column says the ${match} of a row`, `write ${match}: and the heading of its column under columns`, { on: 'key' })
  for (const [i, b] of (map.breaks ?? []).entries()) if (i > 0 && b.atLeast <= map.breaks![i - 1]!.atLeast) say('breaks-out-of-order', `/breaks/${i}/atLeast`, `atLeast: ${b.atLeast}`, `the break before begins at ${map.breaks![i - 1]!.atLeast}`, 'write the breaks from few to many, each once')
  if (map.unlisted === 'add') for (const key of ['item', 'name', 'price', 'pack'] as const) if (map.columns[key] === undefined) say('add-without-column', '/unlisted', 'unlisted: add', `a new product needs its ${key}`, `write ${key}: and the heading of its column under columns`)
  return findings.length > 0 ? { ok: false, findings: sorted(findings, places), places, source } : { ok: true, map, findings, places, source }
}

/** One cell of the list. */
export interface Cell { readonly text: string; span(): Span }
export interface ListRow { readonly cells: ReadonlyMap<string, Cell>; /** The whole row. */ span(): Span }
export type ListRead = { readonly places: Places; readonly source: string; readonly findings: readonly Finding[] } & ({ readonly ok: true; readonly headings: readonly Cell[]; readonly rows: readonly ListRow[] } | { readonly ok: false })

const SIGNS = { comma: ',', semicolon: ';', tab: '\t' } as const
const MOST_BYTES = 50_000_000

interface Raw { readonly text: string; readonly start: number; readonly end: number }

/** Reads a supplier’s list: RFC 4180 with headings in its first row. Empty lines are none. */
export function readList(bytes: Uint8Array, { delimiter = 'comma' }: ImportMap): ListRead {
  const kind = { name: 'a list', holds: 'a table', start: 'save it as CSV, UTF-8', format: 'CSV', one: ['', ''] as const, mostBytes: MOST_BYTES, usual: 'some hundred thousand' }
  const { source, wrong } = decodeText(bytes, kind), places = new SourcePlaces(source)
  const refused = (...findings: Finding[]): ListRead => ({ ok: false, places, source, findings: few(findings, places) })
  if (wrong) return refused(wrong)
  const error = (code: string, says: string, why: string, mend: string, span: Span): Finding => ({ code, severity: 'error', path: '', says, why, mend, span })
  const utf8 = Buffer.from(source), sign = SIGNS[delimiter]
  const char = (byte: number): number => utf8.subarray(0, byte).toString().length
  const span = (start: number, end: number): Span => places.span([char(start), char(end)])
  let before = 0, table: Raw[][]
  try {
    table = parse(utf8, {
      delimiter: sign, relax_column_count: true, skip_empty_lines: true,
      // Where a field ends is told; it begins behind the delimiter, the first of a row so long before its end as it is written.
      cast: (text, { bytes: end, index, quoting }): unknown => {
        const start = index > 0 ? before + 1 : end - Buffer.byteLength(quoting ? `"${text.replaceAll('"', '""')}"` : text)
        before = end
        return { text: text.trim(), start, end } satisfies Raw
      },
    }) as unknown as Raw[][]
  } catch (thrown) {
    if (!(thrown instanceof CsvError)) throw thrown
    const line = Number((thrown as unknown as { lines?: number }).lines ?? 1), text = source.split('\n')[line - 1] ?? ''
    return refused(thrown.code === 'CSV_QUOTE_NOT_CLOSED' ? error('quote-not-closed', 'a quote that is not closed', 'all behind it would be one cell', 'close it, or double a quote that belongs to the text', { line, column: Math.max(1, text.indexOf('"') + 1), length: 1 })
      : error('quote-in-cell', 'a quote in the middle of a cell', 'a cell with quotes is quoted as a whole, and quotes in it are doubled', 'write "3/4"" board"', { line, column: Math.max(1, text.indexOf('"') + 1), length: 1 }))
  }
  const [head, ...body] = table
  if (!head) return refused(error('list-empty', 'nothing in the list', 'its first row holds the headings', 'export it again', { line: 1, column: 1, length: 1 }))
  const cell = (r: Raw): Cell => ({ text: r.text, span: () => span(r.start, r.end) }), headings = head.map(cell), findings: Finding[] = []
  const rows = body.map((row): ListRow => {
    const whole = (): Span => span(row[0]!.start, row.at(-1)!.end)
    if (row.length !== head.length) findings.push(error('row-of-other-length', `${row.length} ${row.length === 1 ? 'cell' : 'cells'} in the row`, `the first row has ${head.length} headings`, row.length > head.length ? `quote cells that hold the sign ${delimiter === 'tab' ? 'tab' : sign}` : 'write the cells that are missing, empty ones too', whole()))
    return { cells: new Map(row.map((r, i) => [head[i]?.text ?? '', cell(r)])), span: whole }
  })
  return findings.length > 0 ? refused(...findings) : { ok: true, headings, rows, places, source, findings: [] }
}

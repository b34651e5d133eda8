// `prices import`: a supplier’s list into a price book, whole or not at all.
import { importList, type Imported } from '../books/import-list.ts'
import { readImport, readList } from '../books/import-read.ts'
import { productSchema, type PriceBook } from '../books/price-book.ts'
import { readPrices } from '../books/read.ts'
import { priceDiff } from '../estimate/quotes/price-diff.ts'
import { dateFault } from '../files/dates.ts'
import { few } from '../files/read.ts'
import { edited, type Edit } from '../files/yaml-edit.ts'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { renderFinding } from '../findings/render.ts'
import { node, typed, type Value } from '../papers/commented.ts'
import { terminalPriceDiff } from '../papers/price-diff.ts'
import { failed } from './io.ts'
import { exit, type Run } from './run.ts'

export interface ImportOptions { readonly map: string; readonly into: string; readonly dated: string; readonly out?: string; readonly force?: boolean; readonly dryRun?: boolean }

const counted = (n: number, what: string, many = `${what}s`): string => `${n} ${n === 1 ? what : many}`
const named = (items: readonly string[], most = 8): string => `${items.slice(0, most).join(', ')}${items.length > most ? ` and ${items.length - most} more` : ''}`

/** The book as text, with the list in it. */
function withList(source: string, dated: string, { updates, added }: Imported): string {
  const edits: Edit[] = [{ at: [], key: 'dated', text: dated, behind: 'name' }]
  for (const u of updates) for (const [key, value] of Object.entries(u.keys)) edits.push({ at: [u.list, u.index], key, text: typed(value as Value), behind: 'price' })
  return edited(source, edits, added.map(p => ({ to: ['products'], text: typed(p as unknown as Value, node(productSchema())) })))
}

/** Takes a list in. Every fault of it is said at its row, and then nothing is written. */
export async function importPrices(run: Run, file: string, { map: mapFile, into, dated, out = into, force = false, dryRun = false }: ImportOptions): Promise<void> {
  const read = async (name: string): Promise<Uint8Array | undefined> => {
    const bytes = run.io.readFile(name)
    if (!failed(bytes)) return bytes.bytes
    await run.fail(exit.unreadable, `could not read ${name}: ${bytes.message}`)
    return undefined
  }
  const tell = async (findings: readonly Finding[], places: Places, source: string, name: string): Promise<void> => {
    if (findings.some(f => f.severity === 'error')) run.met(exit.findings)
    for (const f of few(sorted(findings, places), places)) await run.say(renderFinding(f, places, source, name))
  }
  const refuse = async (): Promise<void> => { await run.say(`${out}: nothing written\n`) }
  const fault = dateFault(dated)
  if (fault) { await run.fail(exit.wrongUse, `--dated ${dated}: ${fault.why}`); return }
  const [mapBytes, bookBytes, listBytes] = [await read(mapFile), await read(into), await read(file)]
  if (!mapBytes || !bookBytes || !listBytes) return
  const mapping = readImport(mapBytes), book = readPrices(bookBytes)
  if (!mapping.ok) await tell(mapping.findings, mapping.places, mapping.source, mapFile)
  if (!book.ok) await tell(book.findings.filter(f => f.severity === 'error'), book.places, book.source, into)
  if (!mapping.ok || !book.ok) { await refuse(); return }
  if (dated < book.book.dated && !force) {
    await tell([{ code: 'list-older-than-book', severity: 'error', path: '/dated', says: `a list of ${dated}`, why: `the book holds prices of ${book.book.dated}, which are newer`, mend: 'import the supplier’s newest list; or take the older prices all the same with --force' }], book.places, book.source, into)
    await refuse()
    return
  }
  const list = readList(listBytes, mapping.map)
  if (!list.ok) { await tell(list.findings, list.places, list.source, file); await refuse(); return }
  const findings: Finding[] = [], mapFindings: Finding[] = [], imported = importList(book.book, mapping.map, list.headings, list.rows, findings, mapFindings)
  await tell(mapFindings, mapping.places, mapping.source, mapFile)
  await tell(findings, list.places, list.source, file)
  if (findings.length > 0 || mapFindings.length > 0) { await refuse(); return }
  const text = withList(book.source, dated, imported), after = readPrices(text)
  // What no single row shows: the book as a whole has to hold.
  if (!after.ok) { await tell(after.findings.filter(f => f.severity === 'error'), after.places, after.source, `${out} as it would be`); await refuse(); return }
  await run.print(terminalPriceDiff(priceDiff(book.book, after.book as PriceBook), run.look()))
  const rows = new Set(imported.updates.map(u => book.book[u.list][u.index]!.item)).size
  const sum = [counted(rows, 'product changed', 'products changed'), `${imported.unchanged} as they were`, imported.added.length > 0 && `${imported.added.length} added`, imported.skipped > 0 && `${counted(imported.skipped, 'row')} of other items skipped`].filter(Boolean).join(', ')
  if (imported.notListed.length > 0) await run.say(`not in the list, and as they were: ${named(imported.notListed)}\n`)
  if (dryRun) { await run.say(`${sum}; nothing written (--dry-run)\n`); return }
  const refused = run.io.writeFile(out, text, { force: force || out === into })
  if (failed(refused)) { await run.fail(exit.unreadable, `could not write ${out}: ${refused.message}${refused.failure === 'exists' ? '; --force writes over it' : ''}; what was there is kept`); return }
  await run.say(`${sum}; wrote ${out}\n`)
}

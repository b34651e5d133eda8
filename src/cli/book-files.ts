// Price books and company files by the names that the command line or a job file gives them; each is read once.
import { posix } from 'node:path'
import type { CompanyFile } from '../books/company-file.ts'
import { shelf, type Shelf } from '../books/open.ts'
import type { PriceBook } from '../books/price-book.ts'
import { readCompany, readPrices, type BookRead } from '../books/read.ts'
import type { Finding } from '../findings/finding.ts'
import { renderFinding } from '../findings/render.ts'
import { failed, type Io } from './io.ts'
import { exit, type Exit, type Run } from './run.ts'

/** The names of files; what is not named is the embedded one. Several price books lie side by side. */
export interface BookFiles { readonly prices?: string | readonly string[]; readonly company?: string }
/** As a job names them. */
export interface JobBooks { readonly prices?: string; readonly suppliers?: readonly string[]; readonly company?: string }

type Key = keyof BookFiles
interface Books { readonly prices: PriceBook; readonly company: CompanyFile }

/** A book that cannot be used. */
export interface Trouble { readonly key: Key; readonly file: string; readonly code: Exit; readonly why: string; readonly report?: string }

const readers: { readonly [K in Key]: (bytes: Uint8Array) => BookRead<Books[K]> } = { prices: readPrices, company: readCompany }

const from = (path: string, job: string): string => (posix.isAbsolute(path) || /^([A-Za-z]:|\\\\)/.test(path) ? path : posix.join(job === '-' ? '.' : posix.dirname(job), path))

/** Paths in a job file go from its own folder, so that a folder can be moved as a whole. */
function beside({ prices, suppliers = [], company }: JobBooks, job: string): BookFiles {
  const all = [...prices === undefined ? [] : [prices], ...suppliers].map(p => from(p, job))
  return { ...(all.length === 0 ? {} : { prices: all }), ...(company === undefined ? {} : { company: from(company, job) }) }
}

/** A book's trouble as a finding of the job file that names it. */
function findingOf({ key, file, code, why }: Trouble, { suppliers = [] }: JobBooks = {}, job = ''): Finding {
  const nth = key === 'prices' ? suppliers.findIndex(s => from(s, job) === file) : -1
  return {
    code: code === exit.unreadable ? 'book-unread' : 'book-faulty', severity: 'error', path: nth === -1 ? `/books/${key}` : `/books/suppliers/${nth}`, says: `${key}: ${file}`, why,
    mend: code === exit.unreadable ? 'write the path from the folder of the job file' : `see lidwork ${key} check ${file}`,
  }
}

export async function tell(run: Run, troubles: readonly Trouble[]): Promise<void> {
  for (const t of troubles) {
    if (t.report !== undefined) { run.met(t.code); await run.say(t.report) } else await run.fail(t.code, `could not read ${t.file}: ${t.why}`)
  }
}

const counted = (n: number): string => `${n} ${n === 1 ? 'error' : 'errors'} in it`

/** Reads each book once, however many jobs name it. */
export function desk(io: Io, embedded: Books, demo: Shelf) {
  const read = new Map<string, Trouble | PriceBook | CompanyFile>(), shelves = new Map<string, Shelf>()
  function book<K extends Key>(key: K, file: string | undefined): Books[K] | Trouble {
    if (file === undefined) return embedded[key]
    const name = `${key}\n${file}`
    const made = read.get(name) ?? opened(key, file)
    read.set(name, made)
    return made as Books[K] | Trouble
  }
  function opened<K extends Key>(key: K, file: string): Books[K] | Trouble {
    const bytes = io.readFile(file)
    if (failed(bytes)) return { key, file, code: exit.unreadable, why: bytes.message }
    const found = readers[key](bytes.bytes)
    if (found.ok) return found.book
    return { key, file, code: exit.findings, why: counted(found.findings.filter(f => f.severity === 'error').length), report: found.findings.map(f => renderFinding(f, found.places, found.source, file)).join('') }
  }
  /** The price books named, in their order, each once. */
  const pricesOf = ({ prices }: BookFiles): readonly (PriceBook | Trouble)[] => (prices === undefined ? [embedded.prices] : [...new Set(typeof prices === 'string' ? [prices] : prices)].map(file => book('prices', file)))
  const isTrouble = (b: PriceBook | CompanyFile | Trouble): b is Trouble => 'key' in b
  return {
    beside, findingOf, tell,
    /** What is wrong with these files, each said once. */
    troublesOf(files: readonly BookFiles[]): readonly Trouble[] {
      return [...new Set(files.flatMap(f => [...pricesOf(f), book('company', f.company)]).filter(isTrouble))]
    },
    shelfOf(files: BookFiles): { readonly shelf: Shelf } | { readonly troubles: readonly Trouble[] } {
      const prices = pricesOf(files), company = book('company', files.company), troubles = [...prices, company].filter(isTrouble), books = prices.filter((b): b is PriceBook => !isTrouble(b))
      if (troubles.length > 0 || isTrouble(company)) return { troubles }
      if (files.prices === undefined && files.company === undefined) return { shelf: demo }
      const name = JSON.stringify([files.prices, files.company])
      const made = shelves.get(name) ?? shelf(books, company)
      shelves.set(name, made)
      return { shelf: made }
    },
  }
}

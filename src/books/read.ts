// From the bytes of a price book or a company file to its data, in three gates: YAML, the format, what only the whole book shows.
import { readsCompany, readsPrices, validateCompany, validatePrices } from '../../dist/book-validators.mjs'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { few, readFormat, type Reader } from '../files/read.ts'
import { companyChecks, priceChecks } from './checks.ts'
import type { CompanyFile } from './company-file.ts'
import { COMPANY_FORMAT, PRICES_FORMAT } from './format-names.ts'
import { companyFormat, pricesFormat } from './formats.ts'
import type { PriceBook } from './price-book.ts'

/** A book as it was read; its findings may be warnings. */
export type BookRead<B> = { readonly findings: readonly Finding[]; readonly places: Places; readonly source: string } & ({ readonly ok: true; readonly book: B } | { readonly ok: false })

const prices: Reader = {
  kind: { format: PRICES_FORMAT, name: 'a price book', holds: 'products, their prices and the charts of their labels', start: 'begin with the file that lidwork prices new prices.yaml writes',
    one: ['a file is one price book', 'put the second in a file of its own'], mostBytes: 8_000_000, usual: 'some ten thousand' },
  validate: validatePrices, reads: readsPrices, schema: pricesFormat,
}
const company: Reader = {
  kind: { format: COMPANY_FORMAT, name: 'a company file', holds: 'what one company pays, charges and decides', start: 'begin with the file that lidwork company new company.yaml writes',
    one: ['a file is one company', 'put the second in a file of its own'], mostBytes: 1_000_000, usual: 'some thousand' },
  validate: validateCompany, reads: readsCompany, schema: companyFormat,
}

function read<B>(bytes: Uint8Array | string, reader: Reader, checks: (book: B) => Finding[]): BookRead<B> {
  const found = readFormat<B>(bytes, reader)
  if (!found.ok) return found
  const { data, places, source } = found
  const all = sorted(checks(data), places), findings = few(all, places)
  return all.some(f => f.severity === 'error') ? { ok: false, findings, places, source } : { ok: true, book: data, findings, places, source }
}

/** Reads a price book. */
export const readPrices = (bytes: Uint8Array | string): BookRead<PriceBook> => read(bytes, prices, priceChecks)
/** Reads a company file. */
export const readCompany = (bytes: Uint8Array | string): BookRead<CompanyFile> => read(bytes, company, companyChecks)

// `prices diff`: two price books, and what their difference moves in jobs at hand.
import type { PriceBook } from '../books/price-book.ts'
import { readPrices } from '../books/read.ts'
import type { MaterialLine } from '../estimate/money/bill.ts'
import { priceDiff } from '../estimate/quotes/price-diff.ts'
import { renderFinding } from '../findings/render.ts'
import { BOM } from '../papers/csv.ts'
import { csvPriceDiff, terminalPriceDiff } from '../papers/price-diff.ts'
import { inputs } from './inputs.ts'
import { failed } from './io.ts'
import { jobOpener, reportOf } from './jobs.ts'
import { exit, type Run } from './run.ts'

export interface DiffOptions { readonly jobs?: readonly string[]; readonly company?: string; readonly json?: boolean; readonly csv?: boolean; readonly bom?: boolean }

/** A price book by its file, or why there is none, which is said. */
export async function bookOf(run: Run, file: string): Promise<PriceBook | undefined> {
  const bytes = run.io.readFile(file)
  if (failed(bytes)) { await run.fail(exit.unreadable, `could not read ${file}: ${bytes.message}`); return undefined }
  const read = readPrices(bytes.bytes)
  if (read.ok) return read.book
  run.met(exit.findings)
  for (const f of read.findings) if (f.severity === 'error') await run.say(renderFinding(f, read.places, read.source, file))
  return undefined
}

/** Prints the difference; a job that cannot be planned is said, and the others count. */
export async function diff(run: Run, oldFile: string, newFile: string, { jobs, company, json = false, csv = false, bom = false }: DiffOptions): Promise<void> {
  const old = await bookOf(run, oldFile), now = await bookOf(run, newFile)
  if (!old || !now) return
  let planned: (readonly MaterialLine[])[] | undefined
  if (jobs !== undefined) {
    const open = await jobOpener(run, { prices: [oldFile], ...(company === undefined ? {} : { company }) })
    if (!open) return
    planned = []
    for (const input of await inputs(run, jobs)) await run.guard(input.file, async () => {
      const bytes = await input.read()
      if (bytes === undefined) return
      const opened = await open(bytes, input.file)
      if (opened.sound) planned!.push(opened.estimate.materials)
      else { run.met(exit.findings); await run.say(reportOf(opened)) }
    })
  }
  const out = priceDiff(old, now, planned)
  if (json) await run.print(`${JSON.stringify(out, undefined, 2)}\n`)
  else if (csv) await run.print((bom ? BOM : '') + csvPriceDiff(out))
  else await run.print(terminalPriceDiff(out, run.look()))
}

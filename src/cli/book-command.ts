// `prices` and `company`: a file of the company's own, to begin with and to check.
import type { Command } from 'commander'
import type { Run } from './run.ts'
import { exit } from './run.ts'
import { failed } from './io.ts'

interface Book { readonly name: 'prices' | 'company'; readonly what: string; readonly check: string; /** What the command does beside, for its line in the help. */ readonly more?: string }

/** Adds a command with `new` and `check`. */
export function addBook(root: Command, run: Run, { name, what, check, more = '' }: Book): Command {
  const book = root.command(name).description(`${what}: new writes one, check says what is wrong in one${more}`)
  book.command('new')
    .description(`write ${what} with the built-in figures and a comment beside every key, to write over`)
    .argument('[file]', 'where to; without it the text goes to the output')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', `\nExample:\n  lidwork ${name} new ${name}.yaml\n`)
    .action(async (file: string | undefined, { force = false }: { force?: boolean }) => {
      const { BOOK_SCHEMAS, newCompany, newPrices } = await import('../papers/new-books.ts')
      const { schemaText } = await import('./schemas.ts')
      const { writeNew } = await import('./write-new.ts')
      await writeNew(run, file, force, {
        text: name === 'prices' ? newPrices() : newCompany(), schema: { beside: BOOK_SCHEMAS[name], text: schemaText(name)! },
        next: `write over it, then lidwork ${name} check ${file ?? ''}; jobs take it by books: {${name}: …} in the file, or by --${name} ${file ?? ''}`,
      })
    })
  book.command('check')
    .description(check)
    .argument('<files...>', `the files`)
    .addHelpText('after', `\nExample:\n  lidwork ${name} check ${name}.yaml\n`)
    .action(async (files: string[]) => {
      const { readCompany, readPrices } = await import('../books/read.ts')
      const { renderFinding } = await import('../findings/render.ts')
      for (const file of files) await run.guard(file, async () => {
        const bytes = run.io.readFile(file)
        if (failed(bytes)) { await run.fail(exit.unreadable, `could not read ${file}: ${bytes.message}`); return }
        const read = name === 'prices' ? readPrices(bytes.bytes) : readCompany(bytes.bytes)
        if (!read.ok) run.met(exit.findings)
        for (const f of read.findings) await run.print(renderFinding(f, read.places, read.source, file))
        await run.say(`${file}: ${read.findings.length === 0 ? 'nothing found' : `${read.findings.length} found`}; ${read.ok ? 'it can be used' : 'no job can be priced with it'}\n`)
      })
    })
  return book
}

import type { Command } from 'commander'
import { addBook } from '../book-command.ts'
import { JOB_ENDING } from '../inputs.ts'
import type { DiffOptions } from '../prices-diff.ts'
import type { ImportOptions } from '../prices-import.ts'
import type { Run } from '../run.ts'

/** `prices`: the price book. */
export function addPrices(root: Command, run: Run): void {
  const prices = addBook(root, run, { name: 'prices', what: 'a price book', more: ', diff compares two, import takes a supplier’s list in', check: 'what is wrong in price books: keys, roles, names that stand twice, charts that do not multiply out' })
  prices.command('diff')
    .description('what came, went and changed between two price books, those items first that move most')
    .argument('<old>', 'the price book before')
    .argument('<new>', 'the price book now')
    .option('--jobs <paths...>', `jobs whose material is priced with both; folders are searched for *${JOB_ENDING}`)
    .option('--company <file>', 'a company file for these jobs, in place of the ones they name')
    .option('--json', 'for other programs')
    .addOption(root.createOption('--csv', 'an item to a line, for spreadsheets').conflicts('json'))
    .option('--bom', 'begin the --csv with a byte order mark')
    .addHelpText('after', '\nExamples:\n  lidwork prices diff prices-2025.yaml prices-2026.yaml\n  lidwork prices diff prices-2025.yaml prices-2026.yaml --jobs open-quotes\n')
    .action(async (old: string, now: string, options: DiffOptions) => { await (await import('../prices-diff.ts')).diff(run, old, now, options) })
  prices.command('import')
    .description('a supplier’s list (CSV) into a price book, its columns by a mapping: every row is right, or nothing is written')
    .argument('<file>', 'the list')
    .requiredOption('--map <file>', 'the mapping: which column is which key')
    .requiredOption('--into <file>', 'the price book')
    .requiredOption('--dated <date>', 'the day of the list, as 2026-04-01')
    .option('--out <file>', 'write the book to another file')
    .option('--force', 'write over that file, and take a list that is older than the book')
    .option('--dry-run', 'say what would change, and write nothing')
    .addHelpText('after', '\nExample:\n  lidwork prices import list.csv --map supply.import.yaml --into prices.yaml --dated 2026-04-01\n')
    .action(async (file: string, options: ImportOptions) => { await (await import('../prices-import.ts')).importPrices(run, file, options) })
}

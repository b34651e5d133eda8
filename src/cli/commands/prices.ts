import type { Command } from 'commander'
import { addBook } from '../book-command.ts'
import type { Run } from '../run.ts'

/** `prices`: the price book. */
export const addPrices = (root: Command, run: Run): void => addBook(root, run, { name: 'prices', what: 'a price book', check: 'what is wrong in price books: keys, roles, names that stand twice, charts that do not multiply out' })

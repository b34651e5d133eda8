import type { Command } from 'commander'
import { addBook } from '../book-command.ts'
import type { Run } from '../run.ts'

/** `company`: the company file. */
export function addCompany(root: Command, run: Run): void { addBook(root, run, { name: 'company', what: 'a company file', check: 'what is wrong in company files: keys, figures, names that stand twice' }) }

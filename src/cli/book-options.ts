import type { Command } from 'commander'

/** The options of every command that opens jobs. */
export const bookOptions = (command: Command): Command => command
  .option('--prices <file>', 'a price book, in place of the one the job names and of the built-in one')
  .option('--company <file>', 'a company file, likewise')

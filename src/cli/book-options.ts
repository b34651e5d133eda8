import type { Command } from 'commander'

const more = (file: string, before: readonly string[] = []): readonly string[] => [...before, file]

/** The options of every command that opens jobs. */
export const bookOptions = (command: Command): Command => command
  .option('--prices <file>', 'a price book, in place of the one the job names and of the built-in one; given more than once, those of several suppliers side by side', more)
  .option('--company <file>', 'a company file, likewise')

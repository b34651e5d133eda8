import type { Command } from 'commander'
import { exit, type Run } from '../run.ts'

/** `schema`: a file format as JSON Schema, for editors and other programs. */
export function addSchema(root: Command, run: Run): void {
  root.command('schema')
    .description('print the JSON Schema of a file format')
    .argument('<name>', 'the format: job, prices, company, closeout or import, which people write; estimate, explain, options, reprice, reprice-job, as-built, learned, prices-diff, check, tables or verify, which the program does')
    .addHelpText('after', '\nExample:\n  lidwork schema job > lidwork-job.schema.json\n')
    .action(async (name: string) => {
      const { schemaNames, schemaText } = await import('../schemas.ts')
      const text = schemaText(name)
      if (text !== undefined) { await run.print(text); return }
      const { nearest } = await import('../../findings/suggest.ts')
      const meant = nearest(name, schemaNames)
      await run.fail(exit.wrongUse, `there is no schema ${name}${meant === undefined ? '' : `; did you mean ${meant}?`}${meant === undefined ? '.' : ''} The schemas: ${schemaNames.join(', ')}`)
    })
}

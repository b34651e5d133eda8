import type { Command } from 'commander'
import { JOB_ENDING } from '../inputs.ts'
import type { Run } from '../run.ts'

/** `new`: a commented job file, and the schema beside it that editors read. */
export function addNew(root: Command, run: Run): void {
  root.command('new')
    .description('write a commented job file of an invented house, to write over')
    .argument('[file]', `where to; without it the text goes to the output. A name in ${JOB_ENDING} is found when a folder is searched`)
    .option('--force', 'write over a file that is there')
    .addHelpText('after', `\nExamples:\n  lidwork new jobs/quince-lane${JOB_ENDING}\n  lidwork new > house${JOB_ENDING}\n`)
    .action(async (file: string | undefined, { force = false }: { force?: boolean }) => {
      const { newJob, SCHEMA_BESIDE } = await import('../../papers/new-job.ts')
      const { schemaText } = await import('../schemas.ts')
      const { writeNew } = await import('../write-new.ts')
      await writeNew(run, file, force, { text: newJob(), schema: { beside: SCHEMA_BESIDE, text: schemaText('job')! }, next: `write over the invented house, then lidwork check ${file ?? ''}` })
    })
}

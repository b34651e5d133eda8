import type { Command } from 'commander'
import { failed } from '../io.ts'
import { JOB_ENDING } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

/** `new`: a commented job file, and the schema beside it that editors read. */
export function addNew(root: Command, run: Run): void {
  root.command('new')
    .description('write a commented job file of an invented house, to write over')
    .argument('[file]', `where to; without it the text goes to the output. A name in ${JOB_ENDING} is found when a folder is searched`)
    .option('--force', 'write over a file that is there')
    .addHelpText('after', `\nExamples:\n  lidwork new jobs/quince-lane${JOB_ENDING}\n  lidwork new > house${JOB_ENDING}\n`)
    .action(async (file: string | undefined, { force = false }: { force?: boolean }) => {
      const { newJob, SCHEMA_BESIDE } = await import('../../papers/new-job.ts')
      if (file === undefined || file === '-') { await run.print(newJob()); return }
      const refused = run.io.writeFile(file, newJob(), { force })
      if (failed(refused)) {
        await run.fail(exit.unreadable, `could not write ${file}: ${refused.message}${refused.failure === 'exists' ? '; --force writes over it' : ''}`)
        return
      }
      await run.say(`wrote ${file}\n`)
      const { schemaText } = await import('../schemas.ts')
      const beside = file.replace(/[^/\\]*$/, SCHEMA_BESIDE)
      const kept = run.io.writeFile(beside, schemaText('job')!)
      if (!failed(kept)) await run.say(`wrote ${beside}, which editors read to help and to check\n`)
      else if (kept.failure !== 'exists') await run.fail(exit.unreadable, `could not write ${beside}: ${kept.message}`)
      await run.say(`next: write over the invented house, then lidwork check ${file}\n`)
    })
}

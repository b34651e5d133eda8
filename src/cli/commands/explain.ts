import type { Command } from 'commander'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

/** `explain`: how one figure of an estimate came about. */
export function addExplain(root: Command, run: Run): void {
  bookOptions(root.command('explain')
    .description('how a figure came about: its formula, and what went into it')
    .argument('<file>', 'a job file; - reads what is piped in')
    .argument('[figure]', 'a figure of the estimate, as list.id.name or object.name; without one, all that can be asked'))
    .addHelpText('after', '\nExamples:\n  lidwork explain quince-lane.job.yaml areas.main.bags\n  lidwork explain quince-lane.job.yaml price.totalCents\n')
    .action(async (word: string, figure: string | undefined, books: BookFiles) => {
      const { jobOpener, lookup, reportOf } = await import('../jobs.ts')
      const { explainFigure, listFigures } = await import('../../papers/explain.ts')
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      for (const input of await inputs(run, [word])) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        const opened = await openJob(bytes, input.file)
        if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
        if (figure === undefined) { await run.print(listFigures(opened.estimate)); return }
        const told = explainFigure(opened.estimate, opened.job, figure, lookup(opened))
        if (told.ok) await run.print(told.text)
        else await run.fail(exit.wrongUse, `the estimate has no figure ${figure}${told.candidates.length === 0 ? '' : `; near it: ${told.candidates.join(', ')}`}`)
      })
    })
}

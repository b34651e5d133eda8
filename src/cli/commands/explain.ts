import type { Command } from 'commander'
import type { ExplainOut } from '../../estimate/told/told-output.ts'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

interface Options extends BookFiles { readonly deep?: boolean; readonly json?: boolean }
/** As many names as are read at a glance. */
const NEAR = 12
/** Lines longer than this are not followed to their end. */
const WIDEST = 100

/** `explain`: how a figure of an estimate came about. */
/** Figures of `estimate --ranges`. */
const RANGES = /^[$.[\]"'/]*ranges\b/

export function addExplain(root: Command, run: Run): void {
  bookOptions(root.command('explain')
    .description('how a figure came about: its formula, what went into it, from which line, row and source')
    .argument('<file>', 'a job file; - reads what is piped in')
    .argument('[figure]', 'a figure: its path in the estimate, areas.main.bags or areas[0].bags, or a name, bags; without one, all that can be asked')
    .option('--deep', 'all steps below it too, each once')
    .option('--json', 'for other programs, in full precision'))
    .addHelpText('after', '\nExamples:\n  lidwork explain quince-lane.job.yaml areas.main.bags\n  lidwork explain quince-lane.job.yaml total --deep\n  lidwork explain quince-lane.job.yaml\n')
    .action(async (word: string, asked: string | undefined, { deep = false, json = false, ...books }: Options) => {
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { figures, meant } = await import('../../estimate/told/figures.ts')
      const { listed, steps, unitOf } = await import('../../estimate/told/told.ts')
      const { terminalExplained } = await import('../../papers/explain.ts')
      const files = await inputs(run, [word])
      if (files.length > 1) { await run.fail(exit.wrongUse, `explain takes one job file, and in ${word} are ${files.length}`); return }
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      for (const input of files) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        const opened = await openJob(bytes, input.file)
        if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
        const { job, estimate } = opened, figs = figures(estimate, job), means = asked === undefined ? undefined : meant(figs, asked)
        if (means?.is === 'none' && RANGES.test(asked!)) {
          await run.fail(exit.wrongUse, `${asked} is no step of one estimate: each end is a whole one, made anew; lidwork estimate ${input.file} --ranges says what moves it, and how that is joined`)
          return
        }
        if (means?.is === 'none') {
          await run.fail(exit.wrongUse, `the estimate has no figure ${asked}${means.near.length === 0 ? `; lidwork explain ${input.file} lists them` : `; near it: ${means.near.slice(0, NEAR).join(', ')}`}`)
          return
        }
        const look = run.look(), out: ExplainOut = {
          format: 'lidwork-explain/1', job: job.data.job.id, file: input.file, ...(asked === undefined ? {} : { asked }),
          figures: means?.is === 'one' ? [{ path: means.path, value: means.figure.value, unit: unitOf(means.figure) }] : listed(figs, means?.paths),
          steps: means?.is === 'one' ? steps(figs, job, means.path, means.figure, deep) : [],
        }
        await run.print(json ? `${JSON.stringify(out, undefined, 2)}\n` : terminalExplained(out, { ...look, width: Math.min(look.width, WIDEST) }))
      })
    })
}

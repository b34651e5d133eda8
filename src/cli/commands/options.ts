import { InvalidArgumentError, type Command } from 'commander'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

interface Options extends BookFiles { readonly json?: boolean; readonly targets?: readonly number[]; readonly products?: readonly string[] }

const LEAST_R = 10, MOST_R = 100
/** `38,49,60`. */
function rs(text: string): number[] {
  const list = text.split(',').map(t => t.trim().replace(/^R-?/i, ''))
  if (list.some(t => !/^\d+(\.\d+)?$/.test(t) || Number(t) < LEAST_R || Number(t) > MOST_R)) throw new InvalidArgumentError(`Write R values from ${LEAST_R} to ${MOST_R} with commas between: 38,49,60.`)
  return list.map(Number)
}
const names = (text: string): string[] => text.split(',').map(t => t.trim()).filter(t => t !== '')

/** `options`: one house at several targets and products. */
export function addOptions(root: Command, run: Run): void {
  bookOptions(root.command('options')
    .description('the same house at several targets, with each product, and with what may be chosen: price, hours, R, saving, each step over the one before')
    .argument('<file>', 'a job file; - reads what is piped in')
    .option('--targets <r,...>', 'R of the steps; without it those that code editions have asked for', rs)
    .option('--products <item,...>', 'blown products of the price book; without it all', names)
    .option('--json', 'for other programs'))
    .addHelpText('after', '\nExamples:\n  lidwork options quince-lane.job.yaml\n  lidwork options quince-lane.job.yaml --targets 38,44,49 --json\n')
    .action(async (word: string, { json = false, targets, products, ...books }: Options) => {
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { options } = await import('../../estimate/quotes/options.ts')
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      for (const input of await inputs(run, [word])) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        const opened = await openJob(bytes, input.file)
        if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
        const unknown = products?.find(p => opened.estimate.books.blown(p) === undefined)
        if (unknown !== undefined) { await run.fail(exit.wrongUse, `the price book has no blown product ${unknown}; it has ${opened.estimate.books.blownItems.join(', ')}`); return }
        const out = options(opened.job, opened.estimate, opened.estimate.books, { ...(targets ? { targets } : {}), ...(products ? { products } : {}) })
        if (json) await run.print(`${JSON.stringify(out, undefined, 2)}\n`)
        else await run.print((await import('../../papers/options.ts')).terminalOptions(out, run.look()))
      })
    })
}

import type { Command } from 'commander'
import type { Estimate } from '../../estimate/estimate.ts'
import type { RangesOut } from '../../estimate/output.ts'
import type { Job } from '../../job/job.ts'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs, JOB_ENDING } from '../inputs.ts'
import { JobIds } from '../job-ids.ts'
import { exit, harmless, type Run } from '../run.ts'

interface Options extends BookFiles { readonly json?: boolean; readonly ndjson?: boolean; readonly csv?: boolean; readonly bom?: boolean; readonly unitPrices?: boolean; readonly ranges?: boolean }

/** `estimate`: work order, materials and price of each house. */
export function addEstimate(root: Command, run: Run): void {
  bookOptions(root.command('estimate')
    .description('work order, materials and price of a surveyed house')
    .argument('<files...>', `job files; folders are searched for *${JOB_ENDING}; - reads what is piped in`)
    .option('--json', 'the estimate of one job for other programs')
    .addOption(root.createOption('--ndjson', 'the estimates of many jobs, one to a line').conflicts('json'))
    .addOption(root.createOption('--csv', 'what to order: item, name, how many to buy; for suppliers and spreadsheets').conflicts(['json', 'ndjson']))
    .option('--bom', 'begin the --csv with a byte order mark, without which some spreadsheets show ² and ½ as other signs')
    .option('--unit-prices', 'what one more of each costs, for change orders')
    .addOption(root.createOption('--ranges', 'how far price and hours may be off by the survey, and what to measure again').conflicts('csv')))
    .addHelpText('after', `\nExamples:\n  lidwork estimate quince-lane${JOB_ENDING}\n  lidwork estimate quince-lane${JOB_ENDING} --json > quince-lane.estimate.json\n  lidwork estimate jobs --ndjson\n  lidwork estimate jobs --csv > order.csv\n`)
    .action(async (words: string[], { json = false, ndjson = false, csv = false, bom = false, unitPrices = false, ranges: ranged = false, ...books }: Options) => {
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const files = await inputs(run, words)
      if (json && files.length > 1) { await run.fail(exit.wrongUse, `--json holds one job, and these are ${files.length}; --ndjson holds many`); return }
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      let printed = 0
      const stock = new Map<string, number>(), ids = new JobIds()
      for (const input of files) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        const opened = await openJob(bytes, input.file)
        if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
        const { id } = opened.job.data.job, first = csv || ndjson ? ids.taken(id, input.file) : undefined
        if (first !== undefined && csv) { await run.fail(exit.findings, `${input.file} has the job id ${id}, as ${first} has: what it needs would be ordered twice, so it is left out. Give each job an id of its own`); return }
        if (first !== undefined) await run.say(`lidwork: ${harmless(input.file)} and ${harmless(first)} are both the job ${id}; both are printed\n`)
        const { estimate } = opened, priced = unitPrices ? (await import('../../estimate/money/unit-prices.ts')).unitPrices(estimate.books, estimate.topOfFillInitialIn).map(u => ({ ...u, priceCents: u.priceCents.value })) : undefined
        const ranges = ranged ? await rangesOf(opened.job, estimate) : undefined
        const out = { ...estimateJson(estimate, opened.job), ...(priced ? { unitPrices: priced } : {}), ...(ranges ? { ranges } : {}) }
        if (json) await run.print(`${JSON.stringify(out, undefined, 2)}\n`)
        else if (ndjson) await run.print(`${JSON.stringify(out)}\n`)
        else if (csv) {
          const { BOM, orderHead, orderLines } = await import('../../papers/csv.ts')
          await run.print((printed++ > 0 ? '' : (bom ? BOM : '') + orderHead()) + orderLines(out, stock))
        } else {
          const { terminalEstimate } = await import('../../papers/terminal.ts')
          await run.print((printed++ > 0 ? '\n\n' : '') + terminalEstimate(out, run.look()))
          if (ranged) await run.print(`\n${(await import('../../papers/ranges.ts')).terminalRanges(ranges, run.look())}`)
          if (priced) await run.print(`\n${(await import('../../papers/unit-prices.ts')).terminalUnitPrices(priced, run.look())}`)
        }
      })
    })
}

async function rangesOf(job: Job, { books }: Estimate): Promise<RangesOut | undefined> {
  const [{ ranges }, { plain }] = await Promise.all([import('../../estimate/ranges.ts'), import('../../estimate/to-json.ts')])
  const linked = ranges(job, books)
  return linked && plain(linked, '') as RangesOut
}

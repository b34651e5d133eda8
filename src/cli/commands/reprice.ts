import { InvalidArgumentError, type Command } from 'commander'
import { JOB_ENDING } from '../inputs.ts'
import { DAY_PATTERN } from '../../units/words.ts'
import type { RepriceOptions } from '../reprice/report.ts'
import type { Run } from '../run.ts'

const whole = (text: string): number => {
  if (!/^\d{1,9}$/.test(text)) throw new InvalidArgumentError('Write a whole number.')
  return Number(text)
}
const MOST_WORKERS = 64
const workers = (text: string): number => {
  if (whole(text) > MOST_WORKERS) throw new InvalidArgumentError(`Write a whole number, at most ${MOST_WORKERS}.`)
  return whole(text)
}
const percent = (text: string): number => {
  const n = /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : NaN
  if (!(Math.abs(n) <= 100)) throw new InvalidArgumentError('Write a percentage, such as 35.')
  return n
}
const date = (text: string): string => {
  if (!new RegExp(DAY_PATTERN).test(text)) throw new InvalidArgumentError('Write a date as 2026-04-01.')
  return text
}

/** `reprice`: open quotes under an old and a new price book. */
export function addReprice(root: Command, run: Run): void {
  root.command('reprice')
    .description('open quotes under an old and a new price book: what each loses, because of which item, and what to do: honor, re-issue, expire or ask')
    .argument('[paths...]', `job files, or folders that are searched for *${JOB_ENDING}; * and ** stand for names; - and files in .ndjson hold many jobs`)
    .requiredOption('--from <file>', 'the price book the quotes were made with')
    .requiredOption('--to <file>', 'the price book that holds now')
    .option('--on <date>', 'the day to judge them by; needed where a quote has a date', date)
    .option('--company <file>', 'a company file, in place of the one the job names and of the built-in one')
    .option('--list <file>', 'more paths, one to a line; - reads them from what is piped in')
    .option('--json', 'one object for other programs')
    .addOption(root.createOption('--ndjson', 'one line a job, as it is done').conflicts('json'))
    .addOption(root.createOption('--csv', 'one line a job, for spreadsheets').conflicts(['json', 'ndjson']))
    .option('--top <jobs>', 'show only so many jobs, those that lose most; the totals hold all', whole)
    .option('--fail-if-margin-below <pct>', 'end with 1 where a sent or signed job would keep less than this at its old price', percent)
    .option('--workers <threads>', 'how many threads work, this one among them; else as many as there are processors, from 200 jobs on', workers)
    .option('--no-cache', 'neither read nor write what is kept of files read before')
    .addHelpText('after', '\nExamples:\n  lidwork reprice jobs --from prices-2025.yaml --to prices-2026.yaml --on 2026-04-01\n  find . -name \'*.job.yaml\' | lidwork reprice --list - --from old.yaml --to new.yaml --on 2026-04-01 --csv > quotes.csv\n  lidwork reprice - --from old.yaml --to new.yaml --ndjson < jobs.ndjson\n')
    .action(async (words: string[], options: RepriceOptions) => {
      await run.io.setForBatch() // before what was compiled for it is loaded
      await (await import('../reprice/report.ts')).report(run, words, options)
    })
}

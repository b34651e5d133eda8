import { InvalidArgumentError, type Command } from 'commander'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

interface Options extends BookFiles { readonly json?: boolean; readonly least: number }

const JOBS_FOR_A_RATE = 3

/** A whole number of jobs. */
function jobs(text: string): number {
  if (!/^[1-9]\d{0,3}$/.test(text)) throw new InvalidArgumentError('Write a whole number of jobs from 1 to 9999.')
  return Number(text)
}

/** `learn`: production rates proposed from finished jobs. */
export function addLearn(root: Command, run: Run): void {
  bookOptions(root.command('learn')
    .description('production rates that finished jobs show, as lines for a company file; nothing is changed by it')
    .argument('<files...>', 'close-outs with their hours; folders are searched for *.closeout.yaml')
    .option('--least <jobs>', 'jobs that a proposed rate stands on', jobs, JOBS_FOR_A_RATE)
    .option('--json', 'every hour that was counted, for other programs'))
    .addHelpText('after', '\nExamples:\n  lidwork learn jobs > rates.yaml\n  lidwork learn jobs --least 5 --json\n')
    .action(async (words: string[], { json = false, least, ...books }: Options) => {
      const { CLOSEOUT_ENDING, closeoutOpener } = await import('../closeouts.ts')
      const { learned, lesson } = await import('../../closeout/learn.ts')
      const files = await inputs(run, words, CLOSEOUT_ENDING), open = await closeoutOpener(run, books)
      if (!open) return
      const lessons: ReturnType<typeof lesson>[] = [], by = new Map<string, string>()
      for (const input of files) await run.guard(input.file, async () => {
        const bytes = await input.read(), closed = bytes && await open(bytes, input.file)
        if (!closed) return
        const { id } = closed.built.out.job, first = by.get(id)
        if (first !== undefined) { await run.fail(exit.findings, `${input.file} closes the job ${id}, as ${first} does: it is not counted again`); return }
        by.set(id, input.file)
        lessons.push(lesson(closed.data, closed.estimate))
      })
      const told = [...by.keys()].filter(id => lessons.some(l => l.observed.some(o => o.job === id))), out = learned(lessons, told, least)
      if (json) { const { rounded } = await import('../../estimate/to-json.ts'); await run.print(`${JSON.stringify(rounded(out), undefined, 2)}\n`) }
      else await run.print((await import('../../papers/closeout/learned.ts')).learnedFragment(out))
      const proposed = out.rates.filter(r => r.proposed).length
      await run.say(`${told.length} ${told.length === 1 ? 'job' : 'jobs'}${by.size > told.length ? ` of ${by.size}` : ''}: ${proposed} of ${out.rates.length} rates stand on ${least} or more${out.leftOut.length > 0 ? `; ${out.leftOut.length} hours not counted` : ''}\n`)
    })
}

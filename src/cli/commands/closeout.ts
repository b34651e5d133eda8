import type { Command } from 'commander'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs, JOB_ENDING } from '../inputs.ts'
import { failed } from '../io.ts'
import { exit, type Run } from '../run.ts'

interface Options extends BookFiles { readonly json?: boolean; readonly ndjson?: boolean; readonly strict?: boolean; readonly out?: string }

/** `closeout`: what was built against what was sold, and its proof. */
export function addCloseout(root: Command, run: Run): void {
  const closeout = bookOptions(root.command('closeout')
    .description('what was done in a signed job: proof of each area, tests in and out, job cost; closeout new writes the file to fill in')
    .usage('[options] <files...>\n       lidwork closeout new <job file> [file]')
    .argument('<files...>', 'close-outs; folders are searched for *.closeout.yaml; - reads what is piped in')
    .option('--json', 'one close-out for other programs')
    .addOption(root.createOption('--ndjson', 'many close-outs, one to a line').conflicts('json'))
    .addOption(root.createOption('--out <dir>', 'papers as HTML into this folder: what was done for the owner, the receipt, the attic card; made where it is missing, files of the same name are replaced').conflicts(['json', 'ndjson']))
    .option('--strict', 'end with 1 unless all is proved'))
    .addHelpText('after', `\nExamples:\n  lidwork closeout new quince-lane${JOB_ENDING}\n  lidwork closeout quince-lane.closeout.yaml\n  lidwork closeout quince-lane.closeout.yaml --out papers\n  lidwork closeout jobs --ndjson\n`)
    .action(async (words: string[], { json = false, ndjson = false, strict = false, out: folder, ...books }: Options) => {
      const { CLOSEOUT_ENDING, closeoutOpener } = await import('../closeouts.ts')
      const files = await inputs(run, words, CLOSEOUT_ENDING)
      if (json && files.length > 1) { await run.fail(exit.wrongUse, `--json holds one close-out, and these are ${files.length}; --ndjson holds many`); return }
      const open = await closeoutOpener(run, books)
      if (!open) return
      const made = folder === undefined ? undefined : run.io.makeFolder(folder)
      if (failed(made)) { await run.fail(exit.unreadable, `could not make the folder ${folder!}: ${made.message}`); return }
      const by = new Map<string, string>()
      let printed = 0
      for (const input of files) await run.guard(input.file, async () => {
        const bytes = await input.read(), closed = bytes && await open(bytes, input.file)
        if (!closed) return
        const { out } = closed.built
        if (strict && out.state !== 'proved') run.met(exit.findings)
        if (folder !== undefined) {
          const { closingFiles } = await import('../../papers/html/closing/index.ts')
          const { estimateJson } = await import('../../estimate/to-json.ts')
          const { id } = out.job, first = by.get(id)
          if (first !== undefined) { await run.fail(exit.findings, `${input.file} closes the job ${id}, as ${first} does: its papers would take the place of those`); return }
          by.set(id, input.file)
          for (const { ending, text } of closingFiles({ built: out, job: closed.job.data, estimate: estimateJson(closed.estimate, closed.job), company: closed.books.companyFile, prices: closed.books.prices })) {
            const name = `${id}.${ending}`, refused = run.io.writeInto(folder, name, text)
            if (failed(refused)) await run.fail(exit.unreadable, `could not write ${name} into ${folder}: ${refused.message}`)
            else await run.print(`${folder.replace(/[\\/]+$/, '')}/${name}\n`)
          }
        } else if (json) await run.print(`${JSON.stringify(out, undefined, 2)}\n`)
        else if (ndjson) await run.print(`${JSON.stringify(out)}\n`)
        else {
          const { terminalCloseout } = await import('../../papers/closeout/terminal.ts')
          await run.print((printed++ > 0 ? '\n\n' : '') + terminalCloseout(out, run.look()))
        }
      })
    })
  closeout.command('new')
    .description('write the close-out of a job to fill in: its areas, tests, mends, tasks and materials')
    .argument('<job>', 'the job file')
    .argument('[file]', 'where to; without it NAME.closeout.yaml beside NAME.job.yaml; - prints it')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', `\nExample:\n  lidwork closeout new quince-lane${JOB_ENDING}\n`)
    .action(async (job: string, file: string | undefined, { force = false }: { force?: boolean }, command: Command) => {
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const { CLOSEOUT_SCHEMA_BESIDE, newCloseout } = await import('../../papers/closeout/new.ts')
      const { schemaText } = await import('../schemas.ts')
      const { writeNew } = await import('../write-new.ts')
      const openJob = await jobOpener(run, command.parent!.opts<BookFiles>())
      if (!openJob) return
      const [input] = await inputs(run, [job]), bytes = await input?.read()
      if (!input || bytes === undefined) return
      const opened = await openJob(bytes, input.file)
      if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
      const { closeoutName, fromFolder } = await import('../closeouts.ts')
      const out = estimateJson(opened.estimate, opened.job), to = file ?? closeoutName(input.file)
      if (out.tasks.length === 0) { await run.fail(exit.findings, `${input.file}: nothing may be done in this house, so there is nothing to close`); return }
      await writeNew(run, to, force, { text: newCloseout(out, opened.job.data, fromFolder(input.file, to)), schema: { beside: CLOSEOUT_SCHEMA_BESIDE, text: schemaText('closeout')! }, next: `fill it in, then lidwork closeout ${to}` })
    })
}

import type { Command } from 'commander'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs, JOB_ENDING } from '../inputs.ts'
import { failed } from '../io.ts'
import { JobIds } from '../job-ids.ts'
import { exit, type Run } from '../run.ts'

interface Options extends BookFiles { readonly out: string; readonly only?: string }

/** `papers`: what the homeowner, the crew and the supplier read, as files in one folder. */
export function addPapers(root: Command, run: Run): void {
  bookOptions(root.command('papers')
    .description('papers of a house as HTML that prints well: proposal and the rest, or the deferral of a stopped one')
    .argument('<files...>', `job files; folders are searched for *${JOB_ENDING}; - reads what is piped in`)
    .requiredOption('--out <dir>', 'folder the papers go to; made where it is missing, and papers of the same name are replaced')
    .option('--only <names>', 'only these papers, by their names, with commas between'))
    .addHelpText('after', `\nExamples:\n  lidwork papers quince-lane${JOB_ENDING} --out papers\n  lidwork papers jobs --out papers --only proposal\n`)
    .action(async (words: string[], { out, only, ...books }: Options) => {
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const { papers } = await import('../../papers/html/index.ts')
      const chosen = only?.split(','), names = papers.map(p => p.name)
      for (const name of chosen ?? []) if (!names.includes(name)) {
        const meant = (await import('../../findings/suggest.ts')).nearest(name, names)
        await run.fail(exit.wrongUse, `there is no paper ${name}${meant === undefined ? '' : `; did you mean ${meant}?`}${meant === undefined ? '.' : ''} The papers: ${names.join(', ')}`)
        return
      }
      const files = await inputs(run, words)
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      const made = run.io.makeFolder(out)
      if (failed(made)) { await run.fail(exit.unreadable, `could not make the folder ${out}: ${made.message}`); return }
      const ids = new JobIds()
      for (const input of files) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        const opened = await openJob(bytes, input.file)
        if (!opened.sound) { run.met(exit.findings); await run.say(reportOf(opened)); return }
        const estimate = estimateJson(opened.estimate, opened.job), { id } = estimate.job, first = ids.taken(id, input.file)
        if (first !== undefined) { await run.fail(exit.findings, `${input.file} has the job id ${id}, as ${first} has: its papers would take the place of those. Give each job an id of its own`); return }
        const wanted = papers.filter(p => chosen === undefined || chosen.includes(p.name))
        const options = wanted.some(p => p.name === 'proposal') ? (await import('../../estimate/quotes/options.ts')).options(opened.job, opened.estimate, opened.estimate.books) : undefined
        const house = { job: opened.job.data, estimate, company: opened.books.companyFile, prices: opened.books.prices, ...(options ? { options } : {}) }
        for (const paper of wanted.filter(p => p.appliesTo(house))) for (const { ending, text } of paper.files(house)) {
          const name = `${id}.${ending}`, refused = run.io.writeInto(out, name, text)
          if (failed(refused)) await run.fail(exit.unreadable, `could not write ${name} into ${out}: ${refused.message}`)
          else await run.print(`${out.replace(/[\\/]+$/, '')}/${name}\n`)
        }
        for (const paper of chosen === undefined ? [] : wanted.filter(p => !p.appliesTo(house))) await run.say(`lidwork: ${id} has no ${paper.name}: ${estimate.verdict === 'stop' ? 'the house is stopped' : 'the house is not stopped'}\n`)
      })
    })
}

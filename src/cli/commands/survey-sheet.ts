import type { Command } from 'commander'
import type { CompanyFile } from '../../books/company-file.ts'
import { failed } from '../io.ts'
import { exit, type Run } from '../run.ts'

interface Options { readonly areas?: readonly string[]; readonly lines: string; readonly company?: string; readonly force?: boolean }

const LINES = 1
const MOST = 20

/** `survey-sheet`: the blank field sheet, in the order of the job file. */
export function addSurveySheet(root: Command, run: Run): void {
  root.command('survey-sheet')
    .description('the blank field sheet as HTML that prints well: a box for each key of the job file, in its order')
    .argument('[file]', 'where to; without it the sheet goes to the output')
    .option('--areas <kinds...>', 'kinds of area, a page for each; one open-floor without it')
    .option('--lines <count>', 'entries for each kind of opening', String(LINES))
    .option('--company <file>', 'your company file, for the letterhead')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', '\nExamples:\n  lidwork survey-sheet field.html\n  lidwork survey-sheet field.html --areas open-floor knee-wall knee-wall-floor slope --lines 3\n')
    .action(async (file: string | undefined, { areas, lines, company: name, force = false }: Options) => {
      const { areaKindNames, blankSurvey } = await import('../../papers/html/survey-sheet.ts')
      const kinds = areas?.flatMap(a => a.split(',')) ?? [areaKindNames[0]!], many = Number(lines)
      for (const kind of kinds) if (!areaKindNames.includes(kind)) {
        const meant = (await import('../../findings/suggest.ts')).nearest(kind, areaKindNames)
        await run.fail(exit.wrongUse, `there is no kind of area ${kind}${meant === undefined ? '' : `; did you mean ${meant}?`} The kinds: ${areaKindNames.join(', ')}`)
        return
      }
      if (!Number.isInteger(many) || many < 1 || many > MOST) { await run.fail(exit.wrongUse, `--lines takes a whole number from 1 to ${MOST}, not ${lines}`); return }
      let company: CompanyFile | undefined
      if (name !== undefined) {
        const { demoCompany, demoPrices } = await import('../../books/demo.ts'), { desk, tell } = await import('../book-files.ts'), { shelf } = await import('../../books/open.ts')
        const books = desk(run.io, { prices: demoPrices, company: demoCompany }, shelf(demoPrices, demoCompany)).shelfOf({ company: name })
        if ('troubles' in books) { await tell(run, books.troubles); return }
        company = books.shelf.companyFile
      }
      const text = blankSurvey(company, { areas: kinds.map(kind => ({ kind })), lines: many })
      if (file === undefined || file === '-') { await run.print(text); return }
      const refused = run.io.writeFile(file, text, { force })
      if (failed(refused)) await run.fail(exit.unreadable, `could not write ${file}: ${refused.message}${refused.failure === 'exists' ? '; --force writes over it' : ''}`)
      else await run.say(`wrote ${file}\n`)
    })
}

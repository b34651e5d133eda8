import type { Command } from 'commander'
import type { TablesOut } from '../../estimate/told/tables-output.ts'
import { exit, type Run } from '../run.ts'

interface Options { readonly json?: boolean; readonly csv?: boolean; readonly bibliography?: boolean; readonly fromMemory?: boolean }
const WIDEST = 100

/** `tables`: the figures that the program holds, with their sources. */
export function addTables(root: Command, run: Run): void {
  root.command('tables')
    .description('the reference tables: value, unit, source, how obtained, and what uses each')
    .argument('[name]', 'one table; without it, the list of all')
    .addOption(root.createOption('--bibliography', 'each document, and what rests on it').conflicts('fromMemory'))
    .option('--from-memory', 'the figures that nobody saw in print when they were written down, with how sure they were')
    .addOption(root.createOption('--json', 'for other programs; without a name, every table whole').conflicts('csv'))
    .option('--csv', 'for spreadsheets, a line for each figure; without a name, every table whole')
    .addHelpText('after', '\nExamples:\n  lidwork tables\n  lidwork tables leakage\n  lidwork tables --from-memory --csv > check-me.csv\n')
    .action(async (name: string | undefined, { json = false, csv = false, bibliography: sources = false, fromMemory: memory = false }: Options) => {
      const { default: uses } = await import('../../../dist/uses.json')
      const { bibliography, fromMemory, tablesOut } = await import('../../estimate/told/tables.ts')
      const papers = await import('../../papers/tables.ts')
      const all = tablesOut(uses), tables = name === undefined ? all : all.filter(t => t.name === name)
      if (tables.length === 0) {
        const { nearest } = await import('../../findings/suggest.ts')
        const meant = nearest(name!, all.map(t => t.name))
        const { wrap } = await import('../../papers/terminal/sheet.ts'), { width } = run.look(run.io.stderr)
        const said = `lidwork: there is no table ${name}${meant === undefined ? '.' : `; did you mean ${meant}?`} The tables: ${all.map(t => t.name).join(', ')}`
        await run.fail(exit.wrongUse, wrap(said, Math.min(width, WIDEST)).join('\n').slice('lidwork: '.length))
        return
      }
      const wide = run.look(), look = { ...wide, width: Math.min(wide.width, WIDEST) }
      const list = sources ? bibliography(tables) : [], held = memory ? fromMemory(tables) : []
      if (json) {
        const out: TablesOut = { format: 'lidwork-tables/1', ...(sources ? { bibliography: list } : memory ? { fromMemory: held } : { tables }) }
        await run.print(`${JSON.stringify(out, undefined, 2)}\n`)
      } else if (csv) await run.print(sources ? papers.csvBibliography(list) : memory ? papers.csvMemory(held) : papers.csvTables(tables))
      else await run.print(sources ? papers.terminalBibliography(list, look) : memory ? papers.terminalMemory(held, look) : name === undefined ? papers.terminalTables(tables, look) : papers.terminalTable(tables[0]!, look))
    })
}

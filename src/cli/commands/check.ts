import type { Command } from 'commander'
import type { GateOut, Verdict } from '../../estimate/output.ts'
import { sorted, type Finding } from '../../findings/finding.ts'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { findingAnnotation } from '../github.ts'
import { inputs, JOB_ENDING } from '../inputs.ts'
import { JobIds } from '../job-ids.ts'
import { exit, type Run } from '../run.ts'

const formats = ['text', 'json', 'github'] as const
interface Options extends BookFiles { readonly format: (typeof formats)[number]; readonly json?: boolean; readonly strict?: boolean }

const CHECK_FORMAT = 'lidwork-check/1'

/** Under --strict an open stop or hold is a finding. */
const asFinding = (g: GateOut): Finding => ({ code: g.code, severity: 'error', path: g.path, says: `${g.state} at ${g.where}`, why: g.why, mend: `opens with ${g.clearedBy}` })

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`

/** Open gates by state, over all files. */
interface Shut { stop: number; hold: number; mend: number }

/** What was met, in one line: findings, verdicts, and the gates behind them in the words of `estimate`. */
function summary(files: number, missed: number, findings: readonly Finding[], verdicts: readonly Verdict[], gates: readonly string[]): string {
  if (files === 0) return '0 files read'
  const found = (['error', 'warning', 'note'] as const).map(s => [findings.filter(f => f.severity === s).length, s] as const).filter(([n]) => n > 0)
  const stand = (['stop', 'hold', 'conditional', 'go'] as const).map(v => [verdicts.filter(x => x === v).length, v] as const).filter(([n]) => n > 0)
  const verdict = verdicts.length === 0 ? [] : [verdicts.length === 1 && files === 1 ? `verdict: ${verdicts[0]!}` : `verdicts: ${stand.map(([n, v]) => `${n} ${v}`).join(', ')}`]
  return [`${counted(files, 'file')}: ${found.length === 0 ? 'nothing found' : found.map(([n, s]) => counted(n, s)).join(', ')}`, ...missed > 0 ? [`${missed} not read`] : [], ...verdict, ...gates.length > 0 ? [`gates: ${gates.join(', ')}`] : []].join('; ')
}

/** `check`: what is wrong in job files, and where. */
export function addCheck(root: Command, run: Run): void {
  bookOptions(root.command('check')
    .description('what is wrong in job files: place, why, and the mend')
    .argument('<files...>', `job files; folders are searched for *${JOB_ENDING}; - reads what is piped in`)
    .addOption(root.createOption('--format <format>', 'text, json, or github (lines that GitHub shows beside the file)').choices(formats).default('text'))
    .option('--json', 'the same as --format json')
    .option('--strict', 'an open stop or hold is a finding too'))
    .addHelpText('after', `\nExamples:\n  lidwork check quince-lane${JOB_ENDING}\n  lidwork check jobs --strict --format github\n`)
    .action(async (words: string[], { format, json = false, strict = false, ...books }: Options) => {
      const { jobOpener } = await import('../jobs.ts')
      const { findingJson, renderFinding } = await import('../../findings/render.ts')
      const { NB, shutWords } = await import('../../papers/terminal/words.ts')
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      const form = json ? 'json' : format
      const all: Finding[] = [], rows: object[] = [], verdicts: Verdict[] = []
      let files = 0, missed = 0
      const ids = new JobIds(), shut: Shut = { stop: 0, hold: 0, mend: 0 }
      for (const input of await inputs(run, words)) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) { missed++; return }
        files++
        const opened = await openJob(bytes, input.file)
        const { source, places } = opened
        const more: Finding[] = []
        if (opened.sound) {
          const { verdict, gates } = estimateJson(opened.estimate, opened.job)
          verdicts.push(verdict)
          for (const g of gates) if (g.open && g.state !== 'note' && (g.state !== 'mend' || verdict !== 'stop')) shut[g.state]++
          const { id } = opened.job.data.job, first = ids.taken(id, input.file)
          if (first !== undefined) more.push({ code: 'job-id-twice', severity: 'warning', path: '/job/id', says: `id: ${id}`, why: `${first} has that id already; papers, order lists and reprice go by it`, mend: 'give each job an id of its own' })
          if (strict) more.push(...gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold')).map(asFinding))
        }
        const findings = sorted([...opened.findings, ...more], places)
        if (findings.some(f => f.severity === 'error')) run.met(exit.findings)
        all.push(...findings)
        for (const f of findings) {
          if (form === 'json') rows.push(findingJson(f, places, input.file))
          else await run.print(form === 'github' ? findingAnnotation(f, places, input.file) : renderFinding(f, places, source, input.file))
        }
      })
      if (form === 'json') await run.print(`${JSON.stringify({ format: CHECK_FORMAT, files, findings: rows }, undefined, 2)}\n`)
      const { shut: closed, ours } = shutWords(shut)
      await run.say(`${summary(files, missed, all, verdicts, [...closed, ...ours]).replaceAll(NB, ' ')}\n`)
    })
}

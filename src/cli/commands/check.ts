import type { Command } from 'commander'
import type { GateOut, Verdict } from '../../estimate/output.ts'
import { sorted, type Finding } from '../../findings/finding.ts'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { findingAnnotation } from '../github.ts'
import { inputs, JOB_ENDING } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

const formats = ['text', 'json', 'github'] as const
interface Options extends BookFiles { readonly format: (typeof formats)[number]; readonly json?: boolean; readonly strict?: boolean }

const CHECK_FORMAT = 'lidwork-check/1'

/** Under --strict an open stop or hold is a finding. */
const asFinding = (g: GateOut): Finding => ({ code: g.code, severity: 'error', path: g.path, says: `${g.state} at ${g.where}`, why: g.why, mend: `opens with ${g.clearedBy}` })

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`

/** What was met, in one line. */
function summary(files: number, findings: readonly Finding[], verdicts: readonly Verdict[]): string {
  const found = (['error', 'warning', 'note'] as const).map(s => [findings.filter(f => f.severity === s).length, s] as const).filter(([n]) => n > 0)
  const stand = (['stop', 'hold', 'conditional', 'go'] as const).map(v => [verdicts.filter(x => x === v).length, v] as const).filter(([n]) => n > 0)
  return [`${counted(files, 'file')}: ${found.length === 0 ? 'nothing found' : found.map(([n, s]) => counted(n, s)).join(', ')}`, ...stand.map(([n, v]) => `${n} ${v}`)].join('; ')
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
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      const form = json ? 'json' : format
      const all: Finding[] = [], rows: object[] = [], verdicts: Verdict[] = []
      let files = 0
      for (const input of await inputs(run, words)) await run.guard(input.file, async () => {
        const bytes = await input.read()
        if (bytes === undefined) return
        files++
        const opened = await openJob(bytes, input.file)
        const { source, places } = opened
        const gated: Finding[] = []
        if (opened.sound) {
          const { verdict, gates } = estimateJson(opened.estimate, opened.job)
          verdicts.push(verdict)
          if (strict) gated.push(...gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold')).map(asFinding))
        }
        const findings = sorted([...opened.findings, ...gated], places)
        if (findings.some(f => f.severity === 'error')) run.met(exit.findings)
        all.push(...findings)
        for (const f of findings) {
          if (form === 'json') rows.push(findingJson(f, places, input.file))
          else await run.print(form === 'github' ? findingAnnotation(f, places, input.file) : renderFinding(f, places, source, input.file))
        }
      })
      if (form === 'json') await run.print(`${JSON.stringify({ format: CHECK_FORMAT, files, findings: rows }, undefined, 2)}\n`)
      await run.say(`${summary(files, all, verdicts)}\n`)
    })
}

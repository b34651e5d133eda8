import { InvalidArgumentError, type Command } from 'commander'
import type { Tolerance } from '../../estimate/told/compare.ts'
import type { Verified } from '../../papers/verify.ts'
import type { BookFiles } from '../book-files.ts'
import { bookOptions } from '../book-options.ts'
import { inputs, JOB_ENDING, STDIN } from '../inputs.ts'
import { failed } from '../io.ts'
import { exit, type Run } from '../run.ts'

const formats = ['text', 'json', 'github', 'junit'] as const
interface Options extends BookFiles {
  readonly format: (typeof formats)[number]; readonly json?: boolean; readonly github?: boolean; readonly junit?: boolean
  readonly tolerance: readonly Tolerance[]; readonly record?: boolean
}

export const VERIFY_FORMAT = 'lidwork-verify/1'

/** `0.5%`, `Cents=100`, `Hours=1%`. */
function tolerance(text: string, before: readonly Tolerance[] = []): readonly Tolerance[] {
  const [, of, number, pct] = /^(?:([A-Za-z][A-Za-z0-9]*)=)?(\d+(?:\.\d+)?)(%?)$/.exec(text) ?? []
  if (number === undefined || (of === undefined && pct === '')) throw new InvalidArgumentError('Write 0.5% for every number, or the end of a name and an amount: Cents=100, Hours=0.05, bags=1%.')
  return [...before, { ...(of === undefined ? {} : { of }), ...(pct === '' ? { amount: Number(number) } : { pct: Number(number) }) }]
}

/** The record of `house.job.yaml` is `house.estimate.json`, beside it. */
const recordOf = (file: string): string => `${file.replace(/(\.job)?\.ya?ml$/, '')}.estimate.json`

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`
const SAID: Readonly<Record<Verified['state'], string>> = { same: 'as recorded', recorded: 'recorded', differs: 'not as recorded', 'not-recorded': 'without a record', faulty: 'without an estimate', unread: 'not read' }

/** `verify`: estimates against the records beside their job files. */
export function addVerify(root: Command, run: Run): void {
  bookOptions(root.command('verify')
    .description('each estimate against its record, NAME.estimate.json beside NAME.job.yaml: every figure that differs')
    .argument('<files...>', `job files; folders are searched for *${JOB_ENDING}`)
    .option('--record', 'write the records, each whole or not at all')
    .option('--tolerance <amount>', 'what may differ: 0.5% of every number, or by the end of a name, Cents=100 or bags=1%; may be given more than once', tolerance, [])
    .addOption(root.createOption('--format <format>', 'text, json, github (lines that GitHub shows beside the file), or junit (XML)').choices(formats).default('text'))
    .option('--json', 'the same as --format json')
    .option('--github', 'the same as --format github')
    .option('--junit', 'the same as --format junit'))
    .addHelpText('after', `\nExamples:\n  lidwork verify jobs --record\n  lidwork verify jobs --junit > verify.xml\n  lidwork verify jobs --tolerance Cents=100 --tolerance Hours=0.05\n`)
    .action(async (words: string[], { format, json, github, junit, tolerance: tolerances, record: writing = false, ...books }: Options) => {
      const form = json ? 'json' : github ? 'github' : junit ? 'junit' : format
      if (words.includes(STDIN)) { await run.fail(exit.wrongUse, 'verify looks for the record beside the job file, and - has none'); return }
      const { jobOpener, reportOf } = await import('../jobs.ts')
      const { estimateJson } = await import('../../estimate/to-json.ts')
      const { compare } = await import('../../estimate/told/compare.ts')
      const { ESTIMATE_FORMAT } = await import('../../estimate/output.ts')
      const papers = await import('../../papers/verify.ts')
      const { annotation, findingAnnotation } = await import('../github.ts')
      const openJob = await jobOpener(run, books)
      if (!openJob) return
      const all: Verified[] = []

      /** The record as data; or why there is none to compare with. */
      function recorded(file: string): { readonly data: unknown; readonly text: string } | { readonly why: string; readonly unread: boolean } {
        const bytes = run.io.readFile(file)
        if (failed(bytes)) return bytes.failure === 'missing' ? { why: `there is no ${file}; --record writes it`, unread: false } : { why: `could not read ${file}: ${bytes.message}`, unread: true }
        const text = new TextDecoder().decode(bytes.bytes)
        try {
          const data = JSON.parse(text) as { format?: unknown }
          if (data?.format === ESTIMATE_FORMAT) return { data, text }
          return { why: `${file} is no ${ESTIMATE_FORMAT}; --record writes it anew`, unread: false }
        } catch { return { why: `${file} is not JSON; --record writes it anew`, unread: false } }
      }

      /** One job file; what is wrong in it goes out as `check` tells it. */
      async function verified(bytes: Uint8Array, file: string): Promise<Verified> {
        const record = recordOf(file), opened = await openJob!(bytes, file)
        if (!opened.sound) {
          run.met(exit.findings)
          if (form === 'github') for (const f of opened.findings) await run.print(findingAnnotation(f, opened.places, file))
          else await run.say(reportOf(opened))
          return { file, record, state: 'faulty', why: `no estimate: ${counted(opened.findings.filter(f => f.severity === 'error').length, 'error')} in it; see lidwork check ${file}`, differences: [], within: 0 }
        }
        const out = estimateJson(opened.estimate, opened.job), text = `${JSON.stringify(out, undefined, 2)}\n`, before = recorded(record)
        const { differences, within } = 'data' in before ? compare(before.data, JSON.parse(text), tolerances) : { differences: [], within: 0 }
        if (writing) {
          if ('text' in before && before.text === text) return { file, record, state: 'same', differences: [], within: 0 }
          const refused = run.io.writeFile(record, text, { force: true })
          if (!failed(refused)) return { file, record, state: 'recorded', differences, within }
          const why = `could not write ${record}: ${refused.message}; what was there is kept`
          await run.fail(exit.unreadable, why)
          return { file, record, state: 'unread', why, differences: [], within: 0 }
        }
        if ('why' in before) {
          if (before.unread) { await run.fail(exit.unreadable, before.why); return { file, record, state: 'unread', why: before.why, differences, within } }
          run.met(exit.findings)
          return { file, record, state: 'not-recorded', why: before.why, differences, within }
        }
        if (differences.length > 0) run.met(exit.findings)
        return { file, record, state: differences.length > 0 ? 'differs' : 'same', differences, within }
      }

      for (const input of await inputs(run, words)) await run.guard(input.file, async () => {
        const bytes = await input.read()
        const v: Verified = bytes === undefined ? { file: input.file, record: recordOf(input.file), state: 'unread', why: 'could not be read', differences: [], within: 0 } : await verified(bytes, input.file)
        all.push(v)
        if (form === 'text' && v.state !== 'same' && v.state !== 'unread' && v.state !== 'faulty') await run.print(papers.terminalVerified(v, run.look()))
        if (form === 'github') {
          if (v.state === 'differs') for (const d of v.differences) await run.print(annotation('error', v.file, d.path, papers.differenceLine(d)))
          else if (v.state === 'not-recorded') await run.print(annotation('error', v.file, v.state, v.why!))
        }
      })
      if (form === 'json') await run.print(`${JSON.stringify({ format: VERIFY_FORMAT, files: all.length, results: all }, undefined, 2)}\n`)
      if (form === 'junit') await run.print(papers.junitVerified(all))
      const states = (Object.keys(SAID) as Verified['state'][]).map(s => [all.filter(v => v.state === s).length, s] as const).filter(([n]) => n > 0)
      const within = all.reduce((sum, v) => sum + v.within, 0)
      await run.say(`${counted(all.length, 'file')}: ${states.map(([n, s]) => `${n} ${SAID[s]}`).join(', ') || 'none'}${within > 0 ? `; within the tolerance ${counted(within, 'number')} off` : ''}\n`)
    })
}

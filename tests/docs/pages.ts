// The fenced blocks of a page, and what they promise:
//   ```yaml NAME.job.yaml   a whole job file, which commands further down may read
//   ```diff NAME.job.yaml   lines of that file changed for the next console block: − out, + in
//   ```console              lines that begin with "$ " are run; below each its exact output, where … stands for any lines
import { main } from '../../src/cli/main.ts'
import { testIo } from '../cli/test-io.ts'

export interface Block { readonly language: string; readonly name: string; readonly text: string; readonly line: number }

/** Every fenced block of a page. */
export function blocksOf(page: string): Block[] {
  const out: Block[] = []
  const lines = page.split('\n')
  for (let i = 0; i < lines.length; i++) {
    const open = /^```(\S*)\s*(\S*)$/.exec(lines[i]!)
    if (!open) continue
    const from = i + 1
    while (i + 1 < lines.length && lines[i + 1] !== '```') i++
    out.push({ language: open[1]!, name: open[2]!, text: lines.slice(from, i + 1).map(l => `${l}\n`).join(''), line: from + 1 })
    i++
  }
  return out
}

export interface Command { readonly line: string; readonly promised: string }

/** The commands of a console block, each with the output under it. */
export function commandsOf(block: Block): Command[] {
  const out: { line: string; promised: string }[] = []
  for (const line of block.text.split('\n').slice(0, -1)) {
    if (line.startsWith('$ ')) out.push({ line: line.slice(2), promised: '' })
    else if (out.length > 0) out.at(-1)!.promised += `${line}\n`
    else throw new Error(`line ${block.line}: output without a command`)
  }
  return out
}

/** Where the promise and the output part, or nothing where they agree; a line … stands for any lines, but each stretch must be found in order. */
export function parting(promised: string, output: string): string | undefined {
  const real = output === '' ? [] : output.replace(/\n$/, '').split('\n')
  const stretches: string[][] = [[]]
  for (const line of promised.split('\n').slice(0, -1)) if (line.trim() === '…') stretches.push([]); else stretches.at(-1)!.push(line)
  let from = 0
  for (const [n, stretch] of stretches.entries()) {
    const last = n === stretches.length - 1
    const fits = (at: number): boolean => stretch.every((l, i) => real[at + i] === l) && (!last || stretch.length === 0 || at + stretch.length === real.length)
    if (n === 0) { if (!fits(0)) return differs(stretch, real, 0); from = stretch.length; continue }
    if (stretch.length === 0) { from = real.length; continue }
    let at = from
    while (at <= real.length - stretch.length && !fits(at)) at++
    if (at > real.length - stretch.length) return `not in the output after line ${from}:\n${stretch.join('\n')}\n--- the output ---\n${real.slice(from).join('\n')}`
    from = at + stretch.length
  }
  return from === real.length || stretches.length > 1 && stretches.at(-1)!.length === 0 ? undefined : `the output goes on:\n${real.slice(from).join('\n')}`
}

const differs = (wanted: readonly string[], real: readonly string[], at: number): string => {
  const i = wanted.findIndex((l, n) => real[at + n] !== l)
  return i < 0 ? `the output goes on:\n${real.slice(at + wanted.length).join('\n')}` : `line ${i + 1}\npromised: ${wanted[i]}\nprinted:  ${real[at + i] ?? '(nothing)'}`
}

/** A file with the lines of a diff block put in. */
export function changed(text: string, diff: Block): string {
  let now = text
  const hunks = diff.text.split('\n').slice(0, -1)
  for (let i = 0; i < hunks.length;) {
    const out: string[] = [], into: string[] = []
    while (hunks[i]?.startsWith('-')) out.push(hunks[i++]!.slice(1))
    while (hunks[i]?.startsWith('+')) into.push(hunks[i++]!.slice(1))
    if (out.length === 0) throw new Error(`line ${diff.line + i}: a change begins with a line that goes out`)
    const old = `${out.join('\n')}\n`
    if (now.split(old).length !== 2) throw new Error(`line ${diff.line + i}: not once in ${diff.name}: ${old}`)
    now = now.replace(old, () => `${into.join('\n')}\n`)
  }
  return now
}

/** Runs one line of a console block on files in memory: `lidwork …`, with `> FILE`, `< FILE` and `echo $?`. */
export async function run(line: string, files: Record<string, string | null>, before: number): Promise<{ output: string; code: number }> {
  if (line === 'echo $?') return { output: `${before}\n`, code: 0 }
  const [, command = '', sign, file = ''] = /^(.*?)(?:\s+([<>])\s+(\S+))?$/.exec(line)!
  const [program, ...argv] = command.split(' ').filter(Boolean)
  if (program !== 'lidwork') throw new Error(`not a command of lidwork: ${line}`)
  const stdin = sign === '<' ? files[file] : undefined
  const io = testIo({ files, ...(stdin == null ? {} : { stdin }) })
  const code = await main(argv, io)
  const { out, err, files: after } = io.ended()
  Object.assign(files, after)
  if (sign === '>') { files[file] = out; return { output: err, code } }
  return { output: out + err, code }
}

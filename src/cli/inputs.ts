// From the words on the command line to the bytes of each file.
import { byText } from '../findings/finding.ts'
import { failed, type Failure, type Io } from './io.ts'
import { exit, type Run } from './run.ts'

export const JOB_ENDING = '.job.yaml'
export const STDIN = '-'

/** One job file by the name the user knows; its bytes when its turn comes. */
export interface Input { readonly file: string; read(): Promise<Uint8Array | undefined> }

const escaped = (text: string): string => text.replace(/[.+^${}()|[\]\\]/g, '\\$&')
/** `*` and `?` in the last part of a path. */
const asPattern = (name: string): RegExp => new RegExp(`^${escaped(name).replace(/\*/g, '[^/]*').replace(/\?/g, '[^/]')}$`)

/** Shells of Windows hand over `*.job.yaml` as it stands. */
function expanded(io: Io, path: string): readonly string[] {
  const cut = path.lastIndexOf('/') + 1, name = path.slice(cut)
  if (!/[*?]/.test(name)) return [path]
  const names = io.list(path.slice(0, cut) || '.')
  const found = failed(names) ? [] : names.filter(n => !n.startsWith('.') && asPattern(name).test(n))
  return found.length === 0 ? [path] : [...found].sort(byText).map(n => path.slice(0, cut) + n)
}

const unread = (run: Run, file: string, { failure, message }: Failure): Promise<void> => failure === 'terminal'
  ? run.fail(exit.wrongUse, `${message} for - to read: lidwork estimate - < a${JOB_ENDING}`)
  : run.fail(exit.unreadable, `could not read ${file}: ${message}`)

/** The files meant, each once, in the order given; folders are searched for job files. */
async function named(run: Run, words: readonly string[]): Promise<string[]> {
  const { io } = run
  const files = new Set<string>()
  for (const word of words.flatMap(w => (w === STDIN ? [w] : expanded(io, io.windows ? w.replaceAll('\\', '/') : w)))) {
    if (word === STDIN || !io.isFolder(word)) { files.add(word); continue }
    const below = io.filesBelow(word, JOB_ENDING)
    for (const { folder, why } of below.unread) await unread(run, folder, why)
    if (below.files.length === 0 && below.unread.length === 0) await run.fail(exit.unreadable, `no file in ${word} ends in ${JOB_ENDING}`)
    below.files.forEach(f => files.add(f))
  }
  return [...files]
}

/** The files meant, to be read one after the other; one that cannot be read is said when its turn comes, and the others still come. */
export async function inputs(run: Run, words: readonly string[]): Promise<Input[]> {
  return (await named(run, words)).map(file => ({
    file,
    async read() {
      const read = file === STDIN ? await run.io.readStdin() : run.io.readFile(file)
      if (!failed(read)) return read.bytes
      await unread(run, file, read)
      return undefined
    },
  }))
}

// From the words on the command line to the bytes of each file.
import { byText } from '../findings/finding.ts'
import { failed, type Failure, type Io } from './io.ts'
import { exit, type Run } from './run.ts'

export const JOB_ENDING = '.job.yaml'
export const STDIN = '-'

/** One job file by the name the user knows; its bytes when its turn comes. */
export interface Input { readonly file: string; read(): Promise<Uint8Array | undefined> }

const escaped = (text: string): string => text.replace(/[.+^${}()|[\]\\]/g, '\\$&')
/** `*` and `?` stand for letters of one part of a path, `**` for folders below, however deep. */
const asPattern = (path: string): string => path.split(/(\*\*\/|\*|\?)/).map(p => (p === '**/' ? '(?:.*/)?' : p === '*' ? '[^/]*' : p === '?' ? '[^/]' : escaped(p))).join('')

/** Shells of Windows hand over `*.job.yaml` as it stands, and so does whoever puts it in quotes. */
function expanded(io: Io, path: string): readonly string[] {
  const wild = path.search(/[*?]/)
  if (wild === -1) return [path]
  const cut = path.lastIndexOf('/', wild) + 1, folder = path.slice(0, cut)
  const inOne = !path.slice(wild).includes('/')
  // In one folder names are enough; else a folder that fits stands for the job files below it.
  const names = inOne ? io.list(folder || '.') : io.filesBelow(folder.replace(/(?<=.)\/$/, '') || '.', JOB_ENDING).files
  if (failed(names)) return [path]
  const pattern = new RegExp(inOne ? `^${asPattern(path.slice(cut))}$` : `^${asPattern(path)}(?:/.*)?$`)
  const found = names.filter(n => !(inOne && n.startsWith('.')) && pattern.test(n)).map(n => (inOne ? folder + n : n))
  return found.length === 0 ? [path] : [...found].sort(byText)
}

/** Says that a file cannot be read; a terminal has nothing piped in. */
export const unread = (run: Run, file: string, { failure, message }: Failure, command = 'estimate'): Promise<void> => failure === 'terminal'
  ? run.fail(exit.wrongUse, `${message} for - to read: lidwork ${command} - < a${JOB_ENDING}`)
  : run.fail(exit.unreadable, `could not read ${file}: ${message}`)

/** The files meant, each once, in the order given; folders are searched for those that end so. */
export async function fileNames(run: Run, words: readonly string[], ending = JOB_ENDING): Promise<string[]> {
  const { io } = run
  const files = new Set<string>()
  for (const word of words.flatMap(w => (w === STDIN ? [w] : expanded(io, io.windows ? w.replaceAll('\\', '/') : w)))) {
    if (word === STDIN || !io.isFolder(word)) { files.add(word); continue }
    const below = io.filesBelow(word, ending)
    for (const { folder, why } of below.unread) await unread(run, folder, why)
    if (below.files.length === 0 && below.unread.length === 0) await run.fail(exit.unreadable, `no file in ${word} ends in ${ending}`)
    below.files.forEach(f => files.add(f))
  }
  return [...files]
}

/** The files meant, to be read one after the other; one that cannot be read is said when its turn comes, and the others still come. */
export async function inputs(run: Run, words: readonly string[], ending = JOB_ENDING): Promise<Input[]> {
  return (await fileNames(run, words, ending)).map(file => ({
    file,
    async read() {
      const read = file === STDIN ? await run.io.readStdin() : run.io.readFile(file)
      if (!failed(read)) return read.bytes
      await unread(run, file, read)
      return undefined
    },
  }))
}

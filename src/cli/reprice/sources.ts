// Where jobs come from: files, folders, lists of names, and streams that hold many.
import { failed } from '../io.ts'
import { fileNames, STDIN, unread } from '../inputs.ts'
import { exit, type Run } from '../run.ts'

/** One job: a file to be read, or a document of a stream by its number in it. */
export interface Unit { readonly file: string; readonly bytes?: Uint8Array }

/** Words of the command line and names on a list; how many jobs they are, where that is known before they are read. */
export interface Sources { readonly units: AsyncIterable<Unit>; readonly count: number | undefined }

/** Ends of files that hold one document for each job. */
const STREAMS = ['.ndjson', '.jsonl']
const isStream = (file: string): boolean => file === STDIN || STREAMS.some(ending => file.endsWith(ending))

const MARKER = /^(?:---|\.\.\.)(?=\s|$)/

/** Documents of a stream, one after the other as its text comes: a line that begins with { is one by itself, else a line --- ends one. */
export class Splitter {
  #rest = ''
  #open: string[] = []
  readonly #decoder = new TextDecoder()

  #blank(): boolean { return this.#open.every(l => /^\s*(#.*)?$/.test(l)) }

  /** What the next bytes complete. */
  *push(bytes: Uint8Array): Generator<string> {
    const lines = (this.#rest + this.#decoder.decode(bytes, { stream: true })).split('\n')
    this.#rest = lines.pop()!
    for (const line of lines) yield* this.#line(line)
  }

  /** What is left when the stream has ended. */
  *end(): Generator<string> {
    yield* this.#line(this.#rest + this.#decoder.decode())
    yield* this.#close()
  }

  *#line(line: string): Generator<string> {
    if (MARKER.test(line)) {
      yield* this.#close()
      const behind = line.replace(MARKER, '')
      if (behind.trim() !== '') this.#open.push(behind)
    } else if (line.startsWith('{') && this.#blank()) { this.#open = []; yield line } else this.#open.push(line)
  }

  *#close(): Generator<string> {
    if (!this.#blank()) yield `${this.#open.join('\n')}\n`
    this.#open = []
  }
}

/** Names on a list: one to a line, or as `find -print0` writes them. */
const namesOn = (list: Uint8Array): string[] => {
  const text = new TextDecoder().decode(list)
  return text.split(text.includes('\0') ? '\0' : /\r?\n/).filter(name => name !== '')
}

/** The jobs meant, in the order given. @returns undefined where a list cannot be read, which has then been said */
export async function sources(run: Run, words: readonly string[], list: string | undefined): Promise<Sources | undefined> {
  const { io } = run
  let all = words
  if (list !== undefined) {
    const read = list === STDIN ? await io.readStdin() : io.readFile(list)
    if (failed(read)) { await unread(run, list, read, 'reprice --list'); return undefined }
    all = [...words, ...namesOn(read.bytes)]
    if (all.length === 0) await run.fail(exit.findings, `no name ${list === STDIN ? 'in what was piped in' : `on ${list}`}`)
  }
  const files = await fileNames(run, all)
  async function* units(): AsyncGenerator<Unit> {
    const encoder = new TextEncoder()
    for (const file of files) {
      if (!isStream(file)) { yield { file }; continue }
      const chunks = file === STDIN ? io.stdinChunks() : io.readFile(file)
      if (failed(chunks)) { await unread(run, file, chunks, 'reprice'); continue }
      const splitter = new Splitter()
      let n = 0
      const unit = (text: string): Unit => ({ file: `${file}#${++n}`, bytes: encoder.encode(text) })
      if ('bytes' in chunks) for (const text of splitter.push(chunks.bytes)) yield unit(text)
      else for await (const chunk of chunks) {
        if (failed(chunk)) { await unread(run, file, chunk, 'reprice'); break }
        for (const text of splitter.push(chunk)) yield unit(text)
      }
      for (const text of splitter.end()) yield unit(text)
      if (n === 0) await run.fail(exit.findings, `no job in ${file === STDIN ? 'what was piped in' : file}`)
    }
  }
  return { units: units(), count: files.some(isStream) ? undefined : files.length }
}

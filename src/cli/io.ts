// The only place that touches files, streams, clock and environment.
import { closeSync, fstatSync, fsyncSync, lstatSync, mkdirSync, openSync, readdirSync, readFileSync, readSync, realpathSync, renameSync, rmSync, statSync, writeFileSync, writeSync } from 'node:fs'
import { FOR_A_BATCH, MEASURED_ON } from './engine.ts'

export interface Io {
  readonly stdout: Out
  readonly stderr: Out
  readonly env: Readonly<Record<string, string | undefined>>
  readonly cwd: string
  /** Paths may be written with backslashes, and the shell leaves `*` to the program. */
  readonly windows: boolean
  isFolder(path: string): boolean
  readFile(path: string): Read
  /** The first bytes of a file, as many as there are up to so many. */
  readHead(path: string, most: number): Read
  readStdin(): Promise<Read>
  /** The same piece by piece, as it comes; a piece may be the failure that ends it. */
  stdinChunks(): AsyncIterable<Uint8Array | Failure> | Failure
  /** Milliseconds that only ever rise, for how fast and how long; no time of day. */
  now(): number
  /** Whole or not at all. A file that exists is kept unless `force`. */
  writeFile(path: string, text: string, options?: { readonly force?: boolean }): Failure | undefined
  /** A file of this name in this folder, whole or not at all, in place of one that is there. A link of that name is replaced and not followed, so nothing outside the folder is written. */
  writeInto(folder: string, name: string, text: string): Failure | undefined
  /** The same for what can be made again: as it is quickest, and gone with the power. Folders above it are made. */
  keepFile(path: string, content: Uint8Array): Failure | undefined
  /** What stands in a folder: names with their sizes, and when each was last written, as a number that rises. */
  written(folder: string): readonly { readonly name: string; readonly bytes: number; readonly when: number }[]
  removeFile(path: string): void
  /** What a thread of its own runs, where there are threads. */
  readonly worker: string | undefined
  /** Sets the engine for thousands of files in this process. */
  setForBatch(): Promise<void>
  /** Done when the events that wait have been heard. */
  turn(): Promise<void>
  /** Makes a folder, and those above it, where there is none. */
  makeFolder(path: string): Failure | undefined
  /** Names in one folder, in code unit order. */
  list(folder: string): readonly string[] | Failure
  /** Files below a folder whose names end so, in code unit order; no folder is entered twice, links or not. */
  filesBelow(folder: string, ending: string): { readonly files: readonly string[]; readonly unread: readonly { readonly folder: string; readonly why: Failure }[] }
}

export interface Out {
  readonly isTTY: boolean
  /** Width of the terminal, where it is one. */
  readonly columns: number | undefined
  /**
   * Resolves when the stream has taken the text, so that a slow reader slows the program and does not fill its memory.
   * @throws Closed when nobody reads any more; NotWritten when the system refuses
   */
  write(text: string): Promise<void>
}

export interface Failure { readonly failure: 'changed' | 'missing' | 'directory' | 'unreadable' | 'exists' | 'terminal' | 'other'; readonly message: string }
export type Read = { readonly bytes: Uint8Array } | Failure

export const failed = (r: unknown): r is Failure => typeof r === 'object' && r !== null && 'failure' in r

/** Nobody reads the stream any more (`lidwork … | head -1`): nothing is left to do, and nothing is wrong. */
export class Closed extends Error {}
/** The system did not take the output: a full disk behind `>`. */
export class NotWritten extends Error {}

const REASONS: Readonly<Record<string, Failure>> = {
  ENOENT: { failure: 'missing', message: 'there is no such file' },
  ENOTDIR: { failure: 'missing', message: 'there is no such folder' },
  EISDIR: { failure: 'directory', message: 'it is a folder' },
  NOT_A_FILE: { failure: 'other', message: 'it is a device or a pipe, and only a file is written over' },
  EEXIST: { failure: 'exists', message: 'it is there already' },
  EACCES: { failure: 'unreadable', message: 'no permission' },
  EPERM: { failure: 'unreadable', message: 'no permission' },
  EROFS: { failure: 'unreadable', message: 'the disk is read-only' },
  EBUSY: { failure: 'unreadable', message: 'another program holds it' },
  ENOSPC: { failure: 'other', message: 'the disk is full' },
  ELOOP: { failure: 'other', message: 'its links go round in a circle' },
}

const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? ''

/** The result, or the system's refusal in plain words; any other error is a fault of ours and goes on. */
function attempt<T>(act: () => T): T | Failure {
  try { return act() } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall === undefined) throw error
    return REASONS[codeOf(error)] ?? { failure: 'other', message: `the system says ${codeOf(error)}` }
  }
}

const isFolder = (path: string): boolean => attempt(() => statSync(path).isDirectory()) === true

const isClosed = (error: unknown): boolean => ['EPIPE', 'EOF', 'ERR_STREAM_DESTROYED'].includes(codeOf(error))

const refusal = (error: unknown): Error => (isClosed(error) ? new Closed() : new NotWritten(REASONS[codeOf(error)]?.message ?? codeOf(error)))

/** Into a stream, as it takes it. */
const flow = (stream: NodeJS.WriteStream, bytes: Uint8Array): Promise<void> => new Promise((resolve, reject) => {
  stream.write(bytes, error => { if (!error) resolve(); else reject(refusal(error)) })
})

/** Into a file or pipe, at once. @returns what a pipe that somebody set not to wait has no room for */
function pour(fd: number, bytes: Uint8Array): Uint8Array {
  let rest = bytes
  try { while (rest.length > 0) rest = rest.subarray(writeSync(fd, rest)) } catch (error) { if (codeOf(error) !== 'EAGAIN') throw refusal(error) }
  return rest
}

/** A terminal (or /dev/null) is Node’s own stream; a file or pipe is written directly, since making the stream takes 2 ms of every start. */
function out(fd: 1 | 2, open: () => NodeJS.WriteStream): Out {
  let made: NodeJS.WriteStream | undefined
  // The error reaches whoever waits for the write; without a listener it would end the process first.
  const stream = (): NodeJS.WriteStream => made ??= open().on('error', () => {})
  const kind = attempt(() => fstatSync(fd))
  const direct = !failed(kind) && !kind.isCharacterDevice()
  return {
    get isTTY() { return !direct && stream().isTTY === true },
    get columns() { return this.isTTY ? stream().columns || undefined : undefined }, // some give 0 for not known
    async write(text) {
      const bytes = Buffer.from(text)
      const rest = direct && !made ? pour(fd, bytes) : bytes
      if (rest.length > 0) await flow(stream(), rest)
    },
  }
}

const TRIES_ON_WINDOWS = 10

/** A scanner or a sync client may hold a file for a moment on Windows; elsewhere the first try settles it. */
function rename(from: string, to: string, tries: number): void {
  for (let n = 1; ; n++) {
    try { return renameSync(from, to) } catch (error) {
      if (n >= tries || !['EPERM', 'EACCES', 'EBUSY'].includes(codeOf(error))) throw error
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20 * n)
    }
  }
}

function writeWhole(path: string, text: string, force: boolean, tries: number): undefined {
  if (isFolder(path)) throw Object.assign(new Error(), { code: 'EISDIR', syscall: 'open' })
  if (!force) closeSync(openSync(path, 'wx')) // looks and takes the name in one step
  const before = attempt(() => realpathSync(path)) // through a link, not over it
  // A new file of its name would take the place of a device or a pipe.
  if (!failed(before) && !statSync(before).isFile()) throw Object.assign(new Error(), { code: 'NOT_A_FILE', syscall: 'open' })
  const target = failed(before) ? path : before
  try {
    whole(target, `${target}.${process.pid}-${process.hrtime.bigint()}.tmp`, text, failed(before) ? 0o666 : statSync(target).mode & 0o777, tries)
  } catch (error) {
    if (!force) rmSync(path, { force: true })
    throw error
  }
}

const NAME = /^[a-z0-9][a-z0-9.-]*$/

/** Into the folder alone: a name that is a path, or a device of Windows, is refused. */
function writeBeside(folder: string, name: string, text: string, tries: number): undefined {
  if (!NAME.test(name)) throw Object.assign(new Error(), { code: 'EINVAL', syscall: 'open' })
  const path = inside(folder, name)
  if (attempt(() => lstatSync(path).isDirectory()) === true) throw Object.assign(new Error(), { code: 'EISDIR', syscall: 'open' })
  whole(path, `${path}.${process.pid}-${process.hrtime.bigint()}.tmp`, text, 0o666, tries)
}

/** Under a temporary name first, so that nobody ever reads half a file. */
function whole(target: string, temporary: string, text: string, mode: number, tries: number): undefined {
  try {
    const file = openSync(temporary, 'wx', mode)
    try { writeFileSync(file, text); fsyncSync(file) } finally { closeSync(file) }
    rename(temporary, target, tries)
  } catch (error) {
    rmSync(temporary, { force: true })
    throw error
  }
}

/** `folder/name` as a person writes it; forward slashes work everywhere. */
const inside = (folder: string, name: string): string => (folder === '.' ? name : `${folder.replace(/[\\/]+$/, '')}/${name}`)

function filesBelow(top: string, ending: string) {
  const files: string[] = [], unread: { folder: string; why: Failure }[] = [], seen = new Set<string>()
  const enter = (folder: string): void => {
    const names = attempt(() => {
      const real = realpathSync(folder)
      return seen.has(real) ? [] : (seen.add(real), readdirSync(folder).sort())
    })
    if (failed(names)) { unread.push({ folder, why: names }); return }
    for (const name of names) {
      if (name.startsWith('.') || name === 'node_modules') continue
      const path = inside(folder, name)
      if (isFolder(path)) enter(path)
      else if (name.endsWith(ending)) files.push(path)
    }
  }
  enter(top)
  return { files, unread }
}

async function* chunks(): AsyncGenerator<Uint8Array | Failure> {
  try { for await (const chunk of process.stdin) yield chunk as Uint8Array } catch (error) { yield attempt<Failure>(() => { throw error }) }
}

const TRIES_TO_READ = 3

/** All bytes of an open file: a usual one in one piece; what has no size of its own, as a device, to its end. */
function contentOf(file: number, { size }: { readonly size: number }): Uint8Array {
  if (size === 0 || size > AT_ONCE) return readFileSync(file)
  const room = Buffer.allocUnsafe(size)
  let taken = 0
  for (let n = -1; n !== 0 && taken < size; taken += n) n = readSync(file, room, taken, size - taken, null)
  return room.subarray(0, taken)
}
/** Job files are some thousand bytes. */
const AT_ONCE = 1_000_000

/** Reads a file that stands still: one that somebody writes meanwhile is read again, then refused. @param between what happens while it is read, for tests */
export function readSteady(path: string, between: () => void = () => {}): Read {
  return attempt((): Read => {
    for (let n = 0; n < TRIES_TO_READ; n++) {
      const file = openSync(path, 'r')
      try {
        const before = fstatSync(file), bytes = contentOf(file, before)
        between()
        const after = fstatSync(file)
        if (!before.isFile() || (before.size === after.size && before.mtimeMs === after.mtimeMs)) return { bytes }
      } finally { closeSync(file) }
    }
    return { failure: 'changed', message: 'it changes while it is read; run again when nobody writes it' }
  })
}

function keepFile(path: string, content: Uint8Array): undefined {
  const temporary = `${path}.${process.pid}-${process.hrtime.bigint()}.tmp`
  try {
    try { writeFileSync(temporary, content, { flag: 'wx' }) } catch (error) {
      if (codeOf(error) !== 'ENOENT') throw error
      mkdirSync(path.replace(/[\\/][^\\/]*$/, ''), { recursive: true, mode: 0o700 })
      writeFileSync(temporary, content, { flag: 'wx' })
    }
    renameSync(temporary, path)
  } catch (error) { rmSync(temporary, { force: true }); throw error }
}

/** The real streams, files and environment. @param worker the file that a thread runs */
export function nodeIo(worker?: string): Io {
  const windows = process.platform === 'win32'
  return {
    stdout: out(1, () => process.stdout),
    stderr: out(2, () => process.stderr),
    env: process.env,
    cwd: process.cwd(),
    windows,
    isFolder,
    worker,
    readFile: path => readSteady(path),
    readHead: (path, most) => attempt(() => {
      const file = openSync(path, 'r')
      try { const bytes = Buffer.allocUnsafe(most); return { bytes: bytes.subarray(0, readSync(file, bytes)) } } finally { closeSync(file) }
    }),
    async readStdin() {
      if (process.stdin.isTTY) return { failure: 'terminal', message: 'nothing is piped in' }
      const all: Uint8Array[] = []
      for await (const chunk of chunks()) { if (failed(chunk)) return chunk; all.push(chunk) }
      return { bytes: Buffer.concat(all) }
    },
    stdinChunks: () => (process.stdin.isTTY ? { failure: 'terminal', message: 'nothing is piped in' } : chunks()),
    now: () => performance.now(),
    writeFile(path, text, { force = false } = {}) {
      const refused = attempt(() => writeWhole(path, text, force, windows ? TRIES_ON_WINDOWS : 1))
      return refused?.failure === 'missing' ? { ...refused, message: 'there is no such folder' } : refused
    },
    writeInto: (folder, name, text) => attempt(() => writeBeside(folder, name, text, windows ? TRIES_ON_WINDOWS : 1)),
    keepFile: (path, content) => attempt(() => keepFile(path, content)),
    written(folder) {
      const names = attempt(() => readdirSync(folder))
      return failed(names) ? [] : names.flatMap(name => { const at = attempt(() => statSync(inside(folder, name))); return failed(at) ? [] : [{ name, bytes: at.size, when: at.mtimeMs }] })
    },
    removeFile: path => { attempt(() => rmSync(path, { force: true })) },
    async setForBatch() {
      if (!process.versions.node.startsWith(MEASURED_ON)) return
      const { setFlagsFromString } = await import('node:v8')
      for (const flag of FOR_A_BATCH) setFlagsFromString(flag)
    },
    turn: () => new Promise(resolve => { setImmediate(resolve) }),
    makeFolder: path => attempt(() => void mkdirSync(path, { recursive: true })) as Failure | undefined,
    list: folder => attempt(() => readdirSync(folder).sort()),
    filesBelow,
  }
}

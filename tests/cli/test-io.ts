import { Closed, NotWritten, type Failure, type Io, type Out } from '../../src/cli/io.ts'
import { main } from '../../src/cli/main.ts'

export interface World {
  /** Files by path; null = no permission. */
  readonly files?: Record<string, string | null>
  readonly stdin?: string
  readonly env?: Record<string, string>
  readonly tty?: { readonly stdout?: boolean; readonly stderr?: boolean; readonly columns?: number }
  readonly windows?: boolean
  /** The reader of stdout leaves after so many writes. */
  readonly closesAfter?: number
  /** The disk behind stdout is full. */
  readonly full?: boolean
  /** The disk behind the cache is full. */
  readonly cacheFull?: boolean
  /** Reading this file meets a fault of the program. */
  readonly faultAt?: string
}
export interface Ended { readonly code: number; readonly out: string; readonly err: string; readonly files: Record<string, string | null> }

const missing: Failure = { failure: 'missing', message: 'there is no such file' }

/** Streams, files and environment in memory. */
export function testIo(world: World = {}): Io & { ended(): Omit<Ended, 'code'> } {
  const files = { ...world.files }
  const text = { out: '', err: '' }
  let writes = 0
  const folders = () => Object.keys(files).flatMap(f => f.split('/').slice(0, -1).map((_, i, parts) => parts.slice(0, i + 1).join('/')))
  const out = (key: 'out' | 'err', isTTY: boolean): Out => ({
    isTTY, columns: isTTY ? world.tty?.columns ?? 80 : undefined,
    write: async s => {
      if (key === 'out' && world.closesAfter !== undefined && writes++ >= world.closesAfter) throw new Closed()
      if (key === 'out' && world.full) throw new NotWritten('the disk is full')
      text[key] += s
    },
  })
  const isFolder = (path: string) => path === '.' || folders().includes(path.replace(/\/+$/, ''))
  const bytes = (s: string) => ({ bytes: new TextEncoder().encode(s) })
  return {
    stdout: out('out', world.tty?.stdout ?? false), stderr: out('err', world.tty?.stderr ?? false), env: world.env ?? {}, cwd: '.', windows: world.windows ?? false, isFolder,
    readFile(path) {
      if (isFolder(path)) return { failure: 'directory', message: 'it is a folder' }
      if (path === world.faultAt) throw new TypeError('x is not a function at /home/someone/secret')
      const content = files[path]
      return content === null ? { failure: 'unreadable', message: 'no permission' } : content === undefined ? missing : bytes(content)
    },
    readHead: (path, most) => (typeof files[path] === 'string' ? { bytes: bytes(files[path]).bytes.subarray(0, most) } : missing),
    readStdin: async () => (world.stdin === undefined ? { failure: 'terminal', message: 'nothing is piped in' } : bytes(world.stdin)),
    stdinChunks: () => (world.stdin === undefined ? missing : (async function* () { for (const part of world.stdin!.match(/[^]{1,1000}/g) ?? []) yield bytes(part).bytes })()),
    now: () => 0,
    worker: undefined,
    keepFile(path, content) {
      if (world.cacheFull) return { failure: 'other', message: 'the disk is full' }
      files[path] = Buffer.from(content).toString()
      return undefined
    },
    written: folder => Object.keys(files).filter(f => f.startsWith(`${folder}/`)).map((f, when) => ({ name: f.slice(folder.length + 1), bytes: files[f]!.length, when })),
    removeFile: path => { delete files[path] },
    writeFile(path, content, { force = false } = {}) {
      if (files[path] !== undefined && !force) return { failure: 'exists', message: 'it is there already' }
      files[path] = content
      return undefined
    },
    writeInto(folder, name, content) {
      const path = folder === '.' ? name : `${folder.replace(/\/+$/, '')}/${name}`
      if (files[path] === null) return { failure: 'unreadable', message: 'no permission' }
      files[path] = content
      return undefined
    },
    setForBatch: async () => {},
    turn: async () => {},
    makeFolder: path => (files[path] === undefined ? undefined : { failure: 'exists', message: 'it is there already' }),
    list: folder => Object.keys(files).filter(f => (f.includes('/') ? f.slice(0, f.lastIndexOf('/')) : '.') === folder.replace(/\/$/, '')).map(f => f.slice(f.lastIndexOf('/') + 1)).sort(),
    filesBelow: (folder, ending) => ({ files: Object.keys(files).filter(f => (folder === '.' || f.startsWith(`${folder.replace(/\/+$/, '')}/`)) && f.endsWith(ending)).sort(), unread: [] }),
    ended: () => ({ ...text, files }),
  }
}

/** Runs one command line in memory. */
export async function lidwork(line: string | readonly string[], world: World = {}): Promise<Ended> {
  const io = testIo(world)
  const code = await main(typeof line === 'string' ? line.split(' ').filter(Boolean) : line, io)
  return { code, ...io.ended() }
}

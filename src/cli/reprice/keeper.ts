// What is kept of job files that were read before: the valid job, and what it is under the books of a shape. Content names it, so a changed file is
// another one; a build names it, so another program reads it anew. All of it may be deleted at any time.
import { createHash } from 'node:crypto'
import type { JobTarget } from '../../books/job-target.ts'
import type { KeptStand } from '../../estimate/kept-stand.ts'
import type { Quoted } from '../../estimate/reprice.ts'
import type { JobFile } from '../../job/job-file.ts'
import { failed, type Io } from '../io.ts'

/** The build puts its own sum in its place; from the source nothing is kept from one run to the next version. */
export const BUILD = 'mark-of-this-build'

/** What re-pricing asks of a job whose stand is known. */
export interface Asked extends Quoted { readonly company?: string; readonly target: JobTarget }
export interface Kept {
  readonly asked: Asked
  readonly stands: Readonly<Record<string, KeptStand>>
  /** The whole job, for books of another shape. */
  data(): JobFile
}

const FORMAT = 'lidwork-kept/1'
/** Books differ in shape seldom: an old one, a new one, and two from before. */
const MOST_STANDS = 4
const MOST_BYTES = 32_768
/** Entries in a folder before its sizes are looked at, and the bytes that are left then: together a quarter of a gigabyte at most. */
const MOST_IN_FOLDER = 32
const MOST_BYTES_IN_FOLDER = 1_000_000

export const sum = (...parts: readonly (string | Uint8Array)[]): string => { const hash = createHash('sha256'); for (const p of parts) hash.update(p); return hash.digest('hex') }

/** Where a user's programs keep what they can make again. @returns undefined where the system says no such place */
export function cacheFolder({ env, windows }: Pick<Io, 'env' | 'windows'>): string | undefined {
  const absolute = (path: string | undefined): path is string => path !== undefined && (path.startsWith('/') || (windows && /^([A-Za-z]:|\\\\)/.test(path)))
  const xdg = env['XDG_CACHE_HOME'], local = env['LOCALAPPDATA'], home = env['HOME']
  const base = absolute(xdg) ? xdg : windows ? (absolute(local) ? local : undefined) : absolute(home) ? `${home}/.cache` : undefined
  return base === undefined ? undefined : `${base.replaceAll('\\', '/')}/lidwork/reprice`
}

const HEX = [...'0123456789abcdef']

/** Reads and writes what is kept. A damaged entry counts as none, and the next writing mends it. */
export function keeper(io: Io, folder: string) {
  let refused: string | undefined
  const pathOf = (key: string): string => `${folder}/${key.slice(0, 2)}/${key.slice(2)}`
  return {
    /** The name of a file's content under this build. */
    keyOf: (bytes: Uint8Array): string => sum(FORMAT, BUILD, '\n', bytes),

    get(key: string): Kept | undefined {
      const read = io.readFile(pathOf(key))
      if (failed(read)) return undefined
      const [head = '', body = '', data = '', end] = new TextDecoder().decode(read.bytes).split('\n')
      if (end !== '' || head !== `${FORMAT} ${sum(body, '\n', data)}`) return undefined
      const { asked, stands } = JSON.parse(body) as Pick<Kept, 'asked' | 'stands'>
      return { asked, stands, data: () => JSON.parse(data) as JobFile }
    },

    put(key: string, { asked, stands }: Pick<Kept, 'asked' | 'stands'>, job: JobFile): void {
      if (refused !== undefined) return
      const body = JSON.stringify({ asked, stands: Object.fromEntries(Object.entries(stands).slice(-MOST_STANDS)) }), data = JSON.stringify(job)
      if (body.length + data.length > MOST_BYTES) return
      const failure = io.keepFile(pathOf(key), `${FORMAT} ${sum(body, '\n', data)}\n${body}\n${data}\n`)
      if (failed(failure)) refused = failure.message // nothing more is kept in this run, and nothing is lost
    },

    /** Lets go of the oldest entries of folders that have grown too large, and of what an interrupted run left. */
    trim(): void {
      for (const a of HEX) for (const b of HEX) {
        const at = `${folder}/${a}${b}`, names = io.list(at)
        if (failed(names)) continue
        if (names.length <= MOST_IN_FOLDER && !names.some(n => n.endsWith('.tmp'))) continue
        const all = [...io.written(at)].sort((x, y) => y.when - x.when)
        let bytes = 0
        for (const f of all) {
          bytes += f.bytes
          if (bytes > MOST_BYTES_IN_FOLDER || f.name.endsWith('.tmp')) io.removeFile(`${at}/${f.name}`)
        }
      }
    },
  }
}
export type Keeper = ReturnType<typeof keeper>

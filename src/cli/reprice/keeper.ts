// What is kept of job files that were read before: what re-pricing asks of a valid one, and what it takes under the books of a shape. Content names it, so a changed file is
// another one; a build names it, so another program reads it anew. Some dozens lie in one pack, since a file for each would cost more than it saves.
// All of it may be deleted at any time.
import { createHash } from 'node:crypto'
import type { JobTarget } from '../../books/job-target.ts'
import type { KeptStand } from '../../estimate/quotes/kept-stand.ts'
import type { Quoted } from '../../estimate/quotes/reprice.ts'
import { utf8 } from '../../files/utf8.ts'
import { failed, type Io } from '../io.ts'

/** The build puts its own sum in its place; from the source nothing is kept from one run to the next version. */
export const BUILD = 'mark-of-this-build'

/** What re-pricing asks of a job whose stand is known. */
export interface Asked extends Quoted { readonly company?: string; readonly target: JobTarget }
export interface Kept {
  readonly asked: Asked
  readonly stands: Readonly<Record<string, KeptStand>>
}

const FORMAT = 'lidwork-kept/3'
/** Books differ in shape seldom: an old one, a new one, and two from before. */
const MOST_STANDS = 4
/** What is longer is made anew. */
const MOST_LETTERS = 32_768
/** Entries in a pack. */
const FULL = 48
/** As much of a pack as holds the names of its entries. */
const HEAD_BYTES = 4096
/** Packs whose lines lie open: files are met in the order in which they were kept. */
const MOST_OPEN = 4
/** All packs together. */
const BOUNDS = { bytes: 256_000_000, packs: 2000 }
/** Hex digits that tell one content from any other. */
const DIGITS = 32

export const sum = (...parts: readonly (string | Uint8Array)[]): string => { const hash = createHash('sha256'); for (const p of parts) hash.update(p); return hash.digest('hex') }

/** Where a user's programs keep what they can make again. @returns undefined where the system says no such place */
export function cacheFolder({ env, windows }: Pick<Io, 'env' | 'windows'>): string | undefined {
  const absolute = (path: string | undefined): path is string => path !== undefined && (path.startsWith('/') || (windows && /^([A-Za-z]:|\\\\)/.test(path)))
  const xdg = env['XDG_CACHE_HOME'], local = env['LOCALAPPDATA'], home = env['HOME']
  const base = absolute(xdg) ? xdg : windows ? (absolute(local) ? local : undefined) : absolute(home) ? `${home}/.cache` : undefined
  return base === undefined ? undefined : `${base.replaceAll('\\', '/')}/lidwork/reprice`
}

interface Place { readonly pack: string; readonly nth: number }
const HEAD = `${FORMAT} ${BUILD} `
/** Room for the sum of a pack, before it is known. */
const NO_SUM = '0'.repeat(64)

/** Reads and writes what is kept. A pack that is damaged counts as none, and the next writing mends it. */
export function keeper(io: Io, folder: string, most = BOUNDS) {
  let refused: string | undefined, places: Map<string, Place> | undefined, pending: { readonly key: string; readonly line: string }[] = []
  const open = new Map<string, readonly string[]>()
  const pathOf = (pack: string): string => `${folder}/${pack}`

  /** Which pack has what, by their heads; of two the later one. */
  function index(): Map<string, Place> {
    const found = new Map<string, Place>()
    for (const { name } of [...io.written(folder)].sort((a, b) => a.when - b.when)) {
      const head = io.readHead(pathOf(name), HEAD_BYTES)
      if (!failed(head)) utf8(head.bytes).split('\n', 1).forEach(line => { if (line.startsWith(HEAD)) line.split(' ').slice(3).forEach((key, nth) => found.set(key, { pack: name, nth })) })
    }
    return found
  }

  /** The lines of a pack, one for each entry; none where they are not what was written. */
  function linesOf(pack: string): readonly string[] {
    const known = open.get(pack)
    if (known) return known
    const read = io.readFile(pathOf(pack)), [head = '', ...lines] = failed(read) ? [] : utf8(read.bytes).split('\n')
    const [check = ''] = head.slice(HEAD.length).split(' ', 1), whole = !failed(read) && head.startsWith(HEAD) && check === sum(read.bytes.subarray(HEAD.length + check.length)) ? lines : []
    if (open.size >= MOST_OPEN) open.delete(open.keys().next().value!)
    open.set(pack, whole)
    return whole
  }

  function flush(): void {
    const kept = pending
    pending = []
    if (kept.length === 0 || refused !== undefined) return
    // Its sum goes into the room left for it, so that the text becomes bytes once.
    const pack = Buffer.from(`${HEAD}${NO_SUM} ${kept.map(k => k.key).join(' ')}\n${kept.map(k => k.line).join('\n')}\n`), check = sum(pack.subarray(HEAD.length + NO_SUM.length))
    pack.write(check, HEAD.length, 'latin1')
    const failure = io.keepFile(pathOf(`${check.slice(0, DIGITS)}.pack`), pack)
    if (failed(failure)) refused = failure.message // nothing more is kept in this run, and nothing is lost
  }

  return {
    /** The name of a file's content under this build. */
    keyOf: (bytes: Uint8Array): string => sum(FORMAT, BUILD, '\n', bytes).slice(0, DIGITS),

    get(key: string): Kept | undefined {
      const place = (places ??= index()).get(key)
      if (!place) return undefined
      const line = linesOf(place.pack)[place.nth]
      return line === undefined ? undefined : JSON.parse(line) as Kept
    },

    put(key: string, { asked, stands }: Kept): void {
      if (refused !== undefined) return
      const line = JSON.stringify({ asked, stands: Object.fromEntries(Object.entries(stands).slice(-MOST_STANDS)) })
      if (line.length <= MOST_LETTERS && pending.push({ key, line }) >= FULL) flush()
    },

    /** Writes what has gathered. */
    flush,

    /** Lets go of the oldest packs where they have grown too many, and of what an interrupted run left. */
    trim(): void {
      let bytes = 0, packs = 0
      for (const f of [...io.written(folder)].sort((x, y) => y.when - x.when)) {
        const whole = f.name.endsWith('.pack')
        if (whole) { packs++; bytes += f.bytes }
        if (!whole || bytes > most.bytes || packs > most.packs) io.removeFile(pathOf(f.name))
      }
    },
  }
}
export type Keeper = ReturnType<typeof keeper>

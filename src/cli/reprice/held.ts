// Files read once for the whole run, so that every thread has the same ones.
import { failed, type Io } from '../io.ts'

export type Held = Readonly<Record<string, Uint8Array>>

/** What can be read of these files now. */
export function hold(io: Io, files: readonly string[]): Held {
  const held: Record<string, Uint8Array> = {}
  for (const file of files) { const read = io.readFile(file); if (!failed(read)) held[file] = read.bytes }
  return held
}

export const withHeld = (io: Io, held: Held): Io => ({ ...io, readFile: path => (Object.hasOwn(held, path) ? { bytes: held[path]! } : io.readFile(path)) })

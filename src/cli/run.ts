// What every command gets: where data and messages go, and the worst thing met so far.
import { printable } from '../findings/printable.ts'
import { Closed, NotWritten, type Io, type Out } from './io.ts'
import type { Look } from '../papers/look.ts'
import { version } from '../../package.json'

/** 0 done · 1 findings · 2 wrong use · 3 could not read or write · 4 a fault in lidwork. The highest met is the process's. */
export const exit = { done: 0, findings: 1, wrongUse: 2, unreadable: 3, fault: 4 } as const
export type Exit = (typeof exit)[keyof typeof exit]

export interface GlobalOptions { readonly color?: boolean; readonly ascii?: boolean; readonly width?: number; readonly debug?: boolean }

export const NARROW = 80

/** A flag, then NO_COLOR, then FORCE_COLOR, then whether the stream is a terminal that can. An empty NO_COLOR says nothing. */
export function useColor(out: Out, env: Io['env'], flag: boolean | undefined): boolean {
  if (flag !== undefined) return flag
  if (env['NO_COLOR']) return false
  const force = env['FORCE_COLOR']
  if (force !== undefined) return force !== '0' && force !== 'false'
  return out.isTTY && env['TERM'] !== 'dumb'
}

/** Words of the command line in a message: nothing in them may steer a terminal. */
export const harmless = (text: string): string => text.split('\n').map(printable).join('\n')

export class Run {
  code: Exit = exit.done
  constructor(readonly io: Io, readonly options: () => GlobalOptions) {}

  met(code: Exit): void { if (code > this.code) this.code = code }

  /** Data. @throws Closed when nobody reads it any more */
  print(text: string): Promise<void> { return this.io.stdout.write(text) }

  /** A message: nobody has to read it. */
  async say(text: string): Promise<void> {
    try { await this.io.stderr.write(text) } catch (error) { if (!(error instanceof Closed || error instanceof NotWritten)) throw error }
  }

  /** Says what went wrong, and remembers it for the exit code. */
  async fail(code: Exit, text: string): Promise<void> {
    this.met(code)
    await this.say(`lidwork: ${harmless(text)}\n`)
  }

  look(out: Out = this.io.stdout): Look {
    const { color, ascii = false, width } = this.options()
    return { width: width ?? out.columns ?? NARROW, color: useColor(out, this.io.env, color), ascii }
  }

  /** Work on one file: a fault of ours is said and counted, and the other files are still done. */
  async guard(file: string, act: () => Promise<void>): Promise<void> {
    try { await act() } catch (error) {
      if (error instanceof Closed || error instanceof NotWritten) throw error
      await this.fault(error, `at ${file}`)
    }
  }

  /** Our own fault. The message holds no path but the one the user wrote; the stack only where it was asked for. */
  async fault(error: unknown, where: string): Promise<void> {
    await this.fail(exit.fault, this.options().debug
      ? `fault in lidwork ${version} ${where}\n${error instanceof Error ? error.stack : String(error)}`
      : `this is a fault in lidwork ${version}, ${where}, not in your file. Please report it with what --debug prints.`)
  }
}

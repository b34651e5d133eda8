// Jobs through a pricer, in the order they came.
import { failed, type Io } from '../io.ts'
import { exit } from '../run.ts'
import type { Outcome, Pricer } from './pricer.ts'
import type { Unit } from './sources.ts'

/** A fault of the program at one file: the others are still done. */
export interface Fault { readonly is: 'fault'; readonly file: string; readonly message: string; readonly stack?: string }
export type Done = Outcome | Fault

/** Who prices the jobs of a run. */
export interface Workers {
  /** What comes of each job, in the order they came. @param here what this thread does with one */
  price(here: (unit: Unit) => Done, units: AsyncIterable<Unit>): AsyncGenerator<Done>
  end(): Promise<void>
}

/** Reads one job and prices it. */
export function done(io: Io, pricer: Pricer, { file, bytes }: Unit): Done {
  try {
    const read = bytes === undefined ? io.readFile(file) : { bytes }
    if (failed(read)) return { is: 'skipped', file, code: exit.unreadable, why: read.message, report: `lidwork: could not read ${file}: ${read.message}\n` }
    return pricer.price(read.bytes, file)
  } catch (error) {
    return error instanceof Error ? { is: 'fault', file, message: error.message, ...(error.stack === undefined ? {} : { stack: error.stack }) } : { is: 'fault', file, message: String(error) }
  }
}

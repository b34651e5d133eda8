// The loop of a worker thread: a message is a list of jobs, the answer what came of each.
import { parentPort, workerData } from 'node:worker_threads'
import type { Io } from '../io.ts'
import { withHeld, type Held } from './held.ts'
import { pricer, type Terms } from './pricer.ts'
import { done, type Done } from './run-jobs.ts'
import type { Unit } from './sources.ts'

/** What a thread is started with. */
export interface Task { readonly terms: Terms; readonly held: Held }

/** A line is quicker read on the other side than an object is copied. */
const sent = (d: Done): Done => (d.is === 'priced' ? { is: 'priced', line: d.line, fresh: d.fresh } : d)

export function serve(real: Io): void {
  const { terms, held } = workerData as Task, io = withHeld(real, held), prices = pricer(io, terms)
  parentPort!.on('message', (units: readonly Unit[]) => {
    const all = units.map(u => sent(done(io, prices, u)))
    prices.keep()
    parentPort!.postMessage(all)
  })
}

// The loop of a worker thread: a message is a list of jobs, the answer what came of each.
import { parentPort, workerData } from 'node:worker_threads'
import type { Io } from '../io.ts'
import { withHeld, type Held } from './held.ts'
import { pricer, type Terms } from './pricer.ts'
import { done } from './run-jobs.ts'
import type { Unit } from './sources.ts'

export interface Task { readonly terms: Terms; readonly held: Held }

export function serve(real: Io): void {
  const { terms, held } = workerData as Task, io = withHeld(real, held), prices = pricer(io, terms)
  parentPort!.on('message', (units: readonly Unit[]) => { parentPort!.postMessage(units.map(u => done(io, prices, u))) })
}

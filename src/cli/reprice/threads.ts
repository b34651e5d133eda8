// Many jobs by several threads, and still in the order they came.
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Done } from './run-jobs.ts'
import type { Task } from './serve.ts'
import type { Unit } from './sources.ts'

/** Fewer jobs are done sooner than a thread has started. */
export const FEWEST = 500
/** Jobs in one message. */
const CHUNK = 24
/** Messages under way for each thread: none waits for work, and few results wait for their turn. */
const AHEAD = 3
/** Room for new objects [MB]: with less, a thread collects garbage more often and is slower; with more, two threads take over 200 MB. */
const YOUNG = 12

export const processors = (): number => availableParallelism()

interface Thread { price(units: readonly Unit[]): Promise<readonly Done[]>; end(): Promise<unknown> }

/** Starts a thread. One that dies leaves a fault at each of its jobs. */
function start(file: string, task: Task): Thread {
  const worker = new Worker(file, { workerData: task, resourceLimits: { maxYoungGenerationSizeMb: YOUNG } })
  const waiting: { readonly units: readonly Unit[]; readonly give: (all: readonly Done[]) => void }[] = []
  let dead: string | undefined
  const faults = (units: readonly Unit[]): Done[] => units.map(u => ({ is: 'fault', file: u.file, message: dead! }))
  const died = (why: string): void => { dead ??= why; for (const w of waiting.splice(0)) w.give(faults(w.units)) }
  worker.on('message', (all: readonly Done[]) => { waiting.shift()!.give(all) })
  worker.on('error', error => { died(`a worker thread ended: ${error instanceof Error ? error.message : String(error)}`) })
  worker.on('exit', () => { died('a worker thread ended') })
  return {
    price: units => new Promise(give => {
      if (dead !== undefined) { give(faults(units)); return }
      waiting.push({ units, give })
      worker.postMessage(units)
    }),
    end: () => worker.terminate(),
  }
}

async function* chunks(units: AsyncIterable<Unit>): AsyncGenerator<readonly Unit[]> {
  let chunk: Unit[] = []
  for await (const unit of units) if (chunk.push(unit) >= CHUNK) { yield chunk; chunk = [] }
  if (chunk.length > 0) yield chunk
}

/** Prices jobs by so many threads. @param file what a thread runs */
export async function* inThreads(file: string, count: number, task: Task, units: AsyncIterable<Unit>): AsyncGenerator<Done> {
  const threads = Array.from({ length: count }, () => start(file, task)), under: Promise<readonly Done[]>[] = []
  const all = chunks(units)
  try {
    for (let n = 0, ended = false; ;) {
      while (!ended && under.length < count * AHEAD) {
        const next = await all.next()
        if (next.done) ended = true
        else under.push(threads[n++ % count]!.price(next.value))
      }
      const first = under.shift()
      if (!first) return
      yield* await first
    }
  } finally { await Promise.all(threads.map(t => t.end())) }
}


// Many jobs by several threads, and still in the order they came.
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Workers, Done } from './run-jobs.ts'
import type { Io } from '../io.ts'
import type { Task } from './serve.ts'
import type { Unit } from './sources.ts'

/** Fewer jobs are done sooner than a thread has started. */
export const FEWEST = 200
/** Jobs in one message. */
const CHUNK = 24
/** Messages under way for each thread: none waits for work, and few results wait for their turn. */
const AHEAD = 3
/** Room for new objects [MB]: with less, a thread collects garbage more often and is slower; with more, two threads take over 200 MB. */
const YOUNG = 12

export const processors = (): number => availableParallelism()

/** One that prices jobs: a thread of its own, or this one. */
interface Thread { readonly alive: boolean; price(units: readonly Unit[]): Promise<readonly Done[]>; end(): Promise<unknown> }

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
    get alive() { return dead === undefined },
    price: units => new Promise(give => {
      if (dead !== undefined) { give(faults(units)); return }
      waiting.push({ units, give })
      worker.postMessage(units)
    }),
    end: () => worker.terminate(),
  }
}

/** This thread as one of them. Before each job it hears the others. */
function itself(price: (unit: Unit) => Done, turn: Io['turn']): Thread {
  let before: Promise<unknown> = Promise.resolve(), ended = false
  const all = async (units: readonly Unit[]): Promise<readonly Done[]> => {
    const done: Done[] = []
    for (const unit of units) { await turn(); if (ended) break; done.push(price(unit)) }
    return done
  }
  return { alive: true, price: units => { const these = before.then(() => all(units)); before = these; return these }, async end() { ended = true } }
}

async function* chunks(units: AsyncIterable<Unit>): AsyncGenerator<readonly Unit[]> {
  let chunk: Unit[] = []
  for await (const unit of units) if (chunk.push(unit) >= CHUNK) { yield chunk; chunk = [] }
  if (chunk.length > 0) yield chunk
}

/** Starts threads beside this one, which load the program while it goes on. */
export function startThreads(count: number, file: string, task: Task, turn: Io['turn']): Workers {
  const threads = Array.from({ length: count }, () => start(file, task))
  return {
    async *price(here, units) {
      threads.push(itself(here, turn))
      const busy = threads.map(thread => ({ thread, chunks: 0 })), under: Promise<readonly Done[]>[] = [], all = chunks(units)
      /** To the one that has least to do; a thread that ended is given no more. */
      const give = async (chunk: readonly Unit[]): Promise<readonly Done[]> => {
        const least = busy.filter(b => b.thread.alive).reduce((a, b) => (b.chunks < a.chunks ? b : a))
        least.chunks++
        try { return await least.thread.price(chunk) } finally { least.chunks-- }
      }
      for (let ended = false; ;) {
        while (!ended && under.length < threads.length * AHEAD) {
          const next = await all.next()
          if (next.done) ended = true
          else under.push(give(next.value))
        }
        const first = under.shift()
        if (!first) return
        yield* await first
      }
    },
    async end() { await Promise.all(threads.map(t => t.end())) },
  }
}

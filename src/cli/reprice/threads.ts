// Many jobs by several threads, and still in the order they came.
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Done } from './run-jobs.ts'
import { UP, type Task, type Up } from './messages.ts'
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

interface Thread { /** It runs, or never will. */ readonly up: Promise<void>; price(units: readonly Unit[]): Promise<readonly Done[]>; end(): Promise<unknown> }

/** Starts a thread. One that dies leaves a fault at each of its jobs. */
function start(file: string, task: Task): Thread {
  const worker = new Worker(file, { workerData: task, resourceLimits: { maxYoungGenerationSizeMb: YOUNG } })
  const waiting: { readonly units: readonly Unit[]; readonly give: (all: readonly Done[]) => void }[] = []
  let dead: string | undefined
  const faults = (units: readonly Unit[]): Done[] => units.map(u => ({ is: 'fault', file: u.file, message: dead! }))
  let isUp = (): void => {}
  const up = new Promise<void>(resolve => { isUp = resolve })
  const died = (why: string): void => { isUp(); dead ??= why; for (const w of waiting.splice(0)) w.give(faults(w.units)) }
  worker.on('message', (all: readonly Done[] | Up) => { if (all === UP) isUp(); else waiting.shift()!.give(all) })
  worker.on('error', error => { died(`a worker thread ended: ${error instanceof Error ? error.message : String(error)}`) })
  worker.on('exit', () => { died('a worker thread ended') })
  return {
    up,
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

export interface Threads {
  readonly count: number
  /** What each runs. */
  readonly file: string
  readonly task: Task
  /** Done once all of them run: the compiled form of the program is refused under other settings of the engine than it was made under. */
  readonly whenUp: () => Promise<void>
}

/** Prices jobs by so many threads. */
export async function* inThreads({ count, file, task, whenUp }: Threads, units: AsyncIterable<Unit>): AsyncGenerator<Done> {
  const threads = Array.from({ length: count }, () => start(file, task)).map(thread => ({ thread, busy: 0 })), under: Promise<readonly Done[]>[] = []
  const set = Promise.all(threads.map(t => t.thread.up)).then(whenUp)
  /** To the one that has least to do. */
  const give = async (chunk: readonly Unit[]): Promise<readonly Done[]> => {
    const least = threads.reduce((a, b) => (b.busy < a.busy ? b : a))
    least.busy++
    try { return await least.thread.price(chunk) } finally { least.busy-- }
  }
  const all = chunks(units)
  try {
    for (let ended = false; ;) {
      while (!ended && under.length < count * AHEAD) {
        const next = await all.next()
        if (next.done) ended = true
        else under.push(give(next.value))
      }
      const first = under.shift()
      if (!first) return
      yield* await first
    }
  } finally { await set; await Promise.all(threads.map(t => t.thread.end())) }
}


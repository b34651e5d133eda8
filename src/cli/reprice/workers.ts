// Who prices the jobs of a run: this thread alone, or others beside it where there are so many jobs that it pays.
import type { Io } from '../io.ts'
import type { Workers } from './run-jobs.ts'
import type { Task } from './serve.ts'

const alone: Workers = {
  async *price(here, units) { for await (const unit of units) yield here(unit) },
  async end() {},
}

/**
 * @param jobs how many there are, where that is known before they are read
 * @param workers how many threads are to work, this one among them, where that was asked for
 */
export async function workersFor({ worker, turn }: Io, task: Task, jobs: number | undefined, workers: number | undefined): Promise<Workers> {
  if (worker === undefined || (workers !== undefined && workers < 2)) return alone
  const { FEWEST, processors, startThreads } = await import('./threads.ts'), count = workers ?? processors()
  const start = (): Workers => startThreads(count - 1, worker, task, turn)
  if (workers !== undefined) return start()
  if (count < 2 || (jobs !== undefined && jobs < FEWEST)) return alone
  if (jobs !== undefined) return start()
  // How many a stream holds is known when it ends: the first of it are done here, at once.
  let later: Workers | undefined
  return {
    async *price(here, units) {
      const rest = units[Symbol.asyncIterator]()
      for (let n = 0; n < FEWEST; n++) {
        const next = await rest.next()
        if (next.done) return
        yield here(next.value)
      }
      later = start()
      yield* later.price(here, { [Symbol.asyncIterator]: () => rest })
    },
    async end() { await later?.end() },
  }
}

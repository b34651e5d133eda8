// How far a run is: on a terminal only, in one line that is written over and wiped at the end.
import { NARROW, type Run } from '../run.ts'

/** Milliseconds between two lines. */
const EVERY = 200
const SECOND = 1000, MINUTE = 60

const time = (seconds: number): string => `${Math.floor(seconds / MINUTE)}:${String(Math.floor(seconds % MINUTE)).padStart(2, '0')}`

/** @param count jobs in all, where that is known. @param silent where the output is a terminal as well, and written meanwhile */
export function progress(run: Run, count: number | undefined, silent: boolean): { step(): Promise<void>; end(): Promise<void> } {
  const { io } = run
  if (silent || !io.stderr.isTTY) return { step: async () => {}, end: async () => {} }
  const began = io.now()
  let jobs = 0, last = began, shown = false
  const wipe = `\r${' '.repeat((io.stderr.columns ?? NARROW) - 1)}\r`
  return {
    async step() {
      jobs++
      const now = io.now()
      if (now - last < EVERY) return
      last = now
      const rate = jobs / ((now - began) / SECOND), left = count === undefined ? undefined : Math.max(0, count - jobs) / rate
      const text = `${jobs}${count === undefined ? '' : ` of ${count}`} jobs, ${Math.round(rate)} a second${left === undefined ? '' : `, ${time(Math.ceil(left))} left`}`
      await run.say(`${shown ? wipe : ''}${text.slice(0, (io.stderr.columns ?? NARROW) - 1)}`)
      shown = true
    },
    async end() { if (shown) await run.say(wipe); shown = false },
  }
}

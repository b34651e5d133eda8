// What the program and its threads tell each other, beside jobs and what came of them.
import type { Held } from './held.ts'
import type { Terms } from './pricer.ts'

/** What a thread is started with. */
export interface Task { readonly terms: Terms; readonly held: Held }

/** First word of a thread: its program is loaded and its books lie open. */
export const UP = 'up'
export type Up = typeof UP

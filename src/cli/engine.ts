// How the JavaScript engine is set for a batch. By itself it lets the heap grow to several times what is in use, and compiles a function anew, with all
// that it calls, as soon as it is warm; over some thousand files that compiling is a third of the work (DEVELOPERS.md, Speed). No result depends on it.
export const FOR_A_BATCH: readonly string[] = [
  '--heap-growing-percent=30', // garbage may make the heap a third as large again before it is collected
  '--no-parallel-scavenge', // threads of the engine that help to collect young garbage stand in the way of those that work
  '--interrupt-budget=400000', // only what stays hot is compiled with care
  '--max-optimized-bytecode-size=3000', // and no long function: one of them takes as long to compile as it saves
  '--max-inlined-bytecode-size-cumulative=200', // a formula is called, and not copied into each of the hundreds of places that call it
]
/** The versions it was measured on: another one may not know a flag, and would say so on the terminal. */
export const MEASURED_ON = '20.'

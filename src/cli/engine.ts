// How the JavaScript engine is set for a batch. By itself it lets the heap grow to several times what is in use, and compiles a function anew, with all
// that it calls, as soon as it is warm; over some thousand files that compiling is a third of the work (DEVELOPERS.md, Speed). No result depends on it.
export const FOR_A_BATCH: readonly string[] = [
  '--heap-growing-percent=30', // garbage may make the heap a third as large again before it is collected
  '--max-inlined-bytecode-size-cumulative=100', // a formula is called, and not copied into each of the hundreds of places that call it
  '--interrupt-budget=200000', // only what stays hot is compiled
]
/** The versions it was measured on: another one may not know a flag, and would say so on the terminal. */
export const MEASURED_ON = '20.'

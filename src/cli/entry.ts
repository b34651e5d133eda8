// What the installed program loads.
export { main } from './main.ts'
export { nodeIo } from './io.ts'

// How long a command takes from the shell, beside Node that does nothing and beside the libraries alone. The variants take turns, so that
// a slow spell of the machine slows all of them; ratios count, not milliseconds. Goals are ratios to `node -e 0`.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROUNDS = Number(process.argv[2] ?? 25)
const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const bin = join(root, 'bin', 'lidwork.cjs')
const folder = mkdtempSync(join(tmpdir(), 'lidwork-bench-'))
const job = join(folder, 'house.job.yaml')

function run(args) {
  const began = process.hrtime.bigint()
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`)
  return Number(process.hrtime.bigint() - began) / 1e6
}
run([bin, 'new', job])

const libraries = `
  const { Command } = require('commander'), { parseDocument } = require('yaml')
  new Command('x').argument('<file>').action(file => { process.stdout.write(JSON.stringify(parseDocument(require('fs').readFileSync(file, 'utf8')).toJS())) }).parse(['${job}'], { from: 'user' })`
const variants = [
  { name: 'node -e 0', args: ['-e', '0'] },
  { name: 'libraries alone: commander, yaml, JSON', args: ['-e', libraries] },
  { name: 'lidwork --version', args: [bin, '--version'], goal: 1.3 },
  { name: 'lidwork --help', args: [bin, '--help'], goal: 1.3 },
  { name: 'lidwork check', args: [bin, 'check', job] },
  { name: 'lidwork estimate', args: [bin, 'estimate', job], goal: 1.8 },
  { name: 'lidwork estimate --json', args: [bin, 'estimate', job, '--json'], goal: 1.6 },
].map(v => ({ ...v, times: [] }))

try {
  for (const v of variants) run(v.args) // files into memory
  for (let i = 0; i < ROUNDS; i++) for (const v of variants) v.times.push(run(v.args))
} finally { rmSync(folder, { recursive: true, force: true }) }

const median = times => [...times].sort((a, b) => a - b)[times.length >> 1]
const [base] = variants
console.log(process.env.NODE_EXTRA_CA_CERTS ? 'NODE_EXTRA_CA_CERTS is set: Node reads those certificates at each start, so the ratios are smaller than without' : 'NODE_EXTRA_CA_CERTS is not set')
console.log(`${ROUNDS} rounds, Node ${process.versions.node}\n${''.padEnd(40)}median ms    least   ratio   goal`)
for (const { name, times, goal } of variants) {
  const ratio = median(times) / median(base.times)
  console.log(`${name.padEnd(40)}${median(times).toFixed(1).padStart(9)}${Math.min(...times).toFixed(1).padStart(9)}${ratio.toFixed(2).padStart(8)}${goal === undefined ? '' : `${goal.toFixed(1).padStart(7)}${ratio > goal ? '  missed' : ''}`}`)
}

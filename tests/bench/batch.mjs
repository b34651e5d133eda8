// What a batch costs: `reprice` over job files of about 150 lines, beside only reading and parsing them with the yaml package. CPU time of the whole
// process (user and system), since other work on the machine stretches the clock and not that. Variants take turns; ratios count. No test fails on a time.
// node tests/bench/batch.mjs [files, 1000] [rounds, 3]
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse, stringify } from 'yaml'

const FILES = Number(process.argv[2] ?? 1000), ROUNDS = Number(process.argv[3] ?? 3)
const root = dirname(dirname(dirname(fileURLToPath(import.meta.url)))), bin = join(root, 'bin', 'lidwork.cjs')
const folder = mkdtempSync(join(tmpdir(), 'lidwork-batch-')), cache = join(folder, 'cache')
const at = (...parts) => join(folder, ...parts)

/** The examples with a key to a line, as most people type them; each under an id of its own. */
const examples = readdirSync(join(root, 'examples')).filter(f => f.endsWith('.job.yaml')).map(f => parse(readFileSync(join(root, 'examples', f), 'utf8')))
  .map(job => ({ job, lines: stringify(job, { flowCollectionPadding: false }).split('\n').length })).filter(({ lines }) => lines > 90 && lines < 260)
function write(into, count) {
  let lines = 0
  for (let n = 0; n < count; n++) {
    const { job } = examples[n % examples.length], text = stringify({ ...job, job: { ...job.job, id: `${job.job.id}-${n}` } })
    if (n % 500 === 0) mkdirSync(join(into, String(n / 500).padStart(3, '0')), { recursive: true })
    writeFileSync(join(into, String(Math.floor(n / 500)).padStart(3, '0'), `${n}.job.yaml`), text)
    lines += text.split('\n').length
  }
  return Math.round(lines / count)
}

/** Runs a process and says what it took. */
function run(args, env = {}) {
  const began = process.hrtime.bigint(), { status, stderr } = spawnSync('/usr/bin/time', ['-f', '%U %S %M', process.execPath, ...args], { encoding: 'utf8', maxBuffer: 1e9, stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, ...env } })
  const wall = Number(process.hrtime.bigint() - began) / 1e9, [user, system, memory] = stderr.trim().split('\n').at(-1).split(' ').map(Number)
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr.slice(-300)}`)
  return { cpu: user + system, wall, mb: memory / 1024 }
}
const reprice = (jobs, ...more) => [bin, 'reprice', jobs, '--from', at('old.yaml'), '--to', at('new.yaml'), '--ndjson', ...more]
const median = list => [...list].sort((a, b) => a - b)[list.length >> 1]

try {
  const old = execFileSync(process.execPath, [bin, 'prices', 'new'], { encoding: 'utf8' })
  writeFileSync(at('old.yaml'), old)
  writeFileSync(at('new.yaml'), old.replaceAll(/price: ([\d.]+)/g, (_, p) => `price: ${Math.round(Number(p) * 110) / 100}`))
  const lines = write(at('jobs'), FILES)
  writeFileSync(at('parse.mjs'), `import { readdirSync, readFileSync } from 'node:fs'; import { parse } from ${JSON.stringify(join(root, 'node_modules/yaml/dist/index.js'))}
    for (const s of readdirSync('${at('jobs')}')) for (const f of readdirSync('${at('jobs')}/' + s)) parse(readFileSync('${at('jobs')}/' + s + '/' + f, 'utf8'))`)
  console.log(`${FILES} files of ${lines} lines on average, ${cpus().length} processors, ${ROUNDS} rounds, Node ${process.versions.node}`)
  const kinds = {
    parse: () => run([at('parse.mjs')]),
    cold: () => { rmSync(cache, { recursive: true, force: true }); return run(reprice(at('jobs'), '--workers', '0'), { XDG_CACHE_HOME: cache }) },
    cached: () => run(reprice(at('jobs'), '--workers', '0'), { XDG_CACHE_HOME: cache }),
    'no cache': () => run(reprice(at('jobs'), '--workers', '0', '--no-cache')),
    'no cache, 2 threads': () => run(reprice(at('jobs'), '--workers', '2', '--no-cache')),
  }
  const met = Object.fromEntries(Object.keys(kinds).map(k => [k, []]))
  for (let n = 0; n < ROUNDS; n++) for (const [k, f] of Object.entries(kinds)) met[k].push(f())
  const of = (k, what) => median(met[k].map(m => m[what]))
  console.log(`${''.padEnd(26)}  CPU s  wall s     MB`)
  for (const k of Object.keys(kinds)) console.log(`${k.padEnd(26)}${of(k, 'cpu').toFixed(2).padStart(7)}${of(k, 'wall').toFixed(2).padStart(8)}${of(k, 'mb').toFixed(0).padStart(7)}`)
  const ratio = (text, value, goal, least) => console.log(`${text.padEnd(56)}${value.toFixed(2).padStart(6)}  goal ${goal}${(least ? value < goal : value > goal) ? '  missed' : ''}`)
  ratio('cold, CPU, to parsing alone', of('cold', 'cpu') / of('parse', 'cpu'), 1.25)
  ratio('cold to cached, CPU', of('cold', 'cpu') / of('cached', 'cpu'), 4, true)
  ratio('one thread to two, wall', of('no cache', 'wall') / of('no cache, 2 threads', 'wall'), 1.5, true)
  // From 10,000 files, a tenth of which threads share too.
  if (FILES >= 10_000) {
    const few = at('few')
    write(few, FILES / 10)
    const one = run(reprice(few, '--no-cache')), ten = run(reprice(at('jobs'), '--no-cache'))
    console.log(`memory by threads: ${FILES / 10} files ${one.mb.toFixed(0)} MB, ${FILES} files ${ten.mb.toFixed(0)} MB`)
    ratio('memory, ten times the files', ten.mb / one.mb, 1.25)
  }
  const product = n => `  - {item: extra-${n}, role: latch, name: extra ${n}, unit: each, pack: 1, buyUnit: each, price: ${1 + n / 100}, charge: whole}`
  const large = count => { writeFileSync(at(`book-${count}.yaml`), old.replace('\nblown:', `\n${Array.from({ length: count }, (_, n) => product(n)).join('\n')}\nblown:`)); return run([bin, 'prices', 'check', at(`book-${count}.yaml`)]).cpu }
  const base = large(0), half = large(9_900), whole = large(19_800)
  console.log(`price book of 10,000 items ${(half - base).toFixed(2)} s, of 20,000 ${(whole - base).toFixed(2)} s`)
  ratio('twice the items', (whole - base) / (half - base), 2.5)
} finally { rmSync(folder, { recursive: true, force: true }) }

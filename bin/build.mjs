// Makes dist/: three bundles of the program, the notices of what it holds of others, and V8's compiled form of them. Needs no network; may run twice.
import { build } from 'esbuild'
import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import launcher from './lidwork.cjs'
import { assigned } from './spreads.mjs'
import { buildUses } from './uses.mjs'
import { buildSchemas, buildValidators } from './validators.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const { BUNDLES, compiledForm, DIST, load } = launcher
const bundle = name => join(DIST, `${BUNDLES[name]}.cjs`)

/** Never half a file: another process may start the program meanwhile. */
function put(file, content) {
  if (/\.cjs$/.test(file) && /[^\0-\x7f]/.test(content)) throw new Error(`${file} is not ASCII`)
  const temporary = `${file}.${process.pid}.tmp`
  writeFileSync(temporary, content)
  renameSync(temporary, file)
}

/** The license of each package that the bundle holds, as its authors wrote it. */
function notices(...metafiles) {
  const packages = new Set(metafiles.flatMap(m => Object.keys(m.inputs)).map(file => /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1]).filter(Boolean))
  return [...packages].sort().map(name => {
    const folder = join(root, 'node_modules', name)
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
    const file = readdirSync(folder).sort().find(f => /^licen[cs]e/i.test(f))
    if (file === undefined) throw new Error(`${name} has no license file to pass on`)
    return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`
  }).join(`\n${'-'.repeat(80)}\n\n`)
}

/** Modules of libraries that this program has no use for, and whose loading every start would pay: an empty one stands for each. */
const unused = {
  name: 'unused',
  setup(build) {
    // commander can start programs as subcommands (3 ms); chalk looks at the terminal by itself, which src/cli/run.ts does (2 ms).
    build.onResolve({ filter: /^(node:child_process|#supports-color)$/ }, () => ({ path: 'none', namespace: 'none' }))
    build.onLoad({ filter: /.*/, namespace: 'none' }, () => ({ contents: 'export default {}' }))
  },
}

/** The source as the engine runs it best. Bundles are ASCII (bin/lidwork.cjs reads them so), and esbuild leaves the text of tagged templates as it stands: it is escaped before. */
const plain = {
  name: 'plain',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => ({ loader: 'js', contents: assigned(readFileSync(path, 'utf8'), path).replace(/[^\0-\x7f]/g, c => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`) }))
  },
}

/** What few commands need stays in files of its own, read when it is asked for: each byte of the bundle costs every start. */
const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /(book|closeout|import)-validators\.mjs$/ }, ({ path }) => ({ path: `../dist/${path.split('/').at(-1).replace('.mjs', '.cjs')}`, external: true }))
    build.onResolve({ filter: /dist\/uses\.json$/ }, () => ({ path: '../dist/uses.json', external: true }))
    build.onResolve({ filter: /\.schema\.json$/ }, ({ path }) => ({ path: `../schemas/${path.split('/').at(-1)}`, external: true }))
  },
}

/** What a command loads when it runs, by the file it is in: of a bundle apart, so that `--version` and `--help` need not read it, and the papers are read by those who print them alone. */
const loaded = { work: new Set(['src/cli/reprice/serve.ts']), papers: new Set() }
const bundleOf = file => (file.startsWith('src/papers/html/') ? 'papers' : 'work')
/** By which name it is asked for: the work of a batch is loaded on an engine set for it. */
const askedBy = file => (file.startsWith('src/cli/reprice/') ? 'batch' : bundleOf(file))
const later = {
  name: 'later',
  setup(build) {
    build.onResolve({ filter: /^\.{1,2}\/.*\.ts$/ }, ({ path, resolveDir, kind }) => {
      if (kind !== 'dynamic-import') return undefined
      const file = relative(root, join(resolveDir, path)).replaceAll('\\', '/')
      loaded[bundleOf(file)].add(file)
      return { path: `${askedBy(file)}:${file}`, external: true }
    })
  },
}

/** The parser that locates faults is read only for a file that has one, or that the quicker reading leaves to it: its names stand for it until then. */
const parserLater = {
  name: 'parser-later',
  setup(build) {
    build.onResolve({ filter: /^yaml$/ }, () => ({ path: 'yaml', namespace: 'later' }))
    build.onResolve({ filter: /dist\/yaml\.cjs$/ }, ({ path }) => ({ path, external: true }))
    build.onLoad({ filter: /.*/, namespace: 'later' }, () => ({
      resolveDir: root, contents: `const all = () => require('../dist/yaml.cjs')
        ${['isAlias', 'isMap', 'isScalar', 'isSeq', 'parseDocument'].map(name => `export const ${name} = (...args) => all().${name}(...args)`).join('\n')}
        ${['LineCounter', 'Lexer'].map(name => `export function ${name}() { return new (all().${name})() }`).join('\n')}`,
    }))
  },
}

const nowhere = { isTTY: false, columns: undefined, write: async () => {} }

/** Runs what people run most, on an example, so that the functions in use are among the compiled ones, and no others: each costs every start. */
async function compiled() {
  const job = readFileSync(join(root, 'examples', 'quince-lane-14.job.yaml'))
  const io = {
    stdout: nowhere, stderr: nowhere, env: {}, cwd: '', windows: false, isFolder: () => false, list: () => [], filesBelow: () => ({ files: [], unread: [] }),
    readFile: () => ({ bytes: job }), readHead: () => ({ bytes: job }), readStdin: async () => ({ bytes: job }), stdinChunks: () => ({ failure: 'terminal', message: '' }), now: () => 0, writeFile: () => undefined, writeInto: () => undefined, makeFolder: () => undefined, setForBatch: async () => {}, turn: async () => {}, keepFile: () => undefined, written: () => [], removeFile: () => {}, worker: undefined,
  }
  // What V8 compiles further in this run is marked in the form, and then compiled at once in each start: 2 ms for what runs once. Set back before the form is written, which is refused under other flags.
  setFlagsFromString('--no-sparkplug')
  const { program: { main }, scripts } = load(false)
  const run = async line => {
    const code = await main(line, io)
    if (code !== 0) throw new Error(`the bundle does not work: lidwork ${line.join(' ')} ended with ${code}`)
  }
  for (const line of [['--version'], ['--help'], ['check', 'a'], ['estimate', 'a', '--json'], ['estimate', 'a'], ['papers', 'a', '--out', 'b']]) await run(line)
  setFlagsFromString('--sparkplug')
  return Object.entries(scripts()).map(([name, script]) => [compiledForm(name), script.createCachedData()])
}

/** The same for a batch, over the examples: on an engine set for it, as this process is from then on. */
async function compiledForBatch() {
  const { program: { main, nodeIo }, scripts } = load(false), real = nodeIo(), examples = join(root, 'examples'), kept = new Map(), said = []
  let prices = ''
  const io = { ...real, stdout: { ...nowhere, write: async text => { prices += text } }, stderr: { ...nowhere, write: async text => { said.push(text) } }, env: { XDG_CACHE_HOME: DIST }, readFile: path => (path === 'prices' ? { bytes: Buffer.from(prices) } : kept.has(path) ? { bytes: kept.get(path) } : real.readFile(path)), keepFile: (path, content) => { kept.set(path, content) }, written: () => [], removeFile: () => {} }
  const run = async (...line) => { if (await main(line, io) !== 0) throw new Error(`the bundle does not work: lidwork ${line.join(' ')}: ${said.join('')}`) }
  await run('prices', 'new')
  io.stdout = nowhere
  for (let n = 0; n < 2; n++) await run('reprice', examples, '--from', 'prices', '--to', 'prices', '--on', '2026-04-01', '--ndjson') // the second time from what was kept
  return ['cli', 'work'].map(name => [compiledForm(name, true), scripts()[name].createCachedData()])
}

await buildValidators()
await buildUses()
await buildSchemas()
const shared = {
  absWorkingDir: root, write: false, metafile: true, bundle: true,
  // CommonJS: what is imported when a command runs becomes a function that runs then, the cheapest laziness there is.
  format: 'cjs', platform: 'node', target: 'node20', charset: 'ascii', legalComments: 'none', minify: true,
}
const cli = await build({ ...shared, entryPoints: ['src/cli/entry.ts'], outfile: bundle('cli'), supported: { 'dynamic-import': false }, plugins: [unused, later, plain] })
const asked = name => build({ ...shared, outfile: bundle(name), plugins: [unused, apart, parserLater, plain],
  stdin: { resolveDir: root, contents: `exports.load = name => { switch (name) { ${[...loaded[name]].sort().map(f => `case ${JSON.stringify(f)}: return require(${JSON.stringify(`./${f}`)})`).join('; ')} } }` } })
/** What scripts import. */
const api = await build({ ...shared, entryPoints: ['src/api/index.ts'], outfile: join(DIST, 'index.cjs'), plugins: [unused, apart, parserLater, plain] })
const work = await asked('work'), papers = await asked('papers')
const parser = await build({ ...shared, entryPoints: ['yaml'], outfile: join(DIST, 'yaml.cjs') })
for (const name of ['book-validators', 'closeout-validators', 'import-validators']) await build({ absWorkingDir: root, entryPoints: [`dist/${name}.mjs`], outfile: join(DIST, `${name}.cjs`), format: 'cjs', platform: 'node', target: 'node20', minify: true, legalComments: 'none' })
mkdirSync(DIST, { recursive: true })
for (const name of Object.keys(BUNDLES)) for (const batch of [false, true]) rmSync(compiledForm(name, batch), { force: true })
/** A function to call with what a module finds in it: the launcher runs the text as it stands, without a copy. */
const wrapped = ({ outputFiles: [{ text }] }) => `(function(exports,require,module){${text}\n})`
put(bundle('cli'), wrapped(cli))
/** What is kept of files read before is of this build alone: the mark in the text becomes the text's own sum. */
const marked = text => text.replaceAll('mark-of-this-build', createHash('sha256').update(text).digest('hex').slice(0, 'mark-of-this-build'.length))
put(bundle('work'), marked(wrapped(work)))
put(join(DIST, 'index.cjs'), api.outputFiles[0].text)
put(join(DIST, 'yaml.cjs'), parser.outputFiles[0].text)
put(bundle('papers'), wrapped(papers))
put(join(DIST, 'THIRD-PARTY.txt'), notices(cli.metafile, api.metafile, work.metafile, papers.metafile, parser.metafile))
for (const [file, data] of [...await compiled(), ...await compiledForBatch()]) put(file, data)

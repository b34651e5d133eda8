// Makes dist/: one bundle of the program, the notices of what it holds of others, and V8's compiled form of it. Needs no network; may run twice.
import { build } from 'esbuild'
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import launcher from './lidwork.cjs'
import { buildSchemas, buildValidators } from './validators.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const { BUNDLE, COMPILED, DIST, load } = launcher

/** Never half a file: another process may start the program meanwhile. */
function put(file, content) {
  const temporary = `${file}.${process.pid}.tmp`
  writeFileSync(temporary, content)
  renameSync(temporary, file)
}

/** The license of each package that the bundle holds, as its authors wrote it. */
function notices(metafile) {
  const packages = new Set(Object.keys(metafile.inputs).map(file => /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1]).filter(Boolean))
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

/** What few commands need stays in files of its own, read when it is asked for: each byte of the bundle costs every start. */
const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /book-validators\.mjs$/ }, () => ({ path: '../dist/book-validators.cjs', external: true }))
    build.onResolve({ filter: /\.schema\.json$/ }, ({ path }) => ({ path: `../schemas/${path.split('/').at(-1)}`, external: true }))
  },
}

const nowhere = { isTTY: false, columns: undefined, write: async () => {} }

/** Runs what people run most, on an example, so that the functions in use are among the compiled ones, and no others: each costs every start. */
async function compiled() {
  const job = readFileSync(join(root, 'examples', 'quince-lane-14.job.yaml'))
  const io = {
    stdout: nowhere, stderr: nowhere, env: {}, cwd: '', windows: false, isFolder: () => false, list: () => [], filesBelow: () => ({ files: [], unread: [] }),
    readFile: () => ({ bytes: job }), readStdin: async () => ({ bytes: job }), writeFile: () => undefined,
  }
  const { program: { main }, script } = load(false)
  const run = async line => {
    const code = await main(line, io)
    if (code !== 0) throw new Error(`the bundle does not work: lidwork ${line.join(' ')} ended with ${code}`)
  }
  for (const line of [['--version'], ['--help'], ['check', 'a'], ['estimate', 'a', '--json'], ['estimate', 'a']]) await run(line)
  return script.createCachedData()
}

await buildValidators()
await buildSchemas()
const { outputFiles: [bundle], metafile } = await build({
  absWorkingDir: root, entryPoints: ['src/cli/entry.ts'], outfile: BUNDLE, write: false, metafile: true, bundle: true,
  // One file in CommonJS: what a command imports when it runs becomes a function that runs then, the cheapest laziness there is.
  format: 'cjs', platform: 'node', target: 'node20', charset: 'ascii', legalComments: 'none',
  minify: true,
  plugins: [unused, apart],
})
await build({ absWorkingDir: root, entryPoints: ['dist/book-validators.mjs'], outfile: join(DIST, 'book-validators.cjs'), format: 'cjs', platform: 'node', target: 'node20', minify: true, legalComments: 'none' })
mkdirSync(DIST, { recursive: true })
rmSync(COMPILED, { force: true })
put(BUNDLE, bundle.text)
put(join(DIST, 'THIRD-PARTY.txt'), notices(metafile))
put(COMPILED, await compiled())

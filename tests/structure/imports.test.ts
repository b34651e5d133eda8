// Imports run downward only, and what touches the world stands in one place.
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { imports, lineOf, parsed, sources, type Import } from './source.ts'

/** A folder may import from those right of it, and from itself. */
const LAYERS = ['api', 'cli', 'papers', 'closeout', 'estimate', 'job', 'scope', 'books', 'reference', 'calc', 'files', 'fields', 'findings', 'units']
const folder = (file: string): string => file.split('/')[1]!
/** Folders inside src/estimate, in the same order; the files beside them put one house together. */
const ROOMS = ['told', 'quotes', 'beside', 'energy', 'money', 'tasks']
const room = (file: string): string | undefined => { const [, layer, first, second] = file.split('/'); return layer !== 'estimate' ? undefined : second === undefined ? 'beside' : first }
const said = (i: Import): string => `${i.file}:${i.line} ${i.from}`

/** Outside src: made by the build, or read into the program as data. */
const OUTSIDE: Readonly<Record<string, readonly string[]>> = {
  'dist/validators.mjs': ['job', 'books', 'files', 'cli'], // validators made from the fields
  'dist/book-validators.mjs': ['books'],
  'dist/uses.json': ['cli'], // what uses what, from the examples
  'dist/closeout-validators.mjs': ['closeout'],
  'dist/import-validators.mjs': ['books'],
  'package.json': ['cli'], // the version
  schemas: ['cli'], // `lidwork schema` prints them
}

/** Each library in the folders that may use it. */
const LIBRARIES: Readonly<Record<string, readonly string[]>> = {
  '@sinclair/typebox': ['src/fields/'], yaml: ['src/files/yaml.ts', 'src/files/open-ends.ts', 'src/files/yaml-edit.ts', 'src/job/yaml.ts'], 'csv-parse/sync': ['src/books/import-read.ts'], 'js-yaml': ['src/files/quick-yaml.ts'], commander: ['src/cli/'], chalk: ['src/papers/terminal'], 'cli-table3': ['src/papers/terminal'], 'string-width': ['src/papers/terminal'],
  'node:fs': ['src/cli/io.ts'], 'node:buffer': ['src/files/yaml.ts'], 'node:v8': ['src/cli/io.ts'], 'node:path': ['src/cli/'], 'node:crypto': ['src/cli/reprice/keeper.ts'], 'node:os': ['src/cli/reprice/threads.ts'], 'node:worker_threads': ['src/cli/reprice/threads.ts', 'src/cli/reprice/serve.ts'],
}

const all = sources.flatMap(imports)

describe('imports', () => {
  test('there are some to look at, in every layer', () => {
    expect(all.length).toBeGreaterThan(200)
    for (const layer of LAYERS) if (layer !== 'files') expect(sources.some(f => folder(f) === layer), layer).toBe(true)
  })
  test('each folder of src is a layer', () => expect([...new Set(sources.map(folder))].filter(f => !LAYERS.includes(f))).toEqual([]))
  test('run downward', () => {
    const upward = all.filter(i => i.to?.startsWith('src/') && LAYERS.indexOf(folder(i.to)) < LAYERS.indexOf(folder(i.file)))
    expect(upward.map(said)).toEqual([])
  })
  test('run downward inside the estimate too, but for the names of the output', () => {
    const within = all.filter(i => room(i.file) !== undefined && i.to !== undefined && room(i.to) !== undefined && i.to !== 'src/estimate/output.ts')
    expect([...new Set(within.flatMap(i => [room(i.file), room(i.to!)]))].sort()).toEqual([...ROOMS].sort())
    expect(within.filter(i => ROOMS.indexOf(room(i.to!)!) < ROOMS.indexOf(room(i.file)!)).map(said)).toEqual([])
  })
  test('reach outside src only for what the build makes and for data', () => {
    const stray = all.filter(i => i.to !== undefined && !i.to.startsWith('src/') && !Object.entries(OUTSIDE).some(([at, by]) => (i.to === at || i.to!.startsWith(`${at}/`)) && by.includes(folder(i.file))))
    expect(stray.map(said)).toEqual([])
  })
  test('take each library only where it belongs', () => {
    const stray = all.filter(i => i.to === undefined && !LIBRARIES[i.from]?.some(at => i.file.startsWith(at)))
    expect(stray.map(said)).toEqual([])
  })
  test('no circle of files, imports of types included', () => {
    const next = new Map(sources.map(f => [f, all.filter(i => i.file === f && i.to?.startsWith('src/')).map(i => i.to!)]))
    const state = new Map<string, 'open' | 'done'>(), circles: string[] = []
    const visit = (f: string, path: readonly string[]): void => {
      if (state.get(f) === 'done') return
      if (state.get(f) === 'open') { circles.push([...path.slice(path.indexOf(f)), f].join(' > ')); return }
      state.set(f, 'open')
      for (const to of next.get(f) ?? []) visit(to, [...path, f])
      state.set(f, 'done')
    }
    for (const f of sources) visit(f, [])
    expect(circles).toEqual([])
  })
})

describe('the world', () => {
  /** Names that reach files, clock, environment, chance or language. */
  const WORLD = new Set(['process', 'Date', 'console', 'performance', 'Intl', 'setTimeout', 'setInterval', 'setImmediate', 'fetch', 'globalThis', 'require', '__dirname', '__filename'])
  const METHODS = new Set(['localeCompare', 'toLocaleString', 'toLocaleDateString', 'toLocaleUpperCase', 'toLocaleLowerCase'])
  test('is touched by src/cli/io.ts alone', () => {
    const found: string[] = []
    for (const file of sources) {
      if (file === 'src/cli/io.ts') continue
      const visit = (n: ts.Node): void => {
        const name = ts.isIdentifier(n) ? n.text : ''
        const member = ts.isIdentifier(n) && ts.isPropertyAccessExpression(n.parent) && n.parent.name === n
        const key = ts.isIdentifier(n) && (ts.isPropertyAssignment(n.parent) || ts.isPropertySignature(n.parent)) && n.parent.name === n
        if (WORLD.has(name) && !member && !key) found.push(`${file}:${lineOf(n)} ${name}`)
        if (member && METHODS.has(name)) found.push(`${file}:${lineOf(n)} ${name}`)
        if (member && name === 'random') found.push(`${file}:${lineOf(n)} ${name}`)
        ts.forEachChild(n, visit)
      }
      visit(parsed(file))
    }
    expect(found).toEqual([])
  })
})

// What README.md and DEVELOPERS.md promise is what the program does.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { lidwork } from '../cli/test-io.ts'
import { blocksOf, changed, commandsOf, parting, run } from './pages.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const read = (file: string): string => readFileSync(root + file, 'utf8')
const page = read('README.md'), developers = read('DEVELOPERS.md')
const blocks = blocksOf(page)
const examples = Object.fromEntries(readdirSync(`${root}examples`).filter(f => f.endsWith('.job.yaml') || f.endsWith('.closeout.yaml')).map(f => [`examples/${f}`, read(`examples/${f}`)]))
const wholeJobs = blocks.filter(b => b.language === 'yaml' && b.name !== '')

describe('the console blocks of README.md', () => {
  const files: Record<string, string | null> = { ...examples }
  let changes: Record<string, string> = {}
  for (const b of blocks) {
    if (b.language === 'yaml' && b.name !== '') files[b.name] = b.text
    else if (b.language === 'diff') test(`line ${b.line}: the change fits ${b.name}`, () => {
      const text = files[b.name] ?? ''
      changes = { ...changes, [b.name]: changed(text, b) }
    })
    else if (b.language === 'console') test(`line ${b.line}: ${commandsOf(b)[0]!.line}`, async () => {
      const now = { ...files, ...changes }
      changes = {}
      let code = 0
      for (const c of commandsOf(b)) {
        const ran = await run(c.line, now, code)
        code = ran.code
        expect(parting(c.promised, ran.output), `README.md, block at line ${b.line}: ${c.line}`).toBeUndefined()
      }
    })
  }
  test('there are some, and none of another name that only looks like one', () => {
    expect(blocks.filter(b => b.language === 'console').length).toBeGreaterThan(5)
    expect([...new Set(blocks.map(b => b.language))].sort()).toEqual(['console', 'diff', 'js', 'sh', 'text', 'yaml'])
  })
})

describe('a promise', () => {
  test.each([
    ['a\nb\n', 'a\nb\n', true], ['a\n', 'a\nb\n', false], ['a\n…\n', 'a\nb\n', true], ['a\n…\nc\n', 'a\nb\nc\n', true], ['a\n…\nb\n', 'a\nb\nc\n', false],
    ['…\nb\n', 'a\nb\n', true], ['a\n…\nx\n…\n', 'a\nb\nc\n', false], ['a\nc\n', 'a\nb\n', false], ['', '', true], ['', 'a\n', false], ['a\n', '', false],
  ])('%j of %j: %s', (promised, output, kept) => { expect(parting(promised, output) === undefined).toBe(kept) })
})

describe('the job files of README.md', () => {
  test.each(wholeJobs.map(b => [b.name, b.text] as const))('%s passes check without a word and can be priced', async (name, text) => {
    const files = { [name]: text }
    const checked = await lidwork(`check ${name}`, { files })
    expect([checked.code, checked.out]).toEqual([0, ''])
    const { out } = await lidwork(`estimate ${name} --json`, { files })
    expect((JSON.parse(out) as EstimateOut).price.totalCents).toBeGreaterThan(0)
  })
  test('there is one, of a house that is not in examples/', () => {
    expect(wholeJobs).toHaveLength(1)
    expect(Object.keys(examples).some(f => f.endsWith(wholeJobs[0]!.name))).toBe(false)
  })
})

interface Node { readonly enum?: readonly string[]; readonly const?: string; readonly properties?: Record<string, Node>; readonly items?: Node; readonly additionalProperties?: false | Node; readonly $defs?: Record<string, Node> }
describe('the reference of the job file', () => {
  const keys = new Set<string>(), words = new Set<string>()
  const visit = (n: Node): void => {
    n.enum?.forEach(w => words.add(w))
    if (n.const !== undefined) words.add(n.const)
    for (const [k, child] of Object.entries(n.properties ?? {})) { keys.add(k); visit(child) }
    Object.values(n.$defs ?? {}).forEach(visit)
    if (n.items) visit(n.items)
    if (n.additionalProperties) visit(n.additionalProperties)
  }
  visit(JSON.parse(read('schemas/job.schema.json')) as Node)
  const states = /^[A-Z]{2}$/
  const named = new Set([...page.matchAll(/`([^`\n]+)`/g)].flatMap(m => [...m[1]!.split(/[^A-Za-z0-9/-]+/), m[1]!]))
  test('names every key', () => { expect([...keys].filter(k => !named.has(k))).toEqual([]) })
  test('names every word', () => { expect([...words].filter(w => !states.test(w) && !named.has(w))).toEqual([]) })
  test('names no key that is not there', () => {
    const section = page.slice(page.indexOf('## The job file, key by key'), page.indexOf('## Stops, holds and mends'))
    const told = [...section.matchAll(/^\| `([A-Za-z0-9]+)`/gm)].map(m => m[1]!)
    expect(told.length).toBeGreaterThan(40)
    expect(told.filter(k => !keys.has(k))).toEqual([])
  })
})

describe('the commands', () => {
  const GLOBAL = 'Options of every command'
  const sections = new Map([...page.matchAll(/^### (.+)\n([\s\S]*?)(?=^##)/gm)].map(m => [m[1]!.replaceAll('`', ''), m[2]!]))
  const options = (text: string): string[] => [...new Set(text.match(/(?<![\w-])--[a-z][a-z-]*/g) ?? [])].sort()
  const listed = (help: string): string[] => options(help.slice(help.indexOf('Options:'), help.indexOf('\n\n', help.indexOf('Options:'))).split('\n').map(l => l.slice(0, 32)).join('\n'))
  let help = ''
  let names: string[] = []
  beforeAll(async () => {
    help = (await lidwork('--help')).out
    names = [...help.slice(help.indexOf('Commands:')).matchAll(/^ {2}([a-z-]+) .*/gm)].map(m => m[1]!).filter(n => n !== 'help' && n !== 'lidwork')
  })
  test('README.md has a section for each, and for no other', () => {
    expect([...sections.keys()].filter(s => s.startsWith('lidwork ')).map(s => s.split(' ')[1]).sort()).toEqual([...new Set(names)].sort())
  })
  test('each section names the options that its help names, and no other', async () => {
    for (const [title, text] of sections) {
      if (!title.startsWith('lidwork ')) continue
      const own = (await lidwork(`help ${title.split(' ')[1]!}`)).out
      const rows = [...text.matchAll(/^\| `(--[^`]*)`/gm)].map(m => m[1]!).join(' ')
      expect(options(rows), title).toEqual(listed(own).filter(o => o !== '--help'))
    }
  })
  test('the options of every command', () => {
    const text = sections.get(GLOBAL)!
    expect(options([...text.matchAll(/^\| `([^|]*)\|/gm)].map(m => m[1]!).join(' '))).toEqual(listed(help))
  })
  test('the exit codes', async () => {
    for (const code of ['0', '1', '2', '3', '4']) expect(page).toMatch(new RegExp(`^\\| ${code} \\|`, 'm'))
    expect(help).toContain('Exit codes: 0 done · 1 findings · 2 wrong use · 3 could not read or write')
  })
})

describe('the names of estimate --json', () => {
  const told = new Map([...page.matchAll(/^\| `([a-zA-Z.]+(?:\[\])?)` \| (`.+`.*) \|$/gm)].map(m => [m[1]!, new Set([...m[2]!.matchAll(/`([a-zA-Z0-9]+)(?:\[\])?`/g)].map(x => x[1]!))]))
  const met = new Map<string, Set<string>>()
  const visit = (value: unknown, path: string): void => {
    if (Array.isArray(value)) { value.forEach(v => { visit(v, `${path}[]`) }); return }
    if (typeof value !== 'object' || value === null) return
    if (/byPhase$/.test(path)) return
    const here = met.get(path) ?? new Set<string>()
    met.set(path, here)
    for (const [k, v] of Object.entries(value)) { here.add(k); visit(v, path === '' ? k : `${path.replace(/\[\]$/, '')}.${k}`) }
  }
  beforeAll(async () => { for (const [name, text] of Object.entries(examples).filter(([n]) => n.endsWith('.job.yaml'))) visit(JSON.parse((await lidwork(`estimate ${name} --json`, { files: { [name]: text } })).out), '') })
  test('README.md names every one that the examples print', () => {
    const all = new Set([...told.values()].flatMap(s => [...s]))
    expect([...met].flatMap(([path, names]) => [...names].filter(n => !(told.get(path) ?? told.get(`${path}[]`) ?? (path === '' ? all : new Set())).has(n) && !(path === '' && told.has(n))).filter(n => !(path === '' && told.has(`${n}[]`))).map(n => `${path}: ${n}`))).toEqual([])
  })
  test('and none that the program does not know', () => {
    const known = new Set(read('src/estimate/output.ts').match(/[A-Za-z0-9]+/g))
    expect([...told].filter(([path]) => met.has(path) || met.has(path.replace('[]', '')) || path.includes('[]')).flatMap(([path, names]) => [...names].filter(n => !known.has(n)).map(n => `${path}: ${n}`))).toEqual([])
  })
})

describe('the pages', () => {
  test('a gate of the table is a gate of the program, and the other way round', () => {
    const folder = `${root}src/scope`
    const code = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(f => f.endsWith('.ts')).map(f => readFileSync(`${folder}/${f}`, 'utf8')).join('\n')
    const section = page.slice(page.indexOf('## Stops, holds and mends'), page.indexOf('## Commands'))
    const told = [...section.matchAll(/^\| `([a-z-]+)` \|/gm)].map(m => m[1]!)
    const real = new Set([...code.matchAll(/code: '([a-z-]+)', state:/g), ...code.matchAll(/loadStop\('(?:stop|hold)', '([a-z-]+)'/g), ...code.matchAll(/code: '(combustion-[a-z]+|appliances-[a-z-]+)'/g)].map(m => m[1]!))
    for (const m of code.matchAll(/code: '([a-z-]+)', state: /g)) real.add(m[1]!)
    expect(told.sort()).toEqual([...real].sort())
  })
  test('every file and folder that they name is there', () => {
    const paths = [...`${page}\n${developers}`.matchAll(/(?:`|\]\()((?:src|tests|bin|examples|schemas)\/[\w./*-]*)/g)].map(m => m[1]!).filter(p => !p.includes('*'))
    expect(paths.length).toBeGreaterThan(10)
    expect(paths.filter(p => !existsSync(root + p))).toEqual([])
  })
  test('DEVELOPERS.md says what each folder of src and tests is for, and of no other', () => {
    const folders = (of: string): string[] => readdirSync(root + of, { withFileTypes: true }).filter(e => e.isDirectory()).map(e => e.name).sort()
    const told = (of: string): string[] => [...developers.matchAll(new RegExp(`^\\| \`${of}/([a-z]+)/\` \\|`, 'gm'))].map(m => m[1]!).sort()
    for (const of of ['src', 'tests']) expect(told(of)).toEqual(folders(of))
  })
  test('links to headings of README.md lead to one', () => {
    const slug = (heading: string): string => heading.toLowerCase().replace(/[^a-z0-9 -]/g, '').replaceAll(' ', '-')
    const headings = [...page.matchAll(/^#+ (.+)$/gm)].map(m => slug(m[1]!))
    const links = [...page.matchAll(/\]\(#([^)]+)\)/g)].map(m => m[1]!)
    expect(links.length).toBeGreaterThan(10)
    expect(links.filter(l => !headings.includes(l))).toEqual([])
  })
  test('npm scripts that they name are in package.json', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> }
    const named = [...`${page}\n${developers}`.matchAll(/npm run ([a-z]+)/g)].map(m => m[1]!)
    expect(named.filter(n => !(n in scripts))).toEqual([])
    expect(scripts['start']).toBe('node bin/lidwork.cjs estimate examples/quince-lane-14.job.yaml')
  })
})

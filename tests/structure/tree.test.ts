// What stands nowhere in the tree: unfinished work, tests that do not run, names of a machine.
import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { filesIn, root, text } from './source.ts'

const MADE = ['node_modules', 'dist', '.git']
const TEXTS = /(\.(ts|mjs|cjs|json|yaml|yml|md|html|csv|txt)|^run)$/
const top = readdirSync(root, { withFileTypes: true }).filter(e => !MADE.includes(e.name))
const files = [...top.filter(e => e.isFile() && TEXTS.test(e.name)).map(e => e.name), ...top.filter(e => e.isDirectory()).flatMap(e => filesIn(e.name, TEXTS))]
  .filter(f => f !== 'package-lock.json' && f !== 'tests/structure/tree.test.ts')
const read = (f: string): string => text(f)

/** Words in two parts, so that this file does not hold them. */
const word = (...parts: string[]): RegExp => new RegExp(parts.join(''))
const NOWHERE: readonly (readonly [what: string, pattern: RegExp, where: RegExp])[] = [
  ['unfinished work', word('\\b(TO', 'DO|FIX', 'ME|X', 'XX|HA', 'CK)\\b'), /./],
  ['a test that is left out', word('\\b(test|it|describe|suite)\\.(sk', 'ip|on', 'ly|to', 'do)\\b'), /^tests\//],
  ['a home or work folder', word('(^|[\\s"\'`(=])/(ho', 'me|Us', 'ers|wo', 'rk|tm', 'p)/(?!someone)[a-z]'), /./],
  ['types turned off', word('@ts-(ig', 'nore|no', 'check)|\\bas an', 'y\\b'), /^(src|tests)\//],
  ['a debugger or log left behind', word('\\bdebug', 'ger\\b|\\bconsole\\.(log|debug)'), /^src\//],
]

test('there is a tree to look at', () => expect(files.length).toBeGreaterThan(100))

test.each(NOWHERE)('nowhere %s', (_, pattern, where) => {
  const found = files.filter(f => where.test(f)).flatMap(f => read(f).split('\n').flatMap((line, i) => (pattern.test(line) ? [`${f}:${i + 1} ${line.trim().slice(0, 100)}`] : [])))
  expect(found).toEqual([])
})

test('the patterns find what they are for', () => {
  const lines = ['// TO' + 'DO later', "test.sk" + "ip('x', () => {})", 'see /ho' + 'me/ada/x', '// @ts-ig' + 'nore', 'console.l' + 'og(1)']
  NOWHERE.forEach(([what, pattern], i) => expect(pattern.test(lines[i]!), what).toBe(true))
})

test('source and tests are plain: no tabs, no trailing blanks, no semicolons at line ends, a line end at the end', () => {
  const found = files.filter(f => /^(src|tests)\/.*\.ts$/.test(f)).flatMap(f => {
    const body = read(f), lines = body.split('\n')
    return [...lines.flatMap((l, i) => (/\t|[ ]+$/.test(l) || /^(?!\s*(\/\/|\*|\/\*)).*;$/.test(l) ? [`${f}:${i + 1}`] : [])), ...(body === '' || body.endsWith('\n') ? [] : [`${f}: end`])]
  })
  expect(found).toEqual([])
})

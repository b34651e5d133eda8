// Writes dist/uses.json: what uses each table, formula and starting value, by the shipped examples.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { put } from './validators.mjs'
import { build } from 'esbuild'
import { mkdirSync, readdirSync, readFileSync } from 'node:fs'
import Module, { createRequire } from 'node:module'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** The text of the index, made from the source as it stands. */
export async function usesText() {
  // CommonJS, since what it bundles asks for Node's own modules by require.
  const { outputFiles: [bundle] } = await build({ absWorkingDir: root, entryPoints: ['src/cli/uses.ts'], write: false, bundle: true, format: 'cjs', platform: 'node', target: 'node20', logLevel: 'silent' })
  const made = new Module('uses')
  made.paths = []
  made.require = createRequire(import.meta.url)
  made._compile(bundle.text, join(root, 'dist', 'uses-maker.cjs'))
  const { usesOf } = made.exports
  const folder = join(root, 'examples')
  return `${JSON.stringify(usesOf(readdirSync(folder).filter(f => f.endsWith('.job.yaml')).sort().map(name => ({ name, bytes: readFileSync(join(folder, name)) }))))}\n`
}

export async function buildUses() {
  mkdirSync(join(root, 'dist'), { recursive: true })
  put(join(root, 'dist', 'uses.json'), await usesText())
}

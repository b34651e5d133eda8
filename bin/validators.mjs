// Validators and committed schemas, made from the fields and kinds of the source. The program that runs holds no schema compiler.
import { Ajv } from 'ajv'
import standalone from 'ajv/dist/standalone/index.js'
import { build } from 'esbuild'
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** Words of a schema for people and for the reader, none for a validator: without them the code is smaller. */
const FOR_PEOPLE = ['$schema', 'title', 'description', 'examples', 'default', 'x-unit', 'x-reads', 'patternErrorMessage']

export const AJV_OPTIONS = { strict: true, strictRequired: false, allowUnionTypes: true, discriminator: true, allErrors: true, inlineRefs: false, messages: false, code: { source: true, esm: true } }

/** A source module and all it imports, run from memory. */
async function imported(entry) {
  const { outputFiles: [bundle] } = await build({ absWorkingDir: root, entryPoints: [entry], write: false, bundle: true, format: 'esm', platform: 'node', target: 'node20' })
  return import(`data:text/javascript;base64,${Buffer.from(bundle.contents).toString('base64')}`)
}

/** Written only where it differs, and never half. */
export function put(file, content) {
  let before
  try { before = readFileSync(file, 'utf8') } catch (error) { if (error.code !== 'ENOENT') throw error }
  if (before === content) return
  mkdirSync(dirname(file), { recursive: true })
  const temporary = `${file}.${process.pid}.tmp`
  writeFileSync(temporary, content)
  renameSync(temporary, file)
}

/** A schema without its words for people; names of keys are kept, whatever they are. */
function bare(node) {
  if (Array.isArray(node)) return node.map(bare)
  if (typeof node !== 'object' || node === null) return node
  return Object.fromEntries(Object.entries(node).filter(([word]) => !FOR_PEOPLE.includes(word))
    .map(([word, value]) => [word, word === 'properties' || word === '$defs' ? Object.fromEntries(Object.entries(value).map(([key, child]) => [key, bare(child)])) : bare(value)]))
}

const ENOUGH = 3
/** Each mapping of some keys in a place of its own, once: it becomes a function of its own, which V8 compiles only for a file that has such a mapping. */
function apart(format) {
  const defs = {}, names = new Map()
  const walk = (node, hoist) => {
    if (Array.isArray(node)) return node.map(n => walk(n, false))
    if (typeof node !== 'object' || node === null) return node
    const inside = Object.fromEntries(Object.entries(node).map(([word, value]) => [word, word === 'properties' || word === '$defs' ? Object.fromEntries(Object.entries(value).map(([key, child]) => [key, walk(child, word === 'properties')])) : walk(value, word === 'items' || word === 'additionalProperties')]))
    if (!hoist || Object.keys(node.properties ?? {}).length < ENOUGH) return inside
    const text = JSON.stringify(inside), name = names.get(text) ?? `part${names.size}`
    names.set(text, name)
    defs[name] = inside
    return { $ref: `#/$defs/${name}` }
  }
  const root = walk(format, false)
  return { ...root, $defs: { ...root.$defs, ...defs } }
}

/** What the compiler writes for each fault: an object, and where it goes. */
const FAULT = /const (err\d+) = \{instancePath(?::(.+?))?,schemaPath:"(?:[^"\\]|\\.)*",keyword:("\w+"),params:\{(?:(missingProperty|additionalProperty): )?(.+?)\}\};if\(vErrors === null\)\{vErrors = \[\1\];\}else \{vErrors\.push\(\1\);\}errors\+\+;/g
const DECLARED = /\(data, \{instancePath="", parentData, parentDataProperty, rootData=data\}=\{\}\)/g
const CALLED = /, \{instancePath(?::(.+?))?,parentData(?::.+?)?,parentDataProperty(?::.+?)?,rootData\}\)/g
/** Letters are counted one by one only where the units of the text leave it open. */
const LETTERS = /(func\d+)\((data\d*)\) ([<>]) (\d+)/g
const SCHEMA = /const (schema\d+) = (\{.+?\});(?=const |function )/g
const NOTED = 'function noted(faults, instancePath, keyword, params = {}) { const fault = { instancePath, keyword, params }; if (faults === null) return [fault]; faults.push(fault); return faults }'

/** The compiler's code with one call for each fault, places as plain arguments, and of the schemas in it the names of keys, which it asks them for: a third as long, and every start reads it. */
function brief(code) {
  const calls = code.replace(FAULT, (_, _name, path = 'instancePath', keyword, param, value) => `vErrors = noted(vErrors, ${path}, ${keyword}${param ? `, { ${param}: ${value} }` : ''}); errors++;`)
    .replace(DECLARED, '(data, instancePath = "")').replace(CALLED, (_, path = 'instancePath') => `, ${path})`)
    .replace(LETTERS, (count, _, text, sign, most) => `${text}.length ${sign} ${sign === '>' ? most : 2 * most} && ${count}`)
  const names = calls.replace(SCHEMA, (_, name, text) => `const ${name} = ${JSON.stringify({ properties: Object.fromEntries(Object.keys(JSON.parse(text).properties ?? {}).map(key => [key, 0])) })};`)
  if (/schemaPath|rootData|schema\d+\.(?!properties,)/.test(names)) throw new Error('the schema compiler writes its faults in another way than bin/validators.mjs reads')
  return `${names}\n${NOTED}`
}

/** A module with, for each format, a function that validates and what its keys read. */
async function validatorModule(file, formats, readsOf) {
  const ajv = new Ajv(AJV_OPTIONS)
  for (const [name, format] of Object.entries(formats)) ajv.addSchema(apart(bare(format)), name)
  const validators = brief(standalone.default(ajv, Object.fromEntries(Object.keys(formats).map(name => [`validate${name}`, name]))))
  const tables = Object.entries(formats).map(([name, format]) => `export const reads${name} = new Map(${JSON.stringify(Object.entries(readsOf(format)))})`).join('\n')
  // The compiler leaves requires of its own small helpers in the code: the bundler puts them in.
  const { outputFiles: [code] } = await build({
    absWorkingDir: root, stdin: { contents: `${validators}\n${tables}\n`, resolveDir: root, sourcefile: 'validators.js' }, write: false, bundle: true, format: 'esm', platform: 'node', target: 'node20', legalComments: 'none',
  })
  put(join(root, 'dist', `${file}.mjs`), code.text)
  put(join(root, 'dist', `${file}.d.mts`), [
    'export interface Fault { readonly instancePath: string; readonly keyword: string; readonly params: Readonly<Record<string, unknown>> }',
    'export interface Validate { (data: unknown): boolean; errors?: readonly Fault[] | null }',
    ...Object.keys(formats).flatMap(name => [`export declare const validate${name}: Validate`, `export declare const reads${name}: ReadonlyMap<string, 'number' | 'inches' | 'feet' | 'name'>`]),
  ].join('\n') + '\n')
}

/** Writes dist/validators.mjs, and apart from it those of books and of close-outs: who estimates with the embedded books loads neither. */
export async function buildValidators() {
  const { readsOf } = await imported('src/files/schema.ts')
  const { jobFormat } = await imported('src/job/schemas.ts')
  const { pricesFormat, companyFormat } = await imported('src/books/formats.ts')
  await validatorModule('validators', { Job: jobFormat() }, readsOf)
  const { closeoutFormat } = await imported('src/closeout/format.ts')
  await validatorModule('book-validators', { Prices: pricesFormat(), Company: companyFormat() }, readsOf)
  const { importFormat } = await imported('src/books/import-format.ts')
  await validatorModule('import-validators', { Import: importFormat() }, readsOf)
  await validatorModule('closeout-validators', { Closeout: closeoutFormat() }, readsOf)
}

/** The committed schemas as they should be: file name and text. */
export async function schemaFiles() {
  const { jobFormat } = await imported('src/job/schemas.ts')
  const { pricesFormat, companyFormat } = await imported('src/books/formats.ts')
  const { closeoutFormat } = await imported('src/closeout/format.ts')
  const { importFormat } = await imported('src/books/import-format.ts')
  return Object.entries({ job: jobFormat(), prices: pricesFormat(), company: companyFormat(), closeout: closeoutFormat(), import: importFormat() }).map(([name, format]) => ({ file: `schemas/${name}.schema.json`, text: `${JSON.stringify(format, undefined, 2)}\n` }))
}

/** What the program writes for others, by the type of it: the schema follows. Other names may come beside these. */
const OUTPUTS = [
  { name: 'estimate', path: 'src/estimate/output.ts', type: 'EstimateOut' },
  { name: 'explain', path: 'src/estimate/told/told-output.ts', type: 'ExplainOut' },
  { name: 'tables', path: 'src/estimate/told/tables-output.ts', type: 'TablesOut' },
  { name: 'options', path: 'src/estimate/quotes/options-output.ts', type: 'OptionsOut' },
  { name: 'prices-diff', path: 'src/estimate/quotes/price-diff.ts', type: 'PricesDiffOut' },
  { name: 'as-built', path: 'src/closeout/output.ts', type: 'AsBuiltOut' },
  { name: 'reprice', path: 'src/estimate/quotes/reprice-totals.ts', type: 'RepriceOut' },
  { name: 'reprice-job', path: 'src/estimate/quotes/reprice.ts', type: 'RepricedOut' },
  { name: 'learned', path: 'src/closeout/learn.ts', type: 'LearnedOut' },
]
export async function outputSchemas() {
  const { createGenerator } = await import('ts-json-schema-generator')
  return OUTPUTS.map(({ name, path, type }) => {
    const schema = createGenerator({ path: join(root, path), tsconfig: join(root, 'tsconfig.json'), type, skipTypeCheck: true, topRef: false, additionalProperties: true }).createSchema(type)
    return { file: `schemas/${name}.schema.json`, text: `${JSON.stringify({ $schema: schema.$schema, $id: `lidwork-${name}-1`, title: `lidwork ${name}`, ...schema }, undefined, 2)}\n` }
  })
}

/** Writes schemas/, which editors and other programs read. */
export async function buildSchemas() {
  for (const { file, text } of await schemaFiles()) put(join(root, file), text)
}

/** These take a while: written when a type changed, by `npm run schemas`. */
export async function buildOutputSchemas() {
  for (const { file, text } of await outputSchemas()) put(join(root, file), text)
}

/** Writes types/, what the package exports as TypeScript sees it. Slow, so only when the exports changed, by `npm run schemas`; `tsc` holds the two against each other. */
export async function buildTypes() {
  const { generateDtsBundle } = await import('dts-bundle-generator')
  const [text] = generateDtsBundle([{ filePath: join(root, 'src/api/index.ts'), output: { noBanner: true, exportReferencedTypes: true } }], { preferredConfigPath: join(root, 'tsconfig.json') })
  put(join(root, 'schemas/lidwork.d.ts'), text)
}

// The price of one house and of 1,000, by this program and by a general-purpose spreadsheet engine that is given the same arithmetic: each line of
// material and labor, tax, contingency, margin, rounding. Both must come to the same cent. node tests/bench/spreadsheet.mjs
import { build } from 'esbuild'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { initSync, Model } from '@ironcalc/wasm'

const HOUSES = Number(process.argv[2] ?? 1000)
const root = dirname(dirname(dirname(fileURLToPath(import.meta.url)))), require = createRequire(import.meta.url)
initSync({ module: readFileSync(join(dirname(require.resolve('@ironcalc/wasm')), 'wasm_bg.wasm')) })

const folder = mkdtempSync(join(tmpdir(), 'lidwork-sheet-')), outfile = join(folder, 'core.cjs')
await build({ absWorkingDir: root, outfile, bundle: true, format: 'cjs', platform: 'node', target: 'node20',
  stdin: { resolveDir: root, contents: `
    export { readJob } from './src/job/read.ts'; export { targetOf } from './src/job/target.ts'; export { standOf } from './src/estimate/quotes/reprice.ts'; export { pricedWork } from './src/estimate/plan.ts'
    export { demoCompany, demoPrices } from './src/books/demo.ts'; export { shelf } from './src/books/open.ts'` } })
const core = require(outfile)
rmSync(folder, { recursive: true })

const read = core.readJob(readFileSync(join(root, 'examples/quince-lane-14.job.yaml')), 'quince'), { data } = read.job
/** Fuller or emptier houses: hours and needs times a factor. */
const factor = n => 1 + (n % 50) / 100
const books = core.shelf(core.demoPrices, core.demoCompany).for(core.targetOf(data)), stand = core.standOf(data, books)
const times = (q, k) => ({ ...q, value: Math.round(q.value * k * 100) / 100 })
const houses = Array.from({ length: HOUSES }, (_, n) => ({ ...stand.billed, steps: stand.billed.steps.map(s => ({ ...s, personHours: times(s.personHours, factor(n)), needs: s.needs.map(x => ({ ...x, quantity: times(x.quantity, factor(n)) })) })) }))
const ours = house => core.pricedWork(house, books).prices

/** The sheet: a line for each material and each step, and the price below them. */
const first = core.pricedWork(stand.billed, books)
function lines(house) {
  const out = [], { company } = books, materials = core.pricedWork(house, books).materials
  materials.forEach((m, i) => { const r = i + 1; out.push([r, 1, m.needed.value], [r, 2, m.product.wastePct.value], [r, 3, m.product.pack.value], [r, 4, m.product.unitPriceCents.value], [r, 5, m.product.charge === 'whole' ? `=ROUNDUP(A${r}*(1+B${r}/100)/C${r}-0.000000001,0)` : `=ROUNDUP(A${r}*(1+B${r}/100)/C${r}-0.000000001,2)`], [r, 6, `=ROUND(E${r}*D${r},0)`]) })
  const m = materials.length
  house.steps.forEach((s, i) => { const r = m + i + 1; out.push([r, 1, s.personHours.value], [r, 2, company.wageCents.value], [r, 6, `=ROUND(A${r}*B${r},0)`]) })
  const t = m + house.steps.length + 1, other = first.prices.otherCents.value + first.prices.subcontractCents.value
  out.push([t, 1, `=SUM(F1:F${m})`], [t, 2, `=ROUND(A${t}*${company.salesTaxPct.value}/100,0)`], [t, 3, `=SUM(F${m + 1}:F${t - 1})`], [t, 4, `=ROUND((A${t}+C${t})*${company.contingencyPct.value}/100,0)`],
    [t, 5, `=A${t}+B${t}+C${t}+D${t}+${other}`], [t, 6, `=ROUND(E${t}*100/(100-${company.marginPct.value}),0)`], [t, 7, `=ROUNDUP(MAX(F${t},${company.minimumCents.value})/${company.roundingCents.value}-0.000000001,0)*${company.roundingCents.value}`])
  return { out, total: [t, 7] }
}
/** One house to a workbook. */
function workbook(house) {
  const model = new Model('house', 'en', 'UTC', 'en'), { out, total } = lines(house)
  model.pauseEvaluation()
  for (const [r, c, v] of out) model.setUserInput(0, r, c, String(v))
  model.resumeEvaluation()
  model.evaluate()
  return { model, total }
}
/** The same workbook with the quantities of another house, as an office fills its sheet in again. */
function filled({ model }, house) {
  model.pauseEvaluation()
  for (const [r, c, v] of lines(house).out) if (c === 1 && typeof v === 'number') model.setUserInput(0, r, c, String(v))
  model.resumeEvaluation()
  model.evaluate()
}
const cell = ({ model, total: [r, c] }) => Number(model.getFormattedCellValue(0, r, c).replaceAll(/[^\d.-]/g, ''))

const timed = f => { const began = process.hrtime.bigint(); f(); return Number(process.hrtime.bigint() - began) / 1e6 }
const median = (f, n) => { const all = Array.from({ length: n }, () => timed(f)).sort((a, b) => a - b); return all[n >> 1] }

const sheet = workbook(houses[0])
for (const [n, h] of houses.entries()) {
  filled(sheet, h)
  const a = ours(h).totalCents.value, b = cell(sheet)
  if (a !== b) throw new Error(`house ${n}: ${a} here, ${b} in the sheet`)
}
console.log(`${HOUSES} houses of ${first.materials.length} materials and ${stand.billed.steps.length} steps: the same cents in both; Node ${process.versions.node}`)
const price = String(Math.round(first.materials[0].product.unitPriceCents.value * 1.1))
const rows = [
  ['one house, a price changed', median(() => ours(houses[0]), 201), median(() => { sheet.model.setUserInput(0, 1, 4, price); sheet.model.evaluate() }, 51)],
  ['one house, from an empty sheet', median(() => ours(houses[0]), 201), median(() => workbook(houses[0]), 11)],
  [`${HOUSES} houses, one sheet filled in again`, median(() => houses.forEach(ours), 5), median(() => { for (const h of houses) filled(sheet, h) }, 3)],
]
for (const [what, mine, theirs] of rows) console.log(`${what.padEnd(36)} here ${mine.toFixed(3).padStart(9)} ms   spreadsheet ${theirs.toFixed(3).padStart(9)} ms   ${(theirs / mine).toFixed(1)} ×`)

// The estimate on a terminal, for the person who priced it. It lays out and picks words; every figure comes with the estimate.
import type { AreaOut, EstimateOut, GateOut, MaterialOut, TaskOut } from '../estimate/output.ts'
import { countiesNamed } from '../reference/zones.ts'
import { phases, type Phase } from '../scope/kind.ts'
import { halfUp } from '../units/money.ts'
import type { Look } from './look.ts'
import { airAndEnergy } from './terminal/air.ts'
import { harmless } from './terminal/harmless.ts'
import { BELOW, GAP, bothEnds, columns, padLeft, padRight, sheet, SENTENCE, wrap, type Sheet } from './terminal/sheet.ts'
import { counted, depth, depthCell, figure, NB, phaseWords, plainFigure, rowR, shutWords, signs, stepRanges, unitWord, usd, workedR } from './terminal/words.ts'

/** The whole estimate as text; no line is wider than the look, and without color nothing is lost. */
export function terminalEstimate(estimate: EstimateOut, look: Look): string {
  const e = harmless(estimate, look.ascii)
  const on = sheet(look)
  for (const section of [head, verdict, gates, stopped, areas, besides, lighter, eaves, sealing, ducts, work, office, deferral, materials, buying, price, offers, airAndEnergy, leftOut, findings, overrides, assumptions, standing]) section(e, on)
  return on.text()
}

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`)
const words = (code: string): string => code.replaceAll('-', ' ')
const narrow = (on: Sheet): boolean => on.width < 80

// Head

const edition = (code: string): string => code.replace(/^iecc-/, `IECC${NB}`)

function place({ basis }: EstimateOut): string {
  const { state, county, codeEdition, climateZone } = basis
  // The full name where it is clear which county is meant, else the word as it was written.
  const named = county === undefined ? [] : countiesNamed(state, county)
  const seat = county === undefined ? state : `${named.length === 1 ? named[0]!.name : county} ${state}`
  return [seat, codeEdition && edition(codeEdition), climateZone && `zone ${climateZone}`].filter(Boolean).join(', ')
}

function books({ basis: { priceBook, priceBooks, company } }: EstimateOut): string {
  const named = [...new Set((priceBooks ?? [priceBook]).map(b => b.dated === priceBook.dated ? b.name : `${b.name} of ${b.dated}`))].join(' and ')
  const prices = !priceBooks && priceBook.demo ? 'demo prices' : /\bprices?\b/i.test(named) ? named : `prices ${named}`, firm = company.demo ? 'demo company' : company.name
  return priceBook.dated === company.dated ? `${prices}, ${firm}, ${company.dated}` : `${prices} ${priceBook.dated}, ${firm} ${company.dated}`
}

function head(e: EstimateOut, on: Sheet): void {
  const { title, id, status, surveyedOn } = e.job
  bothEnds(on, title, [id, status, surveyedOn].filter(Boolean).join('   '), true)
  bothEnds(on, place(e), books(e))
  for (const r of e.revisions ?? []) {
    const money = r.priceCents === undefined ? undefined : `${usd(r.priceCents)}${r.changeCents === undefined || r.changeCents === 0 ? '' : ` (${r.changeCents > 0 ? '+' : ''}${usd(r.changeCents)})`}`
    on.row({ at: 1, text: `revision ${r.number}, ${r.on}, ${r.sentOn === undefined ? 'not sent' : `sent ${r.sentOn}`}: ${sentence(r.reason)}${r.changed === undefined ? '' : ` Changed: ${sentence(r.changed)}`}`, ...(money === undefined ? {} : { right: money }) })
  }
  on.gap()
}

// Verdict and gates

const VERDICT_SENTENCE: Readonly<Record<EstimateOut['verdict'], string>> = {
  go: 'Quote it and schedule it', conditional: 'Quote it, open in part', hold: 'Quote it, do not schedule it', stop: 'Do not start, and quote the visit only',
}

function verdict(e: EstimateOut, on: Sheet): void {
  const open = (state: GateOut['state']): number => e.gates.filter(g => g.open && g.state === state).length
  const { shut, ours } = shutWords({ stop: open('stop'), hold: open('hold'), mend: open('mend') }), out = e.stopped.length
  const why = [
    ...shut,
    out > 0 && e.verdict !== 'stop' && `${counted(out, 'task')} not in this price`,
    e.verdict === 'conditional' && out === 0 && 'an unknown or an allowance is in the price', ...e.verdict === 'stop' ? [] : ours,
  ].filter(Boolean)
  on.row({ mark: signs[e.verdict], red: isRed(e.verdict), word: e.verdict, boldWord: true, text: `${VERDICT_SENTENCE[e.verdict]}${why.length > 0 ? `: ${why.join('; ')}` : ': nothing is shut'}.` })
}

const isRed = (state: string): boolean => state === 'stop' || state === 'hold'

const GATE_RANK: Readonly<Record<GateOut['state'], number>> = { stop: 0, hold: 1, mend: 2, note: 4 }
const gateRank = (g: GateOut): number => (g.open || g.state === 'note' ? GATE_RANK[g.state] : GATE_RANK.mend + 1)

function gates(e: EstimateOut, on: Sheet): void {
  if (e.gates.length === 0) return
  const step = new Map(e.tasks.map(t => [t.id, t.step]))
  const keep = 6
  on.section('gates', 'line')
  for (const g of [...e.gates].sort((a, b) => gateRank(a) - gateRank(b))) {
    const state = g.open || g.state === 'note' ? g.state : 'opened'
    const below = (text: string): void => on.row({ at: SENTENCE, text, keep })
    on.row({ mark: signs[state], red: isRed(state), word: state, boldWord: true, text: `${[g.id, g.where].filter(Boolean).join(', ')}: ${g.why}`, right: String(g.line), keep })
    if (state === 'opened') below(g.clearance ? `opened by ${g.clearance.by} on ${g.clearance.on}, ${g.clearance.paper}` : 'opened')
    else if (state === 'note') { if (g.clearedBy !== '') below(`asks for: ${g.clearedBy}`) }
    else {
      below(`shut: ${shut(g, e)}`)
      const task = g.clearedByTask === undefined ? undefined : step.get(g.clearedByTask)
      below(`opens with: ${state === 'mend' ? [task === undefined ? 'a task of ours that is stopped' : `step${NB}${task}`, g.clearedBy].join(', ') : task === undefined ? g.clearedBy : `${g.clearedBy}; step${NB}${task}`}`)
    }
  }
}

/** Of what a gate shuts, the phases that this house has work in. */
function shut(g: GateOut, e: EstimateOut): string {
  const all = phases.every(p => g.stops.phases.includes(p))
  const here = g.stops.phases.filter(p => [...e.tasks, ...e.stopped].some(t => t.phase === p))
  return `${all ? 'all work' : (here.length > 0 ? here : g.stops.phases).map(p => phaseWords[p]).join(', ')}, ${g.stops.places.length > 0 ? `in ${g.stops.places.join(', ')}` : 'in the whole attic'}`
}

/** One reason, then all that it takes: a stop spreads to whatever would cover it. */
function stopped(e: EstimateOut, on: Sheet): void {
  if (e.stopped.length === 0) return
  on.section('stopped', 'not in this price')
  const reasons = new Map<string, EstimateOut['stopped'][number][]>()
  for (const s of e.stopped) {
    const key = JSON.stringify([s.gate, s.why]), same = reasons.get(key)
    if (same) same.push(s); else reasons.set(key, [s])
  }
  for (const tasks of reasons.values()) {
    const { gate, why } = tasks[0]!, ofGate = e.gates.some(g => g.id === gate)
    on.row({ mark: ofGate ? signs.stop : '', red: ofGate, text: `${gate}: ${why}` })
    for (const t of tasks) on.row({ word: phaseWords[t.phase], text: t.title, at: WORK_TEXT })
  }
}

// Areas

const maybe = (x: number | undefined, say: (x: number) => string): string => (x === undefined ? '' : say(x))

type AreaColumn = readonly [head: string, unit: string, width: number, of: (a: AreaOut) => string]

const AREA_COLUMNS: readonly AreaColumn[] = [
  ['now', 'R', 7, a => maybe(a.existingR, r => figure(r, 1))], ['goal', 'R', 7, a => maybe(a.targetR, r => figure(r, 1))], ['row', '', 8, a => (a.chartR === undefined ? maybe(a.battR ?? a.packedR, r => rowR(r, false)) : rowR(a.chartR, a.interpolated !== true))],
  ['blown', 'in', 9, a => maybe(a.initialDepthIn, depthCell)], ['settled', 'in', 10, a => maybe(a.settledDepthIn, depthCell)], ['bags', '', 9, a => maybe(a.bags, x => figure(x, 2))],
]

function areas(e: EstimateOut, on: Sheet): void {
  if (e.areas.length === 0) return
  const wide: AreaColumn[] = narrow(on) ? [] : [['load', 'psf', 7, a => maybe(a.ceilingLoadPsf, x => figure(x, 2))], ['limit', 'psf', 7, a => (a.ceilingLoadPsf === undefined ? '' : maybe(a.ceilingLimitPsf, x => figure(x, 2)))]]
  const figures = [...AREA_COLUMNS, ...wide].filter(([, , , of]) => e.areas.some(a => of(a) !== ''))
  const widths = figures.map(([, , width]) => width)
  on.gap()
  on.heads('areas', figures.map(([head, unit]) => [head, unit]), widths)
  for (const a of e.areas) on.figures(a.id, figures.map(([, , , of]) => of(a)), widths)
  const called = new Map(e.materials.map(m => [m.item, m.name]))
  for (const a of e.areas) on.row({ text: areaSentence(a, a.product === undefined ? undefined : called.get(a.product) ?? a.product) + (narrow(on) ? loadWords(a) : '') })
}

/** Where the columns have no room. */
const loadWords = (a: AreaOut): string => (a.ceilingLoadPsf === undefined ? '' : ` The ceiling carries ${figure(a.ceilingLoadPsf, 2)}${NB}psf${a.ceilingLimitPsf === undefined ? '' : ` of ${figure(a.ceilingLimitPsf, 2)}`}.`)

const INDENT = 5

function areaSentence(a: AreaOut, product: string | undefined): string {
  const size = `${a.id === a.kind ? '' : `${a.id}, `}${words(a.kind)}, ${figure(a.areaFt2)}${NB}ft²${a.netAreaFt2 === a.areaFt2 ? '' : ` (${figure(a.netAreaFt2)}${NB}ft² net)`}`
  if (a.stoppedBy.length > 0) return `${size}: nothing is blown in this price, ${a.stoppedBy.map(s => (s === 'declined' ? 'the owner keeps an opening open' : `stopped by ${s}`)).join(', ')}.`
  if (a.existingR === undefined) return `${a.id === a.kind ? words(a.kind) : `${words(a.kind)} ${a.id}`}, ${figure(a.areaFt2)}${NB}ft²: left out; the line beside it is closed and dammed.`
  if (product === undefined) return `${size}: left as it is.`
  const ruler = a.topOfFillInitialIn === undefined ? '' : `, to ${depth(a.topOfFillInitialIn).replace(' ', NB)}${NB}in on the ruler`
  const really = a.averageR === undefined ? '' : ` ${a.finalR === undefined ? 'The' : `Nominal ${workedR(a.finalR)}; the`} ${a.kind === 'knee-wall' ? 'wall' : 'ceiling'} will average ${workedR(a.averageR)}${a.targetR === undefined ? '' : ` of ${plainFigure(a.targetR)}${short(a.averageR, a.targetR)}`}.${edgeWords(a)}`
  return `${size}: ${product}${ruler}.${really}`
}

const edgeWords = ({ edgeStrip: s }: AreaOut): string => (s === undefined ? '' : ` At the eaves a strip ${figure(s.widthFt, 1)}${NB}ft wide tapers to ${depth(s.wallDepthIn).replace(' ', NB)}${NB}in at the wall and averages ${workedR(s.averageR)}.`)

/** The difference of the two figures as they are printed. */
function short(average: number, goal: number): string {
  const tenths = halfUp(goal * 10) - halfUp(average * 10)
  return tenths > 0 ? `: ${workedR(tenths / 10)} short` : ''
}

function besides(e: EstimateOut, on: Sheet): void {
  const with_ = e.areas.filter(a => (a.neighborRows?.length ?? 0) > 0)
  if (with_.length === 0) return
  on.section('rows beside', `${padLeft('row', 8)}${padLeft('bags', 10)}${padLeft('bags $', 13)}`)
  for (const a of with_) a.neighborRows!.forEach((n, i) => on.row({
    word: i === 0 ? a.id : '', text: n.chartR < (a.chartR ?? 0) ? 'the row under' : 'the row over', right: padLeft(rowR(n.chartR, true), 8) + padLeft(figure(n.bags, 2), 10) + padLeft(usd(n.bagsCents), 13),
  }))
}

function lighter(e: EstimateOut, on: Sheet): void {
  const with_ = e.areas.filter(a => a.lighter)
  if (with_.length === 0) return
  on.section('lighter fill', `${padLeft('row', 8)}${padLeft('bags', 9)}${padLeft('load psf', 10)}${padLeft('total $', 12)}`)
  for (const a of with_) {
    const l = a.lighter!
    on.row({ word: a.id, text: l.product, right: padLeft(rowR(l.chartR, !l.interpolated), 8) + padLeft(figure(l.bags, 2), 9) + padLeft(figure(l.ceilingLoadPsf, 2), 10) + padLeft(usd(l.totalCents), 12) })
    if (l.moreCents !== undefined) on.row({ at: SENTENCE, text: l.moreCents < 0 ? 'under this price' : 'over this price', right: usd(Math.abs(l.moreCents)) })
  }
}

function eaves(e: EstimateOut, on: Sheet): void {
  if (!e.eaves || e.verdict === 'stop') return
  on.section('eaves')
  on.row({ text: `${counted(e.eaves.bays, 'bay')}, ${e.eaves.ventedBays} vented: ${counted(e.eaves.baffles, 'baffle')}, ${counted(e.eaves.windBlocks, 'wind block')}.` })
  const v = e.atticVents
  if (v) on.row({ text: `Vents: ${figure(v.lowIn2)}${NB}in² of net free area at the eaves, ${figure(v.highIn2)} high${v.ratio === undefined ? '' : `: 1/${figure(v.ratio)} of the attic floor`}; ${figure(v.neededIn2)} asked for.` })
  for (const s of e.eaves.sides) on.row({ word: s.area, text: `${s.where}: ${counted(s.bays, 'bay')}, ${s.ventedBays} vented, ${counted(s.baffles, 'baffle')}` })
}

// Sealing and work

function sealing(e: EstimateOut, on: Sheet): void {
  if (e.sealing.length === 0 || e.verdict === 'stop') return
  const called = new Map(e.materials.map(m => [m.item, m.name]))
  on.section('sealing', 'person-h')
  for (const s of e.sealing) {
    on.row({ text: `${words(s.kind)}${e.areas.length > 1 ? ` in ${s.area}` : ''}, ${s.where}${s.count === 1 ? '' : ` (${s.count})`}: ${s.method}${leakWords(s)}`, right: figure(s.personHours, 2), keep: HOURS })
    if (s.materials.length > 0) on.row({ at: SENTENCE, text: s.materials.map(m => `${called.get(m.item) ?? m.item}: ${amount(m.quantity, m.unit)}`).join('; '), keep: HOURS })
  }
}

/** To the tenth of a square inch: a table of parts says no more. */
const leakWords = (s: EstimateOut['sealing'][number]): string => (s.leakageAreaIn2Before === undefined || s.leakageAreaIn2After === undefined ? '' : `; leaks ${figure(s.leakageAreaIn2Before, 1)}${NB}in²${s.leakageAreaIn2After < s.leakageAreaIn2Before ? `, closed ${figure(s.leakageAreaIn2After, 1) === figure(0, 1) ? 'tight' : figure(s.leakageAreaIn2After, 1)}` : ''}`)

function ducts(e: EstimateOut, on: Sheet): void {
  if (e.ducts.length === 0 || e.verdict === 'stop') return
  const called = new Map(e.materials.map(m => [m.item, m.name]))
  on.section('ducts', 'person-h')
  for (const d of e.ducts) {
    const skin = `${d.id}${e.areas.length > 1 ? ` in ${d.area}` : ''}, ${d.use}, ${figure(d.surfaceFt2)}${NB}ft²`
    on.row({ text: `${skin}: ${d.method}${d.rAfter === undefined ? `; R${NB}${plainFigure(d.rBefore)} on it` : `; wrapped, R${NB}${plainFigure(d.rBefore)} to R${NB}${plainFigure(d.rAfter)}`}`, right: figure(d.personHours, 2), keep: HOURS })
    if (d.materials.length > 0) on.row({ at: SENTENCE, text: d.materials.map(m => `${called.get(m.item) ?? m.item}: ${amount(m.quantity, m.unit)}`).join('; '), keep: HOURS })
    on.row({ at: SENTENCE, text: `It loses ${figure(d.lossBtuhBefore)}${NB}Btu/h now${d.lossBtuhAfter === undefined ? '' : `, ${figure(d.lossBtuhAfter)} wrapped`}, at the temperatures and air flow under assumptions.`, keep: HOURS })
  }
}

const amount = (quantity: number, unit: string): string => `${plainFigure(quantity)}${NB}${unitWord(unit).replaceAll(' ', NB)}`

/** Columns kept for hours at the right edge. */
const HOURS = 8
const AFTER = 8
/** One column to the right of a sentence: "clear the way" is a long word. */
const WORK_TEXT = SENTENCE + 1

/** What hides a leak. */
const COVERS: readonly Phase[] = ['wrap', 'ventilate', 'contain', 'insulate']

function work(e: EstimateOut, on: Sheet): void {
  if (e.tasks.length === 0) return
  const step = new Map(e.tasks.map(t => [t.id, t.step]))
  const after = narrow(on) ? 0 : AFTER
  const line = e.tasks.findIndex(t => COVERS.includes(t.phase))
  on.section('work', after > 0 ? `person-h${padLeft('after', after)}` : 'person-h')
  e.tasks.forEach((t, i) => {
    if (i === line && line > 0) coverLine(on)
    taskRow(t, step, e.areas.length, after, on)
  })
  on.rule(HOURS, after)
  on.row({ text: `crew of ${e.labor.crewSize}, ${counted(e.labor.days, 'day')}`, right: figure(e.labor.personHours, 2) + ' '.repeat(after), boldRight: true })
  const by = phases.filter(p => (e.labor.byPhase[p] ?? 0) > 0).map(p => `${phaseWords[p]}${NB}${figure(e.labor.byPhase[p]!, 2)}`)
  if (by.length > 1) on.row({ text: `${by.join(', ')}.` })
}

function taskRow(t: TaskOut, step: ReadonlyMap<string, number>, many: number, after: number, on: Sheet): void {
  const keep = HOURS + after
  const waits = after > 0 ? wrap(stepRanges(t.after.flatMap(id => step.get(id) ?? [])), after - 2) : ['']
  on.row({ mark: String(t.step), word: phaseWords[t.phase], at: WORK_TEXT, text: t.title + (many > t.areas.length ? `, in ${t.areas.join(' and ')}` : ''), right: waits.map((w, i) => (i === 0 ? figure(t.personHours, 2) : '') + padLeft(w, after)), keep })
  if (after === 0 && t.after.length > 0) on.row({ at: WORK_TEXT, text: `After ${stepRanges(t.after.flatMap(id => step.get(id) ?? []))}.` })
  if (t.cautions.length > 0) on.row({ at: WORK_TEXT, text: `Care: ${t.cautions.map(sentence).join(' ')}` })
}

/** The lid: above it is closed first, below it can't be undone. */
function coverLine(on: Sheet): void {
  const word = 'cover line', from = INDENT + word.length + 2
  on.row({ mark: on.heavy.repeat(3), word, boldWord: true, at: from + 1, text: on.heavy.repeat(on.width - from) })
  on.row({ text: 'In each area nothing below starts until all above is done and seen.' })
}

// Materials and price

/** A figure and its unit: figures end in one column, units begin in the next; a unit too long for its column goes on below. */
function withUnits(cells: readonly (readonly [string, string])[], head: string, most: number): { width: number; head: string; cells: string[] } {
  const figures = Math.max(columns(head), ...cells.map(c => columns(c[0]))), units = Math.min(most, Math.max(...cells.map(c => columns(c[1]))))
  const gap = units > 0 ? 1 : 0
  const laid = ([f, u]: readonly [string, string]): string => wrapUnit(u, units).map((part, i) => padLeft(i === 0 ? f : '', figures) + ' '.repeat(gap) + padRight(part, units)).join('\n')
  return { width: figures + gap + units, head: padLeft(head, figures) + ' '.repeat(gap + units), cells: cells.map(laid) }
}

const wrapUnit = (unit: string, width: number): string[] => (columns(unit) <= width ? [unit] : wrap(unit, width))

function office(e: EstimateOut, on: Sheet): void {
  if (e.office.length === 0 || e.verdict === 'stop') return
  on.section('office')
  for (const o of e.office) on.row({ text: sentence(o.what) })
}

/** A stopped house: what has to happen first, and what the visit costs. */
function deferral(e: EstimateOut, on: Sheet): void {
  if (e.verdict !== 'stop') return
  const shut = e.gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold'))
  on.section('before anything starts')
  shut.sort((a, b) => gateRank(a) - gateRank(b)).forEach((g, i) => { on.row({ mark: String(i + 1), text: `${g.where}: ${g.clearedBy}.` }) })
  on.row({ text: 'Then the house is surveyed again where it was changed, and priced.' })
}

function materials(e: EstimateOut, on: Sheet): void {
  const m = e.materials
  if (m.length === 0) return
  const most = on.width < ROOMY ? MOST_UNIT : 2 * MOST_UNIT
  const needed = withUnits(m.map(x => [figure(x.needed, 2), x.unit === x.buyUnit ? '' : unitWord(x.unit)]), 'needed', most)
  const buy = withUnits(m.map(x => [plainFigure(x.buy), unitWord(x.buyUnit)]), 'buy', most)
  const money = (heads: [string, string], of: (x: MaterialOut) => string) => {
    const cells = m.map(of)
    return { width: Math.max(...[...heads, ...cells].map(columns)), heads, cells }
  }
  const all: readonly { readonly width: number; readonly heads: readonly [string, string]; readonly cells: readonly string[] }[] = [{ ...needed, heads: [needed.head, ''] }, { ...buy, heads: [buy.head, ''] }, money(['charged', 'packs'], x => figure(x.charged, 2)), money(['each', '$'], x => usd(x.unitPriceCents)), money(['total', '$'], x => usd(x.totalCents))]
  const room = (cs: typeof all): number => on.width - INDENT - cs.reduce((sum, c) => sum + c.width + GAP, 0)
  // Where a name would have no room, the order and the sum stay, and the rest stands below.
  const cols = room(all) < LEAST_NAME ? [all[1]!, all[4]!] : all
  on.gap()
  const widths = cols.map(c => c.width + GAP)
  on.heads('materials', cols.map(c => c.heads), widths)
  m.forEach((x, i) => {
    on.figures(x.name, cols.map(c => c.cells[i]!), widths)
    if (cols !== all) on.row({ at: BELOW, text: `needed ${figure(x.needed, 2)}${NB}${unitWord(x.unit)}, charged ${figure(x.charged, 2)} at ${usd(x.unitPriceCents)}` })
  })
}

/** Where a price by quantity, stock, a supplier or a substitute makes a line what it is. */
function buying(e: EstimateOut, on: Sheet): void {
  const told = e.materials.flatMap(m => {
    const parts = [
      m.insteadOf && `in place of ${m.insteadOf.name}: ${m.insteadOf.why}`,
      m.breakFrom !== undefined && `priced from ${plainFigure(m.breakFrom)} on${m.listPriceCents === undefined ? '' : `, ${usd(m.listPriceCents)} by itself`}`,
      m.fromStock !== undefined && `${plainFigure(m.fromStock)} of ${plainFigure(m.onHand!)} on hand, ${plainFigure(m.buy)} to order`,
      m.supplier !== undefined && `from ${m.supplier}${m.code === undefined ? '' : `, ${m.code}`}${m.offers === undefined ? '' : ` for ${usd(m.totalCents)}; ${m.offers.map(o => `${o.supplier}${o.item === m.item ? '' : ` (${o.name})`} ${usd(o.totalCents)}`).join(', ')}`}`,
    ].filter(Boolean)
    return parts.length > 0 ? [{ name: m.name, text: parts.join('; ') }] : []
  })
  if (told.length === 0) return
  on.section('buying')
  for (const t of told) on.row({ text: sentence(`${t.name}: ${t.text}`) })
}

const MOST_UNIT = 7
const ROOMY = 90
const LEAST_NAME = 14

function price(e: EstimateOut, on: Sheet): void {
  const p = e.price
  const line = (text: string, cents: number | undefined): void => { if (cents !== undefined) on.row({ text, right: usd(cents) }) }
  on.section('price', '$')
  if (e.verdict === 'stop' || p.totalCents === undefined) {
    line('the visit', p.directCents)
    on.row({ text: 'No total: what is stopped is not priced.' })
    return
  }
  line('materials, as charged', p.materialsCents)
  line('sales tax', p.salesTaxCents)
  line(`labor, ${figure(e.labor.personHours, 2)} person-h at ${usd(e.labor.wageCents)}`, p.laborCents)
  line('subcontract', p.subcontractCents)
  line('other', p.otherCents)
  on.rule(MONEY)
  line('direct', p.directCents)
  line('contingency', p.contingencyCents)
  for (const r of p.risks ?? []) on.row({ at: SENTENCE, text: `${figure(r.addPct, 1)}% of it: ${words(r.id)}, ${r.why}`, keep: MONEY })
  line('overhead', p.overheadCents)
  on.rule(MONEY)
  line('cost', p.costCents)
  line('price at margin', p.totalCents - (p.minimumAddedCents ?? 0) - (p.roundingCents ?? 0) - (p.customerTaxCents ?? 0))
  line('minimum charge, added', p.minimumAddedCents)
  line('rounding', p.roundingCents)
  line('customer tax', p.customerTaxCents)
  on.rule(MONEY)
  const shares = [p.marginPct !== undefined && `margin ${figure(p.marginPct, 1)}%`, p.markupPct !== undefined && `markup ${figure(p.markupPct, 1)}%`].filter(Boolean).join(', ')
  on.row({ text: `total${shares === '' ? '' : ` (${shares})`}`, boldText: true, right: usd(p.totalCents), boldRight: true })
  if ((p.incentivesCents ?? 0) !== 0) { line('incentives, if they are granted', -p.incentivesCents!); line('net', p.netCents) }
  if ((p.depositCents ?? 0) !== 0) line('deposit', p.depositCents)
  if (p.validDays !== undefined) on.row({ text: `The price holds ${counted(p.validDays, 'day')}.` })
}

const MONEY = 12

function offers(e: EstimateOut, on: Sheet): void {
  if (e.offers.length === 0 || e.verdict === 'stop') return
  on.section('on offer, not in the price', '$')
  for (const o of e.offers) on.row({ text: o.what, right: usd(o.priceCents) })
}

function leftOut(e: EstimateOut, on: Sheet): void {
  if (e.price.excludes.length === 0) return
  on.section('the price leaves out')
  for (const text of e.price.excludes) on.row({ text: sentence(text) })
}

// What else there is to know

function findings(e: EstimateOut, on: Sheet): void {
  if (e.findings.length === 0) return
  on.section('findings', 'line')
  for (const severity of ['warning', 'note'] as const) for (const f of e.findings) {
    if (f.severity === severity) on.row({ word: severity, boldWord: true, text: f.message, right: String(f.line), keep: 6 })
  }
}

function overrides(e: EstimateOut, on: Sheet): void {
  if (e.overrides.length === 0) return
  on.section('overrides')
  for (const o of e.overrides) on.row({ text: `${o.path}: ${o.value} instead of ${o.insteadOf}` })
}

const RATE = 'rate.'

function assumptions(e: EstimateOut, on: Sheet): void {
  if (e.assumptions.length === 0) return
  const rates = e.assumptions.filter(a => a.id.startsWith(RATE)).length
  on.section('assumptions')
  for (const a of e.assumptions) if (!a.id.startsWith(RATE)) on.row({ text: `${a.what} (${a.why})`, right: value(a.value, a.unit), keep: VALUE })
  if (rates > 0) on.row({ text: `${counted(rates, 'starting rate')}; \`lidwork explain FILE\` ${rates === 1 ? 'lists it' : 'lists them'}` })
}

const VALUE = 14

function value(x: number, unit: string): string {
  if (unit === 'cents') return `${usd(x)} USD`
  if (unit === 'year') return String(x)
  if (unit === 'R') return `R ${plainFigure(x)}`
  return unit === 'factor' || unit === 'fraction' ? plainFigure(x) : `${plainFigure(x)} ${unitWord(unit)}`
}

function standing(e: EstimateOut, on: Sheet): void {
  const { codeEdition, climateZone } = e.basis
  on.gap()
  on.row({ text: `Local code and licensed practice decide.${codeEdition === undefined ? '' : ` The goal R is advice from ${edition(codeEdition)}${climateZone === undefined ? '' : `, zone${NB}${climateZone}`}.`}` })
}

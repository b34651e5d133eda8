// A close-out on a terminal, for the office: what is left to do first, then the proof, the tests, the papers and the cost.
import type { AirBuiltOut, ApplianceBuiltOut, AreaBuiltOut, AsBuiltOut, DueOut, PartOut, SumsOut, TestOut } from '../../closeout/output.ts'
import { missingWords } from '../../closeout/papers.ts'
import type { Look } from '../look.ts'
import { overLimit } from './over-limit.ts'
import { harmless } from '../terminal/harmless.ts'
import { bothEnds, columns, padLeft, SENTENCE, sheet, type Sheet } from '../terminal/sheet.ts'
import { counted, depth, figure, NB, plainFigure, rowR, signs, usd } from '../terminal/words.ts'

/** The whole close-out as text; no line is wider than the look, and without color nothing is lost. */
export function terminalCloseout(built: AsBuiltOut, look: Look): string {
  const b = harmless(built, look.ascii), on = sheet(look)
  for (const section of [head, state, due, areas, tests, flames, mends, papers, hours, materials, money, findings]) section(b, on)
  return on.text()
}

function head({ job, days, basis, installer }: AsBuiltOut, on: Sheet): void {
  bothEnds(on, job.title, [job.id, days.length === 0 ? '' : days.length === 1 ? days[0] : `${days[0]!} to ${days.at(-1)!}`].filter(Boolean).join('   '), true)
  bothEnds(on, [installer.company, installer.name].filter(Boolean).join(', ') || 'no installer written', `${basis.priceBook.demo ? 'demo prices' : basis.priceBook.name}, ${basis.company.demo ? 'demo company' : basis.company.name}`)
  on.gap()
}

const STATE: Readonly<Record<AsBuiltOut['state'], readonly [sign: string, says: string]>> = {
  proved: [signs.go, 'All of it is proved; nothing is left to do'], open: [signs.conditional, 'Something is left to do'], stop: [signs.stop, 'Nobody may be left alone with this house'],
}

function state({ state: s, stops, open }: AsBuiltOut, on: Sheet): void {
  const why = [stops.length > 0 && counted(stops.length, 'stop'), open.length > 0 && `${counted(open.length, 'thing')} open`].filter(Boolean)
  on.row({ mark: STATE[s][0], red: s === 'stop', word: s, boldWord: true, text: `${STATE[s][1]}${why.length > 0 ? `: ${why.join('; ')}` : ''}.` })
}

function due({ stops, open }: AsBuiltOut, on: Sheet): void {
  const lines = (title: string, list: readonly DueOut[], mark: string, red: boolean): void => {
    if (list.length === 0) return
    on.section(title)
    for (const d of list) {
      on.row({ mark, red, word: red ? 'stop' : 'open', boldWord: true, text: `${d.what}: ${d.why}` })
      on.row({ at: SENTENCE, text: `mend: ${d.mend}` })
    }
  }
  lines('before anybody leaves', stops, signs.stop, true)
  lines('left to do', open, signs.conditional, false)
}

const PROOF: Readonly<Record<AreaBuiltOut['proof'], string>> = { proved: 'proved', short: 'short', 'not-shown': 'not shown' }

function areas({ areas: all }: AsBuiltOut, on: Sheet): void {
  if (all.length === 0) return
  on.section('areas', `${padLeft('sold', 9)}${padLeft('proved', 9)}${padLeft('bags', 9)}${padLeft('asked', 9)}`)
  for (const a of all) {
    const sold = a.soldR === undefined ? '' : rowR(a.soldR, a.interpolated !== true), proved = a.way === 'blown' ? a.certifiedR === undefined ? 'none' : rowR(a.certifiedR, true) : PROOF[a.proof]
    on.row({ text: a.id, boldText: true, right: `${padLeft(sold, 9)}${padLeft(proved, 9)}${padLeft(a.bags === undefined ? '' : plainFigure(a.bags), 9)}${padLeft(a.bagsNeeded === undefined ? '' : figure(a.bagsNeeded, 2), 9)}` })
    const say = (text: string): void => on.row({ at: 8, text })
    say(`${figure(a.coveredFt2)}${NB}ft² of ${a.productName}${a.maker === undefined ? '' : `, ${a.maker}`}${a.proof === 'proved' ? '' : `; ${PROOF[a.proof]}: ${a.why.join('; ')}`}.`)
    if (a.interpolated && a.promisedR !== undefined) say(`R${NB}${plainFigure(a.soldR!)} lies between two rows of the label, which proves the row below it: R-${plainFigure(a.promisedR)}.`)
    if (a.readings && a.readings.length > 0) say(`On the markers ${a.readings.map(r => `${depth(r.topIn).replace(' ', NB)}${r.shortIn === undefined ? '' : ' (short)'}`).join(', ')}${NB}in, of which ${figure(a.oldFillIn!, 2)}${NB}in are old fill: new fill ${figure(a.initialDepthIn!, 2)}${NB}in at least, ${figure(a.meanDepthIn!, 2)} in the mean.`)
    if (a.weightPsf !== undefined) say(`${figure(a.weightPsf, 3)}${NB}psf, ${figure(a.densityPcf ?? 0, 2)}${NB}lb/ft³ as blown${a.settledDepthIn === undefined ? '' : `; the label’s settled thickness is ${figure(a.settledDepthIn, 2)}${NB}in`}.`)
    else if (a.densityPcf !== undefined) say(`Packed to ${figure(a.densityPcf, 2)}${NB}lb/ft³${a.densityNeededPcf === undefined ? '' : `, ${figure(a.densityNeededPcf, 2)} asked`}.`)
    const next = a.proof === 'short' ? a.sold : undefined
    if (next) say(`${rowR(next.chartR, a.interpolated !== true)} asks ${figure(next.bagsNeeded, 2)}${NB}bags (${tick(next.bags)}), ${figure(next.weightNeededPsf, 3)}${NB}psf (${tick(next.weight)}) and ${depth(next.initialNeededIn).replace(' ', NB)}${NB}in of new fill (${tick(next.depth)}).`)
  }
}

const tick = (met: boolean): string => (met ? 'met' : 'not met')

const AGAINST: Readonly<Record<NonNullable<AirBuiltOut['against']>, string>> = { within: 'within what was expected', less: 'less than was expected', more: 'more than was expected' }

function tests({ air, ventilation: v }: AsBuiltOut, on: Sheet): void {
  if (air === undefined && v === undefined) return
  on.section('tests', `${padLeft('in', 10)}${padLeft('out', 10)}${padLeft('less', 10)}${padLeft('%', 8)}`)
  const line = (what: string, t: TestOut | undefined, digits = 0): void => {
    if (t) on.row({ text: what, right: `${padLeft(t.in === undefined ? '-' : figure(t.in, digits), 10)}${padLeft(t.out === undefined ? '-' : figure(t.out, digits), 10)}${padLeft(t.less === undefined ? '' : figure(t.less, digits), 10)}${padLeft(t.lessPct === undefined ? '' : figure(t.lessPct, 1), 8)}` })
  }
  line('CFM50', air?.cfm50)
  line('ACH50', air?.ach50, 2)
  line('CFM25, all', air?.cfm25Total)
  line('CFM25, to outside', air?.cfm25Outside)
  line('attic against house, Pa', air?.zonePa, 1)
  if (air?.predicted && air.cfm50?.out !== undefined) on.row({ text: `${figure(air.predicted.cfm50CutLow)} to ${figure(air.predicted.cfm50CutHigh)}${NB}CFM50 less were expected, most likely ${figure(air.predicted.cfm50CutExpected)}${air.against ? `: ${AGAINST[air.against]}` : ''}.` })
  if (v) on.row({ text: `Fresh air by ASHRAE${NB}${v.standard}: ${v.fanNeeded ? `${figure(Math.ceil(v.fanCfm))}${NB}cfm missing` : 'enough'}${v.measured ? ', by the test after the work' : ', by what was expected; not measured'}${v.fanCfmPredicted === undefined ? '' : ` (the estimate said ${figure(Math.ceil(v.fanCfmPredicted))})`}.` })
}

function flames(built: AsBuiltOut, on: Sheet): void {
  const { combustion } = built
  if (combustion.length === 0) return
  on.section('flames')
  for (const a of combustion) { const over = overLimit(a, built), clean = a.after?.result === 'pass' && !over; on.row({ mark: clean ? signs.go : signs.stop, red: !clean, text: `${a.what}, ${a.at}: ${tested(a, over)}` }) }
}

function tested({ before, after, during }: ApplianceBuiltOut, over: boolean): string {
  const figures = after && [after.pulledDownPa !== undefined && `pulled down by ${after.pulledDownPa}${NB}Pa`, after.spillageSeconds !== undefined && `spillage ends at ${after.spillageSeconds}${NB}s`, after.flueCoPpm !== undefined && `flue ${after.flueCoPpm}${NB}ppm CO`, after.roomCoPpm !== undefined && `room ${after.roomCoPpm}${NB}ppm CO`].filter(Boolean).join(', ')
  return `${before ? `${before.result} on ${before.on} before the work` : 'no test before the work'}${during.length > 0 ? `, ${counted(during.length, 'test')} during it` : ''}; ${after ? `${over ? 'called passed; over its limit' : after.result!} on ${after.on!} after it${after.by === undefined ? '' : ` by ${after.by}`}${figures ? `: ${figures}` : ''}` : 'not tested after it'}.`
}

function mends({ mends: all }: AsBuiltOut, on: Sheet): void {
  if (all.length === 0) return
  on.section('mends')
  for (const m of all) on.row({ mark: m.proof === undefined ? signs.mend : signs.go, text: `${m.id}, ${m.where}: ${m.proof === undefined ? 'no proof' : `closed${m.on === undefined ? '' : ` ${m.on}`}${m.by === undefined ? '' : ` by ${m.by}`}, ${m.proof}`}` })
}

const partLine = (p: PartOut): string => [p.coverageFt2 === undefined ? 'area missing' : `${figure(p.coverageFt2, 1)}${NB}ft²`, p.kind === 'loose-fill' ? `blown ${p.initialIn === undefined ? 'missing' : `${figure(p.initialIn, 2)}${NB}in`}, settled ${p.settledIn === undefined ? 'missing' : `${figure(p.settledIn, 2)}${NB}in`}` : `thickness ${p.thicknessIn === undefined ? 'missing' : `${figure(p.thicknessIn, 2)}${NB}in`}`,
  p.rValue === undefined ? 'R missing' : `R-${plainFigure(p.rValue)}`, p.kind === 'loose-fill' && (p.bags === undefined ? 'bags missing' : counted(p.bags, 'bag'))].filter(Boolean).join(', ')

function papers({ receipt, certificate }: AsBuiltOut, on: Sheet): void {
  on.section('receipt', receipt.rule)
  for (const p of receipt.parts) on.row({ text: `${p.part}: ${p.material}, ${partLine(p)}.` })
  if (receipt.parts.length === 0) on.row({ text: 'No insulation was put in.' })
  const only = certificate.missing.filter(m => !receipt.missing.some(r => r.part === m.part && r.field === m.field))
  if (receipt.missing.length > 0) on.row({ text: `Missing on it: ${missingWords(receipt.missing)}.` })
  if (only.length > 0) on.row({ text: `Missing on the certificate (${certificate.rule}) besides: ${missingWords(only)}.` })
}

function hours({ cost }: AsBuiltOut, on: Sheet): void {
  if (!cost.tasks.some(t => t.personHours !== undefined)) return
  const right = (a: string, b: string, c: string): string => `${padLeft(a, 10)}${padLeft(b, 10)}${padLeft(c, 10)}`
  on.section('hours', right('estimate', 'took', 'over'))
  for (const t of cost.tasks) if (t.estimatedHours > 0 || t.personHours !== undefined) on.row({ text: t.id, right: right(figure(t.estimatedHours, 2), t.personHours === undefined ? '-' : figure(t.personHours, 2), t.overHours === undefined ? '' : figure(t.overHours, 2)) })
  for (const u of cost.unplanned) on.row({ text: `beyond it: ${u.what}`, right: right('', u.personHours === undefined ? '-' : figure(u.personHours, 2), '') })
  on.rule(30)
  on.row({ text: 'person-h', right: right(figure(cost.estimatedHours, 2), figure(cost.personHours, 2), figure(cost.personHours - cost.estimatedHours, 2)) })
}

function materials({ cost }: AsBuiltOut, on: Sheet): void {
  const off = cost.materials.filter(m => !m.asEstimated && m.totalCents !== m.estimatedCents)
  if (off.length === 0) return
  const right = (a: string, b: string, c: string): string => `${padLeft(a, 10)}${padLeft(b, 10)}${padLeft(c, 12)}`
  on.section('materials that differ', right('estimate', 'used', 'over $'))
  for (const m of off) on.row({ text: `${m.name}, ${m.buyUnit}`, right: right(plainFigure(m.estimated), plainFigure(m.used), usd(m.totalCents - m.estimatedCents)) })
}

const SUMS: readonly (readonly [keyof SumsOut, string])[] = [['materialsCents', 'materials'], ['salesTaxCents', 'sales tax'], ['laborCents', 'labor'], ['subcontractCents', 'subcontract'], ['otherCents', 'other'], ['contingencyCents', 'contingency'], ['overheadCents', 'overhead'], ['costCents', 'cost'], ['soldCents', 'sold for']]

function money({ cost }: AsBuiltOut, on: Sheet): void {
  const { estimate: e, job: j } = cost, right = (a: string, b: string, c: string): string => `${padLeft(a, 13)}${padLeft(b, 13)}${padLeft(c, 12)}`
  on.section('job cost', right('estimate $', j ? 'job $' : '', j ? 'over $' : ''))
  for (const [key, word] of SUMS) {
    if (key === 'costCents') on.rule(columns(right('', '', '')))
    on.row({ text: word, right: right(usd(e[key]), j ? usd(j[key]) : '', j ? usd(j[key] - e[key]) : '') })
  }
  on.row({ text: j ? 'margin, kept' : 'margin', boldText: true, right: right(`${figure(e.marginPct, 1)}%`, j ? `${figure(j.marginPct, 1)}%` : '', '') })
  if (cost.changesCents !== 0) on.row({ text: `Signed changes are in it: ${usd(cost.changesCents)}.` })
  if (cost.missing.length > 0) on.row({ text: `No job cost yet, missing: ${cost.missing.join('; ')}.` })
  if (j && cost.asEstimated.length > 0) on.row({ text: `Taken as estimated, since nothing is written: ${cost.asEstimated.join(', ')}.` })
}

function findings({ findings: all }: AsBuiltOut, on: Sheet): void {
  if (all.length === 0) return
  on.section('findings', 'line')
  for (const f of all) on.row({ word: f.severity, text: f.message, right: String(f.line), keep: 6 })
}

// What the owner keeps: what lies in the attic, what changed, what was tested, and what is left. No cost or margin stands here.
import type { AirBuiltOut, ApplianceBuiltOut, AreaBuiltOut, DueOut, TestOut } from '../../../closeout/output.ts'
import { overLimit } from '../../closeout/over-limit.ts'
import { figure, NB, plainFigure } from '../../terminal/words.ts'
import { range } from '../drawings/range.ts'
import { gateTitle, opensWith } from '../gate-words.ts'
import { html, type Html, type Part } from '../html.ts'
import { page } from '../page.ts'
import { figureAt, gateList, tableOf } from '../parts.ts'
import { codeWords, dayOf, sentence } from '../say.ts'
import { inches, labelR, PART_STYLE, rulerOf, type Done } from './parts.ts'

/** What is due where the program's own words speak to the one who types the file. */
const OWNERS: Readonly<Record<string, string>> = {
  'test-missing': 'we make it, and you get the figures', 'area-not-shown': 'we write down what was put in, with its readings, and you get the figures',
  'fresh-air-short': 'a fan that runs all the time, flames tested with it on; or your own choice, signed', 'mend-not-proved': 'we open it up and look, and you get the photo',
}

function due(d: DueOut, { estimate }: Done): { readonly what: string; readonly mend: string } {
  const gate = d.code === 'gate-open' || d.code === 'mend-not-proved' ? estimate.gates.find(g => g.id === d.of) : undefined
  return { what: gate ? `${gateTitle(gate.code)}, ${gate.where}` : d.what, mend: OWNERS[d.code] ?? (gate ? opensWith(gate) : d.mend) }
}

const dues = (list: readonly DueOut[], state: 'stop' | 'hold', done: Done): Html => gateList(list.map(d => { const { what, mend } = due(d, done); return { state, word: sentence(what).slice(0, -1), says: html`<p>${sentence(d.why)}</p><p>${sentence(mend)}</p>` } }))

function areaWords(a: AreaBuiltOut): Html {
  const at = (n: string): string => `areas.${a.id}.${n}`
  return html`<section class="keep part"><h3>${a.id}, ${codeWords(a.kind)}</h3>
<div class="pair"><div><p>${a.certifiedR !== undefined ? html`${figureAt(at('certifiedR'), labelR(a.certifiedR))} of new fill, proved on the day by bags, weight and depth${a.bags !== undefined && html`: ${figureAt(at('bags'), plainFigure(a.bags))} bags`}.` : a.labelR !== undefined && a.proof === 'proved' ? html`${figureAt(at('labelR'), labelR(a.labelR))} by its label.` : a.way === 'packed' && a.proof === 'proved' ? 'Packed to the density that was asked for.' : html`Its R is not proved yet: ${a.why.join('; ')}.`}
${a.interpolated === true && a.certifiedR !== undefined && html` R${NB}${plainFigure(a.soldR!)} was agreed; it lies between two rows of the label, and the label proves the listed row.`}
${a.proof === 'short' && a.certifiedR !== undefined && html` That is short of what was agreed: ${a.why.join('; ')}.`}</p>
${a.settledDepthIn !== undefined && html`<p>It settles. By its label the new fill is then ${figureAt(at('settledDepthIn'), inches(a.settledDepthIn))}${NB}in deep at least${a.settledTopIn !== undefined && html`, and a marker reads ${figureAt(at('settledTopIn'), inches(a.settledTopIn))}${NB}in or more`}. Less than that at a marker: call us.</p>`}</div>
${a.way === 'blown' && html`<figure>${rulerOf(a)}</figure>`}</div></section>
`
}

function tests(air: AirBuiltOut): Html {
  const rows = ([['CFM50, the whole house', 'cfm50'], ['Ducts, CFM25, all leakage', 'cfm25Total'], ['Ducts, CFM25, to the outside', 'cfm25Outside']] as const).flatMap(([what, key]): { what: string; key: string; t: TestOut }[] => (air[key] ? [{ what, key, t: air[key] }] : []))
  const show = (path: string, v: number | undefined): Part => (v === undefined ? 'not measured' : figureAt(path, figure(v)))
  const p = air.predicted, less = air.cfm50?.less
  return html`${rows.length > 0 && tableOf({ caption: 'Measured before and after', columns: [{ head: 'Test' }, { head: 'Before', figure: true }, { head: 'After', figure: true }, { head: 'Less', figure: true }], rows: rows.map(({ what, key, t }) => [what, show(`air.${key}.in`, t.in), show(`air.${key}.out`, t.out), t.less === undefined ? '' : show(`air.${key}.less`, t.less)]) })}
${p && less !== undefined && air.against !== undefined && html`<figure>${range({ low: p.cfm50CutLow, expected: p.cfm50CutExpected, high: p.cfm50CutHigh, paths: ['air.predicted.cfm50CutLow', 'air.predicted.cfm50CutHigh'], show: v => figure(v), says: `${figure(p.cfm50CutLow)} to ${figure(p.cfm50CutHigh)} CFM50 less were expected, ${figure(less)} were measured.` })}<figcaption class="small">${figure(p.cfm50CutLow)} to ${figure(p.cfm50CutHigh)} CFM50 less were expected, ${figureAt('air.cfm50.less', figure(less))} were measured. ${AGAINST[air.against]}</figcaption></figure>`}
${air.sameSetUp !== true && air.cfm50?.in !== undefined && air.cfm50.out !== undefined && html`<p>Nothing says that both tests had one set-up: before and after are no pair.</p>`}`
}

const AGAINST: Readonly<Record<NonNullable<AirBuiltOut['against']>, string>> = { within: 'That is within the range.', less: 'That is less than the range.', more: 'That is more than the range.' }

function flame(a: ApplianceBuiltOut, over: boolean): Html {
  const { after } = a
  if (!after) return html`<li>${a.what} (${a.at}): not tested since the work. It stays off until it has passed.</li>
`
  const when = html` its combustion test on ${dayOf(after.on!)}, after the work${after.by !== undefined && html`, by ${after.by}`}`
  return html`<li>${a.what} (${a.at}): ${over ? html`called passed in${when}, but a reading is over its limit. See the top of this paper.` : html`${after.result === 'pass' ? 'passed' : 'failed'}${when}.`}</li>
`
}

function body(done: Done): Html {
  const { built } = done, { days, stops, open, air, ventilation: v, combustion, mends } = built, forOwner = open.filter(d => d.code !== 'receipt-not-whole' && d.code !== 'days-missing')
  return html`<p>${built.job.customer !== undefined && html`For ${built.job.customer}. `}${days.length > 0 && html`Work was done ${days.length === 1 ? 'on' : 'from'} ${dayOf(days[0]!)}${days.length > 1 && html` to ${dayOf(days.at(-1)!)}`}.`}</p>
${stops.length > 0 && html`<h2>First of all</h2>
${dues(stops, 'stop', done)}`}
<h2>What lies in your attic now</h2>
${built.areas.length === 0 ? html`<p>No insulation was put in.</p>` : built.areas.map(areaWords)}
${(air ?? v) && html`<h2>Air</h2>
${air && tests(air)}
${v && html`<p>Fresh air by ASHRAE ${v.standard}: ${v.fanNeeded ? html`${figureAt('ventilation.fanCfm', figure(v.fanCfm))}${NB}cfm are missing. ${v.choice === undefined ? 'A fan that runs all the time brings them; you decide, in writing.' : html`A fan that runs all the time brings them; what you decided is signed: ${v.choice}.`}` : 'enough.'}${v.measured ? ' By the test after the work.' : ' By what was expected; nobody has measured it since.'}</p>`}`}
${combustion.length > 0 && html`<h2>What burns fuel</h2>
<ul>${combustion.map(a => flame(a, overLimit(a, built)))}</ul>
<p>A carbon monoxide alarm belongs on each floor near the bedrooms.</p>`}
${mends.some(m => m.proof !== undefined) && html`<h2>Closed by us, with its photo</h2>
<ul>${mends.filter(m => m.proof !== undefined).map(m => html`<li>${gateTitle(m.code)}, ${m.where}: ${m.proof}${m.on !== undefined && html`, ${dayOf(m.on)}`}.</li>
`)}</ul>`}
${forOwner.length > 0 && html`<h2>Left to do</h2>
${dues(forOwner, 'hold', done)}`}
<h2>From here on</h2>
<ul><li>Store nothing on the fill. Keep the hatch shut on its gasket, and the soffit vents clear.</li>
<li>Boxes over lights stay bare on top. What is flagged or dammed stays so.</li>
<li>A new fan, stove or heater, or new windows: have what burns fuel tested again.</li>
<li>Keep the receipt. The card with the same figures is in the attic, beside the hatch.</li></ul>
${built.installer.phone !== undefined && html`<p>Questions: ${built.installer.company ?? done.company.name},${NB}${built.installer.phone}.</p>`}`
}

export const donePaper = (done: Done): string => page(done, { name: 'What was done', body: body(done), style: PART_STYLE, noPrices: true })

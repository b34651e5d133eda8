// What was found, in sentences and pictures: the section to scale, the leaks, now and after.
import type { AreaOut, EstimateOut, GateOut } from '../../../estimate/output.ts'
import { counted, figure, NB, plainFigure, workedR } from '../../terminal/words.ts'
import { holes, rulersOfR } from '../drawings/before-after.ts'
import { leakStrip, SMALL_PCT, stripParts, type LeakPart } from '../drawings/leaks.ts'
import { range } from '../drawings/range.ts'
import { eaveSection, hasSection, joistSection, sectionWords } from '../drawings/section.ts'
import { hatches } from '../drawings/svg.ts'
import { html, type Html, type Part } from '../html.ts'
import type { House } from '../page.ts'
import { figureAt, tableOf, wide } from '../parts.ts'
import { codeWords, dayOf, listed, sentence } from '../say.ts'
import { gateTitle, isPriced, shutGates } from '../gate-words.ts'

const named = (e: EstimateOut, a: AreaOut): string => (e.areas.length === 1 ? 'The attic floor' : `${a.id} (${codeWords(a.kind)})`)

/** Five sentences: what lies there, what leaks, the ducts, the air, and what stands in the way. */
export function found(house: House): Html {
  const { estimate: e, job } = house
  const measured = e.areas.filter(a => a.existingR !== undefined && a.targetR !== undefined)
  const air = e.airLeakage, sides = e.eaves, titles = (gates: readonly GateOut[]): string[] => [...new Set(gates.map(g => gateTitle(g.code).toLowerCase()))], waits = titles(shutGates(house).filter(g => isPriced(g, e))), leftOut = titles(shutGates(house).filter(g => !isPriced(g, e)))
  const says: Part[] = [
    html`${job.tests?.cfm50 === undefined ? 'The attic was looked at' : 'The attic was looked at, and the house tested with a blower door,'} on ${dayOf(e.job.surveyedOn)}${e.job.customer !== undefined && html` for ${e.job.customer}`}.`,
    measured.length > 0 && html`${measured.map((a, i) => [i > 0 && '; ', named(e, a), ': ', figureAt(`areas.${a.id}.areaFt2`, figure(a.areaFt2)), `${NB}ft² with `, figureAt(`areas.${a.id}.existingR`, workedR(a.existingR!)), ', goal ', figureAt(`areas.${a.id}.targetR`, figure(a.targetR!))])}.`,
    e.sealing.length > 0 && html`${counted(e.sealing.length, 'opening', 'openings')} between the rooms and the attic ${e.sealing.length === 1 ? 'is' : 'are'} listed and measured, alike ones together${air?.cfm50Before !== undefined && html`; the blower door ${air.cfm50Assumed ? 'is taken at' : 'reads'} ${figureAt('airLeakage.cfm50Before', figure(air.cfm50Before))}${NB}CFM50`}.`,
    e.ducts.length > 0 && html`Ducts run through the attic: ${listed([...new Set(e.ducts.map(d => d.use))])}, ${figure(e.ducts.reduce((sum, d) => sum + d.surfaceFt2, 0))}${NB}ft² of skin between warm air and the weather.`,
    sides !== undefined && sides.bays > 0 && html`Of ${figureAt('eaves.bays', sides.bays)} bays at the eaves ${figureAt('eaves.ventedBays', sides.ventedBays)} bring air into the attic; that way stays open.`,
    waits.length > 0 && html`${waits.length === 1 ? 'One thing has' : `${figure(waits.length)} things have`} to be answered before work starts: ${listed(waits)}.`,
    leftOut.length > 0 && html`Found as well, and what it touches is not in this price: ${listed(leftOut)}.`,
  ]
  return html`<h2>What we found</h2>
<ul>${says.filter(s => s !== false).map(s => html`<li>${s}</li>
`)}</ul>
`
}

/** Each piece of ceiling that ends at an eave, to scale. */
export function sections({ estimate: e }: House): Html {
  const drawn = e.areas.filter(hasSection)
  return html`${drawn.length > 0 && html`<h2>${drawn.length === 1 ? 'Your attic, to scale' : 'Your attics, to scale'}</h2>
<p class="small gray lead">3/4 in on paper is 1 ft of the house. Heights count from the ceiling, which is the heavy line.</p>`}
${drawn.map(a => html`<section><h3>${named(e, a)}</h3>
${wide(eaveSection(a, e.tasks))}
<div class="pair keep"><figure>${joistSection(a)}<figcaption class="small">Across the joists.</figcaption></figure><p class="small">${sectionWords(a)}</p></div></section>
`)}`
}

export { hatches }

interface Leak { readonly id: string; readonly where: string; readonly leakageAreaIn2: number; readonly sharePct: number; readonly step: number | undefined; readonly kind: string; readonly count: number }

function leaksOf(e: EstimateOut): Leak[] {
  const steps = new Map(e.tasks.map(t => [t.id, t.step]))
  return (e.airLeakage?.leaks ?? []).map(l => {
    const s = e.sealing.find(o => o.id === l.id)
    return { ...l, step: s?.tasks.map(t => steps.get(t)).find(n => n !== undefined), kind: s?.kind ?? '', count: s?.count ?? 1 }
  })
}

/** The strip, and what its numbers are. */
export function leaks({ estimate: e }: House): Html | false {
  const all = leaksOf(e)
  if (all.length === 0) return false
  const parts = all.map((l): LeakPart => ({ id: l.id, label: l.step === undefined ? '–' : String(l.step), sharePct: l.sharePct, left: l.step === undefined }))
  const shown = stripParts(parts).map(p => all.find(l => l.id === p.id)).filter(l => l !== undefined), small = all.filter(l => !shown.includes(l))
  return html`<h2>Where the ceiling leaks</h2>
${wide(leakStrip(parts), html`The longer a part, the more of the air goes there. Numbers are the steps below that close it${stripParts(parts).some(p => p.left) && '; – is not closed in this price'}.`)}
${tableOf({ tight: true, columns: [{ head: 'Step', figure: true }, { head: 'Opening' }, { head: 'Area', unit: 'in² as found', figure: true }, { head: 'Share', unit: '%', figure: true }], rows: [
    ...shown.map(l => [l.step ?? '–', sentence(`${codeWords(l.kind)}${l.count > 1 ? ` (${l.count})` : ''}, ${l.where}`).slice(0, -1), figureAt(`airLeakage.leaks.${l.id}.leakageAreaIn2`, figure(l.leakageAreaIn2, 1)), figureAt(`airLeakage.leaks.${l.id}.sharePct`, figure(l.sharePct))]),
    ...(small.length > 0 ? [['', `${counted(small.length, 'small one')}, each under ${SMALL_PCT}${NB}%: ${small.map(l => codeWords(l.kind)).filter((k, i, ks) => ks.indexOf(k) === i).join(', ')}`, figure(small.reduce((sum, l) => sum + l.leakageAreaIn2, 0), 1), figure(small.reduce((sum, l) => sum + l.sharePct, 0))]] : []),
  ] })}`
}

/** R and leakage, now and after. A list of openings can add up to more than a house was measured to leak: beside a reading it is not drawn. */
export function nowAndAfter({ estimate: e }: House): Html | false {
  const a = e.airLeakage, rulers = e.areas.filter((x): x is AreaOut & { existingR: number; targetR: number } => x.existingR !== undefined && x.targetR !== undefined)
  const listedHoles = a?.listedIn2Before !== undefined && a.listedIn2After !== undefined && a.listedIn2Before > 0 && (a.cfm50Before === undefined || (a.cfm50Assumed === true && a.cutCapped !== true))
  if (rulers.length === 0 && !listedHoles && a?.cfm50CutLow === undefined) return false
  const average = rulers.find(r => r.averageR !== undefined && r.finalR !== undefined && r.finalR - r.averageR > 1)
  return html`<h2>Now and after</h2>
<div class="pictures">${rulers.map(r => html`<figure>${rulersOfR(r)}<figcaption class="small">R of ${named(e, r).replace(/^T/, 't')}${r.stoppedBy.length > 0 && ': not in this price'}.</figcaption></figure>
`)}${listedHoles && html`<figure>${holes(a.listedIn2Before!, a.listedIn2After!)}<figcaption class="small">All listed openings pushed together to one hole, to the scale of the section.</figcaption></figure>`}</div>
${average && html`<p class="small">The field between the eaves reaches ${workedR(average.finalR!)}. Eaves, hatch, box tops that must stay bare and the joists bring the average of the whole ceiling to ${workedR(average.averageR!)}: that is the figure to compare.</p>`}
${a?.cfm50CutLow !== undefined && html`<figure>${range({ low: a.cfm50CutLow, expected: a.cfm50CutExpected!, high: a.cfm50CutHigh!, to: a.cfm50Before!, show: x => figure(x), paths: ['airLeakage.cfm50CutLow', 'airLeakage.cfm50CutHigh'],
    says: `The blower door reading falls by ${figure(a.cfm50CutLow)} to ${figure(a.cfm50CutHigh!)} CFM50 of ${figure(a.cfm50Before!)}, expected ${figure(a.cfm50CutExpected!)}.` })}<figcaption>By how much the blower door reading of ${figure(a.cfm50Before!)}${NB}CFM50${a.cfm50Assumed && ' (taken, not read)'} falls: ${figure(a.cfm50CutLow)} to ${figure(a.cfm50CutHigh!)}, expect ${figureAt('airLeakage.cfm50CutExpected', figure(a.cfm50CutExpected!))}. A range, not a promise.${a.cutCapped && ' The listed openings, each by itself, add up to more than that. The range is held to the share of the reading that sealing a ceiling is taken to bring.'}</figcaption></figure>`}`
}

/** Fresh air once the house is tighter, as it stands in the estimate. */
export const freshAir = ({ estimate: { ventilation: v } }: House): Html | false => v !== undefined && html`Fresh air: ASHRAE${NB}${v.standard} asks for ${figureAt('ventilation.totalCfm', plainFigure(v.totalCfm))}${NB}cfm in this house. ${v.fanNeeded ? html`Once it is sealed ${figureAt('ventilation.fanCfm', figure(Math.ceil(v.fanCfm)))}${NB}cfm of it are missing: a fan is on offer beside the price, and you decide in writing.` : 'Once it is sealed the leaks that are left bring enough: no fan is asked for.'}`

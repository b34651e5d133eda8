// What is done, in which order, and why that order.
import type { EstimateOut, TaskOut } from '../../../estimate/output.ts'
import type { Phase } from '../../../scope/kind.ts'
import { counted, depth, figure, phaseWords, rowR } from '../../terminal/words.ts'
import { workStrip, type WorkPart } from '../drawings/work.ts'
import { html, type Html, type Part } from '../html.ts'
import type { House } from '../page.ts'
import { coverAt, coverLine, figureAt, tableOf, wide } from '../parts.ts'
import { sentence } from '../say.ts'

/** What a phase is for, in one sentence. */
const WHY: Readonly<Record<Phase, string>> = {
  clear: 'What has to be true before anyone works: tests, looks, other trades, protection.',
  prepare: 'Old fill is put right or taken out.',
  seal: 'Every opening between the rooms and the attic is closed, each by the way its size and heat ask for.',
  ducts: 'Ducts are put together, fastened and sealed while they can be seen.',
  check: 'Somebody looks at every opening once more. It is the last time anyone can.',
  wrap: 'Sealed ducts get their insulation.',
  ventilate: 'The way of the air from the soffit up under the roof is kept open.',
  contain: 'Fill is kept away from what is hot, wet or has to be opened.',
  insulate: 'The fill goes in, to the depth its label asks for.',
  close: 'What was opened for the work is shut, and the house is left clean.',
  prove: 'The house is tested again, and you get the papers.',
}

/** Why the part nobody sees comes first. */
export function whySealing({ estimate: e }: House): Html | false {
  const { seal = 0, insulate = 0 } = e.labor.byPhase
  if (!e.tasks.some(t => t.phase === 'seal')) return false
  const more = seal > insulate && insulate > 0, hours = e.labor.personHours
  const shares = (Object.entries(e.labor.byPhase) as [Phase, number][]).filter(([, h]) => h > 0).map(([p, h]): WorkPart => ({ label: phaseWords[p], sharePct: h / hours * 100 }))
  return html`<section class="keep"><h2>Why sealing comes first</h2>
<p>Insulation slows heat. It does not stop air. Where a ceiling is open, warm air from the rooms goes up through the fill and takes heat and moisture with it, whatever lies on top.</p>
<p>Once the fill lies there, nobody can reach the openings without digging it out again. So they are closed first, and seen by somebody, and then covered.${more && ` That is why sealing takes more of the work here than blowing does, though the fill is what you will see.`}</p>
${more && html`${wide(workStrip(shares), 'The work of this house by its phases: the longer, the more hours.')}`}</section>
`
}

const added = (e: EstimateOut): EstimateOut['areas'] => e.areas.filter(a => a.product !== undefined && a.stoppedBy.length === 0)

/** What is blown or laid, with what a price for insulation has to say: type, R at a thickness, coverage. */
export function whatIsPutIn({ estimate: e, prices }: House): Html | false {
  const areas = added(e)
  if (areas.length === 0) return false
  const name = (item: string): string => e.materials.find(m => m.item === item)?.name ?? [...prices.blown, ...prices.products].find(p => p.item === item)?.name ?? item
  const nothing = ''
  return html`<h3>What is put in</h3>
${tableOf({ columns: [{ head: 'Part' }, { head: 'Insulation' }, { head: 'R', figure: true }, { head: 'Thickness', unit: 'in, settled', figure: true }, { head: 'Area', unit: 'ft²', figure: true }, { head: 'Bags', figure: true }], rows: areas.map(a => {
    const at = (n: string): string => `areas.${a.id}.${n}`
    return [a.id, name(a.product!), a.chartR !== undefined ? figureAt(at('chartR'), rowR(a.chartR, a.interpolated !== true)) : a.battR !== undefined ? figureAt(at('battR'), rowR(a.battR, true)) : a.packedR !== undefined ? figureAt(at('packedR'), rowR(a.packedR, false)) : nothing,
      a.settledDepthIn === undefined ? nothing : figureAt(at('settledDepthIn'), depth(a.settledDepthIn)), figureAt(at('netAreaFt2'), figure(a.netAreaFt2)), a.bags === undefined ? nothing : figureAt(at('bags'), figure(a.bags, 2))]
  }) })}
${areas.some(a => a.interpolated) && html`<p class="small">R with a space stands between two rows of the bag’s label; the receipt after the work states a row of the label.</p>`}`
}

const others: readonly TaskOut['role'][] = ['electrician', 'hvac', 'roofer', 'abater', 'other', 'tester']

/** The order of work with its cover line; each phase says what it is for. */
export function work({ estimate: e }: House): Html {
  const { tasks } = e
  if (tasks.length === 0) return html`<h2>The work</h2><p>Nothing is left to do in this price.</p>`
  const line = coverAt(tasks), many = e.areas.length > 1
  const phase = (of: readonly TaskOut[]): Part => {
    const first = of[0]!
    return html`<h3>${sentence(phaseWords[first.phase]).slice(0, -1)} <span class="because">${WHY[first.phase]}</span></h3>
<ul class="steps">${of.map(t => html`<li><b class="number">${t.step}</b><span>${t.title}${many && t.areas.length < e.areas.length && t.areas.length > 0 && `, ${t.areas.join(' and ')}`}${others.includes(t.role) && html` <span class="gray">(${t.role === 'hvac' ? 'HVAC contractor' : t.role === 'other' ? 'another trade' : t.role})</span>`}</span></li>
`)}</ul>
`
  }
  const runs = (of: readonly TaskOut[]): TaskOut[][] => of.reduce<TaskOut[][]>((all, t) => { const last = all.at(-1); if (last && last[0]!.phase === t.phase) last.push(t); else all.push([t]); return all }, [])
  const { days, crewSize } = e.labor
  return html`<h2>The work, in its order</h2>
${days > 0 && html`<p>About ${figureAt('labor.days', counted(days, 'day'))} with ${counted(crewSize, 'person', 'people')}.</p>`}
${line === undefined ? runs(tasks).map(phase) : [runs(tasks.slice(0, line)).map(phase), coverLine(html`<p class="small">Above the line: closed and seen. Below it: what can’t be undone without digging it out.</p>`), runs(tasks.slice(line)).map(phase)]}
`
}

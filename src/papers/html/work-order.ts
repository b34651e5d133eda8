// What a crew works from: read at arm's length, in gray, with gloves on. Nothing of price, cost or wage stands here.
import type { GateOut } from '../../estimate/output.ts'
import { applianceName } from '../../scope/appliances.ts'
import { phases } from '../../scope/kind.ts'
import { workOrderOf, type PhaseGroup, type TaskLine, type WorkOrder } from '../crew/work-order.ts'
import { counted, depth, figure, NB, phaseWords, plainFigure, stepRanges, unitWord } from '../terminal/words.ts'
import { onSightTable, proofList, testSheets } from './crew/checks.ts'
import { fillSheets, machineCard } from './crew/fill.ts'
import { STYLE } from './crew/style.ts'
import { opensWith } from './gate-words.ts'
import { html, type Html, type Part } from './html.ts'
import type { Paper } from './paper.ts'
import { page, type House } from './page.ts'
import { coverAt, coverLine, figureAt, gateList, tick, writeHere } from './parts.ts'
import { codeWords, listed, packsOf, sentence } from './say.ts'

const ROLES = { lead: 'lead', crew: 'crew', hose: 'hose and feeder', helper: 'helper', tester: 'tester', electrician: 'electrician', hvac: 'HVAC contractor', roofer: 'roofer', abater: 'abatement firm', other: 'other trade' } as const

function facts({ job, estimate: { labor, job: head }, company }: House): Html {
  const { access } = job, { callOnSite, phone } = company.letterhead ?? {}
  const about = (feet: number | undefined, what: string): string | undefined => (feet === undefined ? undefined : `${plainFigure(feet)}${NB}ft ${what}`)
  const way = [about(access?.hoseFt, 'of hose to the far end'), about(access?.walkToHatchFt, 'from door to hatch'), access?.storageFt2 === undefined ? undefined : `stored things on ${plainFigure(access.storageFt2)}${NB}ft² to move`].flatMap(w => w ?? [])
  const line = (label: string, says: Part): Html => html`<div><dt>${label}</dt><dd>${says}</dd></div>`
  return html`<dl class="facts">
${line('House', [head.customer, job.job.address === undefined ? writeHere('address') : [job.job.address, job.job.zip !== undefined && ` ${job.job.zip}`]].flatMap((p, i) => (p === undefined ? [] : i === 0 ? [p, html`<br>`] : [p])))}
${line('Day and start', writeHere('day and start'))}
${line('Crew', [`${counted(labor.crewSize, 'person', 'people')}, ${counted(labor.days, 'day')}, `, figureAt('labor.personHours', figure(labor.personHours, 2)), ' person-h. Lead: ', writeHere('lead')])}
${line('Way in', way.length === 0 ? writeHere('hose, hatch') : sentence(listed(way)))}
${line('Something hidden shows', [html`<b>Stop there, tell the lead.</b> The lead calls `, callOnSite ?? phone ?? writeHere('whom the lead calls'), '; see the last page'])}
</dl>
`
}

/** A distance as large as the sheet allows, and from what. */
const off = (distanceIn: number, what: Part): Html => html`<p class="off"><b>${depth(distanceIn).replaceAll(' ', NB)}${NB}in</b> <span>${what}</span></p>`

const keepOffs = ({ keepOff }: WorkOrder): Html | false => keepOff.length > 0 && html`<section class="keep"><h2>Keep off</h2>
${keepOff.map(k => off(k.distanceIn, [`${k.what}: ${listed(k.where)}`, html` <span class="gray">step ${stepRanges(k.steps)}</span>`]))}</section>
`

/** What a gate is about: an appliance by its name, as several may stand in one closet. */
function opened(g: GateOut, { job }: House): string {
  const n = /^\/appliances\/(\d+)/.exec(g.path)?.[1], appliance = n === undefined ? undefined : job.appliances?.[Number(n)]
  return appliance ? `${applianceName(appliance)} (${g.where})` : g.where
}

function taskItem({ task: t, where, places, areas, after, opens }: TaskLine, house: House): Html {
  const done = [...(after.length === 0 ? [] : [`after step ${stepRanges(after)}`]), `by ${ROLES[t.role]}`]
  return html`<li class="keep" id="step-${t.step}">
${tick(`step ${t.step} done`)}
<b class="step">${t.step}</b>
<div><h4>${t.title}</h4>
${(where.length > 0 || areas.length > 0) && html`<p>${[where.length > 0 && `Where: ${places.join('; ')}`, areas.length > 0 && `${where.length > 0 ? '; in ' : 'In '}${listed(areas)}`]}.</p>`}
${t.keepOff.map(k => off(k.distanceIn, k.what))}
${t.cautions.length > 0 && html`<p class="care"><b>Care:</b> ${t.cautions.map(sentence).join(' ')}</p>`}
<p class="by">${sentence(done.join(', '))}${t.proof !== '' && ` Proof: ${t.proof}.`}${opens.length > 0 && ` Opens: ${listed([...new Set(opens.map(g => opened(g, house)))])}.`}</p></div>
<p class="hours">${t.personHours > 0 ? figureAt(`tasks.${t.id}.personHours`, figure(t.personHours, 2)) : 'theirs'}</p>
</li>
`
}

/** Whole packs to bring up, and what the steps take of them. */
const carryList = ({ carry, phase }: PhaseGroup): Html | false => carry.length > 0 && html`<h4>Bring up for ${phaseWords[phase]}</h4>
<ul class="carry">
${carry.map(c => html`<li>${tick(`${c.name} brought`)}<span><b>${c.packs === 0 ? 'what is left' : packsOf(c.packs, c.buyUnit)}</b>${c.packs > 0 && c.leftover && ' and what is left'} ${c.name}${c.unit !== c.buyUnit && c.unit !== 'each' && html` <span class="gray">takes ${figure(c.quantity, 1)}${NB}${unitWord(c.unit).replaceAll(' ', NB)}</span>`}</span></li>
`)}</ul>
`

const group = (g: PhaseGroup, house: House): Html => html`<section class="phase"><h3 class="phase-head">${phaseWords[g.phase]} <span class="unit">${figureAt(`labor.byPhase.${g.phase}`, figure(g.personHours, 2))} person-h</span></h3>
${carryList(g)}
<ul class="tasks">
${g.tasks.map(t => taskItem(t, house))}</ul></section>
`

function work(house: House, { groups }: WorkOrder): Html {
  const { tasks } = house.estimate, line = coverAt(tasks), firstBelow = line === undefined ? undefined : tasks[line]!.phase
  return html`<h2>The work, in its order</h2>
<p class="lead-in">Tick a step when it is done and its photo is taken. Hours are person-hours.</p>
${groups.map(g => [g.phase === firstBelow && coverLine(html`<div class="signatures"><div>Seen by the lead, each opening closed</div><div>Date and hour</div></div>`), group(g, house)])}`
}

/** What it shuts, why, and what opens it. */
function gateText(g: GateOut, { estimate: { tasks, stopped } }: House) {
  const here = phases.filter(p => g.stops.phases.includes(p) && [...tasks, ...stopped].some(t => t.phase === p)), step = tasks.find(t => t.id === g.clearedByTask)?.step
  const shuts = `${phases.every(p => g.stops.phases.includes(p)) ? 'all work' : listed(here.map(p => phaseWords[p]))}, ${g.stops.places.length > 0 ? `in ${listed(g.stops.places)}` : 'in the whole attic'}`
  return { state: g.state, word: `${sentence(codeWords(g.code)).slice(0, -1)}: ${g.where}`, says: html`<p>${g.state !== 'note' && html`<b>Shut: ${shuts}.</b> `}${sentence(g.why)} ${g.clearedBy !== '' && `${g.state === 'note' ? 'Asks for' : 'Opens with'}: ${sentence(opensWith(g))}`}${step !== undefined && ` Step ${step}.`}</p>` }
}

function shutGates({ shut, seen }: WorkOrder, house: House): Html {
  return html`${shut.length > 0 && html`<h2>Gates that are shut</h2>
<p><b>Nobody starts what a gate shuts before its paper is in the lead’s hand.</b></p>
${gateList(shut.map(g => gateText(g, house)))}`}
${seen.length > 0 && html`<h2>Seen at the survey</h2>
${gateList(seen.map(g => gateText(g, house)))}`}`
}

const gateName = (id: string, gates: readonly GateOut[]): string => { const g = gates.find(x => x.id === id); return g ? `${codeWords(g.code)}, ${g.where}` : codeWords(id) }

const leftAlone = ({ left, bare }: WorkOrder, { estimate: { gates } }: House): Html | false => (left.length > 0 || bare.length > 0) && html`<h2>Not this crew’s, and not this time</h2>
<p>Nobody closes, covers or starts any of these.</p>
<div class="kraft left">${bare.map(a => html`<p><b>No fill in ${a.id}</b>${a.stoppedBy.length > 0 && `: ${listed(a.stoppedBy.map(s => (s === 'declined' ? 'the owner keeps an opening open' : gateName(s, gates))))}`}.</p>`)}
${left.map(l => html`<p><b>${sentence(l.why)}</b> ${l.what.map(sentence).join(' ')}</p>`)}</div>`

function body(house: House): Html {
  const order = workOrderOf(house.estimate)
  return html`${facts(house)}
${keepOffs(order)}
${shutGates(order, house)}
${leftAlone(order, house)}
${work(house, order)}
${order.fills.length > 0 && [machineCard(order), fillSheets(order)]}
${testSheets(order)}
${proofList(order)}
${onSightTable(house)}`
}

export const workOrder: Paper = {
  name: 'work-order', says: 'for the crew: tasks in their order with hours, distances and cautions; what to carry, bags and depths, tests, photos',
  appliesTo: ({ estimate }) => estimate.verdict !== 'stop' && estimate.tasks.length > 0,
  files: house => [{ ending: 'work-order.html', text: page(house, { name: 'Work order', body: body(house), style: STYLE }) }],
}

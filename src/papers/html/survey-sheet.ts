// The blank field sheet. Its boxes stand in the order of the job file and carry its keys, so that typing is copying.
import type { CompanyFile } from '../../books/company-file.ts'
import { areaKindNames, OFFICE, surveySheet as planned, type Block, type Box, type SurveyPlan } from '../survey/boxes.ts'
import { unitWord } from '../terminal/words.ts'
import { html, type Html } from './html.ts'
import type { Paper } from './paper.ts'
import { blankPage, page } from './page.ts'
import { tick } from './parts.ts'
import { codeWords, listed } from './say.ts'

const STYLE = `
main{font-size:11pt;line-height:16pt}
h2{margin:24px 0 6px}
h2 .mono,h3 .mono{font-weight:400}
h3{margin:9px 0 0;line-height:18px}
.boxes{display:flex;flex-wrap:wrap;gap:3px 12px;margin:0 0 3px;align-items:flex-start}
.box{break-inside:avoid;max-width:100%;margin:0}
.box.number{flex:0 0 auto;width:72px}
.box.number.told{width:132px}
.box.pair,.box.pair.told{width:144px}
.box.many,.box.many.told{width:276px}
.box.name{flex:0 0 auto;width:96px}
.box.text{flex:1 1 156px}
.fields{display:flex;gap:6px;align-items:center;flex-wrap:wrap}
.field{display:block;height:36px;border:1px solid var(--hair);flex:1 0 36px}
.words .fields{min-height:24px;gap:0 15px}
.needed>.fields>.field{border:2px solid var(--ink)}
.key{display:block;color:var(--gray);font-size:9pt;line-height:12pt}
.needed>.key b{color:var(--ink)}
p .tick{width:24px;height:24px}
.key b{font:9pt ui-monospace,monospace;color:var(--gray)}
.needed>.key b{font-weight:700}
.choice{white-space:nowrap}
.box.words{width:min(var(--room),100%)}
.box.number,.box.pair,.box.many{min-width:min(var(--room),100%)}
.group,.group>div{min-width:0}
.group{display:flex;flex:1 1 100%;gap:12px;border-left:1px solid var(--hair);padding-left:9px}
.group>.key{flex:0 0 108px}
.group>div{flex:1}
.entry{border-top:1px solid var(--hair);padding:6px 0 0}
.keep.boxes,.entry{break-inside:avoid}
.box.no{flex:0 0 36px;width:36px}
.hazard{display:flex;flex:0 0 228px;gap:9px;align-items:flex-start;margin:0;line-height:18px}
.hazard .tick{width:24px;height:24px;flex:none}
@media screen and (max-width:600px){
.group{display:block}
.hazard{flex:1 1 100%}
}
`

const field = html`<span class="field" role="img" aria-label="box to fill in"></span>`

/** What is said of a key, as short as a field allows: what follows a semicolon is for the desk. */
const short = (says: string): string => says.split(';')[0]!

const EIGHTH = 12
/** Room for words in a line, in whole eighths of an inch; a caption under short ones has room for a few words. */
function roomFor(words: readonly string[], told: boolean, key: string): string {
  const px = Math.max(words.reduce((sum, w) => sum + w.length * LETTER + WORD_GAP, 0), keyRoom(key))
  return px > MOST_ROOM ? '100%' : `${Math.ceil(Math.max(px, told ? EIGHTH * EIGHTH : 0) / EIGHTH) * EIGHTH}px`
}
const LETTER = 8, KEY_LETTER = 7, WORD_GAP = 15, MOST_ROOM = 600
/** A key is never broken. */
const keyRoom = (key: string): number => Math.ceil((key.length + 1) * KEY_LETTER / EIGHTH) * EIGHTH

/** @param told its words stand below it; the entries after the first need none */
function boxOf(b: Box, told: boolean): Html {
  const { fill } = b, needed = b.needed ? 'needed' : '', wide = told ? 'told' : ''
  const key = (unit = ''): Html => html`<span class="key"><b>${b.key}</b>${unit !== '' && unit !== 'each' && ` ${unitWord(unit)}`}${told && b.says !== '' && `${b.key === '' ? '' : ': '}${short(b.says)}`}</span>`
  if (fill.is === 'group') return html`<div class="group keep">${key()}<div class="boxes">${fill.boxes.map(x => boxOf(x, told))}</div></div>`
  if (fill.is === 'entries') {
    // A list of numbers alone needs no lines of its own.
    const alone = fill.boxes.length === 1, entry = (i: number): Html[] => fill.boxes.map(x => boxOf(x, told && i === 0))
    const all = Array.from({ length: fill.many }, (_, i) => i)
    return html`<div class="group">${key()}<div>${alone ? html`<div class="boxes">${all.map(entry)}</div>` : all.map(i => html`<div class="${i === 0 ? 'boxes keep' : 'boxes keep entry'}">${entry(i)}</div>`)}</div></div>`
  }
  if (fill.is === 'words') return html`<div class="box words ${needed}" style="--room:${roomFor(fill.words, told, b.key)}"><span class="fields">${fill.words.map(w => html`<span class="choice">${w}</span>`)}</span>${key()}</div>`
  if (fill.is === 'numbers') return html`<div class="box ${fill.many > 2 ? 'many' : fill.many === 2 ? 'pair' : 'number'} ${wide} ${needed}" style="--room:${keyRoom(`${b.key}${fill.unit === 'each' ? '' : fill.unit}`)}px"><span class="fields">${Array.from({ length: fill.many }, () => field)}</span>${key(fill.unit)}</div>`
  return html`<div class="box ${fill.long ? 'text' : 'name'} ${needed}"><span class="fields">${field}</span>${key()}</div>`
}

const number = html`<div class="box no"><span class="fields">${field}</span><span class="key">no.</span></div>`
const entry = (boxes: readonly Box[], n: number, numbered: boolean): Html => html`<div class="entry boxes">${numbered && number}${boxes.map(b => boxOf(b, n === 0 && !(numbered && SHARED.includes(b.key))))}</div>
`
/** Keys that every opening has: explained once, above them. */
const SHARED = ['in', 'at', 'decline', 'count']

const MORE = 8
const more = html`<h3>More of any kind, each with its keys and figures</h3>
${Array.from({ length: MORE }, () => html`<div class="entry boxes">${number}<div class="box name"><span class="fields">${field}</span><span class="key"><b>kind</b></span></div><div class="box name"><span class="fields">${field}</span><span class="key"><b>in</b></span></div><div class="box text"><span class="fields">${field}</span><span class="key"><b>at</b></span></div><div class="box text"><span class="fields">${field}</span><span class="key">the rest: key and figure</span></div></div>
`)}`

/** A hazard: not found, or what was seen. */
const hazard = (b: Block): Html => html`<div class="entry boxes"><p class="hazard">${tick(`${b.title}: not found`)}<span><b>${b.title}</b> <span class="mono gray">${b.kind}</span></span></p>${b.boxes.map(x => boxOf(x, x.key !== 'in' && x.key !== 'at'))}</div>
`

function block(b: Block): Html {
  if (b.key === 'hazards') return hazard(b)
  const top = b.kind === undefined, fresh = b.newPage ? 'new-page' : ''
  const title = b.key === 'areas' ? html`<h2 class="${fresh}">Area ${b.title} <span class="mono">${b.kind}</span></h2>` : top ? html`<h2 class="${fresh}">${b.title} <span class="mono">${b.key}</span></h2>` : html`<h3>${b.title} <span class="mono">${b.kind}</span></h3>`
  if (b.key === 'more') return more
  if (b.entries === 0) return html`${title}${b.key === 'openings' && html`<p class="small">Each: <b>in</b> the area it opens into, <b>at</b> where in your words, <b>count</b> how many alike, <b>decline</b> yes where the owner keeps it open; <b>no.</b> is the order in which you walked.</p>`}
${b.boxes.length > 0 && html`<div class="boxes">${b.boxes.map(x => boxOf(x, true))}</div>`}`
  return html`${title}${b.none && html`<p>${tick('none there')} Looked, and there is none: type <span class="mono">${b.key}: []</span></p>`}
${Array.from({ length: b.entries }, (_, i) => entry(b.boxes, i, b.key === 'openings'))}`
}

/** The sheet's body. */
export function surveyBody(plan: SurveyPlan): Html {
  return html`<p class="small">Boxes stand in the order of the job file, and what stands under a box is its key there: type what you wrote. Heavy boxes are needed; of words circle one. Numbers as the tape reads: 14'7 where a key ends in Ft, 3 1/2 where it ends in In; ~22 is about 22. Leave empty what nobody looked at: it is not a no. Walk from the far end to the hatch and number the openings as you go: the file lists them in that order. Left to the office: ${listed(OFFICE.map(codeWords))}.</p>
${planned(plan).map(block)}`
}

export { areaKindNames }

const LINES = 1

/** The sheet alone, for a house that is not surveyed yet. */
export const blankSurvey = (company: CompanyFile | undefined, plan: SurveyPlan): string => blankPage(company, { name: 'Survey sheet', title: 'House', body: surveyBody(plan), style: STYLE })

export const surveySheet: Paper = {
  name: 'survey-sheet', says: 'for the next look at this house: a blank field sheet with a page for each of its areas',
  appliesTo: () => true,
  files: house => [{ ending: 'survey-sheet.html', text: page(house, { name: 'Survey sheet', body: surveyBody({ areas: house.job.areas.map(a => ({ kind: a.kind, id: a.id })), lines: LINES }), style: STYLE }) }],
}

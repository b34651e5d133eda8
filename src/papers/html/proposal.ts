// What a homeowner reads and signs. No cost, wage, margin or markup stands here.
import type { Html } from './html.ts'
import { html } from './html.ts'
import type { Paper } from './paper.ts'
import { duties } from './law.ts'
import { page, type House } from './page.ts'
import { signatures, tick } from './parts.ts'
import { first, ladder, offers, price, savings } from './proposal/price.ts'
import { found, freshAir, hatches, leaks, nowAndAfter, sections } from './proposal/found.ts'
import { whatIsPutIn, whySealing, work } from './proposal/work.ts'
import { codeWords } from './say.ts'

/** What the household should know while the work goes on, and after. */
function goodToKnow(house: House): Html {
  const { estimate: e } = house, has = (...kinds: readonly string[]): boolean => e.sealing.some(s => kinds.includes(s.kind)), did = (id: string): boolean => e.tasks.some(t => t.id.startsWith(id))
  const flames = did('test-combustion'), fresh = freshAir(house)
  return html`<h2>Good to know</h2>
<ul><li>While we work: lights, heating and cooling are off at times; there is dust and noise; nobody goes under the open hatch. Say so if someone in the house has trouble breathing.</li>
<li>The day may move for heat in the attic or for weather.</li>
${flames && html`<li>What burns fuel is tested before and after. A tighter house can make a flue spill; the test decides, and no figure here takes its place.</li>
`}${e.gates.some(g => g.code === 'depressurization' && g.open) && html`<li>All its fans running together, this house may pull air down a flue. That is reckoned, not found: ${flames ? 'the tests are made with the fans on, and they decide' : 'a combustion test with the fans on decides'}. Where one fails, a sealed appliance, or air let in for the fans, mends it.</li>
`}${did('box-lights') && html`<li>Boxes over lights stay bare on top, for good. An airtight light put in by an electrician lets the fill go over.</li>
`}${has('combustion-air-opening') && html`<li>The opening that feeds air to a flame stays open, for good.</li>
`}<li>Afterwards: nothing is stored on the fill, the hatch is kept shut on its gasket, and soffit vents are kept clear.</li>
${fresh && html`<li>${fresh}</li>
`}<li>${duties.rValue.says} <span class="small gray">(${duties.rValue.source})</span></li>
</ul>
${(house.company.terms ?? []).length > 0 && html`<h3>Terms</h3>
<ul>${house.company.terms!.map(t => html`<li>${t}</li>
`)}</ul>`}`
}

function signing({ estimate: e, company }: House): Html {
  const materials = [...new Set(e.areas.flatMap(a => (a.product === undefined || a.stoppedBy.length > 0 ? [] : [e.materials.find(m => m.item === a.product)?.name ?? codeWords(a.product)])))]
  return html`<section class="keep"><h2>Before you sign</h2>
<ul class="ticks">${materials.map(m => html`<li>${tick(`fact sheet of ${m} shown`)} <span>I was shown the fact sheet of: ${m} <span class="small gray">(before you agree to buy: ${duties.factSheet.source})</span></span></li>
`)}<li>${tick('two copies of the notice of cancellation given')} <span>I was given two copies of the notice of cancellation, where this is signed in my home.</span></li>
<li>${tick('gates read')} <span>I have read what has to happen first, and what the price leaves out.</span></li>
</ul>
<p><b>${duties.cancel.says}</b> <span class="small gray">(${duties.cancel.source}) Work does not start before that day. The company adds the two copies of that notice itself: they are not among these papers.</span></p>
${signatures(['Owner', 'Date', `For ${company.name}`, 'Date'])}
<p class="small">Local code and licensed practice decide.${e.basis.codeEdition !== undefined && ` The goal R is advice from ${e.basis.codeEdition.replace(/^iecc-/, 'IECC ')}${e.basis.climateZone === undefined ? '' : `, zone ${e.basis.climateZone}`}.`}</p></section>`
}

const STYLE = `
.pair{display:flex;gap:24px;align-items:flex-start}
.pair figure{flex:none}
.pictures{display:flex;flex-wrap:wrap;gap:12px 24px;align-items:flex-end}
.columns{display:grid;grid-template-columns:1fr 1fr;gap:0 36px}
.steps,.ticks{list-style:none;padding:0}
.steps li{display:flex;gap:12px;max-width:none;margin-bottom:3px;break-inside:avoid}
.steps .number{flex:none;width:24px;text-align:right}
.ticks li{display:flex;gap:12px;margin-bottom:6px}
.because{font-weight:400}
.aside{padding:12px;margin:24px 0}
.aside h3{margin-top:0}
@media screen and (max-width:600px){.pair,.columns{display:block}}
`

export const proposal: Paper = {
  name: 'proposal', says: 'for the homeowner: what was found, the work and its order, the price, places to sign',
  appliesTo: ({ estimate }) => estimate.verdict !== 'stop',
  files: house => [{ ending: 'proposal.html', text: page(house, { name: 'Proposal', style: STYLE,
    body: [hatches, found(house), sections(house), leaks(house), nowAndAfter(house), whySealing(house), work(house), whatIsPutIn(house), price(house), offers(house), first(house), ladder(house), savings(house), goodToKnow(house), signing(house)] }) }],
}

// The format of a company file: what a company pays, charges and decides. What it leaves out keeps its starting value, listed as an assumption.
import * as f from '../fields/index.ts'
import { states } from '../reference/states.ts'
import { COMPANY_FORMAT } from './format-names.ts'

const pct = (description: string, max = 100, help: { default?: number; examples?: readonly number[] } = {}) => f.number('pct', { min: 0, max }, description, help)
const usd = (description: string, ...examples: readonly number[]) => f.number('USD', { min: 0, max: 1000000 }, description, examples.length === 0 ? {} : { examples })

/** What makes a house risky to price, as the survey shows it. */
export const risks = ['old-house', 'low-headroom', 'hidden-floor', 'unknowns'] as const
export type Risk = (typeof risks)[number]

const factor = (description: string) => f.number('factor', { min: 1, max: 3 }, description, { examples: [1.3] })
const steps = (what: string) => f.optional(f.list(f.fields({ upToIn: f.optional(f.inches(1000, 'up to so many inches; the last row has none: all beyond')), factor: factor('times the person-hours') }, 'one step'), what, { min: 1, max: 20 }))

export const companySchema = f.later(() => f.fields({
  format: f.literal(COMPANY_FORMAT),
  name: f.text('name on outputs'),
  dated: f.date('day of these figures'),
  demo: f.optional(f.yesNo('invented figures')),
  letterhead: f.optional(f.fields({
    address: f.optional(f.text('street and town', { examples: ['12 Invented Street, Baraboo WI'] })),
    phone: f.optional(f.text('phone', { examples: ['555-0100'] })),
    email: f.optional(f.text('e-mail', { examples: ['office@example.com'] })),
    license: f.optional(f.text('license as your state wants it printed', { examples: ['contractor license 0000 (invented)'] })),
    callOnSite: f.optional(f.text('whom the crew calls when something hidden shows', { examples: ['J. Doe (invented), 555-0101'] })),
  }, 'head of the papers')),
  wage: f.optional(usd('loaded, productive wage of one person-hour; or builtUpWage', 48)),
  builtUpWage: f.optional(f.fields({
    basePerHour: f.number('USD', { min: 0, max: 1000 }, 'wage paid for one hour'),
    burden: f.list(f.fields({ what: f.text('tax, insurance or benefit', { examples: ['workers’ compensation'] }), pct: pct('of the wage paid', 100, { examples: [12] }) }, 'one part of the burden'), 'what is paid on top of the wage', { max: 50 }),
    productivePct: f.number('pct', { min: 1, max: 100 }, 'share of the paid hours that is work at the house: no drive, loading, rain, meetings', { examples: [80] }),
  }, 'the wage of one person-hour from its parts')),
  crew: f.count(20, 'people on the job'),
  hoursPerDay: f.number('h', { min: 1, max: 14 }, 'productive hours on site'),
  machine: f.word(['truck', 'rental'] as const, 'blowing machine'),
  grossMarginPct: f.optional(pct('gross margin: covers overhead and profit; or overhead and netProfitPct', 90)),
  overheadPerHour: f.optional(usd('overhead on each person-hour, in place of a gross margin', 21)),
  overheadPct: f.optional(pct('overhead on cost, in place of a gross margin', 100, { examples: [25] })),
  netProfitPct: f.optional(pct('share of the price that is profit, where overhead is given', 90, { examples: [8] })),
  contingencyPct: pct('on materials and labor, without tax'),
  contingencyByRisk: f.optional(f.list(f.fields({ risk: f.word(risks, 'what the survey shows: built before `risk-year`; headroom under `risk-headroom`; a floor under boards, a slope or a knee wall; an unknown carried in the price'), addPct: pct('added to contingencyPct', 50, { examples: [3] }) }, 'one risk'), 'more contingency where a house is riskier', { max: 20 })),
  accessFactors: f.optional(f.fields({
    headroom: steps('by headroom where the hand works'),
    oldFill: steps('by old fill over the work'),
    webs: f.optional(f.list(f.fields({ webs: f.word(['open', 'w', 'dense'] as const, 'roof framing in the way'), factor: factor('times the person-hours') }, 'one row'), 'by roof framing', { min: 1, max: 3 })),
    hatch: f.optional(f.list(f.fields({ sidesIn: f.optional(f.pairOf(f.inches(200, 'one side'), 'a hatch of at least these sides, shorter first; the last row has none: any hatch')), factor: factor('times the person-hours') }, 'one row'), 'by the largest hatch, from large to small', { min: 1, max: 20 })),
  }, 'your own access factors: a list in place of the whole built-in one')),
  minimumCharge: usd('least price of a job'),
  salesTax: f.optional(f.word(['contractor-pays', 'customer-taxed', 'exempt'] as const, 'who bears sales tax: the contractor on materials; the customer on the price, below the margin; nobody', { default: 'contractor-pays' })),
  salesTaxPct: pct('sales tax', 30),
  subMarkupPct: f.optional(pct('added to what other trades charge', 100, { default: 0 })),
  travelPerMile: f.optional(usd('travel, each mile driven: there and back, each day; needs driveMi in the job', 0.7)),
  travelPerDay: f.optional(usd('travel, each day at the house, whatever the distance', 35)),
  permitFee: f.optional(usd('permit for a job, where the job gives no other', 60)),
  billWholeDays: f.optional(f.yesNo('a started day is billed as a whole one', { default: 'no' })),
  retestEachDay: f.optional(f.yesNo('a combustion test at the end of each day that changed the shell, priced; without it one, in the middle of the work', { default: 'no' })),
  roundUpTo: f.number('USD', { above: 0, max: 1000 }, 'price is rounded up to a multiple of this'),
  validDays: f.count(365, 'days a price holds'),
  reprice: f.optional(f.fields({
    honorUpToPct: f.optional(pct('rise of the price up to which a quote that was sent is honored without a question', 100, { default: 2 })),
    reissueAbovePct: f.optional(pct('rise above which it is issued anew; between the two somebody decides', 100, { default: 5 })),
    leastMarginPct: f.optional(pct('margin under which none is honored without a question', 90, { examples: [30] })),
    reissueWithinDays: f.optional(f.number('day', { min: 0, max: 3650, whole: true }, 'days after its last one that an expired quote is issued anew; later it lapses', { default: 30 })),
  }, 'what to do with open quotes when prices move')),
  depositPct: f.optional(pct('deposit asked; state law may cap it', 100, { default: 0 })),
  depositRules: f.optional(f.list(f.fields({
    state: f.word(states, 'the state'),
    maxPct: f.optional(pct('most of the price, in percent', 100, { examples: [33.33] })),
    maxUsd: f.optional(usd('and at most so much', 1000)),
    aboveUsd: f.optional(usd('for a price over this alone', 5000)),
  }, 'the law of one state; with neither maxPct nor maxUsd it sets no limit'), 'most deposit that the law lets you ask, once you have looked it up', { max: 60 })),
  supplier: f.optional(f.text('the supplier you buy from, where several price books lie side by side; without it the cheapest that meets the need', { examples: ['demo supply'] })),
  visitFee: f.optional(usd('charged for the visit to a house that may not start')),
  dumpFeePerTon: f.optional(usd('dump fee')),
  dumpFeeMinimum: f.optional(usd('least dump fee')),
  orderPrices: f.optional(f.yesNo('purchase prices stand on the supplier order', { default: 'no' })),
  lightTreatment: f.optional(f.word(['box', 'swap', 'surface'] as const, 'lights that are not IC or not read')),
  terms: f.optional(f.list(f.text('a sentence', { examples: ['Workmanship is warranted for one year.'] }), 'your own terms: sentences that stand on the proposal', { max: 50 })),
  subcontract: f.optional(f.list(f.fields({ work: f.id('work'), price: usd('price of one') }, 'a subcontractor’s price'), 'prices of other trades')),
  rates: f.optional(f.list(f.fields({ work: f.id('work, as `lidwork explain` names it', { examples: ['top-plate-inside'] }), hours: f.number('h', { min: 0, max: 100 }, 'person-hours for one unit', { examples: [0.03] }) }, 'a rate'), 'your own production rates')),
  values: f.optional(f.list(f.fields({ id: f.id('assumption, by its id', { examples: ['bead-seam'] }), value: f.number('its unit', { min: 0, max: 100000 }, 'your value', { examples: [0.25] }) }, 'a value'), 'your own starting values')),
}, 'a company file'))

export type CompanyFile = f.StaticOf<typeof companySchema>

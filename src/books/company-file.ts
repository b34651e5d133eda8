// The format of a company file: what a company pays, charges and decides. What it leaves out keeps its starting value, listed as an assumption.
import * as f from '../fields/index.ts'
import { COMPANY_FORMAT } from './format-names.ts'

const pct = (description: string, max = 100, help: { default?: number } = {}) => f.number('pct', { min: 0, max }, description, help)
const usd = (description: string) => f.number('USD', { min: 0, max: 1000000 }, description)

export const companySchema = f.fields({
  format: f.literal(COMPANY_FORMAT),
  name: f.text('name on outputs'),
  dated: f.date('day of these figures'),
  demo: f.optional(f.yesNo('invented figures')),
  wage: usd('loaded, productive wage of one person-hour'),
  crew: f.count(20, 'people on the job'),
  hoursPerDay: f.number('h', { above: 0, max: 14 }, 'productive hours on site'),
  machine: f.word(['truck', 'rental'] as const, 'blowing machine'),
  grossMarginPct: pct('gross margin: covers overhead and profit', 90),
  contingencyPct: pct('on materials and labor, without tax'),
  minimumCharge: usd('least price of a job'),
  salesTaxPct: pct('on materials, paid by the contractor', 30),
  roundUpTo: f.number('USD', { above: 0, max: 1000 }, 'price is rounded up to a multiple of this'),
  validDays: f.count(365, 'days a price holds'),
  depositPct: f.optional(pct('deposit asked; state law may cap it', 100, { default: 0 })),
  visitFee: f.optional(usd('charged for the visit to a house that may not start')),
  dumpFeePerTon: f.optional(usd('dump fee')),
  dumpFeeMinimum: f.optional(usd('least dump fee')),
  lightTreatment: f.optional(f.word(['box', 'swap', 'surface'] as const, 'lights that are not IC or not read')),
  subcontract: f.optional(f.list(f.fields({ work: f.id('work'), price: usd('price of one') }, 'a subcontractor’s price'), 'prices of other trades')),
  rates: f.optional(f.list(f.fields({ work: f.id('work, as `lidwork explain` names it', { examples: ['top-plate-inside'] }), hours: f.number('h', { min: 0, max: 100 }, 'person-hours for one unit', { examples: [0.03] }) }, 'a rate'), 'your own production rates')),
  values: f.optional(f.list(f.fields({ id: f.id('assumption, by its id', { examples: ['bead-seam'] }), value: f.number('its unit', { min: 0, max: 100000 }, 'your value', { examples: [0.25] }) }, 'a value'), 'your own starting values')),
}, 'a company file')

export type CompanyFile = f.Static<typeof companySchema>

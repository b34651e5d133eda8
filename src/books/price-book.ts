// The format of a price book: products by role, and blown products with the chart from their label.
import * as f from '../fields/index.ts'
import { PRICES_FORMAT } from './format-names.ts'

/** What a product may be for. A kind asks for a role; the price book says what fills it. */
export const roleNames = ['seam-sealant', 'hot-sealant', 'gap-foam', 'light-cover-ic', 'light-ic-airtight', 'box-board', 'rigid-cover', 'support', 'sheet-metal', 'rigid-dam', 'depth-marker',
  'weatherstrip', 'latch', 'panel-batt', 'panel-tray', 'baffle-16', 'baffle-24', 'wind-block', 'vacuum-bag', 'debris-bag', 'protection-kit',
  'compatible-sealant', 'stack-collar', 'box-flag', 'fan-duct', 'fan-duct-wide', 'smooth-duct', 'roof-cap', 'stair-cover', 'flue-set', 'maker-firestop', 'mastic', 'mesh', 'duct-tape', 'duct-band', 'duct-strap', 'duct-wrap', 'co-alarm', 'soffit-vent', 'floor-batt', 'wall-batt', 'wall-board', 'plug', 'seasonal-cover', 'membrane', 'fire-sealant', 'flex-duct'] as const
export type RoleName = (typeof roleNames)[number]

/** Units in which the work needs things. */
export const unitNames = ['each', 'pair', 'ft', 'ft2', 'fl oz', 'gal', 'bag', 'person-day'] as const
const money = (description: string, help: { examples?: readonly unknown[] } = {}) => f.number('USD', { min: 0, max: 1000000 }, description, help)

const bought = () => ({
  item: f.id('name other files use', { examples: ['sealant-10oz'] }),
  name: f.text('name on papers', { examples: ['latex sealant, 10.1 oz'] }),
  price: money('price of one purchase unit', { examples: [5] }),
  buyUnit: f.text('purchase unit', { examples: ['tube'] }),
  supplier: f.optional(f.text('who sells it, where that is not the supplier of the whole book', { examples: ['demo supply'] })),
  code: f.optional(f.text('the supplier’s own number for it, for the order', { examples: ['DS-1042'] })),
  dated: f.optional(f.date('day of this price, where it is not that of the book')),
  breaks: f.optional(f.list(f.fields({ atLeast: f.number('purchase units', { above: 0, max: 1000000 }, 'so many and more'), price: money('price of one then') }, 'one price break'), 'price breaks by quantity: the price of each, from so many in one job, [{atLeast: 50, price: 12.8}]', { max: 20 })),
  stock: f.optional(f.number('purchase units', { min: 0, max: 1000000 }, 'on hand: taken before any is ordered; the job pays for it all the same', { examples: [6] })),
  available: f.optional(f.yesNo('no: it can’t be had now, and the first of its substitutes that can is taken', { default: 'yes' })),
  substitutes: f.optional(f.list(f.id('item of this book'), 'items that may take its place where it can’t be had, in order of preference', { max: 20 })),
  wastePct: f.optional(f.number('pct', { min: 0, max: 100 }, 'waste added to what is needed', { default: 0 })),
})

export const productSchema = f.later(() => f.fields({
  ...bought(),
  role: f.word(roleNames, 'what it is for'),
  unit: f.word(unitNames, 'unit in which the work needs it'),
  pack: f.number('unit of need', { above: 0, max: 100000 }, 'how much of that unit one purchase unit holds', { examples: [10.1] }),
  charge: f.word(['whole', 'used'] as const, 'whole: the job pays whole purchase units; used: only what it takes'),
  ratedFor: f.optional(f.word(['ic', 'non-ic'] as const, 'lights a cover is rated for')),
  noncombustible: f.optional(f.yesNo('passes ASTM E136')),
  heightIn: f.optional(f.inches(60, 'height of a cover')),
  sizeIn: f.optional(f.pairOf(f.inches(200, 'one side'), 'width, length')),
  rValue: f.optional(f.rValue('R of a batt, of a cover, of flexible duct, or of duct wrap as installed, squeezed by a quarter')),
  thicknessIn: f.optional(f.inches(12, 'thickness of duct wrap before it is put on')),
}, 'a product'))

export const chartRowSchema = f.later(() => f.fields({
  r: f.rValue('R-value of the row'),
  settledIn: f.inches(60, 'minimum settled thickness'),
  blownIn: f.inches(80, 'initial installed thickness'),
  coverageFt2: f.number('ft2', { above: 0, max: 10000 }, 'maximum net coverage of one bag'),
  bagsPer1000Ft2: f.number('bag', { above: 0, max: 10000 }, 'bags for 1,000 ft² net'),
  weightPsf: f.number('lb/ft2', { above: 0, max: 20 }, 'minimum weight'),
}, 'one row of the label’s chart (16 CFR 460.12)'))

export const blownSchema = f.later(() => f.fields({
  ...bought(),
  fill: f.word(['cellulose', 'fiberglass'] as const, 'what is blown'),
  bagLb: f.number('lb', { above: 0, max: 200 }, 'net weight of a bag'),
  between: f.optional(f.word(['interpolate', 'next-row'] as const, 'between two rows: interpolate, marked; or the next row up', { default: 'interpolate' })),
  dense: f.optional(f.fields({ densityPcf: f.number('lb/ft3', { min: 0.5, max: 6 }, 'least density packed', { examples: [3.5] }), rPerIn: f.number('R/in', { min: 1, max: 6 }, 'R of an inch packed', { examples: [3.7] }) }, 'packed into closed cavities, by its maker’s figures')),
  chart: f.list(chartRowSchema(), 'rows of the chart, R rising', { min: 1, max: 60 }),
}, 'a blown product with its chart'))

export const priceBookSchema = f.later(() => f.fields({
  format: f.literal(PRICES_FORMAT),
  name: f.text('name on outputs'),
  dated: f.date('day of the prices'),
  demo: f.optional(f.yesNo('invented prices')),
  currency: f.optional(f.word(['USD'] as const, 'what the prices are in', { default: 'USD' })),
  supplier: f.optional(f.text('who sells all of it', { examples: ['demo supply'] })),
  products: f.list(productSchema(), 'products by role; the first that fills a role is taken', { min: 1, max: 20000 }),
  blown: f.list(blownSchema(), 'blown products; the first is taken where a job names none', { min: 1, max: 500 }),
}, 'a price book'))

export type PriceBook = f.StaticOf<typeof priceBookSchema>
export type ProductRow = f.StaticOf<typeof productSchema>
export type BlownRow = f.StaticOf<typeof blownSchema>
export type ChartLine = f.StaticOf<typeof chartRowSchema>

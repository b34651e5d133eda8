// The format of a mapping: which column of a supplier’s list is which key of a price book.
import * as f from '../fields/index.ts'

export const IMPORT_FORMAT = 'lidwork-import/1'

const column = (what: string, ...examples: readonly string[]) => f.optional(f.text(`heading of the column with ${what}`, examples.length === 0 ? {} : { examples }))

export const importSchema = f.later(() => f.fields({
  format: f.literal(IMPORT_FORMAT),
  delimiter: f.optional(f.word(['comma', 'semicolon', 'tab'] as const, 'what stands between two columns', { default: 'comma' })),
  match: f.optional(f.word(['item', 'code'] as const, 'by which key of the price book a row is known: its item, or the supplier’s own number', { default: 'item' })),
  columns: f.fields({
    item: column('the item', 'SKU'), code: column('the supplier’s own number', 'SKU'), name: column('the name', 'Description'), price: column('the price of one purchase unit', 'Net price'),
    pack: column('how much of its unit a purchase unit holds'), buyUnit: column('the purchase unit', 'UOM'), stock: column('what is on hand', 'On hand'), wastePct: column('the waste'), supplier: column('who sells it'),
    role: column('the role'), unit: column('the unit of need'), charge: column('whole or used'),
  }, 'the columns by the headings in the first row of the list'),
  breaks: f.optional(f.list(f.fields({ atLeast: f.number('purchase units', { above: 0, max: 1000000 }, 'so many and more', { examples: [10] }), column: f.text('heading of the column with the price of one then', { examples: ['Price 10+'] }) }, 'one break'), 'columns with prices by quantity; an empty cell has no such break', { max: 20 })),
  unlisted: f.optional(f.word(['error', 'skip', 'add'] as const, 'a row whose item the price book has not', { default: 'error' })),
  fill: f.optional(f.fields({ role: f.optional(f.text('role')), unit: f.optional(f.text('unit of need')), charge: f.optional(f.word(['whole', 'used'] as const, 'whole or used')), buyUnit: f.optional(f.text('purchase unit')), supplier: f.optional(f.text('who sells it')) }, 'what each row that is added has, where no column says it')),
}, 'a mapping of columns'))

export type ImportMap = f.StaticOf<typeof importSchema>
export const importFormat = (): object => f.format('lidwork-import-1', 'lidwork mapping: which column of a supplier’s list is which key of a price book', importSchema())

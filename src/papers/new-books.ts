// The price book and the company file that `prices new` and `company new` write: the embedded ones, each key with what it means.
import { companySchema } from '../books/company-file.ts'
import { demoCompany, demoPrices } from '../books/demo.ts'
import { subcontractNames, valueIds, workNames } from '../books/names.ts'
import { blownSchema, chartRowSchema, priceBookSchema, productSchema, roleNames } from '../books/price-book.ts'
import { capital, head, item, keys, mapping, node, section, typed, wrapped, type Node, type Value } from './commented.ts'

/** The names under which the files find their schemas: beside them. */
export const BOOK_SCHEMAS = { prices: 'lidwork-prices.schema.json', company: 'lidwork-company.schema.json' } as const

type Values = Readonly<Record<string, Value>>

/** The keys of a format that hold one value each. */
const single = (schema: Node): Node => ({ ...schema, properties: Object.fromEntries(Object.entries(schema.properties ?? {}).filter(([key, at]) => at.items === undefined && key !== 'format')) })

const DEMO = 'take the demo line out when the figures are yours, and outputs no longer say that they are demo figures'

/** A commented price book: the embedded one. */
export function newPrices(): string {
  const at = (key: string): string => capital(node(priceBookSchema()).properties![key]!.description!)
  const blown = node(blownSchema()), { chart, ...own } = blown.properties!
  return [
    ...head(BOOK_SCHEMAS.prices),
    '# A price book. Products and prices are invented: write over them, the charts by the labels on your bags.',
    ...wrapped(`Prices are dollars for one purchase unit, without sales tax; ${DEMO}.`, ''),
    `format: ${demoPrices.format}`,
    ...mapping(single(node(priceBookSchema())), demoPrices as unknown as Values, ''), '',
    section(at('products'), [...keys(node(productSchema()), ''), ...wrapped(`The roles: ${roleNames.join(', ')}.`, ''), 'products:', ...demoPrices.products.map(p => item(p as unknown as Value, node(productSchema()), '  ', true))]),
    section(at('blown'), [
      ...keys({ ...blown, properties: own }, ''), `# Under chart: ${chart!.description!}. One whose rows do not multiply out is refused.`, ...keys(node(chartRowSchema()), ''), 'blown:',
      ...demoPrices.blown.flatMap(p => {
        const { chart: rows, ...values } = p
        const lines = Object.entries(own).flatMap(([key, at]) => (key in values ? [`${key}: ${typed((values as unknown as Values)[key]!, at)}`] : []))
        return [...lines.map((l, n) => `  ${n === 0 ? '- ' : '  '}${l}`), '    chart:', ...rows.map(r => item(r as unknown as Value, node(chartRowSchema()), '      ', true))]
      })]),
  ].join('\n').trimEnd() + '\n'
}

/** A wage from its parts. */
const EXAMPLES: Values = { letterhead: { address: '12 Invented Street, Baraboo WI', phone: '555-0100' }, builtUpWage: { basePerHour: 24, productivePct: 80, burden: [{ what: 'payroll tax', pct: 8 }, { what: 'insurance', pct: 15 }] }, reprice: { honorUpToPct: 2, reissueAbovePct: 5, leastMarginPct: 30, reissueWithinDays: 30 } }

/** A commented company file: the embedded one. */
export function newCompany(): string {
  const schema = node(companySchema()), of = (key: string): Node => schema.properties![key]!
  const example = (at: Node): Value => Object.fromEntries(Object.entries(at.properties ?? {}).map(([key, part]) => [key, part.examples![0] as Value]))
  const named = (key: string, names: readonly string[], live: readonly Value[] = []): string => section(capital(of(key).description!), [
    ...wrapped(`names: ${names.join(', ')}`, ''), ...keys(of(key).items!, ''), live.length === 0 ? `# ${key}:` : `${key}:`, ...(live.length === 0 ? [item(example(of(key).items!), of(key).items!, '  ', false)] : live.map(v => item(v, of(key).items!, '  ', true)))])
  return [
    ...head(BOOK_SCHEMAS.company),
    '# A company file: what one company pays, charges and decides. The figures are invented: write over them.',
    ...wrapped(`What a line behind # would say holds as a starting value until you write it; ${DEMO}.`, ''),
    `format: ${demoCompany.format}`,
    ...mapping(single(schema), demoCompany as unknown as Values, '', EXAMPLES), '',
    section(capital(of('terms').description!), ['# terms:', `#   - ${typed('Workmanship is warranted for one year.')}`]),
    named('subcontract', subcontractNames, (demoCompany.subcontract ?? []) as unknown as Value[]),
    named('rates', workNames),
    named('values', valueIds),
  ].join('\n').trimEnd() + '\n'
}

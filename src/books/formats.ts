// The price book and the company file as JSON Schema.
import * as f from '../fields/index.ts'
import { companySchema } from './company-file.ts'
import { priceBookSchema } from './price-book.ts'

export const pricesFormat = (): object => f.format('lidwork-prices-1', 'lidwork price book: products by role, blown products with their charts', priceBookSchema())
export const companyFormat = (): object => f.format('lidwork-company-1', 'lidwork company file: wage, crew, margin and rates', companySchema())

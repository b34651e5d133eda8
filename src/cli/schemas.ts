// The committed schemas, as they stand in schemas/.
import asBuilt from '../../schemas/as-built.schema.json'
import check from '../../schemas/check.schema.json'
import closeout from '../../schemas/closeout.schema.json'
import company from '../../schemas/company.schema.json'
import estimate from '../../schemas/estimate.schema.json'
import explain from '../../schemas/explain.schema.json'
import importMap from '../../schemas/import.schema.json'
import job from '../../schemas/job.schema.json'
import learned from '../../schemas/learned.schema.json'
import options from '../../schemas/options.schema.json'
import prices from '../../schemas/prices.schema.json'
import pricesDiff from '../../schemas/prices-diff.schema.json'
import reprice from '../../schemas/reprice.schema.json'
import repriceJob from '../../schemas/reprice-job.schema.json'
import tables from '../../schemas/tables.schema.json'
import verify from '../../schemas/verify.schema.json'

const schemas: Readonly<Record<string, object>> = { job, prices, company, closeout, import: importMap, estimate, explain, options, reprice, 'reprice-job': repriceJob, 'as-built': asBuilt, learned, 'prices-diff': pricesDiff, check, tables, verify }

export const schemaNames: readonly string[] = Object.keys(schemas)

/** The committed schema of a format, byte for byte. */
export const schemaText = (name: string): string | undefined => (Object.hasOwn(schemas, name) ? `${JSON.stringify(schemas[name], undefined, 2)}\n` : undefined)

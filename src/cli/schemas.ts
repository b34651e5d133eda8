// The committed schemas, as they stand in schemas/.
import job from '../../schemas/job.schema.json'

const schemas: Readonly<Record<string, object>> = { job }

export const schemaNames: readonly string[] = Object.keys(schemas)

/** The committed schema of a format, byte for byte. */
export const schemaText = (name: string): string | undefined => (Object.hasOwn(schemas, name) ? `${JSON.stringify(schemas[name], undefined, 2)}\n` : undefined)

// The job file as JSON Schema, composed from the fields and the kinds.
import * as f from '../fields/index.ts'
import { jobSchema, kindSchemas } from './job-file.ts'

/** The job file. */
export const jobFormat = (): object => f.format('lidwork-job-1', 'lidwork job file: one surveyed house', jobSchema(), kindSchemas())

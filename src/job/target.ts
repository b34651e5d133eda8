import type { JobTarget } from '../books/job-target.ts'
import type { JobFile } from './job-file.ts'

/** What the books need to know of a job before they can answer. */
export const targetOf = ({ target, house: { state, county, climateZone }, choices }: Pick<JobFile, 'target' | 'house' | 'choices'>): JobTarget =>
  ({ ...target, state, ...(county === undefined ? {} : { county }), ...(climateZone === undefined ? {} : { climateZone }), ...(choices === undefined ? {} : { choices: choices as NonNullable<JobTarget['choices']> }) })

// The commands, in the order of the help. A command is a file here and a line in this list; what it works with it loads when it runs.
import type { Command } from 'commander'
import type { Run } from '../run.ts'
import { addCheck } from './check.ts'
import { addCloseout } from './closeout.ts'
import { addCompany } from './company.ts'
import { addEstimate } from './estimate.ts'
import { addExplain } from './explain.ts'
import { addLearn } from './learn.ts'
import { addNew } from './new.ts'
import { addOptions } from './options.ts'
import { addPapers } from './papers.ts'
import { addPrices } from './prices.ts'
import { addReprice } from './reprice.ts'
import { addSchema } from './schema.ts'
import { addSurveySheet } from './survey-sheet.ts'
import { addVerify } from './verify.ts'

export const commands: readonly ((root: Command, run: Run) => void)[] = [addNew, addCheck, addEstimate, addExplain, addOptions, addPapers, addSurveySheet, addVerify, addCloseout, addLearn, addReprice, addPrices, addCompany, addSchema]

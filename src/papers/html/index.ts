// The papers of a house, in the order people meet them. A paper is a file here and a line in this list.
import { deferral } from './deferral.ts'
import { proposal } from './proposal.ts'
import { supplierOrder } from './supplier-order.ts'
import { surveySheet } from './survey-sheet.ts'
import { workOrder } from './work-order.ts'
import type { House } from './page.ts'

export interface PaperFile {
  /** Behind the job's id and a dot: `proposal.html`. */
  readonly ending: string
  readonly text: string
}

export interface Paper {
  /** As the command line knows it. */
  readonly name: string
  /** For whom it is, for the help. */
  readonly says: string
  /** Whether this house has such a paper at all; a stopped house has no proposal. */
  appliesTo(house: House): boolean
  files(house: House): readonly PaperFile[]
}

export const papers: readonly Paper[] = [proposal, workOrder, supplierOrder, deferral, surveySheet]

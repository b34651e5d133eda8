// The papers of a house, in the order people meet them. A paper is a file here and a line in this list.
import { deferral } from './deferral.ts'
import { proposal } from './proposal.ts'
import { supplierOrder } from './supplier-order.ts'
import { surveySheet } from './survey-sheet.ts'
import { workOrder } from './work-order.ts'
import type { Paper } from './paper.ts'

export const papers: readonly Paper[] = [proposal, workOrder, supplierOrder, deferral, surveySheet]

// The papers of a finished job: for the owner, for the file, and for the attic.
import { cardPaper } from './card.ts'
import { donePaper } from './done.ts'
import type { Done } from './parts.ts'
import { receiptPaper } from './receipt.ts'

/** Behind the job’s id and a dot. */
export const closingFiles = (done: Done): readonly { readonly ending: string; readonly text: string }[] => [
  { ending: 'done.html', text: donePaper(done) }, { ending: 'receipt.html', text: receiptPaper(done) }, { ending: 'attic-card.html', text: cardPaper(done) },
]

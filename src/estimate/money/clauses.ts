// An escalation clause binds by the name of an item: one that no price book has would never apply, and nobody would notice.
import type { Books } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import { nearest } from '../../findings/suggest.ts'
import type { JobFile } from '../../job/job-file.ts'
import type { MaterialLine } from './bill.ts'

export function clausesUnknown({ quote }: Pick<JobFile, 'quote'>, materials: readonly MaterialLine[], books: Books): Finding[] {
  return (quote?.escalation ?? []).flatMap(({ item }, i): Finding[] => {
    if (books.has(item)) return []
    const near = nearest(item, [...books.blownItems, ...materials.map(m => m.product.item)])
    return [{ code: 'clause-item-unknown', severity: 'warning', path: `/quote/escalation/${i}/item`, says: `item: ${item}`, why: 'the price book has no such item, so the clause would never apply', mend: near === undefined ? 'write the name of an item of the bill of materials' : `did you mean ${near}?` }]
  })
}

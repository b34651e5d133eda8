import * as f from '../../fields/index.ts'
import { lineCents } from '../../calc/price.ts'
import { exactly, work } from '../../units/quantity.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { CAUTION, COVERING, hazard, itself, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'electrician-repair', license: true, outside: true }]
const WORDS = { splice: 'open splices', box: 'boxes without covers', cable: 'damaged cable' } as const

export const openSplice = hazard({
  kind: 'open-splice', title: 'Open splices, uncovered boxes, damaged cable',
  schema: () => f.item('open-splice', 'Open splices, uncovered boxes, damaged cable', {
    ...seenAt('above the bath'), count: f.count(99, 'how many'), what: f.optional(f.word(['splice', 'box', 'cable'] as const, 'open splice, box without its cover, damaged cable', { default: 'splice' })),
  }),
  sample: { kind: 'open-splice', in: 'main', at: 'above the bath', count: 2 },
  wrong: { item: { kind: 'open-splice', at: 'above the bath', count: 0 }, code: 'number-out-of-range' },
  clearable,
  onSight: { sign: 'bare or taped splices, a box without cover, scorched or gnawed cable', act: 'power off at the panel and marked; no fill in that area', call: 'electrician' },
  takeoff: ({ item, at, id, q }, books) => ({
    figures: {},
    tasks: [{ id: `repair-${id}`, title: `Electrician: make good ${WORDS[item.what ?? 'splice']} (${item.at})`, count: item.count, phase: 'clear', work: 'swap', touches: item.in === undefined ? 'house' : [item.in], serves: itself, closes: id, from: at, role: 'electrician', ownVisit: true,
      personHours: exactly(0, 'h', 'the electrician’s own'), subcontractCents: work(lineCents, { amount: q('count'), unitPriceCents: books.subcontract('wiring-repair') }), needs: [], cautions: ['Licensed electrician only.', CAUTION.power], proof: 'electrician’s photo of each' }],
    gates: [{ ...shutHere(item, at, COVERING), code: 'open-splice', state: 'hold', why: `${WORDS[item.what ?? 'splice']} under fill can start a fire`, clearedByTask: `repair-${id}`, clearedBy: 'the electrician’s photo of each, made good', clearable,
      condition: `The price holds only if an electrician makes good the ${WORDS[item.what ?? 'splice']} (${item.at}) before the fill.` }],
  }),
  unseen: () => takenAsAbsent('open-splice', 'open splices, uncovered boxes or damaged cable'),
})

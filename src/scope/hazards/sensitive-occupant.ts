import * as f from '../../fields/index.ts'
import { hazard } from '../kind.ts'

const WHY = { oxygen: 'oxygen in use: no foam, no spark, no flame near it', infant: 'a small child: out of the house until the label’s time after foam and dust', asthma: 'asthma: out of the house until the label’s time after foam and dust', 'foam-reaction': 'reacts to foam or solvents: sealants without them' } as const

export const sensitiveOccupant = hazard({
  kind: 'sensitive-occupant', title: 'Somebody in the house who bears foam, dust or solvents badly',
  schema: () => f.item('sensitive-occupant', 'Somebody in the house who bears foam, dust or solvents badly', { at: f.text('who, in your words', { examples: ['grandmother'] }), what: f.word(['oxygen', 'infant', 'asthma', 'foam-reaction'] as const, 'what it is') }),
  sample: { kind: 'sensitive-occupant', at: 'grandmother', what: 'oxygen' },
  wrong: { item: { kind: 'sensitive-occupant', at: 'grandmother', what: 'old' }, code: 'word-unknown' },
  clearable: [],
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{ code: 'sensitive-occupant', state: 'note', where: item.at, in: 'house', path: at, why: WHY[item.what], stops: { phases: [], places: [] }, clearedBy: 'a day set with the household, and where they stay', clearable: [] }] }),
  unseen: () => undefined,
})

import * as f from '../../fields/index.ts'
import { lineCents } from '../../calc/price.ts'
import { exactly, work } from '../../units/quantity.ts'
import { seenAt, shutHere } from '../hazard-parts.ts'
import { COVERING, hazard, itself, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'trade-repair', license: true, outside: true }]

export const recalledItem = hazard({
  kind: 'recalled-item', title: 'Recalled fan, heater or fixture; old gas connector',
  schema: () => f.item('recalled-item', 'Recalled fan, heater or fixture; old gas connector', { ...seenAt('bath fan of 1994'), what: f.text('maker’s model, or what it is', { examples: ['gas connector of one piece, from before 1973'] }) }),
  sample: { kind: 'recalled-item', in: 'main', at: 'bath', what: 'fan on a recall list' },
  wrong: { item: { kind: 'recalled-item', in: 'main', at: 'bath' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'a scorched fan, heater or light; an old one-piece gas connector', act: 'out of use, power off, photo of its label; not buried', call: 'electrician' },
  takeoff: ({ item, at, id }, books) => ({
    figures: {},
    tasks: [{ id: `replace-${id}`, title: `Trade: take ${item.what} out of use, or replace it (${item.at})`, phase: 'clear', work: 'swap', touches: item.in === undefined ? 'house' : [item.in], serves: itself, closes: id, from: at, role: 'other', ownVisit: true,
      personHours: exactly(0, 'h', 'the trade’s own'), subcontractCents: work(lineCents, { amount: exactly(1, 'each', 'one item'), unitPriceCents: books.subcontract('recalled-item') }), needs: [], cautions: ['Not used until it is replaced.'], proof: 'photo, receipt' }],
    gates: [{ ...shutHere(item, at, COVERING), code: 'recalled-item', state: 'hold', why: `${item.what}: out of use until it is replaced, and not buried`, clearedByTask: `replace-${id}`, clearedBy: 'its replacement by the trade it belongs to', clearable, condition: `The price holds only if ${item.what} (${item.at}) is replaced before the fill.` }],
  }),
  unseen: () => undefined,
})

import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { hazard, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'engineer-letter', license: true, outside: true }, { kind: 'carpenter-repair', outside: true }]

export const damagedFraming = hazard({
  kind: 'damaged-framing', title: 'Cut trusses or rafters, rotted deck',
  schema: () => f.item('damaged-framing', 'Cut trusses or rafters, rotted deck', { ...seenAt('truss cut for the old furnace') }),
  sample: { kind: 'damaged-framing', in: 'main', at: 'truss cut for the old furnace' },
  wrong: { item: { kind: 'damaged-framing', in: 'main' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'a cut truss or rafter, a split joist, rotten deck', act: 'nobody on it or under it, nothing laid on it', call: 'engineer or carpenter' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...shutHere(item, at, ['prepare', 'seal', 'ducts', 'wrap', 'ventilate', 'contain', 'insulate']), code: 'damaged-framing', state: 'stop', why: 'nobody knows what it still carries: no person and no fill on it', clearedBy: 'an engineer’s letter, or the carpenter’s repair', clearable,
  }] }),
  unseen: () => takenAsAbsent('damaged-framing', 'cut framing or rotted deck'),
})

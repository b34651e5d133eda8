import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { hazard, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'designer-letter', outside: true }]

export const unventedRoof = hazard({
  kind: 'unvented-roof', title: 'Roof insulated at its deck, attic without vents by design',
  schema: () => f.item('unvented-roof', 'Roof insulated at its deck, attic without vents by design', { ...seenAt('spray foam under the whole deck') }),
  sample: { kind: 'unvented-roof', in: 'main', at: 'spray foam under the whole deck' },
  wrong: { item: { kind: 'unvented-roof', in: 'main' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'foam or board under the roof deck', act: 'no fill on that floor', call: 'office' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...shutHere(item, at, ['insulate']), code: 'unvented-roof', state: 'stop', why: 'this attic is inside the insulation: fill on its floor cools the deck and can wet it', clearedBy: 'a designer’s letter that says what the floor may get', clearable,
  }] }),
  unseen: () => takenAsAbsent('unvented-roof', 'roof insulated at its deck'),
})

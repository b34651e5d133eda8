import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { COVERING, hazard, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'chimney-letter', outside: true }, { kind: 'hvac-letter', license: true, outside: true }]

export const damagedFlue = hazard({
  kind: 'damaged-flue', title: 'Damaged chimney, flue or vent',
  schema: () => f.item('damaged-flue', 'Damaged chimney, flue or vent', { ...seenAt('brick open above the ceiling') }),
  sample: { kind: 'damaged-flue', in: 'main', at: 'brick open above the ceiling' },
  wrong: { item: { kind: 'damaged-flue', in: 'main' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'a rusted, open or loose vent; bricks or mortar out of a chimney', act: 'nothing closed or dammed there, no fill in that area', call: 'chimney or HVAC firm' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...shutHere(item, at, COVERING), code: 'damaged-flue', state: 'stop', why: 'heat or gases can come out of it into fill', clearedBy: 'a chimney or HVAC firm’s letter after repair', clearable,
  }] }),
  unseen: () => takenAsAbsent('damaged-flue', 'damaged chimney or flue'),
})

import * as f from '../../fields/index.ts'
import { hazard, phases, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'utility-letter', outside: true }]

export const gasLeak = hazard({
  kind: 'gas-leak', title: 'Smell or reading of gas',
  schema: () => f.item('gas-leak', 'Smell or reading of gas', { at: f.text('where, in your words', { examples: ['at the furnace valve'] }) }),
  sample: { kind: 'gas-leak', at: 'at the furnace valve' },
  wrong: { item: { kind: 'gas-leak' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'smell of gas, a hiss at a pipe', act: 'everybody out, doors left open; no switch, no flame, no phone inside', call: 'gas utility' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    code: 'gas-leak', state: 'stop', where: item.at, in: 'house', path: at, why: 'gas: everybody out, no switch, no flame; call the gas utility from outdoors', stops: { phases, places: [] }, clearedBy: 'the gas utility’s letter that the leak is closed', clearable,
  }] }),
  unseen: () => undefined,
})

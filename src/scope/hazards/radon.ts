import * as f from '../../fields/index.ts'
import { hazard } from '../kind.ts'

export const radon = hazard({
  kind: 'radon', title: 'Radon known in the house',
  schema: () => f.item('radon', 'Radon known in the house', { at: f.text('where it was measured', { examples: ['cellar'] }), radonPciL: f.number('pCi/L', { above: 0, max: 500 }, 'measured level', { examples: [5] }) }),
  sample: { kind: 'radon', at: 'cellar', radonPciL: 5 },
  wrong: { item: { kind: 'radon', at: 'cellar', radonPciL: 0 }, code: 'number-out-of-range' },
  clearable: [],
  takeoff({ item, at }, books) {
    const most = books.start('radon-action', 4, 'pCi/L', 'radon level at which something is done', 'EPA action level (from memory, high)')
    return { figures: {}, tasks: [], assumes: [most], gates: item.radonPciL < most.value ? [] : [{ code: 'radon', state: 'note', where: item.at, in: 'house', path: at, why: `${item.radonPciL} pCi/L: a tighter house can hold more of it`, stops: { phases: [], places: [] }, clearedBy: 'a radon mitigator, and a test after the work', clearable: [] }] }
  },
  unseen: () => undefined,
})

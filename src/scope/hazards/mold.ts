import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { hazard, phases, type Clearable, type Gate } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'remediation-letter', outside: true }]

export const mold = hazard({
  kind: 'mold', title: 'Visible mold',
  schema: () => f.item('mold', 'Visible mold', { ...seenAt('north sheathing'), areaFt2: f.number('ft2', { above: 0, max: 10000 }, 'how much of it, all patches together', { examples: [25] }) }),
  sample: { kind: 'mold', in: 'main', at: 'north sheathing', areaFt2: 10 },
  wrong: { item: { kind: 'mold', at: 'north sheathing', areaFt2: 0 }, code: 'number-out-of-range' },
  clearable,
  onSight: { sign: 'black, green or white growth on wood', act: 'do not brush it; measure it, photo; work stops in that area', call: 'remediator' },
  takeoff({ item, at, q }, books) {
    const most = books.start('mold-area', 10, 'ft2', 'most mold that is wiped off without a specialist', 'EPA mold guide (from memory, high)'), much = q('areaFt2').value > most.value
    const gate: Gate = much
      ? { ...shutHere(item, at, phases.filter(p => p !== 'clear')), code: 'mold', state: 'stop', why: `${item.areaFt2} ft² of mold is over the ${most.value} ft² that may be wiped off: working in it spreads it`, clearedBy: 'a remediator’s letter, and the cause ended', clearable }
      : { ...shutHere(item, at, []), code: 'mold-small', state: 'note', why: `${item.areaFt2} ft² of mold: a sign of moist air or of a leak`, clearedBy: 'cleaning with respirator and gloves, and the cause ended', clearable: [] }
    return { figures: {}, tasks: [], gates: [gate], assumes: [most] }
  },
  unseen: () => takenAsAbsent('mold', 'mold'),
})

import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { hazard, TIGHTENING, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'dry-reading' }]

export const wetWood = hazard({
  kind: 'wet-wood', title: 'Active leak, wet wood, frost',
  schema: () => f.item('wet-wood', 'Active leak, wet wood, frost', {
    ...seenAt('roof deck at the valley'), cause: f.word(['roof', 'plumbing', 'condensation', 'frost', 'unknown'] as const, 'where the water comes from'),
  }),
  sample: { kind: 'wet-wood', in: 'main', at: 'roof deck at the valley', cause: 'roof' },
  wrong: { item: { kind: 'wet-wood', at: 'valley', cause: 'rain' }, code: 'word-unknown' },
  clearable,
  onSight: { sign: 'wet, dark or frosted wood, drips, wet fill', act: 'no sealing over it and no fill in that area; a photo, a bucket', call: 'roofer or plumber' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...shutHere(item, at, TIGHTENING), code: 'wet-wood', state: 'stop', why: 'wet wood under fill rots, and fill that gets wet is lost',
    clearedBy: `${item.cause === 'roof' ? 'the roofer’s repair' : item.cause === 'plumbing' ? 'the plumber’s repair' : 'the cause found and ended'}, then a dry reading: wood under 19 %, with a photo`, clearable,
  }] }),
  unseen: () => takenAsAbsent('wet-wood', 'leak, wet wood or frost'),
})

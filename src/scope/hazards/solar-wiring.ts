import * as f from '../../fields/index.ts'
import { seenAt, shutHere } from '../hazard-parts.ts'
import { hazard } from '../kind.ts'

export const solarWiring = hazard({
  kind: 'solar-wiring', title: 'Wiring or boxes of a solar system in the attic',
  schema: () => f.item('solar-wiring', 'Wiring or boxes of a solar system in the attic', { ...seenAt('conduit along the ridge') }),
  sample: { kind: 'solar-wiring', in: 'main', at: 'conduit along the ridge' },
  wrong: { item: { kind: 'solar-wiring', in: 'main' }, code: 'key-missing' },
  clearable: [],
  onSight: { sign: 'conduit or boxes of a solar system', act: 'live in daylight: nothing on them, nothing fastened to them', call: 'solar firm' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{ ...shutHere(item, at, []), code: 'solar-wiring', state: 'note', why: 'it is live whenever the sun shines: nothing on its conduit, no disconnect or power electronics under fill', clearedBy: 'a word with the firm that put it up; its boxes as heat-producing-device', clearable: [] }] }),
  unseen: () => undefined,
})

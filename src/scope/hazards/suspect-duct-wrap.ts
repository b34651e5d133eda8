import * as f from '../../fields/index.ts'
import { heldUntilLooked, seenAt, shutHere } from '../hazard-parts.ts'
import { hazard, type Clearable, type Phase } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'asbestos-inspection', license: true, outside: true }, { kind: 'abatement-clearance', license: true, outside: true }]
const TOUCHING: readonly Phase[] = ['ducts', 'wrap']

export const suspectDuctWrap = hazard({
  kind: 'suspect-duct-wrap', title: 'Duct wrap or tape that may hold asbestos',
  schema: () => f.item('suspect-duct-wrap', 'Duct wrap or tape that may hold asbestos', { ...seenAt('boot of the den'), of: f.optional(f.id('duct it lies on, by its id; left out, every duct of the area')) }),
  sample: { kind: 'suspect-duct-wrap', in: 'main', at: 'boot of the den' },
  wrong: { item: { kind: 'suspect-duct-wrap', in: 'main' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'white or gray paper, cloth or tape on ducts, boots or pipes', act: 'touch nothing; no fan runs; out of that area', call: 'abatement firm' },
  // Of one duct: its own sealing and wrap stop, and with these whatever would cover it.
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...(item.of === undefined ? shutHere(item, at, [...TOUCHING, 'insulate']) : { ...shutHere(item, at, TOUCHING), stops: { phases: TOUCHING, places: [item.of] } }),
    code: 'suspect-duct-wrap', state: 'stop', why: 'white or gray paper, cloth or tape may hold asbestos: nobody touches it, seals or tests the ducts with a fan, or covers it',
    clearedBy: 'an accredited inspector’s report that it holds none, or the final letter of an abatement firm', clearable,
  }] }),
  unseen: (house, books, at) => !house.ducts ? undefined : heldUntilLooked({
    gate: { code: 'suspect-duct-wrap-not-checked', state: 'hold' }, kind: 'suspect-duct-wrap', what: 'suspect duct wrap or tape', why: 'it may hold asbestos', phases: [...TOUCHING, 'insulate'], clearable,
    limit: books.start('year-duct-asbestos', 1985, 'year', 'last year that duct wrap and tape are likely to hold asbestos', 'common practice, no source'),
    look: { title: 'Look at duct wrap, tape and boots: white or gray paper or cloth, without touching it', work: 'clearing', cautions: ['White or gray paper or cloth on a duct may hold asbestos: touch nothing.'] },
  }, house, books, at),
})

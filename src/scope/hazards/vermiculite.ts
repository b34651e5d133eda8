import * as f from '../../fields/index.ts'
import { heldUntilLooked, seenAt } from '../hazard-parts.ts'
import { hazard, phases, type Clearable, type Gate } from '../kind.ts'

/** Sold for attics until 1990 (EPA): possible in any house built by then, also under another layer. */
const YEAR = 1990
const CAUTION = 'Pebble-like, gray-brown or silver-gold fill: do not enter, do not stir, close the hatch; it may hold asbestos.'

const clearable: readonly Clearable[] = [{ kind: 'abatement-clearance', license: true, outside: true }]

/** Seen, suspected, or written down as a layer of old fill. */
export const vermiculiteGate = (where: string, path: string): Gate => ({
  code: 'vermiculite', state: 'stop', where, in: 'house', path, why: 'vermiculite may hold asbestos: nobody enters, seals, tests with a fan, or blows here',
  stops: { phases, places: [] }, clearedBy: 'the final letter of a licensed abatement firm after removal', clearable,
})

export const vermiculite = hazard({
  kind: 'vermiculite', title: 'Vermiculite, seen or suspected',
  schema: () => f.item('vermiculite', 'Vermiculite, seen or suspected', { ...seenAt('under the batts, north end'), seen: f.optional(f.text('what was seen')) }),
  sample: { kind: 'vermiculite', in: 'main', at: 'under the batts' },
  wrong: { item: { kind: 'vermiculite', in: 'main' }, code: 'key-missing' },
  clearable,
  onSight: { sign: 'loose pebbles, gray-brown or silver-gold, also under other fill', act: 'stop, leave without stirring, shut the hatch; no fan runs', call: 'abatement firm' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [vermiculiteGate(item.at, at)] }),
  unseen: (house, books, at) => heldUntilLooked({
    gate: { code: 'vermiculite-not-checked', state: 'hold' }, kind: 'vermiculite', what: 'vermiculite', why: 'it may hold asbestos', phases, clearable,
    limit: books.start('year-vermiculite', YEAR, 'year', 'last year that vermiculite is possible', 'EPA: sold for attics until 1990'),
    look: { title: 'Look for vermiculite, also under the top layer, without stirring it', work: 'hazard-look', cautions: [CAUTION] },
  }, house, books, at),
})

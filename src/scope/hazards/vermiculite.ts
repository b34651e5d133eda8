import * as f from '../../fields/index.ts'
import { exactly, work } from '../../units/quantity.ts'
import { personHours } from '../../calc/arithmetic.ts'
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
  schema: f.item('vermiculite', 'Vermiculite, seen or suspected', {
    in: f.optional(f.id('area it lies in')),
    at: f.text('where, in your words', { examples: ['under the batts, north end'] }),
    seen: f.optional(f.text('what was seen')),
  }),
  sample: { kind: 'vermiculite', in: 'main', at: 'under the batts' },
  wrong: { item: { kind: 'vermiculite', in: 'main' }, code: 'key-missing' },
  clearable,
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [vermiculiteGate(item.at, at)] }),
  unseen(house, books, at) {
    const limit = books.start('year-vermiculite', YEAR, 'year', 'last year that vermiculite is possible', 'EPA: sold for attics until 1990')
    if (house.yearBuilt !== undefined && house.yearBuilt > limit.value) return undefined
    return {
      figures: {}, assumes: [limit],
      tasks: [{ id: 'look-vermiculite', title: 'Look for vermiculite, also under the top layer, without stirring it', phase: 'clear', work: 'hazard-look', touches: 'house', serves: { is: 'itself' }, role: 'lead', ownVisit: true,
        personHours: work(personHours, { amount: exactly(1, 'each', 'one look'), rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'from the hatch') }), needs: [], cautions: [CAUTION], proof: 'photo with date' }],
      gates: [{
        code: 'vermiculite-not-checked', state: 'hold', where: 'attic', in: 'house', path: at, why: `nobody looked for vermiculite in a house ${house.yearBuilt === undefined ? 'of unknown year' : `of ${house.yearBuilt}`}; it may hold asbestos`,
        stops: { phases, places: [] }, clearedByTask: 'look-vermiculite', clearable, clearedBy: 'a look, written as `notFound: [vermiculite]`, or as a hazard where it is found',
        condition: 'The price holds only if a look finds no vermiculite before work starts.',
      }],
    }
  },
})

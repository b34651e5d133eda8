import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { work } from '../../units/quantity.ts'
import { CAUTION, declinable, itself, opening, takes, where } from '../kind.ts'

export const sprinklerHead = opening({
  kind: 'sprinkler-head', title: 'Fire sprinkler heads in the ceiling',
  schema: () => f.item('sprinkler-head', 'Fire sprinkler heads in the ceiling', { ...where, count: f.count(60, 'how many', { examples: [6] }), ...declinable }),
  sample: { kind: 'sprinkler-head', in: 'main', count: 6, at: 'all rooms' },
  wrong: { item: { kind: 'sprinkler-head', in: 'main', count: 0, at: 'all rooms' }, code: 'number-out-of-range' },
  takeoff({ item, id, q }, books, { area }) {
    const flag = takes([books.product('box-flag'), q('count')])
    return { figures: { method: 'left as it is, flagged', materials: flag.materials }, tasks: [{ id: `flag-${id}`, title: 'Flag each sprinkler head', count: item.count, phase: 'contain', work: 'marker', touches: [item.in], serves: itself, closes: id, role: 'helper', needs: flag.needs,
      personHours: work(personHours, { amount: q('count'), rate: books.rate('box-flag', 0.03, 'each'), access: area.access }), cautions: ['Sprinkler heads: no caulk, no foam, nothing in the gap of a cover plate; the line stays in service.', 'Their pipe must not freeze: list it as a water-line.', CAUTION.framing], proof: 'photo of each' }] }
  },
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, ring } from '../../calc/seal.ts'
import { work } from '../../units/quantity.ts'
import { CAUTION, declinable, itself, opening, seamBead, takes, where } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const solarTube = opening({
  kind: 'solar-tube', title: 'Daylight tube through the attic',
  schema: () => f.item('solar-tube', 'Daylight tube through the attic', { ...where, count: f.count(20, 'how many alike', { examples: [1] }), diameterIn: f.inches(30, 'tube, across', { examples: [10] }), ...declinable }),
  sample: { kind: 'solar-tube', in: 'main', count: 1, diameterIn: 10, at: 'hall' },
  wrong: { item: { kind: 'solar-tube', in: 'main', count: 1, diameterIn: 100, at: 'hall' }, code: 'number-out-of-range' },
  leak: ({ q }) => pairOf('penetration', 'penetration-sealed', q('count')),
  takeoff({ item, id, q }, books, { area }) {
    const { needs, materials } = takes([books.product('seam-sealant'), work(bead, { runIn: work(ring, { diameterIn: q('diameterIn'), count: q('count') }), beadIn: seamBead(books) })])
    return { figures: { method: 'sealed to the ceiling, joints taped', materials }, tasks: [{ id: `seal-${id}`, title: 'Seal the daylight tube to the ceiling and tape its joints', count: item.count, phase: 'seal', work: 'small-hole', size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
      personHours: work(personHours, { amount: q('count'), rate: books.rate('solar-tube', 0.3, 'each'), access: area.access }), cautions: ['The tube is thin: nothing leans on it; fill round it, not in its joints.', 'A light in it: power off, 3 in clear if it is not rated.', CAUTION.framing], proof: 'photo' }] }
  },
})

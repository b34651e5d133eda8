import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { annulus, plug } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, declinable, holeDepth, itself, method, opening, takes, where } from '../kind.ts'
import { pairOf, within } from '../leaks.ts'

export const wireHole = opening({
  kind: 'wire-hole', title: 'Wire holes in a plate',
  schema: () => f.item('wire-hole', 'Wire holes in a plate', {
    ...where,
    count: f.count(500, 'how many alike', { examples: ['~22'] }),
    holeIn: f.inches(3, 'hole, across', { examples: ['3/4'] }),
    ...declinable,
  }),
  sample: { kind: 'wire-hole', in: 'main', count: 22, holeIn: 0.75, at: 'inside walls' },
  wrong: { item: { kind: 'wire-hole', in: 'main', count: 22, holeIn: 34, at: 'inside walls' }, code: 'number-out-of-range' },
  leak: ({ q }) => within(pairOf('penetration', 'penetration-sealed', q('count')), work(annulus, { holeIn: q('holeIn'), outsideIn: exactly(0, 'in', 'the wire is not deducted'), count: q('count') })),
  takeoff({ item, id, q }, books, { area }) {
    const count = q('count')
    // The wire lies to one side: what must be bridged is the hole, and its own thickness is left in the quantity.
    const how = method(item.holeIn)
    const areaIn2 = work(annulus, { holeIn: q('holeIn'), outsideIn: exactly(0, 'in', 'the wire is not deducted'), count })
    const { needs, materials } = takes([books.product(how.role), work(plug, { areaIn2, depthIn: holeDepth(books) })])
    return {
      figures: { method: how.method, materials },
      tasks: [{
        id: `seal-wires-${item.in}`, title: 'Seal the wire holes', phase: 'seal', work: 'small-hole', touches: [item.in], serves: itself, closes: id, size: 'small', role: 'crew', count: item.count, needs,
        personHours: work(personHours, { amount: count, rate: books.rate('wire-hole', 0.05, 'each'), access: area.access }),
        cautions: [CAUTION.wires, 'Plate of a fire-rated wall: listed firestop sealant only.', CAUTION.framing, ...how.cautions], proof: 'photo of each run',
      }],
    }
  },
})

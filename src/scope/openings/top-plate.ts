import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, beadWidth, seamLength, inFeet } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { declinable, itself, method, opening, where, seamBead } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const topPlate = opening({
  kind: 'top-plate', title: 'Top plate of a wall',
  schema: () => f.item('top-plate', 'Top plate of a wall', {
    ...where,
    wall: f.word(['inside', 'outside'] as const, 'inside walls have two drywall seams, outside walls one'),
    lengthFt: f.feet(3000, 'length of wall, not of seam', { examples: [186, '~112'] }),
    gapIn: f.inches(3, 'width of the seam', { examples: ['1/8'] }),
    ...declinable,
  }),
  sample: { kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 186, gapIn: 0.125, at: 'all inside walls' },
  wrong: { item: { kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 186, gapIn: 9, at: 'hall' }, code: 'number-out-of-range' },
  leak: ({ item, q }) => {
    const inside = item.wall === 'inside', seamFt = work(inFeet, { lengthIn: work(seamLength, { lengthFt: q('lengthFt'), seams: exactly(inside ? 2 : 1, 'each', `seams of an ${item.wall} wall`) }) })
    return pairOf('ceiling-joint', 'ceiling-joint-sealed', seamFt)
  },
  takeoff({ item, id, q }, books, { area }) {
    const inside = item.wall === 'inside'
    const runIn = work(seamLength, { lengthFt: q('lengthFt'), seams: exactly(inside ? 2 : 1, 'each', `seams of an ${item.wall} wall`) })
    const how = method(q('gapIn').value)
    const beadIn = work(beadWidth, { gapIn: q('gapIn'), leastIn: seamBead(books) })
    const sealant = books.product(how.role)
    const quantity = work(bead, { runIn, beadIn })
    const task = id.replace('top-plate', 'seal-plates')
    return {
      figures: { method: how.method, materials: [{ item: sealant.item, quantity, unit: sealant.unit }] },
      tasks: [{
        id: task, title: `Seal ${inside ? 'both edges of the inside' : 'the'} top plates${inside ? '' : ' of outside walls'} (${Math.round(item.lengthFt)} ft)`, phase: 'seal', work: 'small-hole', touches: [item.in], serves: itself, closes: id,
        size: 'small', role: 'crew', needs: [{ item: sealant.item, quantity }],
        personHours: work(personHours, { amount: q('lengthFt'), rate: inside ? books.rate('top-plate-inside', 0.025, 'ft') : books.rate('top-plate-outside', 0.05, 'ft'), access: area.access }),
        cautions: ['Live wires in the plates: no metal tools in the holes.', 'Step on framing only.', ...how.cautions], proof: 'photo of each run',
      }],
    }
  },
})

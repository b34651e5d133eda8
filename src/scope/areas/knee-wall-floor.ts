import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { baysOf, blockArea, blockEdge } from '../../calc/dense.ts'
import { bead } from '../../calc/seal.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fromRow } from '../../reference/table.ts'
import { given, work } from '../../units/quantity.ts'
import { accessOf, area, oldLayers } from '../area-kind.ts'
import { CAUTION, itself, seamBead, takes, type Task } from '../kind.ts'
import { floorFaults, floorKeys, floorTakeoff } from './open-floor.ts'

export const kneeWallFloor = area({
  kind: 'knee-wall-floor', title: 'Floor behind a knee wall',
  schema: f.item('knee-wall-floor', 'Floor behind a knee wall', {
    ...floorKeys,
    wallFt: f.feet(500, 'length of the knee wall: a block in each joist bay below it', { examples: [22] }),
    openBays: f.optional(f.count(500, 'joist bays open under the wall, counted; without it length ÷ spacing', { min: 0 })),
  }),
  sample: { kind: 'knee-wall-floor', id: 'eaves-east', rectanglesFt: [[22, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [], wallFt: 22 },
  wrong: { item: { kind: 'knee-wall-floor', id: 'eaves-east', rectanglesFt: [[22, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [] }, code: 'key-missing' },
  check: floorFaults,
  takeoff(found, books, around) {
    const { item, at, q } = found
    const measure = floorTakeoff(found, books, around, { kind: 'knee-wall-floor' })
    const joist = lumber.rows.find(r => r.size === item.joists.size)!, spacingIn = given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`)
    const bays = q('openBays', work(baysOf, { widthFt: q('wallFt'), spacingIn }))
    if (bays.value === 0) return measure
    const sizes = { bays, spacingIn, framingIn: fromRow(lumber, joist, joist.widthIn, 'in', joist.size), depthIn: fromRow(lumber, joist, joist.depthIn, 'in', joist.size) }
    // Air runs under the wall from the cold side into the floor of the warm room.
    const { access } = accessOf(found, oldLayers(item.existing, `${at}/existing`, books).oldDepth, around.hatchIn, books)
    const { needs } = takes([books.product('rigid-cover'), work(blockArea, sizes)], [books.product('seam-sealant'), work(bead, { runIn: work(blockEdge, sizes), beadIn: seamBead(books) })])
    const block: Task = { id: `block-bays-${item.id}`, title: 'Block each joist bay in line with the knee wall, rigid, all edges sealed', count: bays.value, phase: 'seal', work: 'big-hole', size: 'large', touches: [item.id], serves: itself, closes: `${item.id}-bays`, role: 'crew', needs,
      personHours: work(personHours, { amount: bays, rate: books.rate('joist-bay-block', 0.25, 'each'), access }), cautions: [CAUTION.wires, 'A batt alone is no block: air goes through it.', CAUTION.framing], proof: 'photo of each row' }
    return { ...measure, tasks: [block, ...measure.tasks] }
  },
})

import * as f from '../../fields/index.ts'
import { accessOf, area, oldLayers } from '../area-kind.ts'
import { bayBlocks, blockKeys } from '../bay-blocks.ts'
import { floorFaults, floorKeys, floorTakeoff } from './open-floor.ts'

export const kneeWallFloor = area({
  kind: 'knee-wall-floor', title: 'Floor behind a knee wall',
  schema: () => f.item('knee-wall-floor', 'Floor behind a knee wall', {
    ...floorKeys,
    ...blockKeys,
  }),
  sample: { kind: 'knee-wall-floor', id: 'eaves-east', rectanglesFt: [[22, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [], wallFt: 22 },
  wrong: { item: { kind: 'knee-wall-floor', id: 'eaves-east', rectanglesFt: [[22, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [] }, code: 'key-missing' },
  check: floorFaults,
  takeoff(found, books, around) {
    const measure = floorTakeoff(found, books, around, { kind: 'knee-wall-floor' })
    const { access } = accessOf(found, oldLayers(found.item.existing, `${found.at}/existing`, books).oldDepth, around.hatchIn, books)
    return { ...measure, tasks: [...bayBlocks(found, access, books), ...measure.tasks] }
  },
})

import * as f from '../../fields/index.ts'
import { area } from '../area-kind.ts'
import { leftOutKeys, lineTakeoff } from '../left-out.ts'

export const garage = area({
  kind: 'garage', title: 'Ceiling over a garage, left out',
  schema: () => f.item('garage', 'Ceiling over a garage, left out', leftOutKeys),
  sample: { kind: 'garage', id: 'garage', rectanglesFt: [[20, 22]], beside: 'main', lineFt: 22, joistIn: 5.5, headroomIn: 62 },
  wrong: { item: { kind: 'garage', id: 'garage', rectanglesFt: [[20, 22]], lineFt: 22, joistIn: 5.5, headroomIn: 62 }, code: 'key-missing' },
  // Exhaust and fuel of the garage stay out of the house; the wall keeps its rating.
  takeoff: (found, books, around) => lineTakeoff(found, books, around, 'garage', { title: 'Close the line to the garage: a block in each joist bay, all edges sealed',
    cautions: ['Garage wall: 1/2 in drywall or what the code official asks for; rated sealant where the wall is rated, no ordinary foam.', 'Carbon monoxide comes over from a garage: leave no hole.'] }),
})

import * as f from '../../fields/index.ts'
import { area } from '../area-kind.ts'
import { leftOutKeys, lineTakeoff } from '../left-out.ts'

export const porch = area({
  kind: 'porch', title: 'Porch roof, left out',
  schema: () => f.item('porch', 'Porch roof, left out', leftOutKeys),
  sample: { kind: 'porch', id: 'porch', rectanglesFt: [[20, 8]], beside: 'main', lineFt: 20, joistIn: 5.5, headroomIn: 30 },
  wrong: { item: { kind: 'porch', id: 'porch', rectanglesFt: [[20, 8]], beside: 'main', joistIn: 5.5, headroomIn: 30 }, code: 'key-missing' },
  takeoff: (found, books, around) => lineTakeoff(found, books, around, 'porch', { title: 'Close the wall of the house inside the porch roof: boards over open studs and bays, sealed', cautions: ['The porch ceiling is thin: it carries nobody.'] }),
})

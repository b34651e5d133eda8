import * as f from '../../fields/index.ts'
import { area } from '../area-kind.ts'
import { leftOutKeys, lineTakeoff } from '../left-out.ts'

export const closedVault = area({
  kind: 'closed-vault', title: 'Vaulted ceiling that is closed, left out',
  schema: () => f.item('closed-vault', 'Vaulted ceiling that is closed, left out', leftOutKeys),
  sample: { kind: 'closed-vault', id: 'vault', rectanglesFt: [[18, 14]], beside: 'main', lineFt: 14, joistIn: 9.25, headroomIn: 62 },
  wrong: { item: { kind: 'closed-vault', id: 'vault', rectanglesFt: [[18, 14]], beside: 'main', lineFt: 14, headroomIn: 62 }, code: 'key-missing' },
  takeoff: (found, books, around) => lineTakeoff(found, books, around, 'closed-vault', { title: 'Close the wall between attic and vault: boards over open studs and rafter bays, vents of the vault kept open', cautions: ['Vent path of the vault: never closed, no fill into it.'] }),
})

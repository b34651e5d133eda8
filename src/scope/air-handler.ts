// Furnace or air handler in the attic: its cabinet leaks at the highest pressure, and nothing may lie on it.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import { masticVolume } from '../calc/duct.ts'
import type { Books } from '../books/books.ts'
import { exactly, work } from '../units/quantity.ts'
import { CAUTION, fillOf, itself, takes, type AreaAround, type Found, type Gate, type Measure, type Task } from './kind.ts'

export const airHandlerSchema = f.later(() => f.fields({
  id: f.id('short name', { examples: ['air-handler'] }),
  in: f.id('area it stands in', { examples: ['main'] }),
  at: f.text('where, in your words', { examples: ['over the hall'] }),
  sealed: f.yesNo('its cabinet, plenums and filter slot are sealed already'),
  platformReturn: f.optional(f.yesNo('it stands on a box that is its return', { default: 'no' })),
  pan: f.yesNoUnknown('a drain pan with its switch or second drain under it, where it cools'),
}, 'one air handler or furnace in the attic'))
export type AirHandler = f.StaticOf<typeof airHandlerSchema>

export function airHandlerTakeoff({ item, at, id, q: _ }: Found<AirHandler>, books: Books, area: AreaAround): Measure {
  const one = exactly(1, 'each', 'one to an entry'), base = { touches: [item.in], role: 'crew' } as const
  const hours = (amount: typeof one, rate: string, starting: number, per: string) => work(personHours, { amount, rate: books.rate(rate, starting, per), access: area.access })
  const runFt = books.start('handler-seams', 20, 'ft', 'seams of a cabinet, its plenums and filter slot'), mastic = takes([books.product('mastic'), work(masticVolume, { runFt, bandIn: books.start('mastic-band', 3, 'in', 'band of mastic over a joint'), thickIn: books.start('mastic-thickness', 5 / 64, 'in', 'thickness of mastic over a joint', 'as thick as a nickel') })], [books.product('mesh'), runFt])
  const tasks: Task[] = []
  // From the air handler outwards, where the pressure is highest; returns beside a flame first.
  if (item.sealed === 'no') tasks.push({ ...base, id: `seal-${id}`, title: `Seal cabinet, plenums and filter slot${item.platformReturn === 'yes' ? ', line the platform return with rigid board' : ''}`, phase: 'ducts', work: 'duct-fix', size: 'large', serves: itself, closes: id, personHours: hours(one, 'air-handler', 1.5, 'each'), needs: mastic.needs,
    cautions: ['Heating and cooling off and locked.', 'Panels that are serviced are taped, never mastic.', 'White or gray paper or cloth may hold asbestos: touch nothing, tell the lead.', CAUTION.framing], proof: 'photo of each side' })
  if (area.filled) tasks.push({ ...base, id: `dam-${id}`, title: 'Dam round the air handler and its walkway, 24 in clear at its panels', phase: 'contain', work: 'dam', serves: fillOf(item.in), personHours: hours(one, 'air-handler-dam', 0.6, 'each'), needs: takes([books.product('rigid-dam'), books.start('handler-dam', 16, 'ft', 'dam round an air handler and its walkway')]).needs,
    cautions: ['Service space, walkway and drain stay free (IRC M1305).', CAUTION.framing], proof: 'photo' })
  const gates: Gate[] = item.pan === 'yes' ? [] : [{ code: 'drain-pan', state: 'note', where: item.at, in: item.in, path: `${at}/pan`, why: item.pan === 'no' ? 'water of the coil runs into the fill when its drain stops' : 'nobody looked whether water of the coil is caught', stops: { phases: [], places: [] }, clearedBy: 'a pan with a switch or a second drain, by an HVAC contractor', clearable: [] }]
  return { figures: {}, tasks, gates }
}

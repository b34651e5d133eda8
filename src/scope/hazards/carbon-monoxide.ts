import * as f from '../../fields/index.ts'
import { hazard, phases, TIGHTENING, type Clearable, type Gate } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'combustion-test', outside: true }]

export const carbonMonoxide = hazard({
  kind: 'carbon-monoxide', title: 'Carbon monoxide in the rooms',
  schema: f.item('carbon-monoxide', 'Carbon monoxide in the rooms', { at: f.text('where it was read', { examples: ['hall'] }), coPpm: f.number('ppm', { above: 0, max: 5000 }, 'highest reading in the air of the rooms', { examples: [12] }) }),
  sample: { kind: 'carbon-monoxide', at: 'hall', coPpm: 40 },
  wrong: { item: { kind: 'carbon-monoxide', at: 'hall', coPpm: 0 }, code: 'number-out-of-range' },
  clearable,
  takeoff({ item, at, q }, books) {
    const note = books.start('co-note', 9, 'ppm', 'carbon monoxide in room air that is looked into', 'home performance practice (from memory, medium)'), off = books.start('co-shut-off', 36, 'ppm', 'carbon monoxide at which appliances are shut off', 'home performance practice (from memory, medium)'), out = books.start('co-evacuate', 70, 'ppm', 'carbon monoxide at which everybody leaves', 'home performance practice (from memory, medium)')
    const ppm = q('coPpm').value, base = { where: item.at, in: 'house', path: at } as const
    const gate: Gate | undefined = ppm >= off.value
      ? { ...base, code: 'carbon-monoxide', state: 'stop', why: ppm >= out.value ? `${ppm} ppm in the rooms: everybody out, call emergency services from outdoors` : `${ppm} ppm in the rooms: appliances off, windows open, call the utility`, stops: { phases: ppm >= out.value ? phases : TIGHTENING, places: [] }, clearedBy: 'repair by a licensed HVAC contractor, then a passed combustion test', clearable }
      : ppm >= note.value ? { ...base, code: 'carbon-monoxide-low', state: 'note', why: `${ppm} ppm in the rooms: something burns badly or spills`, stops: { phases: [], places: [] }, clearedBy: 'its source, found in the combustion test', clearable: [] } : undefined
    return { figures: {}, tasks: [], assumes: [note, off, out], ...(gate ? { gates: [gate] } : {}) }
  },
  unseen: () => undefined,
})

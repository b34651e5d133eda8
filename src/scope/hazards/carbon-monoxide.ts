import * as f from '../../fields/index.ts'
import type { Books } from '../../books/books.ts'
import { hazard, phases, TIGHTENING, type Clearable, type Gate } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'combustion-test', outside: true }]

const PRACTICE = 'home performance practice (from memory, medium)'
/** Readings in room air from which something is done [ppm]. */
export const coLevels = (books: Books) => ({
  note: books.start('co-note', 9, 'ppm', 'carbon monoxide in room air that is looked into', PRACTICE), abort: books.start('co-abort', 35, 'ppm', 'carbon monoxide in room air at which a test ends', 'home performance standard for building analysts, 2005'),
  off: books.start('co-shut-off', 36, 'ppm', 'carbon monoxide at which appliances are shut off', PRACTICE), out: books.start('co-evacuate', 70, 'ppm', 'carbon monoxide at which everybody leaves', PRACTICE),
})

export const carbonMonoxide = hazard({
  kind: 'carbon-monoxide', title: 'Carbon monoxide in the rooms',
  schema: () => f.item('carbon-monoxide', 'Carbon monoxide in the rooms', { at: f.text('where it was read', { examples: ['hall'] }), coPpm: f.number('ppm', { above: 0, max: 5000 }, 'highest reading in the air of the rooms', { examples: [12] }) }),
  sample: { kind: 'carbon-monoxide', at: 'hall', coPpm: 40 },
  wrong: { item: { kind: 'carbon-monoxide', at: 'hall', coPpm: 0 }, code: 'number-out-of-range' },
  clearable,
  onSight: { sign: 'the monitor sounds; headache, dizziness', act: 'everybody out; appliances off only if that costs no time', call: '911' },
  takeoff({ item, at, q }, books) {
    const { note, off, out } = coLevels(books)
    const ppm = q('coPpm').value, base = { where: item.at, in: 'house', path: at } as const
    const gate: Gate | undefined = ppm >= off.value
      ? { ...base, code: 'carbon-monoxide', state: 'stop', why: ppm >= out.value ? `${ppm} ppm in the rooms: everybody out, call emergency services from outdoors` : `${ppm} ppm in the rooms: appliances off, windows open, call the utility`, stops: { phases: ppm >= out.value ? phases : TIGHTENING, places: [] }, clearedBy: 'repair by a licensed HVAC contractor, then a passed combustion test', clearable }
      : ppm >= note.value ? { ...base, code: 'carbon-monoxide-low', state: 'note', why: `${ppm} ppm in the rooms: something burns badly or spills`, stops: { phases: [], places: [] }, clearedBy: 'its source, found in the combustion test', clearable: [] } : undefined
    return { figures: {}, tasks: [], assumes: [note, off, out], ...(gate ? { gates: [gate] } : {}) }
  },
  unseen: () => undefined,
})

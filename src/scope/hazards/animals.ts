import * as f from '../../fields/index.ts'
import { seenAt, shutHere, takenAsAbsent } from '../hazard-parts.ts'
import { hazard, phases, type Clearable } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'exclusion-letter', outside: true }]
const WHY = {
  animals: 'animals live here: they bite, and they are shut in or come back', droppings: 'stirred droppings carry disease', bats: 'bats live here: they may be protected, and their droppings carry disease',
} as const

export const animals = hazard({
  kind: 'animals', title: 'Animals or their droppings',
  schema: () => f.item('animals', 'Animals or their droppings', { ...seenAt('at the gable vent'), what: f.word(['animals', 'droppings', 'bats'] as const, 'what was seen'), extent: f.optional(f.word(['few', 'many'] as const, 'of droppings: a few, old and dry, in one place, no nest; or more', { default: 'many' })) }),
  sample: { kind: 'animals', in: 'main', at: 'at the gable vent', what: 'droppings' },
  wrong: { item: { kind: 'animals', at: 'gable', what: 'squirrels' }, code: 'word-unknown' },
  clearable,
  onSight: { sign: 'animals, nests, droppings, bats', act: 'leave them and their droppings unstirred; work stops in that area', call: 'pest control firm' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [item.what === 'droppings' && item.extent === 'few' ? {
    ...shutHere(item, at, []), code: 'animals-few', state: 'note', why: 'a few old droppings: their dust carries disease', clearedBy: 'wetting with disinfectant and wiping up, respirator and gloves on, never swept or vacuumed dry (CDC, rodent clean-up)', clearable: [],
  } : {
    ...shutHere(item, at, phases.filter(p => p !== 'clear')), code: 'animals', state: 'stop', why: WHY[item.what],
    clearedBy: `a pest control firm’s letter: out, entries closed, droppings cleaned${item.what === 'bats' ? '; only in the season that the law allows' : ''}`, clearable,
  }] }),
  unseen: () => takenAsAbsent('animals', 'animals or droppings'),
})

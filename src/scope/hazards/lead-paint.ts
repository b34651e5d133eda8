import * as f from '../../fields/index.ts'
import { seenAt, shutHere } from '../hazard-parts.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { exactly, work } from '../../units/quantity.ts'
import { hazard, itself, type Clearable, type Gate, type Task } from '../kind.ts'

const clearable: readonly Clearable[] = [{ kind: 'renovator-certificate', license: true }]
const yearOf = (books: { start(id: string, value: number, unit: 'year', what: string, why?: string): { readonly value: number } }): number => books.start('year-lead-paint', 1977, 'year', 'last year that paint may hold lead', '40 CFR 745: houses built before 1978 (from memory, high)').value

export const leadPaint = hazard({
  kind: 'lead-paint', title: 'Painted surfaces that the work will cut or break',
  schema: () => f.item('lead-paint', 'Painted surfaces that the work will cut or break', { ...seenAt('new hatch in the hall ceiling'), disturbedFt2: f.number('ft2', { min: 0, max: 1000 }, 'painted surface cut, broken or sanded in one room', { examples: [6] }) }),
  sample: { kind: 'lead-paint', in: 'main', at: 'new hatch in the hall ceiling', disturbedFt2: 6 },
  wrong: { item: { kind: 'lead-paint', at: 'hall', disturbedFt2: -1 }, code: 'number-out-of-range' },
  clearable,
  onSight: { sign: 'old paint that has to be cut or broken after all', act: 'no cut; a sheet under it, the room shut', call: 'certified renovator' },
  takeoff({ item, at, id, q }, books, { house }) {
    if (house.yearBuilt !== undefined && house.yearBuilt > yearOf(books)) return { figures: {}, tasks: [] }
    const most = books.start('lead-disturbed', 6, 'ft2', 'painted surface in a room that may be disturbed without a certified renovator', '40 CFR 745.83: 6 ft² inside (from memory, high)'), much = q('disturbedFt2').value > most.value
    const gate: Gate = much
      ? { ...shutHere(item, at, ['prepare', 'seal']), code: 'lead-paint', state: 'hold', why: `${item.disturbedFt2} ft² of paint of its years is disturbed in a room, over ${most.value} ft²: it may hold lead`, clearedBy: 'a certified renovator, and the pamphlet given to the owner (40 CFR 745)', clearable, clearedByTask: `renovator-${id}`, condition: `The price holds only if a certified renovator does the cutting (${item.at}).` }
      : { ...shutHere(item, at, []), code: 'lead-paint-small', state: 'note', why: `${item.disturbedFt2} ft² of paint of its years is disturbed: it may hold lead`, clearedBy: 'wet cutting, a sheet below, and all chips taken up', clearable: [] }
    const name: Task = { id: `renovator-${id}`, title: `Name the certified renovator, give the owner the pamphlet (${item.at})`, phase: 'clear', work: 'clearing', touches: item.in === undefined ? 'house' : [item.in], serves: itself, role: 'other', ownVisit: true,
      personHours: work(personHours, { amount: exactly(1, 'each', 'one paper'), rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'at the desk') }), needs: [], cautions: ['Lead dust: nobody cuts or sands before the renovator has set up.'], proof: 'certificate, signed receipt of the pamphlet' }
    return { figures: {}, tasks: much ? [name] : [], gates: [gate], assumes: [most] }
  },
  unseen(house, books, at) {
    if (house.yearBuilt !== undefined && house.yearBuilt > yearOf(books)) return undefined
    return { figures: {}, tasks: [], gates: [{ code: 'lead-paint-question', state: 'note', where: 'rooms', in: 'house', path: at, why: 'paint of its years may hold lead, and textured ceilings may hold asbestos: nothing painted or textured is cut, broken or sanded in this plan', stops: { phases: [], places: [] }, clearedBy: 'a word on what the work cuts: `notFound: [lead-paint]` where it cuts nothing, or the hazard lead-paint', clearable: [] }] }
  },
})

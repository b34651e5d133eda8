import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { lineCents } from '../../calc/price.ts'
import { bead, ring } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, COVERING, declinable, fillOf, itself, opening, seamBead, takes, where, type Gate, type Task } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const ceilingBox = opening({
  kind: 'ceiling-box', title: 'Electrical boxes in the ceiling',
  schema: () => f.item('ceiling-box', 'Electrical boxes in the ceiling', {
    ...where,
    count: f.count(99, 'how many alike', { examples: [5] }),
    open: f.optional(f.yesNoUnknown('wires or splices lie open: no cover on a box that needs one', { default: 'no' })),
    ...declinable,
  }),
  sample: { kind: 'ceiling-box', in: 'main', count: 5, at: 'bedrooms' },
  wrong: { item: { kind: 'ceiling-box', in: 'main', count: 0, at: 'bedrooms' }, code: 'number-out-of-range' },
  leak: ({ q }) => pairOf('surface-light', 'box-gasketed', q('count')),
  takeoff({ item, at, id, q }, books, { area }) {
    const count = q('count'), n = id.slice('ceiling-box-'.length)
    const runIn = work(ring, { diameterIn: books.start('ceiling-box', 4, 'in', 'ceiling box, across', 'common octagon and round boxes'), count })
    const seal = takes([books.product('seam-sealant'), work(bead, { runIn, beadIn: seamBead(books) })])
    const tasks: Task[] = [{
      id: `seal-boxes-${item.in}`, title: 'Seal the ceiling boxes and their knockouts', phase: 'seal', work: 'small-hole', touches: [item.in], serves: itself, closes: id, size: 'medium', role: 'crew', count: item.count, needs: seal.needs,
      personHours: work(personHours, { amount: count, rate: books.rate('ceiling-box', 0.15, 'each'), access: area.access }),
      cautions: [CAUTION.power, 'No foam and no sealant inside a box.', CAUTION.framing], proof: 'photo of each',
    }]
    if (!area.filled) return { figures: { method: 'sealed to the ceiling', materials: seal.materials }, tasks }

    const flag = takes([books.product('box-flag'), count])
    tasks.push({
      id: `flag-boxes-${item.in}`, title: 'Flag each box that the fill will bury', phase: 'contain', work: 'marker', touches: [item.in], serves: fillOf(item.in), role: 'helper', count: item.count, needs: flag.needs,
      personHours: work(personHours, { amount: count, rate: books.rate('box-flag', 0.03, 'each'), access: area.access }), cautions: [CAUTION.framing], proof: 'photo',
    })
    const gates: Gate[] = []
    const base = { where: item.at, in: item.in, path: item.open === undefined ? at : `${at}/open` }
    if (item.open === 'yes') {
      const clearedByTask = `cover-boxes-${n}`
      gates.push({ ...base, code: 'box-open', state: 'hold', why: 'wires lie open in a box without its cover; a fault under fill can start a fire', stops: { phases: COVERING, places: [item.in] }, clearedByTask,
        clearedBy: 'the electrician’s photo of each box with its cover', clearable: [{ kind: 'electrician-repair', license: true, outside: true }], condition: `The price holds only if an electrician covers the open boxes (${item.at}) before the fill.` })
      tasks.push({ id: clearedByTask, title: 'Electrician: make up and cover each open box', phase: 'clear', work: 'swap', touches: [item.in], serves: itself, closes: id, from: base.path, role: 'electrician', ownVisit: true, count: item.count, subcontractCents: work(lineCents, { amount: count, unitPriceCents: books.subcontract('wiring-repair') }),
        personHours: exactly(0, 'h', 'the electrician’s own'), needs: [], cautions: ['Licensed electrician only.', CAUTION.power], proof: 'electrician’s photo of each' })
    }
    if (item.open === 'unknown') gates.push({ ...base, code: 'box-cover-unknown', state: 'note', why: 'nobody said whether the boxes have their covers: no wire may lie open under fill', stops: { phases: [], places: [item.in] }, clearedBy: 'a look at each box when it is sealed' })
    return { figures: { method: 'sealed to the ceiling, flagged', materials: [...seal.materials, ...flag.materials] }, tasks, gates }
  },
})

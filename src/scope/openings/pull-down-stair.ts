import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, edge, height, inFeet } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { exactly, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { CAUTION, cutTo, damMargin, declinable, fillOf, itself, opening, part, seamBead, takes, where, type Task } from '../kind.ts'
import { pairOf } from '../leaks.ts'

const FALL = 'The opening is a fall: never leave it uncovered.'

export const pullDownStair = opening({
  kind: 'pull-down-stair', title: 'Pull-down stair',
  schema: () => f.item('pull-down-stair', 'Pull-down stair', {
    ...where,
    sizeIn: f.pairOf(f.inches(96, 'one side of the rough opening'), 'opening: length, width', { examples: [['54', '22 1/2']] }),
    panelR: f.rValue('insulation over the stair now', { examples: [0] }),
    gasket: f.yesNo('a gasket that meets all round'),
    ...declinable,
  }),
  sample: { kind: 'pull-down-stair', in: 'main', sizeIn: [54, 22.5], panelR: 0, gasket: 'no', at: 'hall' },
  wrong: { item: { kind: 'pull-down-stair', in: 'main', sizeIn: [54, 22.5], panelR: 0, gasket: 'no', latch: 'no', at: 'hall' }, code: 'key-unknown' },
  leak: ({ item }) => pairOf(item.gasket === 'yes' ? 'stair-gasketed' : 'stair', 'stair-covered', exactly(1, 'each', 'one stair to an entry')),
  takeoff({ item, at, id, q }, books, { area }) {
    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1), one = exactly(1, 'each', 'one stair to an entry')
    const aroundIn = work(edge, { lengthIn, widthIn }), aroundFt = work(inFeet, { lengthIn: aroundIn })
    const cover = books.product('stair-cover'), curb = books.product('rigid-dam')
    const least = books.start('hatch-panel', 20, 'R', 'least insulation on a hatch panel or stair', 'retrofit; the IECC asks for the R of the ceiling around (R402.2.4), of a pull-down stair in zones 0 to 4 R-10 from 2021 on (from memory, medium)')
    const insulate = item.panelR < least.value
    const parts = takes([books.product('seam-sealant'), work(bead, { runIn: aroundIn, beadIn: seamBead(books) })],
      ...(item.gasket === 'no' ? [[books.product('weatherstrip'), aroundFt] as const] : []), ...(insulate ? [[cover, one] as const] : []))
    const base = { touches: [item.in], size: 'large', role: 'crew' } as const
    const tasks: Task[] = [{
      ...base, id: `fit-${id}`, title: `Pull-down stair: caulk the frame${item.gasket === 'no' ? ', gasket' : ''}${insulate ? ', rigid insulated cover' : ''}`, phase: 'seal', work: 'hatch', serves: itself, closes: id, needs: parts.needs,
      personHours: work(personHours, { amount: one, rate: books.rate('pull-down-stair', 1.5, 'each'), access: area.access }), cautions: [FALL, 'Springs under load: keep hands clear.', CAUTION.ladder], proof: 'photo',
    }]
    if (area.filled) {
      const heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) })
      tasks.push({
        ...base, id: `curb-${id}`, title: `Rigid curb round the stair, ${cutTo(heightIn)} in high, clear of the moving ladder`, phase: 'contain', work: 'dam', serves: fillOf(item.in), needs: [{ item: curb.item, quantity: aroundFt }],
        personHours: work(personHours, { amount: one, rate: books.rate('hatch-curb', 0.6, 'each'), access: area.access }), cautions: [FALL], proof: 'photo',
      }, {
        ...base, id: `shut-${id}`, title: 'Shut the stair, set its cover, check the gasket', phase: 'close', work: 'shut-exit', serves: fillOf(item.in), needs: [],
        personHours: work(personHours, { amount: one, rate: books.rate('hatch-shut', 0.1, 'each'), access: exactly(1, 'factor', 'done from the room') }), cautions: [CAUTION.ladder], proof: 'photo',
      })
    }
    return {
      assumes: [least], tasks,
      figures: { method: `frame sealed${item.gasket === 'no' ? ', gasket' : ''}${insulate ? ', rigid cover' : ''}${area.filled ? ', curb' : ''}`, materials: [...parts.materials, ...(area.filled ? [{ item: curb.item, quantity: aroundFt, unit: curb.unit }] : [])] },
      paths: [{ areaFt2: work(boardArea, { lengthIn, widthIn, lapIn: exactly(0, 'in', 'the rough opening') }), rBefore: work(seriesR, { base: baseR(), fill: q('panelR') }), rAfter: work(seriesR, { base: baseR(), fill: insulate && cover.rValue ? cover.rValue : q('panelR') }) }],
    }
  },
})

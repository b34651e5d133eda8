import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, edge, height, inFeet } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { exactly, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { cutTo, declinable, fillOf, itself, opening, part, where, type Need, type Task, damMargin, seamBead } from '../kind.ts'
import { pairOf } from '../leaks.ts'

export const hatch = opening({
  kind: 'hatch', title: 'Attic hatch in the ceiling',
  schema: () => f.item('hatch', 'Attic hatch in the ceiling', {
    ...where,
    sizeIn: f.pairOf(f.inches(96, 'one side of the rough opening'), 'opening: length, width', { examples: [[22, 30]] }),
    panelR: f.rValue('insulation on the hatch panel now', { examples: [0] }),
    gasket: f.yesNo('a gasket that meets all round'),
    latch: f.yesNo('latches that pull the panel tight'),
    ...declinable,
  }),
  sample: { kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'no', latch: 'no', at: 'hall' },
  wrong: { item: { kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'maybe', latch: 'no', at: 'hall' }, code: 'word-unknown' },
  leak: ({ item }) => pairOf(item.gasket === 'yes' ? 'hatch-gasketed' : 'hatch', 'hatch-gasketed', exactly(1, 'each', 'one hatch to an entry')),
  takeoff({ item, at, id, q }, books, { area }) {
    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1)
    const one = exactly(1, 'each', 'one hatch to an entry')
    const aroundIn = work(edge, { lengthIn, widthIn }), aroundFt = work(inFeet, { lengthIn: aroundIn })
    const panelFt2 = work(boardArea, { lengthIn, widthIn, lapIn: exactly(0, 'in', 'cut to the panel') })
    const sealant = books.product('seam-sealant'), strip = books.product('weatherstrip'), latch = books.product('latch'), batt = books.product('panel-batt'), tray = books.product('panel-tray'), curb = books.product('rigid-dam')
    const least = books.start('hatch-panel', 20, 'R', 'least insulation on a hatch panel or stair', 'retrofit; the IECC asks for the R of the ceiling around (R402.2.4), of a pull-down stair in zones 0 to 4 R-10 from 2021 on (from memory, medium)')
    const insulate = item.panelR < least.value
    const needs: Need[] = [
      { item: sealant.item, quantity: work(bead, { runIn: aroundIn, beadIn: seamBead(books) }) },
      ...(item.gasket === 'no' ? [{ item: strip.item, quantity: aroundFt }] : []),
      ...(item.latch === 'no' ? [{ item: latch.item, quantity: one }] : []),
      // Mineral wool in a tray: foam board left bare in an attic is a question for the code official (IRC R316.5.3).
      ...(insulate ? [{ item: batt.item, quantity: panelFt2 }, { item: tray.item, quantity: panelFt2 }] : []),
    ]
    const heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) })
    const unitOf = (i: string) => [sealant, strip, latch, batt, tray, curb].find(p => p.item === i)!.unit
    const all = area.filled ? [...needs, { item: curb.item, quantity: aroundFt }] : needs
    const parts = ['caulk the frame', ...(item.gasket === 'no' ? ['gasket'] : []), ...(insulate ? ['panel insulation in a tray'] : []), ...(item.latch === 'no' ? ['latches'] : [])]
    const tail = id.slice('hatch-'.length)
    const base = { touches: [item.in], size: 'medium', role: 'crew' } as const
    const tasks: Task[] = [{
      ...base, id: `fit-${id}`, title: `Hatch: ${parts.join(', ')}`, phase: 'seal', work: 'hatch', serves: itself, closes: id, needs,
      personHours: work(personHours, { amount: one, rate: books.rate('hatch', 1, 'each'), access: area.access }), cautions: ['Ladder on level floor, held.', 'The opening is a fall: never leave it uncovered.'], proof: 'photo',
    }]
    if (area.filled) tasks.push({
      ...base, id: `curb-hatch-${tail}`, title: `Rigid curb round the hatch, ${cutTo(heightIn)} in high`, phase: 'contain', work: 'dam', serves: fillOf(item.in), needs: [{ item: curb.item, quantity: aroundFt }],
      personHours: work(personHours, { amount: one, rate: books.rate('hatch-curb', 0.6, 'each'), access: area.access }), cautions: ['The opening is a fall: never leave it uncovered.'], proof: 'photo',
    }, {
      ...base, id: `shut-hatch-${tail}`, title: 'Shut the hatch, check gasket and latches', phase: 'close', work: 'shut-exit', serves: fillOf(item.in), needs: [],
      personHours: work(personHours, { amount: one, rate: books.rate('hatch-shut', 0.1, 'each'), access: exactly(1, 'factor', 'done from the room') }), cautions: ['Ladder on level floor, held.'], proof: 'photo',
    })
    return {
      assumes: [least],
      figures: { method: `frame sealed, ${[...(item.gasket === 'no' ? ['gasket'] : []), ...(item.latch === 'no' ? ['latches'] : []), ...(insulate ? ['insulated panel'] : []), ...(area.filled ? ['curb'] : [])].join(', ')}`.replace(/, $/, ''), materials: all.map(n => ({ item: n.item, quantity: n.quantity, unit: unitOf(n.item) })) }, tasks,
      paths: [{ areaFt2: panelFt2, rBefore: work(seriesR, { base: baseR(), fill: q('panelR') }), rAfter: work(seriesR, { base: baseR(), fill: insulate && batt.rValue ? batt.rValue : q('panelR') }) }],
    }
  },
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { boxTop, clearOf, edge, height, stripMetal } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { lineCents } from '../../calc/price.ts'
import { exactly, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { CAUTION, COVERING, damMargin, damTask, declinable, fillOf, flagOnly, flueClearance, itself, opening, part, takes, timesOf, where, type Task } from '../kind.ts'

const OFF = 'fill off a device that gives off heat'

export const heatProducingDevice = opening({
  kind: 'heat-producing-device', title: 'Device that gives off heat',
  schema: () => f.item('heat-producing-device', 'Device that gives off heat', {
    ...where,
    count: f.count(99, 'how many alike', { examples: [2] }),
    sizeIn: f.pairOf(f.inches(48, 'one side of the device'), 'device on the ceiling: length, width', { examples: [[6, 4]] }),
    treatment: f.optional(f.word(['dam', 'move'] as const, 'the crew’s metal dam, or moved above the fill by an electrician', { default: 'dam' })),
    ...declinable,
  }),
  sample: { kind: 'heat-producing-device', in: 'main', count: 2, sizeIn: [6, 4], at: 'transformers over the kitchen' },
  wrong: { item: { kind: 'heat-producing-device', in: 'main', count: 2, sizeIn: [6, 4], treatment: 'foam', at: 'kitchen' }, code: 'word-unknown' },
  takeoff({ item, at, id, q }, books, { area }) {
    const count = q('count')
    if (!area.filled) return flagOnly(id, item.in, 'Flag each device that gives off heat, old fill 3 in off', ['Never foamed, never covered.', CAUTION.power], count, area.access, books, [{ what: OFF, distanceIn: flueClearance(books) }])
    const n = id.slice('heat-producing-device-'.length), flag = takes([books.product('box-flag'), count])
    const flagTask: Task = {
      id: `flag-devices-${n}`, title: 'Flag each device that gives off heat', phase: 'contain', work: 'marker', touches: [item.in], serves: fillOf(item.in), role: 'helper', count: item.count, needs: flag.needs,
      personHours: work(personHours, { amount: count, rate: books.rate('box-flag', 0.03, 'each'), access: area.access }), cautions: [CAUTION.framing], proof: 'photo',
    }
    if (item.treatment === 'move') {
      const clearedByTask = `move-devices-${n}`
      return {
        figures: { method: 'moved above the fill by an electrician', materials: [] },
        gates: [{ code: 'device-not-moved', state: 'hold', where: item.at, in: item.in, path: `${at}/treatment`, why: 'fill against a device that gives off heat can start a fire', stops: { phases: COVERING, places: [item.in] }, clearedByTask,
          clearedBy: 'the electrician’s photo of the device in its new place', clearable: [{ kind: 'electrician-repair', license: true, outside: true }], condition: `The price holds only if an electrician moves the devices (${item.at}) before the fill.` }],
        tasks: [{ id: clearedByTask, title: 'Electrician: move each device that gives off heat above the fill', phase: 'clear', work: 'clearing', touches: [item.in], serves: itself, closes: id, role: 'electrician', ownVisit: true, count: item.count, needs: [],
          personHours: exactly(0, 'h', 'the electrician’s own'), subcontractCents: work(lineCents, { amount: count, unitPriceCents: books.subcontract('device-move') }), cautions: ['Licensed electrician only.', CAUTION.power], proof: 'electrician’s photo of each' }],
      }
    }
    const keepIn = flueClearance(books), lengthIn = work(clearOf, { sizeIn: part(at, 'sizeIn', item.sizeIn, 0), keepIn }), widthIn = work(clearOf, { sizeIn: part(at, 'sizeIn', item.sizeIn, 1), keepIn })
    const runIn = timesOf(work(edge, { lengthIn, widthIn }), count), heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) }), metal = books.product('sheet-metal')
    const dam = damTask({ runIn, heightIn, metal, keepOff: { what: OFF, distanceIn: keepIn } }, `dam-devices-${n}`, 'Metal dam round each device that gives off heat, clear all round', item.in, area.access, books)
    return {
      figures: { method: 'metal dam, flagged', materials: [{ item: metal.item, quantity: work(stripMetal, { runIn, widthIn: heightIn }), unit: metal.unit }, ...flag.materials] },
      tasks: [{ ...dam, closes: id, count: item.count, cautions: ['Never foamed, never covered.', CAUTION.power, ...dam.cautions] }, flagTask],
      paths: [{ areaFt2: work(boxTop, { lengthIn, widthIn, count }), rAfter: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'nothing but air in the dam') }) }],
    }
  },
})

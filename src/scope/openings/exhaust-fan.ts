import * as f from '../../fields/index.ts'
import type { Finding } from '../../findings/finding.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boxTop, clearOf, edge, height, stripMetal } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { lineCents } from '../../calc/price.ts'
import { ductSkin, roundOutside, wrapArea } from '../../calc/duct.ts'
import { stretchOut } from '../../reference/ducts.ts'
import { fromRow } from '../../reference/table.ts'
import { exactly, given, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { CAUTION, COVERING, damMargin, damTask, declinable, flueClearance, hotBead, hotCheck, itself, opening, seamBead, takes, where, type Gate, type Task } from '../kind.ts'
import { pairOf } from '../leaks.ts'

const DUCT_CAUTIONS = {
  bath: ['Slope the duct to the outside, joints taped, no sag.'],
  kitchen: ['Grease: smooth metal only, joints sealed, no foam and no combustible wrap on it.'],
  laundry: ['Dryer: smooth metal, no screws into the duct, no flexible duct; lint cleaned out.'],
} as const

const ONE_FAN = exactly(1, 'each', 'one fan to an entry')

export const exhaustFan = opening({
  kind: 'exhaust-fan', title: 'Exhaust fan in the ceiling',
  schema: () => f.item('exhaust-fan', 'Exhaust fan in the ceiling', {
    ...where,
    serves: f.word(['bath', 'kitchen', 'laundry'] as const, 'what it draws from; laundry: also a dryer’s duct'),
    endsAt: f.word(['outdoors', 'attic', 'soffit'] as const, 'where its air comes out now'),
    ductIn: f.inches(14, 'duct, across', { examples: [4] }),
    lengthFt: f.feet(60, 'run of the duct to the outside, as it is or must be', { examples: [9] }),
    insulationR: f.optional(f.rValue('R on its duct in the attic now, where it ends outdoors', { examples: [0, 8] })),
    heater: f.yesNoUnknown('has a heater or a heat lamp'),
    housingIn: f.optional(f.pairOf(f.inches(48, 'one side of the housing'), 'housing at the ceiling: length, width', { examples: [[9, 9]] })),
    ...declinable,
  }),
  sample: { kind: 'exhaust-fan', in: 'main', serves: 'bath', endsAt: 'attic', ductIn: 4, lengthFt: 9, heater: 'no', housingIn: [9, 9], at: 'bath' },
  wrong: { item: { kind: 'exhaust-fan', in: 'main', serves: 'bath', endsAt: 'roof', ductIn: 4, lengthFt: 9, heater: 'no', at: 'bath' }, code: 'word-unknown' },
  leak: ({ item }) => item.serves === 'bath' ? pairOf('bath-fan', 'bath-fan-sealed', ONE_FAN) : item.serves === 'kitchen' ? pairOf('kitchen-fan', 'kitchen-fan-sealed', ONE_FAN) : pairOf('dryer', 'dryer', ONE_FAN),
  takeoff({ item, at, id, q }, books, { area }) {
    const one = exactly(1, 'each', 'one fan to an entry'), hot = item.heater !== 'no'
    const side = (n: 0 | 1) => item.housingIn ? given(item.housingIn[n], 'in', `${at}/housingIn/${n}`) : books.start('fan-housing', 9, 'in', 'side of a fan’s housing', 'housingIn not measured')
    const lengthIn = side(0), widthIn = side(1)
    const sealant = books.product(hot ? 'hot-sealant' : 'seam-sealant')
    const seal = takes([sealant, work(bead, { runIn: work(edge, { lengthIn, widthIn }), beadIn: hot ? hotBead(books) : seamBead(books) })])
    const materials = [...seal.materials], dryer = item.serves === 'laundry', its = dryer ? 'laundry duct' : 'fan'
    const base = { touches: [item.in], serves: itself, closes: id, role: 'crew', size: 'medium' } as const
    const tasks: Task[] = [{
      ...base, id: `seal-${id}`, title: dryer ? 'Seal round the laundry duct at the ceiling' : 'Seal the fan’s housing to the ceiling', phase: 'seal', work: hot ? 'hot-seal' : 'small-hole', hot, needs: seal.needs,
      personHours: work(personHours, { amount: one, rate: books.rate('fan-housing', 0.3, 'each'), access: area.access }),
      cautions: [CAUTION.power, ...(hot ? ['Has a heater, or nobody knows: no foam, nothing combustible inside its dam.'] : []), 'Keep the damper and the motor’s cooling holes free.', CAUTION.framing], proof: 'photo',
    }]
    const gates: Gate[] = []

    if (item.endsAt !== 'outdoors') {
      // Joined before the check: what draws air is in place when the appliances are tested again.
      const narrow = item.ductIn <= books.start('fan-duct', 4, 'in', 'widest duct of the narrow fan duct').value, wide = item.ductIn <= books.start('fan-duct-wide', 6, 'in', 'widest duct of the wide fan duct').value
      const duct = takes([books.product(item.serves === 'bath' && wide ? (narrow ? 'fan-duct' : 'fan-duct-wide') : 'smooth-duct'), q('lengthFt')]), cap = takes([books.product('roof-cap'), one])
      materials.push(...duct.materials, ...cap.materials)
      tasks.push({
        ...base, id: `roof-cap-${id}`, title: 'Roofer: cut in and flash a roof cap with a damper', phase: 'ducts', work: 'roof-cut', role: 'roofer', needs: cap.needs,
        personHours: exactly(0, 'h', 'the roofer’s own'), subcontractCents: work(lineCents, { amount: one, unitPriceCents: books.subcontract('roof-cap') }), cautions: ['Fall protection; the roof’s warranty is the roofer’s.'], proof: 'photo from the roof',
      }, {
        ...base, id: `reduct-${id}`, title: dryer ? 'Run the laundry duct to its roof cap' : 'Duct the fan to its roof cap', phase: 'ducts', work: 'fan-duct', needs: duct.needs,
        personHours: work(personHours, { amount: one, rate: books.rate('reduct-fan', 1.5, 'each'), access: area.access }), cautions: [...DUCT_CAUTIONS[item.serves], CAUTION.power, CAUTION.framing], proof: 'photo of the joined duct and of air at the cap',
      })
      if (area.filled) gates.push({
        code: 'fan-into-attic', state: 'mend', where: item.at, in: item.in, path: `${at}/endsAt`, why: item.endsAt === 'attic' ? `the ${its} blows moist air${dryer ? ' and lint' : ''} into the attic` : `the ${its} blows moist air${dryer ? ' and lint' : ''} under the eaves, where the vents draw it in again`, stops: { phases: COVERING, places: [item.in] },
        clearedByTask: `reduct-${id}`, clearedBy: 'own duct to a roof cap, photo of where it ends', clearable: [],
      })
    }
    // Moist air cools in a bare duct and runs back: wrapped where it stays. Grease and lint ducts are never wrapped with what burns.
    const wanted = books.start('fan-duct-r', 8, 'R', 'R wanted on a bath fan’s duct in the attic', 'SWS 6.6002.4: exhaust ducts R-8')
    const wrapped = item.endsAt === 'outdoors' && item.serves === 'bath' && item.insulationR !== undefined && item.insulationR < wanted.value
    if (wrapped) {
      const thick = stretchOut.rows.at(-1)!, roundIn = work(roundOutside, { diameterIn: q('ductIn'), onItIn: exactly(0, 'in', 'the duct itself') })
      const wrap = takes([books.product('duct-wrap'), work(wrapArea, { roundIn, allowanceIn: fromRow(stretchOut, thick, thick.roundIn, 'in', 'thickest wrap, round'), lengthFt: q('lengthFt'), runs: one })], [books.product('duct-tape'), q('lengthFt')])
      materials.push(...wrap.materials)
      tasks.push({ ...base, id: `wrap-fan-duct-${id.slice('exhaust-fan-'.length)}`, title: 'Seal the joints of the fan’s duct and wrap it, jacket out', phase: 'wrap', work: 'wrap', needs: wrap.needs,
        personHours: work(personHours, { amount: work(ductSkin, { roundIn, lengthFt: q('lengthFt'), runs: one }), rate: books.rate('duct-wrap', 0.06, 'ft2 of duct'), access: area.access }), cautions: ['Slope the duct to the outside, joints taped, no sag.', CAUTION.framing], proof: 'photo with the label’s R' })
    }
    const bare = item.endsAt === 'outdoors' && item.serves === 'bath' && item.insulationR === undefined
    const method = `${dryer ? 'sealed at the ceiling' : 'housing sealed'}${item.endsAt === 'outdoors' ? wrapped ? ', duct wrapped' : '' : ', ducted to a roof cap'}`, findings: Finding[] = [...(hot ? hotCheck([sealant], at) : []), ...(bare ? [{ code: 'fan-duct-not-looked-at', severity: 'note' as const, path: at, says: 'no insulationR for the fan’s duct', why: 'moist air runs back down a bare duct in a cold attic; its wrap is not in the price', mend: 'look, and write insulationR: 0 where it is bare' }] : [])]
    if (!hot || !area.filled) return { figures: { method, materials }, tasks, gates, findings }

    const keepIn = flueClearance(books), long = work(clearOf, { sizeIn: lengthIn, keepIn }), wide = work(clearOf, { sizeIn: widthIn, keepIn })
    const runIn = work(edge, { lengthIn: long, widthIn: wide }), heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) }), metal = books.product('sheet-metal')
    tasks.push(damTask({ runIn, heightIn, metal, keepOff: { what: 'fill off the fan with a heater', distanceIn: keepIn } }, `dam-${id}`, 'Metal dam round the fan with a heater, clear all round', item.in, area.access, books))
    return {
      figures: { method: `${method}, dam`, materials: [...materials, { item: metal.item, quantity: work(stripMetal, { runIn, widthIn: heightIn }), unit: metal.unit }] }, tasks, gates, findings,
      unknowns: item.heater === 'unknown' ? [`The fan (${item.at}) is treated as having a heater; its label may change that.`] : [],
      paths: [{ areaFt2: work(boxTop, { lengthIn: long, widthIn: wide, count: one }), rAfter: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'nothing but air in the dam') }) }],
    }
  },
})

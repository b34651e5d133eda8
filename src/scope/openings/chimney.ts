import * as f from '../../fields/index.ts'
import { hoursWithMore, personHours } from '../../calc/arithmetic.ts'
import { bead, beadWidth, chimneyStrip, edge, edgeOut, height, inFeet, ringArea, stripMetal } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { asTape } from '../../units/tape.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { CAUTION, cutTo, COVERING, declinable, fillOf, itself, NO_FILL_IN_DAM, opening, part, where, type Gate, type Task, damMargin } from '../kind.ts'
import { hole } from '../leaks.ts'
import { framedGap } from '../../calc/leak.ts'

export const chimney = opening({
  kind: 'chimney', title: 'Masonry chimney',
  schema: () => f.item('chimney', 'Masonry chimney', {
    ...where,
    sizeIn: f.pairOf(f.inches(120, 'one side of the brick'), 'brick: length, width', { examples: [[17, 21]] }),
    gapIn: f.inches(12, 'brick to framing', { examples: [2] }),
    inUse: f.yesNoUnknown('whether anything vents into it'),
    ...declinable,
  }),
  sample: { kind: 'chimney', in: 'main', sizeIn: [17, 21], gapIn: 2, inUse: 'yes', at: 'middle of the house' },
  wrong: { item: { kind: 'chimney', in: 'main', sizeIn: [17], gapIn: 2, inUse: 'yes', at: 'hall' }, code: 'list-too-short' },
  leak: ({ item, at, q }, books) => {
    const sides = { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }
    return hole(work(framedGap, { ...sides, gapIn: q('gapIn') }), work(edge, sides), books)
  },
  takeoff({ item, at, id, q }, books, { area }) {
    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1)
    const brick = work(edge, { lengthIn, widthIn })
    const framing = work(edgeOut, { lengthIn, widthIn, outIn: q('gapIn') })
    const hotBead = work(beadWidth, { gapIn: exactly(0, 'in', 'a bead on metal laps'), leastIn: books.start('bead-hot', 3 / 8, 'in', 'bead of noncombustible sealant') })
    const sealantOz = work(bead, { runIn: total('in', { brick, framing }), beadIn: hotBead })
    const strip = work(chimneyStrip, { lengthIn, widthIn, gapIn: q('gapIn'), legIn: books.start('chimney-leg', 1.5, 'in', 'metal strip up the brick'), lapIn: books.start('chimney-lap', 2, 'in', 'metal strip on the framing') })
    const offIn = books.start('insulation-clearance', 3, 'in', 'fill and sealant off a masonry chimney', 'no label or company value; SWS 3.0102.2 default')
    const heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) })
    const damRun = work(edgeOut, { lengthIn, widthIn, outIn: offIn })
    const dam = work(stripMetal, { runIn: damRun, widthIn: heightIn })
    const metal = books.product('sheet-metal'), sealant = books.product('hot-sealant')
    const gates: Gate[] = [], off = { what: 'fill and sealant off the brick', distanceIn: offIn }
    // R1003.18 asks 2 in to combustibles; an official or a mason may know of a listed liner.
    if (area.filled && item.gapIn < MASONRY_IN) gates.push({
      code: 'framing-near-chimney', state: 'hold', where: item.at, in: item.in, path: `${at}/gapIn`, why: `framing stands ${asTape(item.gapIn)} in from the brick; IRC R1003.18 asks for 2 in`,
      stops: { phases: COVERING, places: [item.in] }, clearedByTask: `look-chimney-${id.slice('chimney-'.length)}`, clearedBy: 'the building official’s or a mason’s word in writing',
      clearable: [{ kind: 'official-letter', outside: true }, { kind: 'mason-letter', outside: true }], condition: 'The price holds only if the framing at the chimney is accepted in writing before work starts.',
    })
    if (item.inUse === 'unknown') gates.push({ code: 'chimney-use-unknown', state: 'note', where: item.at, in: item.in, path: `${at}/inUse`, why: 'nobody said whether anything vents into it; it is treated as in use', stops: { phases: [], places: [item.in] }, clearedBy: 'a look at what vents into it' })
    const tasks: Task[] = [{
      id: `cap-${id}`, title: 'Close the chimney gap with sheet metal and noncombustible sealant', phase: 'seal', work: 'hot-seal', hot: true, size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew',
      personHours: work(hoursWithMore, { count: exactly(1, 'each', 'one chimney to an entry'), rate: books.rate('chimney', 1.5, 'each to 10 ft'), amount: work(inFeet, { lengthIn: brick }), upTo: exactly(10, 'ft', 'edge the rate covers'), rateMore: books.rate('chimney-more', 0.1, 'ft over 10'), access: area.access }),
      needs: [{ item: metal.item, quantity: strip }, { item: sealant.item, quantity: sealantOz }],
      cautions: ['Metal and noncombustible material only (ASTM E136): no foam, no fire-block foam or caulk.', 'Combustibles stay at least 2 in off the brick.', 'Hot brick when in use.', 'Cut edges: gloves.'], keepOff: [off, { what: 'wood and paper off the brick', distanceIn: exactly(MASONRY_IN, 'in', 'IRC R1003.18') }], proof: 'photo with ruler: 2 in to framing, 3 in to insulation',
    }, {
      id: `dam-${id}`, title: `Metal dam round the chimney, ${asTape(offIn.value)} in off the brick, ${cutTo(heightIn)} in high, closed below, open on top`, phase: 'contain', work: 'dam', hot: true, size: 'medium', touches: [item.in], serves: fillOf(item.in), role: 'crew',
      personHours: work(personHours, { amount: work(inFeet, { lengthIn: damRun }), rate: books.rate('dam', 0.06, 'ft'), access: area.access }), needs: [{ item: metal.item, quantity: dam }],
      cautions: ['Nothing but air inside the dam.', 'Cut edges: gloves.'], keepOff: [off], onCover: [NO_FILL_IN_DAM], proof: 'photo with ruler',
    }]
    if (gates.some(g => g.clearedByTask)) tasks.push({ id: `look-chimney-${id.slice('chimney-'.length)}`, title: 'Building official or mason: say in writing whether the framing may stand this near the chimney', phase: 'clear', work: 'clearing', touches: [item.in], serves: itself, role: 'other', ownVisit: true,
      personHours: exactly(0, 'h', 'others’ own'), needs: [], cautions: ['Hot when in use: touch nothing.', CAUTION.framing], proof: 'letter' })
    return {
      figures: { method: 'metal and noncombustible sealant', materials: [{ item: metal.item, quantity: area.filled ? total('ft2', { strip, dam }) : strip, unit: metal.unit }, { item: sealant.item, quantity: sealantOz, unit: sealant.unit }] },
      tasks: area.filled ? tasks : tasks.filter(t => t.serves.is !== 'fill'), gates,
      paths: area.filled ? [{ areaFt2: work(ringArea, { lengthIn, widthIn, offIn }), rAfter: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'nothing but air in the ring') }) }] : [],
      findings: metalCheck(sealant.noncombustible, sealant.item, at),
    }
  },
})

/** IRC R1003.18: air space of a masonry chimney to combustibles [in]. */
const MASONRY_IN = 2

const metalCheck = (ok: boolean, item: string, at: string) => ok ? [] : [{ code: 'sealant-not-noncombustible', severity: 'error' as const, path: at, says: `${item} at a chimney`,
  why: 'only noncombustible material (ASTM E136) may touch hot brick; the price book does not say that it is', mend: 'fill the role hot-sealant with a product marked noncombustible: yes' }]

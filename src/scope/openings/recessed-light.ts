import * as f from '../../fields/index.ts'
import { personHours, times } from '../../calc/arithmetic.ts'
import { bead, boxBoard, boxHeight, boxSeams, boxTop, clearOf, edge, ring } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { lineCents } from '../../calc/price.ts'
import type { Product } from '../../books/books.ts'
import type { Finding } from '../../findings/finding.ts'
import { asTape } from '../../units/tape.ts'
import { assumed, exactly, given, work, type Quantity } from '../../units/quantity.ts'
import { baseR, boxLidR } from '../ceiling.ts'
import { cutTo, COVERING, declinable, itself, opening, where, type Gate, type Measure, type Task, seamBead } from '../kind.ts'
import { pairOf } from '../leaks.ts'

const POWER = 'Power off and proved off.'

const schema = f.later(() => f.item('recessed-light', 'Recessed light', {
  ...where,
  count: f.count(99, 'how many alike', { examples: [3] }),
  rating: f.word(['ic-airtight', 'ic', 'non-ic', 'unknown'] as const, 'what the label says: IC and airtight, IC, not IC, or not read'),
  diameterIn: f.inches(14, 'trim hole', { examples: [6] }),
  heightIn: f.inches(24, 'ceiling plane to the top of the housing', { examples: ['7 1/2'] }),
  housingIn: f.optional(f.pairOf(f.inches(48, 'one side of the housing with its wiring box'), 'housing with its wiring box: length, width', { examples: [[13, 8]] })),
  treatment: f.optional(f.word(['box', 'swap', 'surface'] as const, 'not IC or not read: the crew’s fire-rated box, an airtight IC light by an electrician, or a surface light and a patch')),
  ...declinable,
}))

/** Each light gets its own closure: common practice, no source. */
export const recessedLight = opening({
  kind: 'recessed-light', title: 'Recessed light', schema,
  sample: { kind: 'recessed-light', in: 'main', count: 3, rating: 'unknown', diameterIn: 6, heightIn: 7.5, at: 'kitchen' },
  wrong: { item: { kind: 'recessed-light', in: 'main', count: 3, rating: 'ic rated', diameterIn: 6, heightIn: 7.5, at: 'kitchen' }, code: 'word-unknown' },
  leak: ({ item, q }) => item.rating === 'ic-airtight' ? pairOf('recessed-light-tight', 'surface-light', q('count')) : pairOf('recessed-light', 'recessed-light-tight', q('count')),
  takeoff(found, books, { area }) {
    const { item, at, id, q } = found
    const count = q('count')
    const beadIn = seamBead(books)
    const sealant = books.product('seam-sealant')
    const hours = (rate: Quantity<'h/unit'>, access: Quantity<'factor'> = area.access) => work(personHours, { amount: count, rate, access })
    const base = { phase: 'seal', work: 'light', touches: [item.in], serves: itself, closes: id, role: 'crew', count: item.count, size: 'medium' } as const

    if (item.rating === 'ic-airtight') {
      const quantity = work(bead, { runIn: work(ring, { diameterIn: q('diameterIn'), count }), beadIn })
      return {
        figures: { method: 'trim sealed from below', materials: [{ item: sealant.item, quantity, unit: sealant.unit }] },
        tasks: [{ ...base, id: `trim-lights-${item.in}`, title: 'Seal the trim of each airtight IC light from below', size: 'small', needs: [{ item: sealant.item, quantity }],
          personHours: hours(books.rate('trim-light', 0.15, 'each'), exactly(1, 'factor', 'done from the room')), cautions: [POWER, 'Let the lamp cool.', 'Ladder on level floor.'], proof: 'photo of each' }],
      }
    }
    if (item.rating === 'ic') return covered(at, books.product('light-cover-ic'), sealant, count, beadIn, { ...base, id: `cover-lights-${item.in}`, title: 'Cover and seal each IC light that is not airtight',
      personHours: hours(books.rate('cover-light-ic', 0.4, 'each')), cautions: [POWER, 'Step on framing only.'], proof: 'photo of each', needs: [] }, q('heightIn'))

    // Not rated for contact, or nobody read the label.
    const unread = item.rating === 'unknown'
    const treatment = item.treatment ?? books.choice('lightTreatment') ?? 'box'
    const boxed = treatment === 'box'
    const taskId = `${boxed ? 'box' : 'swap'}-lights-${item.in}`
    const gate: Gate = {
      code: 'light-not-ic', state: boxed ? 'mend' : 'hold', where: item.at, in: item.in, path: at, clearedByTask: taskId,
      why: unread ? 'rating unknown, taken as not rated for contact' : 'fill against a light not rated for contact can start a fire',
      stops: { phases: COVERING, places: [item.in] },
      clearedBy: boxed ? `own box, photo with ruler; ${unread ? 'a label that says IC; ' : ''}or an electrician who swaps the light` : 'the electrician’s photo of the new light in place',
      clearable: boxed ? [] : [{ kind: 'electrician-swap', license: true, outside: true }],
      ...(boxed ? {} : { condition: `The price holds only if the lights (${item.at}) are replaced by an electrician before the fill.` }),
    }
    const assumes = [
      ...(item.treatment === undefined && books.choice('lightTreatment') === undefined ? [assumed('light-treatment', 1, 'each', 'lights that are not IC or not read are boxed', 'no treatment named in the job or company file; a swap by an electrician leaves no bare top')] : []),
      ...(unread ? [assumed('light-unknown', 1, 'each', 'a rating nobody read is taken as not IC', 'label not read')] : []),
    ]
    const unknowns = unread ? [`${item.count} ${item.count === 1 ? 'light' : 'lights'} (${item.at}) ${item.count === 1 ? 'is' : 'are'} treated as not rated for contact; the label may change that.`] : []

    if (!boxed) {
      const fixture = books.product('light-ic-airtight'), swap = treatment === 'swap'
      const price = books.subcontract(swap ? 'light-swap' : 'light-surface')
      const quantity = work(bead, { runIn: work(ring, { diameterIn: q('diameterIn'), count }), beadIn })
      return {
        figures: { method: swap ? 'airtight IC light by an electrician, trim sealed' : 'surface light and patch by an electrician, sealed', materials: [{ item: fixture.item, quantity: count, unit: fixture.unit }, { item: sealant.item, quantity, unit: sealant.unit }] },
        gates: area.filled ? [gate] : [], assumes, unknowns,
        tasks: [{ ...base, id: taskId, from: at, phase: 'clear', work: 'swap', ownVisit: true, title: swap ? 'Electrician: replace each light by an airtight IC light' : 'Electrician: replace each light by a surface light, hole patched', role: 'electrician', hot: true,
          personHours: exactly(0, 'h', 'the electrician’s own'), subcontractCents: work(lineCents, { amount: count, unitPriceCents: price }), needs: [{ item: fixture.item, quantity: count }],
          cautions: ['Licensed electrician only.', POWER], proof: 'electrician’s photo of each' },
        { ...base, id: `trim-lights-${item.in}`, title: 'Seal the trim of each airtight IC light from below', size: 'small', needs: [{ item: sealant.item, quantity }],
          personHours: hours(books.rate('trim-light', 0.15, 'each'), exactly(1, 'factor', 'done from the room')), cautions: [POWER, 'Let the lamp cool.', 'Ladder on level floor.'], proof: 'photo of each' }],
      }
    }

    const keepIn = books.start('light-clear', 3, 'in', 'clear of a light not rated for contact', 'NEC 410.116(B): 3 in from enclosure and wiring box')
    const side = (n: 0 | 1, starting: number): Quantity<'in'> => work(clearOf, { keepIn,
      sizeIn: item.housingIn ? given(item.housingIn[n], 'in', `${at}/housingIn/${n}`) : books.start(n === 0 ? 'light-housing-length' : 'light-housing-width', starting, 'in', `${n === 0 ? 'length' : 'width'} of a housing with its wiring box`, 'housingIn not measured') })
    const lengthIn = side(0, 13), widthIn = side(1, 8)
    const boardIn = books.start('box-board', 5 / 8, 'in', 'thickness of the box board, Type X')
    const heightIn = work(boxHeight, { lightIn: q('heightIn'), clearIn: keepIn, topOfFillInitialIn: area.topOfFillInitialIn, marginIn: books.start('box-margin', 1, 'in', 'box above the blown top', 'SWS 4.1001.1: the box stands above the fill') })
    const board = books.product('box-board')
    const boardFt2 = work(boxBoard, { lengthIn, widthIn, boardIn, heightIn, count })
    const quantity = work(bead, { runIn: work(boxSeams, { lengthIn, widthIn, boardIn, heightIn, count }), beadIn })
    const top = work(boxTop, { lengthIn, widthIn, count })
    return {
      figures: { method: 'box, lid bare', materials: [{ item: board.item, quantity: boardFt2, unit: board.unit }, { item: sealant.item, quantity, unit: sealant.unit }] }, gates: area.filled ? [gate] : [], assumes, unknowns,
      paths: area.filled ? [{ areaFt2: top, rAfter: work(seriesR, { base: baseR(), fill: boxLidR() }), bareTops: count }] : [],
      tasks: [{ ...base, id: taskId, hot: true, heightIn, title: `Build a box over each light not rated for contact, 3 in clear all round, ${cutTo(heightIn)} in high, lid left bare`,
        personHours: hours(books.rate('box-light', 0.9, 'each')), needs: [{ item: board.item, quantity: boardFt2 }, { item: sealant.item, quantity }],
        cautions: [POWER, 'Lid stays bare: no fill on it, ever.', 'Keep 3 in clear of housing and wiring box; sealant on board edges only.', 'A fault in the wiring: stop, electrician.'], keepOff: [{ what: 'board and fill off a light’s housing and wiring box', distanceIn: keepIn }], onCover: ['Light boxes: no fill on a lid, ever.'], proof: 'photo with ruler of each box' }],
    }
  },
})


function covered(at: string, cover: Product, sealant: Product, count: Quantity<'each'>, beadIn: Quantity<'in'>, task: Task, lightIn: Quantity<'in'>): Measure {
  const findings: Finding[] = []
  if (cover.ratedFor !== 'ic') findings.push({ code: 'cover-not-rated', severity: 'error', path: at, says: `${cover.item} over an IC light`, why: 'the price book does not say it is rated for one', mend: 'name a cover with ratedFor: ic in the price book' })
  if (cover.heightIn && cover.heightIn.value <= lightIn.value) findings.push({ code: 'cover-too-low', severity: 'error', path: `${at}/heightIn`, says: `${cover.item} is ${asTape(cover.heightIn.value)} in high over a ${asTape(lightIn.value)} in light`, why: 'the cover must clear the housing', mend: 'choose a taller cover, or measure the light again' })
  const [lengthIn, widthIn] = cover.sizeIn ?? [exactly(14, 'in', 'cover without a size'), exactly(14, 'in', 'cover without a size')]
  const quantity = work(bead, { runIn: { ...work(times, { amount: work(edge, { lengthIn, widthIn }), count }), unit: 'in' }, beadIn })
  return {
    findings, figures: { method: 'cover, buried', materials: [{ item: cover.item, quantity: count, unit: cover.unit }, { item: sealant.item, quantity, unit: sealant.unit }] },
    tasks: [{ ...task, needs: [{ item: cover.item, quantity: count }, { item: sealant.item, quantity }] }],
  }
}

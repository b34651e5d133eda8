import * as f from '../../fields/index.ts'
import { hoursWithMore, personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, boxTop, clearOf, edge, height, ring, stripMetal, supports } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { asTape } from '../../units/tape.ts'
import { baseR } from '../ceiling.ts'
import { nothingBut } from '../pipe-fit.ts'
import { CAUTION, COVERING, coverLap, damMargin, damTask, declinable, flueClearance, hotBead, hotCheck, itself, leftOpen, opening, part, RIGID, seamBead, takes, where, type Gate, type Task } from '../kind.ts'
import { closedBelow, hole } from '../leaks.ts'
import { rectangle } from '../../calc/leak.ts'

const DROP = 'Open drop: not a place to stand.'

export const openChase = opening({
  kind: 'open-chase', title: 'Chase open to the attic',
  schema: () => f.item('open-chase', 'Chase open to the attic', {
    ...where,
    sizeIn: f.pairOf(f.inches(144, 'one side of the chase'), 'chase: length, width', { examples: [[30, 18]] }),
    flue: f.yesNoUnknown('a flue or chimney runs in it'),
    flueIn: f.optional(f.inches(36, 'that flue: outside, across')),
    below: f.optional(f.word(['closed', 'open'] as const, 'at its foot: closed by finishes, so that air comes through their seams; or open to a basement or crawl space', { default: 'closed' })),
    airFor: f.word(['none', 'appliance', 'unknown'] as const, 'a fuel-burning appliance draws air through it, or stands below it: what feeds a flame is a combustion-air-opening'),
    ...declinable,
  }),
  sample: { kind: 'open-chase', in: 'main', sizeIn: [30, 18], flue: 'no', airFor: 'none', at: 'behind the tub' },
  wrong: { item: { kind: 'open-chase', in: 'main', sizeIn: [30, 18], flue: 'no', at: 'behind the tub' }, code: 'key-missing' },
  leak: ({ item, at }, books) => {
    const sides = { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }
    const mouthIn2 = work(rectangle, sides)
    return item.below === 'open' ? hole(mouthIn2, work(edge, sides), books) : closedBelow(mouthIn2, sides, books)
  },
  takeoff({ item, at, id, q }, books, { area }) {
    if (item.airFor !== 'none') return leftOpen({
      code: 'combustion-air-unclear', state: 'stop', path: `${at}/airFor`, why: item.airFor === 'unknown' ? 'nobody said whether an appliance draws its air through it, and closing that can fill the house with carbon monoxide' : 'an appliance may draw its air through it, and closing that can fill the house with carbon monoxide',
      clearedBy: 'an HVAC contractor’s statement, written as `airFor: none`, or the opening as a combustion-air-opening',
    }, item, 'The chase', 'left open: it may feed air to a flame')

    const lengthIn = part(at, 'sizeIn', item.sizeIn, 0), widthIn = part(at, 'sizeIn', item.sizeIn, 1), n = id.slice('open-chase-'.length)
    const edgeIn = work(edge, { lengthIn, widthIn }), one = exactly(1, 'each', 'one chase to an entry')
    const coverFt2 = work(boardArea, { lengthIn, widthIn, lapIn: coverLap(books) })
    const lumberFt = work(supports, { lengthIn, widthIn, spanIn: books.start('span-unsupported', 24, 'in', 'span a cover carries without support', 'SWS 3.0101.1') })
    const base = { id: `cap-chase-${n}`, phase: 'seal', size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew' } as const
    if (item.flue === 'no') {
      const { needs, materials } = takes([books.product('rigid-cover'), coverFt2], [books.product('seam-sealant'), work(bead, { runIn: edgeIn, beadIn: seamBead(books) })], ...(lumberFt.value > 0 ? [[books.product('support'), lumberFt] as const] : []))
      return {
        figures: { method: RIGID, materials },
        tasks: [{ ...base, title: 'Cap the chase with a rigid, fastened, sealed board', work: 'big-hole', needs, cautions: [DROP, 'A warm pipe or flue below: stop, tell the lead.'], proof: 'photo',
          personHours: work(hoursWithMore, { count: one, rate: books.rate('chase', 0.9, 'each to 6 ft2'), amount: work(boxTop, { lengthIn, widthIn, count: one }), upTo: exactly(6, 'ft2', 'opening the rate covers'), rateMore: books.rate('chase-more', 0.08, 'ft2 over 6'), access: area.access }) }],
      }
    }

    // With a flue, or where nobody looked: as hot.
    const metal = books.product('sheet-metal'), sealant = books.product('hot-sealant')
    const flueIn = item.flueIn === undefined ? books.start('chase-flue', 6, 'in', 'flue in a chase, outside', 'flueIn not measured') : q('flueIn')
    const narrowIn = Math.min(lengthIn.value, widthIn.value)
    if (flueIn.value > narrowIn) return nothingBut({ code: 'flue-larger-than-chase', severity: 'error', path: item.flueIn === undefined ? `${at}/sizeIn` : `${at}/flueIn`, says: `a flue of ${asTape(flueIn.value)} in in a chase of ${asTape(narrowIn)} in`, why: 'the flue runs inside the chase', mend: 'measure both again, and write flueIn' })
    const cap = takes([metal, coverFt2], [sealant, work(bead, { runIn: total('in', { framing: edgeIn, flue: work(ring, { diameterIn: flueIn, count: one }) }), beadIn: hotBead(books) })])
    const tasks: Task[] = [{ ...base, title: 'Cap the chase with sheet metal in two halves and noncombustible sealant', work: 'hot-seal', hot: true, needs: cap.needs,
      personHours: work(personHours, { amount: one, rate: books.rate('chase-flue', 2, 'each'), access: area.access }),
      cautions: [CAUTION.noncombustible, 'A single-wall pipe may not pass a ceiling: stop, tell the lead.', DROP, CAUTION.edges], proof: 'photo with ruler' }]
    const figures = { method: 'metal cap and noncombustible sealant', materials: cap.materials }, findings = hotCheck([metal, sealant], at)
    if (!area.filled) return { figures, tasks, findings }

    const keepIn = flueClearance(books), sideIn = work(clearOf, { sizeIn: flueIn, keepIn }), heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) }), runIn = work(edge, { lengthIn: sideIn, widthIn: sideIn })
    tasks.push(damTask({ runIn, heightIn, metal, keepOff: { what: 'fill off the flue', distanceIn: keepIn } }, `dam-chase-${n}`, 'Metal dam on the cap, clear of the flue all round', item.in, area.access, books))
    const gates: Gate[] = []
    if (item.flue === 'unknown') {
      gates.push({ code: 'chase-flue-unknown', state: 'hold', where: item.at, in: item.in, path: `${at}/flue`, why: 'nobody looked whether a flue runs in the chase; it is priced as if one did', stops: { phases: COVERING, places: [item.in] }, clearedByTask: `look-chase-${n}`,
        clearedBy: 'a look down the chase, written as `flue: yes` or `flue: no`, or its photo', clearable: [{ kind: 'look-photo' }], condition: `The price holds only if a look shows what runs in the chase (${item.at}) before work starts.` })
      tasks.push({ id: `look-chase-${n}`, title: 'Look down the chase: is there a flue, and of which kind', phase: 'clear', work: 'clearing', touches: [item.in], serves: itself, role: 'lead', ownVisit: true,
        personHours: work(personHours, { amount: one, rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'no access factor on a look') }), needs: [], cautions: [DROP], proof: 'photo' })
    }
    return { figures: { ...figures, materials: [cap.materials[0]!, cap.materials[1]!, { item: metal.item, quantity: work(stripMetal, { runIn, widthIn: heightIn }), unit: metal.unit }] }, tasks, gates, findings,
      paths: [{ areaFt2: work(boxTop, { lengthIn: sideIn, widthIn: sideIn, count: one }), rAfter: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'nothing but air in the dam') }) }] }
  },
})

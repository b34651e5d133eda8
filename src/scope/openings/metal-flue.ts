import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, boxTop, clearOf, edge, gapRound, height, ring, stripMetal } from '../../calc/seal.ts'
import { seriesR } from '../../calc/heat.ts'
import { asTape } from '../../units/tape.ts'
import { exactly, total, work, type Quantity } from '../../units/quantity.ts'
import { baseR } from '../ceiling.ts'
import { nothingBut } from '../pipe-fit.ts'
import { CAUTION, COMPATIBLE, COVERING, coverLap, damMargin, damTask, declinable, flueClearance, hotBead, hotCheck, itself, leftOpen, opening, part, seamBead, takes, where, type Gate, type Task } from '../kind.ts'
import { hole } from '../leaks.ts'
import { roundIn } from '../../calc/leak.ts'

/** Vents that no crew may close round: who makes them safe, and how the file says so. */
const NOT_OURS = {
  'single-wall': { code: 'single-wall-through-ceiling', state: 'stop', why: 'a single-wall pipe may not pass a ceiling', clearedBy: 'an HVAC contractor’s listed vent in its place, measured again' },
  transite: { code: 'transite-vent', state: 'stop', why: 'the vent is asbestos cement: nobody cuts, drills or rubs it', clearedBy: 'an abatement and an HVAC contractor’s listed vent in its place, measured again' },
} as const

export const metalFlue = opening({
  kind: 'metal-flue', title: 'Flue or vent of an appliance',
  schema: () => f.item('metal-flue', 'Flue or vent of an appliance', {
    ...where,
    type: f.word(['b-vent', 'factory-chimney', 'single-wall', 'plastic', 'transite'] as const, 'by its label: double-wall gas vent, chimney of a maker, single-wall pipe, plastic vent of a condensing appliance, asbestos cement'),
    diameterIn: f.inches(30, 'outside, across', { examples: [4] }),
    framedIn: f.pairOf(f.inches(60, 'one side of the framed opening'), 'framed opening: length, width', { examples: [[9, 9]] }),
    labelClearanceIn: f.optional(f.inches(36, 'distance its label asks for', { min: 0, examples: [1] })),
    model: f.optional(f.text('maker and model of a factory chimney')),
    ...declinable,
  }),
  sample: { kind: 'metal-flue', in: 'main', type: 'b-vent', diameterIn: 4, framedIn: [7, 7], labelClearanceIn: 1, at: 'bath closet' },
  wrong: { item: { kind: 'metal-flue', in: 'main', type: 'b vent', diameterIn: 4, framedIn: [9, 9], at: 'bath closet' }, code: 'word-unknown' },
  check: ({ item, at }) => (item.type === 'b-vent' && item.labelClearanceIn !== undefined && item.labelClearanceIn < 1
    ? [{ code: 'clearance-under-listing', severity: 'error', path: `${at}/labelClearanceIn`, says: `${asTape(item.labelClearanceIn)} in off a B-vent`, why: 'no B-vent is listed for less than 1 in to what burns (from memory, high)', mend: 'read the label again, or leave labelClearanceIn out' }] : []),
  leak: ({ item, at, q }, books) => {
    const sides = { lengthIn: part(at, 'framedIn', item.framedIn, 0), widthIn: part(at, 'framedIn', item.framedIn, 1) }
    return hole(work(roundIn, { ...sides, diameterIn: q('diameterIn') }), work(edge, sides), books)
  },
  takeoff({ item, at, id, q }, books, { area }) {
    if (item.type === 'single-wall' || item.type === 'transite') return leftOpen({ ...NOT_OURS[item.type], path: `${at}/type` }, item, 'The vent', 'left open: not the crew’s to close')
    if (item.type === 'factory-chimney' && item.model === undefined) return leftOpen({ code: 'chimney-model-unknown', state: 'stop', path: `${at}/type`, why: 'only its maker’s firestop and shield may touch a factory chimney, and nobody knows its model', clearedBy: 'maker and model from the label or a chimney firm, written as `model:`' },
      item, 'The chimney', 'left open until its model is known')

    const diameterIn = q('diameterIn'), lengthIn = part(at, 'framedIn', item.framedIn, 0), widthIn = part(at, 'framedIn', item.framedIn, 1)
    const narrow = lengthIn.value <= widthIn.value ? lengthIn : widthIn
    if (narrow.value < diameterIn.value) return nothingBut({ code: 'flue-larger-than-frame', severity: 'error', path: `${at}/framedIn`, says: `a framed opening of ${asTape(narrow.value)} in round a vent of ${asTape(diameterIn.value)} in`, why: 'the vent goes through it', mend: 'measure both again: the outside of the vent, the inside of the frame' })
    const one = exactly(1, 'each', 'one vent to an entry'), gapIn = work(gapRound, { holeIn: narrow, outsideIn: diameterIn })
    const frameIn = work(edge, { lengthIn, widthIn }), roundIn = work(ring, { diameterIn, count: one })
    const labelIn = item.labelClearanceIn === undefined ? undefined : q('labelClearanceIn')
    const plastic = item.type === 'plastic', maker = item.type === 'factory-chimney'
    const metal = books.product('sheet-metal'), hotSealant = books.product('hot-sealant')
    const close = plastic
      ? takes([books.product('rigid-cover'), work(boardArea, { lengthIn, widthIn, lapIn: coverLap(books) })], [books.product('seam-sealant'), work(bead, { runIn: frameIn, beadIn: seamBead(books) })], [books.product('compatible-sealant'), work(bead, { runIn: roundIn, beadIn: seamBead(books) })])
      : maker ? takes([books.product('maker-firestop'), one], [hotSealant, work(bead, { runIn: frameIn, beadIn: hotBead(books) })])
        : takes([books.product('flue-set'), one], [hotSealant, work(bead, { runIn: total('in', { framing: frameIn, vent: roundIn }), beadIn: hotBead(books) })])
    const tasks: Task[] = [{
      id: `close-${id}`, phase: 'seal', work: plastic ? 'small-hole' : 'hot-seal', hot: !plastic, size: 'medium', touches: [item.in], serves: itself, closes: id, role: 'crew', needs: close.needs,
      title: plastic ? 'Close round the plastic vent with a rigid cover and compatible sealant' : maker ? `Fit the maker’s firestop and attic shield (${item.model ?? ''})` : 'Close round the vent with its metal collar and noncombustible sealant',
      personHours: work(personHours, { amount: one, rate: books.rate('metal-flue', 1, 'each'), access: area.access }),
      cautions: plastic ? [COMPATIBLE, 'No foam on the vent and none over a joint: joints stay in sight.', 'A sagging or cracked vent: stop, HVAC.']
        : [...(maker ? ['The maker’s parts only, by its instructions.', 'Cooling air runs between its walls: nothing is closed or packed there.'] : []), CAUTION.noncombustible, 'Rust, holes, open joints: stop, HVAC.', 'Hot when in use.', CAUTION.edges], proof: 'photo with ruler: clear of framing and of fill', keepOff: plastic ? [] : [{ what: 'framing off the vent', distanceIn: labelIn ?? books.start('vent-framing', 1, 'in', 'vent to framing', 'no label read; listed gas vents ask for 1 in') }],
    }]
    const findings = plastic ? [] : hotCheck(maker ? [books.product('maker-firestop'), hotSealant] : [books.product('flue-set'), hotSealant, metal], at)
    const method = plastic ? 'rigid cover, compatible sealant' : maker ? 'the maker’s firestop and shield' : 'metal collar and noncombustible sealant'
    const figures = { method, materials: close.materials, gapIn }
    // Plastic lies in fill unless its label asks for a distance.
    if (!area.filled || (plastic && (labelIn?.value ?? 0) === 0)) return { figures, tasks, findings }

    const keepIn = labelIn ?? flueClearance(books), sideIn = work(clearOf, { sizeIn: diameterIn, keepIn })
    const heightIn = work(height, { topOfFillInitialIn: area.topOfFillInitialIn, marginIn: damMargin(books) }), runIn = work(ring, { diameterIn: sideIn, count: one })
    const dam = damTask({ runIn, heightIn, metal, keepOff: { what: 'fill off the vent', distanceIn: keepIn } }, `shield-${id}`, `${plastic ? 'Metal dam' : 'Insulation shield'} ${asTape(keepIn.value)} in off the vent all round`, item.in, area.access, books)
    // The shield of a set is bought with it.
    tasks.push(plastic ? dam : { ...dam, needs: [] })
    const gates: Gate[] = plastic ? [] : nearFraming(item, at, id, gapIn, labelIn ?? books.start('vent-framing', 1, 'in', 'vent to framing', 'no label read; listed gas vents ask for 1 in'))
    if (gates.length > 0) tasks.push({ id: `look-${id}`, title: 'Building official or HVAC contractor: say in writing whether the framing may stand this near the vent', phase: 'clear', work: 'clearing', touches: [item.in], serves: itself, role: 'other', ownVisit: true,
      personHours: exactly(0, 'h', 'others’ own'), needs: [], cautions: ['Hot when in use: touch nothing.', CAUTION.framing], proof: 'letter' })
    return {
      tasks, gates, findings, figures: { ...figures, method: `${method}, ${plastic ? 'dam' : 'shield'}`, materials: plastic ? [...close.materials, { item: metal.item, quantity: work(stripMetal, { runIn, widthIn: heightIn }), unit: metal.unit }] : close.materials },
      paths: [{ areaFt2: work(boxTop, { lengthIn: sideIn, widthIn: sideIn, count: one }), rAfter: work(seriesR, { base: baseR(), fill: exactly(0, 'R', 'nothing but air in the shield') }) }],
    }
  },
})

function nearFraming(item: { readonly in: string; readonly at: string }, at: string, id: string, gapIn: Quantity<'in'>, needIn: Quantity<'in'>): Gate[] {
  return gapIn.value >= needIn.value ? [] : [{
    code: 'framing-near-flue', state: 'hold', where: item.at, in: item.in, path: `${at}/framedIn`, why: `framing stands ${asTape(gapIn.value)} in from the vent; it must stand ${asTape(needIn.value)} in off`, stops: { phases: COVERING, places: [item.in] }, clearedByTask: `look-${id}`,
    clearedBy: 'the building official’s or an HVAC contractor’s word in writing', clearable: [{ kind: 'official-letter', outside: true }, { kind: 'hvac-letter', license: true, outside: true }], condition: `The price holds only if the framing at the vent (${item.at}) is accepted in writing before work starts.`,
  }]
}

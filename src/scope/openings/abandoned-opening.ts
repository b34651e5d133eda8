import * as f from '../../fields/index.ts'
import { hoursWithMore } from '../../calc/arithmetic.ts'
import { rectangle } from '../../calc/leak.ts'
import { bead, boardArea, boxTop, edge } from '../../calc/seal.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, coverLap, declinable, hotBead, hotCheck, itself, leftOpen, opening, part, RIGID, seamBead, takes, where } from '../kind.ts'
import { hole } from '../leaks.ts'

export const abandonedOpening = opening({
  kind: 'abandoned-opening', title: 'Opening that serves nothing any more',
  schema: () => f.item('abandoned-opening', 'Opening that serves nothing any more', {
    ...where,
    sizeIn: f.pairOf(f.inches(96, 'one side of it'), 'opening: length, width', { examples: [[14, 8]] }),
    was: f.word(['register', 'vent', 'flue', 'other'] as const, 'what it was: a register, a vent or fan, a flue or chimney'),
    proved: f.yesNoUnknown('somebody proved that nothing vents into it or draws air through it'),
    ...declinable,
  }),
  sample: { kind: 'abandoned-opening', in: 'main', sizeIn: [14, 8], was: 'register', proved: 'yes', at: 'back bedroom' },
  wrong: { item: { kind: 'abandoned-opening', in: 'main', sizeIn: [14, 8], was: 'register', at: 'back bedroom' }, code: 'key-missing' },
  leak({ item, at }, books) {
    const sides = { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }
    return hole(work(rectangle, sides), work(edge, sides), books)
  },
  takeoff({ item, at, id }, books, { area }) {
    if (item.proved !== 'yes') return leftOpen({ code: 'opening-not-proved', state: 'stop', path: `${at}/proved`, why: 'nobody proved that no flame vents into it or draws its air through it', clearedBy: 'a look at both ends, written as `proved: yes`; or the opening as what it is' }, item, 'The old opening', 'left open: it may still serve a flame')
    const sides = { lengthIn: part(at, 'sizeIn', item.sizeIn, 0), widthIn: part(at, 'sizeIn', item.sizeIn, 1) }, hot = item.was === 'flue'
    const cover = books.product(hot ? 'sheet-metal' : 'rigid-cover'), sealant = books.product(hot ? 'hot-sealant' : 'seam-sealant')
    const { needs, materials } = takes([cover, work(boardArea, { ...sides, lapIn: coverLap(books) })], [sealant, work(bead, { runIn: work(edge, sides), beadIn: hot ? hotBead(books) : seamBead(books) })])
    return { figures: { method: hot ? 'metal cap and noncombustible sealant' : RIGID, materials }, findings: hot ? hotCheck([cover, sealant], at) : [], tasks: [{ id: `cap-${id}`, title: `Cap the old ${item.was === 'other' ? 'opening' : item.was}, fastened and sealed`, phase: 'seal', work: hot ? 'hot-seal' : 'big-hole', hot, size: 'large', touches: [item.in], serves: itself, closes: id, role: 'crew', needs,
      personHours: work(hoursWithMore, { count: exactly(1, 'each', 'one to an entry'), rate: books.rate('chase', 0.9, 'each to 6 ft2'), amount: work(boxTop, { ...sides, count: exactly(1, 'each', 'one to an entry') }), upTo: exactly(6, 'ft2', 'opening the rate covers'), rateMore: books.rate('chase-more', 0.08, 'ft2 over 6'), access: area.access }),
      cautions: ['Warm, or air moves in it: stop, tell the lead.', ...(hot ? [CAUTION.noncombustible] : []), CAUTION.framing], proof: 'photo' }] }
  },
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { bead, boardArea, clearOf, edge } from '../../calc/seal.ts'
import { pipeMaterials } from '../../reference/pipes.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { CAUTION, COMPATIBLE, coverLap, declinable, itself, opening, rigidOver, seamBead, takes, where } from '../kind.ts'
import { fitOf, fits, nothingBut, ringLeak } from '../pipe-fit.ts'
import { pairOf } from '../leaks.ts'

/** A stack grows and shrinks with what runs down it: it is closed by a collar that lets it move. */
export const plumbingStack = opening({
  kind: 'plumbing-stack', title: 'Plumbing stack that moves',
  schema: () => f.item('plumbing-stack', 'Plumbing stack that moves', {
    ...where,
    nominalIn: f.inches(12, 'nominal size of the pipe', { examples: [3] }),
    material: f.word(pipeMaterials, 'what it is made of; a plastic pipe that carries flue gas is a metal-flue of type plastic'),
    holeIn: f.inches(36, 'hole, across', { examples: ['4 1/2'] }),
    ...declinable,
  }),
  sample: { kind: 'plumbing-stack', in: 'main', nominalIn: 3, material: 'pvc', holeIn: 4.5, at: 'bath' },
  wrong: { item: { kind: 'plumbing-stack', in: 'main', nominalIn: 3, material: 'pvc', at: 'bath' }, code: 'key-missing' },
  leak: ({ item, at, q }) => { const one = exactly(1, 'each', 'one stack to an entry'); return ringLeak(pairOf('penetration', 'penetration-sealed', one), fitOf(item.material, q('nominalIn'), q('holeIn'), at), q('holeIn'), one) },
  takeoff({ item, at, id, q }, books, { area }) {
    const holeIn = q('holeIn')
    const fit = fitOf(item.material, q('nominalIn'), holeIn, at)
    if (!fits(fit)) return nothingBut(fit)
    const one = exactly(1, 'each', 'one stack to an entry')
    // The collar grips the pipe by itself: sealant only between its flange and what stands still.
    const flangeOn = (onIn: typeof holeIn) => { const sideIn = work(clearOf, { sizeIn: onIn, keepIn: books.start('collar-flange', 1, 'in', 'flange of a stack collar on each side of the hole') }); return work(edge, { lengthIn: sideIn, widthIn: sideIn }) }
    const wide = rigidOver(fit.gapIn.value)
    const runIn = wide ? total('in', { collar: flangeOn(fit.outsideIn), cover: work(edge, { lengthIn: holeIn, widthIn: holeIn }) }) : flangeOn(holeIn)
    const compatible = item.material === 'cpvc'
    const { needs, materials } = takes([books.product('stack-collar'), one],
      ...(wide ? [[books.product('rigid-cover'), work(boardArea, { lengthIn: holeIn, widthIn: holeIn, lapIn: coverLap(books) })] as const] : []),
      [books.product(compatible ? 'compatible-sealant' : 'seam-sealant'), work(bead, { runIn, beadIn: seamBead(books) })])
    return {
      figures: { method: wide ? 'rigid cover, flexible collar, sealed flange' : 'flexible collar, sealed flange', materials, gapIn: fit.gapIn },
      tasks: [{
        id: `collar-${id}`, title: wide ? 'Close the stack’s hole with a rigid cover and a flexible collar' : 'Close round the stack with a flexible collar', phase: 'seal', work: 'small-hole', touches: [item.in], serves: itself, closes: id, size: 'medium', role: 'crew', needs,
        personHours: work(personHours, { amount: one, rate: books.rate('plumbing-stack', 0.3, 'each'), access: area.access }),
        cautions: ['The stack must stay free to move: no foam and nothing rigid on the pipe.', 'It must go on through the roof: one that ends in the attic: tell the lead, plumber.', CAUTION.framing, ...(compatible ? [COMPATIBLE] : [])], proof: 'photo, collar sealed all round',
      }],
    }
  },
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { annulus, bead, beadWidth, boardArea, edge, plug, ring } from '../../calc/seal.ts'
import { pipeMaterials } from '../../reference/pipes.ts'
import { exactly, total, work } from '../../units/quantity.ts'
import { CAUTION, COMPATIBLE, coverLap, declinable, holeDepth, itself, method, opening, RIGID, rigidOver, seamBead, takes, timesOf, where } from '../kind.ts'
import { fitOf, fits, nothingBut, ringLeak } from '../pipe-fit.ts'
import { pairOf } from '../leaks.ts'

export const pipe = opening({
  kind: 'pipe', title: 'Pipes through a plate or ceiling',
  schema: () => f.item('pipe', 'Pipes through a plate or ceiling', {
    ...where,
    count: f.count(99, 'how many alike', { examples: [2] }),
    nominalIn: f.inches(12, 'nominal size of the pipe', { examples: [2] }),
    material: f.word(pipeMaterials, 'what it is made of; a plastic pipe that carries flue gas is a metal-flue of type plastic'),
    holeIn: f.inches(24, 'hole, across', { examples: [3] }),
    ...declinable,
  }),
  sample: { kind: 'pipe', in: 'main', count: 2, nominalIn: 2, material: 'pvc', holeIn: 3, at: 'bath' },
  wrong: { item: { kind: 'pipe', in: 'main', count: 2, nominalIn: 2, material: 'lead', holeIn: 3, at: 'bath' }, code: 'word-unknown' },
  leak: ({ item, at, q }) => ringLeak(pairOf('penetration', 'penetration-sealed', q('count')), fitOf(item.material, q('nominalIn'), q('holeIn'), at), q('holeIn'), q('count')),
  takeoff({ item, at, id, q }, books, { area }) {
    const count = q('count'), holeIn = q('holeIn')
    const fit = fitOf(item.material, q('nominalIn'), holeIn, at)
    if (!fits(fit)) return nothingBut(fit)
    const { outsideIn, gapIn } = fit
    const narrow = method(gapIn.value), rigid = rigidOver(gapIn.value), compatible = item.material === 'cpvc'
    const sealant = books.product(compatible ? 'compatible-sealant' : rigid ? 'seam-sealant' : narrow.role)
    const beadIn = work(beadWidth, { gapIn: rigid ? exactly(0, 'in', 'a bead on the cut of the cover') : gapIn, leastIn: seamBead(books) })
    const atPipe = work(ring, { diameterIn: outsideIn, count })
    const openIn2 = work(annulus, { holeIn, outsideIn, count })
    const foamed = !rigid && narrow.role === 'gap-foam'
    const { needs, materials } = rigid
      ? takes([books.product('rigid-cover'), timesOf(work(boardArea, { lengthIn: holeIn, widthIn: holeIn, lapIn: coverLap(books) }), count)],
        [sealant, work(bead, { runIn: total('in', { pipe: atPipe, hole: timesOf(work(edge, { lengthIn: holeIn, widthIn: holeIn }), count) }), beadIn })])
      : takes([sealant, foamed ? work(plug, { areaIn2: openIn2, depthIn: holeDepth(books) }) : work(bead, { runIn: atPipe, beadIn })])
    return {
      figures: { method: rigid ? RIGID : compatible ? 'compatible sealant' + (foamed ? ' with backing' : '') : narrow.method, materials, gapIn, openIn2 },
      tasks: [{
        id: `seal-pipes-${item.in}`, title: 'Seal round the pipes', phase: 'seal', work: 'small-hole', touches: [item.in], serves: itself, closes: id, size: rigid ? 'medium' : 'small', role: 'crew', count: item.count, needs,
        personHours: work(personHours, { amount: count, rate: books.rate('pipe', 0.1, 'each'), access: area.access }),
        cautions: [CAUTION.framing, 'A pipe that is hot or carries flue gas: stop, tell the lead.', ...(compatible ? [COMPATIBLE] : foamed ? narrow.cautions : [])], proof: 'photo of each',
      }],
    }
  },
})

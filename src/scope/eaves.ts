// Where fill meets the roof edge: the taper, the baffles, the wind blocks.
import * as f from '../fields/index.ts'
import { capped, personHours } from '../calc/arithmetic.ts'
import { baffleLength, bafflePieces, bays, baysToFit } from '../calc/fill.ts'
import { eaveDepth, mostStrip, stripArea, stripU, stripWidth } from '../calc/heat.ts'
import { inFeet } from '../calc/seal.ts'
import { soffitFree } from '../calc/vent.ts'
import type { Books, ChartRow } from '../books/books.ts'
import type { Finding } from '../findings/finding.ts'
import { asTape } from '../units/tape.ts'
import { exactly, given, total, work, type Quantity } from '../units/quantity.ts'
import { fillOf, type Figures, type Found, type Task } from './kind.ts'

export const eaveSchema = f.later(() => f.fields({
  in: f.id('area under this roof edge', { examples: ['main'] }),
  at: f.text('which side, in your words', { examples: ['north'] }),
  lengthFt: f.feet(500, 'length of the roof edge over this area', { examples: [48] }),
  bays: f.optional(f.count(500, 'bays you counted; without it length ÷ spacing', { min: 0 })),
  ventedBays: f.count(500, 'bays that open to a soffit vent', { min: 0, examples: [36] }),
  openSolidBays: f.optional(f.count(500, 'bays without a vent that open into the soffit: fill would run into it', { min: 0, default: 0 })),
  netFreeIn2PerFt: f.optional(f.number('in2/ft', { min: 0, max: 100 }, 'net free area of a foot of soffit vent, as marked', { examples: [9] })),
  goodBaffles: f.optional(f.count(500, 'vented bays whose baffle is sound and tall enough', { min: 0, default: 0 })),
}, 'one roof edge'))

export type Eave = f.StaticOf<typeof eaveSchema>

/** The parts of an area that shape its eaves. */
export interface RoofEdge {
  readonly id: string
  readonly rectanglesFt: readonly (readonly [number, number])[]
  readonly joists: { readonly spacingIn: number }
  readonly roofPitch: number
  readonly heelIn: number
  readonly wallIn?: number
  readonly ventGapIn?: number
}

/** What the eaves need of the area they end. */
export interface EaveInput {
  readonly netAreaFt2: Quantity<'ft2'>; readonly topInitial: Quantity<'in'>; readonly topSettled: Quantity<'in'>; readonly headroom: Quantity<'factor'>; readonly base: Quantity<'R'>
  readonly rowOf: ChartRow | undefined; readonly keptIn: Quantity<'in'>; readonly keptPerInch: Quantity<'R/in'>; readonly newPerInch: Quantity<'R/in'>
  readonly beforeDepth: Quantity<'in'>; readonly beforePerInch: Quantity<'R/in'>
}

export function eaveWork(found: Found<RoofEdge>, eaves: readonly Found<Eave>[], books: Books, x: EaveInput) {
  const { item, at, q } = found
  const id = item.id
  const tasks: Task[] = [], sides: Figures[] = []
  const findings: Finding[] = [], toFits: Quantity<'each'>[] = [], blocks: Quantity<'each'>[] = [], pieces: Quantity<'each'>[] = [], lengths: Quantity<'ft'>[] = []
  if (eaves.length === 0) return { tasks, sides, findings, windBlocks: exactly(0, 'each', 'no eaves') }
  const gapIn = q('ventGapIn', books.start('vent-gap', 1, 'in', 'air gap under the deck', 'IRC R806.3 least; not measured'))
  const wallIn = q('wallIn', books.start('wall', 4.5, 'in', 'thickness of the outside wall', 'not measured'))
  const heelIn = q('heelIn'), pitch = q('roofPitch')
  const spacingIn = given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`)
  const marginIn = books.start('baffle-margin', 2, 'in', 'baffle above the blown top', 'code asks for above the fill; a company may ask for more')
  const edge = { wallIn, ventGapIn: gapIn }
  const length = work(baffleLength, { topIn: x.topInitial, marginIn, heelIn, gapIn, pitch, outsideIn: exactly(0, 'in', 'the baffle starts at the outer plate edge') })
  const wide = item.joists.spacingIn > 20
  const baffle = books.product(wide ? 'baffle-24' : 'baffle-16')
  const pieceIn = baffle.sizeIn ? baffle.sizeIn[1] : books.start('baffle-piece', 48, 'in', 'length of a baffle piece')

  eaves.forEach(eave => {
    const bayCount = eave.q('bays', work(bays, { eaveFt: eave.q('lengthFt'), spacingIn }))
    const goodBaffles = eave.q('goodBaffles', books.start('good-baffles', 0, 'each', 'sound baffles where the file names none'))
    const toFit = work(baysToFit, { ventedBays: eave.q('ventedBays'), goodBaffles })
    const n = work(bafflePieces, { bays: toFit, lengthIn: length, pieceIn })
    sides.push({ id: eave.id, area: id, where: eave.item.at, bays: bayCount, ventedBays: eave.q('ventedBays'), baffles: n,
      ...(eave.item.netFreeIn2PerFt === undefined ? {} : { netFreeIn2: work(soffitFree, { lengthFt: eave.q('lengthFt'), perFt: given(eave.item.netFreeIn2PerFt, 'in2/ft', `${eave.at}/netFreeIn2PerFt`) }) }) })
    lengths.push(eave.q('lengthFt'))
    pieces.push(n)
    toFits.push(toFit)
    // A solid bay that opens into the soffit gets a stop for the fill, and no baffle.
    blocks.push(eave.item.openSolidBays ? total('each', { vented: toFit, solid: eave.q('openSolidBays') }) : toFit)
  })
  const baffles = total('each', pieces), windBlocks = total('each', blocks)
  const fitted = toFits.reduce((sum, n) => sum + n.value, 0), short = length.value - Math.floor(length.value / pieceIn.value) * pieceIn.value
  // A second length for a hand's breadth.
  if (x.rowOf && fitted > 0 && length.value > pieceIn.value && short < books.start('baffle-short', 2, 'in', 'by so little a baffle piece is short that a longer one is worth a look').value) findings.push({ code: 'baffle-just-short', severity: 'note', path: eaves[0]!.at, says: `baffles of ${asTape(Math.ceil(length.value * 4 - 1e-9) / 4)} in, and a piece is ${asTape(pieceIn.value)}`, why: 'each bay takes one piece more for so little', mend: 'look for a longer baffle, or name one in the price book' })
  if (x.rowOf && windBlocks.value > 0) {
    const eaveHeadroom = work(capped, { factor: x.headroom, most: books.start('baffle-headroom-cap', 1.6, 'factor', 'most the headroom slows work at the eave: the rate already means an eave') })
    tasks.push({
      id: `baffles-${id}`, title: `Fasten ${windBlocks.value > fitted ? `a wind block in each of ${windBlocks.value - fitted} open solid bays; ` : ''}${baffles.value > fitted ? `${Math.round(baffles.value / fitted)} lengths of baffle` : 'a baffle'} and a wind block in each vented bay that lacks them`, count: fitted, phase: 'ventilate', work: 'baffle', touches: [id], serves: fillOf(id), role: 'crew',
      personHours: total('h', { baffles: work(personHours, { amount: baffles, rate: books.rate('baffle', 0.1, 'piece'), access: eaveHeadroom }), windBlocks: work(personHours, { amount: windBlocks, rate: books.rate('wind-block', 0.05, 'each'), access: eaveHeadroom }) }),
      needs: [{ item: baffle.item, quantity: baffles }, { item: books.product('wind-block').item, quantity: windBlocks }],
      cautions: ['Old fill stuffed into a vented soffit comes out first.', 'Nails through the deck: head cover.', 'Heat at the eave: short turns, a partner.', 'Step on framing only.'], proof: 'photo of each row of bays' })
  }
  const eaveFt = lengths.length === 1 ? lengths[0]! : total('ft', lengths)
  const mostIn = work(mostStrip, { areaFt2: x.netAreaFt2, eaveFt })
  const perimeter = item.rectanglesFt.length === 1 ? 2 * (item.rectanglesFt[0]![0] + item.rectanglesFt[0]![1]) : Infinity
  const corners = eaveFt.value >= perimeter - 0.5 ? exactly(4, 'each', 'eaves on all four sides') : exactly(0, 'each', 'eaves meet at no corner')
  const strip = (fullIn: Quantity<'in'>, keptIn: Quantity<'in'>, keptPerInch: Quantity<'R/in'>, newPerInch: Quantity<'R/in'>, widthIn: Quantity<'in'>) =>
    work(stripU, { base: x.base, heelIn, gapIn, pitch, wallIn, widthIn, keptIn, keptPerInch, fullIn, newPerInch })
  const widthIn = work(stripWidth, { heelIn, gapIn, pitch, fullIn: x.topSettled, wallIn, mostIn })
  if (widthIn.value <= 0) return { tasks, sides, findings, windBlocks, edge, baffleIn: length }
  return {
    tasks, sides, findings, windBlocks, edge, baffleIn: length, widthFt: work(inFeet, { lengthIn: widthIn }), wallDepthIn: work(eaveDepth, { heelIn, gapIn, pitch, runIn: wallIn, fullIn: x.topSettled }),
    strip: { areaFt2: work(stripArea, { eaveFt, widthIn, corners }), uAfter: strip(x.topSettled, x.keptIn, x.keptPerInch, x.newPerInch, widthIn),
      uBefore: strip(x.beforeDepth, x.beforeDepth, x.beforePerInch, exactly(0, 'R/in', 'nothing blown yet'), widthIn) },
  }
}



// Ducts in the attic: put together, sealed, seen, then wrapped. A boot's seam to the ceiling is an opening; its seam to the duct is a joint here.
import * as f from '../fields/index.ts'
import { over, personHours } from '../calc/arithmetic.ts'
import { airCarried, airLeaving, boxBore, boxOutside, ductSkin, ductU, heatLost, jointRun, jointsOf, masticVolume, newRunHours, onDuct, ovalBore, ovalOutside, patchArea, roundBore, roundOutside, wrapArea } from '../calc/duct.ts'
import type { Books, Product } from '../books/books.ts'
import type { Finding } from '../findings/finding.ts'
import { ductGaps, stretchOut } from '../reference/ducts.ts'
import { fromRow } from '../reference/table.ts'
import { asTape } from '../units/tape.ts'
import { a } from '../units/words.ts'
import { exactly, given, total, work, type Quantity } from '../units/quantity.ts'
import { CAUTION, declinable, itself, takes, timesOf, type AreaAround, type Figures, type Found, type Measure, type Need, type Task } from './kind.ts'

export const ductSchema = f.later(() => f.fields({
  id: f.id('short name of these runs', { examples: ['trunk', 'branches'] }),
  in: f.id('area it runs through', { examples: ['main'] }),
  at: f.optional(f.text('where, in your words', { examples: ['along the ridge'] })),
  use: f.word(['supply', 'return'] as const, 'supply: air to the rooms; return: air back. A fan’s duct belongs to its exhaust-fan'),
  position: f.word(['floor', 'hung'] as const, 'floor: on the joists, where fill covers it; hung: above the fill'),
  material: f.word(['metal', 'flex', 'duct-board', 'panned'] as const, 'what it is made of; panned: joists with a sheet below, as a return'),
  shape: f.word(['round', 'rectangular', 'square', 'oval'] as const, 'round takes diameterIn, the others sizeIn'),
  diameterIn: f.optional(f.inches(48, 'a round duct, across, without what lies on it', { min: 2, examples: [6] })),
  sizeIn: f.optional(f.pairOf(f.inches(60, 'one side', { min: 2 }), 'a duct that is not round: the longer side, the shorter, without what lies on it', { examples: [[14, 8]] })),
  lengthFt: f.feet(300, 'length of one run', { examples: [24] }),
  count: f.optional(f.count(60, 'runs alike', { default: 1 })),
  joints: f.optional(f.count(99, 'joints that you counted on one run; without it they follow from length and fittings', { min: 0 })),
  fittings: f.optional(f.fields({
    elbows: f.optional(f.count(40, 'elbows on one run', { min: 0, default: 0 })),
    takeoffs: f.optional(f.count(40, 'take-offs on one run', { min: 0, default: 0 })),
    boots: f.optional(f.count(40, 'boots on one run', { min: 0, default: 0 })),
  }, 'what one run is joined to, where joints were not counted')),
  gapIn: f.inches(3, 'widest usual gap at its joints; 0 = sealed already', { min: 0, examples: ['1/8'] }),
  nearHandler: f.optional(f.yesNo('joints within 10 ft of the air handler or plenum', { default: 'yes' })),
  disconnected: f.optional(f.count(60, 'joints that have come apart, all runs', { min: 0, default: 0 })),
  strapsMissing: f.optional(f.count(99, 'hangers or straps missing, all runs', { min: 0, default: 0 })),
  insulationR: f.rValue('R on it now; 0 = bare', { examples: [0, 4.2] }),
  onItIn: f.optional(f.inches(12, 'thickness of what lies on it now', { min: 0 })),
  replace: f.optional(f.yesNo('new insulated flexible duct in its place: kinked, torn or soaked', { default: 'no' })),
  wrap: f.optional(f.yesNo('no: leave it as it is, where it hangs above the fill', { default: 'yes' })),
  cfm: f.optional(f.number('cfm', { above: 0, max: 20000 }, 'air that one run carries, measured or from the plan')),
  ...declinable,
}, 'ducts that are alike'))
export type Duct = f.StaticOf<typeof ductSchema>

/** A valid item. */
export const duct: { readonly sample: Duct } = { sample: { id: 'branches', in: 'main', use: 'supply', position: 'floor', material: 'metal', shape: 'round', diameterIn: 6, lengthFt: 11, count: 6, fittings: { elbows: 1, takeoffs: 1, boots: 1 }, gapIn: 0.25, insulationR: 3 } }

/** Only what is surely wrong. */
export function ductFaults({ item, at }: Found<Duct>): Finding[] {
  const out: Finding[] = []
  const say = (code: string, path: string, says: string, why: string, mend: string): void => { out.push({ code, severity: 'error', path, says, why, mend }) }
  const round = item.shape === 'round'
  if (round ? item.diameterIn === undefined : item.sizeIn === undefined) say('duct-size-missing', `${at}/shape`, `shape: ${item.shape} without ${round ? 'diameterIn' : 'sizeIn'}`, 'its skin, joints and wrap follow from its size', round ? 'write diameterIn: 6' : 'write sizeIn: [14, 8]')
  if (round ? item.sizeIn !== undefined : item.diameterIn !== undefined) say('duct-size-other-shape', `${at}/${round ? 'sizeIn' : 'diameterIn'}`, `${round ? 'sizeIn' : 'diameterIn'} on ${a(item.shape)} duct`, `${a(item.shape)} duct has ${round ? 'a diameter' : 'two sides'}`, `correct shape:, or write ${round ? 'diameterIn' : 'sizeIn'}: in its place`)
  if (item.shape === 'square' && item.sizeIn && item.sizeIn[0] !== item.sizeIn[1]) say('duct-not-square', `${at}/sizeIn`, `${asTape(item.sizeIn[0])} × ${asTape(item.sizeIn[1])} in`, 'the sides of a square duct are alike', 'write shape: rectangular, or correct a side')
  if (item.material === 'panned' && item.use !== 'return') say('panned-not-return', `${at}/material`, 'a panned supply', 'only returns are panned', 'correct material: or use:')
  if (item.material === 'flex' && !round) say('flex-not-round', `${at}/shape`, `flex, ${item.shape}`, 'flexible duct is round', 'correct material: or shape:')
  if (item.joints !== undefined && item.fittings !== undefined) say('joints-twice', `${at}/joints`, 'joints and fittings', 'joints are counted, or they follow from the fittings', 'take one of them out')
  if (item.wrap === 'no' && item.position === 'floor') say('wrap-not-optional', `${at}/wrap`, 'wrap: no on a duct that fill will cover', 'what lies under the fill can’t be wrapped later', 'take it out; decline: yes where the owner wants the duct left alone, and then its area stays open')
  return out
}

export interface DuctMeasure extends Measure {
  /** The places a stop on it shuts: itself, and where fill covers it, its area. */
  readonly buries: string
  /** Figures that stand only while the wrap does. */
  readonly wrapFigures: Figures
}

const CAUTIONS = {
  asbestos: 'White or gray paper or cloth on a duct may hold asbestos: touch nothing, tell the lead.', off: 'Heating and cooling off and locked.', mastic: 'Mastic: gloves, air moving.',
  fiber: 'Glass fiber: respirator, gloves, long sleeves.', jacket: 'Two jackets trap water where summers are humid: slash the old one first.',
} as const

/** What is on it now, in inches: measured, or its R at the R per inch of wrap. */
function thicknessNow({ item, q }: Found<Duct>, books: Books): Quantity<'in'> {
  if (item.insulationR === 0 && item.onItIn === undefined) return exactly(0, 'in', 'bare')
  if (item.onItIn !== undefined) return q('onItIn')
  return work(onDuct, { insulationR: q('insulationR'), perInch: books.start('duct-insulation-r-per-inch', 3.7, 'R/in', 'R per inch of what lies on a duct', 'its thickness was not measured; wrap squeezed by a quarter has R 3.7 per inch') })
}

/** The first wrap that brings what is short; else the one with the most R. */
function wrapFor(shortR: Quantity, books: Books): Product {
  const all = books.products('duct-wrap'), enough = all.filter(p => (p.rValue?.value ?? 0) >= shortR.value - 1e-9)
  return enough.sort((a, b) => a.rValue!.value - b.rValue!.value)[0] ?? [...all].sort((a, b) => (b.rValue?.value ?? 0) - (a.rValue?.value ?? 0))[0] ?? books.product('duct-wrap')
}

/** Zones with humid summers among theirs. */
const HUMID: readonly string[] = ['1', '2', '3']

export function ductTakeoff(found: Found<Duct>, books: Books, area: AreaAround, house: { readonly climateZone?: string } = {}): DuctMeasure {
  const { item, at, id, q } = found
  const runs = q('count', exactly(1, 'each', 'one run')), lengthFt = q('lengthFt'), round = item.shape === 'round'
  const side = (n: 0 | 1) => given(item.sizeIn![n], 'in', `${at}/sizeIn/${n}`)
  const around = (onItIn: Quantity<'in'>) => round ? work(roundOutside, { diameterIn: q('diameterIn'), onItIn }) : item.shape === 'oval' ? work(ovalOutside, { longIn: side(0), shortIn: side(1), onItIn }) : work(boxOutside, { widthIn: side(0), heightIn: side(1), onItIn })
  const bareRound = around(exactly(0, 'in', 'the duct itself'))
  const surfaceFt2 = work(ductSkin, { roundIn: bareRound, lengthFt, runs })
  const fitting = (key: 'elbows' | 'takeoffs' | 'boots') => item.fittings?.[key] === undefined ? exactly(0, 'each', `no ${key}`) : given(item.fittings[key], 'each', `${at}/fittings/${key}`)
  const joints = q('joints', item.material === 'flex' ? exactly(2, 'each', 'a flexible run has two ends')
    : work(jointsOf, { lengthFt, pieceFt: books.start('duct-piece', 5, 'ft', 'length of one piece of duct'), takeoffs: fitting('takeoffs'), boots: fitting('boots'), elbows: fitting('elbows') }))
  const jointFt = work(jointRun, { roundIn: bareRound, joints, runs })
  const allJoints = timesOf(joints, runs)

  const far = item.nearHandler === 'no', how = ductGaps.rows.find(r => item.gapIn <= r.upToIn + 1e-9 && (far || r.method !== 'mastic alone')) ?? ductGaps.rows.at(-1)!
  // Joints that came apart are sealed again, also where the others are sealed already.
  const toSeal = item.gapIn === 0 ? q('disconnected', exactly(0, 'each', 'sealed already')) : allJoints, sealed = toSeal.value === 0
  const sealFt = item.gapIn === 0 && !sealed ? work(jointRun, { roundIn: bareRound, joints: toSeal, runs: exactly(1, 'each', 'counted over all runs') }) : jointFt
  const inFill = item.position === 'floor' && area.filled
  const touches = item.position === 'floor' ? [item.in, id] : [id]
  const base = { in: item.in, touches, serves: itself, role: 'crew', size: 'medium' } as const
  const hours = (amount: Quantity, rateId: string, starting: number, per: string) => work(personHours, { amount, rate: books.rate(rateId, starting, per), access: area.access })
  const tasks: Task[] = [], materials: { item: string; quantity: Quantity; unit: string }[] = []
  const use = (...lines: readonly (readonly [Product, Quantity])[]): readonly Need[] => { const t = takes(...lines); materials.push(...t.materials); return t.needs }
  const band = books.start('mastic-band', 3, 'in', 'band of mastic over a joint'), thick = books.start('mastic-thickness', 5 / 64, 'in', 'thickness of mastic over a joint', 'as thick as a nickel')

  if ((item.disconnected ?? 0) > 0) tasks.push({ ...base, id: `reconnect-ducts-${item.in}`, title: 'Put ducts together that have come apart, fasten them', count: item.disconnected!, phase: 'ducts', work: 'duct-fix', closes: id,
    personHours: hours(q('disconnected'), 'duct-reconnect', 0.5, 'each'), needs: item.material === 'flex' ? use([books.product('duct-band'), timesOf(exactly(2, 'each', 'inner core and jacket'), q('disconnected'))]) : [], cautions: [CAUTIONS.asbestos, CAUTIONS.off, CAUTION.edges, CAUTION.framing], proof: 'photo of each' })
  if ((item.strapsMissing ?? 0) > 0) tasks.push({ ...base, id: `support-ducts-${item.in}`, title: 'Hang ducts that sag', count: item.strapsMissing!, phase: 'ducts', work: 'duct-fix', closes: id,
    personHours: hours(q('strapsMissing'), 'duct-support', 0.1, 'each'), needs: use([books.product('duct-strap'), timesOf(books.start('duct-strap', 4, 'ft', 'strap for one hanger'), q('strapsMissing'))]), cautions: [CAUTIONS.asbestos, CAUTION.framing], proof: 'photo' })
  const masticGal = sealed ? exactly(0, 'gal', 'sealed already') : work(masticVolume, { runFt: sealFt, bandIn: band, thickIn: thick })
  const anew = item.replace === 'yes'
  if (anew) {
    const all = [...books.products('flex-duct')].sort((a, b) => (a.sizeIn?.[0].value ?? 0) - (b.sizeIn?.[0].value ?? 0)), across = round ? item.diameterIn! : Math.sqrt(item.sizeIn![0] * item.sizeIn![1])
    const flex = all.find(p => (p.sizeIn?.[0].value ?? 0) >= across - 1e-9) ?? all.at(-1) ?? books.product('flex-duct'), ends = timesOf(exactly(4, 'each', 'core and jacket at both ends'), runs)
    tasks.push({ ...base, id: `replace-ducts-${item.in}`, title: 'Take the old run out, hang new insulated flexible duct, straight and not squeezed', count: item.count ?? 1, phase: 'ducts', work: 'duct-seal', closes: id,
      personHours: work(newRunHours, { lengthFt, perFt: books.rate('replace-duct', 0.05, 'ft'), perEnd: books.rate('replace-duct-end', 0.3, 'end'), runs, access: area.access }), needs: use([flex, timesOf(lengthFt, runs)], [books.product('duct-band'), ends], [books.product('mastic'), work(masticVolume, { runFt: work(jointRun, { roundIn: bareRound, joints: exactly(2, 'each', 'two ends'), runs }), bandIn: band, thickIn: thick })]),
      cautions: [CAUTIONS.asbestos, CAUTIONS.off, CAUTIONS.mastic, CAUTION.framing], proof: 'photo of each run and its label' })
  }
  if (!sealed && !anew) {
    const mesh = how.method === 'mastic alone' ? [] : [[books.product('mesh'), sealFt] as const]
    const bridge = how.method === 'bridged, then mastic and mesh' ? [[books.product('duct-tape'), sealFt] as const] : []
    const patch = how.method === 'rigid patch, then mastic and mesh' ? [[books.product('sheet-metal'), work(patchArea, { runFt: sealFt, gapIn: q('gapIn'), lapIn: books.start('duct-patch-lap', 1, 'in', 'patch beyond the gap, each side') })] as const] : []
    const bands = item.material === 'flex' ? [[books.product('duct-band'), toSeal] as const] : []
    tasks.push({ ...base, id: `${how.verb}-ducts-${item.in}`, title: `Clean, fasten and seal duct joints: ${how.method}`, count: toSeal.value, phase: 'ducts', work: 'duct-seal', closes: id,
      personHours: hours(toSeal, 'duct-joint', 0.12, 'joint'), needs: use([books.product('mastic'), masticGal], ...mesh, ...bridge, ...patch, ...bands),
      cautions: [CAUTIONS.asbestos, CAUTIONS.off, CAUTIONS.mastic, CAUTION.edges, CAUTION.framing], proof: 'photo of each joint, a ruler beside it' })
  }

  // Wrap
  const rBefore = q('insulationR'), targetR = books.ductTarget(item.use, round ? item.diameterIn! : Math.min(...item.sizeIn!))
  const short = work(over, { amount: targetR, free: rBefore }), findings: Finding[] = []
  const newR = anew ? books.products('flex-duct')[0]?.rValue : undefined
  const wrapped = item.wrap !== 'no' && item.material !== 'panned' && !anew && short.value > 0
  if (item.material === 'panned') findings.push({ code: 'panned-return', severity: 'note', path: `${at}/material`, says: `${id} is panned`, why: 'joist bays as ducts leak at every nail, and can’t be wrapped', mend: 'offer a hard duct in its place' })
  let wrapFigures: Figures = {}, rAfter: Quantity<'R'> = rBefore
  if (wrapped) {
    const wrap = wrapFor(short, books), wrapR = wrap.rValue ?? exactly(0, 'R', 'the price book gives no R for it'), thicknessIn = wrap.thicknessIn ?? books.start('duct-wrap-thickness', 3, 'in', 'thickness of duct wrap')
    const cut = stretchOut.rows.find(r => r.thicknessIn >= thicknessIn.value - 1e-9) ?? stretchOut.rows.at(-1)!
    const column = round || item.shape === 'oval' ? 'roundIn' : item.shape === 'square' ? 'squareIn' : 'rectangularIn'
    const wrapFt2 = work(wrapArea, { roundIn: around(thicknessNow(found, books)), allowanceIn: fromRow(stretchOut, cut, cut[column], 'in', `${asTape(cut.thicknessIn)} in wrap, ${item.shape}`, thicknessIn), lengthFt, runs })
    rAfter = total('R', { there: rBefore, wrap: wrapR })
    if (rAfter.value < targetR.value - 1e-9) findings.push({ code: 'duct-wrap-too-thin', severity: 'warning', path: `${at}/insulationR`, says: `R ${rAfter.value} of ${targetR.value} on ${id}`, why: `${wrap.item} brings R ${wrapR.value} as installed, and the price book has no thicker wrap`, mend: 'add a thicker duct wrap to the price book' })
    tasks.push({ ...base, id: `wrap-ducts-${item.in}-r-${targetR.value}`, title: `Wrap ducts to R-${targetR.value} as installed, jacket out, seams taped`, phase: 'wrap', work: 'wrap', closes: id, buries: [id],
      personHours: hours(surfaceFt2, 'duct-wrap', 0.06, 'ft2 of duct'), needs: use([wrap, wrapFt2], [books.product('duct-tape'), timesOf(lengthFt, runs)]),
      cautions: [CAUTIONS.fiber, ...(item.insulationR > 0 ? [CAUTIONS.jacket] : []), 'Do not squeeze it at straps; 3 in off anything hot; air handler, its panels and its drain stay free.', CAUTION.framing], proof: 'photo with the label’s R' })
    wrapFigures = { wrapFt2 }
  }

  // Heat on the way, on a day as stated
  const supply = item.use === 'supply'
  const enteringF = supply ? books.start('duct-supply-air', 120, '°F', 'air entering a supply duct in heating') : books.start('duct-return-air', 70, '°F', 'air entering a return duct'), atticF = books.start('duct-attic', 20, '°F', 'attic around ducts in heating')
  const bore = round ? work(roundBore, { diameterIn: q('diameterIn') }) : item.shape === 'oval' ? work(ovalBore, { longIn: side(0), shortIn: side(1) }) : work(boxBore, { widthIn: side(0), heightIn: side(1) })
  const cfm = item.cfm === undefined ? work(airCarried, { boreIn2: bore, speedFpm: books.start('duct-speed', 500, 'fpm', 'speed of air in a duct', 'its flow was not measured') }) : given(item.cfm, 'cfm', `${at}/cfm`)
  const skinFt2 = work(ductSkin, { roundIn: bareRound, lengthFt, runs: exactly(1, 'each', 'one run') }), films = books.start('duct-films', 0.85, 'R', 'films inside and outside a duct', 'a trade association’s duct guide after ASHRAE 2009; a handbook chart for bare metal gives U 0.73, R 1.37')
  const loss = (r: Quantity<'R'>) => work(heatLost, { cfm, enteringF, leavingF: work(airLeaving, { enteringF, atticF, u: work(ductU, { insulationR: r, films }), skinFt2, cfm }), runs })
  if (newR) wrapFigures = { rAfter: newR, lossBtuhAfter: loss(newR) }
  if (wrapped) wrapFigures = { ...wrapFigures, rAfter, lossBtuhAfter: loss(rAfter) }
  // Cold ducts that fill covers sweat where summers are humid.
  const wanted = books.start('buried-duct-r', 13, 'R', 'R wanted on a supply duct under fill in zones 1A to 3A, with a vapor retarder', 'IRC N1103.3.6 of 2018'), reached = newR ?? rAfter
  const sweats = item.position === 'floor' && area.filled && item.use === 'supply' && house.climateZone !== undefined && HUMID.includes(house.climateZone) && reached.value < wanted.value
  if (sweats) findings.push({ code: 'buried-duct-humid', severity: 'warning', path: `${at}/position`, says: `${id} will lie under fill in zone ${house.climateZone} at R ${Number(reached.value.toFixed(1))}`, why: `in zones 1A to 3A a buried duct wants R-${wanted.value} and a vapor retarder (IRC N1103.3.6 of 2018), or it sweats`, mend: 'hang it above the fill, or put a thicker duct wrap in the price book' })
  return {
    buries: inFill ? item.in : id, wrapFigures, tasks, findings, ...(sweats ? { unknowns: [`The ducts ${id} lie under fill at R ${Number(reached.value.toFixed(1))}; in this climate R-${wanted.value} with a sealed jacket is asked for, or they may sweat: hang them, or agree on more wrap before work starts.`] } : {}),
    figures: { id, area: item.in, where: item.at ?? '', use: item.use, shape: item.shape, count: runs, method: anew ? 'replaced by insulated flexible duct' : sealed ? 'sealed already' : how.method, surfaceFt2, jointFt, masticGal, rBefore, lossBtuhBefore: loss(rBefore), materials },
  }
}

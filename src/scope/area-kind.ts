// What a kind of area gives, and the parts that kinds of area share.
import type { BlownProduct, Books, ChartAnswer, ChartRow } from '../books/books.ts'
import { accessFactor, netOf, product, thousandsOf } from '../calc/arithmetic.ts'
import * as f from '../fields/index.ts'
import type { Static, TObject } from '../fields/index.ts'
import type { Finding } from '../findings/finding.ts'
import { lumber } from '../reference/ceilings.ts'
import { IN_PER_FT } from '../units/convert.ts'
import { exactly, given, total, work, type Quantity } from '../units/quantity.ts'
import { asFeet, asTape } from '../units/tape.ts'
import { hatchFactor, headroomFactor, oldFillFactor, websFactor, type Webs } from './access.ts'
import type { Eave } from './eaves.ts'
import type { Figures, Found, Measure } from './kind.ts'
import { named, readLayers, type Layer, type LayerItem } from './layers.ts'

export interface AreaMeasure extends Measure {
  /** For the openings in it. */
  readonly topOfFillInitialIn: Quantity<'in'>
  readonly access: Quantity<'factor'>
  /** Insulation goes in: its figures stand only while that work does. */
  readonly filled: boolean
  /** Loose fill lies open there: boxes, dams and curbs stand in it. */
  readonly loose: boolean
  /** Part of the attic floor that is vented above. */
  readonly floor: boolean
  readonly need: Quantity<'R'>
  /** The fabric away from openings, before and after; none of what is left out. */
  readonly fabric?: { readonly netAreaFt2: Quantity<'ft2'>; readonly base: Quantity<'R'>; readonly uFieldBefore: Quantity<'U'>; readonly uFieldAfter: Quantity<'U'>
    readonly strip?: { readonly areaFt2: Quantity<'ft2'>; readonly uBefore: Quantity<'U'>; readonly uAfter: Quantity<'U'> } }
  readonly eaves: readonly Figures[]
  /** The lowest layer that stays has its paper or foil toward the rooms. */
  readonly retarder: boolean
  readonly windBlocks: Quantity<'each'>
  /** What the chart said, with the rows beside it. */
  readonly chart?: { readonly product: BlownProduct; readonly answer: ChartAnswer; /** Old fill under the new. */ readonly keptIn: Quantity<'in'>; bagsFor(row: ChartRow): Quantity<'bag'>; loadFor(row: ChartRow): Quantity<'lb/ft2'> }
  /** Least density of what is packed into cavities. */
  readonly packedPcf?: Quantity<'lb/ft3'>
  /** Figures that stand only while the fill does. */
  readonly fillFigures: readonly string[]
}

/** What an attic is entered by, as the crew calls it. */
export type WayIn = 'hatch' | 'stair' | 'door'

/** What an area may know of the house around it. */
export interface FloorAround {
  readonly eaves: readonly Found<Eave>[]
  /** Product chosen for this area, and where it was said. */
  readonly fill?: string
  readonly fillAt?: string
  /** Sides of the largest way in of the house, shorter first. */
  readonly hatchIn?: readonly [Quantity, Quantity]
  /** What people climb in by: of this area, else of the house. */
  readonly wayIn?: WayIn
  /** The file has no list of eaves at all. */
  readonly eavesUnknown?: boolean
}

export interface AreaKind<S extends TObject = TObject> {
  readonly kind: string
  readonly title: string
  readonly schema: () => S
  readonly sample: Static<S>
  readonly wrong: { readonly item: unknown; readonly code: string }
  check?(found: Found<Static<S>>): readonly Finding[]
  takeoff(found: Found<Static<S>>, books: Books, around: FloorAround): AreaMeasure
}
export const area = <S extends TObject>(k: AreaKind<S>): AreaKind<S> => k

export const NO_EAVES = exactly(0, 'each', 'no eaves')
export const none = <U extends Quantity['unit']>(unit: U, why: string): Quantity<U> => exactly(0, unit, why)

const boards = ['gypsum', 'sag-resistant-gypsum', 'plaster', 'plank', 'tile'] as const

/** Keys that several kinds of area have. */
export const areaId = f.id('short name that openings and eaves use', { examples: ['main'] })
export const rectanglesKey = f.list(f.pairOf(f.feet(500, 'one side, inside the walls'), 'length and width'), 'the floor as rectangles', { min: 1, max: 50 })
export const framingKey = (what: string) => f.fields({
  size: f.word(lumber.rows.map(r => r.size), `nominal size of ${what}`),
  spacingIn: f.inches(48, 'center to center', { min: 6, examples: [16, 24] }),
}, what)
export const ceilingKey = f.later(() => f.fields({
  board: f.word(boards, 'what the ceiling is'),
  thicknessIn: f.inches(3, 'thickness of the board', { examples: ['1/2', '5/8'] }),
  condition: f.word(['sound', 'sagging', 'stained'] as const, 'sagging or stained: no load on it'),
}, 'the ceiling seen from below'))
export const headroomKey = f.inches(400, 'clear height where most of the work is', { examples: [62] })
export const websKey = f.optional(f.word(['open', 'w', 'dense'] as const, 'roof framing in the way: open, W-trusses, dense webs', { default: 'open' }))
export const goalKey = f.optional(f.rValue('target of this area alone'))
export const fromKey = { beside: f.id('area that it lies beside', { examples: ['main'] }) }

/** Gross, and less what is left out. */
export function floorSize(rectanglesFt: readonly (readonly [number, number])[], leaveOut: readonly { readonly areaFt2: number }[], at: string): { areaFt2: Quantity<'ft2'>; netAreaFt2: Quantity<'ft2'>; thousands: Quantity<'factor'> } {
  const rectangles = rectanglesFt.map((r, i) => work(product, { length: given(r[0], 'ft', `${at}/rectanglesFt/${i}/0`), width: given(r[1], 'ft', `${at}/rectanglesFt/${i}/1`) }))
  const areaFt2 = rectangles.length === 1 ? rectangles[0]! : total('ft2', named(rectangles, i => `rectangle${i + 1}`))
  const out = leaveOut.map((p, i) => given(p.areaFt2, 'ft2', `${at}/leaveOut/${i}/areaFt2`))
  const netAreaFt2 = out.length === 0 ? areaFt2 : work(netOf, { whole: areaFt2, leftOut: total('ft2', out) })
  return { areaFt2, netAreaFt2, thousands: work(thousandsOf, { areaFt2: netAreaFt2 }) }
}

export interface OldLayers { readonly layers: readonly Layer[]; readonly kept: readonly Layer[]; readonly existingR: Quantity<'R'>; readonly keptIn: Quantity<'in'>; readonly keptPsf: Quantity<'lb/ft2'>; readonly oldDepth: Quantity<'in'>; readonly gaps: Quantity<'fraction'> }
/** What is there, and what of it stays. */
export function oldLayers(items: readonly LayerItem[], at: string, books: Books): OldLayers {
  const layers = readLayers(items, at, books), kept = layers.filter(l => l.kept)
  const sum = <U extends Quantity['unit']>(unit: U, of: (l: Layer) => Quantity<U>, from: readonly Layer[], why: string): Quantity<U> => from.length === 0 ? none(unit, why) : total(unit, named(from.map(of), i => `layer${i + 1}`))
  return {
    layers, kept, existingR: sum('R', l => l.r, kept, 'no fill stays'), keptIn: sum('in', l => l.depthIn, kept, 'no fill stays'), keptPsf: sum('lb/ft2', l => l.psf, kept, 'no fill stays'),
    oldDepth: sum('in', l => l.depthIn, layers, 'bare floor'), gaps: kept.map(l => l.gaps).sort((a, b) => b.value - a.value)[0] ?? none('fraction', 'no fill stays'),
  }
}

/** How much longer work takes there, with a warning where the factors end. */
export function accessOf(found: Found<{ headroomIn: number; webs?: string }>, oldDepth: Quantity<'in'>, hatchIn: FloorAround['hatchIn'], books: Books): { access: Quantity<'factor'>; headroom: Quantity<'factor'>; findings: Finding[] } {
  const { item, at } = found
  const headroom = headroomFactor(given(item.headroomIn, 'in', `${at}/headroomIn`), books.company), webs = websFactor((item.webs ?? 'open') as Webs, item.webs === undefined ? undefined : `${at}/webs`, books.company), oldFill = oldFillFactor(oldDepth, books.company), hatch = hatchFactor(hatchIn, books.company)
  const air = books.start('air-temperature-factor', 1, 'factor', 'work done neither above 110 °F nor below 20 °F', 'no work date in the file'), cap = books.start('access-cap', 3, 'factor', 'most the access factors may multiply to')
  const least = books.start('headroom-least', 15, 'in', 'clear height under which nobody works', 'judgment: a person on the belly'), most = books.start('headroom-most', 168, 'in', 'clear height of the work over which an attic is hardly found', 'judgment')
  const low = item.headroomIn < least.value, odd: Finding[] = low || item.headroomIn > most.value ? [{ code: 'headroom-implausible', severity: 'warning', path: `${at}/headroomIn`, says: `headroomIn: ${asTape(item.headroomIn)}`,
    why: low ? `under ${asTape(least.value)} in of clear height nobody works` : `it is ${asFeet(item.headroomIn / IN_PER_FT)} of clear height where most of the work is`, mend: low ? `measure where the hands work${item.headroomIn * IN_PER_FT <= most.value ? `; if these are feet, write ${asTape(item.headroomIn * IN_PER_FT)}` : ''}` : 'the key is in inches; measure where the hands work, not under the ridge' }] : []
  const raw = headroom.value * oldFill.value * webs.value * hatch.value
  return { headroom, access: work(accessFactor, { headroom, oldFill, webs, hatch, air, cap }),
    findings: [...odd, ...raw * air.value > cap.value ? [{ code: 'access-over-cap', severity: 'warning', path: `${at}/headroomIn`, says: `access factors multiply to ${raw.toFixed(2)}`, why: `the rates end at ${cap.value}`, mend: 'price this area by the day, or open a new access' } as const] : []] }
}

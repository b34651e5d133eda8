// What one file in scope/ says. A task says where it works, what it hides and what it serves; a gate, which phases it stops and where.
import * as f from '../fields/index.ts'
import type { Static, TObject } from '../fields/index.ts'
import type { Finding } from '../findings/finding.ts'
import { table } from '../reference/table.ts'
import { personHours, times } from '../calc/arithmetic.ts'
import { inFeet, inInches, stripMetal } from '../calc/seal.ts'
import { given, work, type Quantity, type Unit } from '../units/quantity.ts'
import type { Leak } from './leaks.ts'
import type { Books, Product } from '../books/books.ts'
import { asTape } from '../units/tape.ts'

export const phases = ['clear', 'prepare', 'seal', 'ducts', 'check', 'wrap', 'ventilate', 'contain', 'insulate', 'close', 'prove'] as const
export type Phase = (typeof phases)[number]

export const roles = ['lead', 'crew', 'hose', 'helper', 'tester', 'electrician', 'hvac', 'roofer', 'abater', 'other'] as const
export type Role = (typeof roles)[number]

/** The kinds of work between which an order inside a phase is stated (estimate/order.ts). */
export const works = ['hazard-look', 'clearing', 'swap', 'test-in', 'set-up', 'storage', 'lift-deck', 'drill', 'old-fill', 'hot-seal', 'big-hole', 'small-hole', 'light', 'hatch', 'look', 'test', 'baffle', 'dam', 'marker',
  'duct-fix', 'duct-seal', 'wrap', 'lay-back', 'lay-batts', 'back-wall', 'machine', 'pack', 'blow', 'level', 'shut', 'shut-exit', 'clean-up', 'prove', 'roof-cut', 'fan-duct'] as const
export type Work = (typeof works)[number]

/** A step that opens a hold: it stands in the plan only while its gate is shut. */
export const opensHold = (t: { readonly work: Work; readonly closes?: unknown }): boolean => (t.work === 'clearing' || t.work === 'hazard-look') && t.closes === undefined

export const sizes = ['large', 'medium', 'small'] as const
export type Size = (typeof sizes)[number]

export type Places = readonly string[] | 'house'

/** What a task is for: it goes when the last thing it serves goes. Closing a leak serves nothing but itself. */
export type Serves = { readonly is: 'itself' } | { readonly is: 'fill'; readonly of: readonly string[] } | { readonly is: 'work'; readonly of: readonly Phase[] }
export const itself: Serves = { is: 'itself' }
/** The visit's own tasks: they go with the last task of these phases. */
export const workOf = (...of: Phase[]): Serves => ({ is: 'work', of })
export const fillOf = (...areas: string[]): Serves => ({ is: 'fill', of: areas })

export interface Need { readonly item: string; readonly quantity: Quantity }

/** What stands how far off something hot, or off a flame's air, and is printed large on the work order. */
export interface KeepOff { readonly what: string; readonly distanceIn: Quantity<'in'> }

export interface Task {
  readonly id: string
  readonly title: string
  readonly phase: Phase
  readonly work: Work
  readonly touches: Places
  /** The area it stands in, where it touches only a thing there: a duct hung above the fill. */
  readonly in?: string | undefined
  /** What nobody can reach afterwards: the areas under fill. */
  readonly buries?: readonly string[] | undefined
  readonly serves: Serves
  /** The surveyed opening that this task closes. */
  readonly closes?: string | undefined
  readonly hot?: boolean | undefined
  readonly size?: Size | undefined
  readonly role: Role
  readonly personHours: Quantity<'h'>
  readonly needs: readonly Need[]
  /** It brings other costs: a dump fee. */
  readonly otherCents?: Quantity<'cents'> | undefined
  /** Others' work: a price, no crew hours. */
  readonly subcontractCents?: Quantity<'cents'> | undefined
  readonly cautions: readonly string[]
  readonly keepOff?: readonly KeepOff[] | undefined
  /** Cautions that stand also on whatever covers the places it touches: whoever holds the hose reads them there. */
  readonly onCover?: readonly string[] | undefined
  readonly proof: string
  /** How high it is built: tasks that merge are titled by the tallest. */
  readonly heightIn?: Quantity<'in'> | undefined
  /** How many like things; printed behind the title, added up when tasks merge. */
  readonly count?: number | undefined
  /** The item of the file it comes from, where a paper may say that it is done. */
  readonly from?: string | undefined
  /** Done on a visit before the crew comes. */
  readonly ownVisit?: boolean | undefined
}

export type GateState = 'stop' | 'hold' | 'mend' | 'note'

export interface Gate {
  readonly code: string
  readonly state: GateState
  readonly why: string
  /** Where in the house, in the estimator's words. */
  readonly where: string
  /** The area it belongs to, or the whole house. */
  readonly in: string
  /** The appliance or other named thing it belongs to; else numbered within its area. */
  readonly of?: string
  readonly path: string
  readonly stops: { readonly phases: readonly Phase[]; readonly places: readonly string[] } // no places = the whole attic
  readonly clearedBy: string
  /** A task of this very plan: it closes a mend, and is the clearing step of a hold. */
  readonly clearedByTask?: string
  /** Papers that may clear it, and whether the signer needs a license. */
  readonly clearable?: readonly Clearable[]
  /** A paper counts only from this day on, where that is later than the survey. */
  readonly since?: string
  /** What the price depends on, in a sentence, while a hold is open. */
  readonly condition?: string
}

export interface Clearable { readonly kind: string; readonly license?: boolean; readonly outside?: boolean }

/** Heat paths of an opening through the ceiling, in its own area: what stands there before and after. */
export interface HeatPath { readonly areaFt2: Quantity<'ft2'>; readonly rBefore?: Quantity<'R'>; readonly rAfter: Quantity<'R'>
  /** Bare tops of light boxes among it. */
  readonly bareTops?: Quantity<'each'> }

export type Figures = Readonly<Record<string, Quantity | string | number | boolean | readonly unknown[] | { readonly [name: string]: Quantity }>>

export interface Measure {
  readonly figures: Figures
  readonly tasks: readonly Task[]
  readonly gates?: readonly Gate[]
  readonly findings?: readonly Finding[]
  readonly paths?: readonly HeatPath[]
  /** Choices made for want of a word in the file, listed as assumptions. */
  readonly assumes?: readonly Quantity[]
  /** Unknowns carried in the price: each a sentence for the list of what the price leaves open. */
  readonly unknowns?: readonly string[]
  /** Other costs: disposal, fees. */
  readonly otherCents?: Quantity<'cents'>
}

/** An item of the job file, where it stands, and the name it goes by in the output. */
export interface Found<I> {
  readonly item: I
  readonly at: string
  readonly id: string
  /** A measured number as a figure; with `otherwise`, that where the key is absent. */
  q<K extends Measured<I>>(key: K, otherwise?: Quantity): Quantity<UnitOf<K>>
}

export type Measured<I> = { [K in keyof I & string]-?: NonNullable<I[K]> extends number ? K : never }[keyof I & string]

type UnitOf<K> = K extends `${string}Ft2` ? 'ft2' : K extends `${string}In2` ? 'in2' : K extends `${string}In2PerFt` ? 'in2/ft' : K extends `${string}Ft` ? 'ft' : K extends `${string}In` ? 'in' : K extends `${string}Ppm` ? 'ppm' : K extends `${string}PciL` ? 'pCi/L' : K extends `${string}Hours` ? 'h'
  : K extends 'roofPitch' ? 'rise/12' : K extends 'rValue' | `${string}R` ? 'R' : 'each'

const ENDINGS: readonly [RegExp, Unit][] = [[/Ft2$/, 'ft2'], [/In2$/, 'in2'], [/In2PerFt$/, 'in2/ft'], [/Ft$/, 'ft'], [/In$/, 'in'], [/Ppm$/, 'ppm'], [/PciL$/, 'pCi/L'], [/Hours$/, 'h'], [/^roofPitch$/, 'rise/12'], [/(^r|[a-z]R)$|^rValue$/, 'R']]
const unitsOf = new Map<string, Unit>()
export function unitOf(key: string): Unit {
  let unit = unitsOf.get(key)
  if (unit === undefined) unitsOf.set(key, unit = ENDINGS.find(([ends]) => ends.test(key))?.[1] ?? 'each')
  return unit
}

export const found = <I extends object>(item: I, at: string, id: string): Found<I> => ({
  item, at, id,
  q(key, otherwise) {
    const value = item[key]
    if (typeof value === 'number') return given(value, unitOf(key), `${at}/${key}`) as never
    if (otherwise) return otherwise as never
    throw new Error(`${at}/${key} is no number and has no other value`)
  },
})

/** Number `n` of a pair or list key: `sizeIn: [22, 30]`. */
export function part<K extends string>(at: string, key: K, values: readonly number[], n: number): Quantity<UnitOf<K>> {
  return given(values[n]!, unitOf(key), `${at}/${key}/${n}`) as Quantity<UnitOf<K>>
}

/** What an opening may know of the area it stands in. */
export interface AreaAround {
  readonly id: string
  readonly topOfFillInitialIn: Quantity<'in'>
  /** Factor on the hours of work done in the attic there. */
  readonly access: Quantity<'factor'>
  /** Something will be blown there. */
  readonly filled: boolean
}

export interface OpeningAround { readonly area: AreaAround; readonly house: { readonly climateZone?: string } }

export interface Kind<S extends TObject = TObject, Around = unknown> {
  readonly kind: string
  readonly title: string
  readonly schema: () => S
  /** A valid item. */
  readonly sample: Static<S>
  /** A faulty item, and the code of the finding it must raise. */
  readonly wrong: { readonly item: unknown; readonly code: string }
  /** Cross-field rules, each with its text. */
  check?(found: Found<Static<S>>): readonly Finding[]
  takeoff(found: Found<Static<S>>, books: Books, around: Around): Measure
  /** How much it leaks, as found and closed; none for what is no leak, or may not count as one. */
  leak?(found: Found<Static<S>>, books: Books): Leak
}

export const opening = <S extends TObject>(k: Kind<S, OpeningAround>): Kind<S, OpeningAround> => k

/** What a hazard may know of the house: how old it is, and whether ducts run through its attic. */
export interface House { readonly yearBuilt?: number; readonly ducts: boolean }

/** Whom a crew calls from the house, most urgent first. */
export const callees = ['911', 'gas utility', 'abatement firm', 'electrician', 'chimney or HVAC firm', 'engineer or carpenter', 'roofer or plumber', 'remediator', 'pest control firm', 'certified renovator', 'solar firm', 'office'] as const
/** A hazard that the survey missed, as it shows itself to the crew: what they see, what they do at once, and whom they call after the lead. */
export interface OnSight { readonly sign: string; readonly act: string; readonly call: (typeof callees)[number] }

export interface HazardKind<S extends TObject = TObject> {
  readonly kind: string
  readonly title: string
  readonly schema: () => S
  readonly sample: Static<S>
  readonly wrong: { readonly item: unknown; readonly code: string }
  readonly clearable: readonly Clearable[]
  /** None where it does not show in an attic: a reading of the house, a person. */
  readonly onSight?: OnSight
  /** Seen or suspected. */
  takeoff(found: Found<Static<S>>, books: Books, around: { readonly house: House }): Measure
  /** Neither listed nor looked for: the gate where year makes it possible, else what is assumed. */
  unseen(house: House, books: Books, at: string): Measure | undefined
}
export const hazard = <S extends TObject>(k: HazardKind<S>): HazardKind<S> => k

/** Phases that tighten the house or cover the attic floor: what a combustion or a hidden hazard shuts. */
export const TIGHTENING: readonly Phase[] = ['seal', 'ducts', 'wrap', 'insulate']
export const COVERING: readonly Phase[] = ['wrap', 'insulate']

/** Keys every opening has. */
export const where = {
  in: f.id('area it opens into', { examples: ['main'] }),
  at: f.text('where, in your words', { examples: ['hall'] }),
}
/** The owner keeps it open: its task goes, and with it every fill in its area. */
export const declinable = { decline: f.optional(f.word(['yes'] as const, 'owner keeps it open: then nothing in its area may be covered')) }

/** How a gap is closed, by its width (SWS 3.0101.1 classes). */
export const gapMethods = table<{ upToIn: number; method: string; role: string; cautions: readonly string[] }>({
  name: 'gap-methods', title: 'How a gap is closed, by its width', use: 'chooses how an opening is closed', source: 'SWS 3.0101.1', obtained: 'published, seen in a copy', units: { upToIn: 'in' },
  rows: [
    { upToIn: 0.25, method: 'sealant', role: 'seam-sealant', cautions: [] },
    { upToIn: 3, method: 'foam with backing', role: 'gap-foam', cautions: ['Foam: flammable propellant, no flame or spark; gloves, eye cover, air moving.'] },
  ],
})
export const method = (gapIn: number) => gapMethods.rows.find(r => gapIn <= r.upToIn + 1e-9) ?? gapMethods.rows.at(-1)!

export const inchesOf = (lengthFt: Quantity<'ft'>): Quantity<'in'> => work(inInches, { lengthFt })

/** Cautions that stand on the tasks of more than one kind. */
export const CAUTION = {
  power: 'Power off and proved off.', framing: 'Step on framing only.', edges: 'Cut edges: gloves.', ladder: 'Ladder on level floor, held.', air: 'Nothing but air inside the dam.',
  wires: 'Live wires: no metal tools in the holes; old cloth-covered wire or knobs: touch nothing, tell the lead.',
  noncombustible: 'Metal and noncombustible material only (ASTM E136): no foam, no fire-block foam or caulk.',
} as const

/** What a piece of work takes: as needs of its task and as lines of the list of sealing. */
export const takes = (...lines: readonly (readonly [Product, Quantity])[]) => ({
  needs: lines.map(([p, quantity]): Need => ({ item: p.item, quantity })), materials: lines.map(([p, quantity]) => ({ item: p.item, quantity, unit: p.unit })),
})

/** Above the blown top: dams, shields and curbs. */
export const damMargin = (books: Books) => books.start('dam-margin', 4, 'in', 'dam and curb above the blown top')
export const seamBead = (books: Books) => books.start('bead-seam', 1 / 4, 'in', 'least bead of sealant on a seam')
export const hotBead = (books: Books) => books.start('bead-hot', 3 / 8, 'in', 'bead of noncombustible sealant')
/** A height as the crew cuts it: up to the quarter inch. */
export const cutTo = (heightIn: Quantity<'in'>) => asTape(Math.ceil(heightIn.value * 4 - 1e-9) / 4)
/** How deep a hole is filled round what passes through it. */
export const holeDepth = (books: Books) => books.start('hole-depth', 1, 'in', 'depth of sealant or foam in a hole')

/** Plastic that ordinary foam and sealant can crack or soften. */
export const COMPATIBLE = 'CPVC and other plastic under pressure or heat: only sealant that its label calls compatible; ordinary foam, solvent and plasticized caulk crack it.'
/** Wider than foam may bridge (SWS 3.0101.1). */
export const RIGID = 'rigid cover, sealed edge'
export const rigidOver = (gapIn: number): boolean => gapIn > gapMethods.rows.at(-1)!.upToIn + 1e-9
/** A cover laps the hole on each side. */
export const coverLap = (books: Books) => books.start('soffit-lap', 2, 'in', 'cover wider than the hole, each side')
/** The same for each of several. */
export const timesOf = <U extends Unit>(one: Quantity<U>, count: Quantity<'each'>): Quantity<U> => ({ ...work(times, { amount: one, count }), unit: one.unit })

/** Only noncombustible material (ASTM E136) may touch what is hot. */
export const hotCheck = (used: readonly Product[], at: string): Finding[] => used.filter(p => !p.noncombustible).map(p => ({ code: 'not-noncombustible', severity: 'error', path: at, says: `${p.item} at a hot surface`,
  why: 'only noncombustible material (ASTM E136) may touch it; the price book does not say that it is', mend: `fill the role ${p.role} with a product marked noncombustible: yes` }))
/** Fill and sealant off a metal flue, unless its label says. */
export const flueClearance = (books: Books) => books.start('flue-clearance', 3, 'in', 'fill off a vent or hot device', 'no label or company value; SWS 3.0102.2 default')

/** An opening that nobody may close yet: a stop on covering its area, which only a changed file opens. */
export const leftOpen = (gate: Pick<Gate, 'code' | 'state' | 'why' | 'clearedBy' | 'path'>, item: { readonly in: string; readonly at: string }, what: string, method: string): Measure => ({
  figures: { method, materials: [] }, tasks: [], unknowns: [`${what} (${item.at}) is not closed in this price: ${gate.why}.`],
  gates: [{ ...gate, where: item.at, in: item.in, stops: { phases: COVERING, places: [item.in] }, clearable: [] }],
})

export const NO_FILL_IN_DAM = 'No fill inside a metal dam or shield.'

export interface Dam { readonly runIn: Quantity<'in'>; readonly heightIn: Quantity<'in'>; readonly metal: Product; readonly keepOff: KeepOff }
/** A metal dam round something hot: closed below, open on top. */
export const damTask = ({ runIn, heightIn, metal, keepOff }: Dam, id: string, title: string, inArea: string, access: Quantity<'factor'>, books: Books): Task => ({
  id, title: `${title}, ${cutTo(heightIn)} in high, closed below, open on top`, phase: 'contain', work: 'dam', hot: true, size: 'medium', touches: [inArea], serves: fillOf(inArea), role: 'crew',
  personHours: work(personHours, { amount: work(inFeet, { lengthIn: runIn }), rate: books.rate('dam', 0.06, 'ft'), access }), needs: [{ item: metal.item, quantity: work(stripMetal, { runIn, widthIn: heightIn }) }],
  cautions: [CAUTION.air, CAUTION.edges], keepOff: [keepOff], onCover: [NO_FILL_IN_DAM], proof: 'photo with ruler',
})

/** Where nothing is blown old fill may still be laid back: the thing is flagged and kept clear before that. */
export const flagOnly = (id: string, inArea: string, title: string, cautions: readonly string[], count: Quantity<'each'>, access: Quantity<'factor'>, books: Books, keepOff: readonly KeepOff[] = []): Measure => {
  const flag = takes([books.product('box-flag'), count])
  return { figures: { method: 'flagged; nothing is blown here', materials: flag.materials }, tasks: [{
    id: `flag-${id}`, title, phase: 'contain', work: 'marker', touches: [inArea], serves: itself, closes: id, role: 'helper', needs: flag.needs,
    personHours: work(personHours, { amount: count, rate: books.rate('box-flag', 0.03, 'each'), access }), cautions, keepOff, proof: 'photo' }] }
}

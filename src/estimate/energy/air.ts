// How the house leaks as measured, how much less once the plan is done, and the fresh air it then asks for.
import { airChanges, ceilingShareAfter, fanFull, fanShared, infiltration, infiltrationCredit, inStories, leaksHigh, leaksLow, lessCut, lessF, localDeficit, naturalByN, neutralLevel, nFactor, pressureAt, stackPressure, ventilationTotal } from '../../calc/air.ts'
import { shareIn2 } from '../../calc/leak.ts'
import { lineCents } from '../../calc/price.ts'
import type { Books } from '../../books/books.ts'
import { byText, type Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { infiltrationHeights, nClimates, nHeights, nShelters } from '../../reference/infiltration.ts'
import { fromRow, type Table } from '../../reference/table.ts'
import { airCut, ceilingShare, effectiveArea, equivalentArea, leakExponent, ranged, type Range } from '../../scope/air-cut.ts'
import { itself, type Task } from '../../scope/kind.ts'
import { leaks } from '../../scope/leaks.ts'
import type { Ventilation } from '../../scope/energy.ts'
import { exactly, given, total, totalOf, work, type Quantity } from '../../units/quantity.ts'
import { closes, type Step } from '../tasks/order.ts'
import { roomsF, winterMeanF } from './winter.ts'
import type { Taken } from '../tasks/takeoff.ts'

type Figures = Readonly<Record<string, unknown>>
export interface HouseAir {
  readonly figures?: Figures
  readonly ventilation?: Figures
  readonly findings: readonly Finding[]
  /** Natural flow that the plan stops [cfm], for what it saves. */
  readonly naturalCut?: Range<'cfm'>
  /** A fan that the tighter house asks for. */
  readonly fanCfm?: Quantity<'cfm'>
}

const ofRow = <R extends object>(t: Table<R>, r: R & { readonly source?: string }, value: number, unit: Quantity['unit'], which: string) => fromRow(t, r, value, unit, which) as Quantity<never>

/** Lowest floor to ceiling: measured, else by its stories. */
function heightOf({ house }: JobFile, books: Books): Quantity<'ft'> | undefined {
  if (house.heightFt !== undefined) return given(house.heightFt, 'ft', '/house/heightFt')
  return house.stories === undefined ? undefined : work(inStories, { stories: given(house.stories, 'each', '/house/stories'), each: books.start('story-height', 8.5, 'ft', 'height of a story, its floor included') })
}

/** What drives air through a square inch of leakage in winter, by the basic model; the N-factor where its zone is given. */
function natural(job: JobFile, books: Books): { flow(areaIn2: Quantity<'in2'>): Quantity<'cfm'>; readonly n?: Quantity<'factor'> } | undefined {
  const { house, energy } = job
  if (house.stories === undefined) return undefined
  const shelter = energy?.shelter ?? 'suburban', tall = infiltrationHeights.rows.find(r => r.stories >= house.stories!) ?? infiltrationHeights.rows.at(-1)!
  const which = `${tall.stories} stories, ${shelter}`
  const outsideF = winterMeanF(job, books)
  const speedMph = energy?.windMph === undefined ? books.start('winter-wind', 7, 'mph', 'mean wind of the heating season', 'the file gives none') : given(energy.windMph, 'mph', '/energy/windMph')
  const deltaF = work(lessF, { warm: roomsF(books), cold: outsideF })
  const stack = ofRow(infiltrationHeights, tall, tall.stack, 'factor', `${which}, stack`), wind = ofRow(infiltrationHeights, tall, tall.wind[shelter], 'factor', `${which}, wind`)
  const climate = nClimates.rows.find(r => r.zone === energy?.infiltrationZone), height = nHeights.rows.find(r => r.stories >= house.stories!) ?? nHeights.rows.at(-1)!, around = nShelters.rows.find(r => r.shelter === shelter)!
  return {
    flow: areaIn2 => work(infiltration, { areaIn2, stack, deltaF, wind, speedMph }),
    ...(climate ? { n: work(nFactor, { climate: ofRow(nClimates, climate, climate.n, 'factor', `zone ${climate.zone}`), height: ofRow(nHeights, height, height.factor, 'factor', `${height.stories} stories`), shelter: ofRow(nShelters, around, around.factor, 'factor', shelter) }) } : {}),
  }
}

/** The pressure at the ceiling on a cold day, before and after: for explaining, and never to clear anything. */
function stackOf(job: JobFile, cfm50: Quantity<'cfm'>, cut: Quantity<'cfm'>, heightFt: Quantity<'ft'>, books: Books): Figures {
  const outsideF = job.energy?.winterDesignF === undefined ? books.start('stack-outside', 20, '°F', 'outdoors, for the pressure of warm air', 'no winter design temperature in the file') : given(job.energy.winterDesignF, '°F', '/energy/winterDesignF')
  const stackPa = work(stackPressure, { heightFt, insideF: roomsF(books), outsideF }), exponent = leakExponent(books)
  const at = (ceiling: Quantity<'fraction'>) => {
    const neutralFt = work(neutralLevel, { heightFt, top: work(leaksHigh, { ceiling }), bottom: work(leaksLow, { ceiling }), exponent })
    return { neutralFt, ceilingPa: work(pressureAt, { stackPa, heightFt, neutralFt }) }
  }
  const share = ceilingShare(books).expected, before = at(share), after = at(work(ceilingShareAfter, { share, cfm50, cut }))
  return { outsideF, heightFt, stackPa, neutralFtBefore: before.neutralFt, neutralFtAfter: after.neutralFt, ceilingPaBefore: before.ceilingPa, ceilingPaAfter: after.ceilingPa }
}

/** Its air comes from somewhere: what burns fuel is tested again with it on. */
export function fanOffer(fanCfm: Quantity<'cfm'>, books: Books): { id: string; what: string; tasks: readonly Task[] } {
  const fan: Task = { id: 'ventilation-fan', title: 'A fan for fresh air', phase: 'ventilate', work: 'fan-duct', touches: 'house', serves: itself, role: 'electrician', personHours: exactly(0, 'h', 'the trade’s own'), needs: [], cautions: [], proof: 'flow as measured',
    subcontractCents: work(lineCents, { amount: exactly(1, 'each', 'one fan'), unitPriceCents: books.subcontract('ventilation-fan') }) }
  return { id: 'ventilation-fan', what: `a quiet fan of ${Math.ceil(fanCfm.value)} cfm at least that runs all the time, ducted outdoors; flames are tested again with it on`, tasks: [fan] }
}

/** Fresh air by 62.2 at the tight end of the range. */
function freshAir(v: Ventilation, { house }: JobFile, cfm50: Quantity<'cfm'>, heightFt: Quantity<'ft'> | undefined, books: Books): { figures?: Figures; fanCfm?: Quantity<'cfm'>; findings: Finding[] } {
  const missing = [house.floorAreaFt2 === undefined && 'house.floorAreaFt2', house.bedrooms === undefined && 'house.bedrooms', heightFt === undefined && 'house.heightFt'].filter(Boolean)
  if (missing.length > 0) return { findings: [{ code: 'ventilation-needs-more', severity: 'warning', path: '/ventilation', says: `no ${missing.join(', ')}`, why: 'fresh air by 62.2 goes by floor, bedrooms and height', mend: `write ${missing.join(', ')}` }] }
  const totalCfm = work(ventilationTotal, { floorFt2: given(house.floorAreaFt2!, 'ft2', '/house/floorAreaFt2'), bedrooms: given(house.bedrooms!, 'each', '/house/bedrooms') })
  const creditCfm = work(infiltrationCredit, { cfm50, wsf: given(v.wsf, 'factor', '/ventilation/wsf'), heightFt: heightFt! })
  const exhaust = (kind: 'bath' | 'kitchen', at: string, f: { readonly fanCfm?: number; readonly window?: string }) => work(localDeficit, {
    askedCfm: kind === 'bath' ? books.start('bath-exhaust', 50, 'cfm', 'exhaust of a bath, on demand', 'ASHRAE 62.2, existing houses') : books.start('kitchen-exhaust', 100, 'cfm', 'exhaust of a kitchen, on demand', 'ASHRAE 62.2, existing houses'),
    fanCfm: f.fanCfm === undefined ? exactly(0, 'cfm', 'no fan that was measured') : given(f.fanCfm, 'cfm', `${at}/fanCfm`), window: exactly(f.window === 'yes' ? 1 : 0, 'each', f.window === 'yes' ? 'a window opens' : 'no window that opens') })
  const rooms: Record<string, Quantity> = Object.fromEntries((v.baths ?? []).map((b, i) => [`bath${i + 1}`, exhaust('bath', `/ventilation/baths/${i}`, b)]))
  if (v.kitchen) rooms['kitchen'] = exhaust('kitchen', '/ventilation/kitchen', v.kitchen)
  const deficitCfm = Object.keys(rooms).length === 0 ? exactly(0, 'cfm', 'baths and kitchen not surveyed') : total('cfm', rooms)
  const exterior = v.exteriorShare === undefined ? exactly(1, 'fraction', 'a detached house') : given(v.exteriorShare, 'fraction', '/ventilation/exteriorShare')
  const need = { totalCfm, deficitCfm, creditCfm, exterior }, asked = v.standard === '62.2-2019' && (v.fan ?? 'exhaust') === 'exhaust' ? work(fanShared, need) : work(fanFull, need)
  const there = v.existingCfm === undefined ? exactly(0, 'cfm', 'no whole-house fan') : given(v.existingCfm, 'cfm', '/ventilation/existingCfm')
  const fanCfm = work(lessCut, { before: asked, cut: there.value > asked.value ? asked : there })
  const least = books.start('ventilation-least', 15, 'cfm', 'need under which an existing house adds no fan', 'ASHRAE 62.2, existing houses (from memory, medium)'), needed = fanCfm.value > least.value
  return {
    figures: { standard: v.standard, totalCfm, infiltrationCreditCfm: creditCfm, ...(Object.keys(rooms).length > 0 ? { localDeficitCfm: deficitCfm } : {}), fanCfm, fanNeeded: needed }, ...(needed ? { fanCfm } : {}),
    findings: needed ? [{ code: 'ventilation-short', severity: 'note', path: '/ventilation', says: `${Math.ceil(fanCfm.value)} cfm of fresh air are missing once the house is sealed`, why: `ASHRAE ${v.standard} asks for ${Math.round(totalCfm.value)} cfm${deficitCfm.value > 0 ? `, and a quarter of the ${Math.round(deficitCfm.value)} that bath and kitchen lack` : ''}; the leaks that are left count for ${Math.round(creditCfm.value)}`, mend: 'a fan that runs all the time, offered beside this price; the owner decides in writing, and flames are tested again with it on' }] : [],
  }
}

/** Fresh air by 62.2 of a house that was measured again, with the whole-house fan that it has then. None where the job asks for none. */
export function freshAirAgain(job: JobFile, cfm50: Quantity<'cfm'>, fanCfm: number | undefined, books: Books): ReturnType<typeof freshAir> | undefined {
  return job.ventilation && freshAir({ ...job.ventilation, ...(fanCfm === undefined ? {} : { existingCfm: fanCfm }) }, job, cfm50, heightOf(job, books), books)
}

/** What the tests, the openings and the plan say of air; nothing follows from a house that nobody measured. */
export function houseAir(job: JobFile, taken: Taken, steps: readonly Step[], ductTarget: Quantity<'cfm'> | undefined, books: Books): HouseAir {
  const { tests, house } = job, findings: Finding[] = []
  const ducts = { ...(tests?.cfm25Total === undefined ? {} : { ductCfm25Before: given(tests.cfm25Total, 'cfm', '/tests/cfm25Total') }), ...(ductTarget ? { ductCfm25Target: ductTarget } : {}) }
  const listed = taken.openings.filter(o => o.leak && o.leak.before.value > 0), closing = listed.filter(o => closes(o, steps))
  const beforeIn2 = totalOf('in2', listed, o => [o.found.id, o.leak!.before]), afterIn2 = totalOf('in2', listed, o => [o.found.id, closing.includes(o) ? o.leak!.after : o.leak!.before])
  const ranking = [...listed].sort((a, b) => b.leak!.before.value - a.leak!.before.value || byText(a.found.id, b.found.id)).map(o => ({ id: o.found.id, where: o.found.item.at, leakageAreaIn2: o.leak!.before, sharePct: work(shareIn2, { part: o.leak!.before, all: beforeIn2 }) }))
  const areas = listed.length === 0 ? {} : { listedIn2Before: beforeIn2, listedIn2After: afterIn2, leaks: ranking }
  if (tests?.cfm50 === undefined) return { findings, ...(Object.keys({ ...ducts, ...areas }).length > 0 ? { figures: { ...ducts, ...areas } } : {}) }

  const cfm50 = given(tests.cfm50, 'cfm', '/tests/cfm50'), heightFt = heightOf(job, books)
  const cut = airCut(Object.fromEntries(closing.map(o => [o.found.id, o.leak!])), cfm50, books)
  const volumeFt3 = house.volumeFt3 === undefined ? undefined : given(house.volumeFt3, 'ft3', '/house/volumeFt3'), changes = (cfm: Quantity<'cfm'>) => volumeFt3 && work(airChanges, { cfm, volumeFt3 })
  const after = cut && ranged(end => work(lessCut, { before: cfm50, cut: cut.cfm50[end] }))
  const winds = natural(job, books), flow = (c: Quantity<'cfm'>) => winds?.flow(effectiveArea(c, books))
  const floorFt2 = taken.areas.filter(a => a.measure.fabric).map(a => [a.id, a.measure.figures['netAreaFt2'] as Quantity] as const), byFloor = (end: 'bestIn2' | 'minIn2' | 'maxIn2') => leaks('ceiling-general', total('ft2', floorFt2), end)
  const figure = <K extends string>(name: K, q: Quantity | undefined) => (q === undefined ? {} : { [name]: q })
  const naturalBefore = flow(cfm50), naturalAfter = after && flow(after.expected)
  const fresh = job.ventilation ? freshAir(job.ventilation, job, after?.high ?? cfm50, heightFt, books) : { findings: [] }
  findings.push(...fresh.findings)
  if (cut) {
    const sealed = steps.filter(s => s.phase === 'seal'), hours = sealed.reduce((sum, s) => sum + s.personHours.value, 0)
    const least = books.start('cut-for-hour-least', 20, 'cfm', 'least cut for a person-hour of sealing that is believed', 'judgment'), most = books.start('cut-for-hour-most', 150, 'cfm', 'most cut for a person-hour of sealing that is believed', 'judgment')
    const each = hours > 0 ? cut.cfm50.expected.value / hours : undefined
    if (each !== undefined && ((each < least.value && !cut.capped) || each > most.value)) findings.push({ code: 'cut-for-hours', severity: 'note', path: '/tests/cfm50', says: `${Math.round(each)} CFM50 less for each person-hour of sealing`, why: `${least.value} to ${most.value} is what such work brings`, mend: 'look again at the list of openings and at cfm50' })
  }
  return {
    findings, ...(fresh.fanCfm ? { fanCfm: fresh.fanCfm } : {}), ...(fresh.figures ? { ventilation: fresh.figures } : {}),
    ...(after && winds ? { naturalCut: ranged(end => work(lessCut, { before: naturalBefore!, cut: flow(after[end])! })) } : {}),
    figures: {
      cfm50Before: cfm50, ...(tests.cfm50Assumed === 'yes' ? { cfm50Assumed: true } : {}), ...figure('ach50Before', changes(cfm50)), leakageAreaIn2: effectiveArea(cfm50, books), equivalentAreaIn2: equivalentArea(cfm50, books),
      ...areas, ...(floorFt2.length === 0 ? {} : { ceilingIn2: byFloor('bestIn2'), ceilingIn2Low: byFloor('minIn2'), ceilingIn2High: byFloor('maxIn2') }),
      ...(cut && after ? { cfm50CutLow: cut.cfm50.low, cfm50CutExpected: cut.cfm50.expected, cfm50CutHigh: cut.cfm50.high, cutCapped: cut.capped, cfm50After: after.expected, ...figure('ach50After', changes(after.expected)) } : {}),
      ...figure('naturalCfmBefore', naturalBefore), ...figure('naturalCfmAfter', naturalAfter), ...figure('naturalAchBefore', naturalBefore && changes(naturalBefore)), ...figure('naturalAchAfter', naturalAfter && changes(naturalAfter)),
      ...(winds?.n ? { nFactor: winds.n, naturalByNCfmBefore: work(naturalByN, { cfm50, n: winds.n }), ...(after ? { naturalByNCfmAfter: work(naturalByN, { cfm50: after.expected, n: winds.n }) } : {}) } : {}),
      ...(cut && heightFt ? { stack: stackOf(job, cfm50, cut.cfm50.expected, heightFt, books) } : {}), ...(fresh.figures ? { ventilationCfm: (fresh.figures as { fanCfm: Quantity }).fanCfm } : {}), ...ducts,
    },
  }
}

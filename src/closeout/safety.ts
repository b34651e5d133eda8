// What has to be safe before anybody leaves: flames tested after the work, gates that were open, mends with their proof.
import type { Estimate } from '../estimate/estimate.ts'
import { flameLimits } from '../estimate/tasks/tests.ts'
import type { Finding } from '../findings/finding.ts'
import type { JobFile } from '../job/job-file.ts'
import { applianceName, drafts, takesRoomAir, type Appliance } from '../scope/appliances.ts'
import { coLevels } from '../scope/hazards/carbon-monoxide.ts'
import { TIGHTENING } from '../scope/kind.ts'
import type { Quantity } from '../units/quantity.ts'
import type { CloseoutFile } from './format.ts'
import type { DueOut } from './output.ts'

type Test = NonNullable<CloseoutFile['combustion']>[number]

export interface Safety {
  readonly stops: readonly DueOut[]
  readonly open: readonly DueOut[]
  readonly findings: readonly Finding[]
  readonly combustion: readonly object[]
  readonly mends: readonly { readonly id: string; readonly code: string; readonly where: string; readonly why: string; readonly on?: string; readonly by?: string; readonly proof?: string }[]
}

const readings = ({ of: _, ...test }: Test): object => test

interface AtMost { readonly pulledDownPa?: Quantity; readonly spillageSeconds?: Quantity; readonly flueCoPpm?: Quantity }
/** Readings that a pass does not go with. */
const overLimits = (test: Test, most: AtMost): string[] => ([['pulledDownPa', 'Pa', 'pulled down by'], ['spillageSeconds', 's', 'spillage ended at'], ['flueCoPpm', 'ppm', 'flue gas holds']] as const).flatMap(([key, unit, says]) => {
  const has = test[key], limit = most[key]?.value
  return has !== undefined && limit !== undefined && has > limit ? [`${says} ${has} ${unit} where ${limit} are borne`] : []
})

/** The house was tightened or covered: sealed, ducts closed, fill blown. */
const tightened = ({ steps }: Estimate): boolean => steps.some(s => TIGHTENING.includes(s.phase))

function flames(file: CloseoutFile, job: JobFile, estimate: Estimate) {
  const { books } = estimate, stops: DueOut[] = [], open: DueOut[] = [], findings: Finding[] = [], co = coLevels(books)
  const days = file.days ?? [], last = days.at(-1), all = job.appliances ?? [], drafting = all.filter(drafts)
  const combustion = (tightened(estimate) ? drafting : []).map((a: Appliance) => {
    const what = `${applianceName(a)} (${a.at})`, limits = flameLimits(a, drafting, books)
    const mine = (file.combustion ?? []).map((test, i) => ({ test, at: `/combustion/${i}` })).filter(t => t.test.of === a.id)
    const dated = mine.filter(t => t.test.on !== undefined && t.test.result !== undefined).sort((x, y) => (x.test.on! < y.test.on! ? -1 : x.test.on! > y.test.on! ? 1 : 0))
    const after = last === undefined ? undefined : dated.filter(t => t.test.on! >= last).at(-1)
    const atMost: AtMost = { ...(limits.vent ? { pulledDownPa: limits.vent.pulledDownPa, spillageSeconds: after?.test.vent === 'cold' ? limits.vent.spillageCold : limits.vent.spillageWarm } : {}), ...(limits.flueCoPpm ? { flueCoPpm: limits.flueCoPpm } : {}) }
    const due = (code: string, why: string, mend: string): void => { stops.push({ code, of: a.id, what: `the ${what}`, why, mend }) }
    const repair = 'appliance off now; a licensed HVAC contractor or the utility repairs it; a passed test before anybody uses it'
    if (!after) due('combustion-not-tested', last === undefined ? 'no day of the work is written, so no test can be known to follow it' : dated.length > 0 ? `its last test is of ${dated.at(-1)!.test.on!}, and the house was tightened until ${last}` : 'nobody has tested it since the house was tightened', 'a worst-case combustion test before the crew leaves; until it passes the appliance stays off')
    else if (after.test.result === 'fail') due('combustion-failed', `it failed its test of ${after.test.on!}`, repair)
    else {
      const over = overLimits(after.test, atMost)
      if (over.length > 0) due('reading-over-limit', `its test is called passed, and ${over.join(', ')}`, repair)
    }
    // A later test does not undo a reading that drives people out of the rooms.
    const air = after?.test.roomCoPpm
    if (air !== undefined && air >= co.off.value) due('carbon-monoxide', `${air} ppm of carbon monoxide in the room`, air >= co.out.value ? 'everybody out; call emergency services from outdoors' : 'appliances off, windows open, call the utility')
    else if (air !== undefined && air >= co.note.value) open.push({ code: 'carbon-monoxide-low', of: a.id, what: `${air} ppm of carbon monoxide beside the ${what}`, why: 'something burns badly or spills', mend: 'find its source, and test again' })
    const during = dated.filter(t => t !== after && (last === undefined || t.test.on! < last)), left = days.slice(0, -1).filter(d => !dated.some(t => t.test.on === d && t.test.result === 'pass'))
    if (left.length > 0) findings.push({ code: 'left-overnight-untested', severity: 'warning', path: '/days', says: `no passed test of the ${what} on ${left.join(', ')}`, why: 'a house that was tightened that day was left overnight untested', mend: 'write the test where there was one; test at the end of each day that changes shell, ducts or fans' })
    return { id: a.id, what: applianceName(a), at: a.at, atMost, ...(a.test ? { before: { result: a.test.result, on: a.test.on, by: a.test.by } } : {}), during: during.map(t => readings(t.test)), ...(after ? { after: readings(after.test) } : {}) }
  })
  for (const a of all) if (takesRoomAir(a) && !drafts(a) && tightened(estimate)) findings.push({ code: 'fire-not-testable', severity: 'note', path: '/combustion', says: `the ${applianceName(a)} (${a.at})`, why: 'no draft test proves an open fire', mend: 'leave the owner the signed instruction, and an alarm beside it' })
  return { stops, open, findings, combustion }
}

/** What a signed job left open, as the close-out answers it. */
export function safety(file: CloseoutFile, job: JobFile, estimate: Estimate): Safety {
  const { stops, open, findings, combustion } = flames(file, job, estimate)
  const { gates } = estimate.out
  for (const g of gates) if (g.open && g.state === 'hold' && estimate.steps.length > 0) stops.push({ code: 'gate-open', of: g.id, what: `${g.id}, ${g.where}`, why: `work was done while this was shut: ${g.why}`, mend: `${g.clearedBy}; written in the job file` })
  const mends = gates.filter(g => g.open && g.state === 'mend' && estimate.steps.some(s => s.id === g.clearedByTask)).map(g => {
    const closed = (file.mends ?? []).find(m => m.gate === g.id)
    const missing = [closed?.on === undefined && 'day', closed?.by === undefined && 'name', closed?.proof === undefined && 'photo or paper'].filter(Boolean)
    if (missing.length > 0) open.push({ code: 'mend-not-proved', of: g.id, what: `${g.id}, ${g.where}`, why: `${closed ? `missing: ${missing.join(', ')}` : 'nobody says that it was closed'}: ${g.why}`, mend: `open it up and look; then write it under mends: with ${g.clearedBy}` })
    return { id: g.id, code: g.code, where: g.where, why: g.why, ...(closed?.on === undefined ? {} : { on: closed.on }), ...(closed?.by === undefined ? {} : { by: closed.by }), ...(closed?.proof === undefined ? {} : { proof: closed.proof }) }
  })
  return { stops, open, findings, combustion, mends }
}

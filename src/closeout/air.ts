// Tests before and after, side by side; what is gone against what was expected; and the fresh air that the tighter house asks for.
import { airChanges } from '../calc/air.ts'
import { cutShare, measuredCut } from '../calc/proof.ts'
import { freshAirAgain } from '../estimate/energy/air.ts'
import type { Estimate } from '../estimate/estimate.ts'
import type { Finding } from '../findings/finding.ts'
import type { JobFile } from '../job/job-file.ts'
import { given, work, type Quantity } from '../units/quantity.ts'
import type { CloseoutFile } from './format.ts'
import type { DueOut } from './output.ts'

export interface AirAfter { readonly air?: object; readonly ventilation?: object; readonly open: readonly DueOut[]; readonly findings: readonly Finding[] }

type Figures = Readonly<Record<string, unknown>>
const KEYS = ['cfm50', 'cfm25Total', 'cfm25Outside'] as const

/** A flow before and after. */
const pair = (before: Quantity<'cfm'> | undefined, after: Quantity<'cfm'> | undefined): object | undefined => (before === undefined && after === undefined ? undefined : {
  ...(before ? { in: before } : {}), ...(after ? { out: after } : {}), ...(before && after ? { less: work(measuredCut, { before, after }), lessPct: work(cutShare, { before, after }) } : {}) })

export function airAfter(file: CloseoutFile, job: JobFile, estimate: Estimate): AirAfter {
  const open: DueOut[] = [], findings: Finding[] = [], { tests: before, house } = job, after = file.tests, { books } = estimate
  const planned = (id: string): boolean => estimate.steps.some(s => s.id === id)
  const missing = (what: string, key: string): void => { open.push({ code: 'test-missing', of: key, what, why: 'the job asks for it after the work', mend: `make it, and write ${key}: under tests:` }) }
  if (planned('blower-door-out') && after?.cfm50 === undefined) missing('blower door after the work', 'cfm50')
  if (planned('duct-test') && after?.cfm25Total === undefined && after?.cfm25Outside === undefined) missing('duct test after the work', 'cfm25Total')

  const cfm = (key: (typeof KEYS)[number]) => [before?.[key] === undefined ? undefined : given(before[key], 'cfm', `/tests/${key}`), after?.[key] === undefined ? undefined : given(after[key], 'cfm', `/tests/${key}`)] as const
  const [in50, out50] = cfm('cfm50'), leakage = estimate.out.airLeakage as Figures | undefined
  const volumeFt3 = house.volumeFt3 === undefined ? undefined : given(house.volumeFt3, 'ft3', '/house/volumeFt3'), changes = (flow: Quantity<'cfm'> | undefined) => (flow && volumeFt3 ? work(airChanges, { cfm: flow, volumeFt3 }) : undefined)
  const low = leakage?.['cfm50CutLow'] as Quantity<'cfm'> | undefined, high = leakage?.['cfm50CutHigh'] as Quantity<'cfm'> | undefined
  const guessed = before?.cfm50Assumed === 'yes', alike = after?.sameSetUp === 'yes'
  let against: 'within' | 'less' | 'more' | undefined
  if (in50 && out50 && guessed) findings.push({ code: 'no-pair-of-tests', severity: 'note', path: '/tests/cfm50', says: 'CFM50 before the work is assumed', why: 'a guess and a reading are no pair', mend: 'tell the owner what it leaks now, and not how much less' })
  else if (in50 && out50 && !alike) findings.push({ code: 'no-pair-of-tests', severity: 'warning', path: '/tests', says: 'nothing says that both tests had one set-up', why: 'doors, flues and fans set otherwise move CFM50 by more than sealing does', mend: 'write sameSetUp: yes where they had; else test again as before' })
  else if (in50 && out50) {
    const cut = work(measuredCut, { before: in50, after: out50 }).value
    if (low && high) against = cut < low.value ? 'less' : cut > high.value ? 'more' : 'within'
    if (cut <= 0) findings.push({ code: 'not-tighter', severity: 'warning', path: '/tests/cfm50', says: `CFM50 ${in50.value} before, ${out50.value} after`, why: 'a sealed house does not leak as before', mend: 'look for an opening that was missed or made, such as a lid that does not shut; test again' })
    else if (against === 'less') findings.push({ code: 'cut-less-than-expected', severity: 'note', path: '/tests/cfm50', says: `${cut} CFM50 less; ${Math.round(low!.value)} to ${Math.round(high!.value)} were expected`, why: 'openings were missed, or the ceiling leaked less than its list', mend: 'feel along hatch, plates and chases with the blower door on' })
    else if (against === 'more') findings.push({ code: 'cut-more-than-expected', severity: 'note', path: '/tests/cfm50', says: `${cut} CFM50 less; ${Math.round(low!.value)} to ${Math.round(high!.value)} were expected`, why: 'more than the list was closed, or the set-ups differ', mend: 'fresh air and flames go by the reading: look at both again' })
  }
  const limit = estimate.plan.ductTarget
  if (limit && after?.cfm25Total !== undefined && after.cfm25Total > limit.value) open.push({ code: 'ducts-leak', of: 'cfm25Total', what: `the ducts, ${after.cfm25Total} CFM25`, why: `${Math.round(limit.value)} are wanted at most`, mend: 'seal on, air handler outwards, and test again' })

  const zone = { ...(before?.zonePa === undefined ? {} : { in: before.zonePa }), ...(after?.zonePa === undefined ? {} : { out: after.zonePa }) }
  const achIn = changes(in50), achOut = changes(out50)
  const air = after === undefined ? undefined : {
    ...(after.on === undefined ? {} : { on: after.on }), ...(after.by === undefined ? {} : { by: after.by }), ...(after.sameSetUp === undefined ? {} : { sameSetUp: alike }),
    ...Object.fromEntries(KEYS.flatMap(key => { const p = guessed && key === 'cfm50' ? pair(undefined, out50) : pair(...cfm(key)); return p ? [[key, p]] : [] })),
    ...(achIn || achOut ? { ach50: { ...(achIn && !guessed ? { in: achIn } : {}), ...(achOut ? { out: achOut } : {}) } } : {}), ...(Object.keys(zone).length > 0 ? { zonePa: zone } : {}),
    ...(low && high ? { predicted: { cfm50CutLow: low, cfm50CutExpected: leakage!['cfm50CutExpected'], cfm50CutHigh: high } } : {}), ...(against ? { against } : {}), ...(limit ? { ductCfm25Target: limit } : {}),
  }

  // Fresh air goes by what was measured; without a test out by the tight end of what was expected.
  const again = out50 ? freshAirAgain(job, out50, after?.fanCfm, books) : undefined, was = estimate.out.ventilation as Figures | undefined
  const figures = again?.figures ?? was
  // A fan brings whole cfm, so what is missing is rounded up, here and in all that is read from it.
  const up = (of: Figures): number => Math.ceil((of['fanCfm'] as Quantity).value)
  const ventilation = figures && { ...figures, fanCfm: up(figures), ...(was && again?.figures ? { fanCfmPredicted: up(was) } : {}), measured: again?.figures !== undefined, ...(file.freshAirChoice === undefined ? {} : { choice: file.freshAirChoice }) }
  if (figures && figures['fanNeeded'] === true && file.freshAirChoice === undefined) {
    open.push({ code: 'fresh-air-short', what: `${up(figures)} cfm of fresh air missing by ASHRAE ${String(figures['standard'])}`, why: again ? `the house was measured at ${out50!.value} CFM50` : 'by what the sealing was expected to bring; nobody has measured it since', mend: 'a fan that runs all the time, flames tested with it on; or the owner’s signed choice, its place written as freshAirChoice:' })
  }
  return { ...(air ? { air } : {}), ...(ventilation ? { ventilation } : {}), open, findings }
}

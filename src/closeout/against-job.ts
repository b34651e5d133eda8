// What only the job can say of its close-out: names that it has not, days before its survey.
import type { Estimate } from '../estimate/estimate.ts'
import type { Finding } from '../findings/finding.ts'
import { nearest } from '../findings/suggest.ts'
import type { JobFile } from '../job/job-file.ts'
import type { CloseoutFile } from './format.ts'
import { filledAreas, type AreaProof } from './proof.ts'

/** Faults between the two files. */
export function againstJob(file: CloseoutFile, job: JobFile, estimate: Estimate): Finding[] {
  const out: Finding[] = []
  const say = (code: string, path: string, says: string, why: string, mend: string, severity: Finding['severity'] = 'error'): void => { out.push({ code, severity, path, says, why, mend }) }
  const named = (code: string, path: string, key: string, name: string, names: readonly string[], what: string): boolean => {
    if (names.includes(name)) return true
    const near = nearest(name, names)
    say(code, path, `${key}: ${name}`, names.length === 0 ? `the job has no ${what}` : `the job has no ${what} of that name`, near ? `did you mean ${near}?` : names.length === 0 ? 'take the entry out' : `write ${names.length > 1 ? 'one of ' : ''}${names.join(', ')}`)
    return false
  }
  const { books, steps } = estimate, filled = filledAreas(estimate).map(a => a.id), all = job.areas.map(a => a.id)
  for (const [i, a] of (file.areas ?? []).entries()) {
    const at = `/areas/${i}`
    if (!named('area-unknown', `${at}/in`, 'in', a.in, all, 'area')) continue
    if (!filled.includes(a.in)) { say('area-gets-no-fill', `${at}/in`, `in: ${a.in}`, 'the signed job puts nothing there', filled.length === 0 ? 'take the entry out' : `write ${filled.length > 1 ? 'one of ' : ''}${filled.join(', ')}; what was done beyond the job is a change that the customer signs`); continue }
    const loose = estimate.plan.taken.areas.find(x => x.id === a.in)!.measure
    if (a.product !== undefined && loose.figures['battR'] === undefined) named('product-unknown', `${at}/product`, 'product', a.product, books.blownItems, 'blown product in its price book')
    if (loose.chart === undefined && a.markersIn !== undefined) say('area-has-no-markers', `${at}/markersIn`, `markersIn of ${a.in}`, 'no loose fill lies open there', 'take the key out')
    const old = loose.chart?.keptIn.value ?? 0
    for (const [n, v] of (a.markersIn ?? []).entries()) if (v < old - 1e-9) say('marker-under-old-fill', `${at}/markersIn/${n}`, `marker ${n + 1} reads ${v} in`, `the old fill that stays is ${Number(old.toFixed(2))} in deep: readings go from the ceiling plane to the top of all fill`, `write the reading of the ruler, not the new fill alone`, 'warning')
  }
  const appliances = (job.appliances ?? []).map(a => a.id), mends = estimate.out.gates.filter(g => g.state === 'mend').map(g => g.id)
  for (const [i, t] of (file.combustion ?? []).entries()) named('appliance-unknown', `/combustion/${i}/of`, 'of', t.of, appliances, 'appliance')
  for (const [i, m] of (file.mends ?? []).entries()) named('mend-unknown', `/mends/${i}/gate`, 'gate', m.gate, mends, 'mend')
  for (const [i, h] of (file.hours ?? []).entries()) named('task-unknown', `/hours/${i}/task`, 'task', h.task, steps.map(s => s.id), 'task')
  const items = [...new Set([...estimate.materials.map(m => m.product.item)])]
  for (const [i, m] of (file.materials ?? []).entries()) {
    if (books.blown(m.item)) { if (m.used !== undefined) say('bags-stand-with-areas', `/materials/${i}/item`, `item: ${m.item}`, 'bags are counted area by area', 'write them as bags: under areas; here only a price that was paid') }
    else if (!books.has(m.item)) named('item-unknown', `/materials/${i}/item`, 'item', m.item, items, 'material, nor its price book a product,')
  }
  const surveyed = job.job.surveyedOn
  for (const [i, d] of (file.days ?? []).entries()) if (d < surveyed) say('day-before-survey', `/days/${i}`, `the day ${d}`, `the house was surveyed on ${surveyed}`, 'write the day it was')
  if (job.job.status !== 'signed') say('job-not-signed', '/job', `job ${job.job.id} is ${job.job.status}`, 'a close-out answers for what was signed', 'write status: signed in the job file, and change nothing else there', 'note')
  return out
}

/** What the proof shows of the ceiling. */
export const overLoad = (areas: readonly AreaProof[]): Finding[] => areas.flatMap(({ id, entries, figures }): Finding[] => {
  const load = figures['ceilingLoadPsf'] as { value: number } | undefined, limit = figures['ceilingLimitPsf'] as { value: number } | undefined
  return load && limit && load.value > limit.value + 1e-9 ? [{ code: 'ceiling-over-limit', severity: 'warning', path: `${entries[0]?.at ?? '/areas'}/bags`, says: `${load.value.toFixed(2)} psf on the ceiling of ${id}`, why: `the board carries ${limit.value} psf at this spacing`, mend: 'look for sag from below, now and in a month; take fill off where it sags' }] : []
})

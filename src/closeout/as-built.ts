// One closed job, from its close-out, its job and its estimate: proof, safety, air, cost and the papers.
import type { Estimate } from '../estimate/estimate.ts'
import { rounded } from '../estimate/to-json.ts'
import { placed, sentence, sorted, type Finding, type Places } from '../findings/finding.ts'
import type { Job } from '../job/job.ts'
import { againstJob, overLoad } from './against-job.ts'
import { airAfter } from './air.ts'
import { jobCost } from './cost.ts'
import type { CloseoutFile } from './format.ts'
import { AS_BUILT_FORMAT, type AsBuiltOut, type DueOut, type State } from './output.ts'
import { closingPapers, missingWords } from './papers.ts'
import { proofs, type AreaProof } from './proof.ts'
import { safety } from './safety.ts'

export interface AsBuilt { readonly out: AsBuiltOut; readonly findings: readonly Finding[] }

const missing = (p: AreaProof): boolean => (p.bagsMissing?.value ?? 0) > 1e-9
const MENDS: Readonly<Record<AreaProof['way'], (p: AreaProof) => string>> = {
  blown: p => p.proof === 'not-shown' ? 'write bags, and the reading of each marker, under areas:' : missing(p) ? 'blow the missing bags, level, and read each marker again' : 'level and top up, and read each marker again',
  packed: p => p.proof === 'not-shown' ? 'write its bags under areas:' : 'pack the missing bags through the same holes',
  laid: () => 'write it under areas:',
}

/** What keeps an area from its proof. */
const areaDue = (p: AreaProof): DueOut[] => (p.proof === 'proved' ? [] : [{ code: p.proof === 'short' ? 'area-short' : 'area-not-shown', of: p.id, what: p.id, why: p.why.join('; '),
  mend: MENDS[p.way](p) }])

/**
 * @param places of the close-out
 * @returns findings between the two files; where one of them is an error, nothing is proved
 */
export function asBuilt(file: CloseoutFile, read: readonly Finding[], places: Places, job: Job, estimate: Estimate): AsBuilt | { readonly findings: readonly Finding[] } {
  const { data } = job, faults = againstJob(file, data, estimate)
  if (faults.some(f => f.severity === 'error')) return { findings: sorted([...read, ...faults], places) }
  const areas = proofs(file, estimate), safe = safety(file, data, estimate), air = airAfter(file, data, estimate), papers = closingPapers(file, areas, estimate)
  const findings = sorted([...read, ...faults, ...overLoad(areas), ...safe.findings, ...air.findings], places)
  const days = file.days ?? [], unsigned: DueOut[] = papers.receipt.missing.length > 0 ? [{ code: 'receipt-not-whole', what: 'the receipt', why: `missing: ${missingWords(papers.receipt.missing)}`, mend: 'the customer gets a dated, signed receipt with all of it (16 CFR 460.17)' }] : []
  const open = [...areas.flatMap(areaDue), ...safe.open, ...air.open, ...(days.length === 0 ? [{ code: 'days-missing', what: 'the days of the work', why: 'no paper can be dated by them', mend: 'write them under days:' }] : []), ...unsigned]
  const state: State = safe.stops.length > 0 ? 'stop' : open.length > 0 ? 'open' : 'proved'
  const { installer = {} } = file, { out: { job: head, basis } } = estimate
  const out = rounded({
    format: AS_BUILT_FORMAT, job: { ...head, file: job.file, ...(data.job.address === undefined ? {} : { address: data.job.address }) }, basis, state, stops: safe.stops, open, days, installer,
    areas: areas.map(p => ({ id: p.id, kind: p.area.measure.figures['kind'], way: p.way, proof: p.proof, why: p.why, product: p.product.item, productName: p.product.name, ...(p.entries.find(e => e.entry.maker) ? { maker: p.entries.find(e => e.entry.maker)!.entry.maker } : {}), ...(p.entries.find(e => e.entry.machine) ? { machine: p.entries.find(e => e.entry.machine)!.entry.machine } : {}), coveredFt2: p.coveredFt2, ...p.figures })),
    mends: safe.mends, ...(air.air ? { air: air.air } : {}), ...(air.ventilation ? { ventilation: air.ventilation } : {}), combustion: safe.combustion, ...papers, cost: jobCost(file, estimate),
    findings: findings.map(f => ({ code: f.code, severity: f.severity, line: placed(f, places).line, path: f.path, message: sentence(f) })),
  }) as AsBuiltOut
  return { out, findings }
}

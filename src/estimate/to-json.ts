// From linked figures to plain data: rounded on the way out only, by the name of the key.
import { placed, sentence, type Finding } from '../findings/finding.ts'
import type { Job } from '../job/job.ts'
import { halfUp } from '../units/money.ts'
import { isQuantity } from '../units/quantity.ts'
import type { Estimate } from './estimate.ts'
import type { EstimateOut } from './output.ts'

/** Step to which a figure is printed, by the end of its name. */
const DIGITS: readonly (readonly [RegExp, number])[] = [
  [/^(unitPrice|listPrice|wage)Cents$/, 1e-6], [/Cents(Low|Expected|High)?$/, 1], [/Ft2$/, 0.1], [/Psf$|Gal$/, 0.001], [/^u[A-Z]/, 0.0001], [/^r(Before|After)$/, 0.01], [/Pct$/, 0.1], [/^days$/, 0.5], [/^ach|Ach/, 0.01], [/Years(Low|Expected|High)?$|^nFactor$/, 0.1], [/Share$/, 0.001], [/[a-z]F$/, 0.1], [/^heatingBtu/, 1000], [/Btu|Cfm|^cfm|^ratio$|Kwh|Lb|fuelUnits|^hdd|^cdd/, 1],
  [/Ft$|Ft(Before|After)$|Pa$|Pa(Before|After)$|In$|In2$|In2(Before|After|Low|High)$|R$|Hours(Low|Expected|High)?$|^(in|out|less)$|Pcf$|^bags(Planned|Needed|Missing)?$|^pack$|^quantity$|^needed$|^charged$|^packs$|^fromStock$/, 0.01],
]
const COUNTS = 1e-6

/** The step to which a figure of this name is printed, half up. */
export function stepOf(name: string): number {
  let step = steps.get(name)
  if (step === undefined) steps.set(name, step = DIGITS.find(([ends]) => ends.test(name))?.[1] ?? COUNTS)
  return step
}
/** Of the names met, which are those of the output's keys. */
const steps = new Map<string, number>()

export const printed = (name: string, value: number): number => halfUp(value, stepOf(name))

/** Linked figures as plain data, rounded by their names. */
export function plain(value: unknown, name: string): unknown {
  if (isQuantity(value)) return printed(name, value.value)
  if (Array.isArray(value)) return value.map(v => plain(v, name))
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, plain(v, name === 'byPhase' ? 'personHours' : k)]))
  return value
}

/** Linked figures as plain numbers, each to the digits of its name. */
export const rounded = (value: unknown): unknown => plain(value, '')

/** The estimate as `lidwork-estimate/1`. */
export function estimateJson(made: Estimate, job: Job): EstimateOut {
  const line = (path: string): number => placed({ path } as Finding, job.places).line
  const { gates, ...rest } = made.out
  const { format, job: head, basis, revisions, verdict, ...after } = plain(rest, '') as Omit<EstimateOut, 'gates' | 'findings' | 'assumptions'>
  return {
    format, job: head, basis, ...(revisions ? { revisions } : {}), verdict,
    gates: gates.map(g => ({
      id: g.id, code: g.code, state: g.state, open: g.open, stops: { phases: [...g.stops.phases], places: [...g.stops.places] }, where: g.where, why: g.why, clearedBy: g.clearedBy,
      ...(g.clearedByTask !== undefined && made.steps.some(s => s.id === g.clearedByTask) ? { clearedByTask: g.clearedByTask } : {}),
      ...(g.clearance ? { clearance: { by: g.clearance.by, on: g.clearance.on, paper: g.clearance.paper, kind: g.clearance.kind } } : {}), line: line(g.path), path: g.path,
    })),
    ...after,
    findings: made.findings.filter(f => f.severity !== 'error').map(f => ({ code: f.code, severity: f.severity as 'warning' | 'note', line: line(f.path), path: f.path, message: sentence(f) })),
    assumptions: made.assumed.map(q => {
      const from = q.from as Extract<typeof q.from, { is: 'assumed' }>
      return { id: from.id, what: from.what, value: q.value, unit: from.per === undefined ? q.unit : `h/${from.per}`, why: from.why }
    }),
  }
}

// Gates: their names, and which papers in the file open them.
import { byText, type Finding } from '../../findings/finding.ts'
import type { JobFile } from '../../job/job-file.ts'
import { nearest } from '../../findings/suggest.ts'
import type { Gate } from '../../scope/kind.ts'

export type Clearance = NonNullable<JobFile['clearances']>[number]

/** A gate with its name, and the paper that opens it. */
export interface NamedGate extends Gate {
  readonly id: string
  readonly clearance?: Clearance
  /** No paper in the file opens it. A mend stays open until close-out and shuts only what its own task has not yet closed. */
  readonly open: boolean
}

function named(gates: readonly Gate[]): (Gate & { id: string })[] {
  const seen = new Map<string, number>()
  return gates.map(g => {
    const alone = g.of !== undefined || g.in === 'house'
    const key = g.of !== undefined ? `${g.code}-${g.of}` : alone ? g.code : `${g.code}-${g.in}`, n = (seen.get(key) ?? 0) + 1
    seen.set(key, n)
    return { ...g, id: alone && n === 1 ? key : `${key}-${n}` }
  })
}

const fits = (c: Clearance, g: Gate): boolean => c.gate === g.code && (c.in === undefined || c.in === g.in || g.in === 'house') && (c.of === undefined || c.of === g.of)

/** Which gates a paper opens: by code and place; neither place means all of that code. A paper that opens none, or may not, is an error. */
export function opened(gates: readonly Gate[], clearances: readonly Clearance[], surveyedOn: string, company: string): { gates: NamedGate[]; findings: Finding[] } {
  const findings: Finding[] = []
  const papers = clearances.map((c, i) => ({ c, path: `/clearances/${i}`, of: gates.filter(g => fits(c, g)) }))
  const valid = papers.filter(({ c, path, of }) => {
    const say = (code: string, at: string, says: string, why: string, mend: string): false => { findings.push({ code, severity: 'error', path: `${path}${at}`, says, why, mend }); return false }
    if (of.length === 0) {
      const codes = [...new Set(gates.map(g => g.code))], near = nearest(c.gate, codes)
      return say('clearance-opens-nothing', '/gate', `paper for gate ${c.gate}${c.in ? ` in ${c.in}` : ''}${c.of ? ` of ${c.of}` : ''}`, 'no such gate is shut in this job', near && near !== c.gate ? `did you mean ${near}?` : codes.length > 0 ? `gates of this job: ${codes.join(', ')}` : 'this job has no gates: take the paper out')
    }
    const allowed = of.flatMap(g => g.clearable ?? [])
    const paper = allowed.find(a => a.kind === c.kind)
    if (!paper) return say('clearance-wrong-kind', '/kind', `${c.kind} for gate ${c.gate}`, 'that paper does not open this gate', allowed.length > 0 ? `write one of: ${[...new Set(allowed.map(a => a.kind))].join(', ')}` : `it opens with: ${of[0]!.clearedBy}`)
    if (paper.license && !c.license) return say('clearance-without-license', '', `${c.kind} by ${c.by}`, 'this paper counts only from a licensed firm', 'write license: with its number')
    if (paper.outside && c.by.trim().toLowerCase() === company.trim().toLowerCase()) return say('clearance-by-own-company', '/by', `${c.kind} by ${c.by}`, 'the company may not open this gate for itself', 'get the paper from a firm of that trade')
    if (c.on < surveyedOn) return say('clearance-before-survey', '/on', `${c.kind} of ${c.on}`, `it is older than the survey of ${surveyedOn}, which found the gate shut`, 'get a paper dated after the survey')
    const since = of.map(g => g.since ?? '').sort(byText).at(-1)!
    if (c.on <= since) return say('clearance-before-failure', '/on', `${c.kind} of ${c.on}`, `the test of ${since} failed, and this paper is not later`, 'get a passed test after the repair')
    return true
  })
  return {
    findings,
    gates: named(gates).map(g => {
      const paper = valid.find(p => fits(p.c, g) && g.clearable?.some(a => a.kind === p.c.kind))?.c
      return paper ? { ...g, clearance: paper, open: false } : { ...g, open: true }
    }),
  }
}

// The close-out to fill in: every area, test, mend, task and material of the estimate, with what the estimate says beside it.
import { BLANK, CLOSEOUT_FORMAT, closeoutSchema } from '../../closeout/format.ts'
import { depth, phaseWords } from '../terminal/words.ts'
import type { EstimateOut } from '../../estimate/output.ts'
import type { JobFile } from '../../job/job-file.ts'
import { applianceName, drafts } from '../../scope/appliances.ts'
import { capital, head, node, section, typed, wrapped, type Node } from '../commented.ts'

/** The name under which the file finds its schema: beside it. */
export const CLOSEOUT_SCHEMA_BESIDE = 'lidwork-closeout.schema.json'

const COMMENT = 60
/** A line to fill in, and what the estimate says of it. */
const asked = (line: string, comment: string): string => (comment === '' ? line : `${line.padEnd(COMMENT)}  # ${comment.replaceAll('\n', ' ')}`)
const says = (key: string): string => capital(node(closeoutSchema()).properties![key]!.description!)
const inside = (key: string): Node => { const n = node(closeoutSchema()).properties![key]!; return n.items ?? n }
/** What the keys mean, from the schema. */
const meanings = (key: string): string[] => Object.entries(inside(key).properties ?? {}).flatMap(([k, at]) => wrapped(`${k}: ${at.description ?? ''}${at.enum ? ` (${at.enum.join(', ')})` : ''}`, ''))
const list = (key: string, lines: readonly string[]): string[] => (lines.length === 0 ? [`# ${key}: []`] : [`${key}:`, ...lines])
const plainText = (text: string): string => typed(text)
const ruler = (topIn: number | undefined): string => (topIn === undefined ? '' : `, to ${depth(topIn)} in on the ruler`)

/** @param jobFile path of the job file from the folder of the close-out */
export function newCloseout(e: EstimateOut, job: JobFile, jobFile: string): string {
  const filled = e.areas.filter(a => a.product !== undefined)
  const areas = filled.map(a => asked(`  - {in: ${a.id}, product: ${a.product!}, maker: ${BLANK}, bags: ${BLANK}${a.markers === undefined ? a.chartR === undefined && a.packedR === undefined ? `, thicknessIn: ${BLANK}, labelR: ${BLANK}` : `, labelR: ${BLANK}` : `, markersIn: [${Array<string>(a.markers).fill(BLANK).join(', ')}]`}}`.replace(a.bags === undefined ? /, bags: ___/ : /$^/, ''),
    `${a.bags === undefined ? '' : `${a.bags} bags`}${ruler(a.topOfFillInitialIn)}${a.chartR === undefined ? '' : ` for R${a.interpolated ? ' ' : '-'}${a.chartR}`}`.replace(/^, /, '')))
  const tested = (job.appliances ?? []).filter(drafts), tasks = new Map(e.tasks.map(t => [t.id, t]))
  const combustion = e.tasks.some(t => t.id === 'test-combustion-out') ? tested.map(a => asked(`  - {of: ${a.id}, on: ${BLANK}, by: ${BLANK}, result: ${BLANK}, pulledDownPa: ${BLANK}, spillageSeconds: ${BLANK}, flueCoPpm: ${BLANK}, roomCoPpm: ${BLANK}}`, `${applianceName(a)}, ${a.at}: after the work`)) : []
  const mends = e.gates.filter(g => g.open && g.state === 'mend' && g.clearedByTask !== undefined && tasks.has(g.clearedByTask)).map(g => asked(`  - {gate: ${g.id}, on: ${BLANK}, by: ${BLANK}, proof: ${BLANK}}`, `${g.where}: ${tasks.get(g.clearedByTask!)!.proof}`))
  const bags = new Set(filled.flatMap(a => (a.bags === undefined ? [] : [a.product!])))
  const { tests } = job
  return [
    ...head(CLOSEOUT_SCHEMA_BESIDE),
    ...wrapped(`The close-out of ${e.job.id}: what happened. ${BLANK} stands for what is not filled in yet and counts as nothing. A line or key that is not needed goes out; the job file itself is not changed.`, ''),
    `format: ${CLOSEOUT_FORMAT}`,
    `job: ${plainText(jobFile)}`,
    asked(`days: [${BLANK}]`, `${says('days')}, as 2026-05-04`), '',
    section(says('installer'), [...meanings('installer'), `installer: {company: ${BLANK}, name: ${BLANK}, phone: ${BLANK}, signedOn: ${BLANK}}`]),
    section(says('areas'), [...meanings('areas'), ...list('areas', areas)]),
    section(says('laid'), [...meanings('laid'), '# laid:', `#   - {part: hatch panel, what: mineral wool batt, maker: ${BLANK}, areaFt2: ${BLANK}, thicknessIn: ${BLANK}, labelR: ${BLANK}}`]),
    section(says('flags'), [asked(`flags: ${BLANK}`, 'counted on the day')]),
    section(says('tests'), [...meanings('tests'), `tests: {on: ${BLANK}, by: ${BLANK}, sameSetUp: ${BLANK}${tests?.cfm50 !== undefined || tasks.has('blower-door-out') ? `, cfm50: ${BLANK}` : ''}${tests?.zonePa === undefined ? '' : `, zonePa: ${BLANK}`}${tests?.cfm25Total !== undefined || tasks.has('duct-test') ? `, cfm25Total: ${BLANK}` : ''}}`,
      ...(tests?.cfm50 === undefined ? [] : [`# before the work: ${tests.cfm50} CFM50${e.airLeakage?.cfm50CutLow === undefined ? '' : `; ${e.airLeakage.cfm50CutLow} to ${e.airLeakage.cfm50CutHigh!} less are expected`}`])]),
    section(says('combustion'), [...meanings('combustion'), ...list('combustion', combustion)]),
    section(says('mends'), list('mends', mends)),
    section(says('hours'), [...wrapped('Two people for one hour are 2. Write 0 for a task that was not done.', ''), ...list('hours', e.tasks.filter(t => t.personHours > 0).map(t => asked(`  - {task: ${t.id}, personHours: ${BLANK}}`, `${t.personHours}, ${phaseWords[t.phase]}`))), '# unplanned:', `#   - {what: second trip, personHours: ${BLANK}}`]),
    section(says('materials'), [...meanings('materials'), ...list('materials', e.materials.filter(m => !bags.has(m.item)).map(m => asked(`  - {item: ${m.item}, used: ${BLANK}}`, `${m.charged} ${m.buyUnit}`)))]),
    section('Money', [...['costs', 'soldFor', 'changes'].flatMap(key => wrapped(`${key}: ${node(closeoutSchema()).properties![key]!.description!}`, '')), `# costs: [{what: dump fee, of: other, paid: ${BLANK}}]`, ...(e.price.totalCents === undefined ? [] : [`# soldFor: ${e.price.totalCents / 100}`]), `# changes: [{what: ${BLANK}, price: ${BLANK}}]`, '# freshAirChoice: papers/fan-declined.pdf']),
  ].join('\n').trimEnd() + '\n'
}

// What stands on the work order, as plain data: the day's facts, what is shut, the tasks by phase with what they carry, the fill of each area, readings, photos.
import type { AreaOut, EstimateOut, GateOut, TaskOut, TestOut } from '../../estimate/output.ts'
import type { WayIn } from '../../scope/area-kind.ts'
import type { Phase } from '../../scope/kind.ts'
import { wayIn } from '../../scope/way-in.ts'

export interface CarryLine { readonly item: string; readonly name: string; readonly quantity: number; readonly unit: string; readonly packs: number; readonly buyUnit: string; readonly leftover: boolean }
export interface TaskLine {
  readonly task: TaskOut
  /** Where, in the estimator's words, with how many. */
  readonly where: readonly string[]
  /** The same with the sizes that the survey has. */
  readonly places: readonly string[]
  /** The areas, where it is not in all of them. */
  readonly areas: readonly string[]
  /** Steps that come first. */
  readonly after: readonly number[]
  /** Gates that it opens. */
  readonly opens: readonly GateOut[]
}
export interface PhaseGroup { readonly phase: Phase; readonly personHours: number; readonly carry: readonly CarryLine[]; readonly tasks: readonly TaskLine[] }

/** Bags, depth and what is filled in at the machine, for one area. */
export interface FillPlan {
  readonly area: AreaOut
  readonly product: string
  /** What the markers face. */
  readonly wayIn: WayIn
  /** Loose fill has a depth to read; packed and laid insulation has none. */
  readonly way: 'blown' | 'packed' | 'laid'
  readonly steps: readonly number[]
}

/** Distances of one kind, with where and at which steps they are kept. */
export interface KeepOffLine { readonly what: string; readonly distanceIn: number; readonly where: readonly string[]; readonly steps: readonly number[] }
/** Readings that are taken more than once stand in one row, a column to each step. */
export interface TestSheet {
  readonly tasks: readonly TaskOut[]
  readonly rows: readonly { readonly reading: TestOut; /** By task; absent where that step does not read it. */ readonly at: ReadonlyMap<string, TestOut> }[]
}

export interface WorkOrder {
  readonly shut: readonly GateOut[]
  readonly seen: readonly GateOut[]
  readonly left: readonly { readonly why: string; readonly what: readonly string[] }[]
  readonly keepOff: readonly KeepOffLine[]
  readonly groups: readonly PhaseGroup[]
  readonly fills: readonly FillPlan[]
  readonly bare: readonly AreaOut[]
  readonly tests: readonly TestSheet[]
  readonly proofs: readonly TaskLine[]
}

const RANK: Readonly<Record<GateOut['state'], number>> = { stop: 0, hold: 1, mend: 2, note: 2 }
const times = (where: string, n: number): string => (n > 1 ? `${where} (${n})` : where)
const unique = (all: readonly string[]): readonly string[] => [...new Set(all.filter(w => w !== ''))]

/** Where a task works, with sizes or without: the openings and ducts that name it, the eaves of its baffles. */
function whereOf({ id, areas, phase }: TaskOut, { sealing, ducts, eaves }: EstimateOut, sized: boolean): readonly string[] {
  if (phase === 'insulate') return []
  const openings = sealing.filter(s => s.tasks.includes(id)).map(s => `${times(s.where, s.count)}${sized && s.size !== undefined ? `: ${s.size}` : ''}`)
  const runs = ducts.filter(d => d.tasks.includes(id)).map(d => times(d.where === '' ? d.id : `${d.id}, ${d.where}`, d.count))
  const sides = areas.some(a => id === `baffles-${a}`) ? (eaves?.sides ?? []).filter(s => areas.includes(s.area) && s.baffles > 0).map(s => times(s.where, s.baffles)) : []
  return unique([...openings, ...runs, ...sides])
}

function groupsOf(e: EstimateOut): PhaseGroup[] {
  const step = new Map(e.tasks.map(t => [t.id, t.step])), name = new Map(e.materials.map(m => [m.item, m.name]))
  const line = (task: TaskOut): TaskLine => ({
    task, where: whereOf(task, e, false), places: whereOf(task, e, true), areas: task.areas.length < e.areas.length ? task.areas : [],
    after: task.after.flatMap(id => step.get(id) ?? []), opens: e.gates.filter(g => task.clears.includes(g.id)),
  })
  return [...new Set(e.tasks.map(t => t.phase))].map(phase => ({
    phase, personHours: e.labor.byPhase[phase] ?? 0, tasks: e.tasks.filter(t => t.phase === phase).map(line),
    carry: (e.carry.find(c => c.phase === phase)?.items ?? []).map(i => ({ ...i, name: name.get(i.item) ?? i.item })),
  }))
}

function keepOffOf(groups: readonly PhaseGroup[]): KeepOffLine[] {
  const by = new Map<string, { line: Omit<KeepOffLine, 'where' | 'steps'>; where: string[]; steps: number[] }>()
  for (const { task, where } of groups.flatMap(g => g.tasks)) for (const k of task.keepOff) {
    const key = `${k.distanceIn} ${k.what}`, known = by.get(key) ?? { line: k, where: [], steps: [] }
    by.set(key, known)
    known.where.push(...where)
    known.steps.push(task.step)
  }
  return [...by.values()].map(({ line, where, steps }) => ({ ...line, where: unique(where), steps })).sort((a, b) => a.steps[0]! - b.steps[0]! || b.distanceIn - a.distanceIn)
}

/** One reason, then all that it takes. */
function byReason(stopped: EstimateOut['stopped']): { why: string; what: string[] }[] {
  const by = new Map<string, { why: string; what: string[] }>()
  for (const { gate, why, title } of stopped) {
    const one = by.get(`${gate} ${why}`) ?? { why, what: [] }
    by.set(`${gate} ${why}`, one)
    one.what.push(title)
  }
  return [...by.values()]
}

interface Readings { readonly tasks: TaskOut[]; readonly rows: Map<string, { readonly reading: TestOut; readonly at: Map<string, TestOut> }> }
/** Steps that read the same things share a sheet. */
function testsOf({ tasks, tests }: EstimateOut): TestSheet[] {
  const key = (t: TestOut): string => JSON.stringify([t.of, t.where, t.reads, t.unit])
  const sheets: Readings[] = []
  for (const task of tasks) {
    const mine = tests.filter(t => t.task === task.id)
    if (mine.length === 0) continue
    const sheet: Readings = sheets.find(s => mine.some(t => s.rows.has(key(t)))) ?? { tasks: [], rows: new Map() }
    if (!sheets.includes(sheet)) sheets.push(sheet)
    sheet.tasks.push(task)
    for (const t of mine) {
      const row = sheet.rows.get(key(t)) ?? { reading: t, at: new Map<string, TestOut>() }
      sheet.rows.set(key(t), row)
      row.at.set(task.id, t)
    }
  }
  return sheets.map(s => ({ tasks: s.tasks, rows: [...s.rows.values()] }))
}

/** Kept open for good: a combustion-air opening, what the owner declined, what is not the crew's. */
const LEFT_OPEN = /open by the owner|^left open|left alone by the owner/

/** The work order of a house that may be worked on. @param e its estimate, whose verdict is not stop */
export function workOrderOf(e: EstimateOut): WorkOrder {
  const groups = groupsOf(e), name = new Map(e.materials.map(m => [m.item, m.name])), all = groups.flatMap(g => g.tasks)
  const kept = [...e.sealing, ...e.ducts].filter(s => LEFT_OPEN.test(s.method)).map(s => ({ what: `${times(s.where === '' ? s.id : s.where, s.count)}, in ${s.area}`, why: s.method }))
  const ways = e.sealing.map(s => ({ kind: s.kind, in: s.area }))
  const fills = e.areas.filter(a => a.product !== undefined).map((area): FillPlan => ({
    area, product: name.get(area.product!) ?? area.product!, wayIn: wayIn(ways, area.id) ?? 'hatch', way: area.initialDepthIn !== undefined ? 'blown' : area.packedR !== undefined ? 'packed' : 'laid',
    steps: e.tasks.filter(t => t.phase === 'insulate' && t.areas.includes(area.id)).map(t => t.step),
  }))
  return {
    shut: e.gates.filter(g => g.open && (g.state === 'stop' || g.state === 'hold')).sort((a, b) => RANK[a.state] - RANK[b.state]),
    seen: e.gates.filter(g => g.open && g.state === 'note'),
    left: [...kept.map(k => ({ why: k.why, what: [k.what] })), ...byReason(e.stopped)],
    keepOff: keepOffOf(groups), groups, fills, bare: e.areas.filter(a => a.product === undefined),
    tests: testsOf(e),
    proofs: all.filter(t => t.task.proof !== ''),
  }
}

// From the bytes of a close-out to its data: YAML, then the format, then dates and names that stand twice. What only the job can say is in against-job.ts.
import { readsCloseout, validateCloseout } from '../../dist/closeout-validators.mjs'
import { sorted, type Finding, type Places } from '../findings/finding.ts'
import { dateFault } from '../files/dates.ts'
import { few, readFormat, type Reader } from '../files/read.ts'
import { BLANK, CLOSEOUT_FORMAT, closeoutFormat, type CloseoutFile } from './format.ts'

export type CloseoutRead = { readonly findings: readonly Finding[]; readonly places: Places; readonly source: string } & ({ readonly ok: true; readonly data: CloseoutFile } | { readonly ok: false })

const reader: Reader = {
  kind: { format: CLOSEOUT_FORMAT, name: 'a close-out', holds: 'what happened in one job', start: 'begin with the file that lidwork closeout new HOUSE.job.yaml writes',
    one: ['a file is the close-out of one job', 'put the second in a file of its own'], mostBytes: 1_000_000, usual: 'some thousand' },
  validate: validateCloseout, reads: readsCloseout, blank: BLANK, schema: closeoutFormat,
}

type List = readonly Readonly<Record<string, unknown>>[]

function checks(file: CloseoutFile, blanks: readonly string[]): Finding[] {
  const out: Finding[] = []
  const say = (code: string, path: string, says: string, why: string, mend: string, severity: Finding['severity'] = 'error'): void => { out.push({ code, severity, path, says, why, mend }) }
  if (blanks.length > 0) say('not-filled-in', blanks[0]!, `${blanks.length} ${blanks.length === 1 ? 'place is' : 'places are'} not filled in yet, this is the first`, `${BLANK} counts as nothing`, 'fill in what is known; a line that is not needed goes out', 'note')
  const dates: [string, string | undefined][] = [...(file.days ?? []).map((d, i): [string, string] => [`/days/${i}`, d]), ['/installer/signedOn', file.installer?.signedOn], ['/tests/on', file.tests?.on],
    ...(file.combustion ?? []).map((t, i): [string, string | undefined] => [`/combustion/${i}/on`, t.on]), ...(file.mends ?? []).map((m, i): [string, string | undefined] => [`/mends/${i}/on`, m.on])]
  for (const [path, date] of dates) {
    const fault = date === undefined ? undefined : dateFault(date)
    if (fault) say(fault.code, path, fault.says, fault.why, fault.mend)
  }
  const once = (list: keyof CloseoutFile, key: string, with_?: string): void => {
    const seen = new Set<string>()
    for (const [i, entry] of ((file[list] ?? []) as unknown as List).entries()) {
      const name = JSON.stringify([entry[key], with_ === undefined ? '' : entry[with_] ?? ''])
      if (seen.has(name)) say('name-twice', `/${list}/${i}/${key}`, `${key}: ${String(entry[key])}`, `${list} has it already`, 'add the two up, or take one out')
      seen.add(name)
    }
  }
  once('areas', 'in', 'product')
  once('mends', 'gate')
  once('hours', 'task')
  once('materials', 'item')
  const days = file.days ?? []
  for (const [i, d] of days.entries()) if (i > 0 && d <= days[i - 1]!) say('days-not-in-order', `/days/${i}`, `the day ${d}`, 'it stands behind a later day, or twice', 'write each day once, in order')
  const last = days.at(-1), signed = file.installer?.signedOn
  if (last !== undefined && signed !== undefined && signed < last) say('signed-before-done', '/installer/signedOn', `signedOn: ${signed}`, `the crew worked until ${last}`, 'a receipt says what lies there: date it once it does')
  return out
}

/** Reads a close-out. */
export function readCloseout(bytes: Uint8Array | string): CloseoutRead {
  const found = readFormat<CloseoutFile>(bytes, reader)
  if (!found.ok) return found
  const { data, places, source } = found, all = sorted(checks(data, found.blanks), places), findings = few(all, places)
  return all.some(f => f.severity === 'error') ? { ok: false, findings, places, source } : { ok: true, data, findings, places, source }
}

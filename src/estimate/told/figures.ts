// The figures of one estimate by their names, and what somebody means who asks for one.
import { byText } from '../../findings/finding.ts'
import { nearest } from '../../findings/suggest.ts'
import type { Job } from '../../job/job.ts'
import { exactly, inputsOf, isQuantity, walk, type Quantity } from '../../units/quantity.ts'
import type { Estimate } from '../estimate.ts'
import { byName, isFields } from './named.ts'
import { estimateJson } from '../to-json.ts'
import { unitPrices } from '../money/unit-prices.ts'

/** Every figure by its path, `list.id.name` or `object.name`, in the order of the output; then starting values and rates by their ids. */
export interface Figures {
  readonly all: ReadonlyMap<string, Quantity>
  /** The same paths by position, as programs write them: `areas.0.bags`. */
  readonly byPosition: ReadonlyMap<string, string>
  /** The first name of each. */
  readonly names: ReadonlyMap<Quantity, string>
}

/** Numbers of the output that nothing is worked out for. */
const PLAIN: Readonly<Record<string, string>> = {
  step: 'its place in the order of work: after what it waits for, then as the file lists it', line: 'the line of the job file that it is about', count: 'one to an entry of the file',
}

export function figures(made: Estimate, job: Job): Figures {
  const all = new Map<string, Quantity>(), byPosition = new Map<string, string>()
  const add = (path: string, position: string, q: Quantity): void => { all.set(path, q); byPosition.set(position, path) }
  const visit = (plain: unknown, linked: unknown, path: string, position: string): void => {
    const at = (name: string | number, to: string): string => (to === '' ? String(name) : `${to}.${name}`)
    if (typeof plain === 'number') {
      const name = path.slice(path.lastIndexOf('.') + 1)
      add(path, position, isQuantity(linked) ? linked : exactly(plain, 'each', PLAIN[name] ?? 'as the job file has it'))
    } else if (Array.isArray(plain)) {
      const names = [...byName(plain)?.keys() ?? plain.map((_, i) => String(i))]
      plain.forEach((v, i) => { visit(v, Array.isArray(linked) ? linked[i] : undefined, at(names[i]!, path), at(i, position)) })
    } else if (isFields(plain)) for (const [k, v] of Object.entries(plain)) visit(v, isFields(linked) ? linked[k] : undefined, at(k, path), at(k, position))
  }
  const { assumptions, ...out } = estimateJson(made, job)
  visit(out, made.out, '', '')
  unitPrices(made.books, made.topOfFillInitialIn).forEach((u, i) => { add(`unitPrices.${u.id}.priceCents`, `unitPrices.${i}.priceCents`, u.priceCents) })
  made.assumed.forEach((q, i) => { if (q.from.is === 'assumed') { add(q.from.id, `assumptions.${i}.value`, q); byPosition.set(`assumptions.${q.from.id}.value`, q.from.id) } })
  // What the company file says in place of a starting value goes by the same name.
  walk([...all.values()], q => {
    const own = q.from.is === 'row' ? /: (rates|values), (.+)$/.exec(q.from.at) : null
    if (own) all.set(own[1] === 'rates' ? `rate.${own[2]}` : own[2]!, q)
  })
  const names = new Map<Quantity, string>()
  for (const [name, q] of all) if (!names.has(q)) names.set(q, name)
  return { all, byPosition, names }
}

/** What the words mean: one figure, several, or none, with what is near. */
export type Meant = { readonly is: 'one'; readonly path: string; readonly figure: Quantity } | { readonly is: 'several'; readonly paths: readonly string[] } | { readonly is: 'none'; readonly near: readonly string[] }

/** `/areas/0/bags`, `$.areas[0].bags` and `.areas[0]["bags"]` as `areas.0.bags`. */
const dotted = (words: string): string => (words.startsWith('/') ? words.slice(1).replaceAll('/', '.') : words.replace(/\[\s*["']?([^\]"']+)["']?\s*\]/g, '.$1')).replace(/^\$?\.+/, '')

/** An input has the path of its figure and its name, which may hold dots itself. */
function find(figs: Figures, path: string): Quantity | undefined {
  const here = figs.all.get(path) ?? figs.all.get(figs.byPosition.get(path) ?? '')
  if (here) return here
  for (let cut = path.lastIndexOf('.'); cut > 0; cut = path.lastIndexOf('.', cut - 1)) {
    const above = find(figs, path.slice(0, cut)), input = above && inputsOf(above)[path.slice(cut + 1)]
    if (input) return input
  }
  return undefined
}

/** A name without the unit behind it: total for totalCents. */
const withoutUnit = (name: string): string => name.replace(/(Cents|Ft2|Ft3|In2|In|Ft|Psf|Gal|Pct|Cfm|Btu|Btuh|Kwh|Lb|Pa|F)(?=$|Low$|Expected$|High$|Before$|After$)/, '')

/** @param words a path, by names or by positions; the end or the beginning of one; a name, with or without its unit */
export function meant(figs: Figures, words: string): Meant {
  const asked = dotted(words.trim()), { all, byPosition } = figs
  const figure = find(figs, asked)
  if (figure) return { is: 'one', path: all.has(asked) ? asked : byPosition.get(asked) ?? asked, figure }
  const paths = [...all.keys()], low = asked.toLowerCase()
  const tries: readonly ((path: string) => boolean)[] = [
    p => p.toLowerCase() === low, p => p.toLowerCase().endsWith(`.${low}`), p => p.startsWith(`${asked}.`), p => p.toLowerCase().startsWith(`${low}.`), p => p.toLowerCase().includes(`.${low}.`),
    p => { const bare = withoutUnit(p).toLowerCase(); return bare === low || bare.endsWith(`.${low}`) },
  ]
  for (const fits of tries) {
    const found = paths.filter(fits)
    if (found.length === 1) return { is: 'one', path: found[0]!, figure: all.get(found[0]!)! }
    if (found.length > 1) return { is: 'several', paths: found }
  }
  return { is: 'none', near: near(figs, paths, asked) }
}

function near(figs: Figures, paths: readonly string[], asked: string): string[] {
  const low = asked.toLowerCase(), holding = paths.filter(p => p.toLowerCase().includes(low))
  if (holding.length > 0) return holding
  const cut = asked.lastIndexOf('.'), above = cut < 0 ? undefined : find(figs, asked.slice(0, cut))
  if (above && Object.keys(inputsOf(above)).length > 0) return Object.keys(inputsOf(above)).map(n => `${asked.slice(0, cut)}.${n}`)
  const one = nearest(asked, [...new Set(paths)]) ?? nearest(asked, [...new Set(paths.map(p => p.slice(p.lastIndexOf('.') + 1)))].sort(byText))
  return one === undefined ? [] : [one]
}

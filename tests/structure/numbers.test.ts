// Figures of the trade stand where their source does: in a table, a formula, a starting value or a field, never in the middle of code.
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { lineOf, lineText, parsed, sources } from './source.ts'

/** Numbers that carry no figure of the trade: none, one, two sides, a hundred percent; and the width of what a float may be off. */
const FREE = new Set([0, 1, 2, 100, 1e-9])
/** What gives a number its source: a starting value, a rate, an assumption, a definition; rows of a table; the words of a format. */
const GIVES_SOURCE = new Set(['start', 'rate', 'assumed', 'exactly', 'table', 'steps', 'formula'])
/** Short names inside one function for the same. */
const LOCAL: Readonly<Record<string, string>> = { hours: 'books.rate with the area’s access', side: 'books.start of a housing’s side' }
/** Keys that show an item of a file, or say how large one may be. */
const SHOWN = new Set(['sample', 'wrong', 'examples', 'default', 'mostBytes'])
/** Depths are shown to the quarter inch of a tape. */
const QUARTER = 4

interface Bare { readonly file: string; readonly line: number; readonly value: number; readonly on: string; readonly node: ts.NumericLiteral }

function bare(file: string): Bare[] {
  const out: Bare[] = []
  const visit = (n: ts.Node): void => {
    if (ts.isCallExpression(n)) {
      const e = n.expression, name = ts.isPropertyAccessExpression(e) ? e.name.text : e.getText()
      if (GIVES_SOURCE.has(name) || name in LOCAL || (ts.isPropertyAccessExpression(e) && e.expression.getText() === 'f')) return
    }
    if (ts.isPropertyAssignment(n) && SHOWN.has(n.name.getText())) return
    if (ts.isLiteralTypeNode(n)) return
    if (ts.isNumericLiteral(n) && !FREE.has(Number(n.text))) out.push({ file, line: lineOf(n), value: Number(n.text), on: lineText(n), node: n })
    ts.forEachChild(n, visit)
  }
  visit(parsed(file))
  return out
}

/** asTape(Math.ceil(x * 4 - 1e-9) / 4): to the quarter inch, for a person to read. */
const isQuarter = ({ value, node }: Bare): boolean => {
  if (value !== QUARTER) return false
  for (let n: ts.Node = node; n.parent; n = n.parent) if (ts.isCallExpression(n.parent) && n.parent.expression.getText() === 'asTape') return true
  return false
}

/** Numbers that stand bare in scope and estimate today: a piece of the line, and why. */
const KNOWN: readonly (readonly [piece: string, why: string])[] = [
  ['item.joists.spacingIn > 20', 'which of two baffle widths: bays of 16 or of 24 in; belongs in a table of baffle roles'],
  ['perimeter - 0.5', 'eaves measured all round, to half a foot'],
  ['const YEAR = 1990', 'stands beside its source and is passed to books.start'],
  ['l.labelIn * 0.75', 'a quarter squeezed: the end of the rule for compressed batts; belongs beside calc/heat squeezeLoss'],
  ['l.depthIn.length < 5', 'probes asked for by the help of the field'],
  ['last < 1 / 4', 'when a last day is short, a note alone'],
  ['const MOST_OPEN = 500', 'for how many goals of jobs books lie open at once'],
  ['const MOST_ITEMS = 10', 'how many items the totals name'],
  ['toPrecision(6)', 'digits of a refused figure in a message'],
  ['Math.max(2, need * 0.05)', 'chart: a row may miss the need by R 2 or a twentieth (trade practice, said in README.md)'],
  ['const SIX = [13, 19, 22, 30, 38, 49]', '16 CFR 460.12: R values that a chart of loose fill has to show'],
  ['halfUnit', 'half of the last printed digit, and 1 % for bags that are nominal: how far a chart may be off'],
  ['product3(r.coverageFt2, r.bagsPer1000Ft2, 1000)', 'a chart counts bags for 1,000 ft²'],
  ['each > 4.5', 'R of an inch that a chart of blown fill is believed in; stands in the words of the finding'],
  ['r.settledIn * 12', 'inches of a foot'],
  ['density < 0.4', 'density that a chart of blown fill is believed in; stands in the words of the finding'],
  ["'part-of-a-cent'", 'half a cent up'],
  ['const DAILY = 0.75', 'the starting rate of a day’s start and end, to refuse a day that has no hours left'],
  ['const MOST_DAILY = 10', 'the same, its upper end'],
  ['names.length < 5', 'how many names a message lists'],
  ['max: 1000000', 'ranges of the fields of a price list, those of the price book'],
  ['const MOST_BYTES', 'largest list that is read'],
  ['const SPARE_FT = 4', 'how far an eave may differ from its floor before somebody asks; in the words of the finding'],
  ['surveyedOn.slice(0, 4)', 'digits of a year'],
  ['const SHOWN_STATIONS = 4', 'how many names a message lists'],
]
/** Data of an invented company. */
const DEMO = 'src/books/demo.ts'
/** Rounding of the output is one table of the format. */
const FORMAT_TABLE = 'src/estimate/to-json.ts'

describe('bare numbers', () => {
  const inCore = sources.filter(f => /^src\/(scope|estimate|closeout|books|job|api)\//.test(f) && f !== FORMAT_TABLE && f !== DEMO).flatMap(bare).filter(b => !isQuarter(b))

  test('in scope, estimate, closeout, books, job and api a figure has its source', () => {
    expect(inCore.filter(b => !KNOWN.some(([piece]) => b.on.includes(piece))).map(b => `${b.file}:${b.line} ${b.value}: ${b.on.slice(0, 120)}`)).toEqual([])
  })
  test('no exception is listed that nothing needs', () => {
    expect(KNOWN.filter(([piece]) => !inCore.some(b => b.on.includes(piece))).map(([piece]) => piece)).toEqual([])
  })
  test('the rounding of the output is a table of steps, each a power of ten or a half', () => {
    for (const b of bare(FORMAT_TABLE)) expect([1000, 0.5, 0.1, 0.01, 0.001, 0.0001, 0.000001], `${b.line}`).toContain(b.value)
  })

  test('a paper lays out: it multiplies and divides by no number of the trade', () => {
    const scale = new Set<ts.SyntaxKind>([ts.SyntaxKind.AsteriskToken, ts.SyntaxKind.SlashToken, ts.SyntaxKind.AsteriskAsteriskToken])
    /** Decimal digits of a printed figure. */
    const TEN = 10
    const found = sources.filter(f => f.startsWith('src/papers/')).flatMap(bare).filter(({ node, value }) => {
      let n: ts.Node = node
      while (ts.isParenthesizedExpression(n.parent) || ts.isPrefixUnaryExpression(n.parent)) n = n.parent
      return value !== TEN && ts.isBinaryExpression(n.parent) && scale.has(n.parent.operatorToken.kind)
    })
    expect(found.map(b => `${b.file}:${b.line} ${b.value}: ${b.on.slice(0, 120)}`)).toEqual([])
  })
  test('a paper holds whole numbers of columns and digits, and one quarter of an inch', () => {
    const found = sources.filter(f => f.startsWith('src/papers/')).flatMap(bare).filter(b => !Number.isInteger(b.value) && b.value !== 0.25)
    expect(found.map(b => `${b.file}:${b.line} ${b.value}`)).toEqual([])
  })
})

test('a number that would be a figure is found', () => {
  const file = ts.createSourceFile('made.ts', 'const load = depth * 1.6 / 12', ts.ScriptTarget.Latest, true)
  const seen: string[] = []
  const visit = (n: ts.Node): void => { if (ts.isNumericLiteral(n)) seen.push(n.text); ts.forEachChild(n, visit) }
  visit(file)
  expect(seen.filter(n => !FREE.has(Number(n)))).toEqual(['1.6', '12'])
})

/** What is wrong or worth saying, where, and what mends it. Its text stands beside the rule that raises it. */
export interface Finding {
  /** A word code: `key-unknown`, `chart-does-not-multiply`. */
  readonly code: string
  readonly severity: 'error' | 'warning' | 'note'
  /** JSON pointer into the file. */
  readonly path: string
  /** Which part of that place is meant: the key itself, or what stands behind it. */
  readonly on?: 'key' | 'value'
  /** What stands there. */
  readonly says: string
  /** Why that is wrong. */
  readonly why: string
  readonly mend: string
  /** A position found by another means (the YAML parser's own). */
  readonly span?: Span
}

export interface Span { readonly line: number; readonly column: number; readonly length: number }

/** Where every value and key of a file stands, by JSON pointer. */
export interface Places {
  value(path: string): Span | undefined
  key(path: string): Span | undefined
}

export const nowhere: Places = { value: () => undefined, key: () => undefined }

/** The nearest place that exists: the item itself, else what holds it. */
export function placed(finding: Finding, places: Places): Span {
  if (finding.span) return finding.span
  for (let path = finding.path; ; path = path.slice(0, path.lastIndexOf('/'))) {
    const here = finding.on === 'key' && path === finding.path ? places.key(path) ?? places.value(path) : places.value(path)
    if (here) return here
    if (path === '') return { line: 1, column: 1, length: 1 }
  }
}

export const sentence = (f: Finding): string => `${f.says}: ${f.why}; ${f.mend}`

const RANK = { error: 0, warning: 1, note: 2 }

/** Order for printing: by place, then severity, then code; one of each. */
export function sorted(findings: readonly Finding[], places: Places): Finding[] {
  if (findings.length < 2) return [...findings]
  const seen = new Set<string>()
  return findings
    .map(f => ({ f, span: placed(f, places) }))
    .sort((a, b) => a.span.line - b.span.line || a.span.column - b.span.column || RANK[a.f.severity] - RANK[b.f.severity]
      || byText(a.f.code, b.f.code) || byText(a.f.says, b.f.says))
    .map(({ f }) => f)
    .filter(f => {
      const key = JSON.stringify([f.code, f.path, f.says, f.why, f.span ?? 0])
      return seen.has(key) ? false : (seen.add(key), true)
    })
}

/** Text sorts by code unit: the same order under every locale. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

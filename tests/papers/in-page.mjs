// What is asked inside the browser. Its names (document, window) are those of no other part of the program, so they are not declared.

/** What a browser alone can tell of a page laid out for print: what is wider than the sheet, and what a page break may cut. */
export function laidOut(sheet) {
  const wide = [], cut = []
  const name = (e) => `${e.tagName.toLowerCase()}.${e.getAttribute('class') ?? ''} ${(e.textContent ?? '').trim().slice(0, 40)}`
  for (const e of document.body.querySelectorAll('*')) {
    if (e.closest('svg') && e.tagName !== 'svg') continue
    const box = e.getBoundingClientRect()
    if (box.right > sheet.width + 1) wide.push(`${name(e)}: to ${Math.round(box.right)}px`)
    if (e.matches('tr, figure, .keep, .gates > li, .cover, .signatures')) {
      if (box.height > sheet.height) cut.push(`${name(e)}: ${Math.round(box.height)}px high`)
      if (getComputedStyle(e).breakInside !== 'avoid') cut.push(`${name(e)}: may be cut`)
    }
  }
  return { wide, cut, inch: document.querySelector('.inch-line')?.getBoundingClientRect().width }
}

/** Columns the page takes. */
export const width = () => document.documentElement.scrollWidth

/** What a text has made of itself, had it become more than text. */
export function strange() {
  const handlers = [...document.querySelectorAll('*')].flatMap(e => [...e.attributes].filter(a => a.name.startsWith('on')).map(a => `${e.tagName} ${a.name}`))
  const elements = [...document.querySelectorAll('script, img, iframe, object, embed, form, input, base, link, a')].map(e => e.outerHTML.slice(0, 80))
  return [...handlers, ...elements, ...(document.title === 'taken' ? ['a script has run'] : [])]
}

/** Whether a text stands there to be read. */
export const shows = text => document.body.textContent.includes(text)

/** Serious findings of axe-core: of these rules alone, or of all. */
export async function axeFindings(rules) {
  const found = await globalThis.axe.run(document, rules.length === 0 ? {} : { runOnly: { type: 'rule', values: rules } })
  return found.violations.filter(v => v.impact === 'serious' || v.impact === 'critical').map(v => `${v.id}: ${v.nodes.slice(0, 3).map(n => n.html.slice(0, 120)).join(' | ')}`)
}

/**
 * Runs in the page: each element with `data-figure="list.id.name"` shows that figure of the JSON, rounded as it is written.
 * @returns those that do not, and a line where none is marked
 */
export function differing(estimate) {
  const out = []
  const at = path => path.split('.').reduce((v, key) => {
    if (Array.isArray(v)) return v.find(e => e.id === key || e.item === key)
    return v?.[key]
  }, estimate)
  const read = text => {
    const plain = text.replaceAll('\u00a0', ' ').replaceAll(',', '').replaceAll('−', '-')
    const m = /((?<!R)-?\d+)(?:\.(\d+))?(?: (\d+)\/(\d+))?|(\d+)\/(\d+)/.exec(plain)
    if (!m) return undefined
    const [, whole, decimals, over, under, only, of] = m
    if (only !== undefined) return { value: Number(only) / Number(of), step: 0.25 }
    return { decimals: decimals !== undefined, value: Number(`${whole}.${decimals ?? 0}`) + (over === undefined ? 0 : Number(over) / Number(under)), step: over === undefined ? 10 ** -(decimals?.length ?? 0) : 0.25 }
  }
  const marked = document.querySelectorAll('[data-figure]')
  if (marked.length === 0) out.push('no figure is marked')
  for (const e of marked) {
    const path = e.getAttribute('data-figure'), value = at(path), shown = read(e.textContent ?? '')
    if (typeof value !== 'number' || shown === undefined) { out.push(`${path}: ${String(value)} shown as ${e.textContent}`); continue }
    const real = /Cents(Low|Expected|High)?$/.test(path) ? value / 100 : /Share$/.test(path) ? value * 100 : value
    // Depths go up to the next quarter inch, where they are not written with decimals; all else is rounded.
    const same = /In$/.test(path) && !shown.decimals ? Math.abs(shown.value - Math.ceil(real * 4 - 1e-6) / 4) < 1e-6 : Math.abs(shown.value - real) <= shown.step / 2 + 1e-6 || Number(real.toPrecision(2)) === shown.value
    if (!same) out.push(`${path}: ${real} shown as ${e.textContent}`)
  }
  return out
}

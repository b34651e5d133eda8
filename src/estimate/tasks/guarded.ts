// Where a figure can't be had: a finding at the place it belongs to, and the rest of the house goes on.
import type { Finding } from '../../findings/finding.ts'
import { NoProduct } from '../../books/products.ts'
import { OutOfRange, RESULT } from '../../units/quantity.ts'

/** A figure that a formula refuses, or a role that no product fills, is a finding at the item it belongs to. */
export function guarded<M>(at: string, findings: Finding[], take: () => M): M | undefined {
  try { return take() } catch (e) {
    if (e instanceof OutOfRange && e.arg === RESULT) findings.push({ code: 'figure-out-of-range', severity: 'error', path: at, says: 'no figure comes out of these measures together', why: `the formula ${e.formulaId} divides by what they leave, and that is nothing`, mend: 'check the measures of this item, and the company’s values for it' })
    else if (e instanceof OutOfRange) findings.push({ code: 'figure-out-of-range', severity: 'error', path: at, says: `${e.arg} comes to ${Number(e.value.toPrecision(6))} ${e.unit}`, why: `the formula ${e.formulaId} holds from ${e.min} to ${e.max}`, mend: 'check the measures of this item, and the company’s values for it' })
    else if (e instanceof NoProduct && e.missing) findings.push({ code: 'product-not-to-be-had', severity: 'error', path: at, says: `this needs ${e.missing.item}, which can't be had`, why: `${e.book} ${e.missing.substitutes.length === 0 ? 'names no substitute for it' : `has no substitute for it that can be had: ${e.missing.substitutes.join(', ')}`}`, mend: `name one under substitutes: of ${e.missing.item}, or take out available: no` })
    else if (e instanceof NoProduct) findings.push({ code: 'no-product-for-role', severity: 'error', path: at, says: `this needs a product in the role ${e.role}`, why: `${e.book} has none`, mend: `add a product with role: ${e.role} to the price book` })
    else throw e
    return undefined
  }
}

// The receipt that federal rules ask of an installer: each part of the house by itself, with the maker’s figures, dated and signed.
import type { PartOut } from '../../../closeout/output.ts'
import { plainFigure } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import { page } from '../page.ts'
import { area, cell, facts, inches, labelR, notWhole, PART_STYLE, signed, type Done } from './parts.ts'

function partOf(p: PartOut): Html {
  const at = (n: string): string => `receipt.parts.${p.id}.${n}`, write = (what: string): string => `${what} of ${p.part}`, what = [p.material, p.maker].filter(Boolean).join(', ')
  return html`<section class="keep part"><h2>${p.part}</h2>
<p>${what}</p>
${facts([
    ['Coverage area', cell(at('coverageFt2'), p.coverageFt2, area, write('coverage area')), 'ft²'],
    ...(p.kind === 'loose-fill' ? [['Initial installed thickness', cell(at('initialIn'), p.initialIn, inches, write('initial installed thickness')), 'in'] as const, ['Minimum settled thickness', cell(at('settledIn'), p.settledIn, inches, write('minimum settled thickness')), 'in'] as const]
      : [['Thickness', cell(at('thicknessIn'), p.thicknessIn, inches, write('thickness')), 'in'] as const]),
    ['R-value', html`<b>${cell(at('rValue'), p.rValue, labelR, write('R-value'))}</b>`],
    ...(p.kind === 'loose-fill' ? [['Number of bags used', cell(at('bags'), p.bags, plainFigure, write('number of bags'))] as const] : []),
  ])}</section>
`
}

function body({ built }: Done): Html {
  const { receipt } = built
  return html`<p>${built.job.customer !== undefined && html`For ${built.job.customer}. `}${built.job.address}</p>
<p>Insulation that was put in, for each part of the house. Figures of R and of settled thickness are the maker’s.</p>
${notWhole(receipt, receipt.parts)}
${receipt.parts.map(p => partOf(p))}
${receipt.parts.some(p => p.kind === 'loose-fill') && html`<p class="small">The initial thickness of loose fill is the least that was read at a marker, old fill taken off. What it settles to stands on the maker’s label. Its R-value is the highest row of that label whose bags, weight and thickness were all met.</p>`}
${receipt.parts.length === 0 && html`<p>No insulation was put in.</p>`}
<p class="small">Areas and R-values of different parts are not added up (${receipt.rule}).</p>
${signed(receipt)}`
}

export const receiptPaper = (done: Done): string => page(done, { name: 'Receipt', body: body(done), style: PART_STYLE, noPrices: true })

// The card that stays in the attic, beside the hatch: the certificate of the code, and what whoever climbs up next has to know.
import type { AreaBuiltOut, PartOut } from '../../../closeout/output.ts'
import { counted, figure, NB, plainFigure } from '../../terminal/words.ts'
import { html, type Html } from '../html.ts'
import { page } from '../page.ts'
import { figureAt } from '../parts.ts'
import { area, cell, facts, inches, labelR, notWhole, PART_STYLE, rulerOf, signed, type Done } from './parts.ts'

function partCard(p: PartOut, built: AreaBuiltOut | undefined): Html {
  const at = (n: string): string => `certificate.parts.${p.id}.${n}`, write = (what: string): string => `${what} of ${p.part}`
  const loose = p.kind === 'loose-fill', drawn = built && rulerOf(built)
  return html`<section class="keep part"><h2>${p.part}</h2>
<p class="large">${cell(at('rValue'), p.rValue, labelR, write(loose ? 'settled R-value' : 'R-value'))}</p>
<div class="pair">${facts([
    ['Type', p.material], ['Manufacturer', p.maker ?? cell('', undefined, plainFigure, write('manufacturer'))], ['Coverage area', cell(at('coverageFt2'), p.coverageFt2, area, write('coverage area')), 'ft²'],
    ...(loose ? [
      ['Initial installed thickness', cell(at('initialIn'), p.initialIn, inches, write('initial installed thickness')), 'in'] as const, ['Settled thickness', cell(at('settledIn'), p.settledIn, inches, write('settled thickness')), 'in'] as const, ...(built?.settledTopIn === undefined ? [] : [['Settled top on a marker, old fill in it', figureAt(`areas.${p.id}.settledTopIn`, inches(built.settledTopIn)), 'in'] as const]),
      ['Installed density', cell(at('densityPcf'), p.densityPcf, v => figure(v, 2), write('installed density')), 'lb/ft³'] as const, ['Number of bags installed', cell(at('bags'), p.bags, plainFigure, write('number of bags'))] as const,
    ] : [['Thickness', cell(at('thicknessIn'), p.thicknessIn, inches, write('thickness')), 'in'] as const]),
    ...(built?.machine === undefined ? [] : [['Machine', built.machine] as const]),
  ])}${drawn && html`<figure>${drawn}</figure>`}</div></section>
`
}

function body({ built, company }: Done): Html {
  const { certificate, card } = built, phone = built.installer.phone ?? company.letterhead?.phone
  return html`<p>${built.job.title}${built.job.address !== undefined && html`, ${built.job.address}`}</p>
${notWhole(certificate, certificate.parts)}
${certificate.parts.map(p => partCard(p, built.areas.find(a => a.id === p.id)))}
${signed(certificate)}
<p class="small">Insulation certificate (${certificate.rule}). Signed, dated, and posted in a conspicuous place on the job: here beside the hatch. Parts of the house stand apart; nothing is added up.</p>
<section class="keep"><h2>Whoever comes up here</h2>
<ul>${card.markers > 0 && html`<li>Depth markers: ${figure(card.markers)}, read from the ceiling. Fill that has sunk under its settled top: call the installer.</li>
`}<li>${card.flags === undefined ? html`Boxes under the fill carry a flag.` : card.flags === 0 ? html`No box under the fill needed a flag.` : html`${counted(card.flags, 'flag')} mark boxes under the fill.`} Power off before you dig.</li>
${card.keepClear.length > 0 && html`<li>Keep fill off, for good: ${card.keepClear.map((k, i) => [i > 0 && '; ', `${k.what} (${k.where})`])}.</li>
`}<li>Store nothing on the fill. Step on framing only. Shut the hatch on its gasket.</li>
${phone !== undefined && html`<li>Installer: ${built.installer.company ?? company.name},${NB}${phone}.</li>
`}</ul></section>`
}

export const cardPaper = (done: Done): string => page(done, { name: 'Attic card and certificate', title: 'Insulation of this attic', body: body(done), style: PART_STYLE, noPrices: true })

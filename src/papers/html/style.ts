// One style sheet for all papers: US Letter in print, one column on a phone, dark on a dark screen. Distances are multiples of the eighth of an inch, 12px.
import { dark, light, variables } from './palette.ts'

export const style = `
:root{color-scheme:light dark;${variables(light)}}
@media screen and (prefers-color-scheme:dark){:root{${variables(dark)}}}
*{box-sizing:border-box}
body{margin:0 auto;padding:24px 36px;max-width:720px;background:var(--paper);color:var(--ink);font:11pt/16pt system-ui,sans-serif;font-variant-numeric:tabular-nums lining-nums;overflow-wrap:anywhere;-webkit-text-size-adjust:100%}
h1{font-size:20pt;line-height:24pt;margin:0}
h2{font-size:14pt;line-height:18pt;margin:24px 0 6px}
h3{font-size:11pt;line-height:16pt;margin:12px 0 6px}
h1,h2,h3,h4,b,th{font-weight:700}
h2,h3,h4{break-after:avoid}
p,ul,ol,dl,figure{margin:0 0 12px}
p,li,dd{max-width:72ch}
p,li{orphans:2;widows:2}
ul,ol{padding-left:24px}
a{color:inherit}
small,.small{font-size:9pt;line-height:12pt}
.unit,.gray{color:var(--gray)}
.unit{font-size:9pt;font-weight:400}
.mono{font-family:ui-monospace,monospace;font-size:9pt}
.kraft{background:var(--kraft)}
.keep{break-inside:avoid}
.new-page{break-before:page}
.lead{break-after:avoid}
.large{break-after:avoid;font-size:20pt;line-height:24pt;font-weight:700}
.letterhead{display:flex;gap:24px;justify-content:space-between;align-items:flex-end;margin-bottom:12px}
.letterhead b{font-size:14pt;line-height:18pt}
.letterhead p{margin:0}
.letterhead p+p{text-align:right}
.head{display:flex;gap:24px;justify-content:space-between;align-items:baseline;margin:12px 0 24px}
.head p{margin:0;text-align:right;flex:none;max-width:40%}
.head .name{font-size:14pt;line-height:18pt}
.table{border-collapse:collapse;width:100%;margin:0 0 12px}
.table caption{text-align:left;font-weight:700;padding:0 0 6px;break-after:avoid}
.table th,.table td{text-align:left;vertical-align:top;padding:9px 12px 9px 0}
.table th:last-child,.table td:last-child{padding-right:0}
.table thead th{border-bottom:1px solid var(--hair);vertical-align:bottom}
.table thead .unit{display:block}
.table tbody th{font-weight:400}
.table .figure{text-align:right;white-space:nowrap}
.table .figure.long{white-space:normal}
.table.tight th,.table.tight td{padding-top:3px;padding-bottom:3px}
.table tr{break-inside:avoid}
.table tr.total>*{border-top:1px solid var(--hair);font-weight:700}
.table tr.kraft>*{background:var(--kraft)}
.gates{list-style:none;padding:0}
.gates>li{display:grid;grid-template-columns:36px 1fr;gap:0 12px;padding:9px 0;max-width:none;break-inside:avoid}
.gates p{margin:0}
.sign{width:22px;height:26px;flex:none}
.sign .post{stroke:currentColor;stroke-width:.85mm;fill:none}
.stop,.hold{color:var(--oxide)}
.mend{color:var(--chalk)}
.cover{margin:24px 0;border-top:1.1mm solid var(--ink);padding-top:6px;break-inside:avoid;break-after:avoid}
.cover p{margin:0}
.box-line{border:1px solid var(--hair);padding:6px 12px;margin:0 0 12px}
.tick{display:inline-block;width:24px;height:24px;border:1px solid var(--ink);vertical-align:-6px;flex:none}
.write{display:inline-block;min-width:96px;height:36px;border-bottom:1px solid var(--ink)}
.care{border-left:.7mm solid var(--oxide);padding-left:12px;margin-bottom:12px}
.signatures{display:grid;grid-template-columns:1fr 1fr;gap:24px 36px;margin:24px 0;break-inside:avoid}
.signatures div{border-top:1px solid var(--ink);margin-top:48px;padding-top:6px}
figure{break-inside:avoid}
figcaption{max-width:72ch}
.drawing{display:block;max-width:100%;height:auto;font:9pt system-ui,sans-serif}
.drawing.inch{width:100%;height:30px}
.drawing text{fill:var(--ink);font-variant-numeric:tabular-nums lining-nums}
.drawing .gray{fill:var(--gray)}
.drawing .chalk-text{fill:var(--chalk)}
.drawing .line{fill:none;stroke:var(--ink)}
.drawing .lid{fill:none;stroke:var(--ink);stroke-width:1.1mm}
.drawing .wood{fill:var(--paper);stroke:var(--ink);stroke-width:.5mm}
.drawing .deck{fill:none;stroke:var(--ink);stroke-width:.5mm}
.drawing .settled{fill:none;stroke:var(--chalk);stroke-width:.35mm}
.drawing .blown{fill:none;stroke:var(--chalk);stroke-width:.35mm;stroke-dasharray:6 4}
.drawing .baffle{fill:none;stroke:var(--ink);stroke-width:.35mm;stroke-dasharray:1 3}
.drawing .thin{fill:none;stroke:var(--ink);stroke-width:.25mm}
.drawing .hatch{fill:none;stroke:var(--ink);stroke-width:.18mm}
.drawing .leader{fill:none;stroke:var(--hair);stroke-width:.18mm}
.drawing .hot{fill:none;stroke:var(--oxide);stroke-width:.7mm}
.drawing .halo{paint-order:stroke;stroke:var(--paper);stroke-width:4px}
.drawing .new-fill{fill:url(#new-fill)}
.drawing .old-loose{fill:url(#old-loose)}
.drawing .left-open{fill:var(--kraft);stroke:var(--ink)}
.dot{fill:var(--chalk)}
.stroke{fill:none;stroke:var(--ink);stroke-width:.25mm}
.drawing .tint{fill:var(--tint)}
.drawing .blank{fill:var(--paper)}
.drawing .gone{fill:none;stroke:var(--ink);stroke-width:.25mm;stroke-dasharray:4 3}
.drawing .axis{stroke:var(--hair);stroke-width:1px;fill:none}
.drawing .range{stroke:var(--chalk);stroke-width:1mm;fill:none}
.drawing .range-tick{stroke:var(--chalk);stroke-width:.5mm;fill:none}
.foot{margin-top:36px;border-top:1px solid var(--hair);padding-top:6px;color:var(--gray);font-size:9pt;line-height:12pt;break-inside:avoid}
.foot p{margin:0;max-width:none}
@page{size:letter;margin:.75in .75in .75in 1in}
@media print{
body{padding:0;max-width:none}
.table thead{display:table-header-group}
a{text-decoration:none}
}
@media screen and (max-width:600px){
body{padding:24px 12px}
.letterhead,.head{display:block}
.letterhead p+p,.head p{text-align:left;max-width:none;margin-top:6px}
.signatures{grid-template-columns:1fr}
.wide{overflow-x:auto}
.wide .drawing{max-width:none}
.table.pairs,.table.pairs caption,.table.pairs tbody,.table.pairs tr{display:block}
.table.pairs thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.table.pairs tr{padding:9px 0;border-bottom:1px solid var(--hair)}
.table.pairs th,.table.pairs td{display:block;padding:0}
.table.pairs td,.table.pairs td.figure{display:flex;gap:12px;justify-content:space-between;text-align:right;white-space:normal}
.table.pairs td[data-label]::before{content:attr(data-label);color:var(--gray);text-align:left;flex:none;max-width:60%}
.table.pairs td:empty{display:none}
.table.pairs tbody th{font-weight:700}
}
`.trim()

/** Styles of the crew's sheets: larger letters, boxes for gloved hands. Distances are multiples of 12px, the eighth of an inch. */
export const STYLE = `
main{font-size:13pt;line-height:18pt}
h2{font-size:20pt;line-height:24pt}
h3{font-size:16pt;line-height:24pt}
.tick{width:36px;height:36px;border-width:2px}
.facts{border-top:1px solid var(--hair)}
.facts div{display:grid;grid-template-columns:156px 1fr;gap:0 12px;padding:6px 0;border-bottom:1px solid var(--hair);break-inside:avoid}
.facts dt{color:var(--gray)}
.facts dd{margin:0}
.off{display:flex;gap:12px;align-items:baseline;margin:6px 0;max-width:none}
.off b{font-size:28pt;line-height:36px;white-space:nowrap;flex:none}
.phase-head{display:flex;justify-content:space-between;align-items:baseline;border-bottom:1px solid var(--hair);font-size:20pt}
.phase-head .unit{font-size:13pt}
.tasks{list-style:none;padding:0;margin:0}
.tasks>li{display:grid;grid-template-columns:36px 48px 1fr auto;gap:0 12px;padding:12px 0;border-bottom:1px solid var(--hair);max-width:none;min-height:60px;break-inside:avoid}
.tasks h4{font-size:13pt;line-height:18pt;margin:0 0 6px}
.tasks p{margin:0 0 6px}
.tasks .step{font-size:20pt;line-height:36px;text-align:right}
.tasks .by{font-size:11pt;line-height:16pt;color:var(--gray)}
.care{break-inside:avoid;border-left:.7mm solid var(--ink);padding-left:12px}
.fill{display:grid;grid-template-columns:repeat(3,1fr);gap:12px 24px;margin:0 0 12px}
.fill p{margin:0}
.fill .big{font-size:28pt;line-height:36pt;font-weight:700;display:block;white-space:nowrap}
.bags{display:grid;grid-template-columns:repeat(10,36px) auto;gap:6px;align-items:center;margin:0 0 12px;max-width:none}
.bags b{padding-left:12px}
.bags,.whole{break-inside:avoid}
.tasks .step,.bags b{overflow-wrap:normal;white-space:nowrap}
.blanks{width:100%;border-collapse:collapse;margin:0 0 12px}
.blanks th,.blanks td{border:1px solid var(--ink);height:36px;padding:6px 9px;text-align:left;vertical-align:top;font-weight:400}
.blanks thead th{border-width:0 0 1px;vertical-align:bottom;height:auto}
.blanks td.box{min-width:60px}
.blanks tr{break-inside:avoid}
.blanks .figure{text-align:right;white-space:nowrap}
.carry{columns:2;column-gap:36px;list-style:none;padding:0;font-size:11pt;line-height:16pt}
.carry li{display:grid;grid-template-columns:24px 1fr;gap:0 9px;padding:6px 0;break-inside:avoid}
.carry .tick{width:24px;height:24px}
.phase h4{margin:0 0 6px}
.phase-head,.phase h4,.phase .carry{break-after:avoid}
.phase .tasks,.phase .tasks>li:first-child{break-before:avoid}
.left{padding:12px}
.left p:last-child{margin:0}
.blanks th{overflow-wrap:break-word}
.blanks thead th{white-space:nowrap}
.blanks .group{overflow-wrap:anywhere;border-width:0 0 1px;padding-top:12px;font-weight:700}
.blanks .caption{text-align:left;font-weight:700;padding:0 0 6px}
.readings{font-size:11pt;line-height:16pt}
.halves tbody th{width:50%}
.blanks td.none{border-width:0}
.on-sight{font-size:11pt;line-height:16pt}
.on-sight h2{margin-top:0}
.on-sight .table th,.on-sight .table td{padding:3px 12px 3px 0}
.on-sight .table th:nth-child(1){width:34%}
.on-sight .table th:nth-child(2){width:40%}
.lead-in{break-after:avoid;break-inside:avoid}
.gates>li{font-size:11pt;line-height:16pt}
.proofs{columns:2;column-gap:36px;list-style:none;padding:0;font-size:11pt;line-height:16pt}
.proofs li{display:grid;grid-template-columns:24px 30px 1fr;gap:0 9px;padding:3px 0;break-inside:avoid}
.proofs .tick{width:24px;height:24px}
.proofs b{text-align:right}
@media screen and (max-width:600px){
.facts div{grid-template-columns:1fr}
.tasks>li{grid-template-columns:36px 36px 1fr}
.tasks .hours{grid-column:3}
.tasks .hours::after{content:" person-h"}
.bags{grid-template-columns:repeat(10,1fr) 36px;gap:3px}
.bags .tick{width:auto}
.bags b{padding-left:6px}
.proofs,.carry{columns:1}
.fill{grid-template-columns:1fr}
.blanks{font-size:9pt;line-height:12pt}
.blanks thead th{white-space:normal}
.blanks th{overflow-wrap:anywhere}
.blanks th,.blanks td{padding:3px}
.blanks td.box{min-width:18px}
}
`

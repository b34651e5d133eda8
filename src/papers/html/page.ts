// The sheet that all papers share: letterhead, the true inch, title and name of the paper, foot.
import type { CompanyFile } from '../../books/company-file.ts'
import type { PriceBook } from '../../books/price-book.ts'
import type { OptionsOut } from '../../estimate/quotes/options-output.ts'
import type { EstimateOut } from '../../estimate/output.ts'
import type { JobFile } from '../../job/job-file.ts'
import { cssString, html, Html, type Part } from './html.ts'
import { light } from './palette.ts'
import { dayOf } from './say.ts'
import { style } from './style.ts'

/** What a paper is made from: plain data. */
export interface House {
  readonly job: JobFile
  readonly estimate: EstimateOut
  readonly company: CompanyFile
  readonly prices: PriceBook
  /** The same house at other goals and with other products, where a paper asks for it. */
  readonly options?: OptionsOut
}

/** One paper on its sheet. */
export interface Sheet {
  /** Name of the paper, as it stands at the right of its head. */
  readonly name: string
  /** Left in the head; else the title of the job. */
  readonly title?: string
  readonly body: Part
  /** Styles that this paper alone has. */
  readonly style?: string
  /** No price stands on it: its foot has no word of prices either. */
  readonly noPrices?: boolean
}

/** Nothing from elsewhere is read, and nothing runs, whatever a text says. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'"

const INCH = 96
const EIGHTHS = 8

/** A true inch, ticked in eighths, at the left end of a thin line. */
function inchLine(): Html {
  const ticks = Array.from({ length: EIGHTHS + 1 }, (_, i) => html`<path d="M${i * INCH / EIGHTHS} 8v${i % EIGHTHS === 0 ? -8 : i % 2 === 0 ? -5 : -3}"/>`)
  return html`<svg class="drawing inch" role="img" aria-label="one inch, ticked in eighths"><g class="thin"><path class="inch-line" d="M0 8H${INCH}"/>${ticks}<path d="M0 8H9999"/></g><text class="gray" x="0" y="24">1 inch when printed at 100 %</text></svg>`
}

function letterhead(company: CompanyFile): Html {
  const { address, phone, email, license } = company.letterhead ?? {}
  const lines = [address, phone, email, license].filter(l => l !== undefined)
  return html`<div class="letterhead"><p><b>${company.name}</b>${company.demo === 'yes' && html`<br>an invented company`}</p>${lines.length > 0 && html`<p class="small">${lines.map((l, i) => [i > 0 && html`<br>`, l])}</p>`}</div>`
}

function foot({ estimate: { job, basis: { priceBook, company } } }: House, { name, noPrices = false }: Sheet): Html {
  const invented = noPrices ? [company.demo && 'Demo company: its figures are invented.', priceBook.demo && 'Demo products: their labels are invented.'].filter(t => t !== false).join(' ') : priceBook.demo ? 'Demo prices: every price on these papers is invented.' : company.demo ? 'Demo company: its figures are invented.' : ''
  return html`<footer class="foot"><p>${job.id} · ${name} · surveyed ${dayOf(job.surveyedOn)}${!noPrices && html` · prices: ${priceBook.name}, ${dayOf(priceBook.dated)}`} · company file: ${company.name}, ${dayOf(company.dated)} · made with lidwork</p>${invented !== '' && html`<p class="box-line">${invented}</p>`}</footer>`
}

/** What stands round a sheet. */
interface Around { readonly company: CompanyFile | undefined; readonly title: string; /** Below each printed page, at its left. */ readonly running: string; readonly foot: Html }

/** A whole document: nothing in it points outside, and nothing in it runs. */
function whole({ company, title, running, foot: below }: Around, sheet: Sheet): string {
  const pages = `@page{@bottom-left{content:${cssString(running)};font:9pt system-ui,sans-serif;color:${light.gray}}@bottom-right{content:counter(page) " of " counter(pages);font:9pt system-ui,sans-serif;color:${light.gray}}}`
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width,initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="color-scheme" content="light dark">
<title>${sheet.name}: ${title}</title>
<style>${new Html(`${style}\n${pages}${sheet.style ? `\n${sheet.style.trim()}` : ''}`)}</style>
</head>
<body>
<header>
${company && letterhead(company)}
${inchLine()}
<div class="head"><h1>${title}</h1><p class="name">${sheet.name}</p></div>
</header>
<main>
${sheet.body}
</main>
${below}
</body>
</html>
`.markup
}

/** A paper of a house. */
export const page = (house: House, sheet: Sheet): string => whole({ company: house.company, title: sheet.title ?? house.estimate.job.title, running: `${house.estimate.job.id}, ${sheet.name}`, foot: foot(house, sheet) }, sheet)

/** A paper of no house yet. */
export const blankPage = (company: CompanyFile | undefined, sheet: Sheet & { readonly title: string }): string => whole({ company, title: sheet.title, running: sheet.name, foot: html`<footer class="foot"><p>${sheet.name}${company && ` · ${company.name}`} · made with lidwork</p></footer>` }, sheet)

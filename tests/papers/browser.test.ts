// Every paper of every example in a real browser: it says nothing to the console, asks for nothing, fits its pages, and can be read by all.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { lidwork } from '../cli/test-io.ts'
import { browserAt, openBrowser, required, WITHOUT } from './browser.ts'
import { papers } from '../../src/papers/html/index.ts'
import { exampleNames, exampleText, HARD, HOSTILE, houseOf, withTexts } from './houses.ts'
import { axeFindings, differing, laidOut, shows, strange, width } from './in-page.mjs'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

const INCH = 96
/** US Letter less its margins. */
const SHEET = { width: 6.75 * INCH, height: 9.5 * INCH }
const PHONE = 360
const BLANK = '.survey-sheet.html', BLANK_OF = 'laurel-fork-7'

if (!browserAt && !required) console.warn(WITHOUT)
test.runIf(required)('a browser is there', () => { expect(browserAt, WITHOUT).toBeDefined() })

describe.runIf(browserAt)('the papers', () => {
  let at: Awaited<ReturnType<typeof openBrowser>>
  beforeAll(async () => { at = await openBrowser() })
  afterAll(async () => { await at.close() })

  test.each(exampleNames)('of %s', async job => {
    const name = `${job}.job.yaml`, files = { [name]: exampleText(job) }
    const made = await lidwork(`papers ${name} --out out`, { files })
    expect(made.code, made.err).toBe(0)
    const estimate = JSON.parse((await lidwork(`estimate ${name} --json`, { files })).out) as EstimateOut
    // The blank sheet is the same for all but its areas: opened where they are of most kinds.
    const papers = Object.entries(made.files).filter(([f]) => f.startsWith('out/') && f.endsWith('.html') && (!f.endsWith(BLANK) || job === BLANK_OF))
    expect(papers.length).toBeGreaterThan(0)
    for (const [file, text] of papers) {
      const paper = file.slice('out/'.length)
      // On paper
      await at.page.emulateMedia({ media: 'print', colorScheme: 'light' })
      await at.page.setViewportSize({ width: SHEET.width, height: SHEET.height })
      const { page, messages, requests } = await at.open(paper, text!)
      expect({ messages, requests }, paper).toEqual({ messages: [], requests: [] })
      const { wide, cut, inch } = await page.evaluate(laidOut, SHEET)
      expect({ wide, cut }, paper).toEqual({ wide: [], cut: [] })
      expect(inch, 'the inch of the head').toBe(INCH)
      if (!paper.endsWith(BLANK)) expect(await page.evaluate(differing, estimate), paper).toEqual([])
      // On a phone
      await page.setViewportSize({ width: PHONE, height: 800 })
      await page.emulateMedia({ media: 'screen', colorScheme: 'light' })
      expect(await page.evaluate(width), `${paper} on a phone`).toBeLessThanOrEqual(PHONE)
      await page.evaluate(axe)
      expect(await page.evaluate(axeFindings, []), paper).toEqual([])
      // On a dark screen only the colors are others, and all papers have the same: html.test.ts computes them.
      if (job !== HARD && !paper.endsWith('.deferral.html')) continue
      await page.emulateMedia({ media: 'screen', colorScheme: 'dark' })
      expect(await page.evaluate(axeFindings, ['color-contrast']), `${paper}, dark`).toEqual([])
    }
  })

  test('with texts that mean harm: shown, and nothing happens', async () => {
    let n = 0
    const house = withTexts(houseOf(exampleText(HARD)), () => HOSTILE[n++ % HOSTILE.length]!)
    for (const paper of papers.filter(p => p.appliesTo(house))) for (const { ending, text } of paper.files(house)) if (ending.endsWith('.html')) {
      await at.page.emulateMedia({ media: 'print', colorScheme: 'light' })
      await at.page.setViewportSize({ width: SHEET.width, height: SHEET.height })
      const { page, messages, requests } = await at.open(`hostile.${ending}`, text)
      expect({ messages, requests }, ending).toEqual({ messages: [], requests: [] })
      expect((await page.evaluate(laidOut, SHEET)).wide, ending).toEqual([])
      expect(await page.evaluate(strange), ending).toEqual([])
      if (`.${ending}` !== BLANK) expect(await page.evaluate(shows, '<script>'), ending).toBe(true)
      await page.setViewportSize({ width: PHONE, height: 800 })
      await page.emulateMedia({ media: 'screen' })
      expect(await page.evaluate(width), `${ending} on a phone`).toBeLessThanOrEqual(PHONE)
    }
  })

  test('print on US Letter', async () => {
    const { files } = await lidwork('papers a.job.yaml --out out', { files: { 'a.job.yaml': exampleText(HARD) } })
    await at.page.emulateMedia({ media: null, colorScheme: 'light' })
    for (const [file, text] of Object.entries(files)) if (file.endsWith('.html')) {
      const { page } = await at.open(file.slice('out/'.length), text!)
      const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1')
      const boxes = [...new Set(pdf.match(/\/MediaBox \[[^\]]*\]/g))]
      expect(boxes, file).toEqual(['/MediaBox [0 0 612 792]'])
    }
  })
})

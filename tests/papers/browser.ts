// A real browser for the papers: Debian's Chromium, driven from outside. One page is used for all.
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium, type Browser, type Page } from 'playwright-core'

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** Where the browser is; undefined where none is installed. */
export const browserAt = PLACES.find(p => existsSync(p))

/** CI installs one and never goes without. */
export const required = process.env['LIDWORK_BROWSER'] === 'required' || !!process.env['CI']

/** Why the tests are skipped, to be said. */
export const WITHOUT = `no Chromium at ${PLACES.join(', ')}: papers were not opened in a browser`

export interface Opened { readonly page: Page; readonly messages: readonly string[]; readonly requests: readonly string[] }

/** A browser and one page. */
export async function openBrowser() {
  const browser: Browser = await chromium.launch({ executablePath: browserAt!, args: ['--no-sandbox', '--disable-gpu'] })
  const page = await browser.newPage()
  const folder = mkdtempSync(join(tmpdir(), 'lidwork-papers-'))
  let messages: string[] = [], requests: string[] = []
  page.on('console', m => { messages.push(m.text()) })
  page.on('pageerror', e => { messages.push(String(e)) })
  page.on('dialog', d => { messages.push(`dialog: ${d.message()}`); void d.dismiss() })
  page.on('request', r => { requests.push(r.url()) })
  return {
    page,
    /** Opens a paper as people do, from a file. */
    async open(name: string, text: string): Promise<Opened> {
      const file = join(folder, name), url = pathToFileURL(file).href
      writeFileSync(file, text)
      messages = []
      requests = []
      await page.goto(url)
      return { page, messages, requests: requests.filter(r => r !== url) }
    },
    async close(): Promise<void> {
      await browser.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

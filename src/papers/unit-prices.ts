// The schedule of unit prices on a terminal.
import type { UnitPriceOut } from '../estimate/output.ts'
import { printable } from '../findings/printable.ts'
import type { Look } from './look.ts'
import { asciiOnly } from './terminal/ascii.ts'
import { sheet } from './terminal/sheet.ts'
import { unitWord, usd } from './terminal/words.ts'

export function terminalUnitPrices(list: readonly UnitPriceOut[], look: Look): string {
  const on = sheet(look), clean = (text: string): string => (look.ascii ? asciiOnly(printable(text)) : printable(text))
  on.section('unit prices, for change orders', '$')
  for (const u of list) on.row({ text: clean(`${u.what}, ${unitWord(u.unit)}`), right: usd(u.priceCents) })
  on.row({ text: 'For work beside this job, at its rates and margin, without access factors: the crew is there and has its tools. No minimum charge.' })
  return on.text()
}

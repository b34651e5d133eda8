// Tests before and after, what was expected, and the fresh air that follows from the reading.
import { describe, expect, test } from 'vitest'
import type { AsBuiltOut } from '../../src/closeout/output.ts'
import { closed, text } from './close.ts'

const JOB = text('examples/quince-lane-14.job.yaml'), FAN = text('examples/fern-hollow-9.job.yaml')
const out50 = (cfm50: number, more = ', sameSetUp: yes'): Promise<AsBuiltOut> => closed(`days: [2026-05-04]\ntests: {on: 2026-05-04, cfm50: ${cfm50}${more}}`, JOB)
const codes = (out: AsBuiltOut): string[] => out.findings.map(f => f.code)

describe('side by side', () => {
  // 2,280 before; 205 to 410 less expected.
  test.each([[2080, 'less'], [2070, 'within'], [1935, 'within'], [1872, 'within'], [1860, 'more']] as const)('%s CFM50 after is %s', async (after, against) => {
    const { air } = await out50(after)
    expect(air!.cfm50).toEqual({ in: 2280, out: after, less: 2280 - after, lessPct: Math.round((2280 - after) / 2280 * 1000) / 10 })
    expect(air!.against).toBe(against)
    expect(air!.predicted).toEqual({ cfm50CutLow: 205, cfm50CutExpected: 301, cfm50CutHigh: 410 })
  })
  test('a house that leaks as before is told', async () => {
    const out = await out50(2300)
    expect(out.air!.cfm50!.less).toBe(-20)
    expect(codes(out)).toContain('not-tighter')
  })
  test('another set-up, or none that is known, is no pair', async () => {
    for (const more of ['', ', sameSetUp: no']) {
      const out = await out50(1935, more)
      expect([out.air!.against, codes(out).includes('no-pair-of-tests')]).toEqual([undefined, true])
    }
  })
  test('a CFM50 that was guessed before the work is no reading beside one', async () => {
    const out = await closed('tests: {cfm50: 1935, sameSetUp: yes}', JOB.replace('tests: {cfm50: 2280}', 'tests: {cfm50: 2280, cfm50Assumed: yes}'))
    expect([out.air!.cfm50, out.air!.against]).toEqual([{ out: 1935 }, undefined])
  })
  test('a test that the job asks for and nobody wrote is left to do', async () => {
    const asked = JOB.replace('tests: {cfm50: 2280}', 'tests: {cfm50: 2280, blowerDoor: out}')
    expect((await closed('flags: 0', asked)).open).toContainEqual(expect.objectContaining({ code: 'test-missing', of: 'cfm50' }))
    expect((await closed('tests: {cfm50: 1935}', asked)).open.map(o => o.code)).not.toContain('test-missing')
  })
  test('air changes by the volume', async () => {
    const out = await closed('tests: {cfm50: 1900, sameSetUp: yes}', JOB.replace('bedrooms: 3', 'bedrooms: 3\n  volumeFt3: 9152'))
    expect(out.air!.ach50).toEqual({ in: 14.95, out: 12.46 }) // 2,280 and 1,900 · 60 ÷ 9,152
  })
})

describe('fresh air by ASHRAE 62.2, once it is measured', () => {
  // 1,144 ft², 3 bedrooms: 0.03 · 1144 + 7.5 · 4 = 64.3 cfm. Credit 0.052 · CFM50 · wsf · (height ÷ 8.2)^0.4: at 1,935, 0.7 and 8.5 ft 71.5 cfm; the old-house way (62.2-2016) adds a quarter of the local deficit.
  test('goes by the reading, not by what was expected', async () => {
    const credit = (cfm50: number): number => 0.052 * cfm50 * 0.7 * (8.5 / 8.2) ** 0.4
    for (const cfm50 of [1935, 1700, 1200]) {
      const { ventilation: v } = await out50(cfm50)
      expect(v!.measured).toBe(true)
      expect(v!.totalCfm).toBe(64)
      expect(Math.abs(v!.infiltrationCreditCfm - credit(cfm50))).toBeLessThanOrEqual(0.51)
      expect(v!.fanCfm).toBe(Math.ceil(Math.max(0, 64.32 + 110 / 4 - credit(cfm50))))
      expect(v!.fanCfmPredicted).toBe(23)
    }
  })
  test('a tighter house is short of more, and the owner’s signed choice closes it', async () => {
    const short = await out50(1200)
    expect(short.open.map(o => o.code)).toContain('fresh-air-short')
    const chosen = await closed('days: [2026-05-04]\nfreshAirChoice: papers/no-fan.pdf\ntests: {cfm50: 1200, sameSetUp: yes}', JOB)
    expect(chosen.open.map(o => o.code)).not.toContain('fresh-air-short')
    expect(chosen.ventilation!.choice).toBe('papers/no-fan.pdf')
  })
  test('a fan that was put in and measured counts', async () => {
    const none = await closed('tests: {cfm50: 1500, sameSetUp: yes}', FAN), fan = await closed('tests: {cfm50: 1500, sameSetUp: yes, fanCfm: 60}', FAN)
    expect(none.ventilation!.fanCfm - fan.ventilation!.fanCfm).toBeCloseTo(Math.min(60, none.ventilation!.fanCfm), 0)
    expect(fan.ventilation!.fanNeeded).toBe(false)
  })
  test('without a test after the work it is the estimate’s, and says so', async () => {
    const { ventilation, open } = await closed('flags: 0', JOB)
    expect(ventilation).toMatchObject({ fanCfm: 23, measured: false })
    expect(open.find(o => o.code === 'fresh-air-short')!.why).toContain('nobody has measured it')
  })
})

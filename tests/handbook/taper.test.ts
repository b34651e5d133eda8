// The eave taper against plain sums: 1/R added up over small steps, with no logarithm in it.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { eaveDepth, stripArea, stripU, stripWidth } from '../../src/calc/heat.ts'

interface Eave { base: number; heelIn: number; gapIn: number; pitch: number; wallIn: number; widthIn: number; keptIn: number; keptPerInch: number; fullIn: number; newPerInch: number }

/** Midpoint rule. */
function summedU(x: Eave, steps = 20000): number {
  const upright = x.gapIn / Math.cos(Math.atan2(x.pitch, 12))
  let sum = 0
  for (let i = 0; i < steps; i++) {
    const run = x.wallIn + (i + 0.5) / steps * x.widthIn
    const depth = Math.min(x.fullIn, Math.max(0, x.heelIn - upright + run * Math.tan(Math.atan2(x.pitch, 12))))
    const kept = Math.min(depth, x.keptIn)
    sum += 1 / (x.base + kept * x.keptPerInch + (depth - kept) * x.newPerInch)
  }
  return sum / steps
}

const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const eave = fc.record({
  base: inches(1, 3), heelIn: inches(0.5, 24), gapIn: inches(0, 3), pitch: inches(1, 14), wallIn: inches(0, 8), widthIn: inches(1, 120),
  keptIn: inches(0, 8), keptPerInch: inches(0.5, 4), fullIn: inches(8, 26), newPerInch: inches(2, 4),
})

describe('mean U of the strip', () => {
  test('is what small steps add up to: any heel, gap, pitch, layers; also where no fill reaches the plate', () => {
    fc.assert(fc.property(eave, x => {
      const exact = stripU.fn(x), summed = summedU(x)
      expect(Math.abs(exact / summed - 1), `${exact} against ${summed}`).toBeLessThan(1e-4)
    }), { numRuns: 60, seed: 31 })
  })
  test('of one depth is one over its R', () => {
    // A heel as high as the fill: nothing tapers.
    expect(stripU.fn({ base: 1.67, heelIn: 30, gapIn: 1, pitch: 5, wallIn: 0, widthIn: 40, keptIn: 3, keptPerInch: 3, fullIn: 12, newPerInch: 3.6 })).toBeCloseTo(1 / (1.67 + 9 + 9 * 3.6), 12)
  })
  test('one material laid in two layers is one material', () => {
    fc.assert(fc.property(eave, x => {
      expect(stripU.fn({ ...x, keptPerInch: x.newPerInch })).toBeCloseTo(stripU.fn({ ...x, keptIn: 0 }), 10)
    }), { numRuns: 100, seed: 32 })
  })
})

describe('width of the strip', () => {
  test('ends where the fill is full', () => {
    fc.assert(fc.property(eave, x => {
      const width = stripWidth.fn({ heelIn: x.heelIn, gapIn: x.gapIn, pitch: x.pitch, fullIn: x.fullIn, wallIn: x.wallIn, mostIn: 6000 })
      const depth = (run: number) => eaveDepth.fn({ heelIn: x.heelIn, gapIn: x.gapIn, pitch: x.pitch, runIn: run, fullIn: x.fullIn })
      expect(depth(x.wallIn + width)).toBeCloseTo(x.fullIn, 8)
      if (width > 0.5) expect(depth(x.wallIn + width - 0.25)).toBeLessThan(x.fullIn)
    }), { numRuns: 200, seed: 33 })
  })
})

describe('area of the strip', () => {
  test('on four sides is the rectangle less the rectangle inside', () => {
    fc.assert(fc.property(inches(20, 80), inches(20, 80), inches(1, 100), (long, wide, widthIn) => {
      const w = widthIn / 12
      expect(stripArea.fn({ eaveFt: 2 * (long + wide), widthIn, corners: 4 })).toBeCloseTo(long * wide - (long - 2 * w) * (wide - 2 * w), 6)
    }), { numRuns: 200, seed: 34 })
  })
})

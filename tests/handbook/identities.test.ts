// What must hold for any figures: geometry done another way, and definitions read backwards.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chartFormulas } from '../../src/books/chart.ts'
import { baffleLength, bags, bays, blownFromSettled, coverageFromWeight, joistShare, layerWeight, markers, topOfFill } from '../../src/calc/fill.ts'
import { averageR, fieldU, joistPathR, layerR, newAboveJoist, pathU, pathUa, rPerInch, seriesR, squeezeLoss } from '../../src/calc/heat.ts'
import { accessFactor, blowFactor } from '../../src/calc/arithmetic.ts'
import { crewDays, halfDays, marginOf, markupOf, wholeDays } from '../../src/calc/price.ts'
import { bead, boardArea, boxBoard, boxSeams, boxTop, chimneyStrip, clearOf, edge, edgeOut, ring, ringArea, stripMetal } from '../../src/calc/seal.ts'

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const holds = (...args: [...fc.Arbitrary<number>[], (...x: number[]) => void]) => {
  const numbers = args.slice(0, -1) as fc.Arbitrary<number>[], check = args.at(-1) as (...x: number[]) => void
  fc.assert(fc.property(fc.tuple(...numbers), x => { check(...x) }), { numRuns: 200, seed: 7 })
}
const near = (a: number, b: number) => expect(Math.abs(a - b), `${a} and ${b}`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(a), Math.abs(b)))

describe('heat', () => {
  test('U times R is 1, and the base comes off again', () => holds(from(0.2, 20), from(0.5, 100), (base, fill) => {
    const total = seriesR.fn({ base, fill })
    near(pathU.fn({ totalR: total }) * total, 1)
    near(averageR.fn({ u: 1 / total, base }), fill)
    near(pathUa.fn({ areaFt2: total, u: 1 / total }), 1)
  }))
  test('R per inch times inches is R', () => holds(from(1, 100), from(0.5, 50), (r, depthIn) => near(layerR.fn({ depthIn, perInch: rPerInch.fn({ r, depthIn }), squeezed: 0 }), r)))
  test('a batt squeezed to half would lose a quarter of its R', () => holds(from(2, 20), labelIn => near(squeezeLoss.fn({ depthIn: labelIn / 2, labelIn }), 0.25)))
  test('paths of one R make that R; the mean lies between the worst and the best path', () => holds(from(0, 0.3), from(0, 0.2), from(5, 60), from(1, 5), from(5, 40), (framing, gaps, cavityR, gapR, joistR) => {
    near(fieldU.fn({ framing, gaps, cavityR, gapR: cavityR, joistR: cavityR }), 1 / cavityR)
    const u = fieldU.fn({ framing, gaps, cavityR, gapR, joistR })
    expect(u).toBeGreaterThanOrEqual(1 / Math.max(cavityR, gapR, joistR) - 1e-12)
    expect(u).toBeLessThanOrEqual(1 / Math.min(cavityR, gapR, joistR) + 1e-12)
  }))
  test('the joist path adds up from ceiling to top', () => holds(from(1, 2), from(3, 12), from(0, 12), from(1, 20), (base, joistIn, keptIn, depthIn) => {
    const topIn = topOfFill.fn({ keptIn, depthIn }), keptAboveIn = Math.max(0, keptIn - joistIn), newAboveIn = newAboveJoist.fn({ topIn, joistIn, keptIn })
    // With everything R 1 per inch the path is as long as it is high.
    near(joistPathR.fn({ base, joistIn, woodPerInch: 1, keptAboveIn, keptPerInch: 1, newAboveIn, newPerInch: 1 }), base + Math.max(topIn, joistIn))
  }))
})

describe('fill', () => {
  test('mass stays while the fill settles', () => holds(from(1, 30), from(0, 0.3), from(0.5, 3), (settledIn, lost, settledPcf) => {
    const blownIn = blownFromSettled.fn({ settledIn, lost })
    near(layerWeight.fn({ depthIn: blownIn, densityPcf: settledPcf * (1 - lost) }), layerWeight.fn({ depthIn: settledIn, densityPcf: settledPcf }))
  }))
  test('bags weigh what lies between the joists', () => holds(from(100, 3000), from(12, 24), from(0, 12), from(2, 24), from(0.3, 3), (netAreaFt2, spacingIn, exposedJoistIn, settledDepthIn, weightPsf) => {
    const framingShare = joistShare.fn({ joistWidthIn: 1.5, spacingIn })
    const count = bags.fn({ netAreaFt2, framingShare, exposedJoistIn, settledDepthIn, coverageFt2: coverageFromWeight.fn({ bagLb: 25, weightPsf }) })
    const wood = netAreaFt2 * framingShare * Math.min(exposedJoistIn, settledDepthIn) / 12
    near(count * 25, (netAreaFt2 * settledDepthIn / 12 - wood) * (weightPsf / settledDepthIn * 12))
  }))
  test('a marker serves 300 ft² at most, and one less would not do', () => holds(from(1, 20000), areaFt2 => {
    const n = markers.fn({ areaFt2 })
    expect(areaFt2 / n).toBeLessThanOrEqual(300 + 1e-6)
    if (n > 1) expect(areaFt2 / (n - 1)).toBeGreaterThan(300)
  }))
  test('bays fit under the eave, and one more would not', () => holds(from(5, 200), from(12, 24), (eaveFt, spacingIn) => {
    const n = bays.fn({ eaveFt, spacingIn })
    expect(n * spacingIn).toBeLessThanOrEqual(eaveFt * 12 + 1e-6)
    expect((n + 1) * spacingIn).toBeGreaterThan(eaveFt * 12)
  }))
  test('the baffle ends as high above the fill as asked', () => holds(from(8, 24), from(0, 6), from(1, 7), from(0, 2), from(2, 14), (topIn, marginIn, heelIn, gapIn, pitch) => {
    const roof = Math.atan2(pitch, 12), length = baffleLength.fn({ topIn, marginIn, heelIn, gapIn, pitch, outsideIn: 0 })
    near(heelIn - gapIn / Math.cos(roof) + length * Math.sin(roof), topIn + marginIn)
  }))
  test('between two rows: at the rows the rows, halfway the mean', () => holds(from(0.1, 3), from(0.1, 3), from(10, 40), from(1, 20), (lower, upper, lowerR, step) => {
    const at = (r: number) => chartFormulas.between.fn({ lower, upper, r, lowerR, upperR: lowerR + step })
    near(at(lowerR), lower)
    near(at(lowerR + step), upper)
    near(at(lowerR + step / 2), (lower + upper) / 2)
  }))
})

describe('pieces', () => {
  const side = from(4, 60)
  test('edges of a grown rectangle', () => holds(side, side, from(0, 12), (l, w, out) => {
    const [l2, w2] = [clearOf.fn({ sizeIn: l, keepIn: out }), clearOf.fn({ sizeIn: w, keepIn: out })]
    near(edgeOut.fn({ lengthIn: l, widthIn: w, outIn: out }), edge.fn({ lengthIn: l2, widthIn: w2 }))
    near(ringArea.fn({ lengthIn: l, widthIn: w, offIn: out }), boardArea.fn({ lengthIn: l, widthIn: w, lapIn: out }) - boardArea.fn({ lengthIn: l, widthIn: w, lapIn: 0 }))
  }))
  test('a ring is longer than a hexagon in it and shorter than a square round it', () => holds(from(1, 20), d => {
    const round = ring.fn({ diameterIn: d, count: 1 })
    expect(round).toBeGreaterThan(3 * d)
    expect(round).toBeLessThan(4 * d)
  }))
  test('a round bead is a cylinder: twice as wide takes four times as much, and less than a square one', () => holds(from(1, 5000), from(0.1, 1), (runIn, beadIn) => {
    near(bead.fn({ runIn, beadIn: 2 * beadIn }), 4 * bead.fn({ runIn, beadIn }))
    near(bead.fn({ runIn, beadIn }) * 231 / 128, runIn * Math.PI * (beadIn / 2) ** 2)
    expect(bead.fn({ runIn, beadIn })).toBeLessThan(runIn * beadIn ** 2 * 128 / 231)
  }))
  test('box: five panels, cut one by one', () => holds(side, side, from(0.25, 1), from(4, 30), (l, w, b, h) => {
    const panels = [[l + 2 * b, h], [l + 2 * b, h], [w, h], [w, h], [l + 2 * b, w + 2 * b]].map(([x, y]) => x! * y!)
    near(boxBoard.fn({ lengthIn: l, widthIn: w, boardIn: b, heightIn: h, count: 3 }), 3 * panels.reduce((a, x) => a + x, 0) / 144)
    const outside = edge.fn({ lengthIn: l + 2 * b, widthIn: w + 2 * b })
    near(boxSeams.fn({ lengthIn: l, widthIn: w, boardIn: b, heightIn: h, count: 3 }), 3 * (outside + outside + 4 * h))
    near(boxTop.fn({ lengthIn: l, widthIn: w, count: 3 }), 3 * boardArea.fn({ lengthIn: l, widthIn: w, lapIn: 0 }))
  }))
  test('the chimney strip lies between its inner and its outer edge', () => holds(side, side, from(0, 6), (l, w, gap) => {
    const strip = chimneyStrip.fn({ lengthIn: l, widthIn: w, gapIn: gap, legIn: 1.5, lapIn: 2 }), widthIn = 1.5 + gap + 2
    expect(strip).toBeGreaterThan(stripMetal.fn({ runIn: edge.fn({ lengthIn: l, widthIn: w }), widthIn }))
    expect(strip).toBeLessThan(stripMetal.fn({ runIn: edgeOut.fn({ lengthIn: l, widthIn: w, outIn: gap + 2 }), widthIn }))
    // The flat part alone is the frame between brick and its outer edge: the strip's middle line times its width.
    near(chimneyStrip.fn({ lengthIn: l, widthIn: w, gapIn: gap, legIn: 0, lapIn: 2 }), ringArea.fn({ lengthIn: l, widthIn: w, offIn: gap + 2 }))
  }))
})

describe('work and price', () => {
  test('access factors multiply up to the cap; the hose feels headroom by its root', () => holds(from(1, 2.2), from(1, 1.5), (headroom, webs) => {
    near(accessFactor.fn({ headroom, oldFill: 1, webs, hatch: 1, air: 1, cap: 3 }), Math.min(3, headroom * webs))
    near(blowFactor.fn({ headroom }) ** 2, headroom)
  }))
  test('days hold the hours: crew time less daily set-up', () => holds(from(1, 200), from(1, 6), from(5, 10), (hours, crew, hoursPerDay) => {
    const days = crewDays.fn({ hours, crew, hoursPerDay, dailyHours: 1.5 })
    near(days * crew * hoursPerDay, hours + 1.5 * days)
    const half = halfDays.fn({ days })
    near(half * 2, Math.round(half * 2))
    // Never more than a tenth of a half day short, never a half day over.
    expect(half).toBeGreaterThanOrEqual(days - 0.05 - 1e-9)
    expect(half).toBeLessThan(days + 0.5)
    expect(wholeDays.fn({ days: half })).toBe(Math.ceil(half))
  }))
  test('margin m is markup m ÷ (1 − m)', () => holds(from(1, 1e6), from(1.01, 5), (costCents, times) => {
    const m = marginOf.fn({ priceCents: costCents * times, costCents }) / 100, k = markupOf.fn({ priceCents: costCents * times, costCents }) / 100
    near(k, m / (1 - m))
  }))
})

// Tape notation as crews write it. Expected figures are worked by hand: 1 ft = 12 in.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asFeet, asTape, readNumber, type Grammar } from '../../src/units/tape.ts'

describe('reads', () => {
  const read: readonly [Grammar, string, number][] = [
    ['inches', '3/8', 0.375], ['inches', '3 1/2', 3.5], ['inches', '3-1/2', 3.5], ['inches', '7 1/2"', 7.5], ['inches', "7 1/2''", 7.5], ['inches', '7 1/2\u201d', 7.5], ['inches', '5/8"', 0.625],
    ['inches', '14', 14], ['inches', '14.25', 14.25], ['inches', '.5', 0.5], ['inches', ' 14 ', 14], ['inches', '3 / 4', 0.75],
    ['feet', "14'7", 14 + 7 / 12], ['feet', `14' 7 1/2"`, 14 + 7.5 / 12], ['feet', "14'", 14], ['feet', `14'7"`, 14 + 7 / 12], ['feet', '14\u20197\u201d', 14 + 7 / 12], ['feet', '28\u2032', 28], ['feet', '14\u20327\u2033', 14 + 7 / 12], ['feet', "14'11 3/4", 14 + 11.75 / 12], ['feet', "14'07", 14 + 7 / 12], ['inches', '7 1/2\u2033', 7.5], ['feet', "0'6", 0.5], ['feet', `4' 3/4"`, 4 + 0.75 / 12],
    ['feet', '14.5', 14.5], ['feet', '186', 186],
    ['number', '12', 12], ['number', '1.5', 1.5], ['number', '.5', 0.5],
  ]
  test.each(read)('%s: %s', (as, text, value) => {
    expect(readNumber(text, as)?.value).toBeCloseTo(value, 12)
    expect(readNumber(text, as)?.about).toBe(false)
    expect(readNumber(`~${text.trim()}`, as)).toEqual({ value: readNumber(text, as)!.value, about: true })
  })
})

describe('refuses', () => {
  test.each<[Grammar, string]>([
    ['inches', "14'7"], ['inches', '3 1/2 in'], ['inches', '1/0'], ['inches', '0/0'], ['inches', '3 1/'], ['inches', '-3'], ['inches', '1,200'], ['inches', ''], ['inches', '~'], ['inches', '3 4'], ['inches', '1e3'],
    ['feet', '12 ft'], ['feet', '7 1/2'], ['feet', '3/8'], ['feet', `7"`], ['feet', "14' 7 1/0"], ['feet', "'7"], ['feet', '~~22'], ['feet', "52'14"], ['feet', `52'12"`], ['feet', "4'110"], ['feet', '14 7'],
    ['number', '3/8'], ['number', '12:30'], ['number', '0x1F'], ['number', '.'], ['number', '9'.repeat(400)], ['number', 'Infinity'], ['number', 'NaN'],
  ])('%s: %s', (as, text) => { expect(readNumber(text, as)).toBeUndefined() })
})

describe('writes', () => {
  test.each([[14.25, '14 1/4'], [0.375, '3/8'], [12, '12'], [0, '0'], [5.5, '5 1/2'], [3 + 15 / 16, '3 15/16'], [2.999, '3']])('%d in is %s', (inches, text) => { expect(asTape(inches)).toBe(text) })
  test.each([[14 + 7 / 12, `14'7"`], [0.5, `0'6"`], [12, `12'0"`], [10 + 3.25 / 12, `10'3 1/4"`], [11.9999, `12'0"`]])('%d ft is %s', (feet, text) => { expect(asFeet(feet)).toBe(text) })
  test('what is written is read again', () => {
    fc.assert(fc.property(fc.nat(16 * 400), sixteenths => { expect(readNumber(asTape(sixteenths / 16), 'inches')?.value).toBe(sixteenths / 16) }))
    fc.assert(fc.property(fc.nat(4 * 12 * 500), quarters => { expect(readNumber(asFeet(quarters / 48), 'feet')?.value).toBeCloseTo(quarters / 48, 9) }))
  })
})

// Suggestions, and what may reach a screen.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { printable, steering } from '../../src/findings/printable.ts'
import { distance, nearest } from '../../src/findings/suggest.ts'

describe('distance', () => {
  test.each([['chimney', 'chimny', 1], ['gasket', 'gaskte', 1], ['', 'abc', 3], ['kitten', 'sitting', 3], ['same', 'same', 0]])('%s, %s: %d', (a, b, far) => { expect(distance(a, b)).toBe(far) })
  test('is the same both ways, and no more than the longer word', () => {
    const word = fc.string({ maxLength: 12 })
    fc.assert(fc.property(word, word, (a, b) => {
      expect(distance(a, b)).toBe(distance(b, a))
      expect(distance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length))
      expect(distance(a, a)).toBe(0)
    }))
  })
})

describe('nearest', () => {
  const kinds = ['top-plate', 'recessed-light', 'chimney', 'dropped-soffit', 'hatch']
  test.each([['chimny', 'chimney'], ['Hatch', 'hatch'], ['recesed-lihgt', 'recessed-light'], ['top plate', 'top-plate'], ['hacth', 'hatch']])('%s: %s', (word, meant) => { expect(nearest(word, kinds)).toBe(meant) })
  test.each(['skylight', 'x', '', 'duct'])('%s: nothing is near enough to be meant', word => { expect(nearest(word, kinds)).toBeUndefined() })
  test('the nearer of two, and the first of equals', () => {
    expect(nearest('iecc-2020', ['iecc-2009', 'iecc-2021'])).toBe('iecc-2021')
    expect(nearest('abd', ['abcd', 'abde'])).toBe('abcd')
  })
  test('a word of one or two letters is not every other word', () => { expect(nearest('no', ['ic', 'w'])).toBeUndefined() })
})

describe('two letters', () => {
  // On a keyboard n lies beside m, b, h and j; of the states MO alone is N O with one such slip.
  test.each([['NO', 'MO'], ['mo', 'MO'], ['XT', 'TX'], ['IM', 'MI'], ['NX', 'NC'], ['ZZ', undefined], ['QQ', undefined], ['MM', undefined]])('%s: %s', (word, meant) => { expect(nearest(word, 'MO CO NC CT TX MI MN NM'.split(' '))).toBe(meant) })
})

describe('printable', () => {
  test.each([
    ['plain, with \u00bd and \u00b2', 'plain, with \u00bd and \u00b2'], ['\u001b[2J', '\\u001b[2J'], ['a\nb\tc\r', 'a\\nb\\tc\\r'], ['\u009b2J', '\\u009b2J'], ['\u007f', '\\u007f'],
    ['abc\u202ecba', 'abc\\u202ecba'], ['\u2066x\u2069', '\\u2066x\\u2069'], ['\ud800', '\\ud800'], ['a\u2028b', 'a\\u2028b'], ['\u{1f3e0}', '\u{1f3e0}'],
  ])('%j', (text, shown) => { expect(printable(text)).toBe(shown) })
  test('leaves nothing that steers', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), text => { expect(printable(text)).toMatch(/^[^\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]*$/u) }))
  })
  test('the first steering sign is named; line ends and tabs are none', () => {
    expect(steering('a\nb\tc')).toBeUndefined()
    expect(steering('a\n\u001bb\u202e')).toBe('\\u001b')
  })
})

/** Edit distance with neighboring letters swapped counted once. */
export function distance(a: string, b: string): number {
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + cost)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, before[j - 2]! + 1)
      row.push(best)
    }
    before = last
    last = row
  }
  return last[b.length]!
}

const KEY_ROWS = ['1234567890', 'qwertyuiop', 'asdfghjkl', 'zxcvbnm']

/** Keys side by side, or one over the other. */
function neighbors(a: string, b: string): boolean {
  const [i, j] = [a, b].map(k => KEY_ROWS.findIndex(r => r.includes(k)))
  if (i === undefined || j === undefined || i < 0 || j < 0 || Math.abs(i - j) > 1) return false
  const across = KEY_ROWS[j]!.indexOf(b) - KEY_ROWS[i]!.indexOf(a)
  return i === j ? Math.abs(across) === 1 : i < j ? across === 0 || across === -1 : across === 0 || across === 1
}

/** Of two letters nearly every other pair is one letter away: only a swap, or a finger that hit the key beside, tells what was meant. */
function nearestPair(plain: string, allowed: readonly string[]): string | undefined {
  const swapped = allowed.find(a => [plain, plain[1]! + plain[0]!].includes(a.toLowerCase()))
  const slipped = allowed.filter(a => a.length === 2 && [0, 1].some(n => a[1 - n]!.toLowerCase() === plain[1 - n] && neighbors(a[n]!.toLowerCase(), plain[n]!)))
  return swapped ?? (slipped.length === 1 ? slipped[0] : undefined)
}

/** The allowed word nearest to a mistyped one, if it is near enough to be meant. */
export function nearest(word: string, allowed: readonly string[]): string | undefined {
  const plain = word.toLowerCase()
  if (plain.length === 2 && allowed.every(a => a.length <= 2)) return nearestPair(plain, allowed)
  let best: { word: string; far: number } | undefined
  for (const a of allowed) {
    const far = distance(plain, a.toLowerCase())
    if (far <= Math.max(2, Math.floor(a.length / 3)) && far < a.length && (!best || far < best.far)) best = { word: a, far }
  }
  return best?.word
}

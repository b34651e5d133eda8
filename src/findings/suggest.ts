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

/** The allowed word nearest to a mistyped one, if it is near enough to be meant. */
export function nearest(word: string, allowed: readonly string[]): string | undefined {
  const plain = word.toLowerCase()
  let best: { word: string; far: number } | undefined
  for (const a of allowed) {
    const far = distance(plain, a.toLowerCase())
    if (far <= Math.max(2, Math.floor(a.length / 3)) && far < a.length && (!best || far < best.far)) best = { word: a, far }
  }
  return best?.word
}

/** A word with its article, by the letter it begins with: an oven. */
export const a = (word: string): string => `${/^[aeiou]/i.test(word) ? 'an' : 'a'} ${word}`

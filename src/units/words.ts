/** A word with its article, by the letter it begins with: an oven. */
export const a = (word: string): string => `${/^[aeiou]/i.test(word) ? 'an' : 'a'} ${word}`
/** How a day is written, 2026-04-01; whether its month has it is asked apart. */
export const DAY_PATTERN = '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$'

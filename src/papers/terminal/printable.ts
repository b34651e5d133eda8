/** The text without anything that steers a terminal. */
export const printable = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '')

// Letters for terminals, logs and printers that know only 0x20 to 0x7E.

const SIGNS: Readonly<Record<string, string>> = {
  '×': 'x', '÷': '/', '⁄': '/', '−': '-', '‐': '-', '‑': '-', '–': '-', '—': '-', '‘': "'", '’': "'", '′': "'", '“': '"', '”': '"', '″': '"', '·': '.', '•': '-',
  '°': '', '≤': '<=', '≥': '>=', '≈': '~', '±': '+/-', 'μ': 'u', 'ß': 'ss', 'æ': 'ae', 'Æ': 'AE', 'œ': 'oe', 'Œ': 'OE', 'ø': 'o', 'Ø': 'O', 'ł': 'l', 'Ł': 'L', 'đ': 'd', 'Đ': 'D',
}

/** The text in 0x20 to 0x7E and line ends: ft² is ft2, é is e, 14½ is 14 1/2; a letter that has no such form is `?`. */
export function asciiOnly(text: string): string {
  if (/^[\n\x20-\x7e]*$/.test(text)) return text
  return text.replace(/(\d)(?=[¼½¾⅓⅔⅛⅜⅝⅞])/g, '$1 ').normalize('NFKD').replace(/\p{M}/gu, '').replace(/[^\n\x20-\x7e]/gu, c => SIGNS[c] ?? '?')
}

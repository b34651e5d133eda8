// Types of what runs in the browser: there it knows document and window, which nothing else here does.
export function laidOut(sheet: { width: number; height: number }): { wide: string[]; cut: string[]; inch: number | undefined }
export function width(): number
export function strange(): string[]
export function shows(text: string): boolean
export function axeFindings(rules: string[]): Promise<string[]>
export function differing(estimate: unknown): string[]

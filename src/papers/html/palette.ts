// The colors of all papers: ink for what is, chalk for what is ours, oxide for what must not be. No two differ by color alone.

export interface Palette { readonly ink: string; readonly chalk: string; readonly oxide: string; readonly gray: string; readonly hair: string; readonly paper: string; readonly kraft: string; readonly tint: string }

/** Print, and a light screen. `kraft` lies behind what is stopped or left out, `tint` behind new fill alone; `hair` draws lines and never text. */
export const light: Palette = { ink: '#1D2126', chalk: '#1B5583', oxide: '#94331C', gray: '#5A6068', hair: '#7C828A', paper: '#FFFFFF', kraft: '#F4EFE6', tint: '#DCE8F1' }
/** A dark screen. */
export const dark: Palette = { ink: '#ECE7DD', chalk: '#93C4EA', oxide: '#F2A186', gray: '#A9AFB6', hair: '#757C84', paper: '#15191D', kraft: '#20262C', tint: '#22333F' }

export const variables = (colors: Palette): string => Object.entries(colors).map(([name, color]) => `--${name}:${color}`).join(';')

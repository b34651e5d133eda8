/** What a text can be shown on: its columns, and whether it has color and letters beyond ASCII. */
export interface Look { readonly width: number; readonly color: boolean; readonly ascii: boolean }

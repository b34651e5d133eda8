// A row of a table in columns, laid by the table library; no lines are drawn.
import Table from 'cli-table3'

export interface Column { readonly width: number; readonly right: boolean }

/**
 * A row in columns so far apart. Each cell comes as lines that fit its column: the library would cut a long word off.
 * It compares each cell of a table with every other, so each row is a table of its own, and each line of it a row.
 */
export function laid(cells: readonly (readonly string[])[], cols: readonly Column[], apart: number): string[] {
  const none = { top: '', 'top-mid': '', 'top-left': '', 'top-right': '', bottom: '', 'bottom-mid': '', 'bottom-left': '', 'bottom-right': '', left: '', 'left-mid': '', mid: '', 'mid-mid': '', right: '', 'right-mid': '' }
  const table = new Table({ chars: { ...none, middle: ' '.repeat(apart) }, style: { head: [], border: [], compact: true, 'padding-left': 0, 'padding-right': 0 }, colWidths: cols.map(c => c.width), colAligns: cols.map(c => c.right ? 'right' : 'left') })
  for (let i = 0; i < Math.max(...cells.map(c => c.length)); i++) table.push(cells.map(c => c[i] ?? ''))
  return table.toString().split('\n')
}

// What the papers at the end of a job have to show, field by field.
import { table } from './table.ts'

/** Parts of the house stand apart: areas and R are never added across them, and R is the maker’s, never R of an inch times inches (16 CFR 460.17). */
export const receiptFields = table<{ of: 'loose-fill' | 'other' | 'paper'; field: string; title: string }>({
  name: 'receipt-fields', title: 'What the installer’s receipt shows', use: 'says which lines of a receipt are empty', source: '16 CFR 460.17', obtained: 'published, seen in a copy', units: {},
  rows: [
    { of: 'loose-fill', field: 'coverageFt2', title: 'coverage area' },
    { of: 'loose-fill', field: 'initialIn', title: 'initial installed thickness' },
    { of: 'loose-fill', field: 'settledIn', title: 'minimum settled thickness' },
    { of: 'loose-fill', field: 'rValue', title: 'R-value' },
    { of: 'loose-fill', field: 'bags', title: 'number of bags used' },
    { of: 'other', field: 'coverageFt2', title: 'coverage area' },
    { of: 'other', field: 'thicknessIn', title: 'thickness' },
    { of: 'other', field: 'rValue', title: 'R-value' },
    { of: 'paper', field: 'signedOn', title: 'date' },
    { of: 'paper', field: 'name', title: 'signature of the installer' },
  ],
})

/** Signed, dated and posted where it is seen. */
export const certificateFields = table<{ of: 'loose-fill' | 'other' | 'paper'; field: string; title: string }>({
  name: 'certificate-fields', title: 'What the insulation certificate shows', use: 'says which lines of an insulation certificate are empty', source: 'IECC R303.1.1 (2009: 303.1.1)', obtained: 'from memory, high', units: {},
  rows: [
    { of: 'loose-fill', field: 'material', title: 'type' },
    { of: 'loose-fill', field: 'maker', title: 'manufacturer' },
    { of: 'loose-fill', field: 'initialIn', title: 'initial installed thickness' },
    { of: 'loose-fill', field: 'settledIn', title: 'settled thickness' },
    { of: 'loose-fill', field: 'rValue', title: 'settled R-value' },
    { of: 'loose-fill', field: 'densityPcf', title: 'installed density' },
    { of: 'loose-fill', field: 'coverageFt2', title: 'coverage area' },
    { of: 'loose-fill', field: 'bags', title: 'number of bags installed' },
    { of: 'other', field: 'material', title: 'type' },
    { of: 'other', field: 'maker', title: 'manufacturer' },
    { of: 'other', field: 'rValue', title: 'R-value' },
    { of: 'paper', field: 'signedOn', title: 'date' },
    { of: 'paper', field: 'name', title: 'signature of the installer' },
  ],
})

// What federal rules ask a seller of insulation to say or show before a homeowner signs. The words in quotes are the rules' own.
export interface Duty { readonly id: string; readonly says: string; readonly source: string; readonly obtained: string }

const duty = <const I extends string>(id: I, says: string, source: string, obtained: string): Duty & { readonly id: I } => ({ id, says, source, obtained })

export const duties = {
  factSheet: duty('fact-sheet', 'The installer shows the fact sheet of each insulation before the customer agrees to buy it.', '16 CFR 460.15', 'section seen in a copy'),
  rValue: duty('r-value', 'The higher the R-value, the greater the insulating power. Ask your seller for the fact sheet on R-values.', '16 CFR 460.18(a)', 'wording from memory, high'),
  savings: duty('savings', 'Savings vary. Find out why in the seller’s fact sheet on R-values. Higher R-values mean greater insulating power.', '16 CFR 460.19(b)', 'wording from memory, high'),
  combined: duty('combined', 'Where several products cut fuel use together, how much comes from each is said.', '16 CFR 460.19', 'from memory, medium'),
  receipt: duty('receipt', 'After the work: a signed and dated receipt, for each part of the house on its own.', '16 CFR 460.17', 'section seen in a copy'),
  cancel: duty('cancel', 'You, the buyer, may cancel this transaction at any time prior to midnight of the third business day after the date of this transaction. See the attached notice of cancellation form for an explanation of this right.', '16 CFR 429.1(a)', 'wording from memory, high'),
} as const

import { formula } from '../units/quantity.ts'

/** Fans that run together pull the house down by at least this, where the appliance's zone is open to it. */
export const depressurization = formula({ id: 'depressurization', says: '50 · (exhaust ÷ CFM50) ^ (1 ÷ exponent)', symbols: '50 * (exhaustCfm / cfm50)^(1 / exponent)', source: 'power law of building leakage (ASTM E779), solved for pressure',
  args: { exhaustCfm: ['cfm', 0, 20000], cfm50: ['cfm', 50, 50000], exponent: ['factor', 0.5, 1] }, gives: 'Pa', fn: x => 50 * (x.exhaustCfm / x.cfm50) ** (1 / x.exponent) })

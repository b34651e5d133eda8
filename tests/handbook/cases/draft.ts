import { digit, group } from '../case.ts'

export default [
  ...group({ formula: 'depressurization', source: 'power law with exponent 0.65, worked out apart from the program', obtained: 'computed independently', ...digit(0.01) }, [
    { id: '250 cfm, 2,600 CFM50', inputs: { exhaustCfm: 250, cfm50: 2600, exponent: 0.65 }, expected: 1.36 },
    { id: '250 cfm, 1,950 CFM50', inputs: { exhaustCfm: 250, cfm50: 1950, exponent: 0.65 }, expected: 2.12 },
    { id: '250 cfm, 1,200 CFM50', inputs: { exhaustCfm: 250, cfm50: 1200, exponent: 0.65 }, expected: 4.48 },
    { id: '600 cfm hood, 1,500 CFM50', inputs: { exhaustCfm: 600, cfm50: 1500, exponent: 0.65 }, expected: 12.2, ...digit(0.1) },
  ]),
]

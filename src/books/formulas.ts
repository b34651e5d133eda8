// Every formula, for who lists them: the modules of calc, those beside the chart, and the sum.
import * as air from '../calc/air.ts'
import * as arithmetic from '../calc/arithmetic.ts'
import * as dense from '../calc/dense.ts'
import * as draft from '../calc/draft.ts'
import * as duct from '../calc/duct.ts'
import * as energy from '../calc/energy.ts'
import * as fill from '../calc/fill.ts'
import * as heat from '../calc/heat.ts'
import * as leak from '../calc/leak.ts'
import * as price from '../calc/price.ts'
import * as proof from '../calc/proof.ts'
import * as seal from '../calc/seal.ts'
import * as spread from '../calc/spread.ts'
import * as vent from '../calc/vent.ts'
import { sum, type Formula } from '../units/quantity.ts'
import { chartFormulas } from './chart.ts'

const isFormula = (v: unknown): v is Formula => typeof v === 'object' && v !== null && 'says' in v && 'args' in v && 'fn' in v

export const formulas: readonly Formula[] = [air, arithmetic, dense, draft, duct, energy, fill, heat, leak, price, proof, seal, spread, vent, chartFormulas].flatMap(m => Object.values(m).filter(isFormula)).concat(sum)

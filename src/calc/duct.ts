import { formula } from '../units/quantity.ts'
import { IN2_PER_FT2, IN3_PER_GAL, IN_PER_FT } from '../units/convert.ts'

/** Ducts: their skin, their joints, what seals and wraps them, and the heat they lose on the way. */

const RUN_FT = 500

export const roundOutside = formula({ id: 'round-outside', says: 'π · (diameter + 2 · what lies on it)', symbols: 'pi * (diameterIn + 2 * onItIn)', source: 'geometry',
  args: { diameterIn: ['in', 1, 60], onItIn: ['in', 0, 12] }, gives: 'in', fn: x => Math.PI * (x.diameterIn + 2 * x.onItIn) })

export const boxOutside = formula({ id: 'box-outside', says: '2 · (width + height) + 8 · what lies on it', symbols: '2 * (widthIn + heightIn) + 8 * onItIn', source: 'geometry',
  args: { widthIn: ['in', 1, 60], heightIn: ['in', 1, 60], onItIn: ['in', 0, 12] }, gives: 'in', fn: x => 2 * (x.widthIn + x.heightIn) + 8 * x.onItIn })

/** A flat oval: two half rounds and two straights. */
export const ovalOutside = formula({ id: 'oval-outside', says: 'π · (short + 2 · what lies on it) + 2 · (long − short)', symbols: 'pi * (shortIn + 2 * onItIn) + 2 * (longIn - shortIn)', source: 'geometry',
  args: { longIn: ['in', 1, 60], shortIn: ['in', 1, 60], onItIn: ['in', 0, 12] }, gives: 'in', fn: x => Math.PI * (x.shortIn + 2 * x.onItIn) + 2 * (x.longIn - x.shortIn) })

export const ovalBore = formula({ id: 'oval-bore', says: 'π ÷ 4 · short² + short · (long − short)', symbols: 'pi / 4 * shortIn^2 + shortIn * (longIn - shortIn)', source: 'geometry',
  args: { longIn: ['in', 1, 60], shortIn: ['in', 1, 60] }, gives: 'in2', fn: x => Math.PI / 4 * x.shortIn ** 2 + x.shortIn * (x.longIn - x.shortIn) })

/** What sealed ducts may leak at 25 Pa. */
export const ductAllowance = formula({ id: 'duct-allowance', says: 'floor ÷ 100 · cfm for 100 ft²', symbols: 'floorFt2 / 100 * perHundred', source: 'IECC R403.3.4: total leakage at 25 Pa by conditioned floor area',
  args: { floorFt2: ['ft2', 1, 1e5], perHundred: ['cfm', 0.5, 20] }, gives: 'cfm', fn: x => x.floorFt2 / 100 * x.perHundred })

/** A new run is hung, and joined at both ends. */
export const newRunHours = formula({ id: 'new-run-hours', says: '(length · hours a foot + 2 · hours an end) · runs · access', symbols: '(lengthFt * perFt + 2 * perEnd) * runs * access', source: 'trade arithmetic: person-hours are quantity times rate',
  args: { lengthFt: ['ft', 0.1, RUN_FT], perFt: ['h/unit', 0, 10], perEnd: ['h/unit', 0, 10], runs: ['each', 1, 100], access: ['factor', 1, 3] }, gives: 'h', fn: x => (x.lengthFt * x.perFt + 2 * x.perEnd) * x.runs * x.access })

export const ductSkin = formula({ id: 'duct-skin', says: 'way round ÷ 12 · length · runs', symbols: 'roundIn / 12 * lengthFt * runs', source: 'geometry',
  args: { roundIn: ['in', 1, 300], lengthFt: ['ft', 0.1, RUN_FT], runs: ['each', 1, 100] }, gives: 'ft2', fn: x => x.roundIn / IN_PER_FT * x.lengthFt * x.runs })

/** Wrap is cut round the outside of what is there; the allowance laps it and keeps it from being squeezed. */
export const wrapArea = formula({ id: 'wrap-area', says: '(way round + allowance) ÷ 12 · length · runs', symbols: '(roundIn + allowanceIn) / 12 * lengthFt * runs', source: 'stretch-out of duct wrap: cut length = way round the duct + allowance',
  args: { roundIn: ['in', 1, 300], allowanceIn: ['in', 0, 40], lengthFt: ['ft', 0.1, RUN_FT], runs: ['each', 1, 100] }, gives: 'ft2', fn: x => (x.roundIn + x.allowanceIn) / IN_PER_FT * x.lengthFt * x.runs })

/** Straight pieces slip into each other; a take-off and a boot collar have one joint, an adjustable elbow two ends and three seams. */
export const jointsOf = formula({ id: 'duct-joints', says: '(length ÷ piece, up) − 1 + take-offs + boots + 5 · elbows', symbols: 'max(0, up(lengthFt / pieceFt) - 1) + takeoffs + boots + 5 * elbows', source: 'convention: count of joints from length and fittings',
  args: { lengthFt: ['ft', 0.1, RUN_FT], pieceFt: ['ft', 1, 40], takeoffs: ['each', 0, 99], boots: ['each', 0, 99], elbows: ['each', 0, 99] }, gives: 'each',
  fn: x => Math.max(0, Math.ceil(x.lengthFt / x.pieceFt - 1e-9) - 1) + x.takeoffs + x.boots + 5 * x.elbows })

export const jointRun = formula({ id: 'joint-run', says: 'way round ÷ 12 · joints · runs', symbols: 'roundIn / 12 * joints * runs', source: 'geometry',
  args: { roundIn: ['in', 1, 300], joints: ['each', 0, 500], runs: ['each', 1, 100] }, gives: 'ft', fn: x => x.roundIn / IN_PER_FT * x.joints * x.runs })

export const masticVolume = formula({ id: 'mastic', says: 'run · 12 · band · thickness ÷ 231', symbols: 'runFt * 12 * bandIn * thickIn / 231', source: 'US gallon = 231 in³, exact: NIST Handbook 44, appendix C',
  args: { runFt: ['ft', 0, 1e5], bandIn: ['in', 0.5, 12], thickIn: ['in', 0.01, 0.5] }, gives: 'gal', fn: x => x.runFt * IN_PER_FT * x.bandIn * x.thickIn / IN3_PER_GAL })

/** Sheet over a gap, lapping it on both sides. */
export const patchArea = formula({ id: 'patch-area', says: 'run · 12 · (gap + 2 · lap) ÷ 144', symbols: 'runFt * 12 * (gapIn + 2 * lapIn) / 144', source: 'geometry',
  args: { runFt: ['ft', 0, 1e5], gapIn: ['in', 0, 12], lapIn: ['in', 0, 12] }, gives: 'ft2', fn: x => x.runFt * IN_PER_FT * (x.gapIn + 2 * x.lapIn) / IN2_PER_FT2 })

export const roundBore = formula({ id: 'round-bore', says: 'π ÷ 4 · diameter²', symbols: 'pi / 4 * diameterIn^2', source: 'geometry', args: { diameterIn: ['in', 1, 60] }, gives: 'in2', fn: x => Math.PI / 4 * x.diameterIn ** 2 })
export const boxBore = formula({ id: 'box-bore', says: 'width · height', symbols: 'widthIn * heightIn', source: 'geometry', args: { widthIn: ['in', 1, 60], heightIn: ['in', 1, 60] }, gives: 'in2', fn: x => x.widthIn * x.heightIn })

export const airCarried = formula({ id: 'air-carried', says: 'bore ÷ 144 · speed', symbols: 'boreIn2 / 144 * speedFpm', source: 'continuity: volume flow = area × mean velocity',
  args: { boreIn2: ['in2', 0.5, 4000], speedFpm: ['fpm', 50, 3000] }, gives: 'cfm', fn: x => x.boreIn2 / IN2_PER_FT2 * x.speedFpm })

export const ductU = formula({ id: 'u-duct', says: '1 ÷ (R on it + films)', symbols: '1 / (insulationR + films)', source: 'ASHRAE Handbook Fundamentals, duct design: overall U of a duct wall',
  args: { insulationR: ['R', 0, 30], films: ['R', 0.1, 3] }, gives: 'U', fn: x => 1 / (x.insulationR + x.films) })

export const onDuct = formula({ id: 'on-duct', says: 'R on it ÷ R per inch', symbols: 'insulationR / perInch', source: 'definition of R',
  args: { insulationR: ['R', 0, 30], perInch: ['R/in', 1, 8] }, gives: 'in', fn: x => x.insulationR / x.perInch })

/** Air cools toward the attic's temperature on its way: the exponential, of which the handbook's form is the midpoint. */
export const airLeaving = formula({ id: 'air-leaving', says: 'attic + (entering − attic) · e^(−U · skin ÷ (1.08 · cfm))', symbols: 'atticF + (enteringF - atticF) * exp(-u * skinFt2 / (1.08 * cfm))', source: 'ASHRAE Handbook Fundamentals, duct heat gain and loss, integrated along the duct; 1.08 = 60 · 0.075 lb/ft³ · 0.24 Btu/lb·°F',
  args: { enteringF: ['°F', 20, 180], atticF: ['°F', -60, 180], u: ['U', 0.01, 5], skinFt2: ['ft2', 0.01, 5000], cfm: ['cfm', 1, 50000] }, gives: '°F',
  fn: x => x.atticF + (x.enteringF - x.atticF) * Math.exp(-x.u * x.skinFt2 / (1.08 * x.cfm)) })

export const heatLost = formula({ id: 'duct-heat', says: '1.08 · cfm · |entering − leaving| · runs', symbols: '1.08 * cfm * abs(enteringF - leavingF) * runs', source: 'sensible heat of standard air: ASHRAE Handbook Fundamentals',
  args: { cfm: ['cfm', 1, 50000], enteringF: ['°F', 20, 180], leavingF: ['°F', -60, 180], runs: ['each', 1, 100] }, gives: 'Btu/h', fn: x => 1.08 * x.cfm * Math.abs(x.enteringF - x.leavingF) * x.runs })

export const suppliedUa = formula({ id: 'duct-ua', says: 'skin · U', symbols: 'skinFt2 * u', source: 'definition of U', args: { skinFt2: ['ft2', 0, 1e5], u: ['U', 0, 10] }, gives: 'UA', fn: x => x.skinFt2 * x.u })

// The format of a close-out: what happened in a signed job, in the order in which it is known. The job file itself never changes.
import * as f from '../fields/index.ts'

export const CLOSEOUT_FORMAT = 'lidwork-closeout/1'
/** Stands for what is not filled in yet. */
export const BLANK = '___'

const usd = (description: string, ...examples: readonly number[]) => f.number('USD', { min: 0, max: 1000000 }, description, examples.length > 0 ? { examples } : {})
const on = (description: string) => f.optional(f.date(description))
const by = (description: string) => f.optional(f.text(description))
const hours = (description: string) => f.optional(f.number('h', { min: 0, max: 10000 }, description, { examples: [4.5] }))

export const areaDoneSchema = f.later(() => f.fields({
  in: f.id('area of the job', { examples: ['main'] }),
  product: f.optional(f.id('blown product of the price book; else the one of the estimate', { examples: ['demo-loose-cellulose'] })),
  maker: f.optional(f.text('maker of the product, as the bag says')),
  bags: f.optional(f.number('bag', { min: 0, max: 100000 }, 'bags that went into this area', { examples: [66] })),
  markersIn: f.optional(f.list(f.inches(120, 'top of the fill on one marker'), 'top of all fill above the ceiling plane, read at each marker on the day, in the order of the markers')),
  coveredFt2: f.optional(f.number('ft2', { above: 0, max: 1000000 }, 'net floor that was covered, where it is not that of the survey')),
  machine: f.optional(f.text('blowing machine and its settings, as used', { examples: ['gate 6, air 3'] })),
  labelR: f.optional(f.rValue('of a packed or laid area: R that the label gives for this thickness', { examples: [30] })),
  thicknessIn: f.optional(f.inches(60, 'of a packed or laid area: thickness as installed')),
}, 'what went into one area'))

export const laidSchema = f.later(() => f.fields({
  part: f.text('part of the house', { examples: ['hatch panel'] }),
  what: f.text('batt, board or wrap that was put in', { examples: ['mineral wool batt'] }),
  maker: f.optional(f.text('its maker, as the package says')),
  areaFt2: f.optional(f.number('ft2', { above: 0, max: 1000000 }, 'area covered')),
  thicknessIn: f.optional(f.inches(60, 'thickness as installed')),
  labelR: f.optional(f.rValue('R that its label gives', { examples: [23] })),
}, 'insulation that was not blown, in one part of the house'))

export const combustionSchema = f.later(() => f.fields({
  of: f.id('appliance of the job, by its id', { examples: ['heater'] }),
  on: on('day of the test'),
  by: by('who tested'),
  result: f.optional(f.word(['pass', 'fail'] as const, 'draft, spillage and carbon monoxide, worst case')),
  pulledDownPa: f.optional(f.number('Pa', { min: 0, max: 100 }, 'how far its zone is pulled down against outdoors, worst case', { examples: [1.6] })),
  spillageSeconds: f.optional(f.number('s', { min: 0, max: 3600 }, 'when its spillage ended', { examples: [20] })),
  vent: f.optional(f.word(['warm', 'cold'] as const, 'its vent at the start of that', { default: 'warm' })),
  flueCoPpm: f.optional(f.number('ppm', { min: 0, max: 20000 }, 'carbon monoxide in its flue gas, read as its limit is')),
  roomCoPpm: f.optional(f.number('ppm', { min: 0, max: 5000 }, 'carbon monoxide in the air of the room', { examples: [1] })),
}, 'one combustion test, on a day of the work or after it'))

export const mendSchema = f.later(() => f.fields({
  gate: f.text('mend of the estimate, by its id', { examples: ['light-not-ic-main-1'] }),
  on: on('day it was closed'),
  by: by('who closed it'),
  proof: f.optional(f.text('where the photo or paper is kept', { examples: ['photos/box-1.jpg'] })),
}, 'one mend that was closed'))

export const taskDoneSchema = f.later(() => f.fields({ task: f.id('task of the estimate', { examples: ['set-up'] }), personHours: hours('person-hours it took; 0 where it was not done') }, 'hours of one task'))
export const materialDoneSchema = f.later(() => f.fields({
  item: f.id('item of the estimate or of the price book', { examples: ['sealant-10oz'] }),
  used: f.optional(f.number('purchase unit', { min: 0, max: 100000 }, 'purchase units that the job used up', { examples: [19] })),
  price: f.optional(usd('paid for one, where it was not the price of the book', 5.4)),
}, 'one material'))

export const closeoutSchema = f.later(() => f.fields({
  format: f.literal(CLOSEOUT_FORMAT),
  job: f.text('job file, by its path from the folder of this file', { examples: ['quince-lane-14.job.yaml'] }),
  days: f.optional(f.list(f.date('a day'), 'days on which the crew worked', { max: 200 })),
  installer: f.optional(f.fields({
    company: f.optional(f.text('installing company', { examples: ['Invented Attics'] })),
    name: f.optional(f.text('who signs for it')),
    license: f.optional(f.text('license or registration, where the state asks for one')),
    phone: f.optional(f.text('whom the owner calls about the work')),
    signedOn: f.optional(f.date('day of the receipt')),
  }, 'who did it and answers for it')),
  areas: f.optional(f.list(areaDoneSchema(), 'bags and depths, area by area')),
  laid: f.optional(f.list(laidSchema(), 'insulation that was not blown, part by part')),
  flags: f.optional(f.count(1000, 'boxes under the fill that carry a flag', { min: 0, examples: [3] })),
  tests: f.optional(f.fields({
    on: on('day of the test after the work'),
    by: by('who tested'),
    sameSetUp: f.optional(f.yesNo('doors, flues and fans set as at the first test; without it in and out are no pair')),
    cfm50: f.optional(f.number('cfm', { above: 0, max: 50000 }, 'blower door at 50 Pa', { examples: [1980] })),
    cfm25Total: f.optional(f.number('cfm', { above: 0, max: 10000 }, 'duct tester at 25 Pa, all leakage', { examples: [140] })),
    cfm25Outside: f.optional(f.number('cfm', { above: 0, max: 10000 }, 'duct tester at 25 Pa, leakage to the outside')),
    zonePa: f.optional(f.number('Pa', { min: 0, max: 50 }, 'attic against house with the blower door at 50 Pa', { examples: [45] })),
    fanCfm: f.optional(f.number('cfm', { min: 0, max: 2000 }, 'fan that airs the whole house, as measured')),
  }, 'tests after the work')),
  combustion: f.optional(f.list(combustionSchema(), 'combustion tests from the first day of the work on')),
  freshAirChoice: f.optional(f.text('where the owner’s signed choice about a fan for fresh air is kept', { examples: ['papers/fan-declined.pdf'] })),
  mends: f.optional(f.list(mendSchema(), 'mends that the crew closed')),
  hours: f.optional(f.list(taskDoneSchema(), 'person-hours, task by task', { max: 1000 })),
  unplanned: f.optional(f.list(f.fields({ what: f.text('what it was', { examples: ['second trip for the chimney cap'] }), personHours: hours('person-hours it took') }, 'work that the estimate had not'), 'work that the estimate had not')),
  materials: f.optional(f.list(materialDoneSchema(), 'what was used up, bags left out', { max: 1000 })),
  costs: f.optional(f.list(f.fields({ what: f.text('what it was', { examples: ['electrician, two lights'] }), of: f.word(['subcontract', 'other'] as const, 'another trade, or all else'), paid: f.optional(usd('what it cost', 370)) }, 'one cost'), 'other trades, fees and disposal; without it as in the estimate')),
  soldFor: f.optional(usd('price of the contract, where it is not that of the estimate; a sales tax that the customer pays left out', 6970)),
  changes: f.optional(f.list(f.fields({ what: f.text('what was agreed', { examples: ['two more vent baffles'] }), price: f.optional(f.number('USD', { min: -1000000, max: 1000000 }, 'added to the price; below 0 is taken off')) }, 'one signed change'), 'changes that the customer signed')),
}, 'what happened in one job'))

export type CloseoutFile = f.StaticOf<typeof closeoutSchema>
export const closeoutFormat = (): object => f.format('lidwork-closeout-1', 'lidwork close-out: what happened in a signed job', closeoutSchema())

// The format of a job file: sections in the order of the walk through the house.
import * as f from '../fields/index.ts'
import { ownValues } from '../books/own-values.ts'
import { states } from '../reference/states.ts'
import { editions, zones } from '../reference/targets.ts'
import { applianceSchema } from '../scope/appliances.ts'
import { airHandlerSchema } from '../scope/air-handler.ts'
import { ductSchema } from '../scope/ducts.ts'
import { energySchema, ventilationSchema } from '../scope/energy.ts'
import { exhaustSchema } from '../scope/exhausts.ts'
import { eaveSchema } from '../scope/eaves.ts'
import { highVentSchema } from '../scope/vents.ts'
import { areaKinds, hazardKinds, openingKinds, type Area, type Hazard, type Opening } from '../scope/index.ts'

export const JOB_FORMAT = 'lidwork-job/1'

export const jobSchema = f.later(() => f.fields({
  format: f.literal(JOB_FORMAT),
  job: f.fields({
    id: f.id('short name of the job', { examples: ['quince-lane-14'] }),
    title: f.text('what the papers call it', { examples: ['14 Quince Lane, seal and blow'] }),
    customer: f.optional(f.text('who it is for')),
    address: f.optional(f.text('street and town')),
    zip: f.optional(f.pattern('^\\d{5}(-\\d{4})?$', 'zip', 'zip code, in quotes', { examples: ['53913'] })),
    surveyedOn: f.date('day of the survey'),
    surveyedBy: f.text('who surveyed'),
    notes: f.optional(f.text('your own notes; on no paper', { most: 2000, examples: ['back gate sticks'] })),
    status: f.word(['draft', 'sent', 'signed', 'expired'] as const, 'where the quote stands'),
  }, 'the job'),
  house: f.fields({
    state: f.word(states, 'two-letter state'),
    county: f.optional(f.text('county, parish or borough; gives the climate zone', { examples: ['Sauk'] })),
    climateZone: f.optional(f.nameOrNumber(`^(${zones.join('|')})$`, 'zone', 'IECC climate zone: 1 to 8, or 4C; else that of the county, by the map of the edition used', { examples: [5, '4C'] })),
    yearBuilt: f.optional(f.number('year', { min: 1600, max: 2100, whole: true }, 'year built; without it every year is possible', { examples: [1962] })),
    stories: f.optional(f.number('stories', { min: 1, max: 5 }, 'stories above grade', { examples: [1, 1.5] })),
    floorAreaFt2: f.optional(f.number('ft2', { above: 0, max: 100000 }, 'conditioned floor area')),
    heightFt: f.optional(f.feet(60, 'height above grade, lowest floor to ceiling; else by its stories', { examples: [8.5, 17] })),
    volumeFt3: f.optional(f.number('ft3', { above: 0, max: 1000000 }, 'conditioned volume')),
    type: f.optional(f.word(['detached', 'row-house', 'manufactured-home', 'flat-roof', 'cathedral-only', 'apartment-building'] as const, 'what it is; the last four are out of scope', { default: 'detached' })),
    coAlarmsMissing: f.optional(f.count(12, 'carbon monoxide alarms missing: one a floor near the bedrooms', { min: 0, default: 0 })),
    bedrooms: f.optional(f.number('each', { min: 0, max: 30, whole: true }, 'bedrooms')),
  }, 'the house'),
  target: f.fields({
    code: f.optional(f.word(editions, 'ceiling R of this IECC edition in this zone, as advice')),
    rValue: f.optional(f.rValue('or an R of your own', { examples: [49] })),
  }, 'how much R: an edition or an R'),
  access: f.optional(f.fields({
    hoseFt: f.optional(f.feet(500, 'truck to the far end', { examples: ['~90'] })),
    walkToHatchFt: f.optional(f.feet(500, 'door to hatch')),
    storageFt2: f.optional(f.number('ft2', { min: 0, max: 5000 }, 'attic floor under stored things that the crew moves', { examples: [80] })),
    driveMi: f.optional(f.number('mi', { min: 0, max: 1000 }, 'shop to house, one way', { examples: [18] })),
  }, 'way in')),
  notFound: f.list(f.word(hazardKinds.map(k => k.kind), 'a hazard'), 'hazards you looked for and did not find'),
  hazards: f.list(f.oneOfKinds<Hazard>(hazardKinds.map(k => k.kind), 'a hazard seen or suspected'), 'hazards you saw or suspect; the rest counts as not looked at'),
  appliances: f.optional(f.list(applianceSchema(), 'everything that burns fuel; [] = none does')),
  exhausts: f.optional(f.list(exhaustSchema(), 'fans that blow outdoors: hoods, dryers, bath fans, attic fans')),
  tests: f.optional(f.fields({
    on: f.optional(f.date('day they were made')),
    by: f.optional(f.text('who tested')),
    cfm50: f.optional(f.number('cfm', { above: 0, max: 50000 }, 'blower door at 50 Pa, at the survey', { examples: [2650] })),
    cfm50Assumed: f.optional(f.yesNo('cfm50 is a guess, not a reading: all that follows from it is marked', { default: 'no' })),
    cfm25Total: f.optional(f.number('cfm', { above: 0, max: 10000 }, 'duct tester at 25 Pa, all leakage', { examples: [240] })),
    cfm25Outside: f.optional(f.number('cfm', { above: 0, max: 10000 }, 'duct tester at 25 Pa, leakage to the outside')),
    zonePa: f.optional(f.number('Pa', { min: 0, max: 50 }, 'attic against house with the blower door at 50 Pa', { examples: [38] })),
    blowerDoor: f.optional(f.word(['none', 'out', 'in-and-out'] as const, 'asked for in this job: at the end, or before and at the end; then it is the last look before cover too', { default: 'none' })),
    ductTest: f.optional(f.word(['none', 'out', 'in-and-out'] as const, 'asked for in this job: once the ducts are sealed, or before too', { default: 'none' })),
  }, 'tests made at the survey, and tests this job asks for')),
  areas: f.list(f.oneOfKinds<Area>(areaKinds.map(k => k.kind), 'a piece of ceiling'), 'one for each piece of ceiling that is framed, filled or reached differently', { min: 1 }),
  eaves: f.optional(f.list(eaveSchema(), 'roof edges over the areas; [] = none bears on this ceiling')),
  highVents: f.optional(f.list(highVentSchema(), 'vents near the ridge; [] = none')),
  openings: f.list(f.oneOfKinds<Opening>(openingKinds.map(k => k.kind), 'an opening'), 'openings between house and attic, in the order you walked: far end first'),
  ducts: f.optional(f.list(ductSchema(), 'ducts in the attic, alike ones in one entry')),
  airHandlers: f.optional(f.list(airHandlerSchema(), 'air handlers and furnaces in the attic')),
  energy: f.optional(energySchema()),
  ventilation: f.optional(ventilationSchema()),
  clearances: f.optional(f.list(f.fields({
    gate: f.text('gate it opens, by its code', { examples: ['combustion-untested'] }),
    in: f.optional(f.id('area it is for')),
    of: f.optional(f.id('appliance it is for')),
    kind: f.text('kind of paper, from the list of the gate', { examples: ['combustion-test'] }),
    by: f.text('who signed'),
    license: f.optional(f.text('license of the signer, where one is needed')),
    on: f.date('date of the paper'),
    paper: f.text('where the paper is kept', { examples: ['letters/heater.pdf'] }),
  }, 'one paper'), 'who opened which gate, when, and the paper that says so')),
  quote: f.optional(f.fields({
    sentOn: f.optional(f.date('day the quote went out; it holds for the company’s validDays from then')),
    expiresOn: f.optional(f.date('last day it holds, where that is not by validDays')),
    signedOn: f.optional(f.date('day it was signed')),
    revisions: f.optional(f.list(f.fields({
      number: f.count(999, 'number of the quote'),
      on: f.date('its day'),
      reason: f.text('why there is a new one', { examples: ['first quote', 'price of cellulose'] }),
      changed: f.optional(f.text('what is different', { examples: ['two lights more, cellulose 14 to 15.20 a bag'] })),
      price: f.optional(f.number('USD', { min: 0, max: 10000000 }, 'its total', { examples: [6970] })),
      sentOn: f.optional(f.date('day it was sent to the customer; without it: never sent')),
    }, 'one revision of the quote'), 'the quotes made for this house, in their order', { max: 200 })),
    escalation: f.optional(f.list(f.fields({
      item: f.id('item of the price book', { examples: ['demo-loose-cellulose'] }),
      basePrice: f.number('USD', { above: 0, max: 1000000 }, 'price of one purchase unit that the contract names', { examples: [14] }),
      on: f.date('day of that price'),
      abovePct: f.optional(f.number('pct', { min: 0, max: 100 }, 'what the price may rise before the clause applies', { default: 0, examples: [5] })),
    }, 'one material of the clause'), 'materials whose rise the contract passes on to the owner', { max: 50 })),
  }, 'the quote: what binds, and how long')),
  choices: f.optional(f.fields({
    fill: f.optional(f.byName(f.id('a blown product of the price book'), 'blown product for each area', )),
    marginPct: f.optional(f.number('pct', { min: 0, max: 90 }, 'gross margin of this job')),
    incentives: f.optional(f.list(f.fields({
      from: f.text('who may grant it', { examples: ['the electric utility'] }),
      amount: f.number('USD', { above: 0, max: 100000 }, 'dollars', { examples: [400] }),
      condition: f.text('on what it depends', { examples: ['if the blower door falls by a tenth and the form is in by June 30'] }),
    }, 'one incentive'), 'rebates and the like that may be granted: shown below the total, never in it', { max: 20 })),
    permitFee: f.optional(f.number('USD', { min: 0, max: 100000 }, 'permit for this job, in place of the company’s', { examples: [85] })),
    ...ownValues(),
  }, 'what was chosen for this job')),
  books: f.optional(f.fields({
    prices: f.optional(f.text('price book, by its path from the folder of this file', { examples: ['prices.yaml'] })),
    suppliers: f.optional(f.list(f.text('a price book, by its path from the folder of this file', { examples: ['supply-b.yaml'] }), 'further price books side by side, one for each supplier: each product comes from whoever sells what does the work for least', { max: 20 })),
    company: f.optional(f.text('company file, by its path from the folder of this file', { examples: ['company.yaml'] })),
  }, 'your own books; without them the built-in ones')),
}, 'one surveyed house'))

export type JobFile = f.StaticOf<typeof jobSchema>

export const kindSchemas = () => Object.fromEntries([...areaKinds, ...openingKinds, ...hazardKinds].map(k => [k.kind, k.schema()]))

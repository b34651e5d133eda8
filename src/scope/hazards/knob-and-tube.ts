import * as f from '../../fields/index.ts'
import { heldUntilLooked, seenAt, shutHere } from '../hazard-parts.ts'
import { COVERING, hazard, type Clearable } from '../kind.ts'

export const wiringPapers: readonly Clearable[] = [{ kind: 'electrician-letter', license: true, outside: true }]

export const knobAndTube = hazard({
  kind: 'knob-and-tube', title: 'Knob-and-tube wiring, live or not known to be dead',
  schema: () => f.item('knob-and-tube', 'Knob-and-tube wiring, live or not known to be dead', {
    ...seenAt('over the front rooms'), state: f.word(['live', 'unknown'] as const, 'what a tester said; dead only by an electrician’s letter, under clearances'),
  }),
  sample: { kind: 'knob-and-tube', in: 'main', at: 'over the front rooms', state: 'unknown' },
  wrong: { item: { kind: 'knob-and-tube', at: 'front rooms', state: 'dead' }, code: 'word-unknown' },
  clearable: wiringPapers,
  onSight: { sign: 'knobs, tubes, single cloth-covered wires', act: 'no hand, tool, foam or fill near them; no fill in that area', call: 'electrician' },
  takeoff: ({ item, at }) => ({ figures: {}, tasks: [], gates: [{
    ...shutHere(item, at, COVERING), code: 'knob-and-tube', state: 'stop', why: `open wiring${item.state === 'live' ? ', live,' : ', perhaps live,'} sheds its heat into air: no fill and no foam may touch it`,
    clearedBy: 'a licensed electrician’s letter that it is dead or gone (some states have a rule of their own); or write the part it runs in as an area of its own, dammed off and bare', clearable: wiringPapers,
  }] }),
  unseen: (house, books, at) => heldUntilLooked({
    gate: { code: 'knob-and-tube-not-checked', state: 'hold' }, kind: 'knob-and-tube', what: 'knob-and-tube wiring', why: 'fill over live open wiring can start a fire', phases: COVERING, clearable: wiringPapers,
    limit: books.start('year-knob-and-tube', 1950, 'year', 'last year that knob-and-tube wiring is likely', 'common practice, no source'),
    look: { title: 'Look for knobs, tubes and cloth-covered single wires', work: 'clearing', cautions: ['Old wires: touch nothing; no metal ladder or tool near them.'] },
  }, house, books, at),
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { clearOf, stripMetal } from '../../calc/seal.ts'
import { pipeMaterials } from '../../reference/pipes.ts'
import { exactly, work } from '../../units/quantity.ts'
import { CAUTION, COMPATIBLE, COVERING, declinable, fillOf, flagOnly, inchesOf, itself, opening, takes, where, type Task } from '../kind.ts'

/** A sealed, deeply filled attic is colder: a line over the ceiling may freeze and burst. */
/** Zones in which a line in the attic is not asked about. */
const FROST_FREE: readonly string[] = ['1', '2']

export const waterLine = opening({
  kind: 'water-line', title: 'Water line in the attic',
  schema: () => f.item('water-line', 'Water line in the attic', {
    ...where,
    lengthFt: f.feet(500, 'length of line in this area', { examples: [14] }),
    heightIn: f.inches(120, 'ceiling plane to the top of the line', { min: 0, examples: [2] }),
    contents: f.word(['wet', 'dry'] as const, 'water stands in it, or it is drained and stays so'),
    material: f.word(pipeMaterials, 'what it is made of'),
    sprinkler: f.yesNo('it feeds fire sprinklers'),
    ...declinable,
  }),
  sample: { kind: 'water-line', in: 'main', lengthFt: 14, heightIn: 2, contents: 'wet', material: 'copper', sprinkler: 'no', at: 'over the bath' },
  wrong: { item: { kind: 'water-line', in: 'main', lengthFt: 14, heightIn: 2, contents: 'frozen', material: 'copper', sprinkler: 'no', at: 'over the bath' }, code: 'word-unknown' },
  takeoff({ item, at, id, q }, books, { area, house }) {
    const own = [...(item.material === 'cpvc' ? [COMPATIBLE] : []), ...(item.sprinkler === 'yes' ? ['Sprinkler heads: no caulk, no foam, nothing in the gap of a cover plate; the line stays in service.'] : [])]
    if (!area.filled) return flagOnly(id, item.in, 'Flag the water line and its shut-off', ['No old fill between the line and the ceiling.', ...own], exactly(1, 'each', 'one line to an entry'), area.access, books)
    const gate = { where: item.at, in: item.in, path: at, why: 'the attic is colder after the work; water in a line there may freeze and burst it' }
    const base = { touches: [item.in], closes: id } as const
    if (item.contents === 'dry') {
      const one = exactly(1, 'each', 'one line to an entry'), flag = takes([books.product('box-flag'), one])
      return { figures: { method: 'drained, flagged', materials: flag.materials }, tasks: [{ ...base, id: `flag-${id}`, title: 'Flag the drained line and its shut-off', phase: 'contain', work: 'marker', serves: fillOf(item.in), role: 'helper', needs: flag.needs,
        personHours: work(personHours, { amount: one, rate: books.rate('box-flag', 0.03, 'each'), access: area.access }), cautions: ['Water in it after all: stop, tell the lead.', ...own], proof: 'photo of the open drain' }] }
    }
    // No frost in the south; without a zone nobody can say so.
    const warm = house.climateZone !== undefined && FROST_FREE.includes(house.climateZone)
    if (warm) return flagOnly(id, item.in, 'Flag the water line and its shut-off', own.length > 0 ? own : ['Know the shut-off.'], exactly(1, 'each', 'one line to an entry'), area.access, books)
    // Only what lies deep in the fill stays warm from the room below.
    if (item.heightIn + books.start('water-line-cover', 6, 'in', 'fill over a tented water line').value > area.topOfFillInitialIn.value) {
      const clearedByTask = `move-${id}`, trade = item.sprinkler === 'yes' ? 'sprinkler contractor' : 'plumber'
      const task: Task = { ...base, id: clearedByTask, title: `${item.sprinkler === 'yes' ? 'Sprinkler contractor' : 'Plumber'}: move the line below the fill, or drain it for good`, phase: 'clear', work: 'clearing', serves: itself, role: 'other', ownVisit: true, needs: [],
        personHours: exactly(0, 'h', 'others’ own'), subcontractCents: books.subcontract('water-line-move'), cautions: [...own, 'Water off and drained first; wires near the line: power off and proved off.', CAUTION.framing], proof: 'photo, letter' }
      return { figures: { method: `moved or drained by a ${trade}`, materials: [] }, tasks: [task],
        gates: [{ ...gate, code: 'water-line-freeze', state: 'hold', stops: { phases: COVERING, places: [item.in] }, clearedByTask, clearedBy: `a ${trade}’s letter: moved below the fill, or drained`, clearable: [{ kind: 'plumber-letter', license: true, outside: true }], condition: `The price holds only if a ${trade} moves or drains the line (${item.at}) before the fill.` }] }
    }
    const lengthFt = q('lengthFt'), tent = takes([books.product('rigid-cover'), work(stripMetal, { runIn: inchesOf(lengthFt), widthIn: work(clearOf, { sizeIn: books.start('water-line-tent', 12, 'in', 'top of the tent over a water line'), keepIn: q('heightIn') }) })])
    return {
      figures: { method: 'tented to the ceiling, under the fill', materials: tent.materials },
      gates: [{ ...gate, code: 'water-line-freeze', state: 'mend', stops: { phases: ['insulate'], places: [item.in] }, clearedByTask: `tent-${id}`, clearedBy: 'own tent, open to the ceiling and closed to the attic, photo before the fill', clearable: [] }],
      tasks: [{ ...base, id: `tent-${id}`, title: 'Tent the water line to the ceiling: no insulation under it, fill over it', phase: 'contain', work: 'dam', size: 'medium', serves: fillOf(item.in), role: 'crew', needs: tent.needs,
        personHours: work(personHours, { amount: lengthFt, rate: books.rate('water-line-tent', 0.1, 'ft'), access: area.access }),
        cautions: ['Take the old fill out from under the line first.', 'Know the shut-off before anything is fastened.', ...own, CAUTION.framing], proof: 'photo before the fill' }],
    }
  },
})

import * as f from '../../fields/index.ts'
import { personHours } from '../../calc/arithmetic.ts'
import { joistShare } from '../../calc/fill.ts'
import { fieldU, joistPathR, seriesR } from '../../calc/heat.ts'
import { edge, inFeet } from '../../calc/seal.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fromRow } from '../../reference/table.ts'
import { given, total, work } from '../../units/quantity.ts'
import { accessOf, area, areaId, floorSize, framingKey, fromKey, headroomKey, none, NO_EAVES, oldLayers, rectanglesKey, websKey } from '../area-kind.ts'
import { baseR, woodPerInch } from '../ceiling.ts'
import { CAUTION, fillOf, inchesOf, takes, type Task } from '../kind.ts'
import { layerSchema } from '../layers.ts'

export const platform = area({
  kind: 'platform', title: 'Storage platform that stays as it is',
  schema: () => f.item('platform', 'Storage platform that stays as it is', {
    id: areaId, rectanglesFt: rectanglesKey, ...fromKey,
    joists: framingKey('the joists under it'),
    headroomIn: headroomKey, webs: websKey,
    existing: f.list(layerSchema(), 'fill under the boards, as far as you could look; [] = bare', { max: 5 }),
  }),
  sample: { kind: 'platform', id: 'platform', rectanglesFt: [[8, 8]], beside: 'main', joists: { size: '2x6', spacingIn: 16 }, headroomIn: 70, existing: [] },
  wrong: { item: { kind: 'platform', id: 'platform', rectanglesFt: [[8, 8]], beside: 'main', joists: { size: '2x7', spacingIn: 16 }, headroomIn: 70, existing: [] }, code: 'word-unknown' },
  takeoff(found, books, around) {
    const { item, at } = found, id = item.id
    const size = floorSize(item.rectanglesFt, [], at), old = oldLayers(item.existing, `${at}/existing`, books), { access, findings } = accessOf(found, old.oldDepth, around.hatchIn, books)
    const joist = lumber.rows.find(r => r.size === item.joists.size)!, joistIn = fromRow(lumber, joist, joist.depthIn, 'in', joist.size)
    const framing = work(joistShare, { joistWidthIn: fromRow(lumber, joist, joist.widthIn, 'in', joist.size), spacingIn: given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`) })
    const edges = item.rectanglesFt.map((r, i) => work(edge, { lengthIn: inchesOf(given(r[0], 'ft', `${at}/rectanglesFt/${i}/0`)), widthIn: inchesOf(given(r[1], 'ft', `${at}/rectanglesFt/${i}/1`)) }))
    const aroundFt = work(inFeet, { lengthIn: edges.length === 1 ? edges[0]! : total('in', edges) })
    const dam: Task = { id: `dam-platform-${id}`, title: `Dam the fill of ${item.beside} round the platform`, phase: 'contain', work: 'dam', touches: [item.beside], serves: fillOf(item.beside), role: 'crew', personHours: work(personHours, { amount: aroundFt, rate: books.rate('dam', 0.06, 'ft'), access }), needs: takes([books.product('rigid-dam'), aroundFt]).needs, cautions: [CAUTION.framing], proof: 'photo' }
    const base = baseR(), joistR = work(joistPathR, { base, joistIn, woodPerInch: woodPerInch(), keptAboveIn: none('in', 'boards lie on the joists'), keptPerInch: none('R/in', 'none'), newAboveIn: none('in', 'none'), newPerInch: none('R/in', 'none') })
    const u = work(fieldU, { framing, gaps: old.gaps, cavityR: work(seriesR, { base, fill: old.existingR }), gapR: work(seriesR, { base, fill: none('R', 'open gap') }), joistR })
    return {
      figures: { id, kind: 'platform', areaFt2: size.areaFt2, netAreaFt2: size.netAreaFt2, existingR: old.existingR, finalR: old.existingR },
      tasks: [dam], gates: [], topOfFillInitialIn: joistIn, access, filled: false, loose: false, floor: true, need: none('R', 'it stays as it is'), retarder: false, eaves: [], windBlocks: NO_EAVES, fillFigures: [],
      findings: [...findings, { code: 'platform-stays-bare', severity: 'note', path: `${at}/id`, says: `${size.areaFt2.value.toFixed(0)} ft2 of platform stay at R ${old.existingR.value.toFixed(0)}`, why: 'nothing is blown under it', mend: 'write it as a decked-floor to lift it or to pack it' }],
      fabric: { netAreaFt2: size.netAreaFt2, base, uFieldBefore: u, uFieldAfter: u },
    }
  },
})

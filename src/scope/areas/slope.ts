import * as f from '../../fields/index.ts'
import { personHours, product } from '../../calc/arithmetic.ts'
import { baysOf, blockArea, cavityDepth } from '../../calc/dense.ts'
import { ceilingLoad, joistShare } from '../../calc/fill.ts'
import { fieldU, finalR, joistPathR, needR, seriesR, shortR } from '../../calc/heat.ts'
import type { Finding } from '../../findings/finding.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fromRow } from '../../reference/table.ts'
import { exactly, given, work, type Quantity } from '../../units/quantity.ts'
import { accessOf, area, areaId, ceilingKey, framingKey, goalKey, headroomKey, NO_EAVES, none, oldLayers, websKey } from '../area-kind.ts'
import { baseR, woodPerInch } from '../ceiling.ts'
import { ceilingLimit, loadGates } from '../ceiling-load.ts'
import { packed, packTask } from '../dense.ts'
import { CAUTION, fillOf, takes, timesOf, type Gate, type Task } from '../kind.ts'
import { layerSchema } from '../layers.ts'

export const slope = area({
  kind: 'slope', title: 'Sloped ceiling between knee wall and top',
  schema: () => f.item('slope', 'Sloped ceiling between knee wall and top', {
    id: areaId,
    widthFt: f.feet(500, 'along the ridge', { examples: [22] }),
    runFt: f.feet(40, 'along the rafter, from the knee wall to the top', { examples: [6] }),
    rafters: framingKey('the rafters'),
    ceiling: ceilingKey(),
    chute: f.yesNo('a vent chute is kept under the deck, from the eave to the top'),
    chuteIn: f.optional(f.inches(6, 'air kept in the chute', { default: 1 })),
    wetRoomBelow: f.yesNo('a bath, kitchen or laundry under it'),
    headroomIn: headroomKey,
    webs: websKey,
    rValue: goalKey,
    existing: f.list(layerSchema(), 'batts in the slope that stay; [] = empty', { max: 2 }),
  }),
  sample: { kind: 'slope', id: 'slope-east', widthFt: 22, runFt: 6, rafters: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, chute: 'yes', wetRoomBelow: 'no', headroomIn: 44, existing: [] },
  wrong: { item: { kind: 'slope', id: 'slope-east', widthFt: 22, runFt: 6, rafters: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, chute: 'maybe', wetRoomBelow: 'no', headroomIn: 44, existing: [] }, code: 'word-unknown' },
  takeoff(found, books, around) {
    const { item, at, q } = found, id = item.id
    const areaFt2 = work(product, { length: q('widthFt'), width: q('runFt') }), old = oldLayers(item.existing, `${at}/existing`, books), { access, findings: reached } = accessOf(found, none('in', 'nothing lies over the work'), around.hatchIn, books)
    const rafter = lumber.rows.find(r => r.size === item.rafters.size)!, rafterIn = fromRow(lumber, rafter, rafter.depthIn, 'in', rafter.size), widthIn = fromRow(lumber, rafter, rafter.widthIn, 'in', rafter.size), spacingIn = given(item.rafters.spacingIn, 'in', `${at}/rafters/spacingIn`)
    const framing = work(joistShare, { joistWidthIn: widthIn, spacingIn })
    const airIn = item.chute === 'yes' ? q('chuteIn', books.start('chute', 1, 'in', 'air kept under the deck of a slope', 'IRC R806.3 least')) : none('in', 'no chute')
    const depthIn = work(cavityDepth, { framingIn: rafterIn, keptIn: old.keptIn, airIn })
    const chosen = books.fillFor(around.fill)!
    const targetR = item.rValue === undefined ? books.target() : q('rValue'), addedR = work(shortR, { targetR, existingR: old.existingR }), need = work(needR, { shortR: addedR })
    const fills = need.value > 0 && depthIn.value > 0, p = packed(chosen, areaFt2, framing, depthIn, books), load = work(ceilingLoad, { keptPsf: old.keptPsf, addedPsf: p.psf })
    const board = { ...found, item: { id, joists: item.rafters, ceiling: item.ceiling } } as never, limit = ceilingLimit(board), over = fills ? loadGates(board, load, limit, books) : { gates: [], tasks: [] }
    const packedR = fills ? work(finalR, { existingR: old.existingR, chartR: p.r }) : old.existingR
    const gates: Gate[] = [...over.gates], findings: Finding[] = [...reached]
    if (fills && item.chute === 'no') gates.push(item.wetRoomBelow === 'yes'
      ? { code: 'slope-wet-room', state: 'stop', where: `${id}, slope`, in: id, path: `${at}/wetRoomBelow`, why: 'a slope packed full over a wet room can’t dry to the outside', stops: { phases: ['insulate'], places: [id] }, clearedBy: 'a designer’s letter, or a vent chute (chute: yes)', clearable: [{ kind: 'designer-letter', outside: true }] }
      : { code: 'slope-unvented', state: 'note', where: `${id}, slope`, in: id, path: `${at}/chute`, why: 'packed fiber is not the air-tight insulation that an unvented roof asks for (IRC R806.5)', stops: { phases: [], places: [] }, clearedBy: 'the code official’s word and the owner’s signature, or a vent chute', clearable: [] })
    if (need.value > 0 && packedR.value < targetR.value) findings.push({ code: 'cavity-limits-fill', severity: 'note', path: `${at}/rafters`, says: `the rafters hold R ${packedR.value.toFixed(0)} of ${targetR.value}`, why: 'a slope is as deep as its rafters', mend: 'take the R it reaches; more takes rigid board below, which is a builder’s work' })
    const bays = work(baysOf, { widthFt: q('widthFt'), spacingIn }), plugs = timesOf(bays, exactly(2, 'each', 'top and bottom'))
    const plugFt2 = work(blockArea, { bays: plugs, spacingIn, framingIn: widthIn, depthIn: rafterIn })
    const tasks: Task[] = fills ? [
      { id: `plug-slope-${id}`, title: `Plug each bay of the slope at top and bottom${item.chute === 'yes' ? ', the chute left open' : ''}`, count: plugs.value, phase: 'contain', work: 'dam', touches: [id], serves: fillOf(id), role: 'crew', personHours: work(personHours, { amount: plugs, rate: books.rate('slope-plug', 0.1, 'each'), access }), needs: takes([books.product('rigid-cover'), plugFt2]).needs, cautions: [CAUTION.framing], proof: 'photo of each row' },
      packTask(id, `the slope ${id}`, chosen, p.bags, access, books), ...over.tasks,
    ] : []
    const base = baseR(), woodR = work(joistPathR, { base, joistIn: rafterIn, woodPerInch: woodPerInch(), keptAboveIn: none('in', 'none'), keptPerInch: none('R/in', 'none'), newAboveIn: none('in', 'none'), newPerInch: none('R/in', 'none') })
    const u = (fill: Quantity<'R'>) => work(fieldU, { framing, gaps: none('fraction', 'packed'), cavityR: work(seriesR, { base, fill }), gapR: work(seriesR, { base, fill }), joistR: woodR })
    return {
      figures: { id, kind: 'slope', areaFt2, netAreaFt2: areaFt2, existingR: old.existingR, targetR, addedR, ...(limit ? { ceilingLimitPsf: limit } : {}), ...(fills ? { product: chosen.item, packedR: p.r, settledDepthIn: depthIn, bags: p.bags, addedWeightPsf: p.psf, ceilingLoadPsf: load } : {}), finalR: packedR },
      tasks, gates, findings, topOfFillInitialIn: rafterIn, access, filled: fills, loose: false, floor: false, need, retarder: false, eaves: [], windBlocks: NO_EAVES, packedPcf: p.densityPcf,
      fabric: { netAreaFt2: areaFt2, base, uFieldBefore: u(old.existingR), uFieldAfter: u(packedR) }, fillFigures: ['product', 'packedR', 'settledDepthIn', 'bags', 'addedWeightPsf', 'ceilingLoadPsf', 'finalR', 'averageR', 'uAfter'],
    }
  },
})

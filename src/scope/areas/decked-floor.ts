import * as f from '../../fields/index.ts'
import { personHours, share } from '../../calc/arithmetic.ts'
import { baysOf, cavityDepth, holesNeeded } from '../../calc/dense.ts'
import { ceilingLoad, joistShare, topOfFill } from '../../calc/fill.ts'
import { fieldU, finalR, joistPathR, needR, seriesR, shortR } from '../../calc/heat.ts'
import { lumber } from '../../reference/ceilings.ts'
import { fromRow } from '../../reference/table.ts'
import { given, total, work } from '../../units/quantity.ts'
import { accessOf, area, floorSize, none, NO_EAVES, oldLayers } from '../area-kind.ts'
import { bayBlocks, blockKeys } from '../bay-blocks.ts'
import { baseR, woodPerInch } from '../ceiling.ts'
import { ceilingLimit, loadGates } from '../ceiling-load.ts'
import { packed, packTask } from '../dense.ts'
import { fillOf, takes, workOf, type Task } from '../kind.ts'
import { floorFaults, floorKeys, floorTakeoff } from './open-floor.ts'

const PER_100 = 'ft2'

export const deckedFloor = area({
  kind: 'decked-floor', title: 'Floor under boards',
  schema: () => f.item('decked-floor', 'Floor under boards', {
    ...floorKeys,
    deck: f.word(['screwed', 'nailed'] as const, 'how the boards are fastened'),
    way: f.word(['lift', 'under'] as const, 'lift the boards, blow, lay them back; or dense-pack under them through drilled holes'),
    riserIn: f.optional(f.inches(24, 'risers that the boards go back on, above the joists; 0 = flat on the joists', { min: 0, default: 0 })),
    leaveOff: f.optional(f.yesNo('the boards stay off: then nothing limits the fill', { default: 'no' })),
    wallFt: f.optional(blockKeys.wallFt), openBays: blockKeys.openBays,
  }),
  sample: { kind: 'decked-floor', id: 'storage', rectanglesFt: [[16, 12]], joists: { size: '2x8', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 8, heelIn: 7.5, headroomIn: 80, existing: [], deck: 'nailed', way: 'lift' },
  wrong: { item: { kind: 'decked-floor', id: 'storage', rectanglesFt: [[16, 12]], joists: { size: '2x8', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 8, heelIn: 7.5, headroomIn: 80, existing: [], deck: 'glued', way: 'lift' }, code: 'word-unknown' },
  check(found) {
    const { item, at } = found
    const odd = item.way === 'under' && (item.riserIn !== undefined || item.leaveOff === 'yes')
    return [...floorFaults(found), ...(odd ? [{ code: 'deck-stays', severity: 'error' as const, path: `${at}/way`, says: 'way: under with riserIn or leaveOff', why: 'under the boards nothing is lifted', mend: 'write way: lift, or take the other key out' }] : [])]
  },
  takeoff(found, books, around) {
    const { item, at, q } = found, id = item.id
    const joist = lumber.rows.find(r => r.size === item.joists.size)!, spacingIn = given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`)
    const joistIn = fromRow(lumber, joist, joist.depthIn, 'in', joist.size)
    const size = floorSize(item.rectanglesFt, item.leaveOut ?? [], at), old = oldLayers(item.existing, `${at}/existing`, books), { access, findings: reached } = accessOf(found, old.oldDepth, around.hatchIn, books)
    const hours = (rateId: string, starting: number) => work(personHours, { amount: size.netAreaFt2, rate: books.rate(rateId, starting, PER_100), access })
    const blocks = item.wallFt === undefined ? [] : bayBlocks({ ...found, item: { ...item, wallFt: item.wallFt } } as never, access, books)
    if (item.way === 'lift') {
      const back = item.leaveOff !== 'yes'
      const measure = floorTakeoff(found, books, around, { kind: 'decked-floor', ...(back ? { roomIn: total('in', { joist: joistIn, riser: q('riserIn', none('in', 'laid back on the joists')) }) } : {}) })
      const base = { touches: [id], role: 'crew', needs: [], cautions: ['Nails point up: boots, gloves.', 'Open joists: step on framing only.'] } as const
      const lift: Task = { ...base, id: `lift-deck-${id}`, title: `Lift the ${item.deck} boards and stack them`, phase: 'clear', work: 'lift-deck', serves: workOf('seal', 'ducts', 'insulate'), personHours: item.deck === 'screwed' ? hours('lift-screwed-deck', 0.01) : hours('lift-nailed-deck', 0.02), proof: 'photo of the open floor' }
      const lay: Task = { ...base, id: `lay-deck-${id}`, title: `Lay the boards back${(item.riserIn ?? 0) > 0 ? ' on risers' : ''}, screwed`, phase: 'close', work: 'shut', serves: workOf('seal', 'ducts', 'insulate'), personHours: hours('lay-deck', 0.01), proof: 'photo',
        ...((item.riserIn ?? 0) > 0 ? { needs: takes([books.product('support'), size.netAreaFt2]).needs } : {}) }
      return { ...measure, tasks: [lift, ...blocks, ...measure.tasks, ...(back ? [lay] : [])] }
    }

    // Under the boards: what the joists leave room for, at its packed density.
    const chosen = books.fillFor(around.fill)!
    const framing = work(joistShare, { joistWidthIn: fromRow(lumber, joist, joist.widthIn, 'in', joist.size), spacingIn })
    const depthIn = work(cavityDepth, { framingIn: joistIn, keptIn: old.keptIn, airIn: none('in', 'no air is kept under boards') })
    const targetR = item.rValue === undefined ? books.target() : q('rValue'), addedR = work(shortR, { targetR, existingR: old.existingR }), need = work(needR, { shortR: addedR })
    const fills = need.value > 0 && depthIn.value > 0, p = packed(chosen, size.netAreaFt2, framing, depthIn, books), limit = ceilingLimit(found)
    const load = work(ceilingLoad, { keptPsf: old.keptPsf, addedPsf: p.psf }), over = fills ? loadGates(found, load, limit, books) : { gates: [], tasks: [] }
    const lengthFt = given(Math.max(...item.rectanglesFt.map(([a, b]) => Math.min(a, b))), 'ft', `${at}/rectanglesFt`), widthFt = { ...work(share, { part: size.netAreaFt2, whole: lengthFt }), unit: 'ft' as const }
    const holes = work(holesNeeded, { bays: work(baysOf, { widthFt, spacingIn }), lengthFt, apartFt: books.start('holes-apart', 4, 'ft', 'distance of drilled holes in one bay', 'common practice, no source') })
    const base = baseR(), joistR = work(joistPathR, { base, joistIn, woodPerInch: woodPerInch(), keptAboveIn: none('in', 'boards lie on the joists'), keptPerInch: none('R/in', 'none'), newAboveIn: none('in', 'boards lie on the joists'), newPerInch: none('R/in', 'none') })
    const u = (fill: typeof old.existingR) => work(fieldU, { framing, gaps: none('fraction', 'packed'), cavityR: work(seriesR, { base, fill }), gapR: work(seriesR, { base, fill }), joistR })
    const packing: Task[] = fills ? [
      { id: `drill-${id}`, title: 'Drill the boards for the hose, a hole in each bay', count: holes.value, phase: 'contain', work: 'drill', touches: [id], serves: fillOf(id), role: 'crew', personHours: work(personHours, { amount: holes, rate: books.rate('hole-and-plug', 0.15, 'hole'), access }), needs: takes([books.product('plug'), holes]).needs,
        cautions: ['Wires and pipes under the boards: drill stop on the bit, power off where they run.', 'Eye cover.'], proof: 'photo' },
      packTask(id, `under the boards of ${id}`, chosen, p.bags, access, books), ...over.tasks,
      { id: `plug-${id}`, title: 'Plug the drilled holes', count: holes.value, phase: 'close', work: 'shut', touches: [id], serves: fillOf(id), role: 'crew', personHours: none('h', 'in the rate of drilling'), needs: [], cautions: ['Eye cover.'], proof: 'photo' },
    ] : []
    const packedR = work(finalR, { existingR: old.existingR, chartR: p.r })
    return {
      figures: { id, kind: 'decked-floor', areaFt2: size.areaFt2, netAreaFt2: size.netAreaFt2, existingR: old.existingR, targetR, addedR, ...(limit ? { ceilingLimitPsf: limit } : {}),
        ...(fills ? { product: chosen.item, packedR: p.r, settledDepthIn: depthIn, topOfFillSettledIn: work(topOfFill, { keptIn: old.keptIn, depthIn }), bags: p.bags, addedWeightPsf: p.psf, ceilingLoadPsf: load, finalR: packedR } : { finalR: old.existingR }) },
      tasks: [...blocks, ...packing], gates: over.gates, findings: fills && packedR.value < targetR.value ? [...reached, { code: 'cavity-limits-fill', severity: 'note', path: `${at}/way`, says: `the joists hold R ${packedR.value.toFixed(0)} of ${targetR.value}`, why: 'under boards there is no more room', mend: 'write way: lift and risers, or take the R it reaches' }] : reached,
      topOfFillInitialIn: joistIn, access, filled: fills, loose: false, floor: true, need, retarder: false, eaves: [], windBlocks: NO_EAVES, packedPcf: p.densityPcf,
      fabric: { netAreaFt2: size.netAreaFt2, base, uFieldBefore: u(old.existingR), uFieldAfter: u(fills ? packedR : old.existingR) },
      fillFigures: ['product', 'packedR', 'settledDepthIn', 'topOfFillSettledIn', 'bags', 'addedWeightPsf', 'ceilingLoadPsf', 'finalR', 'averageR', 'uAfter'],
    }
  },
})

// The generated houses reach every kind, gate, verdict and phase there is; else the other properties would prove little.
import { expect, test } from 'vitest'
import { areaKinds, hazardKinds, openingKinds } from '../../src/scope/index.ts'
import { phases } from '../../src/scope/kind.ts'
import { onHouses, seed, VERDICTS } from './job.ts'

/** Gates of the rules for a combustion, a hidden hazard, lights, chimney and ceiling. */
const GATES = ['appliances-not-listed', 'ceiling-no-limit', 'ceiling-over-limit', 'ceiling-overloaded', 'ceiling-sagging', 'chimney-use-unknown', 'combustion-failed', 'combustion-untested',
  'framing-near-chimney', 'light-not-ic', 'vermiculite', 'vermiculite-not-checked']
/** No kind works on ducts yet. */
const NO_WORK_YET = ['ducts', 'wrap']

test(`generated houses, seed ${seed}`, () => {
  console.info(`generated houses: seed ${seed} (LIDWORK_SEED sets another)`)
  const kinds = new Set<string>(), gates = new Set<string>(), verdicts = new Set<string>(), reached = new Set<string>(), cleared = new Set<string>(), products = new Set<string>(), declined = new Set<string>(), stoppedBy = new Set<string>()
  const { all, refused } = onHouses(({ data, json }) => {
    for (const x of [...data.areas, ...data.openings, ...data.hazards]) kinds.add(x.kind)
    for (const g of json.gates) { gates.add(g.code); if (!g.open) cleared.add(g.code) }
    for (const t of json.tasks) reached.add(t.phase)
    for (const o of data.openings) if (o.decline) declined.add(o.kind)
    for (const s of json.stopped) stoppedBy.add(s.gate.replace(/-(main|wing|back|heater).*$/, ''))
    for (const m of json.materials) products.add(m.item)
    verdicts.add(json.verdict)
  })
  expect([...kinds].sort()).toEqual([...areaKinds, ...openingKinds, ...hazardKinds].map(k => k.kind).sort())
  expect([...gates].sort()).toEqual(GATES)
  expect([...verdicts].sort()).toEqual([...VERDICTS].sort())
  expect([...reached].sort()).toEqual(phases.filter(p => !NO_WORK_YET.includes(p)).sort())
  expect([...declined].sort()).toEqual(openingKinds.map(k => k.kind).sort())
  expect([...cleared].sort()).toEqual(['ceiling-no-limit', 'ceiling-over-limit', 'ceiling-overloaded', 'ceiling-sagging', 'combustion-failed', 'combustion-untested', 'framing-near-chimney', 'light-not-ic', 'vermiculite', 'vermiculite-not-checked'])
  expect([...stoppedBy]).toEqual(expect.arrayContaining(['declined', 'vermiculite', 'combustion-failed', 'ceiling-sagging', 'ceiling-overloaded']))
  expect([...products]).toEqual(expect.arrayContaining(['demo-loose-cellulose', 'demo-loose-fiberglass']))
  expect(refused / all, 'share of houses that a takeoff refuses').toBeLessThan(0.25)
})

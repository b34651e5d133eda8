// The kinds, in the order in which a reference lists them. A kind is a file here and a line in this list.
import type { StaticOf } from '../fields/index.ts'
import { openFloor } from './areas/open-floor.ts'
import { deckedFloor } from './areas/decked-floor.ts'
import { kneeWallFloor } from './areas/knee-wall-floor.ts'
import { kneeWall } from './areas/knee-wall.ts'
import { slope } from './areas/slope.ts'
import { platform } from './areas/platform.ts'
import { garage } from './areas/garage.ts'
import { porch } from './areas/porch.ts'
import { closedVault } from './areas/closed-vault.ts'
import { chimney } from './openings/chimney.ts'
import { droppedSoffit } from './openings/dropped-soffit.ts'
import { hatch } from './openings/hatch.ts'
import { recessedLight } from './openings/recessed-light.ts'
import { topPlate } from './openings/top-plate.ts'
import { wireHole } from './openings/wire-hole.ts'
import { pipe } from './openings/pipe.ts'
import { plumbingStack } from './openings/plumbing-stack.ts'
import { ceilingBox } from './openings/ceiling-box.ts'
import { openStudBay } from './openings/open-stud-bay.ts'
import { ductBoot } from './openings/duct-boot.ts'
import { openChase } from './openings/open-chase.ts'
import { exhaustFan } from './openings/exhaust-fan.ts'
import { pullDownStair } from './openings/pull-down-stair.ts'
import { atticDoor } from './openings/attic-door.ts'
import { metalFlue } from './openings/metal-flue.ts'
import { combustionAirOpening } from './openings/combustion-air-opening.ts'
import { heatProducingDevice } from './openings/heat-producing-device.ts'
import { waterLine } from './openings/water-line.ts'
import { wallCap } from './openings/wall-cap.ts'
import { skylightShaft } from './openings/skylight-shaft.ts'
import { wholeHouseFan } from './openings/whole-house-fan.ts'
import { coolerOpening } from './openings/cooler-opening.ts'
import { solarTube } from './openings/solar-tube.ts'
import { abandonedOpening } from './openings/abandoned-opening.ts'
import { plankCeiling } from './openings/plank-ceiling.ts'
import { fireGap } from './openings/fire-gap.ts'
import { sprinklerHead } from './openings/sprinkler-head.ts'
import { vermiculite } from './hazards/vermiculite.ts'
import { knobAndTube } from './hazards/knob-and-tube.ts'
import { openSplice } from './hazards/open-splice.ts'
import { wetWood } from './hazards/wet-wood.ts'
import { mold } from './hazards/mold.ts'
import { animals } from './hazards/animals.ts'
import { suspectDuctWrap } from './hazards/suspect-duct-wrap.ts'
import { damagedFlue } from './hazards/damaged-flue.ts'
import { unventedRoof } from './hazards/unvented-roof.ts'
import { gasLeak } from './hazards/gas-leak.ts'
import { carbonMonoxide } from './hazards/carbon-monoxide.ts'
import { leadPaint } from './hazards/lead-paint.ts'
import { damagedFraming } from './hazards/damaged-framing.ts'
import { recalledItem } from './hazards/recalled-item.ts'
import { solarWiring } from './hazards/solar-wiring.ts'
import { radon } from './hazards/radon.ts'
import { sensitiveOccupant } from './hazards/sensitive-occupant.ts'

export const areaKinds = [openFloor, deckedFloor, kneeWallFloor, kneeWall, slope, platform, garage, porch, closedVault] as const
export const openingKinds = [topPlate, recessedLight, chimney, droppedSoffit, hatch, wireHole, pipe, plumbingStack, ceilingBox, openStudBay, ductBoot, openChase, exhaustFan, pullDownStair, atticDoor, metalFlue, combustionAirOpening, heatProducingDevice, waterLine, wallCap, skylightShaft, wholeHouseFan, coolerOpening, solarTube, abandonedOpening, plankCeiling, fireGap, sprinklerHead] as const
export const hazardKinds = [vermiculite, knobAndTube, openSplice, wetWood, mold, animals, suspectDuctWrap, damagedFlue, unventedRoof, gasLeak, carbonMonoxide, leadPaint, damagedFraming, recalledItem, solarWiring, radon, sensitiveOccupant] as const

export type Area = StaticOf<(typeof areaKinds)[number]['schema']>
/** A floor under a roof edge. */
export type FloorArea = Extract<Area, { readonly heelIn: number }>
export const hasEaves = (a: Area): a is FloorArea => 'heelIn' in a
export type Opening = StaticOf<(typeof openingKinds)[number]['schema']>
export type Hazard = StaticOf<(typeof hazardKinds)[number]['schema']>
/** A ceiling whose goal is that of the job unless it has its own. */
export const hasCeilingGoal = (a: Area): boolean => a.kind === 'open-floor' || a.kind === 'decked-floor' || a.kind === 'knee-wall-floor' || a.kind === 'slope'

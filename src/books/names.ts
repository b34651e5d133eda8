// Names that a company file may use: a mistyped one would count for nothing. A test compares the lists with what the kinds ask for.

/** Kinds of work that have a production rate. */
export const workNames: readonly string[] = ['arrival', 'attic-door', 'baffle', 'bag-cellulose-rental', 'bag-cellulose-truck', 'bag-glass-rental', 'bag-glass-truck', 'box-flag', 'box-light', 'ceiling-box', 'chase',
  'chase-flue', 'chase-more', 'chimney', 'chimney-more', 'clean-up', 'combustion-appliance', 'combustion-set-up', 'cover-light-ic', 'dam', 'day-close', 'day-start', 'debris-bag', 'depth-card', 'depth-marker', 'duct-boot',
  'fan-housing', 'hatch', 'hatch-curb', 'hatch-shut', 'level', 'look', 'look-at-hazard', 'machine-set', 'metal-flue', 'move-aside', 'lay-back', 'open-stud-bay', 'pipe', 'plumbing-stack', 'pull-batts', 'pull-down-stair', 'reduct-fan',
  'refit-batts', 'soffit', 'soffit-more', 'top-plate-inside', 'top-plate-outside', 'trim-light', 'vacuum', 'vacuum-inch', 'water-line-tent', 'wind-block', 'wire-hole', 'duct-joint', 'duct-reconnect', 'duct-support', 'duct-wrap', 'blower-door', 'co-alarm', 'duct-test', 'look-blower-door', 'slash-facing', 'soffit-vent', 'machine-more', 'move-storage', 'dense-pack', 'hole-and-plug', 'joist-bay-block', 'knee-wall-back', 'knee-wall-plates', 'lay-batts', 'lay-deck', 'lift-nailed-deck', 'lift-screwed-deck', 'separation-line', 'slope-plug', 'wall-batts', 'wall-cap', 'shaft-seal', 'skylight-shaft', 'whole-house-fan', 'cooler-opening', 'solar-tube', 'plank-membrane', 'fire-gap']

/** Starting values. */
export const valueIds: readonly string[] = ['access-cap', 'air-temperature-factor', 'baffle-headroom-cap', 'baffle-margin', 'baffle-piece', 'bead-hot', 'bead-seam', 'box-board', 'box-margin', 'ceiling-box', 'chase-flue',
  'chimney-lap', 'chimney-leg', 'collar-flange', 'combustion-air-dam', 'combustion-air-sleeve', 'dam-margin', 'debris-bag-ft3', 'door-panel', 'fan-duct', 'fan-duct-wide', 'fan-housing', 'flue-clearance', 'good-baffles',
  'hatch-panel', 'hole-depth', 'insulation-clearance', 'light-clear', 'light-housing-length', 'light-housing-width', 'soffit-lap', 'span-unsupported', 'vacuum-bag-ft3', 'vent-framing', 'vent-gap', 'wall', 'water-line-cover',
  'water-line-tent', 'year-vermiculite', 'duct-attic', 'duct-films', 'duct-insulation-r-per-inch', 'duct-patch-lap', 'duct-piece', 'duct-r', 'duct-return-air', 'duct-speed', 'duct-strap', 'duct-supply-air', 'duct-wrap-thickness', 'mastic-band', 'mastic-thickness', 'co-evacuate', 'co-note', 'co-shut-off', 'lead-disturbed', 'mold-area', 'year-duct-asbestos', 'year-knob-and-tube', 'year-lead-paint', 'hood-cfm', 'leak-seam', 'leak-series', 'roof-vent-free', 'soffit-vent-free', 'fan-duct-r', 'batt-density', 'batt-thickness', 'chute', 'dense-cellulose-density', 'dense-cellulose-r', 'dense-glass-density', 'dense-glass-r', 'holes-apart', 'knee-wall-r', 'shaft-wall']

/** Work that another trade is asked for. */
export const subcontractNames: readonly string[] = ['device-move', 'light-surface', 'light-swap', 'roof-cap', 'water-line-move', 'wiring-repair', 'make-up-air', 'roof-vent']

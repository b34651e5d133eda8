// Names that a company file may use: a mistyped one would count for nothing. A test compares the lists with what the kinds ask for.

/** Kinds of work that have a production rate. */
export const workNames: readonly string[] = ['arrival', 'bag-cellulose-rental', 'bag-cellulose-truck', 'bag-glass-rental', 'bag-glass-truck', 'baffle', 'box-light', 'chimney', 'chimney-more', 'clean-up', 'combustion-appliance',
  'combustion-set-up', 'cover-light-ic', 'dam', 'day-close', 'day-start', 'debris-bag', 'depth-card', 'depth-marker', 'hatch', 'hatch-curb', 'hatch-shut', 'level', 'look', 'look-at-hazard', 'machine-set', 'move-batts',
  'pull-batts', 'refit-batts', 'soffit', 'soffit-more', 'top-plate-inside', 'top-plate-outside', 'trim-light', 'vacuum', 'vacuum-inch', 'wind-block']

/** Starting values. */
export const valueIds: readonly string[] = ['access-cap', 'air-temperature-factor', 'baffle-headroom-cap', 'baffle-margin', 'baffle-piece', 'bead-hot', 'bead-seam', 'box-board', 'box-margin', 'chimney-lap', 'chimney-leg', 'dam-margin',
  'debris-bag-ft3', 'good-baffles', 'hatch-panel', 'insulation-clearance', 'light-clear', 'light-housing-length', 'light-housing-width', 'soffit-lap', 'span-unsupported', 'vacuum-bag-ft3', 'vent-gap', 'wall', 'year-vermiculite']

/** Work that another trade is asked for. */
export const subcontractNames: readonly string[] = ['light-surface', 'light-swap']

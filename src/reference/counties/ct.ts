// Connecticut, 8 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Fairfield, Hartford, Litchfield, Middlesex, New Haven, New London, Tolland, Windham`

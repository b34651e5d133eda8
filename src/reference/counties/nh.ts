// New Hampshire, 10 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Cheshire, Hillsborough, Rockingham, Strafford
6A 5A: Merrimack
6A 6A: Belknap, Carroll, Coos, Grafton, Sullivan`

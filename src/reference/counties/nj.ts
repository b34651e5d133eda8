// New Jersey, 21 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Atlantic, Burlington, Camden, Cape May, Cumberland, Essex, Gloucester, Hudson, Middlesex, Monmouth, Ocean, Salem, Union
5A 5A: Bergen, Hunterdon, Mercer, Morris, Passaic, Somerset, Sussex, Warren`

// Utah, 29 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3B 3B: Washington
5B 5B: Beaver, Davis, Emery, Garfield, Grand, Iron, Juab, Kane, Millard, Piute, Salt Lake, San Juan, Sanpete, Sevier, Tooele, Utah, Wayne, Weber
6B 5B: Box Elder, Cache, Carbon
6B 6B: Daggett, Duchesne, Morgan, Rich, Summit, Uintah, Wasatch`

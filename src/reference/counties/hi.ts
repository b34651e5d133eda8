// Hawaii, 5 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
1A 1A: Hawaii, Honolulu, Kalawao, Kauai, Maui`

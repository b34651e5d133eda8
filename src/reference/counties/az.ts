// Arizona, 15 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2B 2B: La Paz, Maricopa, Pima, Pinal, Yuma
3B 3B: Cochise, Graham, Greenlee, Mohave, Santa Cruz
4B 4B: Gila, Yavapai
5B 5B: Apache, Coconino, Navajo`

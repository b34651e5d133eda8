// Nevada, 17 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3B 3B: Clark
5B 4B: Carson City/, Douglas, Esmeralda, Lincoln, Lyon, Mineral, Nye
5B 5B: Churchill, Elko, Eureka, Humboldt, Lander, Pershing, Storey, Washoe, White Pine`

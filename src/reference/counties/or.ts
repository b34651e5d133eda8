// Oregon, 36 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4C 4C: Benton, Clackamas, Clatsop, Columbia, Coos, Curry, Douglas, Jackson, Josephine, Lane, Lincoln, Linn, Marion, Multnomah, Polk, Tillamook,
  Washington, Yamhill
5B 5B: Baker, Crook, Deschutes, Gilliam, Grant, Harney, Hood River, Jefferson, Klamath, Lake, Malheur, Morrow, Sherman, Umatilla, Union, Wallowa,
  Wasco, Wheeler`

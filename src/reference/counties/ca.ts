// California, 58 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2B 2B: Imperial
3B 3B: Butte, Colusa, Contra Costa, Fresno, Glenn, Kern, Kings, Los Angeles, Madera, Merced, Orange, Placer, Riverside, Sacramento, San Bernardino,
  San Diego, San Joaquin, Shasta, Solano, Stanislaus, Sutter, Tehama, Tulare, Yolo, Yuba
3C 3C: Alameda, Marin, Mendocino, Monterey, Napa, San Benito, San Francisco, San Luis Obispo, San Mateo, Santa Barbara, Santa Clara, Santa Cruz,
  Sonoma, Ventura
4B 4B: Amador, Calaveras, El Dorado, Inyo, Lake, Mariposa, Trinity, Tuolumne
4C 4C: Del Norte, Humboldt
5B 5B: Lassen, Modoc, Nevada, Plumas, Sierra, Siskiyou
6B 6B: Alpine, Mono`

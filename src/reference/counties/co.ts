// Colorado, 64 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4B 4B: Baca, Las Animas, Otero
5B 4B: Bent, Prowers
5B 5B: Adams, Arapahoe, Boulder, Broomfield, Cheyenne, Crowley, Delta, Denver, Douglas, El Paso, Elbert, Fremont, Garfield, Gilpin, Huerfano,
  Jefferson, Kiowa, Kit Carson, La Plata, Larimer, Lincoln, Logan, Mesa, Montezuma, Montrose, Morgan, Phillips, Pueblo, Sedgwick, Teller, Washington,
  Weld, Yuma
6B 5B: Custer
6B 6B: Alamosa, Archuleta, Chaffee, Conejos, Costilla, Dolores, Eagle, Moffat, Ouray, Rio Blanco, Saguache, San Miguel
7 7: Clear Creek, Grand, Gunnison, Hinsdale, Jackson, Lake, Mineral, Park, Pitkin, Rio Grande, Routt, San Juan, Summit`

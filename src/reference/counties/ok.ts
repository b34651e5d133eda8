// Oklahoma, 77 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3A 3A: Adair, Atoka, Beckham, Blaine, Bryan, Caddo, Canadian, Carter, Cherokee, Choctaw, Cleveland, Coal, Comanche, Cotton, Creek, Custer, Dewey,
  Garvin, Grady, Greer, Harmon, Haskell, Hughes, Jackson, Jefferson, Johnston, Kingfisher, Kiowa, Latimer, Le Flore, Lincoln, Logan, Love, Marshall,
  Mayes, McClain, McCurtain, McIntosh, Murray, Muskogee, Noble, Okfuskee, Oklahoma, Okmulgee, Pawnee, Payne, Pittsburg, Pontotoc, Pottawatomie,
  Pushmataha, Roger Mills, Rogers, Seminole, Sequoyah, Stephens, Tillman, Tulsa, Wagoner, Washita
3A 4A: Alfalfa, Craig, Delaware, Ellis, Garfield, Grant, Harper, Kay, Major, Nowata, Osage, Ottawa, Washington, Woods, Woodward
4B 4B: Beaver, Cimarron, Texas`

// Nebraska, 93 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Adams, Antelope, Arthur, Banner, Blaine, Boone, Box Butte, Boyd, Brown, Buffalo, Burt, Butler, Cass, Cedar, Chase, Cherry, Cheyenne, Clay,
  Colfax, Cuming, Custer, Dakota, Dawes, Dawson, Deuel, Dixon, Dodge, Douglas, Dundy, Fillmore, Franklin, Frontier, Furnas, Gage, Garden, Garfield,
  Gosper, Grant, Greeley, Hall, Hamilton, Harlan, Hayes, Hitchcock, Holt, Hooker, Howard, Jefferson, Johnson, Kearney, Keith, Keya Paha, Kimball,
  Knox, Lancaster, Lincoln, Logan, Loup, Madison, McPherson, Merrick, Morrill, Nance, Nemaha, Nuckolls, Otoe, Pawnee, Perkins, Phelps, Pierce, Platte,
  Polk, Red Willow, Richardson, Rock, Saline, Sarpy, Saunders, Scotts Bluff, Seward, Sheridan, Sherman, Sioux, Stanton, Thayer, Thomas, Thurston,
  Valley, Washington, Wayne, Webster, Wheeler, York`

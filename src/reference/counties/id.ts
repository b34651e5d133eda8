// Idaho, 44 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5B 5B: Ada, Benewah, Canyon, Cassia, Clearwater, Elmore, Gem, Gooding, Idaho, Jerome, Kootenai, Latah, Lewis, Lincoln, Minidoka, Nez Perce, Owyhee,
  Payette, Power, Shoshone, Twin Falls, Washington
6B 6B: Adams, Bannock, Bear Lake, Bingham, Blaine, Boise, Bonner, Bonneville, Boundary, Butte, Camas, Caribou, Clark, Custer, Franklin, Fremont,
  Jefferson, Lemhi, Madison, Oneida, Teton, Valley`

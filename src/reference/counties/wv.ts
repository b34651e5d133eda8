// West Virginia, 55 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Berkeley, Boone, Braxton, Cabell, Calhoun, Clay, Gilmer, Jackson, Jefferson, Kanawha, Lincoln, Logan, Mason, McDowell, Mercer, Mingo, Monroe,
  Morgan, Pleasants, Putnam, Ritchie, Roane, Tyler, Wayne, Wirt, Wood, Wyoming
5A 4A: Doddridge, Fayette, Greenbrier, Lewis, Nicholas, Raleigh, Summers, Upshur, Webster
5A 5A: Barbour, Brooke, Grant, Hampshire, Hancock, Hardy, Harrison, Marion, Marshall, Mineral, Monongalia, Ohio, Pendleton, Pocahontas, Preston,
  Randolph, Taylor, Tucker, Wetzel`

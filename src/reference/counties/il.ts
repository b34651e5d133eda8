// Illinois, 102 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Alexander, Bond, Christian, Clay, Clinton, Crawford, Edwards, Effingham, Fayette, Franklin, Gallatin, Hamilton, Hardin, Jackson, Jasper,
  Jefferson, Johnson, Lawrence, Macoupin, Madison, Marion, Massac, Monroe, Montgomery, Perry, Pope, Pulaski, Randolph, Richland, Saline, Shelby,
  St. Clair, Union, Wabash, Washington, Wayne, White, Williamson
5A 4A: Calhoun, Clark, Coles, Cumberland, Greene, Jersey
5A 5A: Adams, Boone, Brown, Bureau, Carroll, Cass, Champaign, Cook, De Witt, DeKalb, Douglas, DuPage, Edgar, Ford, Fulton, Grundy, Hancock, Henderson,
  Henry, Iroquois, Jo Daviess, Kane, Kankakee, Kendall, Knox, LaSalle, Lake, Lee, Livingston, Logan, Macon, Marshall, Mason, McDonough, McHenry,
  McLean, Menard, Mercer, Morgan, Moultrie, Ogle, Peoria, Piatt, Pike, Putnam, Rock Island, Sangamon, Schuyler, Scott, Stark, Stephenson, Tazewell,
  Vermilion, Warren, Whiteside, Will, Winnebago, Woodford`

// Iowa, 99 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Adair, Adams, Appanoose, Audubon, Benton, Boone, Carroll, Cass, Cedar, Clarke, Clinton, Dallas, Davis, Decatur, Des Moines, Dubuque, Fremont,
  Greene, Guthrie, Harrison, Henry, Iowa, Jackson, Jasper, Jefferson, Johnson, Jones, Keokuk, Lee, Linn, Louisa, Lucas, Madison, Mahaska, Marion,
  Marshall, Mills, Monona, Monroe, Montgomery, Muscatine, Page, Polk, Pottawattamie, Poweshiek, Ringgold, Scott, Shelby, Story, Tama, Taylor, Union,
  Van Buren, Wapello, Warren, Washington, Wayne, Woodbury
6A 5A: Allamakee, Bremer, Buchanan, Buena Vista, Butler, Calhoun, Cherokee, Chickasaw, Clayton, Crawford, Delaware, Fayette, Floyd, Franklin, Grundy,
  Hamilton, Hardin, Howard, Humboldt, Ida, Plymouth, Pocahontas, Sac, Webster, Winneshiek, Wright
6A 6A: Black Hawk, Cerro Gordo, Clay, Dickinson, Emmet, Hancock, Kossuth, Lyon, Mitchell, O'Brien, Osceola, Palo Alto, Sioux, Winnebago, Worth`

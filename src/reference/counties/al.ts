// Alabama, 67 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2A 2A: Baldwin, Mobile
3A 2A: Coffee, Covington, Dale, Escambia, Geneva, Henry, Houston
3A 3A: Autauga, Barbour, Bibb, Blount, Bullock, Butler, Calhoun, Chambers, Cherokee, Chilton, Choctaw, Clarke, Clay, Cleburne, Colbert, Conecuh,
  Coosa, Crenshaw, Cullman, Dallas, DeKalb, Elmore, Etowah, Fayette, Franklin, Greene, Hale, Jackson, Jefferson, Lamar, Lauderdale, Lawrence, Lee,
  Limestone, Lowndes, Macon, Madison, Marengo, Marion, Marshall, Monroe, Montgomery, Morgan, Perry, Pickens, Pike, Randolph, Russell, Shelby,
  St. Clair, Sumter, Talladega, Tallapoosa, Tuscaloosa, Walker, Washington, Wilcox, Winston`

// Ohio, 88 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Adams, Brown, Clermont, Gallia, Hamilton, Lawrence, Pike, Scioto, Washington
5A 4A: Athens, Butler, Clinton, Fayette, Franklin, Greene, Highland, Hocking, Jackson, Madison, Meigs, Pickaway, Ross, Vinton, Warren
5A 5A: Allen, Ashland, Ashtabula, Auglaize, Belmont, Carroll, Champaign, Clark, Columbiana, Coshocton, Crawford, Cuyahoga, Darke, Defiance, Delaware,
  Erie, Fairfield, Fulton, Geauga, Guernsey, Hancock, Hardin, Harrison, Henry, Holmes, Huron, Jefferson, Knox, Lake, Licking, Logan, Lorain, Lucas,
  Mahoning, Marion, Medina, Mercer, Miami, Monroe, Montgomery, Morgan, Morrow, Muskingum, Noble, Ottawa, Paulding, Perry, Portage, Preble, Putnam,
  Richland, Sandusky, Seneca, Shelby, Stark, Summit, Trumbull, Tuscarawas, Union, Van Wert, Wayne, Williams, Wood, Wyandot`

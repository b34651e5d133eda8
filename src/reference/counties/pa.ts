// Pennsylvania, 67 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Bucks, Chester, Delaware, Montgomery, Philadelphia, York
5A 4A: Adams, Berks, Cumberland, Dauphin, Franklin, Lancaster, Lebanon, Perry
5A 5A: Allegheny, Armstrong, Beaver, Bedford, Blair, Bradford, Butler, Cambria, Carbon, Centre, Clarion, Clinton, Columbia, Crawford, Erie, Fayette,
  Forest, Fulton, Greene, Huntingdon, Indiana, Jefferson, Juniata, Lackawanna, Lawrence, Lehigh, Luzerne, Lycoming, Mercer, Mifflin, Monroe, Montour,
  Northampton, Northumberland, Pike, Schuylkill, Snyder, Somerset, Sullivan, Union, Venango, Warren, Washington, Westmoreland, Wyoming
6A 5A: Cameron, Clearfield, Elk, McKean, Potter, Susquehanna, Tioga, Wayne`

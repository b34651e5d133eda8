// Louisiana, 64 counties. Zone before 2021, zone of 2021: names, with /kind where it is no Parish. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2A 2A: Acadia, Allen, Ascension, Assumption, Avoyelles, Beauregard, Calcasieu, Cameron, East Baton Rouge, East Feliciana, Evangeline, Iberia,
  Iberville, Jefferson, Jefferson Davis, Lafayette, Lafourche, Livingston, Orleans, Plaquemines, Pointe Coupee, Rapides, St. Bernard, St. Charles,
  St. Helena, St. James, St. John the Baptist, St. Landry, St. Martin, St. Mary, St. Tammany, Tangipahoa, Terrebonne, Vermilion, Washington,
  West Baton Rouge, West Feliciana
3A 3A: Bienville, Bossier, Caddo, Caldwell, Catahoula, Claiborne, Concordia, De Soto, East Carroll, Franklin, Grant, Jackson, LaSalle, Lincoln,
  Madison, Morehouse, Natchitoches, Ouachita, Red River, Richland, Sabine, Tensas, Union, Vernon, Webster, West Carroll, Winn`

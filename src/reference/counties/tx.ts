// Texas, 254 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2A 1A: Cameron, Hidalgo, Willacy
2A 2A: Anderson, Angelina, Aransas, Atascosa, Austin, Bastrop, Bee, Bell, Bexar, Bosque, Brazoria, Brazos, Brooks, Burleson, Caldwell, Calhoun,
  Chambers, Cherokee, Colorado, Comal, Coryell, DeWitt, Duval, Falls, Fayette, Fort Bend, Freestone, Galveston, Goliad, Gonzales, Grimes, Guadalupe,
  Hardin, Harris, Hays, Hill, Houston, Jackson, Jasper, Jefferson, Jim Hogg, Jim Wells, Karnes, Kenedy, Kleberg, Lavaca, Lee, Leon, Liberty,
  Limestone, Live Oak, Madison, Matagorda, McLennan, McMullen, Milam, Montgomery, Newton, Nueces, Orange, Polk, Refugio, Robertson, San Jacinto,
  San Patricio, Starr, Travis, Trinity, Tyler, Victoria, Walker, Waller, Washington, Wharton, Williamson, Wilson
2B 2B: Bandera, Dimmit, Edwards, Frio, Kinney, La Salle, Maverick, Medina, Real, Uvalde, Val Verde, Webb, Zapata, Zavala
3A 2A: Dallas, Ellis, Johnson, Navarro, Tarrant
3A 3A: Archer, Blanco, Bowie, Brown, Burnet, Camp, Cass, Clay, Collin, Comanche, Cooke, Delta, Denton, Eastland, Erath, Fannin, Franklin, Gillespie,
  Grayson, Gregg, Hamilton, Harrison, Henderson, Hood, Hopkins, Hunt, Jack, Kaufman, Kendall, Lamar, Lampasas, Llano, Marion, Mills, Montague, Morris,
  Nacogdoches, Palo Pinto, Panola, Parker, Rains, Red River, Rockwall, Rusk, Sabine, San Augustine, San Saba, Shelby, Smith, Somervell, Stephens,
  Titus, Upshur, Van Zandt, Wichita, Wise, Wood, Young
3B 3B: Andrews, Baylor, Borden, Brewster, Callahan, Childress, Coke, Coleman, Collingsworth, Concho, Cottle, Crane, Crockett, Crosby, Culberson,
  Dawson, Dickens, Ector, El Paso, Fisher, Foard, Gaines, Garza, Glasscock, Hall, Hardeman, Haskell, Hemphill, Howard, Hudspeth, Irion, Jeff Davis,
  Jones, Kent, Kerr, Kimble, King, Knox, Loving, Lubbock, Lynn, Martin, Mason, McCulloch, Menard, Midland, Mitchell, Motley, Nolan, Pecos, Presidio,
  Reagan, Reeves, Runnels, Schleicher, Scurry, Shackelford, Sterling, Stonewall, Sutton, Taylor, Terrell, Terry, Throckmorton, Tom Green, Upton, Ward,
  Wheeler, Wilbarger, Winkler
4B 4B: Armstrong, Bailey, Briscoe, Carson, Castro, Cochran, Dallam, Deaf Smith, Donley, Floyd, Gray, Hale, Hansford, Hartley, Hockley, Hutchinson,
  Lamb, Lipscomb, Moore, Ochiltree, Oldham, Parmer, Potter, Randall, Roberts, Sherman, Swisher, Yoakum`

// Michigan, 83 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Allegan, Barry, Bay, Berrien, Branch, Calhoun, Cass, Clinton, Eaton, Genesee, Gratiot, Hillsdale, Ingham, Ionia, Jackson, Kalamazoo, Kent,
  Lapeer, Lenawee, Livingston, Macomb, Midland, Monroe, Montcalm, Muskegon, Oakland, Ottawa, Saginaw, Shiawassee, St. Clair, St. Joseph, Tuscola,
  Van Buren, Washtenaw, Wayne
6A 5A: Huron, Sanilac
6A 6A: Alcona, Alger, Alpena, Antrim, Arenac, Benzie, Charlevoix, Cheboygan, Clare, Crawford, Delta, Dickinson, Emmet, Gladwin, Grand Traverse, Iosco,
  Isabella, Kalkaska, Lake, Leelanau, Manistee, Mason, Mecosta, Menominee, Missaukee, Montmorency, Newaygo, Oceana, Ogemaw, Osceola, Oscoda, Otsego,
  Presque Isle, Roscommon, Wexford
6A 7: Marquette
7 6A: Baraga, Chippewa, Gogebic, Houghton, Iron, Luce, Mackinac, Ontonagon, Schoolcraft
7 7: Keweenaw`

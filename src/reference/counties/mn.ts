// Minnesota, 87 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
6A 5A: Fillmore, Houston, Winona
6A 6A: Anoka, Benton, Big Stone, Blue Earth, Brown, Carver, Chippewa, Chisago, Cottonwood, Dakota, Dodge, Douglas, Faribault, Freeborn, Goodhue,
  Hennepin, Isanti, Jackson, Kandiyohi, Lac qui Parle, Le Sueur, Lincoln, Lyon, Martin, McLeod, Meeker, Morrison, Mower, Murray, Nicollet, Nobles,
  Olmsted, Pipestone, Pope, Ramsey, Redwood, Renville, Rice, Rock, Scott, Sherburne, Sibley, Stearns, Steele, Stevens, Swift, Todd, Traverse, Wabasha,
  Waseca, Washington, Watonwan, Wright, Yellow Medicine
7 6A: Becker, Clay, Grant, Kanabec, Mille Lacs, Otter Tail, Wilkin
7 7: Aitkin, Beltrami, Carlton, Cass, Clearwater, Cook, Crow Wing, Hubbard, Itasca, Kittson, Koochiching, Lake, Lake of the Woods, Mahnomen, Marshall,
  Norman, Pennington, Pine, Polk, Red Lake, Roseau, St. Louis, Wadena`

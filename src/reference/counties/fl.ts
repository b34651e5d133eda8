// Florida, 67 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
1A 1A: Broward, Miami-Dade, Monroe
2A 1A: Palm Beach
2A 2A: Alachua, Baker, Bay, Bradford, Brevard, Calhoun, Charlotte, Citrus, Clay, Collier, Columbia, DeSoto, Dixie, Duval, Escambia, Flagler, Franklin,
  Gadsden, Gilchrist, Glades, Gulf, Hamilton, Hardee, Hendry, Hernando, Highlands, Hillsborough, Holmes, Indian River, Jackson, Jefferson, Lafayette,
  Lake, Lee, Leon, Levy, Liberty, Madison, Manatee, Marion, Martin, Nassau, Okaloosa, Okeechobee, Orange, Osceola, Pasco, Pinellas, Polk, Putnam,
  Santa Rosa, Sarasota, Seminole, St. Johns, St. Lucie, Sumter, Suwannee, Taylor, Union, Volusia, Wakulla, Walton, Washington`

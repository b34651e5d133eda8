// North Carolina, 100 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3A 3A: Anson, Beaufort, Bladen, Brunswick, Cabarrus, Camden, Carteret, Chowan, Columbus, Craven, Cumberland, Currituck, Dare, Davidson, Duplin,
  Edgecombe, Gaston, Greene, Hoke, Hyde, Johnston, Jones, Lenoir, Martin, Mecklenburg, Montgomery, Moore, New Hanover, Onslow, Pamlico, Pasquotank,
  Pender, Perquimans, Pitt, Randolph, Richmond, Robeson, Rowan, Sampson, Scotland, Stanly, Tyrrell, Union, Washington, Wayne, Wilson
4A 3A: Alamance, Alexander, Bertie, Caswell, Catawba, Chatham, Cherokee, Clay, Cleveland, Davie, Durham, Forsyth, Franklin, Gates, Granville,
  Guilford, Halifax, Harnett, Hertford, Iredell, Lee, Lincoln, Nash, Northampton, Orange, Person, Polk, Rockingham, Rutherford, Vance, Wake, Warren,
  Wilkes
4A 4A: Buncombe, Burke, Caldwell, Graham, Haywood, Henderson, Jackson, Macon, Madison, McDowell, Stokes, Surry, Swain, Transylvania, Yadkin
5A 4A: Mitchell
5A 5A: Alleghany, Ashe, Avery, Watauga, Yancey`

// South Dakota, 66 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5A 5A: Bennett, Bon Homme, Charles Mix, Clay, Douglas, Gregory, Hutchinson, Jackson, Mellette, Todd, Tripp, Union, Yankton
6A 5A: Brule, Haakon, Jones, Lyman, Stanley
6A 6A: Aurora, Beadle, Brookings, Brown, Buffalo, Butte, Campbell, Clark, Codington, Corson, Custer, Davison, Day, Deuel, Dewey, Edmunds, Fall River,
  Faulk, Grant, Hamlin, Hand, Hanson, Harding, Hughes, Hyde, Jerauld, Kingsbury, Lake, Lawrence, Lincoln, Marshall, McCook, McPherson, Meade, Miner,
  Minnehaha, Moody, Oglala Lakota, Pennington, Perkins, Potter, Roberts, Sanborn, Spink, Sully, Turner, Walworth, Ziebach`

// Kansas, 105 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Allen, Anderson, Atchison, Barber, Barton, Bourbon, Brown, Butler, Chase, Chautauqua, Cherokee, Clark, Clay, Coffey, Comanche, Cowley,
  Crawford, Dickinson, Doniphan, Douglas, Edwards, Elk, Ellsworth, Finney, Ford, Franklin, Geary, Grant, Gray, Greenwood, Harper, Harvey, Haskell,
  Hodgeman, Jackson, Jefferson, Johnson, Kearny, Kingman, Kiowa, Labette, Leavenworth, Lincoln, Linn, Lyon, Marion, Marshall, McPherson, Meade, Miami,
  Montgomery, Morris, Morton, Nemaha, Neosho, Osage, Ottawa, Pawnee, Pottawatomie, Pratt, Reno, Rice, Riley, Rush, Russell, Saline, Sedgwick, Seward,
  Shawnee, Stafford, Stanton, Stevens, Sumner, Wabaunsee, Washington, Wilson, Woodson, Wyandotte
5A 4A: Cloud, Ellis, Graham, Hamilton, Mitchell, Ness, Osborne, Rooks, Trego
5A 5A: Cheyenne, Decatur, Gove, Greeley, Jewell, Lane, Logan, Norton, Phillips, Rawlins, Republic, Scott, Sheridan, Sherman, Smith, Thomas, Wallace,
  Wichita`

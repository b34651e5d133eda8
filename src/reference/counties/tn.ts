// Tennessee, 95 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3A 3A: Chester, Crockett, Dyer, Fayette, Hardeman, Hardin, Haywood, Henderson, Lauderdale, Madison, McNairy, Shelby, Tipton
3A 4A: Lake
4A 3A: Bedford, Coffee, Davidson, Decatur, Franklin, Gibson, Giles, Grundy, Hamilton, Hickman, Lawrence, Lewis, Lincoln, Marion, Marshall, Maury,
  Moore, Perry, Rutherford, Wayne, Williamson
4A 4A: Anderson, Benton, Bledsoe, Blount, Bradley, Campbell, Cannon, Carroll, Carter, Cheatham, Claiborne, Clay, Cocke, Cumberland, DeKalb, Dickson,
  Fentress, Grainger, Greene, Hamblen, Hancock, Hawkins, Henry, Houston, Humphreys, Jackson, Jefferson, Johnson, Knox, Loudon, Macon, McMinn, Meigs,
  Monroe, Montgomery, Morgan, Obion, Overton, Pickett, Polk, Putnam, Rhea, Roane, Robertson, Scott, Sequatchie, Sevier, Smith, Stewart, Sullivan,
  Sumner, Trousdale, Unicoi, Union, Van Buren, Warren, Washington, Weakley, White, Wilson`

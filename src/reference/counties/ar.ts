// Arkansas, 75 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3A 3A: Arkansas, Ashley, Bradley, Calhoun, Chicot, Clark, Clay, Cleburne, Cleveland, Columbia, Conway, Craighead, Crawford, Crittenden, Cross, Dallas,
  Desha, Drew, Faulkner, Franklin, Garland, Grant, Greene, Hempstead, Hot Spring, Howard, Independence, Jackson, Jefferson, Johnson, Lafayette,
  Lawrence, Lee, Lincoln, Little River, Logan, Lonoke, Miller, Mississippi, Monroe, Montgomery, Nevada, Ouachita, Perry, Phillips, Pike, Poinsett,
  Polk, Pope, Prairie, Pulaski, Randolph, Saline, Scott, Sebastian, Sevier, Sharp, St. Francis, Union, Van Buren, White, Woodruff, Yell
4A 4A: Baxter, Benton, Boone, Carroll, Fulton, Izard, Madison, Marion, Newton, Searcy, Stone, Washington`

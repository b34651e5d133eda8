// Missouri, 115 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 3A: Dunklin, Pemiscot
4A 4A: Audrain, Barry, Barton, Bates, Benton, Bollinger, Boone, Butler, Callaway, Camden, Cape Girardeau, Carroll, Carter, Cass, Cedar, Christian,
  Clay, Cole, Cooper, Crawford, Dade, Dallas, Dent, Douglas, Franklin, Gasconade, Greene, Henry, Hickory, Howard, Howell, Iron, Jackson, Jasper,
  Jefferson, Johnson, Laclede, Lafayette, Lawrence, Lincoln, Madison, Maries, McDonald, Miller, Mississippi, Moniteau, Monroe, Montgomery, Morgan,
  New Madrid, Newton, Oregon, Osage, Ozark, Perry, Pettis, Phelps, Platte, Polk, Pulaski, Randolph, Ray, Reynolds, Ripley, Saline, Scott, Shannon,
  St. Charles, St. Clair, St. Francois, St. Louis, St. Louis/city, Ste. Genevieve, Stoddard, Stone, Taney, Texas, Vernon, Warren, Washington, Wayne,
  Webster, Wright
5A 4A: Buchanan, Caldwell, Chariton, Clinton
5A 5A: Adair, Andrew, Atchison, Clark, Daviess, DeKalb, Gentry, Grundy, Harrison, Holt, Knox, Lewis, Linn, Livingston, Macon, Marion, Mercer, Nodaway,
  Pike, Putnam, Ralls, Schuyler, Scotland, Shelby, Sullivan, Worth`

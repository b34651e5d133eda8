// Georgia, 159 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2A 2A: Appling, Atkinson, Bacon, Baker, Berrien, Brantley, Brooks, Bryan, Camden, Charlton, Chatham, Clinch, Colquitt, Cook, Decatur, Echols,
  Effingham, Evans, Glynn, Grady, Jeff Davis, Lanier, Liberty, Long, Lowndes, McIntosh, Miller, Mitchell, Pierce, Seminole, Tattnall, Thomas, Toombs,
  Ware, Wayne
3A 2A: Calhoun, Coffee, Dougherty, Early, Tift, Worth
3A 3A: Baldwin, Barrow, Bartow, Ben Hill, Bibb, Bleckley, Bulloch, Burke, Butts, Candler, Carroll, Chattahoochee, Cherokee, Clarke, Clay, Clayton,
  Cobb, Columbia, Coweta, Crawford, Crisp, DeKalb, Dodge, Dooly, Douglas, Elbert, Emanuel, Fayette, Forsyth, Fulton, Glascock, Greene, Gwinnett,
  Hancock, Haralson, Harris, Hart, Heard, Henry, Houston, Irwin, Jackson, Jasper, Jefferson, Jenkins, Johnson, Jones, Lamar, Laurens, Lee, Lincoln,
  Macon, Madison, Marion, McDuffie, Meriwether, Monroe, Montgomery, Morgan, Muscogee, Newton, Oconee, Oglethorpe, Paulding, Peach, Pike, Polk,
  Pulaski, Putnam, Quitman, Randolph, Richmond, Rockdale, Schley, Screven, Spalding, Stewart, Sumter, Talbot, Taliaferro, Taylor, Telfair, Terrell,
  Treutlen, Troup, Turner, Twiggs, Upson, Walton, Warren, Washington, Webster, Wheeler, Wilcox, Wilkes, Wilkinson
4A 3A: Banks, Catoosa, Chattooga, Dade, Dawson, Fannin, Floyd, Franklin, Gilmer, Gordon, Habersham, Hall, Lumpkin, Murray, Pickens, Rabun, Stephens,
  Towns, Union, Walker, White, Whitfield`

// Indiana, 92 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Brown, Clark, Crawford, Daviess, Dearborn, Dubois, Floyd, Gibson, Greene, Harrison, Jackson, Jefferson, Jennings, Knox, Lawrence, Martin,
  Monroe, Ohio, Orange, Perry, Pike, Posey, Ripley, Scott, Spencer, Sullivan, Switzerland, Vanderburgh, Warrick, Washington
5A 4A: Bartholomew, Clay, Decatur, Fayette, Franklin, Hendricks, Johnson, Marion, Morgan, Owen, Putnam, Rush, Shelby, Union, Vigo
5A 5A: Adams, Allen, Benton, Blackford, Boone, Carroll, Cass, Clinton, DeKalb, Delaware, Elkhart, Fountain, Fulton, Grant, Hamilton, Hancock, Henry,
  Howard, Huntington, Jasper, Jay, Kosciusko, LaGrange, LaPorte, Lake, Madison, Marshall, Miami, Montgomery, Newton, Noble, Parke, Porter, Pulaski,
  Randolph, St. Joseph, Starke, Steuben, Tippecanoe, Tipton, Vermillion, Wabash, Warren, Wayne, Wells, White, Whitley`

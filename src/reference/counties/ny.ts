// New York, 62 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Bronx, Kings, Nassau, New York, Queens, Richmond, Suffolk, Westchester
5A 5A: Albany, Cayuga, Chautauqua, Chemung, Columbia, Cortland, Dutchess, Erie, Genesee, Greene, Livingston, Monroe, Niagara, Onondaga, Ontario,
  Orange, Orleans, Oswego, Putnam, Rensselaer, Rockland, Saratoga, Schenectady, Seneca, Tioga, Washington, Wayne, Yates
6A 5A: Allegany, Broome, Cattaraugus, Schoharie, Schuyler, Steuben, Tompkins, Wyoming
6A 6A: Chenango, Clinton, Delaware, Essex, Franklin, Fulton, Hamilton, Herkimer, Jefferson, Lewis, Madison, Montgomery, Oneida, Otsego, St. Lawrence,
  Sullivan, Ulster, Warren`

// North Dakota, 53 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
6A 6A: Adams, Billings, Bowman, Burleigh, Dickey, Dunn, Emmons, Golden Valley, Grant, Hettinger, LaMoure, Logan, McIntosh, McKenzie, Mercer, Morton,
  Oliver, Ransom, Richland, Sargent, Sioux, Slope, Stark
7 6A: Barnes, Cass, Eddy, Foster, Griggs, Kidder, McLean, Mountrail, Sheridan, Steele, Stutsman, Traill, Wells, Williams
7 7: Benson, Bottineau, Burke, Cavalier, Divide, Grand Forks, McHenry, Nelson, Pembina, Pierce, Ramsey, Renville, Rolette, Towner, Walsh, Ward`

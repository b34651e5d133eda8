// Maryland, 24 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 4A: Anne Arundel, Baltimore, Baltimore/city, Calvert, Caroline, Carroll, Cecil, Charles, Dorchester, Frederick, Harford, Howard, Kent, Montgomery,
  Prince George's, Queen Anne's, Somerset, St. Mary's, Talbot, Washington, Wicomico, Worcester
4A 5A: Allegany
5A 5A: Garrett`

// South Carolina, 46 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3A 2A: Beaufort, Jasper
3A 3A: Abbeville, Aiken, Allendale, Anderson, Bamberg, Barnwell, Berkeley, Calhoun, Charleston, Cherokee, Chester, Chesterfield, Clarendon, Colleton,
  Darlington, Dillon, Dorchester, Edgefield, Fairfield, Florence, Georgetown, Greenville, Greenwood, Hampton, Horry, Kershaw, Lancaster, Laurens, Lee,
  Lexington, Marion, Marlboro, McCormick, Newberry, Oconee, Orangeburg, Pickens, Richland, Saluda, Spartanburg, Sumter, Union, Williamsburg, York`

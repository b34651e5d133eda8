// Wyoming, 23 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
5B 5B: Goshen, Platte
6B 5B: Laramie
6B 6B: Albany, Big Horn, Campbell, Carbon, Converse, Crook, Fremont, Hot Springs, Johnson, Natrona, Niobrara, Park, Sheridan, Sweetwater, Uinta,
  Washakie, Weston
7 7: Lincoln, Sublette, Teton`

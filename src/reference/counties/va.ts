// Virginia, 133 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4A 3A: Brunswick, Chesapeake/city, Emporia/city, Franklin, Franklin/city, Greensville, Halifax, Hampton/city, Isle of Wight, Mecklenburg,
  Newport News/city, Norfolk/city, Pittsylvania, Portsmouth/city, Southampton, Suffolk/city, Surry, Sussex, Virginia Beach/city
4A 4A: Accomack, Albemarle, Alexandria/city, Amelia, Amherst, Appomattox, Arlington, Augusta, Bedford, Bland, Botetourt, Bristol/city, Buchanan,
  Buckingham, Buena Vista/city, Campbell, Caroline, Carroll, Charles City, Charlotte, Charlottesville/city, Chesterfield, Clarke,
  Colonial Heights/city, Craig, Culpeper, Cumberland, Danville/city, Dickenson, Dinwiddie, Essex, Fairfax, Fairfax/city, Falls Church/city, Fauquier,
  Floyd, Fluvanna, Frederick, Fredericksburg/city, Galax/city, Giles, Gloucester, Goochland, Grayson, Greene, Hanover, Harrisonburg/city, Henrico,
  Henry, Hopewell/city, James City, King George, King William, King and Queen, Lancaster, Lee, Lexington/city, Loudoun, Louisa, Lunenburg,
  Lynchburg/city, Madison, Manassas Park/city, Manassas/city, Martinsville/city, Mathews, Middlesex, Montgomery, Nelson, New Kent, Northampton,
  Northumberland, Norton/city, Nottoway, Orange, Page, Patrick, Petersburg/city, Poquoson/city, Powhatan, Prince Edward, Prince George,
  Prince William, Pulaski, Radford/city, Rappahannock, Richmond, Richmond/city, Roanoke, Roanoke/city, Rockbridge, Rockingham, Russell, Salem/city,
  Scott, Shenandoah, Smyth, Spotsylvania, Stafford, Staunton/city, Tazewell, Warren, Washington, Waynesboro/city, Westmoreland, Williamsburg/city,
  Winchester/city, Wise, Wythe, York
4A 5A: Alleghany, Bath, Covington/city, Highland`

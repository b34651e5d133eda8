// Alaska, 29 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
7 5C: Ketchikan Gateway/Borough, Prince of Wales-Hyder/Census Area, Sitka/City and Borough
7 6A: Haines/Borough, Hoonah-Angoon/Census Area, Juneau/City and Borough, Kodiak Island/Borough, Petersburg/Borough, Skagway/Municipality,
  Wrangell/City and Borough
7 7: Aleutians East/Borough, Aleutians West/Census Area, Anchorage/Municipality, Bristol Bay/Borough, Kenai Peninsula/Borough,
  Lake and Peninsula/Borough, Matanuska-Susitna/Borough, Valdez-Cordova/Census Area, Yakutat/City and Borough
7 8: Denali/Borough
8 7: Bethel/Census Area, Dillingham/Census Area
8 8: Fairbanks North Star/Borough, Kusilvak/Census Area, Nome/Census Area, North Slope/Borough, Northwest Arctic/Borough,
  Southeast Fairbanks/Census Area, Yukon-Koyukuk/Census Area`

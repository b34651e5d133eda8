// Washington, 39 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
4C 4C: Clark, Cowlitz, Grays Harbor, Jefferson, King, Lewis, Mason, Pacific, Pierce, Skagit, Snohomish, Thurston, Wahkiakum, Whatcom
4C 5C: Clallam, Island, Kitsap, San Juan
5B 5B: Adams, Asotin, Benton, Chelan, Columbia, Douglas, Franklin, Garfield, Grant, Kittitas, Klickitat, Lincoln, Skamania, Spokane, Walla Walla,
  Whitman, Yakima
6B 5B: Okanogan
6B 6B: Ferry, Pend Oreille, Stevens`

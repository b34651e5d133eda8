// Wisconsin, 72 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
6A 5A: Adams, Calumet, Columbia, Crawford, Dane, Dodge, Fond du Lac, Grant, Green, Green Lake, Iowa, Jefferson, Juneau, Kenosha, La Crosse, Lafayette,
  Milwaukee, Monroe, Outagamie, Ozaukee, Racine, Richland, Rock, Sauk, Vernon, Walworth, Washington, Waukesha, Waushara, Winnebago
6A 6A: Barron, Brown, Buffalo, Chippewa, Clark, Door, Dunn, Eau Claire, Jackson, Kewaunee, Manitowoc, Marathon, Marinette, Marquette, Menominee,
  Oconto, Pepin, Pierce, Polk, Portage, Rusk, Shawano, Sheboygan, St. Croix, Trempealeau, Waupaca, Wood
7 6A: Ashland, Bayfield, Burnett, Douglas, Florence, Forest, Iron, Langlade, Lincoln, Oneida, Price, Sawyer, Taylor, Vilas, Washburn`

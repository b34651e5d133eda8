// Mississippi, 82 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
2A 2A: Hancock, Harrison, Jackson, Pearl River, Stone
3A 2A: George
3A 3A: Adams, Alcorn, Amite, Attala, Benton, Bolivar, Calhoun, Carroll, Chickasaw, Choctaw, Claiborne, Clarke, Clay, Coahoma, Copiah, Covington,
  DeSoto, Forrest, Franklin, Greene, Grenada, Hinds, Holmes, Humphreys, Issaquena, Itawamba, Jasper, Jefferson, Jefferson Davis, Jones, Kemper,
  Lafayette, Lamar, Lauderdale, Lawrence, Leake, Lee, Leflore, Lincoln, Lowndes, Madison, Marion, Marshall, Monroe, Montgomery, Neshoba, Newton,
  Noxubee, Oktibbeha, Panola, Perry, Pike, Pontotoc, Prentiss, Quitman, Rankin, Scott, Sharkey, Simpson, Smith, Sunflower, Tallahatchie, Tate, Tippah,
  Tishomingo, Tunica, Union, Walthall, Warren, Washington, Wayne, Webster, Wilkinson, Winston, Yalobusha, Yazoo`

// New Mexico, 33 counties. Zone before 2021, zone of 2021: names, with /kind where it is no County. Zones: US Department of Energy; names: US Census. See index.ts.
export default (): string => `
3B 3B: Chaves, Doña Ana, Eddy, Hidalgo, Lea, Luna, Otero
4B 3B: Sierra
4B 4B: Bernalillo, Cibola, Curry, De Baca, Grant, Guadalupe, Lincoln, Quay, Roosevelt, Socorro, Union, Valencia
5B 4B: Catron
5B 5B: Colfax, Harding, Los Alamos, McKinley, Mora, Rio Arriba, San Juan, San Miguel, Sandoval, Santa Fe, Taos, Torrance`

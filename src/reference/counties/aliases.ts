// Names of counties that the maps do not use: renamed, merged, split or drawn anew, or what people say. Each stands for rows of the maps.
import type { Obtained } from '../table.ts'

export interface Alias {
  readonly state: string
  /** As in the files of the states: with /kind where it is no County. */
  readonly name: string
  /** Rows of the state's file. */
  readonly means: readonly string[]
  readonly what: string
  readonly source: string
  readonly obtained: Obtained
}

const changed = (state: string, name: string, means: readonly string[], what: string): Alias =>
  ({ state, name, means, what, source: 'US Census Bureau, Substantial Changes to Counties and County Equivalent Entities: 1970-Present', obtained: 'from memory, high' })
const said = (state: string, name: string, means: readonly string[], what: string): Alias => ({ state, name, means, what, source: 'US Census Bureau, county names', obtained: 'from memory, high' })
/** The towns of a region lie in these counties. */
const region = (name: string, ...means: readonly string[]): Alias =>
  ({ state: 'CT', name: `${name}/Planning Region`, means, what: 'planning region, county equivalent since 2022', source: 'US Census Bureau, Change to County-Equivalents in the State of Connecticut, 2022', obtained: 'from memory, medium' })

export const aliases: readonly Alias[] = [
  changed('AK', 'Chugach/Census Area', ['Valdez-Cordova/Census Area'], 'split off in 2019'),
  changed('AK', 'Copper River/Census Area', ['Valdez-Cordova/Census Area'], 'split off in 2019'),
  changed('AK', 'Prince of Wales-Outer Ketchikan/Census Area', ['Prince of Wales-Hyder/Census Area', 'Ketchikan Gateway/Borough', 'Wrangell/City and Borough'], 'divided in 2008'),
  changed('AK', 'Skagway-Hoonah-Angoon/Census Area', ['Skagway/Municipality', 'Hoonah-Angoon/Census Area'], 'divided in 2007'),
  changed('AK', 'Wade Hampton/Census Area', ['Kusilvak/Census Area'], 'renamed in 2015'),
  changed('AK', 'Wrangell-Petersburg/Census Area', ['Wrangell/City and Borough', 'Petersburg/Borough', 'Prince of Wales-Hyder/Census Area'], 'divided in 2008'),
  region('Capitol', 'Hartford', 'Tolland'),
  region('Greater Bridgeport', 'Fairfield'),
  region('Lower Connecticut River Valley', 'Middlesex', 'New London'),
  region('Naugatuck Valley', 'Fairfield', 'Hartford', 'Litchfield', 'New Haven'),
  region('Northeastern Connecticut', 'New London', 'Tolland', 'Windham'),
  region('Northwest Hills', 'Hartford', 'Litchfield'),
  region('South Central Connecticut', 'New Haven'),
  region('Southeastern Connecticut', 'New London', 'Windham'),
  region('Western Connecticut', 'Fairfield', 'Litchfield'),
  said('DC', 'Washington/', ['District of Columbia/'], 'the city is the district'),
  changed('FL', 'Dade', ['Miami-Dade'], 'renamed in 1997'),
  said('NY', 'Brooklyn/', ['Kings'], 'borough of New York City'),
  said('NY', 'Manhattan/', ['New York'], 'borough of New York City'),
  said('NY', 'Staten Island/', ['Richmond'], 'borough of New York City'),
  changed('SD', 'Shannon', ['Oglala Lakota'], 'renamed in 2015'),
  changed('VA', 'Bedford/city', ['Bedford'], 'a town of the county since 2013'),
  changed('VA', 'Clifton Forge/city', ['Alleghany'], 'a town of the county since 2001'),
  changed('VA', 'South Boston/city', ['Halifax'], 'a town of the county since 1995'),
]

// The embedded books: invented products, prices and company. Every output made with them says so.
import type { CompanyFile } from './company-file.ts'
import { COMPANY_FORMAT, PRICES_FORMAT } from './format-names.ts'
import type { ChartLine, PriceBook } from './price-book.ts'

const line = ([r, settledIn, blownIn, weightPsf, coverageFt2, bagsPer1000Ft2]: readonly [number, number, number, number, number, number]): ChartLine =>
  ({ r, settledIn, blownIn, weightPsf, coverageFt2, bagsPer1000Ft2 })

export const demoPrices: PriceBook = {
  format: PRICES_FORMAT, name: 'demo prices', dated: '2026-01-15', demo: 'yes',
  products: [
    { item: 'sealant-10oz', role: 'seam-sealant', name: 'latex sealant, 10.1 oz', unit: 'fl oz', pack: 10.1, buyUnit: 'tube', price: 5, wastePct: 10, charge: 'used' },
    { item: 'noncombustible-sealant-10oz', role: 'hot-sealant', name: 'noncombustible sealant (E136), 10.1 oz', unit: 'fl oz', pack: 10.1, buyUnit: 'tube', price: 12, wastePct: 10, charge: 'used', noncombustible: 'yes' },
    // A gun can of 24 oz taken to yield 900 in³ of cured foam, 500 fl oz: an invented product's figure.
    { item: 'gun-foam-24oz', role: 'gap-foam', name: 'one-part gun foam, 24 oz can', unit: 'fl oz', pack: 500, buyUnit: 'can', price: 16, wastePct: 15, charge: 'used' },
    { item: 'light-cover-ic', role: 'light-cover-ic', name: 'light cover, for IC lights', unit: 'each', pack: 1, buyUnit: 'each', price: 22, charge: 'whole', ratedFor: 'ic', heightIn: 9, sizeIn: [14, 14] },
    { item: 'led-ic-airtight', role: 'light-ic-airtight', name: 'airtight IC light', unit: 'each', pack: 1, buyUnit: 'each', price: 38, charge: 'whole', ratedFor: 'ic' },
    { item: 'gypsum-typex-58', role: 'box-board', name: 'drywall 5/8 Type X, 4×8', unit: 'ft2', pack: 32, buyUnit: 'sheet', price: 20, wastePct: 10, charge: 'whole', noncombustible: 'yes' },
    { item: 'gypsum-12', role: 'rigid-cover', name: 'drywall 1/2, 4×8', unit: 'ft2', pack: 32, buyUnit: 'sheet', price: 16, wastePct: 10, charge: 'whole', noncombustible: 'yes' },
    { item: 'gypsum-12', role: 'panel-tray', name: 'drywall 1/2, 4×8', unit: 'ft2', pack: 32, buyUnit: 'sheet', price: 16, wastePct: 10, charge: 'whole', noncombustible: 'yes' },
    { item: 'stud-2x4-8', role: 'support', name: 'stud 2x4, 8 ft', unit: 'ft', pack: 8, buyUnit: 'each', price: 4.5, wastePct: 10, charge: 'whole' },
    { item: 'galvanized-coil', role: 'sheet-metal', name: 'galvanized coil, 26 ga, 20 in × 10 ft', unit: 'ft2', pack: 16.667, buyUnit: 'roll', price: 42, wastePct: 10, charge: 'used', noncombustible: 'yes' },
    { item: 'dam-rigid', role: 'rigid-dam', name: 'rigid dam', unit: 'ft', pack: 1, buyUnit: 'ft', price: 1.75, charge: 'used' },
    { item: 'depth-marker', role: 'depth-marker', name: 'depth marker', unit: 'each', pack: 1, buyUnit: 'each', price: 0.5, charge: 'whole' },
    { item: 'weatherstrip-17ft', role: 'weatherstrip', name: 'weatherstrip, 17 ft', unit: 'ft', pack: 17, buyUnit: 'roll', price: 11, wastePct: 10, charge: 'whole' },
    { item: 'latch-pair', role: 'latch', name: 'latch pair', unit: 'pair', pack: 1, buyUnit: 'pair', price: 8, charge: 'whole' },
    { item: 'mineral-wool-r23', role: 'panel-batt', name: 'mineral-wool batt R-23', unit: 'ft2', pack: 1, buyUnit: 'ft2', price: 1.75, charge: 'used', rValue: 23, noncombustible: 'yes' },
    { item: 'baffle-14', role: 'baffle-16', name: 'baffle 14 1/2 × 48 in', unit: 'each', pack: 1, buyUnit: 'piece', price: 1.9, charge: 'whole', sizeIn: [14.5, 48] },
    { item: 'baffle-22', role: 'baffle-24', name: 'baffle 22 1/2 × 48 in', unit: 'each', pack: 1, buyUnit: 'piece', price: 2.4, charge: 'whole', sizeIn: [22.5, 48] },
    { item: 'wind-block', role: 'wind-block', name: 'wind block, cut board', unit: 'each', pack: 1, buyUnit: 'each', price: 1.2, charge: 'whole' },
    { item: 'vacuum-bag-75', role: 'vacuum-bag', name: 'removal bag, 75 ft³', unit: 'each', pack: 1, buyUnit: 'bag', price: 6, charge: 'whole' },
    { item: 'debris-bag-3mil', role: 'debris-bag', name: 'debris bag, 3 mil', unit: 'each', pack: 1, buyUnit: 'bag', price: 0.8, charge: 'whole' },
    { item: 'protection-kit', role: 'protection-kit', name: 'protection and PPE kit', unit: 'person-day', pack: 1, buyUnit: 'person-day', price: 25, charge: 'whole' },
    { item: 'compatible-sealant-10oz', role: 'compatible-sealant', name: 'sealant marked for CPVC, 10.1 oz', unit: 'fl oz', pack: 10.1, buyUnit: 'tube', price: 9, wastePct: 10, charge: 'used' },
    { item: 'stack-collar', role: 'stack-collar', name: 'stack collar, flexible', unit: 'each', pack: 1, buyUnit: 'each', price: 14, charge: 'whole' },
    { item: 'box-flag', role: 'box-flag', name: 'flag for a buried box', unit: 'each', pack: 1, buyUnit: 'each', price: 0.45, charge: 'whole' },
    { item: 'fan-duct-4', role: 'fan-duct', name: 'insulated fan duct 4 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 58, charge: 'whole' },
    { item: 'fan-duct-6', role: 'fan-duct-wide', name: 'insulated fan duct 6 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 60, charge: 'whole' },
    { item: 'galvanized-pipe-5ft', role: 'smooth-duct', name: 'galvanized duct, 5 ft', unit: 'ft', pack: 5, buyUnit: 'piece', price: 14, charge: 'whole' },
    { item: 'roof-cap', role: 'roof-cap', name: 'roof cap with damper', unit: 'each', pack: 1, buyUnit: 'each', price: 34, charge: 'whole' },
    { item: 'stair-cover-rigid', role: 'stair-cover', name: 'stair cover, rigid', unit: 'each', pack: 1, buyUnit: 'each', price: 240, charge: 'whole', rValue: 20 },
    { item: 'flue-collar-set', role: 'flue-set', name: 'metal flue collar and shield, B-vent', unit: 'each', pack: 1, buyUnit: 'set', price: 38, charge: 'whole', noncombustible: 'yes' },
    { item: 'co-alarm', role: 'co-alarm', name: 'carbon monoxide alarm', unit: 'each', pack: 1, buyUnit: 'each', price: 32, charge: 'whole' },
    { item: 'soffit-vent-16x8', role: 'soffit-vent', name: 'soffit vent 16 × 8 in, screened', unit: 'each', pack: 1, buyUnit: 'each', price: 9, charge: 'whole' },
    { item: 'glass-r30', role: 'floor-batt', name: 'unfaced glass batt R-30', unit: 'ft2', pack: 1, buyUnit: 'ft2', price: 1.3, wastePct: 5, charge: 'used', rValue: 30, thicknessIn: 9.5 },
    { item: 'glass-r38', role: 'floor-batt', name: 'unfaced glass batt R-38', unit: 'ft2', pack: 1, buyUnit: 'ft2', price: 1.7, wastePct: 5, charge: 'used', rValue: 38, thicknessIn: 12 },
    { item: 'mineral-wool-r15', role: 'wall-batt', name: 'mineral-wool batt R-15', unit: 'ft2', pack: 1, buyUnit: 'ft2', price: 1.25, wastePct: 5, charge: 'used', rValue: 15, thicknessIn: 3.5, noncombustible: 'yes' },
    { item: 'mineral-wool-r23-wall', role: 'wall-batt', name: 'mineral-wool batt R-23 for walls', unit: 'ft2', pack: 1, buyUnit: 'ft2', price: 1.75, wastePct: 5, charge: 'used', rValue: 23, thicknessIn: 5.5, noncombustible: 'yes' },
    { item: 'gypsum-12', role: 'wall-board', name: 'drywall 1/2, 4×8', unit: 'ft2', pack: 32, buyUnit: 'sheet', price: 16, wastePct: 10, charge: 'whole', noncombustible: 'yes' },
    { item: 'hole-plug', role: 'plug', name: 'plug for a drilled hole', unit: 'each', pack: 1, buyUnit: 'each', price: 0.25, charge: 'whole' },
    { item: 'seasonal-cover-r20', role: 'seasonal-cover', name: 'insulated cover for a fan or grille', unit: 'each', pack: 1, buyUnit: 'each', price: 128, charge: 'whole', rValue: 20 },
    { item: 'air-barrier-sheet', role: 'membrane', name: 'air barrier sheet, with its tape', unit: 'ft2', pack: 1000, buyUnit: 'roll', price: 210, wastePct: 15, charge: 'used' },
    { item: 'fire-sealant-10oz', role: 'fire-sealant', name: 'intumescent sealant, listed, 10.1 oz', unit: 'fl oz', pack: 10.1, buyUnit: 'tube', price: 13, wastePct: 10, charge: 'used' },
    { item: 'flex-6in-r8', role: 'flex-duct', name: 'flexible duct R-8, 6 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 60, wastePct: 5, charge: 'used', sizeIn: [6, 6], rValue: 8 },
    { item: 'flex-8in-r8', role: 'flex-duct', name: 'flexible duct R-8, 8 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 80, wastePct: 5, charge: 'used', sizeIn: [8, 8], rValue: 8 },
    { item: 'flex-10in-r8', role: 'flex-duct', name: 'flexible duct R-8, 10 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 100, wastePct: 5, charge: 'used', sizeIn: [10, 10], rValue: 8 },
    { item: 'flex-14in-r8', role: 'flex-duct', name: 'flexible duct R-8, 14 in, 25 ft', unit: 'ft', pack: 25, buyUnit: 'box', price: 150, wastePct: 5, charge: 'used', sizeIn: [14, 14], rValue: 8 },
    { item: 'mastic-1gal', role: 'mastic', name: 'duct mastic, 1 gal', unit: 'gal', pack: 1, buyUnit: 'pail', price: 26, wastePct: 20, charge: 'used' },
    { item: 'mesh-3in', role: 'mesh', name: 'fiberglass mesh, 3 in × 150 ft', unit: 'ft', pack: 150, buyUnit: 'roll', price: 12, wastePct: 10, charge: 'used' },
    { item: 'foil-tape-ul181', role: 'duct-tape', name: 'foil tape marked UL 181, 60 yd', unit: 'ft', pack: 180, buyUnit: 'roll', price: 24, wastePct: 10, charge: 'used' },
    { item: 'duct-band', role: 'duct-band', name: 'draw band for flexible duct', unit: 'each', pack: 1, buyUnit: 'each', price: 0.6, charge: 'used' },
    { item: 'duct-strap', role: 'duct-strap', name: 'duct strap, 1 3/4 in wide, 100 yd', unit: 'ft', pack: 300, buyUnit: 'roll', price: 18, wastePct: 10, charge: 'used' },
    { item: 'duct-wrap-3in', role: 'duct-wrap', name: 'duct wrap 3 in with jacket, 48 in × 50 ft', unit: 'ft2', pack: 200, buyUnit: 'roll', price: 180, wastePct: 10, charge: 'used', rValue: 8.3, thicknessIn: 3 },
    { item: 'chimney-firestop-set', role: 'maker-firestop', name: 'firestop and attic shield of the chimney’s maker', unit: 'each', pack: 1, buyUnit: 'set', price: 145, charge: 'whole', noncombustible: 'yes' },
  ],
  blown: [
    {
      item: 'demo-loose-cellulose', name: 'loose cellulose, 25 lb bag', fill: 'cellulose', bagLb: 25, buyUnit: 'bag', price: 14, wastePct: 2,
      // 3.6 R/in and 1.6 lb/ft³ settled, 13 % settling.
      chart: ([[13, 3.61, 4.15, 0.481, 51.9, 19.3], [19, 5.28, 6.07, 0.704, 35.5, 28.1], [22, 6.11, 7.02, 0.815, 30.7, 32.6], [30, 8.33, 9.58, 1.111, 22.5, 44.4],
        [38, 10.56, 12.13, 1.407, 17.8, 56.3], [49, 13.61, 15.64, 1.815, 13.8, 72.6], [60, 16.67, 19.16, 2.222, 11.2, 88.9]] as const).map(line),
    },
    {
      item: 'demo-loose-fiberglass', name: 'loose fiberglass, 30 lb bag', fill: 'fiberglass', bagLb: 30, buyUnit: 'bag', price: 42, wastePct: 2,
      // 2.6 R/in and 0.55 lb/ft³ settled, 4 % settling.
      chart: ([[13, 5, 5.21, 0.229, 130.9, 7.64], [19, 7.31, 7.61, 0.335, 89.6, 11.2], [22, 8.46, 8.81, 0.388, 77.4, 12.9], [30, 11.54, 12.02, 0.529, 56.7, 17.6],
        [38, 14.62, 15.22, 0.67, 44.8, 22.3], [49, 18.85, 19.63, 0.864, 34.7, 28.8], [60, 23.08, 24.04, 1.058, 28.4, 35.3]] as const).map(line),
    },
  ],
}

export const demoCompany = {
  format: COMPANY_FORMAT, name: 'demo company', dated: '2026-01-15', demo: 'yes',
  wage: 48, crew: 2, hoursPerDay: 6.5, machine: 'truck', grossMarginPct: 40, contingencyPct: 7, minimumCharge: 850, salesTaxPct: 7, roundUpTo: 5, validDays: 30,
  visitFee: 125, dumpFeePerTon: 90, dumpFeeMinimum: 45,
  subcontract: [{ work: 'light-swap', price: 185 }, { work: 'light-surface', price: 185 }, { work: 'roof-cap', price: 325 }, { work: 'device-move', price: 185 }, { work: 'wiring-repair', price: 95 }, { work: 'make-up-air', price: 480 }, { work: 'roof-vent', price: 210 }, { work: 'recalled-item', price: 220 }, { work: 'water-line-move', price: 240 }, { work: 'ventilation-fan', price: 620 }],
} satisfies CompanyFile

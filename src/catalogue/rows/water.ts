import { waterBuffer } from '../../formulas/water/alkali';
import { waterCarbonDioxide } from '../../formulas/water/carbonate';
import { oxygenTime } from '../../formulas/water/oxygen-time';
import { waterAmmonia, waterLimit } from '../../formulas/water/water-ammonia';
import { waterDensity } from '../../formulas/water/water-density';
import { waterOxygen } from '../../formulas/water/water-oxygen';
import { waterViscosity } from '../../formulas/water/water-viscosity';
import { define } from '../define';
import { ammoniaAsNitrogen } from '../readers';
import { elevation, ph, salinity, temperature } from '../water-arguments';
import { waterCheckRow } from './water-check';
import { alkali, care, caustic, purity, waterDoseRows, weights } from './water-dose';

const emerson = 'Emerson, Russo, Lund and Thurston, Journal of the Fisheries Research Board of Canada 32:2379 (1975)';
const salt = 'Salt: Khoo, Culberson and Bates (1977), as in Bower and Bidwell (1978)';
export const waterRows = [
  define({
    name: 'WATER.DENSITY',
    summary: 'Density of fresh or salt water at one atmosphere.',
    arguments: { temperature, salinity },
    result: { scalar: 'density' },
    compute: (given) => waterDensity(given.temperature, given.salinity),
    formula: 'Tanaka’s fresh-water density, plus the salt terms of the one-atmosphere equation of state',
    notes: ['From 0 to 40 °C and 0 to 40 g/kg.'],
    sources: ['Tanaka et al., Metrologia 38:301 (2001)', 'UNESCO Technical Paper in Marine Science 44 (1983)'],
    example: { formula: '=SILT.WATER.DENSITY("metric",20)', gives: '998.207' },
  }),
  define({
    name: 'WATER.VISCOSITY',
    summary: 'Dynamic viscosity of fresh or salt water.',
    arguments: { temperature, salinity },
    result: { scalar: 'viscosity' },
    compute: (given) => waterViscosity(given.temperature, given.salinity),
    formula: 'IAPWS liquid-water correlation at 0.1 MPa, times Sharqawy’s factor for salt',
    notes: ['From 0 to 40 °C and 0 to 40 g/kg.'],
    sources: [
      'IAPWS SR6-08(2011), eq. 7, within 0.02 % of IAPWS R12-08',
      'Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16:354 (2010)',
    ],
    example: { formula: '=SILT.WATER.VISCOSITY("metric",20)', gives: '1.0016' },
  }),
  define({
    name: 'WATER.OXYGEN',
    summary: 'Dissolved oxygen at saturation.',
    arguments: { temperature, elevation, salinity },
    result: { scalar: 'concentration' },
    compute: (given) => waterOxygen(given.temperature, given.elevation, given.salinity),
    formula: 'Benson and Krause at one atmosphere, times P (1 - Pwv/P)(1 - θP) / ((1 - Pwv)(1 - θ))',
    notes: ['Pressure is that of the standard atmosphere; weather changes it by about 3 %.'],
    sources: [
      'Benson and Krause, Limnology and Oceanography 29:620 (1984)',
      'APHA, Standard Methods 4500-O',
      'ISO 2533:1975, Standard Atmosphere',
    ],
    example: { formula: '=SILT.WATER.OXYGEN("metric",20)', gives: '9.092' },
  }),
  define({
    name: 'WATER.AMMONIA',
    summary: 'Un-ionized part of a total-ammonia reading, as nitrogen.',
    arguments: { ammonia: { ...ammoniaAsNitrogen, meaning: 'total ammonia nitrogen' }, ph, temperature, salinity },
    result: { scalar: 'concentration' },
    compute: (given) => waterAmmonia(given.ammonia, given.ph, given.temperature, given.salinity),
    formula: 'share = 1 / (1 + 10^(pK - pH)), pK = 0.09018 + 2729.92 / (°C + 273.2), and more in salt water',
    notes: ['A bare number is nitrogen; text such as 2.4 mg/L as NH3 is converted.', care],
    sources: [emerson, salt],
    example: { formula: '=SILT.WATER.AMMONIA("metric",1,8,20)', gives: '0.0382' },
  }),
  define({
    name: 'WATER.LIMIT',
    summary: 'Total ammonia nitrogen at which the un-ionized part reaches a limit.',
    arguments: {
      unionized: { ...ammoniaAsNitrogen, meaning: 'limit of un-ionized ammonia nitrogen' },
      ph,
      temperature,
      salinity,
    },
    result: { scalar: 'concentration' },
    compute: (given) => waterLimit(given.unionized, given.ph, given.temperature, given.salinity),
    formula: 'the inverse of WATER.AMMONIA',
    notes: [care],
    sources: [emerson, salt],
    example: { formula: '=SILT.WATER.LIMIT("metric",0.05,8,20)', gives: '1.309' },
  }),
  define({
    name: 'WATER.CARBONDIOXIDE',
    summary: 'Dissolved carbon dioxide from alkalinity and pH, fresh water.',
    arguments: {
      alkalinity: { kind: 'alkalinity', atLeast: 0, meaning: 'alkalinity as CaCO3' },
      ph,
      temperature,
    },
    result: { scalar: 'concentration' },
    compute: (given) => waterCarbonDioxide(given.alkalinity, given.ph, given.temperature),
    formula: 'CO2 = [H+][HCO3-]/K1, with carbonate and hydroxide subtracted from the alkalinity',
    notes: ['For fresh water whose alkalinity is carbonate. An error of 0.1 in pH changes the result by a quarter.'],
    sources: [
      'Plummer and Busenberg, Geochimica et Cosmochimica Acta 46:1011 (1982)',
      'Stumm and Morgan, Aquatic Chemistry',
    ],
    example: { formula: '=SILT.WATER.CARBONDIOXIDE("metric",100,7,20)', gives: '21.2' },
  }),
  define({
    name: 'WATER.OXYGENTIME',
    summary: 'Minutes until oxygen falls to the danger level if aeration and flow stop.',
    arguments: {
      volume: { kind: 'volume', above: 0, meaning: 'water around the fish' },
      oxygen: { kind: 'concentration', atLeast: 0, meaning: 'oxygen when pump and air stop' },
      floor: { kind: 'concentration', atLeast: 0, meaning: 'oxygen below which fish are harmed' },
      demand: { kind: 'daily', above: 0, meaning: 'oxygen used a day by fish and bacteria' },
      peak: {
        kind: 'number',
        atLeast: 1,
        atMost: 10,
        default: 'peak oxygen factor',
        meaning: 'demand in the worst hour over the mean of the day',
      },
    },
    result: { scalar: 'minutes' },
    compute: (given) => oxygenTime(given.volume, given.oxygen, given.floor, given.demand, given.peak),
    formula: 'minutes = volume × (oxygen - floor) / (demand × peak)',
    notes: ['Backup air must run within half of this time: test it. Frightened fish use more oxygen.'],
    sources: ['Mass balance'],
    example: { formula: '=SILT.WATER.OXYGENTIME("metric",1000,6,3,1)', gives: '2.9' },
  }),
  define({
    name: 'WATER.BUFFER',
    summary: 'Alkali to add a day to replace what nitrification uses.',
    arguments: {
      ammoniaLoad: { kind: 'daily', atLeast: 0, meaning: 'ammonia nitrogen nitrified a day, as N' },
      alkali,
      purity,
    },
    result: { scalar: 'daily' },
    compute: (given) => waterBuffer(given.ammoniaLoad, given.alkali, given.purity),
    formula: 'alkali = 7.15 × ammonia nitrogen / (strength as CaCO3 × purity)',
    notes: [
      'Plants and denitrification give some alkalinity back: go by your water test, not by this figure alone.',
      caustic,
    ],
    sources: ['NH4+ + 2 O2 → NO3- + 2 H+ + H2O', weights],
    example: { formula: '=SILT.WATER.BUFFER("metric","100 g/d","sodium bicarbonate")', gives: '1.2' },
  }),
  ...waterDoseRows,
  waterCheckRow,
];

import type { ReferenceKey } from './references';

const figures = 'test/oracles/published-figures.py';
const ownFigures = 'test/oracles/own-figures.py';
const doses = 'test/oracles/alkali-dose.py';

/** The script that computes the figures of a source again, run by hand beside the libraries that it names. */
export const computedBy: Readonly<Partial<Record<ReferenceKey, string>>> = {
  'fluids-colebrook': figures,
  'fluids-colebrook-brentq': figures,
  'fluids-colebrook-pchip': figures,
  'fluids-v-terminal': figures,
  'teos-10-gsw-3': figures,
  'scipy-quad': figures,
  'tanaka-metrologia-38-301': figures,
  'gnu-units-2-22': figures,
  'stokes-law-water-998': figures,
  'stokes-law-water-997': figures,
  'davis-water-wastewater-engineering': figures,
  'ferguson-church-sedimentary-research': figures,
  'hagen-poiseuille-128-mu': figures,
  'hazen-williams-with-c': figures,
  'apha-standard-methods-4500': figures,
  'emerson-fisheries-research-board': figures,
  'sharqawy-desalination-water-treatment': figures,
  'kells-equation-with-misprint': figures,
  'scipy-regression': ownFigures,
  'phreeqc-3-phreeqc-dat': doses,
};

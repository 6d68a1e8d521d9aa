import type { TrainStage } from '../../drawing/train-drawing';
import type { Place } from '../../formulas/balance/water-on-its-way';
import { capitalized } from '../../units/text';
import type { TrainRequest } from './request';
import type { ScenarioFigures } from './scenario-figures';

/** A box of the diagram before it is known which one is the first limit. */
interface Box {
  readonly name: string;
  /** Whether the farm has it. */
  readonly present: boolean;
  readonly words: readonly (string | undefined)[];
  readonly taken?: string | undefined;
  /** The place whose water leaves it for the next stage; if left out, the water leaves as it came. */
  readonly after?: Place;
  /** Its rows in `SILT.PLAN.LIMIT`. */
  readonly limits: RegExp;
}

/** The train of one scenario from the fish to the pump, with what flows from each stage to the next. */
export function trainOf(figures: ScenarioFigures, title: string): TrainRequest {
  const { inputText, resultText } = figures;
  const boxes = boxesOf(figures).filter(({ present }) => present);
  const flow = inputText('pump flow') ?? resultText('flow needed');
  const limiting = boxes.find(({ limits }) => figures.first !== undefined && limits.test(figures.first));
  let after: Place = 'tank';
  const stages = boxes.map((box): TrainStage => {
    after = box.after ?? after;
    const mine = box === limiting;
    const why = mine && figures.first !== box.name.toLowerCase() ? `by ${figures.first}` : undefined;
    const words = [...box.words, ...carriedFish(figures, box.limits), why].filter((one) => one !== undefined);
    return {
      name: box.name,
      words,
      ...(mine ? { limiting: true } : {}),
      ...(flow === undefined ? {} : { flow }),
      ...levels(figures, after),
      ...(box.taken === undefined ? {} : { taken: box.taken }),
    };
  });
  const needed =
    inputText('pump flow') === undefined
      ? 'The flow shown is the flow needed, because no pump flow is given.'
      : undefined;
  return {
    what: 'train',
    units: figures.units,
    title,
    stages,
    ...(boxes.length > 1 ? { returning: flow === undefined ? 'back to the fish' : `back to the fish, ${flow}` } : {}),
    notes: [
      needed,
      capital(figures.next),
      'A plan, not a promise: makers’ sheets, local advice and licensed practice come first.',
    ].filter((note) => note !== undefined && note !== '') as string[],
  };
}

/** Levels in the water that leaves a place, if any water flows. */
function levels({ water }: ScenarioFigures, after: Place): Pick<TrainStage, 'solids' | 'ammonia' | 'nitrate'> {
  const named = { solids: water(after, 'solids'), ammonia: water(after, 'ammonia'), nitrate: water(after, 'nitrate') };
  return Object.fromEntries(Object.entries(named).filter(([, level]) => level !== undefined));
}

function boxesOf(figures: ScenarioFigures): readonly Box[] {
  const { given, inputText, resultText } = figures;
  const has = (name: string): boolean => inputText(name) !== undefined;
  const isAbsent = (name: string): boolean => /^none$/i.test(String(given(name)).trim());
  const drums = !isAbsent('drums');
  const pads = has('pads');
  const fish = [
    inputText('fish count') && `${inputText('fish count')} fish`,
    inputText('fish mass') && `of ${inputText('fish mass')}`,
  ];
  const tank = inputText('tank volume');
  return [
    {
      name: 'Fish tank',
      present: true,
      words: [
        fish.filter((one) => one).join(' ') || undefined,
        tank,
        resultText('feed') && `feed ${resultText('feed')}`,
      ],
      limits: /^(fish tank|air)$/,
    },
    {
      name: 'Settling drums',
      present: drums,
      words: [
        has('drums')
          ? joined(inputText('drums'), 'drums', inputText('drum diameter'))
          : resultText('drums needed') && `${resultText('drums needed')} needed`,
        resultText('overflow rate') && `overflow ${resultText('overflow rate')}`,
      ],
      taken: resultText('solids captured') && `solids pulled ${resultText('solids captured')}`,
      after: 'drums',
      limits: /^settling drums$/,
    },
    {
      name: 'Pads',
      present: pads,
      words: [
        joined(inputText('pads'), 'pads', inputText('pad area')),
        resultText('pad change interval') && `changed every ${resultText('pad change interval')}`,
      ],
      taken: resultText('solids to pads') && `solids held ${resultText('solids to pads')}`,
      after: 'pads',
      limits: /^pads$/,
    },
    {
      name: 'Biofilter',
      present: !isAbsent('media volume'),
      words: [
        inputText('media volume') ?? (resultText('media volume') && `${resultText('media volume')} of media needed`),
      ],
      after: 'biofilter',
      limits: /^biofilter$/,
    },
    {
      name: 'Plant beds',
      present: !isAbsent('bed area'),
      words: [
        inputText('bed area') ?? (resultText('bed area') && `${resultText('bed area')} needed`),
        resultText('bed cleaning interval') && `cleaned every ${resultText('bed cleaning interval')}`,
      ],
      taken: resultText('solids to beds') && `solids held ${resultText('solids to beds')}, nutrients to plants`,
      after: 'beds',
      limits: /bed/,
    },
    {
      name: 'Pump',
      present: !isAbsent('pump flow'),
      words: [inputText('pump flow') ?? 'not given'],
      limits: /^circulation/,
    },
  ];
}

/** How many fish the stage carries: the least of its limits. */
function carriedFish({ stages }: ScenarioFigures, limits: RegExp): readonly string[] {
  const fish = stages.flatMap(({ stage, fish: count }) =>
    limits.test(stage) && typeof count === 'number' ? [count] : [],
  );
  return fish.length === 0 ? [] : [`carries ${Math.min(...fish)} fish`];
}

function joined(count: string | undefined, what: string, each: string | undefined): string {
  return `${count} ${count === '1' ? what.replace(/s$/, '') : what}${each === undefined ? '' : `, ${each}`}`;
}

function capital(words: string): string {
  return words === '' ? '' : `${capitalized(words)}.`;
}

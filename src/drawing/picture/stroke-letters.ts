/**
 * Letters as single strokes, for pictures, which cannot count on a font of the machine that shows them. The shapes are
 * the Hershey simplex letters; capitals are 1 high.
 */
import vectorChar from '@jscad/modeling/src/text/vectorChar';
import { plainText } from '../plain-text';

type Stroke = readonly (readonly [number, number])[];

interface Letter {
  readonly width: number;
  readonly strokes: readonly Stroke[];
}

/** The library's letters are this high at the height 14 that it takes them at. */
const capital = 21;

const spelled: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '²': '2',
  '³': '3',
  '−': '-',
  '–': '-',
  '—': '-',
  '≤': '<=',
  '≥': '>=',
  '′': "'",
  '″': '"',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '…': '...',
  '→': '->',
  '←': '<-',
  µ: 'u',
  ß: 'ss',
  ø: 'o',
  Ø: 'O',
  æ: 'ae',
  Æ: 'AE',
};

function ring(x: number, y: number, radius: number): Stroke {
  return Array.from({ length: 13 }, (_, i) => {
    const turn = (i * Math.PI) / 6;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)] as const;
  });
}

const signs: Readonly<Record<string, Letter>> = {
  '°': { width: 0.5, strokes: [ring(0.25, 0.85, 0.14)] },
  '·': { width: 0.4, strokes: [ring(0.2, 0.45, 0.03)] },
  '•': { width: 0.5, strokes: [ring(0.25, 0.45, 0.08), ring(0.25, 0.45, 0.03)] },
  '×': {
    width: 0.8,
    strokes: [
      [
        [0.15, 0.15],
        [0.65, 0.65],
      ],
      [
        [0.15, 0.65],
        [0.65, 0.15],
      ],
    ],
  },
  '±': {
    width: 0.9,
    strokes: [
      [
        [0.15, 0.55],
        [0.75, 0.55],
      ],
      [
        [0.45, 0.85],
        [0.45, 0.25],
      ],
      [
        [0.15, 0.08],
        [0.75, 0.08],
      ],
    ],
  },
};

/** Accents over the middle of a letter whose top is at 0. */
const accents: Readonly<Record<string, readonly Stroke[]>> = {
  '\u0300': [
    [
      [-0.15, 0.3],
      [0.05, 0.12],
    ],
  ],
  '\u0301': [
    [
      [-0.05, 0.12],
      [0.15, 0.3],
    ],
  ],
  '\u0302': [
    [
      [-0.15, 0.12],
      [0, 0.28],
      [0.15, 0.12],
    ],
  ],
  '\u0303': [
    [
      [-0.18, 0.14],
      [-0.08, 0.24],
      [0.08, 0.14],
      [0.18, 0.24],
    ],
  ],
  '\u0308': [ring(-0.14, 0.2, 0.03), ring(0.14, 0.2, 0.03)],
  '\u030a': [ring(0, 0.22, 0.09)],
  '\u030c': [
    [
      [-0.15, 0.28],
      [0, 0.12],
      [0.15, 0.28],
    ],
  ],
};

const known = new Map<string, Letter>();

function plainLetter(letter: string): Letter {
  const found = known.get(letter);
  if (found !== undefined) return found;
  const { width, segments } = vectorChar({ height: 14 }, letter);
  const made = {
    width: width / capital,
    strokes: segments.map((stroke) => stroke.map(([x, y]) => [x / capital, y / capital] as const)),
  };
  known.set(letter, made);
  return made;
}

function letters(character: string): readonly Letter[] {
  const sign = signs[character];
  if (sign !== undefined) return [sign];
  const words = spelled[character] ?? character.normalize('NFD');
  const plain = words.replace(/[^\u0020-\u007e]/g, '');
  const made = Array.from(plain === '' ? '?' : plain, plainLetter);
  const [only] = made;
  const over = Array.from(words).flatMap((mark) => accents[mark] ?? []);
  if (only === undefined || made.length > 1 || over.length === 0) return made;
  const top = Math.max(...only.strokes.flat().map(([, y]) => y));
  const moved = over.map((stroke) => stroke.map(([x, y]) => [x + only.width / 2, y + top] as const));
  return [{ width: only.width, strokes: [...only.strokes, ...moved] }];
}

/** A line of text from its start on the baseline, and how far it runs. */
export function strokesOf(words: string): Letter {
  const strokes: Stroke[] = [];
  let width = 0;
  for (const letter of Array.from(plainText(words)).flatMap(letters)) {
    const before = width;
    strokes.push(...letter.strokes.map((stroke) => stroke.map(([x, y]) => [x + before, y] as const)));
    width += letter.width;
  }
  return { width, strokes };
}

import { absent, bound, filled, first, type Harmless, kept, never, quick } from './harmless-reasons';

/** Changes to units and the adapter that no test can or should notice. */
export const readingHarmless: Harmless = {
  'src/functions/adapter.ts': {
    '[name, undefined] -> []': 'The object only has its shape early; every value is put in afterwards.',
    'new Array(slots.length) -> new Array()': filled,
    'i < slots.length -> i <= slots.length': 'Behind the last slot there is none.',
    'slot === undefined -> false': 'Every slot that is counted is there.',
    'values.length <= most -> false': quick,
    'values.length <= most -> values.length < most': quick,
    '{ ...plan.template } -> {}': 'The object only has its shape early; every value is put in afterwards.',
    "typeof value === 'number' -> false": quick,
    'ranged?.name -> ranged.name': 'A block that is spread comes from an argument.',
    "[''] -> []": 'A computation always gives a row.',
    "!('grid' in plan.row.result) -> false": quick,
  },
  'src/functions/adapter/slots.ts': {
    "typeof value === 'number' -> false": quick,
    'spec.choice.includes(typed) -> false': quick,
  },
  'src/units/base-units.ts': {
    '/^(milli|centi|kilo|micro)(.+)$/ -> /^(milli|centi|kilo|micro)(.+)/':
      'The rest of the word is taken as a whole anyway.',
    '[] -> ["Stryker was here"]': first,
  },
  'src/units/concentration.ts': {
    'value.length > 200 -> false': quick,
    'value.length > 200 -> value.length >= 200': quick,
    'as === undefined -> false': 'Without a form the text is read in the same way.',
  },
  'src/units/convert.ts': {
    'source.as && target.as -> source.as || target.as': 'Both say it there, or neither does.',
    'known !== undefined -> false': kept,
    'unitsRead.size >= 200 -> true': kept,
    'unitsRead.size >= 200 -> false': kept,
    'unitsRead.size >= 200 -> unitsRead.size > 200': kept,
    'unitsRead.size >= 200 -> unitsRead.size < 200': kept,
  },
  'src/units/date.ts': {
    '[] -> ["Stryker was here"]': first,
  },
  'src/units/nearest.ts': {
    'found === undefined -> true': kept,
    'remembered.size >= MOST_REMEMBERED -> true': kept,
    'remembered.size >= MOST_REMEMBERED -> false': kept,
    'remembered.size >= MOST_REMEMBERED -> remembered.size > MOST_REMEMBERED': kept,
    'remembered.size >= MOST_REMEMBERED -> remembered.size < MOST_REMEMBERED': kept,
    "parts.length < 2 || sought.includes(' ') -> false": 'A name of one word has no part that is nearer than itself.',
    'parts.length < 2 -> false': 'A name of one word has no part that is nearer than itself.',
    "parts.length < 2 || sought.includes(' ') -> parts.length < 2 && sought.includes(' ')":
      'A name of one word has no part that is nearer than itself.',
  },
  'src/units/plain-number.ts': {
    'bare + unit.shift -> bare - unit.shift': 'Beyond 1e290 a shift is lost in rounding.',
    "kind === 'density' -> true": 'Only a density has a unit with such a bound and gets here below it.',
    'bare < (lightest[unit.symbol] ?? 0) -> true':
      'Of a density only what is below the bound gets here, or beyond 1e290.',
    'bare < (lightest[unit.symbol] ?? 0) -> bare <= (lightest[unit.symbol] ?? 0)':
      'Of a density only what is below the bound gets here, or beyond 1e290.',
    'bare >= 1 -> bare > 1': 'The 1 itself is taken before.',
  },
  'src/units/profile.ts': {
    'profiles.size >= 200 -> true': kept,
    'profiles.size >= 200 -> false': kept,
    'profiles.size >= 200 -> profiles.size > 200': kept,
    'profiles.size >= 200 -> profiles.size < 200': kept,
    'unit === undefined -> false': never,
    '/^ ?[=:]? ?/ -> / ?[=:]? ?/': 'It can match nothing, so that it always matches at the start.',
    '/^ ?[=:]? ?/ -> /^ ?[=:] ?/': 'A unit may begin with a space.',
  },
  'src/units/quantity-range.ts': {
    'text.trim() -> text': 'A number may begin with a space, and the text was tidied before.',
    '[] -> ["Stryker was here"]': first,
    'from !== undefined && to !== undefined -> from !== undefined || to !== undefined':
      'The pattern finds both ends, or neither.',
    'from !== undefined -> true': 'The pattern finds both ends, or neither.',
    'to !== undefined -> true': 'The pattern finds both ends, or neither.',
    'to.trim() -> to': 'The text was tidied before.',
  },
  'src/units/quantity.ts': {
    'value >= unit.plainFrom -> value > unit.plainFrom': 'The longer check takes the bound in the same way.',
    'value <= unit.plainTo -> value < unit.plainTo': 'The longer check takes the bound in the same way.',
    'profile.index.get(kind) ?? profile.units[kind] -> profile.index.get(kind) && profile.units[kind]':
      'Both hold the same units.',
    '[] -> ["Stryker was here"]': first,
    'part === undefined -> false': absent,
  },
  'src/units/unit-text.ts': {
    'tidy !== undefined -> false': kept,
    'tidied.size > 1000 -> true': kept,
    'tidied.size > 1000 -> false': kept,
    'tidied.size > 1000 -> tidied.size >= 1000': kept,
    'tidied.size > 1000 -> tidied.size <= 1000': kept,
    'composed.has(tidy) -> false': kept,
    'composed.size > 1000 -> true': kept,
    'composed.size > 1000 -> false': kept,
    'composed.size > 1000 -> composed.size >= 1000': kept,
    'composed.size > 1000 -> composed.size <= 1000': kept,
    '[] -> ["Stryker was here"]': first,
    'i > 0 -> true': 'Before the first unit there is no sign.',
    'i > 0 -> i >= 0': 'Before the first unit there is no sign.',
    'Number(power) * sign -> Number(power) / sign': 'A sign is 1 or -1.',
    'exponent > 0 -> exponent >= 0': 'No exponent and no sign is 0.',
    'sign > 0 -> sign >= 0': 'No exponent and no sign is 0.',
    'sign < 0 -> sign <= 0': 'No exponent and no sign is 0.',
  },
  'src/units/unit.ts': {
    'Math.abs(near - value) <= 4.5e-16 * (Math.abs(value) + Math.abs(shift)) -> Math.abs(near - value) < 4.5e-16 * (Math.abs(value) + Math.abs(shift))':
      bound,
  },
};

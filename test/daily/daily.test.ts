import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import ical from 'node-ical';
import { afterEach, describe, expect, test } from 'vitest';
import { calendarOf, choresOf, emptySchedule, nextDue } from '../../src/daily/chores';
import { type Entry, entriesOf, fileOf, isSavedTest, merged, type Reading, rowsToPaste } from '../../src/daily/entries';
import { plansIn } from '../../src/daily/from-plan';
import { readPull, unlikely } from '../../src/daily/pull';
import { type Judged, judged } from '../../src/daily/verdict';
import { spill } from '../functions/call';

const pull: Entry = { kind: 'pull', id: 'a', date: '2026-05-02', volume: '15', solids: '2 %' };
const values: Readonly<Record<Reading, string>> = {
  temperature: '25',
  ph: '8.2',
  ammonia: '6.5',
  nitrite: '0.1',
  nitrate: '20',
  oxygen: '4',
  alkalinity: '40',
};
const waterTest: Entry = { kind: 'test', id: 'b', date: '2026-05-01', values };

describe('entries', () => {
  test('exported twice and imported twice appear once', () => {
    const file = fileOf([pull, waterTest]);
    const once = merged([], entriesOf(file));
    expect(merged(merged(once, entriesOf(file)), entriesOf(fileOf(once)))).toEqual([waterTest, pull]);
  });

  test.each(['', 'no file', '{}', '{"entries":[{"kind":"pull"}]}', '{"entries":[{"id":"a","date":"today"}]}'])(
    'are not taken out of %j',
    (text) => {
      expect(() => entriesOf(text)).toThrow('not saved by the daily page');
    },
  );

  test('are rows in the columns of the books, and never formulas', () => {
    expect(rowsToPaste([pull, waterTest], 'pull', 'metric')).toBe('2026-05-02\t15\t2 %');
    expect(rowsToPaste([pull, waterTest], 'test', 'metric')).toBe('2026-05-01\t25\t8.2\t6.5\t0.1\t20\t4\t40');
    expect(rowsToPaste([{ ...pull, volume: '=1+1', solids: 'a\tb' }], 'pull', 'metric')).toBe("2026-05-02\t'=1+1\ta b");
  });
});

describe('tests', () => {
  const warm: Entry = { ...waterTest, values: { ...values, temperature: '77 °F' } };

  // 77 °F is 25 °C: 5/9 of 77 - 32.
  test('are pasted with their temperature in the units of the book, whatever units were chosen when they were typed', () => {
    expect(rowsToPaste([warm], 'test', 'metric')).toBe('2026-05-01\t25\t8.2\t6.5\t0.1\t20\t4\t40');
    expect(rowsToPaste([warm], 'test', 'US')).toBe('2026-05-01\t77\t8.2\t6.5\t0.1\t20\t4\t40');
  });

  test('are not saved a second time with the same readings on the same day', () => {
    expect(isSavedTest([pull, waterTest], waterTest)).toBe(true);
    expect(isSavedTest([pull, waterTest], { ...waterTest, date: '2026-05-02' })).toBe(false);
    expect(isSavedTest([pull, waterTest], { ...waterTest, values: { ...values, ph: '8.1' } })).toBe(false);
  });

  test('and pulls of one day stay in the order in which they were typed', () => {
    const day = ['z', 'b', 'm', 'a'].map((id): Entry => ({ ...pull, id }));
    expect(merged(merged([], day), [{ ...waterTest, id: 'k' }]).map(({ id }) => id)).toEqual(['k', 'z', 'b', 'm', 'a']);
  });
});

describe('a pull', () => {
  test('is kept with its unit, so that a book in other units reads it right', () => {
    expect(readPull('metric', '15', '2 %')).toEqual({ volume: '15 L', solids: '2 %' });
    expect(readPull('US', '4.5', '')).toEqual({ volume: '4.5 gal', solids: '' });
    expect(readPull('US', '15 L', '')).toEqual({ volume: '15 L', solids: '' });
    // A book in liters would read the bare text as 4.5 L.
    expect(readPull('US', '4 1/2', '')).toEqual({ volume: '4 1/2 gal', solids: '' });
    expect(readPull('US', '4½', '')).toEqual({ volume: '4½ gal', solids: '' });
  });

  test.each([
    ['', ''],
    ['a pail', ''],
    ['0', ''],
    ['4', '32'],
    ['4', 'thick'],
    ['4 kg', ''],
    ['-4', ''],
    ['1e400', ''],
    ['4', '-2 %'],
  ])('of %j with solids %j is not kept, and the field is named', (volume, solids) => {
    const field = solids === '' ? /^How much: |^Type how much/ : /^Share of solids: /;
    expect(readPull('US', volume, solids)).toHaveProperty('wrong', expect.stringMatching(field));
  });

  // Five times the two before it, and a fifth of them: common practice, no source. Thickened sludge begins at 5 % (van Rijn 2013).
  test.each([
    ['30 L', '', undefined],
    ['35 L', '', undefined],
    ['35.1 L', '', 'A pull of 35.1 L is not likely; after your last two, the usual range is 1.2 L to 35 L.'],
    ['60 L', '', 'A pull of 60 L is not likely; after your last two, the usual range is 1.2 L to 35 L.'],
    ['1.2 L', '', undefined],
    ['1.19 L', '', 'A pull of 1.19 L is not likely; after your last two, the usual range is 1.2 L to 35 L.'],
    ['6 L', '5 %', undefined],
    ['6 L', '5.1 %', 'A solids share of 5.1 % is not likely; the usual range is 0.3 to 5 %.'],
    ['6 L', '0.2', 'A solids share of 20 % is not likely; the usual range is 0.3 to 5 %.'],
    ['6 L', '0.3 %', undefined],
    ['6 L', '0.29 %', 'A solids share of 0.29 % is not likely; the usual range is 0.3 to 5 %.'],
  ])('of %s and %j after 6 and 7 L: %s', (volume, solids, told) => {
    const pulls = ['90 L', '6 L', '7 L'].map((one, at): Entry => ({ ...pull, id: String(at), volume: one }));
    const said = unlikely('metric', { volume, solids }, [...pulls, waterTest]);
    expect(said).toEqual(told === undefined ? [] : [`${told} If it is a slip, delete it below.`]);
    // Two pulls before it are needed to judge a volume.
    if (solids === '') expect(unlikely('metric', { volume, solids }, pulls.slice(0, 1))).toEqual([]);
  });
});

describe('the verdict', () => {
  const of = (given: Parameters<typeof judged>[2]): Judged => {
    const test = judged('metric', 'rainbow trout', given);
    if ('unread' in test) throw new Error(test.unread);
    return test;
  };

  test('names what WATER.CHECK finds wrong, and what to do, in a short sentence each', () => {
    const { wrong } = of(values);
    const given = ['metric', 'rainbow trout', 25, 8.2, 6.5, 0.1, 20, 4, 0, 40] as const;
    const rows = spill('WATER.CHECK', ...given).filter(([, , , , verdict]) => /too|survives/.test(String(verdict)));
    expect(wrong.map((sentence) => sentence.slice(0, sentence.indexOf('.')).toLowerCase())).toEqual(
      rows.map(([reading, , , , verdict]) => `${reading} ${verdict}`.toLowerCase()),
    );
    expect(wrong.join('\n')).toMatch(/^Ammonia too high\. Stop feeding/m);
    expect(wrong.filter((sentence) => !/^([A-Z]|pH )/.test(sentence))).toEqual([]);
    for (const sentence of wrong) expect(sentence.length).toBeLessThan(160);
  });

  test('is silent about what is within its limits or was not measured', () => {
    const good = {
      ...values,
      temperature: '15',
      ph: '7.2',
      ammonia: '0.1',
      nitrite: '',
      oxygen: '9.5',
      alkalinity: '90',
    };
    expect(of(good)).toEqual({ wrong: [], missing: ['nitrite'] });
  });

  test('says that ammonia without pH cannot be judged, which may be far too much', () => {
    const none = { temperature: '', ph: '', ammonia: '', nitrite: '', nitrate: '', oxygen: '', alkalinity: '' };
    const { wrong, missing } = of({ ...none, ammonia: '0.5' });
    expect(wrong).toEqual([
      'Ammonia cannot be judged. The total is below its limit, but without pH and temperature the un-ionized part is unknown.',
    ]);
    expect(missing).toEqual(['temperature', 'pH', 'nitrite', 'nitrate', 'oxygen', 'alkalinity']);
    // What was not taken is only missing.
    expect(of({ ...none, nitrite: '0.01' }).wrong).toEqual([]);
  });

  test('says what cannot be read', () => {
    for (const ph of ['sour', '77']) {
      expect(judged('metric', 'rainbow trout', { ...values, ph })).toMatchObject({
        unread: expect.stringMatching(/ph/i),
      });
    }
  });
});

describe('chores', () => {
  const zone = process.env.TZ;
  afterEach(() => {
    process.env.TZ = zone;
  });

  test('are due at their interval from the start', () => {
    const weekly = { every: 7 };
    expect(nextDue(weekly, '2026-05-01', '2026-05-01')).toBe('2026-05-01');
    expect(nextDue(weekly, '2026-05-01', '2026-05-02')).toBe('2026-05-08');
    expect(nextDue(weekly, '2026-05-01', '2026-04-01')).toBe('2026-05-01');
    expect(nextDue({ ...weekly, afterInterval: true }, '2026-05-01', '2026-05-01')).toBe('2026-05-08');
    expect(nextDue({ ...weekly, afterInterval: true }, '2026-05-01', '2026-05-09')).toBe('2026-05-15');
    // Clocks change between these in most of Europe and America.
    expect(nextDue(weekly, '2026-10-20', '2026-11-04')).toBe('2026-11-10');
  });

  // node-ical reads the file on its own and expands the repetitions; clocks change on 25 October and 1 November 2026.
  test.each(['UTC', 'America/New_York', 'Europe/Berlin', 'Pacific/Auckland'])(
    'are whole days that no clock moves, in %s',
    async (tz) => {
      process.env.TZ = tz;
      const chores = choresOf({ every: { pads: 4 }, notes: { pads: 'from the plan' } });
      const file = await calendarOf(chores, '2026-10-24');
      for (const line of file.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      const events = Object.values(ical.sync.parseICS(file)).flatMap((part) => (part?.type === 'VEVENT' ? [part] : []));
      expect(events.map(({ summary }) => summary)).toEqual(chores.map(({ name }) => name));
      events.forEach((event, i) => {
        const { every = 1, why, id } = chores[i] ?? {};
        const first = id === 'pads' || id === 'beds' ? every : 0;
        expect([event.datetype, event.description]).toEqual(['date', why]);
        const days = ical
          .expandRecurringEvent(event, { from: new Date(2026, 9, 24), to: new Date(2026, 10, 24) })
          .map(({ start }) => `${start.getFullYear()}-${start.getMonth() + 1}-${start.getDate()} ${start.getHours()}`);
        const due = Array.from({ length: Math.max(0, Math.floor((31 - first) / every) + 1) }, (_, step) => {
          const day = new Date(Date.UTC(2026, 9, 24 + first + step * every));
          return `${day.getUTCFullYear()}-${day.getUTCMonth() + 1}-${day.getUTCDate()} 0`;
        });
        expect(days).toEqual(due);
      });
    },
  );
});

describe('the intervals of a plan', () => {
  const scenario = [
    ['', 'Small', 'Large'],
    ['fish count', 120, 800],
    ['fish mass', 400, 400],
    ['feeding rate', 0.015, 0.015],
    ['pads', 2, 2],
    ['pad area', 1, 1],
    ['bed area', 20, 40],
  ];
  const compared = spill('PLAN.COMPARE', 'metric', scenario);
  const figure = (name: string, column: number) => Number(compared.find(([first]) => first === name)?.[column]);
  const copied = compared.map((row) => row.join('\t')).join('\n');

  test('are those of PLAN.COMPARE, in whole days that are not longer', () => {
    const plans = plansIn(copied);
    expect(plans.map(({ title }) => title)).toEqual(['Small', 'Large']);
    plans.forEach(({ schedule }, i) => {
      const [pads, beds] = ['pad change interval', 'bed cleaning interval'].map((name) => figure(name, i + 2));
      expect(schedule.every.pads).toBe(Math.max(1, Math.floor(pads ?? 0)));
      expect(schedule.every.beds).toBe(Math.min(730, Math.floor(beds ?? 0)));
      const alkali = Number(figure('alkali per day', i + 2).toPrecision(3));
      expect(choresOf(schedule).find(({ id }) => id === 'alkali')?.why).toContain(`${alkali} kg a day of alkali`);
    });
    expect(plans[1]?.schedule.notes.pads).toMatch(/plan for more/);
  });

  test('give alkali every day, because a week without it takes all that a tank has', () => {
    // 120 fish of 8 oz in 400 gal: 7.14 g of alkalinity per g of nitrogen nitrified, 84.007 x 2 g of bicarbonate for
    // 100.087 g of CaCO3; 100 mg/L is what growers keep (Timmons and Ebeling).
    const farm = [
      ['fish count', 120],
      ['fish mass', '8 oz'],
      ['feeding rate', 0.015],
      ['tank volume', '400 gal'],
      ['pump flow', '10 gpm'],
    ];
    const rows = spill('PLAN.COMPARE', 'metric', farm);
    const perDay = Number(rows.find(([name]) => name === 'alkali per day')?.[2]);
    const usedAWeek = (7 * perDay * 1e6 * 100.087) / (2 * 84.007) / (400 * 3.785412);
    expect(usedAWeek).toBeGreaterThan(100);
    const [plan] = plansIn(rows.map((row) => row.join('\t')).join('\n'));
    expect(plan?.schedule.every.alkali).toBe(1);
    expect(plan?.schedule.every.pull ?? 1).toBe(1);
  });

  test('leave the usual ones where the plan has none', () => {
    const [plan] = plansIn('pad change interval\tdays\tnot given\nalkali per day\tlb/d\t1,250.5');
    expect(plan?.schedule.every).toEqual({ alkali: 1 });
    expect(plan?.schedule.notes.alkali).toBe('the plan needs 1250 lb a day of alkali');
    expect(choresOf(plan?.schedule ?? emptySchedule).find(({ id }) => id === 'pads')?.every).toBe(7);
  });

  test.each(['', 'hello', 'pad change interval'])('are not in %j', (text) => {
    expect(() => plansIn(text)).toThrow('copy the sheet Compare');
  });
});

test('the page is at most 60 kB as it travels', () => {
  const files = readdirSync('dist/daily').filter((name) => /^(index\.html|daily\.(js|css))$/.test(name));
  expect(files).toHaveLength(3);
  const sizes = [...files.map((name) => `dist/daily/${name}`), 'dist/offline.js'].map(
    (file) => gzipSync(readFileSync(file)).length,
  );
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(60_000);
});

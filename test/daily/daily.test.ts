import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { afterEach, describe, expect, test } from 'vitest';
import { calendarOf, nextDue, usualChores } from '../../src/daily/chores';
import { type Entry, entriesOf, fileOf, merged, type Reading, rowsToPaste } from '../../src/daily/entries';
import { wrongWith } from '../../src/daily/verdict';
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
  test('exported twice and imported twice are there once', () => {
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
    expect(rowsToPaste([pull, waterTest], 'pull')).toBe('2026-05-02\t15\t2 %');
    expect(rowsToPaste([pull, waterTest], 'test')).toBe('2026-05-01\t25\t8.2\t6.5\t0.1\t20\t4\t40');
    expect(rowsToPaste([{ ...pull, volume: '=1+1', solids: 'a\tb' }], 'pull')).toBe("2026-05-02\t'=1+1\ta b");
  });
});

describe('the verdict', () => {
  test('names what WATER.CHECK finds wrong, and what to do, in a short sentence each', () => {
    const wrong = wrongWith('metric', 'rainbow trout', values);
    const given = ['metric', 'rainbow trout', 25, 8.2, 6.5, 0.1, 20, 4, 0, 40] as const;
    const rows = spill('WATER.CHECK', ...given).filter(([, , , , verdict]) => /too|survives/.test(String(verdict)));
    expect(wrong.map((sentence) => sentence.slice(0, sentence.indexOf('.')))).toEqual(
      rows.map(([reading, , , , verdict]) => `${reading} ${verdict}`),
    );
    expect(wrong.join('\n')).toMatch(/^ammonia too high\. Stop feeding/m);
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
    expect(wrongWith('metric', 'rainbow trout', good)).toEqual([]);
  });

  test('says what cannot be read', () => {
    expect(wrongWith('metric', 'rainbow trout', { ...values, ph: 'sour' }).join()).toMatch(/ph/i);
  });
});

describe('chores', () => {
  const zone = process.env.TZ;
  afterEach(() => {
    process.env.TZ = zone;
  });

  test('are due at their interval from the start', () => {
    const weekly = { name: 'x', every: 7, why: '' };
    expect(nextDue(weekly, '2026-05-01', '2026-05-01')).toBe('2026-05-01');
    expect(nextDue(weekly, '2026-05-01', '2026-05-02')).toBe('2026-05-08');
    expect(nextDue(weekly, '2026-05-01', '2026-04-01')).toBe('2026-05-01');
    // Clocks change between these in most of Europe and America.
    expect(nextDue(weekly, '2026-10-20', '2026-11-04')).toBe('2026-11-10');
  });

  test.each(['UTC', 'America/New_York', 'Pacific/Auckland'])(
    'are whole days that no clock moves, in %s',
    async (tz) => {
      process.env.TZ = tz;
      const lines = (await calendarOf(usualChores, '2026-10-24')).split('\r\n');
      expect([lines[0], lines.at(-1) || lines.at(-2)]).toEqual(['BEGIN:VCALENDAR', 'END:VCALENDAR']);
      const starts = lines.filter((line) => line.startsWith('DTSTART'));
      expect(new Set(starts)).toEqual(new Set(['DTSTART;VALUE=DATE:20261024']));
      expect(starts).toHaveLength(usualChores.length);
      expect(lines).toContain('RRULE:FREQ=DAILY;INTERVAL=7');
      for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    },
  );
});

test('the page is at most 60 kB as it travels', () => {
  const files = readdirSync('dist/daily').filter((name) => /^(index\.html|daily\.(js|css))$/.test(name));
  expect(files).toHaveLength(3);
  const sizes = [...files.map((name) => `dist/daily/${name}`), 'dist/offline.js'].map(
    (file) => gzipSync(readFileSync(file)).length,
  );
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(60_000);
});

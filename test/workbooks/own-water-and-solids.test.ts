import { describe, expect, it } from 'vitest';
import { readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { openReadyMade } from './open-ready-made';

describe.each(readyProfiles)('what the books give for a scenario (%s)', (profile) => {
  it('is the share of the feed that the harvest book shows as solids', async () => {
    const { book, value, type } = await openReadyMade('harvest-book', profile);
    const dry = Number(value('Solids share', 'B5'));
    expect(dry).toBeGreaterThan(0);
    await type({ 'Solids share!B6': dry * 5, 'Solids share!B7': 0.8 });
    expect(value('Solids share', 'B8')).toBeCloseTo(1 / 5 / 0.8, 9);
    book.dispose();
  });

  it('is the water of the water book, and alkali in steps that raise pH by at most 0.2', async () => {
    const { book, value, values, type } = await openReadyMade('water-book', profile);
    const [mean = 0, least = 0, most = 0] = values('For a scenario', 'B5:B7').flat().map(Number);
    expect(least).toBeLessThan(mean);
    expect(mean).toBeLessThan(most);
    expect(value('For a scenario', 'B9')).toBe(7.8);
    expect(value('Oxygen and alkali', 'B8')).toBe(3);
    await type({ 'Oxygen and alkali!B15': 'potassium hydroxide' });
    const steps = values('Oxygen and alkali', 'A30:E40').filter(([day]) => day !== '');
    expect(steps.length).toBeGreaterThan(3);
    expect(steps.at(-1)?.[2]).toBeCloseTo(100, 6);
    let start = Number(value('Oxygen and alkali', 'B22'));
    for (const [, , , atOnce, aired] of steps) {
      expect(Number(atOnce) - start).toBeLessThanOrEqual(0.2 + 1e-9);
      start = Number(aired);
    }
    await type({ 'Oxygen and alkali!B20': 300 });
    expect(value('Oxygen and alkali', 'B24')).toBe('not safe at once');
    await type({ 'Oxygen and alkali!B20': 50 });
    expect(value('Oxygen and alkali', 'A29')).toBe('The water already has the alkalinity wanted.');
    book.dispose();
  });
});

/** Which of the plans that a browser kept are brought back; whether the page then uses them, a browser test shows. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { CutPlan } from '../../src/formulas/cut/cut-plan';
import { type BuiltPlans, keepPlans, loadBuiltPlans } from '../../src/workbench/kept-plans';

const place = 'siltstead cut plans';
/** A plan that is only told from others by a length; its rows may take room. */
const plan = (lengthUsed: number, rows = 0) =>
  ({
    rows: Array.from({ length: rows }, () => ({ sheet: 1 })),
    notLaid: [],
    sheets: { lengthUsed },
  }) as unknown as CutPlan;
const lengths = (kept: ReadonlyMap<string, CutPlan>) =>
  Object.fromEntries(Array.from(kept, ([name, { sheets }]) => [name, sheets.lengthUsed]));

let stored: Map<string, string>;
let page: EventTarget & { visibilityState?: string };
beforeEach(() => {
  stored = new Map();
  page = new EventTarget();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => stored.get(name) ?? null,
    setItem: (name: string, text: string) => stored.set(name, text),
  });
  vi.stubGlobal('document', page);
  vi.stubGlobal('addEventListener', (name: string, act: () => void) => page.addEventListener(name, act));
});
afterEach(() => {
  vi.unstubAllGlobals();
});

/** What is at hand after the page has begun with a store and a build. */
function begun(inStore: unknown, built: BuiltPlans | undefined): Map<string, CutPlan> {
  if (inStore !== undefined) stored.set(place, typeof inStore === 'string' ? inStore : JSON.stringify(inStore));
  const kept = new Map<string, CutPlan>();
  keepPlans(kept, built);
  return kept;
}

const built: BuiltPlans = { script: 'this', plans: [['first', plan(1)]] };

test('plans of the build and those that were kept for its script are brought back; the build’s own count', () => {
  const own = [
    ['first', plan(7)],
    ['mine', plan(2)],
  ];
  expect(lengths(begun({ script: 'this', plans: own }, built))).toEqual({ first: 1, mine: 2 });
});

test.each([
  ['plans of another function script', { script: 'another', plans: [['mine', plan(2)]] }],
  ['what is no list of plans', { script: 'this', plans: 5 }],
  ['what is no text of this page', '{"script":'],
  ['nothing', undefined],
])('%s is not used', (_, inStore) => {
  expect(lengths(begun(inStore, built))).toEqual({ first: 1 });
});

test('nothing is used or kept where the site has no plans of its build, as nothing is known of the script', () => {
  expect(begun({ script: 'this', plans: [['mine', plan(2)]] }, undefined).size).toBe(0);
  stored.clear();
  page.dispatchEvent(new Event('pagehide'));
  expect(stored.size).toBe(0);
});

test('plans are kept when the page is left or hidden, the latest ones if not all have room', () => {
  const kept = begun(undefined, built);
  kept.set('large', plan(3, 50_000));
  kept.set('latest', plan(4));
  page.dispatchEvent(new Event('pagehide'));
  expect(JSON.parse(stored.get(place) ?? '').plans.map(([name]: [string]) => name)).toEqual(['latest']);
  kept.delete('large');
  page.visibilityState = 'visible';
  page.dispatchEvent(new Event('visibilitychange'));
  expect(JSON.parse(stored.get(place) ?? '').plans).toHaveLength(1);
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  expect(JSON.parse(stored.get(place) ?? '')).toMatchObject({
    script: 'this',
    plans: [['first'], ['latest']].map(([name]) => [name, {}]),
  });
});

test('a browser that keeps nothing costs a search and nothing else', () => {
  vi.stubGlobal('localStorage', {
    getItem: () => {
      throw new Error('denied');
    },
    setItem: () => {
      throw new Error('full');
    },
  });
  expect(lengths(begun(undefined, built))).toEqual({ first: 1 });
  expect(() => page.dispatchEvent(new Event('pagehide'))).not.toThrow();
});

test.each([
  ['an answer', () => Promise.resolve({ ok: true, json: () => Promise.resolve(built) }), built],
  ['a site without them', () => Promise.resolve({ ok: false }), undefined],
  ['no network', () => Promise.reject(new Error('offline')), undefined],
])('the plans of the build: %s', async (_, fetched, wanted) => {
  vi.stubGlobal('fetch', fetched);
  expect(await loadBuiltPlans()).toEqual(wanted);
});

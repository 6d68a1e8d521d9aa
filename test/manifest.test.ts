import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { DOMParser, type Element } from '@xmldom/xmldom';
import { OfficeAddinManifest } from 'office-addin-manifest';
import { describe, expect, test } from 'vitest';
import { namespace } from '../src/hosts/univer/function-set';
import { versions } from '../src/manual/change-log';
import { readPng } from './harness/png';

/** Limits are those of the manifest reference pages on Microsoft Learn ("Resources element", "Runtimes element"). */
const text = readFileSync('manifest.xml', 'utf8');
const document = new DOMParser().parseFromString(text, 'text/xml');
const all = (tag: string): Element[] => [...document.getElementsByTagName(tag)];
const only = (tag: string): Element => {
  const found = all(tag);
  expect(found, tag).toHaveLength(1);
  return found[0]!;
};
const elements = all('*');
const resources = new Map(
  ['bt:Image', 'bt:Url', 'bt:String']
    .flatMap(all)
    .filter((element) => element.hasAttribute('id'))
    .map((element) => [element.getAttribute('id')!, element.getAttribute('DefaultValue')!]),
);
const referred = elements.filter((element) => element.hasAttribute('resid')).map((one) => one.getAttribute('resid')!);
const addresses = [...text.matchAll(/(?:DefaultValue=|<AppDomain>)"?(\w+:\/\/[^"<]*)/g)].map(([, address]) => address!);
const iconFile = (address: string) => `src/task-pane/icons/${address.split('/').at(-1)}`;

describe('manifest', () => {
  test('is an add-in-only manifest for workbooks with an identity of its own', () => {
    expect(document.documentElement?.getAttribute('xsi:type')).toBe('TaskPaneApp');
    expect(only('Id').textContent).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(only('Version').textContent).toBe(`${version}.0`);
    expect(versions[0]?.version, 'the newest entry of the change log').toBe(version);
    expect(all('Host').map((host) => host.getAttribute('Name') ?? host.getAttribute('xsi:type'))).toEqual([
      'Workbook',
      'Workbook',
    ]);
  });

  test('is read by the tools for such manifests as what it is', async () => {
    const info = await OfficeAddinManifest.readManifestFile('manifest.xml');
    expect(info).toMatchObject({
      id: only('Id').textContent,
      version: only('Version').textContent,
      displayName: 'Siltstead',
      hosts: ['Workbook'],
      officeAppType: 'TaskPaneApp',
      permissions: 'ReadWriteDocument',
      defaultSettings: { sourceLocation: 'https://localhost:3000/task-pane.html' },
    });
  });

  test('asks for the shared runtime and for what the pane uses of Excel without asking first', () => {
    expect(all('Set').map((set) => [set.getAttribute('Name'), set.getAttribute('MinVersion')])).toEqual([
      ['SharedRuntime', '1.1'],
      ['ExcelApi', '1.7'],
    ]);
  });

  test('runs page, commands and pane in one and the same long-lived runtime', () => {
    const runtime = only('Runtime');
    expect(runtime.getAttribute('lifetime')).toBe('long');
    const page = only('Page').getElementsByTagName('SourceLocation')[0]!;
    const pane = only('Action').getElementsByTagName('SourceLocation')[0]!;
    const ids = [runtime, page, pane, only('FunctionFile')].map((element) => element.getAttribute('resid'));
    expect(new Set(ids).size).toBe(1);
    expect(resources.get(ids[0]!)).toBe(
      only('DefaultSettings').getElementsByTagName('SourceLocation')[0]!.getAttribute('DefaultValue'),
    );
  });

  test('puts the functions under the namespace that the rest of the project types', () => {
    expect(resources.get(only('Namespace').getAttribute('resid')!)).toBe(namespace);
  });

  test('defines every resource once and uses every one', () => {
    const defined = ['bt:Image', 'bt:Url', 'bt:String'].flatMap(all).filter((element) => element.hasAttribute('id'));
    expect(defined).toHaveLength(resources.size);
    expect([...new Set(referred)].sort()).toEqual([...resources.keys()].sort());
  });

  test('keeps ids and texts within what Excel takes', () => {
    for (const id of resources.keys()) expect(id.length, id).toBeLessThanOrEqual(32);
    const longest = { 'bt:ShortStrings': 125, 'bt:LongStrings': 250 };
    for (const [group, limit] of Object.entries(longest)) {
      for (const one of only(group).getElementsByTagName('bt:String')) {
        const value = one.getAttribute('DefaultValue')!;
        expect(value.length, value).toBeGreaterThan(0);
        expect(value.length, value).toBeLessThanOrEqual(limit);
      }
    }
    expect(only('DisplayName').getAttribute('DefaultValue')!.length).toBeLessThanOrEqual(125);
    expect(
      document.documentElement!.getElementsByTagName('Description')[0]!.getAttribute('DefaultValue')!.length,
    ).toBeLessThanOrEqual(250);
  });

  test('gives nothing but https addresses of one site, which the build replaces', () => {
    expect(addresses.length).toBeGreaterThan(10);
    for (const address of addresses) expect(address).toMatch(/^https:\/\/localhost:3000(\/|$)/);
  });

  test('has a group of its own on the Home tab with a button that opens the pane', () => {
    expect(only('OfficeTab').getAttribute('id')).toBe('TabHome');
    expect(only('Control').getAttribute('xsi:type')).toBe('Button');
    expect(only('Action').getAttribute('xsi:type')).toBe('ShowTaskpane');
    for (const icon of all('Icon')) {
      const sizes = [...icon.getElementsByTagName('bt:Image')].map((image) => Number(image.getAttribute('size')));
      expect(sizes).toEqual(expect.arrayContaining([16, 32, 80]));
    }
  });
});

describe('icons', () => {
  const named = elements
    .filter((element) => element.tagName === 'bt:Image' && element.hasAttribute('resid'))
    .map((element) => [Number(element.getAttribute('size')), resources.get(element.getAttribute('resid')!)!] as const);
  const header = (tag: string) => only(tag).getAttribute('DefaultValue')!;

  test('are there in the size that the manifest says', () => {
    expect(named.length).toBeGreaterThan(0);
    for (const [size, address] of [...named, [32, header('IconUrl')], [64, header('HighResolutionIconUrl')]] as const) {
      expect(existsSync(iconFile(address)), address).toBe(true);
      expect(readPng(readFileSync(iconFile(address))), address).toMatchObject({ width: size, height: size });
    }
  });

  test('exist in every size that Excel may ask for, transparent around the drawing', () => {
    const files = readdirSync('src/task-pane/icons').filter((name) => name.endsWith('.png'));
    const sizes = files.map((name) => Number(/^icon-(\d+)\.png$/.exec(name)![1])).sort((a, b) => a - b);
    expect(sizes).toEqual([16, 20, 24, 32, 40, 48, 64, 80, 96, 128, 192, 512]);
    for (const size of sizes) {
      const png = readPng(readFileSync(`src/task-pane/icons/icon-${size}.png`));
      expect(png).toEqual({ width: size, height: size, colorType: 6, cornerAlpha: 0 });
    }
  });
});

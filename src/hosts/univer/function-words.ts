import { LocaleService, LocaleType } from '@univerjs/core';
import { IFunctionService } from '@univerjs/engine-formula';
import type { Spreadsheet } from './spreadsheet';

/**
 * What the spreadsheet's own functions do, in words. It is much text that only somebody who types a formula reads, and
 * is loaded after the page can be used; until then the list of functions shows their names.
 */
export async function loadFunctionWords({ injector }: Spreadsheet): Promise<void> {
  const { default: words } = await import(
    /* webpackChunkName: "function-words" */ '@univerjs/sheets-formula/locale/en-US'
  );
  const locale = injector.get(LocaleService);
  locale.load({ [LocaleType.EN_US]: words });
  const functions = injector.get(IFunctionService);
  const described = [...functions.getDescriptions().values()].map((one) => ({
    ...one,
    description: locale.t(one.description),
    abstract: locale.t(one.abstract),
    functionParameter: one.functionParameter.map((given) => ({
      ...given,
      name: locale.t(given.name),
      detail: locale.t(given.detail),
    })),
  }));
  functions.registerDescriptions(...described);
}

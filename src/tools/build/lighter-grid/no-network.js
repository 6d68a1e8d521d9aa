import { Plugin } from '@univerjs/core';

/** Stands for the grid's own requests over the network, which nothing here makes. */
export class UniverNetworkPlugin extends Plugin {
  static pluginName = 'no-network';
}

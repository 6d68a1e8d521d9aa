import { Worker } from 'node:worker_threads';

/** How often to look whether the parent is still there, ms. */
const INTERVAL = 1000;

/**
 * Ends this process once the process that started it is gone, which otherwise nobody would end: a change may have made a
 * loop endless. A thread of its own looks, because such a loop lets nothing else run in the main one.
 */
export function endWithParent(): void {
  const look = `
    const { workerData: parent } = require('node:worker_threads');
    setInterval(() => process.ppid !== parent && process.kill(process.pid, 'SIGKILL'), ${INTERVAL});`;
  new Worker(look, { eval: true, workerData: process.ppid }).unref();
}

/**
 * Installs the browser and the office program that tests drive, where they are missing and that is possible: beside the
 * check and the build, because it mostly waits for the network. What fails here is said again by the test that needs it.
 */
import { findBrowser } from '../browser/find-browser';
import { findOffice } from '../office/find-libreoffice';

async function main(): Promise<void> {
  await findBrowser().catch(() => undefined);
  try {
    findOffice();
  } catch {
    // The tests that convert files say what to install.
  }
}

void main();

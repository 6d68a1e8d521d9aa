/** Finds LibreOffice, which recalculates saved workbooks in tests, or installs it where that is possible. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installDebian, isDebianRoot, waitForInstallation } from '../install/debian';

/** Names LibreOffice's program by its path. */
const officeVariable = 'SILTSTEAD_LIBREOFFICE';
const advice = `install LibreOffice Calc, or set ${officeVariable} to the path of soffice`;

const usualPlaces = [
  '/Applications/LibreOffice.app/Contents/MacOS/soffice',
  'C:\\Program Files\\LibreOffice\\program\\soffice.exe',
];

function installedOffice(): string | undefined {
  const named = process.env[officeVariable];
  if (named !== undefined && named !== '') return named;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return [...folders.map((folder) => join(folder, 'soffice')), ...usualPlaces].find((path) => existsSync(path));
}

/** The path of LibreOffice's program. Installs Debian's where none is there and it may; fails and says what to do otherwise. */
export function findOffice(): string {
  waitForInstallation();
  const found = installedOffice();
  if (found !== undefined) return found;
  if (!isDebianRoot()) throw new Error(`no LibreOffice: ${advice}`);
  process.stderr.write('No LibreOffice found; installing its spreadsheet for the tests.\n');
  installDebian('libreoffice-calc', advice);
  const installed = installedOffice();
  if (installed === undefined) throw new Error(`LibreOffice was installed but is not on the path; ${advice}`);
  return installed;
}

/** Opens files in LibreOffice and writes each in another format into a folder; gives the paths in the same order. */
export function convertWithOffice(files: readonly string[], format: string, folder: string): readonly string[] {
  const profile = mkdtempSync(join(tmpdir(), 'office-'));
  try {
    const { status, stderr } = spawnSync(
      findOffice(),
      [
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        '--headless',
        '--convert-to',
        format,
        '--outdir',
        folder,
        ...files,
      ],
      { encoding: 'utf8', timeout: 600_000 },
    );
    if (status !== 0) throw new Error(`LibreOffice could not convert: ${stderr}`);
    return files.map((file) => join(folder, basename(file).replace(/\.\w+$/, `.${format.split(':')[0]}`)));
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
}

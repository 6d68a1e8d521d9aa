/** The options of a tool's command line; `--help` and what it does not know end it with its usage. */
import { type ParseArgsConfig, parseArgs } from 'node:util';

/** The options and names that were given. */
export function commandOptions<T extends NonNullable<ParseArgsConfig['options']>>(options: T, usage: string) {
  const args = process.argv.slice(2);
  if (args.includes('--help')) {
    process.stdout.write(usage);
    process.exit(0);
  }
  try {
    return parseArgs({ args, options, allowPositionals: true, strict: true });
  } catch (thrown) {
    const [first = ''] = (thrown instanceof Error ? thrown.message : String(thrown)).split(/\. |\n/);
    process.stderr.write(`${first}\n${usage}`);
    return process.exit(2);
  }
}

/**
 * Without a listener, output that cannot be written ends the command with a stack trace. A reader that needs no more
 * closes the pipe, which is no error; a full disk behind `> results.txt` is one.
 */
export function printSafely(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit();
    const why = error.code === 'ENOSPC' ? 'there is no room left on the disk' : (error.code ?? error.message);
    process.stderr.write(`the results cannot be printed: ${why}\n`);
    process.exit(2);
  });
}

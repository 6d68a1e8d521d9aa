/**
 * Loaded before a command, as `node --require` does: interrupts it at a moment that no outside signal hits for sure.
 * INTERRUPT_AT is `read`, when the workbook is about to be read, or `write`, when half of a file has been written, or `end`, when
 * the whole file is there.
 * A terminal signals every process of a command, so both of those that work on a workbook get the signal.
 */
const fs = require('node:fs');
const promises = require('node:fs/promises');

const { INTERRUPT_AT: moment, INTERRUPT_WITH: signal, SILTSTEAD_WITHIN_LIMITS: inside } = process.env;

function interrupt() {
  // Nothing outlives SIGKILL to pass it on; it comes for one process, as when memory has run out.
  if (inside !== undefined && signal !== 'SIGKILL') process.kill(process.ppid, signal);
  process.kill(process.pid, signal);
}

if (moment === 'read') {
  const read = fs.readFileSync;
  fs.readFileSync = (path, ...rest) => {
    if (String(path).endsWith('.xlsx')) interrupt();
    return read(path, ...rest);
  };
}

if (moment === 'end') {
  const rename = fs.renameSync;
  fs.renameSync = (from, to) => {
    rename(from, to);
    if (from.endsWith('.part')) interrupt();
  };
}

if (moment === 'write') {
  const write = promises.writeFile;
  promises.writeFile = async (path, bytes, options) => {
    await write(path, bytes.slice(0, bytes.length / 2), options);
    const stopped = new Promise((_, reject) => {
      // Keeps the process alive until it is stopped.
      const waiting = setInterval(() => undefined, 1_000);
      options.signal.addEventListener('abort', () => {
        clearInterval(waiting);
        reject(options.signal.reason);
      });
    });
    interrupt();
    return stopped;
  };
}

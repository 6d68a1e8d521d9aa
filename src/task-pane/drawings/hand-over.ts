import { UserError } from '../user-error';
import { readRequest } from './read-request';
import type { DrawingRequest } from './request';

/** Longer addresses are cut off on the way from the pane to the browser. */
const longest = 30_000;
const mostBytes = 2_000_000;

/** The letter before the code says whether it is compressed, which older browsers inside a spreadsheet cannot do. */
const packedMark = 'z';
const plainMark = 'p';

/** A drawing as the part of an address behind `#`, which no server gets to see. */
export async function handOver(request: DrawingRequest): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(request));
  const code =
    typeof CompressionStream === 'undefined'
      ? plainMark + base64url(bytes)
      : packedMark + base64url(await through(bytes, new CompressionStream('deflate')));
  if (code.length > longest) {
    throw new UserError(
      'This is too much to open in the browser; select fewer rows, or draw it from a copy in the workbench.',
    );
  }
  return code;
}

/** The request in an address, fully checked; throws a sentence if it is incomplete. */
export async function takeOver(code: string): Promise<DrawingRequest> {
  const broken = 'The drawing did not arrive complete; open it from the task pane again.';
  if (!/^[pz][\w-]+$/.test(code) || code.length > longest) throw new UserError(broken);
  let data: unknown;
  try {
    const letters = atob(code.slice(1).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const text = code.startsWith(plainMark) ? bytes : await through(bytes, new DecompressionStream('deflate'));
    data = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(text));
  } catch {
    throw new UserError(broken);
  }
  return readRequest(data);
}

/** Sends bytes through a stream, up to a limit that no real drawing reaches. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  for (let { value } = await reader.read(); value !== undefined; { value } = await reader.read()) {
    parts.push(value);
    length += value.length;
    if (length > mostBytes) throw new RangeError('too long');
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function base64url(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += 8192) letters += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

const longest = 31;

/** A sheet name that is free: the name itself, or with a number after it. Case does not count. */
export function freeName(name: string, taken: Iterable<string>): string {
  const others = new Set([...taken].map((one) => one.toLowerCase()));
  for (let number = 1; ; number++) {
    const behind = number === 1 ? '' : ` ${number}`;
    const tried = `${name.slice(0, longest - behind.length).trimEnd()}${behind}`;
    if (!others.has(tried.toLowerCase())) return tried;
  }
}

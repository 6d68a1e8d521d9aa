/**
 * Code remembers what it has read in maps of its modules. A test that is run again must find them as they were when
 * the code was loaded: else what one change has put there would be blamed on the next, or would hide it.
 */
type Memory = Map<unknown, unknown> | Set<unknown> | WeakMap<object, unknown>;

interface AsLoaded {
  readonly Map: MapConstructor;
  readonly Set: SetConstructor;
  readonly WeakMap: WeakMapConstructor;
  /** A module is about to make its maps, or has made them. */
  readonly begin: () => void;
  readonly end: () => void;
}

declare global {
  var asLoaded: AsLoaded | undefined;
}

/** The code of a module of the product, whose own maps are watched. */
export function watched(code: string): string {
  return `const { Map, Set, WeakMap } = globalThis.asLoaded; globalThis.asLoaded.begin(); ${code}\nglobalThis.asLoaded.end();`;
}

/** Watches the maps of modules that are loaded from now on; the result brings them back to how they were loaded. */
export function watchModules(): () => void {
  const changed = new Map<Memory, () => void>();
  let made: Memory[] = [];
  let loading = false;
  const recording = <C extends new (...given: never[]) => Memory>(kind: C): C =>
    new Proxy(kind, {
      construct(target, given) {
        const memory = Reflect.construct(target, given) as Memory;
        if (loading) made.push(memory);
        return memory;
      },
    });
  globalThis.asLoaded = {
    Map: recording(Map),
    Set: recording(Set),
    WeakMap: recording(WeakMap),
    begin: () => {
      loading = true;
    },
    end: () => {
      for (const memory of made) watch(memory, changed);
      made = [];
      loading = false;
    },
  };
  return () => {
    for (const restore of changed.values()) restore();
    changed.clear();
  };
}

/** From now on a change of a map notes how to undo it and those that follow. */
function watch(memory: Memory, changed: Map<Memory, () => void>): void {
  const keys: object[] = [];
  const undo = memory instanceof WeakMap ? () => forget(memory, keys) : refill(memory);
  for (const method of ['set', 'add', 'delete', 'clear'] as const) {
    const plain = (memory as unknown as Record<string, unknown>)[method];
    if (typeof plain !== 'function') continue;
    const noting = (...given: unknown[]) => {
      if (memory instanceof WeakMap && method === 'set') keys.push(given[0] as object);
      changed.set(memory, undo);
      return Reflect.apply(plain, memory, given);
    };
    Object.defineProperty(memory, method, { value: noting });
  }
}

function forget(memory: WeakMap<object, unknown>, keys: object[]): void {
  for (const key of keys.splice(0)) memory.delete(key);
}

function refill(memory: Map<unknown, unknown> | Set<unknown>): () => void {
  if (memory instanceof Set) {
    const values = [...memory];
    return () => {
      Set.prototype.clear.call(memory);
      for (const value of values) Set.prototype.add.call(memory, value);
    };
  }
  const entries = [...memory];
  return () => {
    Map.prototype.clear.call(memory);
    for (const [key, value] of entries) Map.prototype.set.call(memory, key, value);
  };
}

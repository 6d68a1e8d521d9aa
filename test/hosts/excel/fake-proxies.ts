import type { FakeContext } from './fake-excel';

export class ExcelError extends Error {
  readonly code: string;
  constructor(code: string, message = code) {
    super(message);
    this.code = code;
  }
}

export type Resolve<T> = () => T | undefined;

/** An object of Excel on this side of the border. */
export class Proxied<T> {
  readonly context: FakeContext;
  protected readonly resolve: Resolve<T>;
  private readonly loaded = new Map<string, unknown>();
  private known: boolean | undefined;
  protected readonly orNull: boolean;

  constructor(context: FakeContext, resolve: Resolve<T>, orNull = false) {
    this.context = context;
    this.resolve = resolve;
    this.orNull = orNull;
    context.queue(() => {
      this.known = resolve() !== undefined;
      if (!this.known && !orNull) throw new ExcelError('ItemNotFound');
    });
  }
  get isNullObject(): boolean {
    if (this.known === undefined) throw new ExcelError('PropertyNotLoaded', 'isNullObject');
    return !this.known;
  }
  protected fetch(_thing: T, _property: string): unknown {
    return undefined;
  }
  load(properties: string): void {
    this.context.queue(() => {
      const thing = this.resolve();
      if (thing === undefined) return;
      for (const property of properties.split(',')) this.loaded.set(property, this.fetch(thing, property));
    });
  }
  protected get<V>(property: string): V {
    if (!this.loaded.has(property)) throw new ExcelError('PropertyNotLoaded', property);
    return this.loaded.get(property) as V;
  }
  protected act(action: (thing: T) => void): void {
    this.context.queue(() => {
      const thing = this.resolve();
      if (thing === undefined) throw new ExcelError('ItemNotFound');
      action(thing);
    });
  }
}

/** Takes any wish about looks, and writes down that it was made. */
export function looks(context: FakeContext, note: (what: string) => void, path = ''): unknown {
  return new Proxy(() => undefined, {
    get: (_, property) => looks(context, note, `${path}.${String(property)}`),
    set: (_, property, value) => {
      context.queue(() => note(`${path}.${String(property)}=${JSON.stringify(value)}`));
      return true;
    },
    apply: (_, __, values: unknown[]) => {
      context.queue(() =>
        note(`${path}(${values.filter((one) => typeof one !== 'object' && typeof one !== 'function').join()})`),
      );
      return looks(context, note, `${path}()`);
    },
  });
}

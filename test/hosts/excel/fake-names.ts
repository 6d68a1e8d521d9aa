import { ExcelError, Proxied, type Resolve } from './fake-proxies';

export interface StoredName {
  name: string;
  formula: string;
  comment: string;
}

class FakeName extends Proxied<StoredName> {
  protected override fetch(name: StoredName, property: string): unknown {
    return name[property as keyof StoredName];
  }
  get name(): string {
    return this.get('name');
  }
  get formula(): string {
    return this.get('formula');
  }
  set formula(formula: string) {
    this.act((name) => {
      name.formula = formula;
    });
  }
  get comment(): string {
    return this.get('comment');
  }
  set comment(comment: string) {
    this.act((name) => {
      name.comment = comment;
    });
  }
  delete(): void {
    this.act((name) => {
      this.context.excel.names = this.context.excel.names.filter((one) => one !== name);
    });
  }
}

export class FakeNames extends Proxied<readonly StoredName[]> {
  protected override fetch(names: readonly StoredName[], property: string): unknown {
    this.asked.add(property.replace('items/', ''));
    return names;
  }
  private readonly asked = new Set<string>();
  get items(): StoredName[] {
    return this.get('items/name');
  }
  private byName(name: string): Resolve<StoredName> {
    return () => this.context.excel.names.find((one) => one.name.toLowerCase() === name.toLowerCase());
  }
  getItem(name: string): FakeName {
    return new FakeName(this.context, this.byName(name));
  }
  getItemOrNullObject(name: string): FakeName {
    return new FakeName(this.context, this.byName(name), true);
  }
  add(name: string, formula: string, comment: string): void {
    this.context.queue(() => {
      if (this.byName(name)() !== undefined) throw new ExcelError('ItemAlreadyExists');
      this.context.excel.names.push({ name, formula, comment });
    });
  }
}

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { WorkbookData } from '../hosts/workbook-model';

/** A workbook as it was left, with all that it takes to go on and to save it into the file that it came from. */
export interface Draft {
  /** Of the page that keeps it; every page has an id of its own. */
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly kept: number;
  readonly workbook: WorkbookData;
  /** As it was opened, to tell later what was changed. */
  readonly base: WorkbookData;
  /** The sample that was opened, by its path. */
  readonly sample?: string;
  /** The file that was opened. */
  readonly file?: Uint8Array;
}

interface Schema extends DBSchema {
  drafts: { readonly key: string; readonly value: Draft };
}

const lockName = (id: string): string => `siltstead draft ${id}`;

/** The drafts that this browser keeps: one for each page, so that two pages never write over each other's. */
export interface Drafts {
  /** Keeps this page's draft in place of its last. */
  readonly keep: (draft: Omit<Draft, 'id' | 'kept'>) => Promise<void>;
  readonly drop: () => Promise<void>;
  /** Drafts whose page is gone, the newest first; those of pages that are open are left to them. */
  readonly left: () => Promise<readonly Draft[]>;
  readonly remove: (id: string) => Promise<void>;
}

/** Rejects where the browser keeps nothing for this site. */
export async function openDrafts(): Promise<Drafts> {
  const database: IDBPDatabase<Schema> = await openDB<Schema>('siltstead', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('drafts', { keyPath: 'id' });
    },
  });
  const id = crypto.randomUUID();
  await holdLock(id);
  return {
    keep: async (draft) => {
      await database.put('drafts', { ...draft, id, kept: Date.now() });
    },
    drop: () => database.delete('drafts', id),
    left: async () => {
      const held = new Set((await navigator.locks.query()).held?.map(({ name }) => name));
      const all = await database.getAll('drafts');
      return all.filter((draft) => !held.has(lockName(draft.id))).sort((one, other) => other.kept - one.kept);
    },
    remove: (other) => database.delete('drafts', other),
  };
}

/** Holds the id for as long as the page is open, which tells other pages that its draft is not left behind. */
function holdLock(id: string): Promise<void> {
  return new Promise((resolve) => {
    void navigator.locks.request(lockName(id), () => {
      resolve();
      return new Promise(() => undefined);
    });
  });
}

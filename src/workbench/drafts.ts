import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { WorkbookData } from '../hosts/workbook-model';

/** A workbook as it was left, with everything needed to continue and to save it into its file. */
export interface Draft {
  /** The id of the page that keeps it; every page has its own. */
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly kept: number;
  readonly workbook: WorkbookData;
  /** The workbook as it was opened, to find out later what was changed. */
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

/** The drafts that this browser keeps: one for each page, so that two pages never overwrite each other's. */
export interface Drafts {
  /** Replaces this page's draft. */
  readonly keep: (draft: Omit<Draft, 'id' | 'kept'>) => Promise<void>;
  readonly drop: () => Promise<void>;
  /** Drafts of closed pages, the newest first; drafts of open pages are not offered. */
  readonly left: () => Promise<readonly Draft[]>;
  readonly remove: (id: string) => Promise<void>;
}

/** Rejects if the browser keeps nothing for this site. */
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
      const change = database.transaction('drafts', 'readwrite');
      const put = change.store.put({ ...draft, id, kept: Date.now() });
      // A page that is being left no longer hears that the draft was put, and would never finish the change.
      change.commit();
      await Promise.all([put, change.done]);
    },
    drop: () => database.delete('drafts', id),
    left: async () => {
      const all = await database.getAll('drafts');
      const isLeft = await Promise.all(all.map((draft) => isReleased(draft.id)));
      return all.filter((_, i) => isLeft[i]).sort((one, other) => other.kept - one.kept);
    },
    remove: (other) => database.delete('drafts', other),
  };
}

/** How long the lock of a page that was left may take to come free, in milliseconds. */
const leavingMs = 2000;

/** Whether the page of a draft is closed. The lock of a page that was just left comes free some moments later. */
async function isReleased(id: string): Promise<boolean> {
  try {
    return await navigator.locks.request(lockName(id), { signal: AbortSignal.timeout(leavingMs) }, () => true);
  } catch {
    return false;
  }
}

/** Holds a lock while the page is open, so that other pages know that its draft is in use. */
function holdLock(id: string): Promise<void> {
  return new Promise((resolve) => {
    void navigator.locks.request(lockName(id), () => {
      resolve();
      return new Promise(() => undefined);
    });
  });
}

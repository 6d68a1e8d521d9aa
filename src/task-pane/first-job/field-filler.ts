import type { SheetHost } from '../../hosts/sheet-host';
import type { Profile } from '../../units/profile';
import { sentenceIn } from '../user-error';
import type { BoundField } from './bound-field';
import { fillField } from './fill';
import type { Job } from './job';
import { settled } from './settled';

/** Writes fields into their cells, one after the other. */
export class FieldFiller {
  private readonly host: SheetHost;
  private filling: Promise<unknown> = Promise.resolve();
  /** Whether cells were filled whose results have not been waited for. */
  private isBehind = false;
  private count = 0;

  /** How many times a cell was filled: cells that were read before the last time are out of date. */
  get fills(): number {
    return this.count;
  }

  constructor(host: SheetHost) {
    this.host = host;
  }

  /** Fills a field's cell, or says beside the field why what was typed cannot be read; false where it cannot. */
  fill(field: BoundField, job: Job, profile: Profile): Promise<boolean> {
    const text = field.text();
    const fill = async (): Promise<boolean> => {
      try {
        await fillField(this.host, job, field.id, { text, profile });
        this.isBehind = true;
        this.count += 1;
        field.taken(text);
        field.complain('');
        return true;
      } catch (error) {
        const sentence = sentenceIn(error);
        if (sentence === undefined) throw error;
        field.complain(/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);
        return false;
      }
    };
    const filled = this.filling.then(fill, fill);
    this.filling = filled.catch(() => undefined);
    return filled;
  }

  /** Resolves once everything typed so far is in its cell. */
  async filled(): Promise<void> {
    await this.filling;
  }

  /** Resolves once the sheets have calculated what was filled. */
  async settled(): Promise<void> {
    if (this.isBehind) await settled(this.host);
    this.isBehind = false;
  }
}

import { makeButton } from '../dom';
import { jobPacket } from '../drawings/job-packet';
import { saveFile } from '../save-file';
import { sentenceIn } from '../user-error';
import type { GuideContext } from './context';

/** What can be done once every step is through: papers for the shop, and the next drum. */
export function finishButtons(
  { host, work, notify, functionLibrary, units }: GuideContext,
  another: () => void,
): readonly HTMLElement[] {
  const save = makeButton(
    'Save job packet',
    () =>
      void work('Making the job packet', async ({ finishing }) => {
        try {
          const file = await jobPacket(host, functionLibrary, units.profileText(), 'pdf');
          finishing();
          saveFile(file);
          notify('done', `Saved ${file.name}. Print it at 100 % and measure the bars first.`);
        } catch (error) {
          const sentence = sentenceIn(error);
          if (sentence === undefined) throw error;
          notify('fault', sentence);
        }
      }),
    { class: 'primary' },
  );
  return [...(host.downloads ? [save] : []), makeButton('Another drum', another)];
}
